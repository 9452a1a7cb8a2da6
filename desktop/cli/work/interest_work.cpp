// work interest: simple interest between two dates, by how the lender counts days.
#include "core/compute/interest.h"

#include "desktop/cli/work/calculation.h"
#include "desktop/cli/work/fields.h"

namespace ledgerboard::work {

namespace {

using nlohmann::json;

constexpr std::string_view kTakes =
    "  principal   what is lent\n"
    "  rate        percent a year: 8 is 8 %\n"
    "  from, to    dates, as 2026-05-15\n"
    "  basis       actual/360, actual/365, actual/actual-isda, 30/360-us,\n"
    "              30/360-bond or 30e/360\n";

constexpr std::string_view kGives =
    "  days        as the basis counts them\n"
    "  fraction    of a year\n"
    "  interest    principal x rate x fraction\n";

model::Result<json> run(const json& input) {
    Fields fields(input);
    const double principal = fields.number("principal", kMoneyRange);
    const double rate = fields.number("rate", kPercentRange);
    const model::Date from = fields.date("from");
    const model::Date to = fields.date("to");
    const compute::DayCount basis = dayCount(fields, "basis");
    if (to < from) {
        fields.slip("to", " is before from: give the later date as to");
    }
    if (auto fine = fields.done(); !fine.ok()) {
        return fine.error();
    }
    const double fraction = compute::yearFraction(from, to, basis).value();
    return json{{"days", compute::daysBetween(from, to, basis)},
                {"fraction", printed(fraction)},
                {"interest", printed(principal * rate / 100 * fraction)}};
}

}  // namespace

Calculation interestCalculation() {
    return {"interest",
            "simple interest between two dates",
            kTakes,
            kGives,
            R"({"principal":1000,"rate":10,"from":"2026-01-01","to":"2027-01-01",)"
            R"("basis":"actual/360"})",
            run};
}

}  // namespace ledgerboard::work
