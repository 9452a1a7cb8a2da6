// Where does a plan want a crew in more places than it has people for, or two crews in a space that
// takes one at a time?
//
// Units: those of the starts. Source: project decision. Threads: any number at once.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "core/compute/crew_plan.h"

namespace ledgerboard::compute {

struct Stacked {
    std::optional<std::size_t> crew;  // position in crews; either this or `space` is there
    std::optional<std::size_t> space;
    std::int64_t from = 0;    // too much is wanted at every moment from here
    std::int64_t to = 0;      // until here
    std::int64_t wanted = 0;  // at most at one time: places of the crew, parties in the space
    std::vector<std::size_t> items;  // under way meanwhile, by position
};

// For these starts: crews in their order, then spaces, each by time. Empty where nothing is wanted
// twice. Items without days want nothing. Requires: an input that crewPlan() takes, and one start
// for each item.
[[nodiscard]] std::vector<Stacked> stackedIn(const CrewPlanInput& input,
                                             std::span<const std::int64_t> starts);

}  // namespace ledgerboard::compute
