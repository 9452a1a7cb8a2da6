// deal and cash: what the house earns, and how the owner's cash runs until it does.
#include <nlohmann/json.hpp>

#include "core/compute/contract_terms.h"
#include "core/compute/deal_return.h"
#include "core/compute/profit_table.h"
#include "core/report/cash_text.h"
#include "core/report/deal_text.h"

#include "desktop/cli/money_view.h"
#include "desktop/cli/verbs.h"
#include "desktop/cli/work/money_json.h"

namespace ledgerboard::cli {

namespace {

using nlohmann::json;

json drawsAheadJson(const std::vector<compute::DrawAhead>& draws) {
    json list = json::array();
    for (const compute::DrawAhead& draw : draws) {
        list.push_back({{"ask_on", work::dateJson(draw.askOn)},
                        {"money_on", draw.moneyOn.toString()},
                        {"total", draw.total.toString()},
                        {"fee", draw.fee.toString()},
                        {"final", draw.isFinal},
                        {"why", draw.why}});
    }
    return list;
}

json contractsJson(const MoneyView& view) {
    json barred = json::array();
    for (const auto& one : compute::barredPayments(view.rows, view.figures)) {
        barred.push_back(
            {{"contract", one.name}, {"amount", one.amount.toString()}, {"why", one.reasons}});
    }
    json ahead = json::array();
    for (const auto& one : compute::paidAheadByCrew(view.rows, view.figures)) {
        ahead.push_back({{"crew", one.name}, {"amount", one.amount.toString()}});
    }
    json deposits = json::array();
    for (const auto& one : view.figures.contracts) {
        if (one.depositBeyondLimit > model::Money{}) {
            deposits.push_back({{"contract", view.rows.contracts[one.contract].name},
                                {"beyond", one.depositBeyondLimit.toString()}});
        }
    }
    return {{"barred", std::move(barred)},
            {"paid_ahead", std::move(ahead)},
            {"deposits_beyond_limit", std::move(deposits)}};
}

}  // namespace

report::TableStyle styleOf(Session& session) {
    const Surroundings& around = session.surroundings();
    return {around.width, session.script(), around.isTerminal && around.unicode};
}

Done verbDeal(Session& session) {
    return model::guarded([&]() -> Done {
        auto view = moneyView(session);
        if (!view.ok()) {
            return view.error();
        }
        const compute::CashPlan& plan = view.value().plan;
        const model::Job& job = view.value().rows.job;
        auto table = compute::profitTableOf(job, plan.figures);
        if (!table.ok()) {
            return table.error();
        }
        const compute::DealReturn earned = compute::dealReturnOf(plan.line);
        if (session.json()) {
            session.printJson(
                work::dealJson(job, plan.figures.work, plan.line.deal, earned, table.value()));
            return {};
        }
        session.print(report::dealText(job, plan.figures, plan.line.deal, earned, table.value(),
                                       styleOf(session)));
        return {};
    });
}

Done verbCash(Session& session) {
    return model::guarded([&]() -> Done {
        auto view = moneyView(session);
        if (!view.ok()) {
            return view.error();
        }
        const MoneyView& all = view.value();
        if (session.json()) {
            json document = work::cashJson(all.plan.line);
            document["draws_ahead"] = drawsAheadJson(all.plan.drawsAhead);
            document["contracts"] = contractsJson(all);
            session.printJson(document);
            return {};
        }
        session.print(
            report::cashText(all.rows, all.figures, all.plan, all.today, styleOf(session)));
        return {};
    });
}

}  // namespace ledgerboard::cli
