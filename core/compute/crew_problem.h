// What does the search for a crew plan work on, once names, kinds of links and calendars are gone?
//
// Times are whole counts of one unit, which the caller chose (crew_plan.cpp). Every link says "this
// start comes at least so much after that start"; a mirror image of the same problem runs backward
// in time, so that what schedules forward also schedules backward.
// Source: project decision; resource-constrained project scheduling with minimum time lags as in
// Brucker, Drexl, Moehring, Neumann, Pesch, European Journal of Operational Research 112 (1999), 3
// to 41 (from memory). Threads: a value, shared by anyone who only reads it.
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

namespace ledgerboard::compute {

using CrewTime = std::int64_t;  // whole units

// The capacity of a resource that only parties limit.
inline constexpr std::int64_t kNoLimit = 1'000'000'000;

// What an item takes of a resource while it is worked on. A crew is a resource of its capacity. A
// space that takes one crew at a time is one without a limit, but all that stand in it at one time
// must be of one party.
struct CrewUse {
    std::size_t resource = 0;
    std::int64_t amount = 1;
    std::size_t party = 0;  // 0 for all uses of a crew
};

// Start of the item that holds it >= start of `item` + `lag`; in CrewWork::before the other way
// round: start of `item` >= start of the holder + `lag`. A lag may be below 0.
struct StartLag {
    std::size_t item = 0;
    CrewTime lag = 0;
};

struct CrewWork {
    CrewTime days = 0;
    CrewTime head = 0;  // earliest start
    CrewTime tail = 0;  // what must still pass between its finish and the end
    std::vector<StartLag> after;
    std::vector<StartLag> before;
    std::vector<CrewUse> uses;  // at most one of a resource; none where days is 0
};

struct CrewProblem {
    std::vector<CrewWork> items;
    std::vector<std::int64_t> capacities;  // of each resource
    std::vector<std::size_t> order;        // all items, each after those it waits for

    // Requires: items and capacities filled, links in `after` alone, without a loop. Fills `before`
    // and `order`.
    void finish();
};

// The same problem with time running backward: a start there is the length less the finish here.
[[nodiscard]] CrewProblem mirrorOf(const CrewProblem& problem);

// Whether two items can never be worked on at the same time.
[[nodiscard]] bool areApart(const CrewProblem& problem, std::size_t one, std::size_t other);

// The length of a plan with these starts: the latest finish with its tail, at least 0.
[[nodiscard]] CrewTime lengthOf(const CrewProblem& problem, const std::vector<CrewTime>& starts);

}  // namespace ledgerboard::compute
