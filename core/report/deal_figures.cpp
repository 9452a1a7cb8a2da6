#include "core/report/deal_figures.h"

#include "core/compute/work_ahead.h"

namespace ledgerboard::report {

model::Result<compute::CashPlan> cashPlanFor(const model::JobRows& rows,
                                             const compute::JobFigures& figures,
                                             std::optional<model::Date> willFinishOn,
                                             model::Date today) {
    return compute::cashPlanOf(rows, figures, compute::workAheadOf(rows, figures, today),
                               willFinishOn, today);
}

compute::DealFigures dealFiguresOf(const model::JobRows& rows, const compute::JobFigures& figures,
                                   std::optional<model::Date> willFinishOn, model::Date today) {
    const auto plan = cashPlanFor(rows, figures, willFinishOn, today);
    return plan.ok() ? plan.value().figures
                     : compute::dealFiguresWithoutPlan(rows, figures, willFinishOn, today);
}

}  // namespace ledgerboard::report
