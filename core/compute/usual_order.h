// In what order do the trades usually come, and which links does that make?
//
// Source: common practice, no source. Two variants are as common and are for the owner to choose:
// floors before or after cabinets, wood floors finished before or after the last coat; here hard
// floors run under cabinets, and wood floors come before the last coat. Roof, masonry, gutters,
// windows and the yard run alongside and are not linked.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/compute/budget.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

// The steps of the work inside, in their order: "permits", "tear-out", ... "final clean".
[[nodiscard]] std::vector<std::string_view> usualSteps();

// Which of usualSteps() an item is part of, by the words of its object, then by its treatment, then
// by its trade. Empty where none is told.
[[nodiscard]] std::optional<std::size_t> usualStepOf(const model::Item& item);

// Links (finish to start, no lag, nil ids) for unfinished items that have no link at all: each
// waits for those of the nearest earlier step in its own space or of the whole house; an item of
// the whole house for those of the whole house alone; the final clean for everything that nothing
// else waits for. Never makes a loop. In order of the items that wait. Requires: figures of rows.
[[nodiscard]] std::vector<model::Link> usualLinks(const model::JobRows& rows,
                                                  const JobFigures& figures);

}  // namespace ledgerboard::compute
