// work level-payment: a loan repaid in equal monthly payments.
#include "core/compute/in_quotes.h"
#include "core/compute/loans.h"

#include "desktop/cli/work/calculation.h"
#include "desktop/cli/work/fields.h"

namespace ledgerboard::work {

namespace {

using nlohmann::json;

constexpr Range kMonthsRange{1, 1200};

constexpr std::string_view kTakes =
    "  principal   what is lent\n"
    "  rate        percent a year: 8 is 8 %; a month takes a twelfth of it\n"
    "  months      how many payments, 1 to 1200\n"
    "  when        \"end\" or \"start\" of each month; end where left out\n";

constexpr std::string_view kGives =
    "  payment          each month\n"
    "  interest_total   all interest paid\n"
    "  rows             n, interest, principal, balance of each month\n";

model::Result<json> run(const json& input) {
    Fields fields(input);
    const double principal = fields.number("principal", kMoneyRange);
    const double rate = fields.number("rate", kPercentRange);
    const int months = fields.wholeNumber("months", kMonthsRange);
    const std::string when = fields.has("when") ? fields.text("when") : "end";
    if (when != "end" && when != "start") {
        fields.slip("when", " is " + compute::inQuotes(when) + ": it must be end or start");
    }
    if (auto fine = fields.done(); !fine.ok()) {
        return fine.error();
    }
    const auto at = when == "start" ? compute::PaidAt::PeriodStart : compute::PaidAt::PeriodEnd;
    const compute::LevelPayment loan = compute::levelPayment(principal, rate, months, at);
    json rows = json::array();
    for (const compute::LevelPaymentRow& row : loan.rows) {
        rows.push_back({{"n", row.number},
                        {"interest", printed(row.interest)},
                        {"principal", printed(row.principal)},
                        {"balance", printed(row.balance)}});
    }
    return json{{"payment", printed(loan.payment)},
                {"interest_total", printed(loan.interestTotal)},
                {"rows", std::move(rows)}};
}

}  // namespace

Calculation levelPaymentCalculation() {
    return {"level-payment",
            "a loan repaid in equal monthly payments",
            kTakes,
            kGives,
            R"({"principal":10000,"rate":8,"months":10,"when":"end"})",
            run};
}

}  // namespace ledgerboard::work
