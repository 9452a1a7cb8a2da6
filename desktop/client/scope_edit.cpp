#include "desktop/client/scope_edit.h"

#include <algorithm>
#include <set>

#include "core/compute/pricing.h"
#include "core/intake/files/find.h"
#include "core/intake/files/space_maker.h"
#include "core/model/saying.h"
#include "core/model/value.h"

namespace ledgerboard::desk {

using model::Result;
namespace f = model::field;

namespace {

constexpr std::size_t kMostChoices = 8;

// What cells may name: spaces and crews. A finder of the whole job would take long to make.
intake::Finder finderOf(const JobNow& now) {
    model::JobRows rows;
    rows.job = now.rows.job;
    rows.spaces = now.rows.spaces;
    rows.crews = now.rows.crews;
    return intake::Finder(rows);
}

std::string trimmed(const std::string& text) {
    const auto first = text.find_first_not_of(" \t\r\n");
    if (first == std::string::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1);
}

// The space of this name, made in the action where it is not there yet.
Result<model::RawId> spaceNamed(store::Book& book, const JobNow& now, const std::string& name,
                                model::Instant at, store::Action& action) {
    const intake::Finder finder = finderOf(now);
    if (auto found = finder.find(model::Kind::Space, name); found.ok()) {
        return found.value();
    }
    intake::SpaceMaker maker(now.rows.spaces);
    const model::Space space =
        maker.make(book.newId<model::Kind::Space>(at), now.rows.job.id, name);
    action.add(space);
    return space.id.raw();
}

// The one treatment that begins with what was typed; else what was typed.
std::string wholeTreatment(const std::string& typed) {
    const std::string begun = compute::folded(typed);
    std::string whole;
    for (const auto word : model::wordsOf<model::Treatment>()) {
        if (!begun.empty() && word.substr(0, begun.size()) == begun) {
            if (!whole.empty()) {
                return typed;
            }
            whole = std::string(word);
        }
    }
    return whole.empty() ? typed : whole;
}

std::set<std::string> namesFor(const JobNow& now, model::FieldCode field) {
    std::set<std::string> names;
    switch (field) {
        case f::Item::space:
            for (const auto& space : now.rows.spaces) {
                names.insert(space.name);
            }
            break;
        case f::Item::crew:
            for (const auto& crew : now.rows.crews) {
                names.insert(crew.name);
            }
            break;
        case f::Item::treatment:
            for (const auto word : model::wordsOf<model::Treatment>()) {
                names.emplace(word);
            }
            break;
        case f::Item::object:
            for (const auto& price : now.rows.prices) {
                names.insert(price.object);
            }
            break;
        case f::Item::trade:
            for (const auto& line : now.figures.scope.lines) {
                names.insert(line.trade);
            }
            break;
        case f::Item::unit:
            for (const auto& price : now.rows.prices) {
                names.insert(price.unit);
            }
            for (const auto& item : now.rows.items) {
                names.insert(item.unit);
            }
            break;
        default:
            break;
    }
    names.erase("");
    return names;
}

}  // namespace

std::string cellText(const JobNow& now, std::size_t item, model::FieldCode field) {
    const model::Item& row = now.rows.items[item];
    if (field == f::Item::space) {
        return spaceName(now.rows, row.space);
    }
    if (field == f::Item::crew) {
        return crewName(now.rows, row.crew);
    }
    return model::printValue(*model::fieldOf(field), store::recordOf(row).at(field), {});
}

std::string itemName(const JobNow& now, std::size_t item) {
    return now.figures.scope.lines[item].name;
}

std::vector<std::string> cellChoices(const JobNow& now, model::FieldCode field,
                                     const std::string& typed) {
    const std::string wanted = compute::folded(typed);
    std::vector<std::string> first;
    std::vector<std::string> others;
    for (const auto& name : namesFor(now, field)) {
        const auto at = compute::folded(name).find(wanted);
        if (at == 0) {
            first.push_back(name);
        } else if (at != std::string::npos) {
            others.push_back(name);
        }
    }
    first.insert(first.end(), others.begin(), others.end());
    first.resize(std::min(first.size(), kMostChoices));
    return first;
}

Result<store::Action> putCell(store::Book& book, const JobNow& now, std::size_t item,
                              model::FieldCode field, const std::string& text, model::Instant at) {
    const model::Field& meant = *model::fieldOf(field);
    const model::Item& row = now.rows.items[item];
    const std::string heading(meant.heading);
    std::string typed = trimmed(text);
    store::Action action("set " + itemName(now, item) + ", " + heading);
    if (field == f::Item::space && !typed.empty()) {
        auto space = spaceNamed(book, now, typed, at, action);
        if (!space.ok()) {
            return space.error();
        }
        action.set(row.id.raw(), field, space.value());
        return action;
    }
    if (field == f::Item::treatment) {
        typed = wholeTreatment(typed);
    }
    const intake::Finder finder = finderOf(now);
    if (field == f::Item::crew && !finder.find(model::Kind::Crew, typed).ok()) {
        // A part of a name will do where it is of one crew.
        if (const auto near = cellChoices(now, field, typed); near.size() == 1 && !typed.empty()) {
            typed = near.front();
        }
    }
    auto value = model::parseValue(meant, typed, finder.findRecord());
    if (value.ok()) {
        if (auto good = model::checkValue(meant, value.value()); !good.ok()) {
            return good.error();
        }
    }
    if (!value.ok()) {
        return model::inPlace(model::Saying(heading), value.error());
    }
    action.set(row.id.raw(), field, value.value());
    return action;
}

store::Action fillDown(const JobNow& now, const std::vector<std::size_t>& items,
                       model::FieldCode field) {
    const auto value = store::recordOf(now.rows.items[items.front()]).at(field);
    store::Action action("fill down " + std::string(model::fieldOf(field)->heading) + " of " +
                         itemName(now, items.front()));
    for (std::size_t k = 1; k < items.size(); ++k) {
        action.set(now.rows.items[items[k]].id.raw(), field, value);
    }
    return action;
}

Result<NewItem> newItem(store::Book& book, const JobNow& now, const std::string& said,
                        model::Id<model::Kind::Space> space, model::Instant at) {
    std::string what = trimmed(said);
    std::string where;
    if (const auto colon = what.find(':'); colon != std::string::npos) {
        where = trimmed(what.substr(0, colon));
        what = trimmed(what.substr(colon + 1));
    }
    if (what.empty()) {
        return model::wrongUse(
            "say what is to be done, such as \"replace faucet\" or \"Hall bath: replace faucet\"");
    }
    NewItem made{store::Action("add scope item " + what), book.newId<model::Kind::Item>(at)};
    model::Item item;
    item.id = made.id;
    item.job = now.rows.job.id;
    item.space = space;
    if (!where.empty()) {
        auto named = spaceNamed(book, now, where, at, made.action);
        if (!named.ok()) {
            return named.error();
        }
        item.space = model::Id<model::Kind::Space>(named.value());
    }
    const auto gap = what.find(' ');
    const auto treatment = model::fromWord<model::Treatment>(compute::folded(what.substr(0, gap)));
    const bool isTreated =
        treatment && *treatment != model::Treatment::Unset && gap != std::string::npos;
    item.treatment = isTreated ? *treatment : model::Treatment::Unset;
    item.object = isTreated ? trimmed(what.substr(gap)) : what;
    made.action.add(item);
    return made;
}

store::Action priceFromBook(const JobNow& now, const std::vector<std::size_t>& items) {
    store::Action action("price from the price book: " + itemName(now, items.front()));
    for (const std::size_t k : items) {
        for (const auto field :
             {f::Item::lumpSum, f::Item::unitCostMaterial, f::Item::unitCostLabour}) {
            action.set(now.rows.items[k].id.raw(), field, {});
        }
    }
    return action;
}

}  // namespace ledgerboard::desk
