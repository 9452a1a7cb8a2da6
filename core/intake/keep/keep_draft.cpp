#include "core/intake/keep/keep_draft.h"

#include <map>
#include <optional>
#include <set>

#include "core/intake/files/space_maker.h"
#include "core/intake/keep/keep_words.h"
#include "core/model/overflow.h"

namespace ledgerboard::intake {

using model::FieldCode;
using model::Id;
using model::Kind;
using model::Result;

namespace {

struct FactField {
    const char* fact;
    FieldCode field;
};

constexpr FactField kFactFields[] = {
    {"purchase", model::field::Job::purchasePrice},
    {"resale", model::field::Job::resaleLikely},
    {"budget", model::field::Job::budget},
    {"area_sqft", model::field::Job::livingArea},
    {"bedrooms", model::field::Job::bedrooms},
    {"baths", model::field::Job::baths},
    {"rooms", model::field::Job::rooms},
    {"built", model::field::Job::builtYear},
    {"begin", model::field::Job::beginOn},
    {"days_on_market", model::field::Job::resaleDays},
    {"profit", model::field::Job::wantedProfit},
};

// Fills one action from a draft, against what the job holds.
class Keeper {
  public:
    Keeper(store::Book& book, const model::JobRows& rows, store::LogPosition readAt,
           model::Instant now)
        : action("read walk notes", readAt),
          book_(book),
          rows_(rows),
          now_(now),
          maker_(rows.spaces) {
        for (const auto& space : rows.spaces) {
            spaces_[model::folded(space.name)] = space.id;
        }
        for (const auto& item : rows.items) {
            const ItemKey key = keyOf(item.space, model::wordOf(item.treatment), item.object);
            items_.insert(key);
            if (item.option.isNil()) {
                firm_.emplace(key, &item);
            }
        }
        for (const auto& alternate : rows.alternates) {
            questions_.insert({alternate.space, model::folded(alternate.question)});
        }
        for (const auto& caution : rows.cautions) {
            cautions_.insert(model::folded(caution.about + "|" + caution.source));
        }
    }

    void keep(const Draft& draft) {
        for (const auto& space : draft.spaces) {
            spaceNamed(space.name);
        }
        for (const auto& item : draft.items) {
            if (!isOfOptions(draft, item)) {
                keepItem(item);
            }
        }
        keepAlternates(draft);
        for (const auto& caution : draft.cautions) {
            keepCaution(caution);
        }
        keepFacts(draft);
    }

    store::Action action;
    KeepReport report;

  private:
    using ItemKey = std::tuple<Id<Kind::Space>, std::string, std::string>;

    static ItemKey keyOf(Id<Kind::Space> space, std::string_view treatment,
                         const std::string& object) {
        return {space, std::string(treatment), model::folded(object)};
    }

    Id<Kind::Space> spaceNamed(const std::string& name) {
        if (name.empty()) {
            return {};
        }
        const auto found = spaces_.find(model::folded(name));
        if (found != spaces_.end()) {
            return found->second;
        }
        // People write names with a capital on site plans; notes are read in lower case.
        std::string shown = name;
        shown[0] =
            static_cast<char>(shown[0] >= 'a' && shown[0] <= 'z' ? shown[0] - 'a' + 'A' : shown[0]);
        const model::Space space = maker_.make(book_.newId<Kind::Space>(now_), rows_.job.id, shown);
        action.add(space);
        spaces_[model::folded(name)] = space.id;
        ++report.spaces;
        return space.id;
    }

    // The item that the alternate's options stand for: what is replaced whatever its material.
    // Null where there is none.
    static const DraftItem* itemOf(const Draft& draft, const DraftAlternate& alternate) {
        const auto found =
            std::find_if(draft.items.begin(), draft.items.end(), [&](const DraftItem& item) {
                return alternate.materialOf == item.object && alternate.space == item.space &&
                       item.treatment != model::wordOf(model::Treatment::Keep);
            });
        const bool none = alternate.options.empty() || found == draft.items.end();
        return none ? nullptr : &*found;
    }

    // Whether the item is to be kept once for each material it may be of.
    bool isOfOptions(const Draft& draft, const DraftItem& item) {
        return std::any_of(draft.alternates.begin(), draft.alternates.end(),
                           [&](const DraftAlternate& one) {
                               if (itemOf(draft, one) != &item) {
                                   return false;
                               }
                               const Id<Kind::Space> space = spaceNamed(one.space);
                               const ItemKey key = keyOf(space, item.treatment, item.object);
                               return !questions_.contains({space, model::folded(one.question)}) &&
                                      (firm_.contains(key) || !items_.contains(key));
                           });
    }

