// How is the plan read by a program?
//
// Days as ISO 8601, floats and days left in working days, names as SPACE/OBJECT.
#pragma once

#include <optional>
#include <string>

#include "core/compute/budget.h"
#include "core/compute/plan.h"
#include "core/model/rows.h"

namespace ledgerboard::report {

// One document, ended by a line break; what is not known is null. `kept`: how many items' planned
// dates were written, null where none were asked for.
// Requires: plan and figures of `rows`, which are as of today.
[[nodiscard]] std::string planJson(const model::JobRows& rows, const compute::JobFigures& figures,
                                   const compute::Plan& plan, model::Date today,
                                   std::optional<std::size_t> kept = std::nullopt);

}  // namespace ledgerboard::report
