#include "core/compute/cautions.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>
#include <utility>

#include "core/compute/caution_sizes.h"
#include "core/compute/papers.h"
#include "core/compute/positions.h"
#include "core/compute/pricing.h"
#include "core/compute/progress.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Item;
using model::Saying;
using model::saying;

bool isAcknowledged(const model::Caution& kept) {
    return kept.acknowledgedOn || !kept.acknowledgedBy.isNil() || !kept.testResult.empty();
}

// Collects the cautions of a job. Lives for one call of cautionsOf.
class Collector {
  public:
    Collector(const model::JobRows& rows, Date today)
        : rows_(rows),
          today_(today),
          spaces_(rows.spaces),
          crews_(rows.crews),
          contracts_(rows.contracts),
          people_(rows.people),
          marks_(rows),
          counting_(countingOf(rows)),
          isUsed_(rows.cautions.size(), false) {
        for (std::size_t k = 0; k < rows.cautions.size(); ++k) {
            const model::Caution& kept = rows.cautions[k];
            keptOf_[kept.item.raw().hex() + aboutKey(kept.about)].push_back(k);
        }
    }

    Cautions collect() {
        measure();
        for (const std::size_t k : inWalkingOrder()) {
            ofItem(k);
        }
        ofHouse();
        for (const model::Mark& mark : rows_.marks) {
            if (mark.inSpiteOfCaution) {
                out_.inSpite.push_back({mark.id, mark.item, itemName(mark.item), mark.markedOn});
            }
        }
        return std::move(out_);
    }

  private:
    // One key for all the names of a rule.
    static std::string aboutKey(std::string_view about) {
        const CautionRow* row = cautionNamed(about);
        return "/" + model::folded(row == nullptr ? about : row->about);
    }

    bool counts(std::size_t k) const { return counting_[k] == Counting::Counts; }

    const model::Crew* crewOf(const Item& item) const {
        auto crew = crews_.of(item.crew);
        if (!crew) {
            const auto contract = contracts_.of(item.contract);
            crew = contract ? crews_.of(rows_.contracts[*contract].crew) : std::nullopt;
        }
        return crew ? &rows_.crews[*crew] : nullptr;
    }

    std::string tradeOf(const Item& item) const {
        const model::Crew* crew = crewOf(item);
        return item.trade.empty() && crew != nullptr ? crew->trade : item.trade;
    }

    std::string spaceName(const Item& item) const {
        const auto space = spaces_.of(item.space);
        return space ? rows_.spaces[*space].name : std::string();
    }

    std::string nameOf(const Item& item) const {
        const std::string space = spaceName(item);
        return space + (space.empty() ? "" : "/") + item.object;
    }

    std::string itemName(model::Id<model::Kind::Item> id) const {
        for (const Item& item : rows_.items) {
            if (item.id == id) {
                return nameOf(item);
            }
        }
        return "an item no longer in the job";
    }

    // By the walking order of their spaces, then as in the rows.
    std::vector<std::size_t> inWalkingOrder() const {
        std::vector<std::size_t> out;
        for (std::size_t k = 0; k < rows_.items.size(); ++k) {
            out.push_back(k);
        }
        const auto placeOf = [this](std::size_t k) {
            const auto space = spaces_.of(rows_.items[k].space);
            return std::make_pair(
                space ? rows_.spaces[*space].walkOrder.value_or(INT64_MAX) : INT64_MAX,
                space.value_or(SIZE_MAX));
        };
        std::stable_sort(out.begin(), out.end(),
                         [&](std::size_t a, std::size_t b) { return placeOf(a) < placeOf(b); });
        return out;
    }

    RaisedBy raised(const CautionRow& row, std::size_t k) const {
        const Item& item = rows_.items[k];
        if (!counts(k) || (row.where == CautionWhere::WayOut &&
                           !saysOneOf(CautionWords::WaysOut, spaceName(item)))) {
            return RaisedBy::Nothing;
        }
        return raisedBy(row, rows_.job, item, tradeOf(item));
    }

    void measure() {
        std::vector<bool> mayHoldLead;
        for (std::size_t k = 0; k < rows_.items.size(); ++k) {
            mayHoldLead.push_back(raised(rowOf(CautionRule::Lead), k) != RaisedBy::Nothing);
            mayHoldAsbestos_.push_back(raised(rowOf(CautionRule::Asbestos), k) !=
                                       RaisedBy::Nothing);
        }
        lead_ = leadSizesOf(rows_, mayHoldLead);
    }

