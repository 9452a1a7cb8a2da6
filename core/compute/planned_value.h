// How much of the budget should be earned by a day? And which days are worked?
//
// PV of a line runs evenly over its planned working days, both ends included; none-or-done and
// weighted steps at their planned finish; half-and-half half at each end. A signed change enters
// from its signing day, over its line's dates. Dates and budgets are those of the latest baseline,
// else today's plan (scope_lines.h). A line without the dates it needs is left out.
// Source: project decision.
#pragma once

#include <optional>
#include <vector>

#include "core/compute/scope_lines.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

// The days on which crews work: the job's work week (Monday to Friday where none is entered) less
// its holidays. Threads: any number may ask.
class WorkCalendar {
  public:
    explicit WorkCalendar(const model::Job& job);

    [[nodiscard]] bool isWorkDay(model::Date day) const;
    // Working days from `first` to `last`, both included; 0 where last comes before first.
    [[nodiscard]] int workDays(model::Date first, model::Date last) const;
    // `day` itself, or the next working day after it.
    [[nodiscard]] model::Date onOrAfter(model::Date day) const;
    // The last day of `days` working days that begin on or after `start`. Requires: 1 <= days.
    [[nodiscard]] model::Date finishOf(model::Date start, int days) const;

  private:
    model::Weekdays week_;
    std::vector<model::Date> holidays_;  // those on days of the work week, sorted, no doubles
};

// How a line's budget is planned to be earned.
class PlannedLine {
  public:
    // Empty where the line does not count or lacks the dates its measure needs (both, start no
    // later than finish; none-or-done and steps only a finish). The whole job's line has none, nor
    // a contract's own.
    [[nodiscard]] static std::optional<PlannedLine> make(const ScopeLine& line,
                                                         model::Measure measure,
                                                         const WorkCalendar& calendar);

    // By the end of `day`. Rounded once per sum. Errors: OverflowError.
    [[nodiscard]] model::Money plannedBy(model::Date day, const WorkCalendar& calendar) const;

  private:
    model::Measure measure_ = model::Measure::JudgedPercent;
    model::Date start_;
    model::Date finish_;
    int workDays_ = 0;  // of start to finish
    model::Money baseline_;
    std::vector<ChangePart> changes_;
};

struct PlannedValue {
    std::vector<std::optional<PlannedLine>> lines;  // one for each of scope.lines
    WorkCalendar calendar;
    std::size_t undated = 0;     // counting items and options left out
    model::Money undatedBudget;  // their budget now

    [[nodiscard]] model::Money by(model::Date day) const;
};

// Errors: OverflowError.
[[nodiscard]] PlannedValue plannedValueOf(const model::JobRows& rows, const ScopeLines& scope);

}  // namespace ledgerboard::compute
