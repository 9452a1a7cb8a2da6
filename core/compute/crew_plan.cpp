#include "core/compute/crew_plan.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <set>
#include <utility>

#include "core/compute/crew_bound.h"
#include "core/compute/crew_problem.h"
#include "core/compute/crew_search.h"
#include "core/compute/in_quotes.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

namespace {

using model::LinkKind;
using model::Result;

constexpr std::int64_t kLongest = 10'000'000'000'000;  // units, of all durations and lags together
constexpr std::int64_t kMostPlaces = 10'000;           // of one crew

std::string named(const CrewedItem& item) {
    return "item " + inQuotes(item.name);
}

Result<void> checkNeeds(const CrewPlanInput& input, const CrewedItem& item) {
    std::set<std::size_t> crews;
    for (const CrewNeed& need : item.needs) {
        if (need.crew >= input.crews.size()) {
            return model::wrongUse(model::saying("%1 uses a crew that is not there", named(item)));
        }
        const PlanCrew& crew = input.crews[need.crew];
        if (!crews.insert(need.crew).second) {
            return model::wrongUse(model::saying("%1 uses %2 twice: add the two up", named(item),
                                                 inQuotes(crew.name)));
        }
        if (need.places < 1) {
            return model::wrongUse(model::saying("%1 uses %2 of %3: it must be 1 or more",
                                                 named(item), need.places, inQuotes(crew.name)));
        }
        if (need.places > crew.capacity) {
            return model::wrongUse(model::saying(
                "%1 uses %2 of %3, which has only %4: lower the one or raise the other",
                named(item), need.places, inQuotes(crew.name), crew.capacity));
        }
    }
    if (item.space && *item.space >= input.spaces.size()) {
        return model::wrongUse(model::saying("%1 is in a space that is not there", named(item)));
    }
    return {};
}

Result<void> checkLoop(const CrewPlanInput& input) {
    for (const Precedence& link : input.precedences) {
        if (link.from >= input.items.size() || link.to >= input.items.size()) {
            return model::wrongUse("a link names an item that is not there");
        }
    }
    const auto loop = findLoop(input.items.size(), input.precedences);
    if (loop.empty()) {
        return {};
    }
    std::string ring;
    for (const std::size_t k : loop) {
        ring += inQuotes(input.items[k].name) + " > ";
    }
    return model::wrongUse(
        model::saying("the items wait for each other in a loop: %1%2: take one of these links out",
                      ring, inQuotes(input.items[loop[0]].name)));
}

Result<void> checkLength(const CrewPlanInput& input) {
    const auto tooLong = [] {
        return model::cannotBeMet("the days and lags are too long to add up: shorten them");
    };
    const auto isTooLong = [](std::int64_t time) { return time > kLongest || time < -kLongest; };
    std::int64_t sum = 0;
    for (const CrewedItem& item : input.items) {
        if (item.activity.duration < 0) {
            return model::wrongUse(model::saying("%1 has fewer than 0 days", named(item)));
        }
        if (isTooLong(item.activity.duration) || isTooLong(item.activity.release)) {
            return tooLong();
        }
        sum += item.activity.duration + std::max<std::int64_t>(item.activity.release, 0);
        if (isTooLong(sum)) {
            return tooLong();
        }
    }
    for (const Precedence& link : input.precedences) {
        if (isTooLong(link.lag)) {
            return tooLong();
        }
        sum += link.lag < 0 ? -link.lag : link.lag;
        if (isTooLong(sum)) {
            return tooLong();
        }
    }
    return {};
}

Result<void> check(const CrewPlanInput& input) {
    if (input.items.size() > kMostCrewItems) {
        return model::cannotBeMet(model::saying("a crew plan takes at most %1 items; these are %2",
                                                kMostCrewItems, input.items.size()));
    }
    for (const PlanCrew& crew : input.crews) {
        if (crew.capacity < 0 || crew.capacity > kMostPlaces) {
            return model::wrongUse(
                model::saying("the capacity of %1 is %2: it must be from 0 to %3",
                              inQuotes(crew.name), crew.capacity, kMostPlaces));
        }
    }
    for (const CrewedItem& item : input.items) {
        if (auto fine = checkNeeds(input, item); !fine.ok()) {
            return fine;
        }
    }
    if (auto fine = checkLength(input); !fine.ok()) {
        return fine;
    }
    return checkLoop(input);
}

// The largest unit of which all times are whole counts.
std::int64_t unitOf(const CrewPlanInput& input) {
    std::int64_t unit = 0;
    for (const CrewedItem& item : input.items) {
        unit = std::gcd(unit, item.activity.duration);
        unit = std::gcd(unit, std::max<std::int64_t>(item.activity.release, 0));
    }
    for (const Precedence& link : input.precedences) {
        unit = std::gcd(unit, link.lag);
    }
    return std::max<std::int64_t>(unit, 1);
}

// By how much the start of `to` follows the start of `from` at least.
CrewTime startLag(const Precedence& link, CrewTime unit, const CrewProblem& problem) {
    const CrewTime from = problem.items[link.from].days;
    const CrewTime to = problem.items[link.to].days;
    const CrewTime lag = link.lag / unit;
    switch (link.kind) {
        case LinkKind::StartToStart:
            return lag;
        case LinkKind::FinishToFinish:
            return from + lag - to;
        case LinkKind::StartToFinish:
            return lag - to;
        case LinkKind::Unset:
        case LinkKind::FinishToStart:
            break;
    }
    return from + lag;
}

CrewProblem problemOf(const CrewPlanInput& input, std::int64_t unit) {
    CrewProblem problem;
    for (const PlanCrew& crew : input.crews) {
        problem.capacities.push_back(crew.capacity);
    }
    problem.capacities.resize(input.crews.size() + input.spaces.size(), kNoLimit);
    std::map<CrewParty, std::size_t> parties;
    for (std::size_t k = 0; k < input.items.size(); ++k) {
        const CrewedItem& item = input.items[k];
        CrewWork work;
        work.days = item.activity.duration / unit;
        work.head = std::max<std::int64_t>(item.activity.release, 0) / unit;
        for (std::size_t n = 0; work.days > 0 && n < item.needs.size(); ++n) {
            work.uses.push_back({item.needs[n].crew, item.needs[n].places, 0});
        }
        if (work.days > 0 && item.space) {
            const auto party = parties.emplace(partyOf(input, k), parties.size() + 1).first->second;
            work.uses.push_back({input.crews.size() + *item.space, 1, party});
        }
        problem.items.push_back(std::move(work));
    }
    for (const Precedence& link : input.precedences) {
        problem.items[link.to].after.push_back({link.from, startLag(link, unit, problem)});
    }
    problem.finish();
    return problem;
}

CrewTime withoutCrews(const CrewProblem& problem) {
    std::vector<CrewTime> starts(problem.items.size());
    for (const std::size_t k : problem.order) {
        starts[k] = problem.items[k].head;
        for (const StartLag& link : problem.items[k].after) {
            starts[k] = std::max(starts[k], starts[link.item] + link.lag);
        }
    }
    return lengthOf(problem, starts);
}

}  // namespace