    // The item as each option has it, so that it counts once: as of the first option until one is
    // chosen. One that the book has already becomes the first option's.
    void keepMaterials(const Draft& draft, const DraftAlternate& one, model::Alternate& alternate,
                       std::vector<std::pair<const DraftOption*, model::Option>>& options) {
        const DraftItem* item = itemOf(draft, one);
        if (item == nullptr) {
            return;
        }
        const ItemKey key = keyOf(alternate.space, item->treatment, item->object);
        const auto firm = firm_.find(key);
        const bool isNew = items_.insert(key).second;
        if (!isNew && firm == firm_.end()) {
            return;
        }
        const std::size_t first = options.size() - one.options.size();
        alternate.carried = options[first].second.id;
        for (std::size_t i = first; i < options.size(); ++i) {
            auto& [choice, option] = options[i];
            DraftItem made = *item;
            made.note = choice->name;
            made.cost = choice->cost ? choice->cost : made.cost;
            made.days = choice->days ? choice->days : made.days;
            option.cost.reset();
            option.days.reset();
            if (i == first && !isNew) {
                takeUp(*firm->second, made, option.id);
            } else {
                addItem(made, alternate.space, option.id);
            }
        }
        firm_.erase(key);
        ++(isNew ? report.items : report.alreadyThere);
    }

    // What the notes say of its cost and days fills in what the item does not say itself.
    void takeUp(const model::Item& item, const DraftItem& said, Id<Kind::Option> option) {
        namespace field = model::field::Item;
        action.set(item.id.raw(), field::option, option.raw());
        const bool priced = item.lumpSum || item.unitCostMaterial || item.unitCostLabour;
        if (said.cost && !priced) {
            action.set(item.id.raw(), field::lumpSum, said.cost->minor());
        }
        if (said.days && !item.daysLikely) {
            action.set(item.id.raw(), field::daysLikely, said.days->thousandths());
        }
    }

    void keepItem(const DraftItem& draft) {
        const Id<Kind::Space> space = spaceNamed(draft.space);
        if (!items_.insert(keyOf(space, draft.treatment, draft.object)).second) {
            ++report.alreadyThere;
            return;
        }
        addItem(draft, space, {});
        ++report.items;
    }

    void addItem(const DraftItem& draft, Id<Kind::Space> space, Id<Kind::Option> option) {
        model::Item item;
        item.option = option;
        item.id = book_.newId<Kind::Item>(now_);
        item.job = rows_.job.id;
        item.space = space;
        item.treatment =
            model::fromWord<model::Treatment>(draft.treatment).value_or(model::Treatment::Inspect);
        item.object = draft.object;
        item.quantity = draft.quantity;
        item.unit = draft.quantity ? draft.unit : std::string();
        item.source = draft.source.sentence;
        if (item.treatment == model::Treatment::Keep) {
            item.reason = draft.note.empty() ? draft.source.sentence : draft.note;
        } else {
            item.note = draft.note;
            item.lumpSum = draft.cost;
            item.daysLikely = draft.days;
            if (draft.leadDays) {
                item.leadDays = model::divideRounded(draft.leadDays->thousandths(), 1000);
            }
        }
        action.add(item);
    }

    void keepAlternates(const Draft& draft) {
        // Options may need one another across alternates, so all get their ids first.
        std::map<std::string, Id<Kind::Option>> byName;
        std::vector<std::pair<const DraftOption*, model::Option>> options;
        for (const auto& one : draft.alternates) {
            const Id<Kind::Space> space = spaceNamed(one.space);
            if (!questions_.insert({space, model::folded(one.question)}).second) {
                ++report.alreadyThere;
                continue;
            }
            model::Alternate alternate;
            alternate.id = book_.newId<Kind::Alternate>(now_);
            alternate.job = rows_.job.id;
            alternate.space = space;
            alternate.question = one.question;
            alternate.source = one.source.sentence;
            ++report.alternates;
            for (const auto& choice : one.options) {
                model::Option option;
                option.id = book_.newId<Kind::Option>(now_);
                option.job = rows_.job.id;
                option.alternate = alternate.id;
                option.name = choice.name;
                option.cost = choice.cost;
                option.days = choice.days;
                byName[model::folded(choice.name)] = option.id;
                options.emplace_back(&choice, option);
            }
            keepMaterials(draft, one, alternate, options);
            action.add(alternate);
        }
        for (auto& [choice, option] : options) {
            const auto needed = byName.find(model::folded(choice->needs));
            if (!choice->needs.empty() && needed != byName.end() && needed->second != option.id) {
                option.needs.push_back(needed->second);
            }
            action.add(option);
        }
    }

    void keepCaution(const DraftCaution& draft) {
        if (!cautions_.insert(model::folded(draft.about + "|" + draft.source.sentence)).second) {
            ++report.alreadyThere;
            return;
        }
        model::Caution caution;
        caution.id = book_.newId<Kind::Caution>(now_);
        caution.job = rows_.job.id;
        caution.about = draft.about;
        caution.why = draft.why;
        caution.source = draft.source.sentence;
        action.add(caution);
        ++report.cautions;
    }

    // The one value that the notes give a fact; empty where they give none or several.
    std::optional<std::string> factOf(const Draft& draft, std::string_view name,
                                      std::string_view heading) {
        std::set<std::string> values;
        for (const auto& fact : draft.facts) {
            if (fact.name == name) {
                values.insert(fact.value);
            }
        }
        if (values.size() > 1) {
            std::string list;
            for (const auto& value : values) {
                list += (list.empty() ? "" : " and ") + value;
            }
            report.factsLeft.push_back(std::string(heading) + ": the notes say " + list +
                                       "; set the right one");
        }
        return values.size() == 1 ? std::optional(*values.begin()) : std::nullopt;
    }

