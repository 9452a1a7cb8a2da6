// work risk: how far cost, days and profit may be off, by many trials, and what drives that.
#include <cmath>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/compute/in_quotes.h"
#include "core/compute/risk.h"
#include "core/model/overflow.h"

#include "desktop/cli/work/calculation.h"
#include "desktop/cli/work/fields.h"
#include "desktop/cli/work/network_input.h"

namespace ledgerboard::work {

namespace {

using compute::RiskInput;
using compute::Spread;
using nlohmann::json;

constexpr std::string_view kTakes =
    "  items   a list of {\"id\", \"cost\", \"days\", \"after\", \"lead_days\"}: cost, days and\n"
    "          lead_days (earliest start, counted from the first day) are each a\n"
    "          number or {\"low\", \"likely\", \"high\"}, 0 where left out; after as in\n"
    "          critical-path\n"
    "  unknowns  a list of {\"chance\", \"cost\", \"days\", \"item\", \"id\"}: chance 0 to 100\n"
    "          of striking; days lengthen the item, or, without one, the whole\n"
    "  resale  number or {\"low\", \"likely\", \"high\"}; with it a profit is told:\n"
    "          resale - fixed - cost - day_costs x days\n"
    "  fixed, day_costs  all else that is paid, once and for each day (0)\n"
    "  trials  1 to 1000000 (10000)\n"
    "  seed    a whole number; one seed gives one result everywhere (1)\n"
    "  shape   \"pert-beta\" or \"triangular\" (pert-beta)\n"
    "  correlation  0 to 1 (0.2): how far all estimates err together, as the rank\n"
    "          correlation of any two of them; 0 is independent. Chances of unknowns\n"
    "          and the resale stay by themselves\n"
    "All but items may be left out.\n";

constexpr std::string_view kGives =
    "  cost days profit  each {\"mean\", \"deviation\", \"p10\", \"p50\", \"p80\", \"p90\"};\n"
    "          profit is null without resale\n"
    "  likely  {\"cost\", \"days\"}: all items as likely, no unknown\n"
    "  contingency_80  cost p80 less likely cost: enough 80 times in 100\n"
    "  drivers {\"cost\", \"days\", \"profit\"}: lists of {\"what\", \"of\",\n"
    "          \"rank_correlation\", \"share_percent\"}, largest first: Spearman's\n"
    "          correlation with the total; the square of what it does by itself,\n"
    "          without what all err together, as a share of all squares. What is no\n"
    "          more than chance shows (2 / sqrt of trials) is left out\n"
    "  trials seed shape correlation  as used\n";

constexpr double kUnitsPerMoney = 1e4;  // a hundredth of a cent
constexpr double kMostUnits = 4e18;     // within 64 bits
constexpr Range kDaysRange{0, 1e6};
constexpr Range kSeedRange{0, 9007199254740992.0};  // whole numbers that JSON keeps, to 2^53
constexpr Range kTrialsRange{1, double{compute::kMostTrials}};

std::int64_t unitsOf(double number, double units) {
    return std::llround(number * units);
}

// A number, or low, likely and high. 0 where it is not given.
Spread readSpread(Fields& fields, std::string_view key, Range range, double units) {
    const json* value = fields.valueIfGiven(key);
    if (value == nullptr) {
        return {};
    }
    if (!value->is_object()) {
        return Spread::certain(unitsOf(fields.number(key, range), units));
    }
    Fields three(*value);
    const double low = three.number("low", range);
    const double likely = three.number("likely", range);
    const double high = three.number("high", range);
    if (likely < low) {
        three.slip("likely", " is less than low (" + shownNumber(low) + "): check both");
    }
    if (high < likely) {
        three.slip("high", " is less than likely (" + shownNumber(likely) + "): check both");
    }
    if (auto fine = three.done(); !fine.ok()) {
        fields.slip(key, ": " + fine.error().message);
        return {};
    }
    return {unitsOf(low, units), unitsOf(likely, units), unitsOf(high, units)};
}

std::uint64_t readWhole(Fields& fields, std::string_view key, Range range, std::uint64_t usual) {
    const auto number = fields.numberIfGiven(key, range);
    if (number && *number != std::floor(*number)) {
        fields.slip(key, " is " + shownNumber(*number) + ": it must be a whole number");
    }
    return number ? static_cast<std::uint64_t>(*number) : usual;
}

struct Read {
    RiskInput input;
    std::vector<std::string> items;
    std::vector<std::string> unknowns;
};

model::Result<void> readNetwork(Fields& fields, Read& read) {
    auto network = readItems(
        fields,
        [&](Fields& item, std::size_t) {
            compute::RiskItem made;
            made.cost = readSpread(item, "cost", kMoneyRange, kUnitsPerMoney);
            made.duration = readSpread(item, "days", kDaysRange, kUnitsPerDay);
            made.ready = readSpread(item, "lead_days", kDaysRange, kUnitsPerDay);
            if (!item.has("cost") && !item.has("days")) {
                item.slip("cost", " and days are both missing: give one of them");
            }
            read.input.items.push_back(made);
        },
        true);
    if (!network.ok()) {
        return network.error();
    }
    read.items = network.value().ids;
    read.input.precedences = network.value().precedences;
    return {};
}

model::Result<void> readUnknowns(Fields& fields, Read& read) {
    const json* list = fields.listIfGiven("unknowns");
    if (list == nullptr) {
        return {};
    }
    std::unordered_map<std::string, std::size_t> byId;
    for (std::size_t k = 0; k < read.items.size(); ++k) {
        byId.emplace(read.items[k], k);
    }
    for (const json& entry : *list) {
        const std::string number = std::to_string(read.unknowns.size() + 1);
        Fields one(entry, "unknown " + number + " in unknowns: ");
        compute::RiskUnknown unknown;
        unknown.chance = one.number("chance", kPercentRange) / 100;
        unknown.cost = readSpread(one, "cost", kMoneyRange, kUnitsPerMoney);
        unknown.delay = readSpread(one, "days", kDaysRange, kUnitsPerDay);
        if (!one.has("cost") && !one.has("days")) {
            one.slip("cost", " and days are both missing: give one of them");
        }
        if (one.has("item")) {
            const std::string id = one.text("item");
            const auto found = byId.find(id);
            if (found == byId.end()) {
                one.slip("item", " is " + compute::inQuotes(id) + ", and no item has that id");
            } else {
                unknown.item = found->second;
            }
        }
        read.unknowns.push_back(one.has("id") ? one.text("id") : "unknown " + number);
        if (auto fine = one.done(); !fine.ok()) {
            return fine.error();
        }
        read.input.unknowns.push_back(unknown);
    }
    return {};
}

void readProfit(Fields& fields, RiskInput& input) {
    const Spread resale = readSpread(fields, "resale", kMoneyRange, kUnitsPerMoney);
    const auto fixed = fields.numberIfGiven("fixed", kMoneyRange);
    const auto dayCosts = fields.numberIfGiven("day_costs", kMoneyRange);
    if (fields.has("resale")) {
        const std::int64_t once = unitsOf(fixed.value_or(0), kUnitsPerMoney);
        const double perUnit = dayCosts.value_or(0) * kUnitsPerMoney / kUnitsPerDay;
        const auto others = [once, perUnit](std::int64_t finish) {
            const double time = perUnit * static_cast<double>(finish);
            if (!(time < kMostUnits)) {
                throw model::OverflowError("day_costs x days is larger than can be kept");
            }
            return model::addChecked(once, std::llround(time));
        };
        input.profit = compute::RiskProfit{resale, others};
    } else if (fixed || dayCosts) {
        fields.slip("resale", " is missing: fixed and day_costs are of use only for a profit");
    }
}

void readManner(Fields& fields, RiskInput& input) {
    input.trials = readWhole(fields, "trials", kTrialsRange, input.trials);
    input.seed = readWhole(fields, "seed", kSeedRange, input.seed);
    input.correlation =
        fields.numberIfGiven("correlation", {0, 1}).value_or(compute::kUsualCorrelation);
    if (fields.has("shape")) {
        const std::string shape = fields.text("shape");
        if (shape == "triangular") {
            input.shape = compute::SpreadShape::Triangular;
        } else if (shape != "pert-beta") {
            fields.slip("shape", " is " + compute::inQuotes(shape) +
                                     ": it must be \"pert-beta\" or \"triangular\"");
        }
    }
}

json printedSummary(const compute::Summary& one, double units) {
    const auto shown = [units](auto value) { return printed(static_cast<double>(value) / units); };
    return {{"mean", shown(one.mean)}, {"deviation", shown(one.deviation)},
            {"p10", shown(one.p10)},   {"p50", shown(one.p50)},
            {"p80", shown(one.p80)},   {"p90", shown(one.p90)}};
}

json printedDrivers(const std::vector<compute::Driver>& drivers, const Read& read) {
    json list = json::array();
    for (const compute::Driver& driver : drivers) {
        std::string what = "resale";
        const char* of = "resale";
        switch (driver.kind) {
            case compute::DriverKind::ItemCost:
                what = read.items[driver.index];
                of = "cost";
                break;
            case compute::DriverKind::ItemDuration:
                what = read.items[driver.index];
                of = "days";
                break;
            case compute::DriverKind::ItemReady:
                what = read.items[driver.index];
                of = "lead_days";
                break;
            case compute::DriverKind::Unknown:
                what = read.unknowns[driver.index];
                of = "unknown";
                break;
            case compute::DriverKind::Income:
                break;
        }
        list.push_back({{"what", what},
                        {"of", of},
                        {"rank_correlation", printed(driver.rankCorrelation)},
                        {"share_percent", printed(driver.sharePercent)}});
    }
    return list;
}

json output(const Read& read) {
    const RiskInput& input = read.input;
    const compute::RiskResult out = compute::simulateRisk(input);
    const compute::LikelyOutcome likely = compute::likelyOutcome(input);
    return {{"cost", printedSummary(out.cost, kUnitsPerMoney)},
            {"days", printedSummary(out.finish, kUnitsPerDay)},
            {"profit", input.profit ? printedSummary(out.profit, kUnitsPerMoney) : json(nullptr)},
            {"likely",
             {{"cost", printed(static_cast<double>(likely.cost) / kUnitsPerMoney)},
              {"days", printedDays(likely.finish)}}},
            {"contingency_80",
             printed(static_cast<double>(out.cost.p80 - likely.cost) / kUnitsPerMoney)},
            {"drivers",
             {{"cost", printedDrivers(out.costDrivers, read)},
              {"days", printedDrivers(out.finishDrivers, read)},
              {"profit", printedDrivers(out.profitDrivers, read)}}},
            {"trials", input.trials},
            {"seed", input.seed},
            {"shape", input.shape == compute::SpreadShape::Triangular ? "triangular" : "pert-beta"},
            {"correlation", printed(input.correlation)}};
}

model::Result<json> run(const json& whole) {
    Fields fields(whole);
    Read read;
    readProfit(fields, read.input);
    readManner(fields, read.input);
    const auto network = readNetwork(fields, read);
    const auto unknowns = readUnknowns(fields, read);
    if (auto fine = fields.done(); !fine.ok()) {
        return fine.error();
    }
    if (!network.ok()) {
        return network.error();
    }
    if (!unknowns.ok()) {
        return unknowns.error();
    }
    return model::guarded([&]() -> model::Result<json> { return output(read); });
}

}  // namespace

Calculation riskCalculation() {
    return {"risk",
            "how far cost, days and profit may be off, and what drives it",
            kTakes,
            kGives,
            R"({"items":[{"id":"tear-out","cost":4000,"days":{"low":2,"likely":3,"high":6}},)"
            R"({"id":"tile","cost":{"low":6000,"likely":7000,"high":11000},"days":5,)"
            R"("after":["tear-out"]}],)"
            R"("unknowns":[{"chance":30,"cost":2500,"days":2,"item":"tear-out"}],)"
            R"("resale":{"low":60000,"likely":66000,"high":70000},"fixed":40000,"day_costs":55})",
            run};
}

}  // namespace ledgerboard::work
