// How long does the work take when no crew can be in more places at once than it has people for,
// and some spaces hold one crew at a time?
//
// Units: time in whole units of the caller's choosing (thousandths of a working day for a job).
// An item, once begun, goes on to its end. Links and lags are as in network.h; a lag is the least
// that must pass. Times never below 0. Deadlines of activities are not looked at.
// Source: project decision; the search and the bound name theirs (crew_search.h, crew_bound.h).
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/compute/network.h"
#include "core/model/result.h"

namespace ledgerboard::compute {

struct PlanCrew {
    std::string name;
    std::int64_t capacity = 1;  // places it can be in at once
};

struct CrewNeed {
    std::size_t crew = 0;     // position in crews
    std::int64_t places = 1;  // of its capacity
};

struct CrewedItem {
    std::string name;
    Activity activity;
    std::vector<CrewNeed> needs;  // none: it waits for no crew
    // The space it is in, where that takes one crew at a time. One crew may be twice in it, as its
    // capacity lets it; an item there without a crew keeps everybody else out.
    std::optional<std::size_t> space;  // position in spaces
};

struct CrewPlanInput {
    std::vector<CrewedItem> items;
    std::vector<Precedence> precedences;
    std::vector<PlanCrew> crews;
    std::vector<std::string> spaces;  // names of those that take one crew at a time
};

struct CrewPlanLimits {
    std::int64_t tries = 5000;     // plans made in the search
    std::uint64_t seed = 1;        // the same seed gives the same plan
    std::function<bool()> goOn{};  // false stops the search at the best plan so far; empty: never
};

struct CrewPlan {
    std::vector<std::int64_t> starts;  // as the items
    std::int64_t length = 0;           // the latest finish; 0 without items
    std::int64_t lowerBound = 0;       // no plan is shorter
    std::int64_t withoutCrews = 0;     // the length if every crew could be everywhere at once
    std::int64_t plainLength = 0;      // of the plain list: each item as early as it fits, in turn
    std::int64_t tries = 0;

    [[nodiscard]] bool isShortest() const { return length == lowerBound; }
};

// The shortest plan found: it keeps every link, earliest start, capacity and space, is never longer
// than the plain list and never shorter than lowerBound. The same for the same input, tries and
// seed on every machine; where goOn cuts it short, what it got to.
// Errors (WrongUse), each naming the item or crew: a crew or space that is not there, a crew named
// twice by one item, places below 1 or beyond the crew's capacity, a capacity below 0, a duration
// below 0, a link of an item that is not there, a loop; CannotBeMet: more than kMostCrewItems, or
// times too long to add up. Threads: any number at once.
[[nodiscard]] model::Result<CrewPlan> crewPlan(const CrewPlanInput& input,
                                               const CrewPlanLimits& limits);

inline constexpr std::size_t kMostCrewItems = 2000;

// Who stands in a space with an item: its crews, by position; for an item without any, something
// that no other item has.
using CrewParty = std::pair<std::size_t, std::vector<std::size_t>>;
[[nodiscard]] CrewParty partyOf(const CrewPlanInput& input, std::size_t item);

}  // namespace ledgerboard::compute
