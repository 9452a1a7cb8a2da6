// When will each item be on site, how far may it slip, what must be ordered by when, and what
// drives the finish?
//
// The critical path over what is left (job_network.h), told in days. Finished items keep their
// actual days, those under way their remaining days; crews and spaces are not kept from being in
// two places (crew_plan does that).
//
// Units: floats and remaining days in thousandths of a working day.
// Source: network.h for the times; near critical and order by are common practice, no source.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/compute/job_network.h"

namespace ledgerboard::compute {

inline constexpr std::int64_t kNearCritical =
    2 * kWorkDay;  // float up to which it is near critical

enum class PlanState : std::uint8_t { Ahead, UnderWay, Finished };

// One item or option that counts.
struct PlanItem {
    std::size_t line = 0;  // in figures.scope.lines
    PlanState state = PlanState::Ahead;
    bool hasDays = true;
    std::int64_t left = 0;
    // First and last day on site. Finished: as it was, empty where no mark tells; under way: from
    // its actual start. Both empty where the plan has a loop.
    std::optional<model::Date> startOn;
    std::optional<model::Date> finishOn;
    std::optional<model::Date> resumesOn;  // under way: the first day of what is left
    // The latest days that leave the finish of the job where it is. Empty where finished.
    std::optional<model::Date> latestStartOn;
    std::optional<model::Date> latestFinishOn;
    std::int64_t totalFloat = 0;
    std::int64_t freeFloat = 0;
    bool isCritical = false;      // unfinished, no float
    bool isNearCritical = false;  // unfinished, some float, no more than two days
    Hold hold = Hold::Nothing;  // what keeps it from starting (or, by a finish link, ending) sooner
    std::optional<std::size_t> heldBy;  // where hold is Link: position in Plan::items
    // Where its goods are not ordered: the last day to order them for the start above; never in the
    // past.
    std::optional<model::Date> orderBy;
    std::optional<model::Date> goodsOn;  // arrival of goods that are ordered and not there
};

struct Plan {
    // The day the last item finishes; empty where no item has days, or the plan has a loop.
    std::optional<model::Date> on;
    bool isFinished = false;        // everything that counts is; `on` is the day of the last finish
    model::Date firstDay;           // nothing is planned before it
    std::vector<PlanItem> items;    // in order of lines
    std::vector<std::size_t> loop;  // positions in items: each waits for the one before it
    std::vector<std::size_t> driving;  // positions in items: what drives the finish, first to last
    int checkDays = 0;                 // calendar days to look goods over, in orderBy
    std::vector<Pace> paces;           // as rows.crews
    std::size_t withoutDays = 0;       // unfinished items with neither days nor planned dates
    std::size_t goodsWithoutDay = 0;   // as in JobNetwork
    std::size_t waitingForInspection = 0;
    model::Quantity unplacedChangeDays;
};

// Requires: rows as of today (as_of.h), figures of them. Errors: OverflowError.
[[nodiscard]] Plan planOf(const model::JobRows& rows, const JobFigures& figures, model::Date today);

// The same over a network already read. Requires: all three of the same rows and day.
[[nodiscard]] Plan planOf(const model::JobRows& rows, const JobFigures& figures,
                          const JobNetwork& network);

// "Hall bath/tile > Hall bath/vanity > Hall bath/tile": the loop by names. Empty where none.
[[nodiscard]] std::string loopText(const Plan& plan, const JobFigures& figures);

}  // namespace ledgerboard::compute
