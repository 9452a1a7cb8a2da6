#include "core/compute/job_crew_plan.h"

#include <algorithm>
#include <set>
#include <unordered_map>

#include "core/compute/in_quotes.h"
#include "core/compute/positions.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

namespace {

using model::Date;

// The network with its crews and spaces, and where those stand in the rows.
struct Crewed {
    CrewPlanInput input;
    std::vector<std::size_t> activityOf;             // by position in input.items
    std::vector<std::optional<std::size_t>> itemOf;  // by activity
    std::vector<std::size_t> crewAt;                 // in rows.crews, by position in input.crews
    std::vector<std::size_t> spaceAt;                // in rows.spaces
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

// Whether each activity takes time, or something that does waits for it. The others end nothing.
std::vector<bool> matters(const JobNetwork& network) {
    std::vector<std::vector<std::size_t>> before(network.activities.size());
    for (const Precedence& link : network.precedences) {
        before[link.to].push_back(link.from);
    }
    std::vector<bool> out(network.activities.size());
    std::vector<std::size_t> open;
    for (std::size_t k = 0; k < network.activities.size(); ++k) {
        out[k] = network.activities[k].left > 0;
        if (out[k]) {
            open.push_back(k);
        }
    }
    while (!open.empty()) {
        const std::size_t last = open.back();
        open.pop_back();
        for (const std::size_t k : before[last]) {
            if (!out[k]) {
                out[k] = true;
                open.push_back(k);
            }
        }
    }
    return out;
}

Crewed crewed(const model::JobRows& rows, const JobFigures& figures, const JobNetwork& network) {
    const Positions<model::Crew> crews(rows.crews);
    const Positions<model::Space> spaces(rows.spaces);
    const std::vector<bool> isIn = matters(network);
    Crewed out;
    out.itemOf.resize(network.activities.size());
    for (std::size_t k = 0; k < network.activities.size(); ++k) {
        const JobActivity& activity = network.activities[k];
        if (!isIn[k]) {
            continue;
        }
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
        out.itemOf[k] = out.input.items.size();
        out.activityOf.push_back(k);
        out.input.items.push_back(std::move(item));
    }
    for (const std::size_t crew : out.crewAt) {
        out.input.crews.push_back({rows.crews[crew].name, rows.crews[crew].capacity.value_or(1)});
    }
    for (const std::size_t space : out.spaceAt) {
        out.input.spaces.push_back(rows.spaces[space].name);
    }
    for (const Precedence& link : network.precedences) {
        if (isIn[link.to]) {
            out.input.precedences.push_back(
                {*out.itemOf[link.from], *out.itemOf[link.to], link.kind, link.lag});
        }
    }
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
    std::vector<std::int64_t> ofItems;
    for (const std::size_t activity : job.activityOf) {
        ofItems.push_back(starts[activity]);
    }
    std::vector<StackedDays> out;
    for (const Stacked& one : stackedIn(job.input, ofItems)) {
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
            days.lines.push_back(network.activities[job.activityOf[item]].line);
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

// The starts of all activities: of those that are not in the plan, as soon as what they wait for
// lets them. They take no time.
std::vector<std::int64_t> allStarts(const Crewed& job, const JobNetwork& network,
                                    const std::vector<std::int64_t>& planned) {
    const Network links = network.network();
    std::vector<std::int64_t> starts(network.activities.size());
    for (const std::uint32_t k : links.order()) {
        if (job.itemOf[k]) {
            starts[k] = planned[*job.itemOf[k]];
            continue;
        }
        starts[k] = std::max<std::int64_t>(network.activities[k].release, 0);
        for (const std::uint32_t at : links.into(k)) {
            const Precedence& link = network.precedences[at];
            const bool fromStart = link.kind == model::LinkKind::StartToStart ||
                                   link.kind == model::LinkKind::StartToFinish;
            const std::int64_t days = fromStart ? 0 : network.activities[link.from].left;
            starts[k] = std::max(starts[k], starts[link.from] + days + link.lag);
        }
    }
    return starts;
}

void fillDays(const JobNetwork& network, const std::vector<std::int64_t>& starts,
              const std::vector<std::int64_t>& plain, JobCrewPlan& out) {
    for (std::size_t k = 0; k < network.activities.size(); ++k) {
        const JobActivity& activity = network.activities[k];
        CrewedDays days;
        days.line = activity.line;
        days.hasDays = activity.hasDays;
        std::tie(days.startOn, days.finishOn) = daysFrom(network, activity, starts[k]);
        days.plainFinishOn = daysFrom(network, activity, plain[k]).second;
        days.laterUnits = starts[k] - plain[k];
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
            return model::cannotBeMet(
                model::saying("crew %1 has work left and a capacity of 0: 'ledgerboard set %2 "
                              "Capacity 1' says it can be in one place at a time",
                              inQuotes(crew.name), inQuotes(crew.name)));
        }
    }
    auto plan = crewPlan(job.input, limits);
    if (!plan.ok()) {
        return plan.error();
    }
    JobCrewPlan out;
    out.plan = std::move(plan).value();
    const std::vector<std::int64_t> plain = plainStarts(network);
    fillDays(network, allStarts(job, network, out.plan.starts), plain, out);
    out.stacked = stackedDays(job, network, plain);
    for (const std::size_t crew : job.crewAt) {
        out.crewsWithoutCapacity += rows.crews[crew].capacity ? 0 : 1;
    }
    for (const CrewedItem& item : job.input.items) {
        const bool waitsForNobody = item.needs.empty() && !item.space;
        out.itemsWithoutCrew += item.activity.duration > 0 && waitsForNobody ? 1 : 0;
    }
    for (const CrewedDays& item : out.items) {
        out.withoutDays += item.hasDays ? 0 : 1;
    }
    out.oneCrewSpaces = job.spaceAt.size();
    return out;
}

std::vector<StackedDays> stackedDaysOf(const model::JobRows& rows, const JobFigures& figures,
                                       const JobNetwork& network) {
    return stackedDays(crewed(rows, figures, network), network, plainStarts(network));
}

}  // namespace ledgerboard::compute
