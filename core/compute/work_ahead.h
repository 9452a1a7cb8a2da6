// From which day to which is each unfinished item still worked on, by the plan?
//
// An item under way goes on from the day it resumes, one not begun from its planned start, both to
// the day the plan (plan.h) finishes it.
// Source: project decision.
#pragma once

#include <optional>
#include <vector>

#include "core/compute/budget.h"
#include "core/compute/plan.h"
#include "core/compute/planned_value.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

struct WorkSpan {
    model::Date first;
    model::Date last;  // not before first
};

// For each of rows.items: empty where it does not count, is shown finished, or the plan has no days
// for it. Requires: all three of the same rows and day.
[[nodiscard]] std::vector<std::optional<WorkSpan>> workAheadOf(const model::JobRows& rows,
                                                               const JobFigures& figures,
                                                               const Plan& plan);

// The latest last day; empty where nothing is ahead.
[[nodiscard]] std::optional<model::Date> lastDayOf(
    const std::vector<std::optional<WorkSpan>>& ahead);

// What is expected to be seen of an item by the end of `day`: from what is seen now evenly over its
// working days to all of it. Without a span: all of it where it is shown finished, else what is
// seen now.
[[nodiscard]] model::Percent seenBy(const LineFigures& line, const std::optional<WorkSpan>& span,
                                    model::Date day, const WorkCalendar& calendar);

// What is expected to be seen by then of several items together, weighed by budget now.
[[nodiscard]] model::Percent seenBy(const JobFigures& figures,
                                    const std::vector<std::size_t>& items,
                                    const std::vector<std::optional<WorkSpan>>& ahead,
                                    model::Date day, const WorkCalendar& calendar);

}  // namespace ledgerboard::compute
