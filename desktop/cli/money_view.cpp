#include "desktop/cli/money_view.h"

#include "core/compute/as_of.h"
#include "core/compute/plan.h"
#include "core/report/deal_figures.h"

namespace ledgerboard::cli {

model::Result<MoneyView> moneyView(Session& session) {
    auto rows = session.rows();
    if (!rows.ok()) {
        return rows.error();
    }
    auto today = session.today();
    if (!today.ok()) {
        return today.error();
    }
    // What is dated later than today has not happened yet, as on the week's page.
    MoneyView out{compute::asOf(std::move(rows).value(), today.value()), today.value(), {}, {}};
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
