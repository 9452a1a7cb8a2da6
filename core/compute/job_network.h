// What of a job is still to be done, as a network of activities on a working calendar?
//
// One activity for each unfinished item that counts, and for each carried option that has days but
// no items. Unknowns and unsigned changes are not in it. Time 0 is the start of `firstDay`, the day
// after the one asked about (or the day work begins, if later): nothing is planned in the past.
//
//   left     (likely days + days of signed changes) x (1 - shown) x pace of its crew
//   links    between unfinished items as entered. One from an item that is finished, or a start
//            link from one under way, holds the other back until its own day + lag. An item under
//            way goes on: what held its start holds it no more; finish links still do
//   release  the latest of: the agreed start of its contract; arrival of its goods + the days to
//            look them over; where they are not ordered, order tomorrow + lead days + those days;
//            its planned start, but only where no link says when it can start
//
// Source: project decisions; lead times are calendar days, the days for looking goods over are a
// level of the job (concern_levels.h, 3 where not changed: common practice, no source).
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/compute/budget.h"
#include "core/compute/network.h"
#include "core/compute/pace.h"
#include "core/compute/work_time.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

inline constexpr std::int64_t kMostLead = 10'000;  // calendar days, as lead days are read

// What an activity's release comes from.
enum class Hold : std::uint8_t {
    Nothing,        // it can start on the first day
    PlannedStart,   // the day planned for it
    ContractStart,  // the day agreed with its crew
    Goods,          // goods that are ordered and not there yet
    Order,          // goods that are not ordered yet
    Link,           // an item before it
};

struct JobActivity {
    std::size_t line = 0;  // in figures.scope.lines
    bool isOption = false;
    bool isBegun = false;
    bool hasDays = true;  // false: neither days nor planned dates; it takes no time in the plan
    model::Percent shown;
    std::int64_t pace = kAsPlanned;
    std::int64_t days = 0;        // thousandths, of the whole item: likely, + signed changes
    std::int64_t changeDays = 0;  // the part of `days` from signed changes
    std::int64_t left = 0;        // thousandths: its duration in the network
    std::int64_t release = 0;
    Hold hold = Hold::Nothing;              // what the release comes from
    std::optional<std::size_t> heldByLine;  // where hold is Link: the item that is past
    std::optional<model::Date> startedOn;   // where it is begun and a day is known
    std::optional<model::Date> goodsOn;     // arrival of goods awaited, ordered or not
    bool isOrdered = false;                 // its goods
    model::Id<model::Kind::Crew> crew;      // nil where none
    model::Id<model::Kind::Space> space;
};

struct JobNetwork {
    WorkTime time;                         // first() is the first day planned
    int checkDays = 0;                     // calendar days to look goods over
    model::Date tomorrow;                  // the first day something can be ordered on
    std::vector<JobActivity> activities;   // in order of lines
    std::vector<Precedence> precedences;   // positions in activities
    std::vector<std::size_t> loop;         // positions in activities, as findLoop; empty: none
    std::vector<Pace> paces;               // as rows.crews
    std::size_t goodsWithoutDay = 0;       // ordered, and nothing tells when they come
    std::size_t waitingForInspection = 0;  // not begun, held up by an inspection not held yet
    model::Quantity unplacedChangeDays;    // of signed changes that name no item

    // Requires: no loop.
    [[nodiscard]] Network network() const;
};

// days x (1 - shown) x pace, in thousandths, rounded up; at least 1 where days are and it is not
// finished. For estimates other than the likely one (risk), with the same changes added to days.
[[nodiscard]] std::int64_t leftOf(std::int64_t days, model::Percent shown, std::int64_t pace);

// Requires: rows as of today (as_of.h), figures of them. Errors: OverflowError.
[[nodiscard]] JobNetwork jobNetworkOf(const model::JobRows& rows, const JobFigures& figures,
                                      model::Date today);

// The days an item was really on site: from its actual start, else its first mark above 0; to its
// actual finish, else the first of the marks since which it is shown finished. Each empty where
// nothing tells.
struct ActualDays {
    std::optional<model::Date> startOn;
    std::optional<model::Date> finishOn;  // only where it is shown finished
};

[[nodiscard]] ActualDays actualDaysOf(const model::Item& item, std::span<const MarkRead> marks);

}  // namespace ledgerboard::compute
