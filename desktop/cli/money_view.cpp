#include "desktop/cli/money_view.h"

#include "core/compute/plan.h"
#include "core/report/deal_figures.h"

namespace ledgerboard::cli {

model::Result<MoneyView> moneyView(Session& session) {
    auto job = session.jobOnDay();
    if (!job.ok()) {
        return job.error();
    }
    MoneyView out{std::move(job.value().rows), job.value().today, {}, {}};
    out.figures = compute::figuresOf(out.rows, out.today);
    const auto planned = compute::planOf(out.rows, out.figures, out.today);
    auto plan = report::cashPlanFor(out.rows, out.figures, planned, out.today);
    if (!plan.ok()) {
        return plan.error();
    }
    out.plan = std::move(plan).value();
    return out;
}

}  // namespace ledgerboard::cli
