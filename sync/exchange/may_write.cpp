#include "sync/exchange/may_write.h"

#include <algorithm>

namespace ledgerboard::sync {

using model::Kind;
using model::RawId;
using model::Result;
using store::Entry;
namespace field = model::field;

namespace {

constexpr const char* kNotYours = "it is not for this device to write";
constexpr const char* kDoesNotFit = "its value does not fit its field";

RawId idOf(const model::Value& value) {
    const auto* id = std::get_if<RawId>(&value);
    return id != nullptr ? *id : RawId{};
}

bool isIn(const std::set<RawId>& ids, const model::Value& value) {
    return ids.contains(idOf(value));
}

bool isNothingOrIn(const std::set<RawId>& ids, const model::Value& value) {
    return model::isEmpty(value) || isIn(ids, value);
}

bool says(const model::Value& value, std::string_view word) {
    const auto* text = std::get_if<std::string>(&value);
    return text != nullptr && *text == word;
}

}  // namespace

Result<std::optional<std::string>> WriteJudge::refusal(const Entry& entry) {
    const model::Field* known = model::fieldOf(entry.field);
    if (known != nullptr && !model::checkValue(*known, entry.value).ok()) {
        return std::optional<std::string>(kDoesNotFit);
    }
    if (standing_.role == model::Role::Owner) {
        return std::optional<std::string>();  // what this catalog does not know is passed on raw
    }
    const bool may = standing_.role == model::Role::CrewLead && leadMay(entry, known);
    if (problem_) {
        return *problem_;
    }
    if (!may) {
        return std::optional<std::string>(kNotYours);
    }
    cells(entry.record)[entry.field] = {entry.value, entry.name.device};
    return std::optional<std::string>();
}

bool WriteJudge::leadMay(const Entry& entry, const model::Field* known) {
    const Kind kind = model::kindOf(entry.field);
    const bool gone = entry.field == model::goneCode(kind);
    if (!gone && (known == nullptr || known->writes != model::Writes::Lead)) {
        return false;
    }
    switch (kind) {
        case Kind::Item:
            return !gone && view_.ownItems.contains(entry.record);
        case Kind::Mark:
            return ownFact(entry, field::Mark::item, view_.ownItems) && mayVoid(entry);
        case Kind::Look:
            return ownFact(entry, field::Look::punch, view_.ownPunches) &&
                   (entry.field != field::Look::said ||
                    says(entry.value, model::wordOf(model::Verdict::SaidFixed)));
        case Kind::Presence:
            return ownFact(entry, field::Presence::crew, {standing_.crew});
        case Kind::Photo:
            return mayPhoto(entry);
        case Kind::Change:
            return mayAsk(entry, gone);
        case Kind::Delivery:
            return !gone && mayDelivery(entry);
        case Kind::Caution:
            return mayCaution(entry, gone);
        default:
            return false;
    }
}

// A fact that the crew itself states about one of `allowed`: a mark, a look, a presence.
bool WriteJudge::ownFact(const Entry& entry, model::FieldCode belongsTo,
                         const std::set<RawId>& allowed) {
    if (!isOwnRecord(entry.record)) {
        return false;
    }
    if (entry.field == belongsTo) {
        return isIn(allowed, entry.value);
    }
    switch (entry.field) {
        case field::Mark::job:
        case field::Look::job:
        case field::Presence::job:
            return isIn(view_.ownJobs, entry.value);
        case field::Presence::presentOn:
            return true;  // comes before the crew, which decides
        case field::Mark::by:
        case field::Look::by:
            if (idOf(entry.value) != standing_.person) {
                return false;
            }
            break;
        case field::Mark::onDevice:
            if (!isIn(view_.crewDevices, entry.value)) {
                return false;
            }
            break;
        default:
            break;
    }
    return allowed.contains(refIn(entry.record, belongsTo));
}

// Only what the crew said itself is voided by it.
bool WriteJudge::mayVoid(const Entry& entry) {
    if (entry.field != field::Mark::voids) {
        return true;
    }
    const RawId target = idOf(entry.value);
    return !cells(target).empty() && isOwnRecord(target) &&
           refIn(target, field::Mark::item) == refIn(entry.record, field::Mark::item);
}

bool WriteJudge::mayPhoto(const Entry& entry) {
    if (!isOwnRecord(entry.record)) {
        return false;
    }
    switch (entry.field) {
        case field::Photo::job:
            return isIn(view_.ownJobs, entry.value);
        case field::Photo::space:
            return isNothingOrIn(view_.ownSpaces, entry.value);
        case field::Photo::item:
            return isNothingOrIn(view_.ownItems, entry.value);
        case field::Photo::punch:
            return isNothingOrIn(view_.ownPunches, entry.value);
        case field::Photo::purpose:
            return says(entry.value, model::wordOf(model::Purpose::Site));
        default:
            return view_.ownJobs.contains(refIn(entry.record, field::Photo::job));
    }
}

// A change is asked for once: nothing of it is written a second time, so that no sum is another
// than the one an owner read; it may be taken back whole until somebody else has written in it.
bool WriteJudge::mayAsk(const Entry& entry, bool gone) {
    const Cells& held = cells(entry.record);
    if (!isOwnRecord(entry.record) || (!gone && held.contains(entry.field))) {
        return false;
    }
    switch (entry.field) {
        case field::Change::job:
            return isIn(view_.ownJobs, entry.value);
        case field::Change::items: {
            std::vector<RawId> items;
            model::readRefs(entry.value, items);
            if (!std::all_of(items.begin(), items.end(),
                             [&](const RawId& item) { return view_.ownItems.contains(item); })) {
                return false;
            }
            break;
        }
        case field::Change::photo:
            if (!isOwnPhoto(idOf(entry.value))) {
                return false;
            }
            break;
        case field::Change::askedBy:
            if (idOf(entry.value) != standing_.person) {
                return false;
            }
            break;
        default:
            break;
    }
    return view_.ownJobs.contains(refIn(entry.record, field::Change::job));
}

bool WriteJudge::isOwnPhoto(const RawId& photo) {
    return !cells(photo).empty() && isOwnRecord(photo) &&
           view_.ownJobs.contains(refIn(photo, field::Photo::job));
}

bool WriteJudge::mayDelivery(const Entry& entry) {
    const bool own = isOwnRecord(entry.record);
    if (entry.field == field::Delivery::job) {
        return own && isIn(view_.ownJobs, entry.value);
    }
    if (entry.field == field::Delivery::item) {
        return own && isIn(view_.ownItems, entry.value);
    }
    return view_.ownItems.contains(refIn(entry.record, field::Delivery::item));
}

// A caution that the rules raise is in no row before somebody acknowledges it: the crew writes down
// what it is about where it is the first, and may take that back. In anybody's row of an own item
// it acknowledges in the own name.
bool WriteJudge::mayCaution(const Entry& entry, bool gone) {
    const bool own = isOwnRecord(entry.record);
    if (entry.field == field::Caution::job) {
        return own && isIn(view_.ownJobs, entry.value);
    }
    if (entry.field == field::Caution::item) {
        return own && isIn(view_.ownItems, entry.value);
    }
    if (!view_.ownItems.contains(refIn(entry.record, field::Caution::item))) {
        return false;
    }
    if (gone || entry.field == field::Caution::about || entry.field == field::Caution::why) {
        return own;
    }
    return entry.field != field::Caution::acknowledgedBy || model::isEmpty(entry.value) ||
           idOf(entry.value) == standing_.person;
}

// New, or begun by this crew: a fact in it is the crew's, or all that was said so far is.
bool WriteJudge::isOwnRecord(const RawId& record) {
    const Cells& held = cells(record);
    const auto byCrew = [&](const auto& cell) {
        return view_.crewDevices.contains(cell.second.author);
    };
    const auto factByCrew = [&](const auto& cell) {
        const model::Field* known = model::fieldOf(cell.first);
        return known != nullptr && known->merge == model::Merge::Kept && byCrew(cell);
    };
    return std::all_of(held.begin(), held.end(), byCrew) ||
           std::any_of(held.begin(), held.end(), factByCrew);
}

RawId WriteJudge::refIn(const RawId& record, model::FieldCode code) {
    const Cells& held = cells(record);
    const auto found = held.find(code);
    return found == held.end() ? RawId{} : idOf(found->second.value);
}

WriteJudge::Cells& WriteJudge::cells(const RawId& record) {
    const auto [found, isNew] = known_.try_emplace(record);
    if (isNew) {
        auto held = book_.cellsOf(record);
        if (!held.ok()) {
            problem_ = held.error();
            return found->second;
        }
        for (const auto& one : held.value()) {
            found->second[one.entry.field] = {one.entry.value, one.entry.name.device};
        }
    }
    return found->second;
}

}  // namespace ledgerboard::sync
