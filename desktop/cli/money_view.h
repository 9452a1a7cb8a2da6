// What do the verbs about money look at? The job's figures and its cash plan, read once.
#pragma once

#include "core/compute/budget.h"
#include "core/compute/cash_plan.h"
#include "core/model/rows.h"

#include "desktop/cli/session.h"

namespace ledgerboard::cli {

struct MoneyView {
    model::JobRows rows;
    model::Date today;
    compute::JobFigures figures;
    compute::CashPlan plan;
};

// Errors: those of reading the book, and what the plan refuses. OverflowError.
[[nodiscard]] model::Result<MoneyView> moneyView(Session& session);

}  // namespace ledgerboard::cli
