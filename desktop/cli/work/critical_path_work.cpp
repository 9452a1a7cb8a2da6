// work critical-path: earliest and latest times of items that wait for each other, and their float.
#include "core/compute/network.h"
#include "core/model/overflow.h"

#include "desktop/cli/work/calculation.h"
#include "desktop/cli/work/fields.h"
#include "desktop/cli/work/network_input.h"

namespace ledgerboard::work {

namespace {

using nlohmann::json;

constexpr std::string_view kGives =
    "  days    from the start of the first to the finish of the last\n"
    "  items   {\"id\", \"es\", \"ef\", \"ls\", \"lf\", \"float\", \"free_float\", \"critical\"}:\n"
    "          earliest start and finish, latest start and finish, in days from the\n"
    "          start, never below 0; float is how far it may slip and the whole does\n"
    "          not, free_float how far and nothing else moves\n"
    "Items that wait for each other in a loop are an error that prints the loop.\n";

model::Result<json> run(const json& input) {
    Fields fields(input);
    auto network = readItems(fields);
    if (auto fine = fields.done(); !fine.ok()) {
        return fine.error();
    }
    if (!network.ok()) {
        return network.error();
    }
    const NamedNetwork& read = network.value();
    return model::guarded([&]() -> model::Result<json> {
        const auto times = compute::Network(read.activities, read.precedences).times();
        json items = json::array();
        for (std::size_t k = 0; k < read.ids.size(); ++k) {
            const compute::ActivityTimes& one = times.activities[k];
            items.push_back({{"id", read.ids[k]},
                             {"es", printedDays(one.es)},
                             {"ef", printedDays(one.ef)},
                             {"ls", printedDays(one.ls)},
                             {"lf", printedDays(one.lf)},
                             {"float", printedDays(one.totalFloat)},
                             {"free_float", printedDays(one.freeFloat)},
                             {"critical", one.critical}});
        }
        return json{{"days", printedDays(times.length)}, {"items", items}};
    });
}

}  // namespace

Calculation criticalPathCalculation() {
    return {"critical-path",
            "when items that wait for others can start, and their float",
            kItemKeys,
            kGives,
            R"({"items":[{"id":"tear-out","days":3},)"
            R"({"id":"tile","days":5,"after":["tear-out"]},)"
            R"({"id":"paint","days":2,"after":[{"id":"tile","kind":"SS","lag":2}]}]})",
            run};
}

}  // namespace ledgerboard::work
