// work earned-value: how the work stands against plan and cost, and what it will cost in the end.
#include <vector>

#include "core/compute/earned_value.h"

#include "desktop/cli/work/calculation.h"
#include "desktop/cli/work/fields.h"

namespace ledgerboard::work {

namespace {

using nlohmann::json;

constexpr Range kIndexRange{0, 1000};

constexpr std::string_view kTakes =
    "  bac     budget at completion\n"
    "  pv      planned value: budget of the work planned to be done by now\n"
    "  ev      earned value: budget of the work done\n"
    "  ac      actual cost of that work\n"
    "  eac     your own estimate at completion (may be left out)\n"
    "  spi_t   schedule index in time, from earned schedule (may be left out)\n"
    "or, instead of the first four,\n"
    "  items   a list of {\"budget\", \"planned_percent\", \"percent\", \"actual\"}\n";

constexpr std::string_view kGives =
    "  bac pv ev ac cv sv cpi spi\n"
    "  eac     at completion, the rest going at budget, cpi, cpi x spi,\n"
    "          0.8 cpi + 0.2 spi (weighted), spi_t\n"
    "  etc vac to go and left over, by your eac, else remaining_at_cpi\n"
    "  tcpi    to_budget, to_estimate: how well each dollar left must work;\n"
    "          null once ac has reached the target: it can't be reached any more\n"
    "  percent_complete percent_spent\n"
    "A figure whose divisor is zero is null.\n";

// The items added up, or nothing after a slip, which `fields` then knows.
model::Result<compute::EarnedValueInput> fromItems(Fields& fields) {
    const json* list = fields.list("items");
    std::vector<compute::EarnedValueItem> items;
    if (list == nullptr) {
        return compute::EarnedValueInput{};
    }
    for (const json& entry : *list) {
        Fields one(entry, "item " + std::to_string(items.size() + 1) + " in items: ");
        compute::EarnedValueItem item;
        item.budget = one.number("budget", kMoneyRange);
        item.plannedPercent = one.number("planned_percent", kPercentRange);
        item.percent = one.number("percent", kPercentRange);
        item.actual = one.number("actual", kMoneyRange);
        if (auto fine = one.done(); !fine.ok()) {
            return fine.error();
        }
        items.push_back(item);
    }
    return compute::addUp(items);
}

void readTotals(Fields& fields, compute::EarnedValueInput& in) {
    in.bac = fields.number("bac", kMoneyRange);
    in.pv = fields.number("pv", kMoneyRange);
    in.ev = fields.number("ev", kMoneyRange);
    in.ac = fields.number("ac", kMoneyRange);
    const std::string most = " is more than bac (" + shownNumber(in.bac) + "): check both";
    if (in.pv > in.bac) {
        fields.slip("pv", most);
    }
    if (in.ev > in.bac) {
        fields.slip("ev", most);
    }
}

json output(const compute::EarnedValue& value) {
    const compute::EstimatesAtCompletion& eac = value.eac;
    return {{"bac", printed(value.bac)},
            {"pv", printed(value.pv)},
            {"ev", printed(value.ev)},
            {"ac", printed(value.ac)},
            {"cv", printed(value.cv)},
            {"sv", printed(value.sv)},
            {"cpi", printed(value.cpi)},
            {"spi", printed(value.spi)},
            {"eac",
             {{"remaining_at_budget", printed(eac.remainingAtBudget)},
              {"remaining_at_cpi", printed(eac.remainingAtCpi)},
              {"remaining_at_cpi_spi", printed(eac.remainingAtCpiSpi)},
              {"remaining_at_weighted", printed(eac.remainingAtWeighted)},
              {"remaining_at_spi_t", printed(eac.remainingAtSpiT)}}},
            {"etc", printed(value.etc)},
            {"vac", printed(value.vac)},
            {"tcpi",
             {{"to_budget", printed(value.tcpiToBudget)},
              {"to_estimate", printed(value.tcpiToEstimate)}}},
            {"percent_complete", printed(value.percentComplete)},
            {"percent_spent", printed(value.percentSpent)}};
}

model::Result<json> run(const json& input) {
    Fields fields(input);
    compute::EarnedValueInput in;
    if (fields.has("items")) {
        auto sum = fromItems(fields);
        if (!sum.ok()) {
            return sum.error();
        }
        in = sum.value();
    } else {
        readTotals(fields, in);
    }
    in.eac = fields.numberIfGiven("eac", kMoneyRange);
    in.spiT = fields.numberIfGiven("spi_t", kIndexRange);
    if (auto fine = fields.done(); !fine.ok()) {
        return fine.error();
    }
    return output(compute::earnedValue(in));
}

}  // namespace

Calculation earnedValueCalculation() {
    return {"earned-value", "work done against plan and cost, and what it comes to", kTakes,
            kGives,         R"({"bac":4000,"pv":3000,"ev":2500,"ac":2800})",         run};
}

}  // namespace ledgerboard::work
