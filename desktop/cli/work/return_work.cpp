// work return: the yearly return of dated flows, or the return a period of even ones.
#include "core/compute/returns.h"

#include "desktop/cli/work/calculation.h"
#include "desktop/cli/work/fields.h"

namespace ledgerboard::work {

namespace {

using compute::TimedFlow;
using nlohmann::json;

constexpr Range kFlowRange{-1e12, 1e12};
constexpr Range kRateRange{-99.99, 1e8};
constexpr std::size_t kMostFlows = 2000;
constexpr double kDaysPerYear = 365;

constexpr std::string_view kTakes =
    "  flows      a list of {\"date\", \"amount\"}; below 0 is money that goes out\n"
    "  value_at   a rate in percent (may be left out)\n"
    "or, instead of flows,\n"
    "  periods    amounts one period apart, the first one now\n";

constexpr std::string_view kGives =
    "  annual_percent   the rate at which the flows are worth nothing: a year\n"
    "                   (actual/365 from the first day), or a period\n"
    "  value            of the flows at value_at, on the day of the first; else\n"
    "                   null\n"
    "  warnings         where several rates solve it all are named, and\n"
    "                   annual_percent is the one nearest to 0\n"
    "Flows all of one sign are an error: they have no return.\n";

model::Result<std::vector<TimedFlow>> readDated(const json& list) {
    std::vector<TimedFlow> flows;
    std::vector<model::Date> days;
    for (const json& entry : list) {
        Fields one(entry, "flow " + std::to_string(flows.size() + 1) + " in flows: ");
        days.push_back(one.date("date"));
        flows.push_back({0, one.number("amount", kFlowRange)});
        if (auto fine = one.done(); !fine.ok()) {
            return fine.error();
        }
    }
    model::Date first = days.front();
    for (const model::Date day : days) {
        first = std::min(first, day);
    }
    for (std::size_t k = 0; k < flows.size(); ++k) {
        flows[k].years = (days[k] - first) / kDaysPerYear;
    }
    return flows;
}

model::Result<std::vector<TimedFlow>> readPeriods(const json& list) {
    std::vector<TimedFlow> flows;
    for (const json& entry : list) {
        const std::string place = "amount " + std::to_string(flows.size() + 1) + " in ";
        const json wrapped{{"periods", entry}};
        Fields one(wrapped, place);
        flows.push_back({static_cast<double>(flows.size()), one.number("periods", kFlowRange)});
        if (auto fine = one.done(); !fine.ok()) {
            return fine.error();
        }
    }
    return flows;
}

model::Result<json> run(const json& input) {
    Fields fields(input);
    const bool even = fields.has("periods");
    const json* list = fields.list(even ? "periods" : "flows");
    const auto rate = fields.numberIfGiven("value_at", kRateRange);
    if (list != nullptr && list->size() > kMostFlows) {
        fields.slip(even ? "periods" : "flows", " has more than 2000 entries");
    }
    if (auto fine = fields.done(); !fine.ok()) {
        return fine.error();
    }
    auto flows = even ? readPeriods(*list) : readDated(*list);
    if (!flows.ok()) {
        return flows.error();
    }
    auto found = compute::returnOf(flows.value());
    if (!found.ok()) {
        return model::Error{found.error().code,
                            std::string(even ? "periods" : "flows") + ": " + found.error().message};
    }
    const std::optional<double> value =
        rate ? std::optional(compute::valueAt(flows.value(), *rate / 100)) : std::nullopt;
    return json{{"annual_percent", printed(found.value().rate * 100)},
                {"value", printed(value)},
                {"warnings", found.value().warnings}};
}

}  // namespace

Calculation returnCalculation() {
    return {"return",
            "the yearly return of dated flows",
            kTakes,
            kGives,
            R"({"flows":[{"date":"2026-03-20","amount":-60000},)"
            R"({"date":"2026-07-12","amount":75000}],"value_at":9})",
            run};
}

}  // namespace ledgerboard::work
