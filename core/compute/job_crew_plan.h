// When will the job be finished if no crew is in two places at once, and which crew is wanted in
// two places at once if nobody sees to that?
//
// What is left of the job (job_network.h) put through crew_plan.h. A crew is in as many places as
// its capacity says, in one where none is entered; each of its items takes one place. A space
// marked as one crew at a time holds the items of one crew; an item there that has no crew keeps
// everybody else out. Items without a crew, in other spaces, wait for nobody. What is left of an
// item under way may be put off while its crew is elsewhere.
// Units: thousandths of a working day, counted from network.time.first().
// Source: project decision. Threads: any number at once.
#pragma once

#include <optional>
#include <vector>

#include "core/compute/budget.h"
#include "core/compute/crew_plan.h"
#include "core/compute/job_network.h"
#include "core/compute/stacked.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

// One stretch in which a crew is wanted in too many places, or a space by several crews.
struct StackedDays {
    std::optional<std::size_t> crew;   // in rows.crews; either this or `space` is there
    std::optional<std::size_t> space;  // in rows.spaces
    model::Date from;                  // first and last day
    model::Date to;
    std::int64_t wanted = 0;  // at most at one time: places of the crew, parties in the space
    std::int64_t there = 0;   // places the crew can be in; 1 for a space
    std::vector<std::size_t> lines;  // in figures.scope.lines, in their order
};

// One item or option that is left, in order of lines.
struct CrewedDays {
    std::size_t line = 0;
    bool hasDays = true;
    model::Date startOn;  // of what is left
    model::Date finishOn;
    model::Date plainFinishOn;    // if every crew could be everywhere at once
    std::int64_t laterUnits = 0;  // by how much it starts later than then; less than 0: sooner
};

struct JobCrewPlan {
    std::vector<CrewedDays> items;
    std::optional<model::Date> on;              // last finish; empty where nothing left has days
    std::optional<model::Date> plainOn;         // if every crew could be everywhere at once
    std::optional<model::Date> noSoonerThanOn;  // no plan with these crews ends before it
    CrewPlan plan;                         // of those that have days, and of what they wait for
    std::vector<StackedDays> stacked;      // in the plan that does not look at crews
    std::size_t crewsWithoutCapacity = 0;  // crews at work in it, taken as one place
    std::size_t itemsWithoutCrew = 0;      // that have days and wait for no crew and no space
    std::size_t withoutDays = 0;           // neither days nor planned dates: they take no time
    std::size_t oneCrewSpaces = 0;         // spaces that take one crew at a time, with work left
};

// Requires: rows as of today (as_of.h); figures and network of them; no loop in the network.
// Errors: CannotBeMet, naming the crew: a capacity of 0 with work left; more than kMostCrewItems
// items; OverflowError.
[[nodiscard]] model::Result<JobCrewPlan> crewPlanOf(const model::JobRows& rows,
                                                    const JobFigures& figures,
                                                    const JobNetwork& network,
                                                    const CrewPlanLimits& limits);

// Only what is wanted twice in the plan that does not look at crews: nothing is searched for, so it
// is fast. Requires: as above. Errors: OverflowError.
[[nodiscard]] std::vector<StackedDays> stackedDaysOf(const model::JobRows& rows,
                                                     const JobFigures& figures,
                                                     const JobNetwork& network);

}  // namespace ledgerboard::compute