    Saying age(const CautionRow& row) const {
        if (row.builtBefore == 0) {
            return {};
        }
        return rows_.job.builtYear ? saying("built %1", std::to_string(*rows_.job.builtYear))
                                   : saying("the year it was built isn't entered");
    }

    static Saying together(const Saying& first, const Saying& more) {
        return first.isEmpty() ? more : more.isEmpty() ? first : saying("%1; %2", first, more);
    }

    // "built 1936; hazards: old paint may hold lead; 420 sq ft, ...".
    Saying whyOf(const CautionRow& row, std::size_t k, RaisedBy by) const {
        const Item& item = rows_.items[k];
        Saying why = by == RaisedBy::Work ? age(row) : Saying();
        if (by != RaisedBy::Words) {
            why = together(why, saying("%1 %2", Saying(std::string(model::wordOf(item.treatment))),
                                       item.object));
        } else {
            why = together(why, item.hazards.empty() ? saying("condition: %1", item.condition)
                                                     : saying("hazards: %1", item.hazards));
        }
        return row.rule == CautionRule::Lead && lead_[k] ? together(why, lead_[k]->why) : why;
    }

    // What is kept of it: an acknowledged row where there is one, else the first.
    void meetKept(CautionRead& read) {
        const auto found = keptOf_.find(read.item.raw().hex() + aboutKey(read.about));
        if (found == keptOf_.end()) {
            return;
        }
        const model::Caution* best = nullptr;
        for (const std::size_t k : found->second) {
            isUsed_[k] = true;
            const model::Caution& kept = rows_.cautions[k];
            if (best == nullptr || (isAcknowledged(kept) && !isAcknowledged(*best))) {
                best = &kept;
            }
        }
        takeFrom(*best, read);
    }

    void takeFrom(const model::Caution& kept, CautionRead& read) const {
        read.record = kept.id;
        read.readFrom = kept.source;
        read.testResult = kept.testResult;
        read.acknowledgedOn = kept.acknowledgedOn;
        if (const auto person = people_.of(kept.acknowledgedBy)) {
            read.acknowledgedBy = rows_.people[*person].name;
        }
        if (isAcknowledged(kept)) {
            read.state = CautionState::Acknowledged;
        }
    }

    void ofItem(std::size_t k) {
        const Item& item = rows_.items[k];
        CautionRead blank;
        blank.item = item.id;
        blank.what = nameOf(item);
        blank.isBegun = marks_.shown(k) > model::Percent{};
        for (const CautionRow& row : cautionRows()) {
            const bool isOfItem =
                row.where == CautionWhere::Item || row.where == CautionWhere::WayOut;
            const RaisedBy by = isOfItem ? raised(row, k) : RaisedBy::Nothing;
            if (by == RaisedBy::Nothing) {
                continue;
            }
            CautionRead read = blank;
            read.row = &row;
            read.about = row.about;
            read.why = whyOf(row, k, by).text();
            if (row.rule == CautionRule::Lead && lead_[k] && lead_[k]->isMinor) {
                read.state = CautionState::Minor;
            }
            meetKept(read);
            out_.all.push_back(std::move(read));
        }
        addKept(item.id, blank);
    }

    // Rows that are kept and that no rule raises: in the owner's words, or of a rule that no longer
    // applies and was still acknowledged.
    void addKept(model::Id<model::Kind::Item> item, const CautionRead& blank) {
        for (std::size_t k = 0; k < rows_.cautions.size(); ++k) {
            const model::Caution& kept = rows_.cautions[k];
            if (isUsed_[k] || kept.item != item) {
                continue;
            }
            isUsed_[k] = true;
            CautionRead read = blank;
            // One about a crew names it behind a colon.
            read.row = cautionNamed(kept.about.substr(0, kept.about.find(": ")));
            read.about = kept.about;
            read.why = kept.why;
            takeFrom(kept, read);
            out_.all.push_back(std::move(read));
        }
    }

    void addHouse(const CautionRow& row, std::string about, const Saying& why) {
        CautionRead read;
        read.row = &row;
        read.about = std::move(about);
        read.why = why.text();
        meetKept(read);
        out_.all.push_back(std::move(read));
    }

    void ofHouse() {
        if (std::none_of(counting_.begin(), counting_.end(),
                         [](Counting counting) { return counting == Counting::Counts; })) {
            return addKept({}, CautionRead{});
        }
        for (const CautionRow& row : cautionRows()) {
            switch (row.where) {
                case CautionWhere::House:
                    ofHouseRule(row);
                    break;
                case CautionWhere::Notice:
                    if (const Saying why = asbestosNotice(rows_, mayHoldAsbestos_);
                        !why.isEmpty()) {
                        addHouse(row, std::string(row.about), why);
                    }
                    break;
                case CautionWhere::Crew:
                    ofCrews(row);
                    break;
                case CautionWhere::Item:
                case CautionWhere::WayOut:
                    break;
            }
        }
        addKept({}, CautionRead{});
    }

