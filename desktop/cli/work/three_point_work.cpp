// work three-point: what low, likely and high estimates come to, and the chance of a limit.
#include <vector>

#include "core/compute/three_point.h"

#include "desktop/cli/work/calculation.h"
#include "desktop/cli/work/fields.h"

namespace ledgerboard::work {

namespace {

using compute::Expected;
using compute::ThreePoint;
using nlohmann::json;

constexpr std::string_view kTakes =
    "  items   a list of {\"low\", \"likely\", \"high\"}, in days or money; or that list\n"
    "          alone, in [ ]\n"
    "  by      a limit for their sum (may be left out)\n";

constexpr std::string_view kGives =
    "  items   {\"expected\", \"deviation\", \"variance\"} of each: (low + 4 likely + high)/6\n"
    "          and ((high - low)/6) squared (PERT)\n"
    "  sum     the same of all, taken as independent\n"
    "  z       deviations from the sum's expected value to by; null without by, or\n"
    "          where nothing deviates\n"
    "  chance  0 to 1, that the sum stays within by, taken as normal; null without by\n";

json output(const Expected& one) {
    return {{"expected", printed(one.mean)},
            {"deviation", printed(one.deviation())},
            {"variance", printed(one.variance)}};
}

model::Result<std::vector<ThreePoint>> readAll(const json& list) {
    std::vector<ThreePoint> out;
    for (const json& entry : list) {
        Fields one(entry, "item " + std::to_string(out.size() + 1) + " in items: ");
        ThreePoint estimate;
        estimate.low = one.number("low", kMoneyRange);
        estimate.likely = one.number("likely", kMoneyRange);
        estimate.high = one.number("high", kMoneyRange);
        if (estimate.likely < estimate.low) {
            one.slip("likely", " is less than low (" + shownNumber(estimate.low) + "): check both");
        }
        if (estimate.high < estimate.likely) {
            one.slip("high",
                     " is less than likely (" + shownNumber(estimate.likely) + "): check both");
        }
        if (auto fine = one.done(); !fine.ok()) {
            return fine.error();
        }
        out.push_back(estimate);
    }
    return out;
}

model::Result<json> run(const json& input) {
    const json whole = input.is_array() ? json{{"items", input}} : input;
    Fields fields(whole);
    const json* list = fields.list("items");
    const auto by = fields.numberIfGiven("by", kMoneyRange);
    if (auto fine = fields.done(); !fine.ok()) {
        return fine.error();
    }
    const auto estimates = readAll(*list);
    if (!estimates.ok()) {
        return estimates.error();
    }
    json items = json::array();
    for (const ThreePoint& estimate : estimates.value()) {
        items.push_back(output(compute::expectedOf(estimate)));
    }
    const Expected sum = compute::sumOf(estimates.value());
    return json{{"items", items},
                {"sum", output(sum)},
                {"z", by ? printed(compute::deviationsTo(*by, sum)) : json(nullptr)},
                {"chance", by ? printed(compute::chanceWithin(*by, sum)) : json(nullptr)}};
}

}  // namespace

Calculation threePointCalculation() {
    return {"three-point",
            "what low, likely and high come to, and a limit's chance",
            kTakes,
            kGives,
            R"({"items":[{"low":4,"likely":5,"high":12},{"low":1,"likely":2,"high":3}],)"
            R"("by":10})",
            run};
}

}  // namespace ledgerboard::work
