// What happened since the last look, what did not, and what is each crew to be told?
//
// The week is the days after `since` up to today. Source: project decisions, after the questions an
// owner asks at a weekly review (common practice, no source).
#pragma once

#include <string>
#include <vector>

#include "core/compute/budget.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

// Money that left this week, by who got it.
struct PaidTo {
    std::string name;  // the crew, else the payee, else "" where nobody was named
    model::Money amount;
    // Of all that was ever paid on its signed contracts, what is ahead of work seen.
    model::Money ahead;
};

// Work the plan wanted this week.
struct NotDone {
    std::size_t item = 0;  // in rows.items
    bool isStart = false;  // it was to begin; else it was to be finished
    model::Date wantedOn;
    model::Percent shown;
};

// A crew that had work planned and was not there, by what was entered of who was there.
struct NotThere {
    std::size_t crew = 0;           // in rows.crews
    std::vector<model::Date> days;  // working days, rising
    int inARow = 0;                 // the longest run of them
};

// What a crew is to be told on Monday.
struct CrewNews {
    std::size_t crew = 0;                // in rows.crews
    std::vector<std::size_t> going;      // items begun and not finished, in rows.items
    std::vector<std::size_t> beginning;  // items to begin within a week
    std::vector<std::size_t> punch;      // open punch items, in rows.punches
    std::vector<std::size_t> leaveOpen;  // items not to be covered before they are looked at
};

struct ThisWeek {
    model::Date since;
    std::vector<PaidTo> paid;  // largest first
    model::Money paidInAll;
    std::vector<NotDone> notDone;  // by the day wanted
    bool knowsPresence = false;    // whether anybody entered who was there this week
    std::vector<NotThere> notThere;
    std::vector<CrewNews> crews;  // those with anything to be told, as in rows.crews
};

// Requires: rows as of today, since <= today. Errors: OverflowError.
[[nodiscard]] ThisWeek thisWeekOf(const model::JobRows& rows, const JobFigures& figures,
                                  model::Date since, model::Date today);

}  // namespace ledgerboard::compute
