#include "core/compute/job_crew_plan.h"

#include <algorithm>
#include <set>
#include <unordered_map>

#include "core/compute/in_quotes.h"
#include "core/compute/positions.h"

namespace ledgerboard::compute {

namespace {

using model::Date;

// The network with its crews and spaces, and where those stand in the rows.
struct Crewed {
    CrewPlanInput input;
    std::vector<std::size_t> crewAt;   // in rows.crews, by position in input.crews
    std::vector<std::size_t> spaceAt;  // in rows.spaces
};

// The position of `row` in `known`, added where it isn't there yet.
std::size_t positionOf(std::vector<std::size_t>& known, std::size_t row) {
    const auto found = std::find(known.begin(), known.end(), row);
    if (found != known.end()) {
        return static_cast<std::size_t>(found - known.begin());
    }
    known.push_back(row);
    return known.size() - 1;
}

Crewed crewed(const model::JobRows& rows, const JobFigures& figures, const JobNetwork& network) {
    const Positions<model::Crew> crews(rows.crews);
    const Positions<model::Space> spaces(rows.spaces);
    Crewed out;
    for (const JobActivity& activity : network.activities) {
        CrewedItem item;
        item.name = figures.scope.lines[activity.line].name;
        item.activity = {activity.left, activity.release, std::nullopt};
        const auto crew = crews.of(activity.crew);
        if (crew && activity.left > 0) {
            item.needs.push_back({positionOf(out.crewAt, *crew), 1});
        }
        const auto space = spaces.of(activity.space);
        if (space && rows.spaces[*space].oneCrewAtATime && activity.left > 0) {
            item.space = positionOf(out.spaceAt, *space);
        }
        out.input.items.push_back(std::move(item));
    }
    for (const std::size_t crew : out.crewAt) {
        out.input.crews.push_back({rows.crews[crew].name, rows.crews[crew].capacity.value_or(1)});
    }
    for (const std::size_t space : out.spaceAt) {
        out.input.spaces.push_back(rows.spaces[space].name);
    }
    out.input.precedences = network.precedences;
    return out;
}

std::vector<std::int64_t> plainStarts(const JobNetwork& network) {
    std::vector<std::int64_t> starts;
    for (const ActivityTimes& one : network.network().times().activities) {
        starts.push_back(one.es);
    }
    return starts;
}

std::vector<StackedDays> stackedDays(const Crewed& job, const JobNetwork& network,
                                     const std::vector<std::int64_t>& starts) {
    std::vector<StackedDays> out;
    for (const Stacked& one : stackedIn(job.input, starts)) {
        StackedDays days;
        if (one.crew) {
            days.crew = job.crewAt[*one.crew];
            days.there = job.input.crews[*one.crew].capacity;
        } else {
            days.space = job.spaceAt[*one.space];
            days.there = 1;
        }
        days.from = network.time.startDay(one.from);
        days.to = network.time.finishDay(one.to);
        days.wanted = one.wanted;
        for (const std::size_t item : one.items) {
            days.lines.push_back(network.activities[item].line);
        }
        std::sort(days.lines.begin(), days.lines.end());
        out.push_back(std::move(days));
    }
    return out;
}

// The first and last day of what is left of an item that begins at `start`.
std::pair<Date, Date> daysFrom(const JobNetwork& network, const JobActivity& activity,
                               std::int64_t start) {
    if (activity.left > 0) {
        return {network.time.startDay(start), network.time.finishDay(start + activity.left)};
    }
    // What takes no time falls on the day it waits for, or on the one it may begin on.
    const Date on =
        start == activity.release ? network.time.startDay(start) : network.time.finishDay(start);
    return {on, on};
}

void fillDays(const JobNetwork& network, const std::vector<std::int64_t>& plain, JobCrewPlan& out) {
    for (std::size_t k = 0; k < network.activities.size(); ++k) {
        const JobActivity& activity = network.activities[k];
        CrewedDays days;
        days.line = activity.line;
        days.hasDays = activity.hasDays;
        std::tie(days.startOn, days.finishOn) = daysFrom(network, activity, out.plan.starts[k]);
        days.plainFinishOn = daysFrom(network, activity, plain[k]).second;
        days.laterUnits = out.plan.starts[k] - plain[k];
        if (activity.hasDays) {
            out.on = std::max(out.on, std::optional(days.finishOn));
            out.plainOn = std::max(out.plainOn, std::optional(days.plainFinishOn));
        }
        out.items.push_back(days);
    }
    if (out.on) {
        out.noSoonerThanOn = std::min(*out.on, network.time.finishDay(out.plan.lowerBound));
    }
}

}  // namespace

model::Result<JobCrewPlan> crewPlanOf(const model::JobRows& rows, const JobFigures& figures,
                                      const JobNetwork& network, const CrewPlanLimits& limits) {
    const Crewed job = crewed(rows, figures, network);
    for (const PlanCrew& crew : job.input.crews) {
        if (crew.capacity < 1) {
            return model::cannotBeMet("crew " + inQuotes(crew.name) +
                                      " has work left and a capacity of 0: 'ledgerboard set " +
                                      inQuotes(crew.name) +
                                      " Capacity 1' says it can be in one "
                                      "place at a time");
        }
    }
    auto plan = crewPlan(job.input, limits);
    if (!plan.ok()) {
        return plan.error();
    }
    JobCrewPlan out;
    out.plan = std::move(plan).value();
    const std::vector<std::int64_t> plain = plainStarts(network);
    fillDays(network, plain, out);
    out.stacked = stackedDays(job, network, plain);
    for (const std::size_t crew : job.crewAt) {
        out.crewsWithoutCapacity += rows.crews[crew].capacity ? 0 : 1;
    }
    for (std::size_t k = 0; k < network.activities.size(); ++k) {
        const bool waitsForNobody = job.input.items[k].needs.empty();
        out.itemsWithoutCrew += network.activities[k].left > 0 && waitsForNobody ? 1 : 0;
    }
    out.oneCrewSpaces = job.spaceAt.size();
    return out;
}

std::vector<StackedDays> stackedDaysOf(const model::JobRows& rows, const JobFigures& figures,
                                       const JobNetwork& network) {
    return stackedDays(crewed(rows, figures, network), network, plainStarts(network));
}

}  // namespace ledgerboard::compute
