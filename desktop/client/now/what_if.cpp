#include "desktop/client/now/what_if.h"

#include <algorithm>

#include "core/compute/plan.h"
#include "core/report/deal_figures.h"

namespace ledgerboard::desk {

using model::Money;
using model::Result;

namespace {

constexpr int kAWeek = 7;
constexpr std::int64_t kWholeTenths = 1'000;  // 100 %

std::optional<Money> moved(const std::optional<Money>& money, int tenths) {
    if (!money || tenths == 0) {
        return money;
    }
    return model::roundedMoney(static_cast<model::Wide>(money->minor()) * (kWholeTenths + tenths),
                               kWholeTenths);
}

}  // namespace

Result<DealNow> dealNowOf(const model::JobRows& rows, const compute::JobFigures& figures,
                          model::Date today) {
    auto plan = report::cashPlanFor(rows, figures, compute::planOf(rows, figures, today), today);
    if (!plan.ok()) {
        return plan.error();
    }
    DealNow now{rows.job, std::move(plan).value(), {}};
    now.earned = compute::dealReturnOf(now.plan.line);
    return now;
}

Result<Supposed> supposed(const DealNow& now, const Wish& wish) {
    Supposed out;
    out.job = now.job;
    for (auto* resale : {&out.job.resaleLow, &out.job.resaleLikely, &out.job.resaleHigh}) {
        *resale = moved(*resale, wish.resaleTenths);
    }
    if (out.job.loanRate) {
        out.job.loanRate = model::Percent::fromBasisPoints(
            std::max<std::int64_t>(0, out.job.loanRate->basisPoints() + wish.rateHundredths));
    }
    compute::DealFigures figures = now.plan.figures;
    figures.work = moved(figures.work, wish.workTenths);
    out.work = figures.work;
    const auto finish = figures.willFinishOn ? figures.willFinishOn : now.job.targetFinishOn;
    if (finish && wish.weeksLater != 0) {
        figures.willFinishOn = *finish + wish.weeksLater * kAWeek;
        if (figures.saleOn) {
            figures.saleOn = *figures.saleOn + wish.weeksLater * kAWeek;
        }
    }
    auto deal = compute::deal(out.job, figures);
    if (!deal.ok()) {
        return deal.error();
    }
    out.deal = std::move(deal).value();
    auto table = compute::profitTableOf(out.job, figures);
    if (!table.ok()) {
        return table.error();
    }
    out.table = std::move(table).value();
    return out;
}

}  // namespace ledgerboard::desk
