// What needs the owner, or the crew lead, today?
//
// An owner: punch items said to be fixed, deliveries due, decisions due within a week, changes
// asked and not answered, cautions that hold up work begun or beginning within a week, work to be
// accepted, insurance that has lapsed. A crew lead: cautions of own items, own deliveries, work to
// be left open. Most pressing first, in that order.
// Source: project decision, after the list a site visit begins with (common practice, no source).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "mobile/now/job_now.h"

namespace ledgerboard::phone {

enum class NeedKind {
    LookAtPunch,    // count of items said to be fixed; names: their spaces
    Delivery,       // due today or late; what: the goods
    Decide,         // what: the question
    AnswerChange,   // what: the change; money: its amount
    Caution,        // what: the item; why: the caution
    AcceptWork,     // what: the item the crew says can be looked at
    InsuranceEnds,  // what: the crew
    LeaveOpen,      // what: the item, not to be covered before it is looked at
};

struct Need {
    NeedKind kind = NeedKind::Decide;
    std::string what;
    std::string why;
    std::optional<model::Date> on;  // due, asked, ends
    std::optional<model::Money> money;
    std::size_t count = 1;
    model::Id<model::Kind::Space> space;    // where to go; nil: the house
    model::Id<model::Kind::Item> item;      // nil where it is about none
    model::Id<model::Kind::Change> change;  // of AnswerChange
};

[[nodiscard]] std::vector<Need> needsToday(const JobNow& now);

}  // namespace ledgerboard::phone
