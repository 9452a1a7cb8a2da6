// The cash line of a job from its rows: what is paid when, what to ask the lender for and when, and
// what the deal then comes to. Everything a page says about cash is worked out here, once.
//
// Source: project decisions, said in payments_ahead.h, draws_ahead.h and cash.h.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/compute/budget.h"
#include "core/compute/cash.h"
#include "core/compute/draws_ahead.h"
#include "core/compute/lender_draws.h"
#include "core/compute/work_ahead.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

struct CashPlan {
    DealFigures figures;  // what the deal leans on, planned draws in it
    CashLine line;
    DrawsNow drawsNow;
    std::vector<DrawAhead> drawsAhead;
    std::vector<CashMove> work;  // payments for work, so far and ahead
};

// What the deal leans on before draws ahead are planned. `work` is left out where nothing counts
// yet. A draw adds to the debt what was received and the lender's fee, from the day it was funded.
[[nodiscard]] DealFigures dealFiguresWithoutPlan(const model::JobRows& rows,
                                                 const JobFigures& figures,
                                                 std::optional<model::Date> willFinishOn,
                                                 model::Date today);

// `ahead` one for each of rows.items: what is left of the work, planned. Requires: rows and figures
// as of today. Errors: as deal. OverflowError.
[[nodiscard]] model::Result<CashPlan> cashPlanOf(const model::JobRows& rows,
                                                 const JobFigures& figures,
                                                 const std::vector<std::optional<WorkSpan>>& ahead,
                                                 std::optional<model::Date> willFinishOn,
                                                 model::Date today);

}  // namespace ledgerboard::compute