    void setFact(FieldCode code, const std::string& text, const model::Value& held) {
        const model::Field& field = *model::fieldOf(code);
        const auto none = [](Kind, std::string_view) -> Result<model::RawId> {
            return model::wrongUse("no record");
        };
        const auto name = [](model::RawId) { return std::string(); };
        auto value = model::parseValue(field, text, none);
        if (!value.ok() || !model::checkValue(field, value.value()).ok()) {
            report.factsLeft.push_back(std::string(field.heading) + ": \"" + text +
                                       "\" can't be taken as it is");
            return;
        }
        if (value.value() == held) {
            return;
        }
        if (!model::isEmpty(held)) {
            report.factsLeft.push_back(std::string(field.heading) + ": the notes say " + text +
                                       ", the job says " + model::printValue(field, held, name));
            return;
        }
        action.set(rows_.job.id.raw(), code, value.value());
        report.factsSet.push_back(std::string(field.heading) + " " +
                                  model::printValue(field, value.value(), name));
    }

    void keepFacts(const Draft& draft) {
        const store::Record job = store::recordOf(rows_.job);
        std::optional<model::Date> begin = rows_.job.beginOn;
        for (const auto& [fact, field] : kFactFields) {
            const auto text = factOf(draft, fact, model::fieldOf(field)->heading);
            if (!text) {
                continue;
            }
            setFact(field, *text, job.at(field));
            if (field == model::field::Job::beginOn && !begin) {
                if (auto day = model::Date::parse(*text); day.ok()) {
                    begin = day.value();
                }
            }
        }
        const auto duration = factOf(draft, "duration_days", "Duration");
        if (!duration || rows_.job.targetFinishOn) {
            return;
        }
        auto days = model::Quantity::parse(*duration);
        if (!begin) {
            report.factsLeft.push_back("Finish: the notes say " + *duration +
                                       " days, but not from when; set Begin and Finish");
        } else if (days.ok() && days.value() < model::Quantity::of(3650)) {
            const auto whole = static_cast<int>(days.value().thousandths() / 1000);
            setFact(model::field::Job::targetFinishOn, (*begin + whole).toString(), model::Value{});
        }
    }

    store::Book& book_;
    const model::JobRows& rows_;
    model::Instant now_;
    SpaceMaker maker_;
    std::map<std::string, Id<Kind::Space>> spaces_;
    std::set<ItemKey> items_;
    std::map<ItemKey, const model::Item*> firm_;  // of no option yet, in the book already
    std::set<std::pair<Id<Kind::Space>, std::string>> questions_;
    std::set<std::string> cautions_;
};

}  // namespace

std::vector<Correction> correctionsOf(const std::vector<DraftItem>& read,
                                      const std::vector<std::optional<DraftItem>>& wanted) {
    const auto says = [](const DraftItem& item) {
        return ItemSays{
            .space = item.space,
            .treatment =
                model::fromWord<model::Treatment>(item.treatment).value_or(model::Treatment::Unset),
            .object = item.object};
    };
    // A space has another name where none of its items is left in it and the name is new.
    std::set<std::string> spacesRead;
    std::set<std::string> spacesWanted;
    std::set<std::string> objectsKept;
    for (std::size_t i = 0; i < read.size(); ++i) {
        spacesRead.insert(model::folded(read[i].space));
        if (wanted[i]) {
            spacesWanted.insert(model::folded(wanted[i]->space));
            objectsKept.insert(model::folded(wanted[i]->object));
        }
    }
    std::vector<Correction> corrections;
    for (std::size_t i = 0; i < read.size(); ++i) {
        Correction correction{.sentence = read[i].source.sentence, .before = says(read[i])};
        if (wanted[i]) {
            correction.after = says(*wanted[i]);
            correction.spaceRenamed = !spacesWanted.contains(model::folded(read[i].space)) &&
                                      !spacesRead.contains(model::folded(wanted[i]->space));
        }
        const bool dropped = !wanted[i] && !objectsKept.contains(model::folded(read[i].object));
        if (wanted[i] ? correction.before != correction.after : dropped) {
            corrections.push_back(std::move(correction));
        }
    }
    return corrections;
}

Result<KeepReport> keepDraft(store::Book& book, Id<Kind::Job> job, const Draft& draft,
                             model::Instant now, std::span<const Correction> corrections) {
    return model::guarded([&]() -> Result<KeepReport> {
        const store::LogPosition readAt = book.position();
        auto rows = book.jobRows(job);
        if (!rows.ok()) {
            return rows.error();
        }
        Keeper keeper(book, rows.value(), readAt, now);
        keeper.keep(draft);
        auto taught = addLessons(keeper.action, book, corrections, now);
        if (!taught.ok()) {
            return taught.error();
        }
        keeper.report.taught = std::move(taught).value();
        if (auto done = book.commit(keeper.action, now); !done.ok()) {
            return done.error();
        }
        return keeper.report;
    });
}

}  // namespace ledgerboard::intake