    void ofHouseRule(const CautionRow& row) {
        std::size_t raisedBy = 0;
        std::string names;
        for (std::size_t k = 0; k < rows_.items.size(); ++k) {
            if (raised(row, k) == RaisedBy::Nothing) {
                continue;
            }
            if (++raisedBy <= 3) {
                names += (names.empty() ? "" : ", ") + nameOf(rows_.items[k]);
            }
        }
        const bool isOfEveryHouse = row.objects.empty() && row.trades.empty();
        if (raisedBy > 0 || isOfEveryHouse) {
            addHouse(row, std::string(row.about),
                     isOfEveryHouse ? saying("every sale")
                     : raisedBy > 3 ? saying("%1 and %2 more", names, raisedBy - 3)
                                    : model::asWritten(names));
        }
    }

    void ofCrews(const CautionRow& row) {
        std::unordered_set<model::Id<model::Kind::Crew>> working;
        for (std::size_t k = 0; k < rows_.items.size(); ++k) {
            const model::Crew* crew = counts(k) ? crewOf(rows_.items[k]) : nullptr;
            if (crew != nullptr) {
                working.insert(crew->id);
            }
        }
        for (const model::Crew& crew : rows_.crews) {
            const Saying lacks = working.contains(crew.id) ? lacking(crew) : Saying();
            if (!lacks.isEmpty()) {
                addHouse(row, std::string(row.about) + ": " + crew.name, lacks);
            }
        }
    }

    Saying lacking(const model::Crew& crew) const {
        Saying licence = crew.licence.empty() && !hasLicencePaper(crew)
                             ? saying("no licence number is entered")
                             : Saying();
        const auto until = insuredUntil(rows_, crew);
        if (until && *until >= today_) {
            return licence;
        }
        return together(licence, until ? saying("its insurance ended on %1", until->toString())
                                       : saying("no insurance paper is entered"));
    }

    bool hasLicencePaper(const model::Crew& crew) const {
        return std::any_of(rows_.papers.begin(), rows_.papers.end(),
                           [&](const model::Paper& paper) {
                               return paper.type == model::PaperKind::Licence &&
                                      paper.crew == crew.id && paper.receivedOn;
                           });
    }

    const model::JobRows& rows_;
    Date today_;
    Positions<model::Space> spaces_;
    Positions<model::Crew> crews_;
    Positions<model::Contract> contracts_;
    Positions<model::Person> people_;
    Marks marks_;
    std::vector<Counting> counting_;
    std::unordered_map<std::string, std::vector<std::size_t>> keptOf_;  // by item and about
    std::vector<bool> isUsed_;                                          // of rows_.cautions
    std::vector<bool> mayHoldAsbestos_;
    std::vector<std::optional<LeadSize>> lead_;
    Cautions out_;
};

}  // namespace

std::vector<const CautionRead*> Cautions::holdingUp(model::Id<model::Kind::Item> item) const {
    std::vector<const CautionRead*> out;
    for (const CautionRead& caution : all) {
        if (caution.item == item && caution.holdsUp()) {
            out.push_back(&caution);
        }
    }
    return out;
}

std::size_t Cautions::openCount() const {
    return static_cast<std::size_t>(std::count_if(
        all.begin(), all.end(), [](const CautionRead& caution) { return caution.holdsUp(); }));
}

Cautions cautionsOf(const model::JobRows& rows, Date today) {
    return Collector(rows, today).collect();
}

bool isInSpite(const Cautions& cautions, model::Id<model::Kind::Item> item,
               const std::optional<Date>& on, bool saysBegun) {
    return saysBegun &&
           std::any_of(cautions.all.begin(), cautions.all.end(), [&](const CautionRead& caution) {
               const bool isLater = caution.acknowledgedOn && on && *caution.acknowledgedOn > *on;
               return caution.item == item && (caution.holdsUp() || isLater);
           });
}

model::Caution keptCaution(const CautionRead& caution, model::Id<model::Kind::Job> job) {
    model::Caution row;
    row.id = caution.record;
    row.job = job;
    row.item = caution.item;
    row.about = caution.about;
    row.why = caution.why;
    return row;
}

}  // namespace ledgerboard::compute
