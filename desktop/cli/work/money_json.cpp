#include "desktop/cli/work/money_json.h"

#include <cmath>

namespace ledgerboard::work {

using compute::CashDay;
using nlohmann::json;

namespace {

// Percents as people read them, to a hundredth.
json hundredths(const std::optional<double>& percent) {
    return percent ? json(std::round(*percent * 100) / 100) : json(nullptr);
}

json tableJson(const compute::ProfitTable& table) {
    json values = json::array();
    for (const model::Money value : table.values) {
        values.push_back(value.toString());
    }
    json rows = json::array();
    for (const auto& row : table.rows) {
        json profits = json::array();
        for (const model::Money profit : row.profits) {
            profits.push_back(profit.toString());
        }
        rows.push_back({{"weeks_later", row.weeksLater},
                        {"finish_on", row.finishOn.toString()},
                        {"sale_on", row.saleOn.toString()},
                        {"profits", std::move(profits)}});
    }
    return {{"resale_values", std::move(values)}, {"rows", std::move(rows)}};
}

json dayJson(const std::optional<CashDay>& day) {
    return day ? json{{"on", day->on.toString()}, {"balance", day->balance.toString()}}
               : json(nullptr);
}

}  // namespace

json moneyJson(const std::optional<model::Money>& money) {
    return money ? json(money->toString()) : json(nullptr);
}

json dateJson(const std::optional<model::Date>& date) {
    return date ? json(date->toString()) : json(nullptr);
}

json absentJson(const std::vector<compute::AbsentInput>& inputs) {
    json list = json::array();
    for (const auto& input : inputs) {
        list.push_back(std::string(input.heading));
    }
    return list;
}

json dealJson(const model::Job& job, const std::optional<model::Money>& work,
              const compute::Deal& deal, const compute::DealReturn& earned,
              const compute::ProfitTable& table) {
    json out;
    out["resale"] = moneyJson(job.resaleLikely);
    out["season_drop"] = moneyJson(deal.seasonDrop);
    out["price"] = moneyJson(job.purchasePrice);
    out["buying_costs"] = moneyJson(deal.buyingCosts);
    out["points"] = moneyJson(deal.points);
    out["lender_fees"] = moneyJson(deal.lenderFees);
    out["visit_fees"] = moneyJson(deal.visitFees);
    out["interest"] = moneyJson(deal.interest);
    out["extension_fee"] = moneyJson(deal.extensionFee);
    out["holding"] = moneyJson(deal.holding);
    out["work"] = moneyJson(work);
    out["selling"] = moneyJson(deal.selling);
    out["all_in"] = moneyJson(deal.allIn);
    out["profit"] = moneyJson(deal.profit);
    out["profit_low"] = moneyJson(deal.profitLow);
    out["profit_high"] = moneyJson(deal.profitHigh);
    out["break_even_resale"] = moneyJson(deal.breakEvenResale);
    out["cash_at_closing"] = moneyJson(deal.cashAtClosing);
    out["interest_per_day"] = moneyJson(deal.interestPerDay);
    out["holding_per_day"] = moneyJson(deal.holdingPerDay);
    out["extension_per_day"] = moneyJson(deal.extensionPerDay);
    out["day_costs"] = moneyJson(deal.dayCosts);
    out["rule_of_thumb_offer"] = moneyJson(deal.ruleOfThumbOffer);
    out["top_offer"] = moneyJson(deal.topOffer);
    out["margin"] = hundredths(deal.marginPercent);
    out["resale_drop_that_eats_the_profit"] = hundredths(deal.resaleDropPercent);
    out["peak_cash_in"] = moneyJson(earned.peakCashIn);
    out["return_on_cash"] = hundredths(earned.onCashPercent);
    out["yearly_return_simple"] = hundredths(earned.yearlySimplePercent);
    out["yearly_return_of_dated_flows"] = hundredths(earned.yearlyDatedPercent);
    out["notes"] = earned.notes;
    out["sale_on"] = dateJson(deal.saleOn);
    out["day_91_on"] = dateJson(deal.day91On);
    out["day_180_on"] = dateJson(deal.day180On);
    out["double_price"] = deal.isDoublePrice;
    out["days_held"] = deal.daysHeld ? json(*deal.daysHeld) : json(nullptr);
    out["days_to_term_end"] = deal.daysToTermEnd ? json(*deal.daysToTermEnd) : json(nullptr);
    out["profit_table"] = tableJson(table);
    out["missing"] = absentJson(deal.missing);
    out["left_out"] = absentJson(deal.leftOut);
    return out;
}

json cashJson(const compute::CashLine& line) {
    json days = json::array();
    std::size_t next = 0;
    for (const CashDay& day : line.days) {
        json moves = json::array();
        for (; next < line.moves.size() && line.moves[next].on == day.on; ++next) {
            const compute::CashMove& move = line.moves[next];
            moves.push_back({{"kind", std::string(wordsFor(move.kind))},
                             {"what", move.what},
                             {"amount", move.amount.toString()},
                             {"ahead", move.isAhead}});
        }
        days.push_back({{"on", day.on.toString()},
                        {"in", day.in.toString()},
                        {"out", day.out.toString()},
                        {"balance", day.balance.toString()},
                        {"moves", std::move(moves)}});
    }
    return {{"start", line.start.toString()},
            {"today", line.today.toString()},
            {"end", line.end.toString()},
            {"reaches_sale", line.reachesSale},
            {"lowest", dayJson(line.lowest)},
            {"lowest_ahead", dayJson(line.lowestAhead)},
            {"under_zero_on", dateJson(line.underZeroOn)},
            {"under_two_weeks_of_bills_on", dateJson(line.underTwoWeeksOn)},
            {"peak_cash_in", line.peakCashIn.toString()},
            {"profit", moneyJson(line.deal.profit)},
            {"days", std::move(days)},
            {"missing", absentJson(line.missing)},
            {"left_out", absentJson(line.leftOut)}};
}

}  // namespace ledgerboard::work
