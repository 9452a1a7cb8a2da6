// How short can a crew plan be at the very best? A length that no plan can beat, so that one sees
// how good a plan is that was found.
//
// Asked of a length is whether it can be ruled out; the longest that can, plus one unit, is the
// bound. Within a length every item has an earliest start and a latest finish, and these are
// tightened until nothing moves, by four reasons:
//  - links;
//  - two items that cannot be under way together: if one cannot come first, the other does;
//  - the middle part of an item that is under way wherever it is put, which others must leave free;
//  - trying the earliest or latest start of one item: if that leads to a contradiction, it is out.
// It is ruled out when an item has no start left, or when the crew-days that must fall between two
// moments are more than there are (also for items of which no two can be under way together).
// Source: R. Klein, A. Scholl, "Computing lower bounds by destructive improvement", European
// Journal of Operational Research 112 (1999), 322 to 346; J. Erschler, P. Lopez, energy-based
// reasoning (1990); shaving as P. Martin, D. Shmoys, IPCO 1996. All from memory.
// Threads: any number at once.
#pragma once

#include <functional>

#include "core/compute/crew_problem.h"

namespace ledgerboard::compute {

// A length below which there is no plan; the length of the longest chain of links at least. Where
// goOn answers false, what is proven by then. The work put in is limited, by the number of steps.
// Requires: `longest` is the length of a plan that is known. Never above it.
[[nodiscard]] CrewTime crewLowerBound(const CrewProblem& problem, CrewTime longest,
                                      const std::function<bool()>& goOn = {});

}  // namespace ledgerboard::compute
