#include "core/compute/cash_plan.h"

#include "core/compute/deal_parts.h"
#include "core/compute/payments_ahead.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Money;

std::string nameOf(const model::Draw& draw) {
    return draw.number ? "draw " + std::to_string(*draw.number) : std::string("a draw");
}

std::vector<DrawMoney> fundedDraws(const model::JobRows& rows) {
    std::vector<DrawMoney> out;
    for (const model::Draw& draw : rows.draws) {
        if (draw.fundedOn && draw.amount) {
            out.push_back(
                {*draw.fundedOn, *draw.amount, draw.fee.value_or(Money{}), nameOf(draw), false});
        }
    }
    return out;
}

std::vector<DrawMoney> withAhead(std::vector<DrawMoney> draws,
                                 const std::vector<DrawAhead>& ahead) {
    for (const DrawAhead& one : ahead) {
        draws.push_back({one.moneyOn, one.total - one.fee, one.fee,
                         one.isFinal ? "the final draw" : "a draw", true});
    }
    return draws;
}

}  // namespace

DealFigures dealFiguresWithoutPlan(const model::JobRows& rows, const JobFigures& figures,
                                   std::optional<Date> willFinishOn, Date today) {
    DealFigures out;
    if (figures.job.items > 0 || figures.job.forecast != Money{}) {
        out.work = figures.job.forecast;
    }
    out.contingencyLeft = figures.contingency.left;
    out.willFinishOn = willFinishOn;
    out.asOf = today;
    for (const DrawMoney& draw : fundedDraws(rows)) {
        out.workDraws.push_back({draw.on, draw.received + draw.fee});
        out.visitFees += draw.fee;
    }
    return out;
}

model::Result<CashPlan> cashPlanOf(const model::JobRows& rows, const JobFigures& figures,
                                   const std::vector<std::optional<WorkSpan>>& ahead,
                                   std::optional<Date> willFinishOn, Date today) {
    CashPlan out;
    out.figures = dealFiguresWithoutPlan(rows, figures, willFinishOn, today);
    out.work = workPaymentsOf(rows, figures, ahead, willFinishOn, today);
    out.drawsNow = drawsNowOf(rows, figures);
    out.figures.drawsAhead.emplace();
    const std::vector<DrawMoney> funded = fundedDraws(rows);
    const auto open = withAhead(funded, openDrawsOf(rows, out.drawsNow, today));
    auto without = cashLineOf(rows.job, out.figures, out.work, open);
    if (!without.ok()) {
        return without.error();
    }
    out.drawsAhead = drawsAheadOf(rows, figures, out.drawsNow, ahead, &without.value(),
                                  without.value().deal.saleOn, today);
    const auto sale = without.value().deal.saleOn;
    std::erase_if(out.drawsAhead,
                  [&](const DrawAhead& one) { return sale && one.moneyOn > *sale; });
    auto line = cashLineOf(rows.job, out.figures, out.work, withAhead(funded, out.drawsAhead));
    if (!line.ok()) {
        return line.error();
    }
    out.line = std::move(line).value();
    for (const DrawAhead& one : out.drawsAhead) {
        out.figures.drawsAhead->push_back({one.moneyOn, one.total});
        out.figures.visitFees += one.fee;
    }
    return out;
}

}  // namespace ledgerboard::compute
