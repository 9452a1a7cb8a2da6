// Which days of a job belong in somebody's calendar?
//
// Work by the plan of what is left (finished work as it was), deliveries, the last day to order,
// inspections, decisions. Whole days, no money. A crew gets its own work, what is delivered for it
// and the inspections it waits for; ordering and deciding are the owner's.
// Source: project decision. Threads: any number may ask.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/compute/plan.h"

namespace ledgerboard::compute {

enum class ScheduleDayKind { Work, Delivery, OrderBy, Inspection, Decision };
[[nodiscard]] std::string_view wordsFor(ScheduleDayKind kind);  // "order-by"

struct ScheduleDay {
    ScheduleDayKind kind = ScheduleDayKind::Work;
    model::RawId record;  // with the kind, the same for the same thing on every day it is asked
    std::string what;     // "Hall bath/tile"
    std::string crew;     // of work; may be empty
    std::string note;     // may be empty
    model::Date from;
    model::Date to;  // the last day; not before `from`
};

struct ScheduleDays {
    std::vector<ScheduleDay> days;  // by first day, then in the order of the kinds above
    std::size_t withoutDay = 0;     // items, deliveries, inspections, decisions no day is known of
};

// `crew` nil: of the whole job. Requires: rows as of today, figures and plan of them.
// Errors: OverflowError.
[[nodiscard]] ScheduleDays scheduleDaysOf(const model::JobRows& rows, const JobFigures& figures,
                                          const Plan& plan, model::Id<model::Kind::Crew> crew = {});

}  // namespace ledgerboard::compute
