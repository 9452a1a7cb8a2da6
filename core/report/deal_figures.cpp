#include "core/report/deal_figures.h"

namespace ledgerboard::report {

using model::Money;

compute::DealFigures dealFiguresOf(const model::JobRows& rows, const compute::JobFigures& figures,
                                   std::optional<model::Date> willFinishOn, model::Date today) {
    compute::DealFigures out;
    if (figures.job.items > 0 || figures.job.forecast != Money{}) {
        out.work = figures.job.forecast;
    }
    out.contingencyLeft = figures.contingency.left;
    out.willFinishOn = willFinishOn;
    out.asOf = today;
    for (const auto& draw : rows.draws) {
        if (draw.fundedOn && draw.amount) {
            out.workDraws.push_back({*draw.fundedOn, *draw.amount + draw.fee.value_or(Money{})});
        }
    }
    return out;
}

}  // namespace ledgerboard::report