CrewParty partyOf(const CrewPlanInput& input, std::size_t item) {
    CrewParty party;
    for (const CrewNeed& need : input.items[item].needs) {
        party.second.push_back(need.crew);
    }
    std::sort(party.second.begin(), party.second.end());
    party.first = party.second.empty() ? item + 1 : 0;
    return party;
}

Result<CrewPlan> crewPlan(const CrewPlanInput& input, const CrewPlanLimits& limits) {
    if (auto fine = check(input); !fine.ok()) {
        return fine.error();
    }
    const std::int64_t unit = unitOf(input);
    const CrewProblem problem = problemOf(input, unit);
    const CrewSearchResult plain = plainCrewPlan(problem);
    const CrewTime bound = crewLowerBound(problem, plain.length, limits.goOn);
    const CrewSearchResult found = searchCrewPlan(
        problem, {std::max<std::int64_t>(limits.tries, 1), limits.seed, bound, limits.goOn});
    CrewPlan plan;
    plan.starts = found.starts;
    for (std::int64_t& start : plan.starts) {
        start *= unit;
    }
    plan.length = found.length * unit;
    plan.lowerBound = bound * unit;
    plan.withoutCrews = withoutCrews(problem) * unit;
    plan.plainLength = plain.length * unit;
    plan.tries = found.tries;
    return plan;
}

}  // namespace ledgerboard::compute
