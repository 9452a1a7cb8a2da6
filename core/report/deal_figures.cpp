#include "core/report/deal_figures.h"

#include "core/compute/work_ahead.h"

namespace ledgerboard::report {

model::Result<compute::CashPlan> cashPlanFor(const model::JobRows& rows,
                                             const compute::JobFigures& figures,
                                             const compute::Plan& plan, model::Date today) {
    return compute::cashPlanOf(rows, figures, compute::workAheadOf(rows, figures, plan), plan.on,
                               today);
}

compute::DealFigures dealFiguresOf(const model::JobRows& rows, const compute::JobFigures& figures,
                                   const compute::Plan& plan, model::Date today) {
    const auto cash = cashPlanFor(rows, figures, plan, today);
    return cash.ok() ? cash.value().figures
                     : compute::dealFiguresWithoutPlan(rows, figures, plan.on, today);
}

}  // namespace ledgerboard::report
