// Which order of work makes a crew plan short?
//
// A genetic search over plans. Two populations take turns: one of plans packed toward the start,
// one of plans packed toward the end. A child takes from one parent what that parent does within a
// busy stretch of its plan, and keeps the rest in the order of the other parent; it is then packed
// the other way, so each generation also does what forward-backward improvement does to a plan.
// Parents that are equally good are shaken a little. When nothing gets better for long, it starts
// afresh and keeps the best plan.
// Source: D. Debels, M. Vanhoucke, "A decomposition-based genetic algorithm for the
// resource-constrained project-scheduling problem", Operations Research 55 (2007), 457 to 469 (two
// populations, crossing at a busy stretch); V. Valls, F. Ballestin, S. Quintanilla, European
// Journal of Operational Research 165 (2005), 375 to 386 (justification); 185 (2008), 495 to 508
// (peaks); R. Kolisch, A. Drexl (1996; first plans by chance with a bias to a long tail). All from
// memory, and simplified: no decomposition, and sizes of our own choosing, tuned on PSPLIB's j30.
#pragma once

#include <cstdint>
#include <functional>
#include <vector>

#include "core/compute/crew_problem.h"

namespace ledgerboard::compute {

struct CrewSearchLimits {
    std::int64_t tries = 0;  // plans made, forward and backward ones alike; 1 at least
    std::uint64_t seed = 1;
    CrewTime enough = 0;  // stops at a plan no longer than this
    std::function<bool()>
        goOn{};  // asked at least once before each try but the first; empty: always
};

struct CrewSearchResult {
    std::vector<CrewTime> starts;
    CrewTime length = 0;
    std::int64_t tries = 0;
};

// The plain list: all items in the order of the links, the one with the longest chain behind it
// first, each as early as it can be.
[[nodiscard]] CrewSearchResult plainCrewPlan(const CrewProblem& problem);

// The shortest plan found; the first try is the plain list, so it is never longer. The same for the
// same problem, tries, seed and `enough` on every machine, where goOn does not cut it short.
// Requires: every use within its capacity. Threads: any number at once.
[[nodiscard]] CrewSearchResult searchCrewPlan(const CrewProblem& problem,
                                              const CrewSearchLimits& limits);

}  // namespace ledgerboard::compute
