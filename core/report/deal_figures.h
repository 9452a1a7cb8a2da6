// What does the deal lean on beside the job's own fields? The forecast of the work and of the
// finish, the draws so far and the planned ones, gathered once so that the week's page, the deal
// and the cash line say the same.
#pragma once

#include "core/compute/budget.h"
#include "core/compute/cash_plan.h"
#include "core/compute/deal.h"
#include "core/compute/plan.h"
#include "core/model/rows.h"

namespace ledgerboard::report {

// The whole cash plan by the plan of what is left. Requires: rows = asOf(rows, today), plan of
// them. Errors: as deal. OverflowError.
[[nodiscard]] model::Result<compute::CashPlan> cashPlanFor(const model::JobRows& rows,
                                                           const compute::JobFigures& figures,
                                                           const compute::Plan& plan,
                                                           model::Date today);

// `work` is left out where nothing counts yet. Draws ahead are those of the cash plan; where there
// can be none (something entered is at odds with itself) their days stay unknown.
// Requires: rows = asOf(rows, today), plan of them. Errors: OverflowError.
[[nodiscard]] compute::DealFigures dealFiguresOf(const model::JobRows& rows,
                                                 const compute::JobFigures& figures,
                                                 const compute::Plan& plan, model::Date today);

}  // namespace ledgerboard::report
