// work loan-interest: interest on a building loan, with the days of its draws or without them.
#include <algorithm>

#include "core/compute/in_quotes.h"
#include "core/compute/loans.h"

#include "desktop/cli/work/calculation.h"
#include "desktop/cli/work/fields.h"

namespace ledgerboard::work {

namespace {

using compute::DatedSum;
using nlohmann::json;

constexpr Range kMonthsRange{0, 1200};

constexpr std::string_view kTakes =
    "  draws        a list of {\"date\", \"amount\"}\n"
    "  to           the day interest is charged to, as 2026-05-15\n"
    "  rate         percent a year\n"
    "  basis        actual/360, actual/365, actual/actual-isda, 30/360-us,\n"
    "               30/360-bond or 30e/360\n"
    "  charged_on   \"drawn\" (where left out) or \"whole\": all of the commitment\n"
    "               from the first draw on\n"
    "  commitment   what is lent in all; needed for whole\n"
    "or, where the days of the draws are not known,\n"
    "  commitment, rate, months, charged_on\n";

constexpr std::string_view kGives =
    "  interest     in all\n"
    "  draws        date, amount, days, interest of each (not where the days are\n"
    "               unknown)\n"
    "Days unknown: half the commitment is charged, all of it on whole\n"
    "(Regulation Z, 12 CFR 1026 Appendix D).\n";

bool isOnWhole(Fields& fields) {
    const std::string on = fields.has("charged_on") ? fields.text("charged_on") : "drawn";
    if (on != "drawn" && on != "whole") {
        fields.slip("charged_on", " is " + compute::inQuotes(on) + ": it must be drawn or whole");
    }
    return on == "whole";
}

model::Result<json> runDatesUnknown(Fields& fields) {
    const double commitment = fields.number("commitment", kMoneyRange);
    const double rate = fields.number("rate", kPercentRange);
    const double months = fields.number("months", kMonthsRange);
    const bool onWhole = isOnWhole(fields);
    if (auto fine = fields.done(); !fine.ok()) {
        return fine.error();
    }
    return json{{"interest",
                 printed(compute::interestWithDatesUnknown(commitment, rate, months, onWhole))}};
}

model::Result<std::vector<DatedSum>> readDraws(Fields& fields) {
    const json* list = fields.list("draws");
    std::vector<DatedSum> draws;
    if (list == nullptr) {
        return draws;
    }
    for (const json& entry : *list) {
        Fields one(entry, "draw " + std::to_string(draws.size() + 1) + " in draws: ");
        DatedSum draw;
        draw.on = one.date("date");
        draw.amount = one.number("amount", kMoneyRange);
        if (auto fine = one.done(); !fine.ok()) {
            return fine.error();
        }
        draws.push_back(draw);
    }
    return draws;
}

model::Result<json> run(const json& input) {
    Fields fields(input);
    if (!fields.has("draws")) {
        return runDatesUnknown(fields);
    }
    auto read = readDraws(fields);
    if (!read.ok()) {
        return read.error();
    }
    std::vector<DatedSum> draws = std::move(read).value();
    const model::Date to = fields.date("to");
    const double rate = fields.number("rate", kPercentRange);
    const compute::DayCount basis = dayCount(fields, "basis");
    const bool onWhole = isOnWhole(fields);
    const auto commitment = fields.numberIfGiven("commitment", kMoneyRange);
    double sum = 0;
    for (std::size_t k = 0; k < draws.size(); ++k) {
        sum += draws[k].amount;
        if (draws[k].on > to) {
            fields.slip("to", " is before draw " + std::to_string(k + 1) +
                                  ": give a day on or after every draw");
        }
    }
    if (commitment && sum > *commitment) {
        fields.slip("commitment", " is " + shownNumber(*commitment) + ", less than the draws, " +
                                      shownNumber(sum) + ": check both");
    }
    if (onWhole && !commitment) {
        fields.slip("commitment", " is missing: interest charged on whole needs it");
    }
    if (auto fine = fields.done(); !fine.ok()) {
        return fine.error();
    }
    if (onWhole) {
        const auto first =
            std::min_element(draws.begin(), draws.end(),
                             [](const DatedSum& a, const DatedSum& b) { return a.on < b.on; });
        draws = {{first->on, *commitment}};
    }
    json rows = json::array();
    double total = 0;
    for (const auto& one : compute::interestOnDraws(draws, rate, basis, to)) {
        total += one.interest;
        rows.push_back({{"date", one.draw.on.toString()},
                        {"amount", printed(one.draw.amount)},
                        {"days", one.days},
                        {"interest", printed(one.interest)}});
    }
    return json{{"interest", printed(total)}, {"draws", std::move(rows)}};
}

}  // namespace

Calculation loanInterestCalculation() {
    return {"loan-interest",
            "interest on a building loan, drawn bit by bit",
            kTakes,
            kGives,
            R"({"draws":[{"date":"2026-04-01","amount":20000},)"
            R"({"date":"2026-05-01","amount":15000}],)"
            R"("to":"2026-07-01","rate":10.5,"basis":"actual/360"})",
            run};
}

}  // namespace ledgerboard::work
