#include "desktop/cli/risk_json.h"

#include <cmath>

namespace ledgerboard::cli {

namespace {

using nlohmann::json;

// Two decimals are more than the trials can tell.
json decimal(double value) {
    return std::round(value * 100) / 100;
}

json decimal(const std::optional<double>& value) {
    return value ? decimal(*value) : json(nullptr);
}

template <class Value>
json text(const std::optional<Value>& value) {
    return value ? json(value->toString()) : json(nullptr);
}

json spreadJson(const compute::MoneySpread& spread) {
    return {{"mean", spread.mean.toString()}, {"deviation", spread.deviation.toString()},
            {"p10", spread.p10.toString()},   {"p50", spread.p50.toString()},
            {"p80", spread.p80.toString()},   {"p90", spread.p90.toString()}};
}

json spreadJson(const compute::FinishSpread& spread) {
    return {{"mean", spread.mean.toString()}, {"deviation_days", decimal(spread.deviationDays)},
            {"p10", spread.p10.toString()},   {"p50", spread.p50.toString()},
            {"p80", spread.p80.toString()},   {"p90", spread.p90.toString()}};
}

template <class Spread>
json spreadJson(const std::optional<Spread>& spread) {
    return spread ? spreadJson(*spread) : json(nullptr);
}

const char* nameOf(compute::DriverKind kind) {
    switch (kind) {
        case compute::DriverKind::ItemCost:
            return "cost";
        case compute::DriverKind::ItemDuration:
            return "days";
        case compute::DriverKind::ItemReady:
            return "goods";
        case compute::DriverKind::Unknown:
            return "unknown";
        case compute::DriverKind::Income:
            return "resale";
    }
    return "";
}

json driversJson(const std::vector<compute::JobDriver>& drivers) {
    json list = json::array();
    for (const compute::JobDriver& driver : drivers) {
        list.push_back({{"what", driver.what},
                        {"of", nameOf(driver.kind)},
                        {"cost_share", decimal(driver.costPercent)},
                        {"finish_share", decimal(driver.finishPercent)},
                        {"profit_share", decimal(driver.profitPercent)},
                        {"cost_correlation", decimal(driver.costCorrelation)},
                        {"finish_correlation", decimal(driver.finishCorrelation)},
                        {"profit_correlation", decimal(driver.profitCorrelation)}});
    }
    return list;
}

json basisJson(const compute::RiskBasis& basis) {
    return {{"finished", basis.finished},
            {"open", basis.open},
            {"by_contract", basis.byContract},
            {"by_own_estimate", basis.byEstimate},
            {"cost_by_low_and_high", basis.costRanged},
            {"cost_by_usual_range", basis.costUsual},
            {"unpriced", basis.unpriced},
            {"days_by_low_and_high", basis.daysRanged},
            {"days_by_usual_range", basis.daysUsual},
            {"without_days", basis.withoutDays},
            {"goods_awaited", basis.goodsAwaited},
            {"unknowns", basis.unknowns},
            {"unknowns_without_chance", basis.unknownsWithoutChance},
            {"unknowns_past", basis.unknownsPast},
            {"unsigned_changes", basis.unsignedChanges},
            {"crew_turns", basis.turns},
            {"resale_by_low_and_high", basis.resaleRanged}};
}

json missingJson(const compute::JobRisk& risk) {
    json list = json::array();
    for (const auto& input : risk.profitMissing) {
        list.push_back(std::string(input.heading));
    }
    return list;
}

}  // namespace

json riskJson(const compute::JobRisk& risk) {
    return {{"trials", risk.trials},
            {"seed", risk.seed},
            {"correlation", decimal(risk.correlation)},
            {"will_cost", spreadJson(risk.cost)},
            {"will_finish", spreadJson(risk.finish)},
            {"will_earn", spreadJson(risk.profit)},
            {"forecast",
             {{"cost", risk.forecast.toString()},
              {"finish", text(risk.planned)},
              {"profit", text(risk.dealProfit)}}},
            {"contingency_for_80", risk.contingency80.toString()},
            {"contingency_left", risk.contingencyLeft.toString()},
            {"chances",
             {{"within_budget", decimal(risk.withinBudget)},
              {"within_ceiling", decimal(risk.withinCeiling)},
              {"by_target", decimal(risk.byTarget)},
              {"earns_wanted", decimal(risk.earnsWanted)},
              {"loses_money", decimal(risk.losesMoney)}}},
            {"drivers", driversJson(risk.drivers)},
            {"day_costs", risk.dayCosts.toString()},
            {"missing", missingJson(risk)},
            {"problem", risk.profitProblem.empty() ? json(nullptr) : json(risk.profitProblem)},
            {"rests_on", basisJson(risk.basis)}};
}

}  // namespace ledgerboard::cli
