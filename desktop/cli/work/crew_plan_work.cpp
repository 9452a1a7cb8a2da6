// work crew-plan: how long it takes when no crew can be in more places at once than it has people.
#include <limits>
#include <string>
#include <unordered_map>

#include "core/compute/crew_plan.h"
#include "core/compute/in_quotes.h"

#include "desktop/cli/work/calculation.h"
#include "desktop/cli/work/fields.h"
#include "desktop/cli/work/network_input.h"

namespace ledgerboard::work {

namespace {

using nlohmann::json;

constexpr Range kCapacityRange{0, 10'000};
constexpr Range kPlacesRange{1, 10'000};
constexpr Range kTriesRange{1, 100'000'000};
constexpr Range kSecondsRange{0.01, 3600};
constexpr Range kSeedRange{0, 1e15};

constexpr std::string_view kGives =
    "  days         from the start of the first to the finish of the last\n"
    "  lower_bound  no plan can be shorter; equal to days: this one is the shortest\n"
    "  items        {\"id\", \"start\", \"end\"}, in days from the start\n";

// The keys of critical-path, and those that only this one takes.
const std::string& keysIn() {
    static const std::string kKeys =
        std::string(kItemKeys) +
        "          an item may also have \"uses\", {\"crew\": places}, and \"space\", a\n"
        "          space that takes one crew at a time\n"
        "  crews   {\"crew\": capacity}: in how many places it can be at once\n"
        "  tries   plans to make, 5000 where not said; the same tries and seed give\n"
        "          the same plan everywhere\n"
        "  seconds instead of tries: how long to look\n"
        "  seed    a whole number, 1 where not said\n";
    return kKeys;
}

// What the keys beyond those of critical-path say.
struct Crews {
    std::vector<compute::PlanCrew> crews;
    std::unordered_map<std::string, std::size_t> byName;
    std::vector<std::string> spaces;
    std::vector<std::vector<compute::CrewNeed>> needs;  // by item
    std::vector<std::optional<std::size_t>> inSpace;
};

model::Result<void> readCrews(Fields& fields, Crews& out) {
    const json* given = fields.objectIfGiven("crews");
    if (given == nullptr) {
        return {};
    }
    Fields crews(*given, "crews: ");
    for (const auto& [name, value] : given->items()) {
        out.byName.emplace(name, out.crews.size());
        out.crews.push_back({name, crews.wholeIfGiven(name, kCapacityRange).value_or(0)});
    }
    return crews.done();
}

// The crews an item uses; a slip is noted under "uses".
std::vector<compute::CrewNeed> readUses(Fields& item, const Crews& known) {
    std::vector<compute::CrewNeed> needs;
    const json* given = item.objectIfGiven("uses");
    if (given == nullptr) {
        return needs;
    }
    Fields uses(*given);
    for (const auto& [name, value] : given->items()) {
        const auto places = uses.wholeIfGiven(name, kPlacesRange);
        const auto crew = known.byName.find(name);
        if (crew == known.byName.end()) {
            item.slip("uses", " names " + compute::inQuotes(name) +
                                  ", and crews has no such crew: add it there with its capacity");
            return {};
        }
        needs.push_back({crew->second, places.value_or(1)});
        const std::int64_t capacity = known.crews[crew->second].capacity;
        if (needs.back().places > capacity) {
            item.slip("uses", " asks for " + std::to_string(needs.back().places) + " of " +
                                  compute::inQuotes(name) + ", which has only " +
                                  std::to_string(capacity) + ": lower the one or raise the other");
        }
    }
    if (auto fine = uses.done(); !fine.ok()) {
        item.slip("uses", ": " + fine.error().message);
    }
    return needs;
}

std::optional<std::size_t> readSpace(Fields& item, std::vector<std::string>& spaces) {
    if (!item.has("space")) {
        return std::nullopt;
    }
    const std::string name = item.text("space");
    for (std::size_t k = 0; k < spaces.size(); ++k) {
        if (spaces[k] == name) {
            return k;
        }
    }
    spaces.push_back(name);
    return spaces.size() - 1;
}

compute::CrewPlanLimits readLimits(Fields& fields, const Stopwatch& stopwatch) {
    compute::CrewPlanLimits limits;
    const auto tries = fields.wholeIfGiven("tries", kTriesRange);
    const auto seconds = fields.numberIfGiven("seconds", kSecondsRange);
    const auto seed = fields.wholeIfGiven("seed", kSeedRange);
    limits.tries = tries.value_or(limits.tries);
    limits.seed = static_cast<std::uint64_t>(seed.value_or(1));
    if (seconds && tries) {
        fields.slip("seconds", " and tries are both given: give one of them");
    } else if (seconds && !stopwatch) {
        fields.slip("seconds", " can't be measured here: give tries");
    } else if (seconds) {
        const double end = stopwatch() + *seconds;
        limits.tries = std::numeric_limits<std::int64_t>::max();
        limits.goOn = [stopwatch, end] { return stopwatch() < end; };
    }
    return limits;
}

compute::CrewPlanInput inputOf(const NamedNetwork& network, const Crews& crews) {
    compute::CrewPlanInput input;
    for (std::size_t k = 0; k < network.ids.size(); ++k) {
        input.items.push_back(
            {network.ids[k], network.activities[k], crews.needs[k], crews.inSpace[k]});
    }
    input.precedences = network.precedences;
    input.crews = crews.crews;
    input.spaces = crews.spaces;
    return input;
}

model::Result<json> runTimed(const json& in, const Stopwatch& stopwatch) {
    Fields fields(in);
    Crews crews;
    if (auto fine = readCrews(fields, crews); !fine.ok()) {
        return fine.error();
    }
    const compute::CrewPlanLimits limits = readLimits(fields, stopwatch);
    auto network = readItems(fields, [&](Fields& item, std::size_t) {
        crews.needs.push_back(readUses(item, crews));
        crews.inSpace.push_back(readSpace(item, crews.spaces));
    });
    if (auto fine = fields.done(); !fine.ok()) {
        return fine.error();
    }
    if (!network.ok()) {
        return network.error();
    }
    const compute::CrewPlanInput input = inputOf(network.value(), crews);
    auto plan = compute::crewPlan(input, limits);
    if (!plan.ok()) {
        return plan.error();
    }
    json items = json::array();
    for (std::size_t k = 0; k < input.items.size(); ++k) {
        const std::int64_t start = plan.value().starts[k];
        items.push_back({{"id", input.items[k].name},
                         {"start", printedDays(start)},
                         {"end", printedDays(start + input.items[k].activity.duration)}});
    }
    return json{{"days", printedDays(plan.value().length)},
                {"lower_bound", printedDays(plan.value().lowerBound)},
                {"items", items}};
}

model::Result<json> run(const json& input) {
    return runTimed(input, {});
}

}  // namespace

Calculation crewPlanCalculation() {
    return {"crew-plan",
            "days when no crew can be in two places at once",
            keysIn(),
            kGives,
            R"({"items":[{"id":"bath tile","days":4,"uses":{"tile":1}},)"
            R"({"id":"kitchen tile","days":3,"uses":{"tile":1}},)"
            R"({"id":"trim","days":2,"after":["bath tile"]}],"crews":{"tile":1}})",
            run,
            nullptr,
            runTimed};
}

}  // namespace ledgerboard::work
