// plan --crews: the job's plan in which no crew is in more places at once than it can be.
#pragma once

#include <cstdint>
#include <optional>

#include "core/compute/budget.h"
#include "core/model/rows.h"

#include "desktop/cli/session.h"

namespace ledgerboard::cli {

// What of plan's options is about crews.
struct CrewPlanOptions {
    bool isWanted = false;
    std::optional<std::int64_t> tries;
    std::optional<double> seconds;
    std::optional<std::int64_t> seed;
};

// Whether any of them was said.
[[nodiscard]] bool saysCrews(const CrewPlanOptions& options);

// Prints it, as text or JSON; with `keep` its dates become the planned ones. Requires: rows as of
// today, figures of them. Errors: WrongUse for options that do not go together or are out of range;
// CannotBeMet for links in a loop, and what crewPlanOf refuses.
[[nodiscard]] model::Result<void> planByCrews(Session& session, const CrewPlanOptions& options,
                                              bool keep, const model::JobRows& rows,
                                              const compute::JobFigures& figures,
                                              model::Date today);

}  // namespace ledgerboard::cli
