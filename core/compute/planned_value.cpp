#include "core/compute/planned_value.h"

#include <algorithm>

#include "core/compute/progress.h"
#include "core/model/check.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Measure;
using model::Money;

constexpr int kDaysInWeek = 7;

bool isPlannedByFinish(Measure measure) {
    return measure == Measure::NoneOrDone || measure == Measure::WeightedSteps;
}

}  // namespace

WorkCalendar::WorkCalendar(const model::Job& job)
    : week_(job.workWeek.value_or(model::Weekdays::mondayToFriday())) {
    if (week_.bits() == 0) {
        week_ = model::Weekdays::mondayToFriday();
    }
    for (const Date day : job.holidays) {
        if (week_.has(day.weekday())) {
            holidays_.push_back(day);
        }
    }
    std::sort(holidays_.begin(), holidays_.end());
    holidays_.erase(std::unique(holidays_.begin(), holidays_.end()), holidays_.end());
}

bool WorkCalendar::isWorkDay(Date day) const {
    return week_.has(day.weekday()) && !std::binary_search(holidays_.begin(), holidays_.end(), day);
}

int WorkCalendar::workDays(Date first, Date last) const {
    if (last < first) {
        return 0;
    }
    int perWeek = 0;
    for (int k = 0; k < kDaysInWeek; ++k) {
        perWeek += week_.has(k) ? 1 : 0;
    }
    const int weeks = (last - first + 1) / kDaysInWeek;
    int days = weeks * perWeek;
    for (Date day = first + weeks * kDaysInWeek; day <= last; day = day + 1) {
        days += week_.has(day.weekday()) ? 1 : 0;
    }
    const auto from = std::lower_bound(holidays_.begin(), holidays_.end(), first);
    const auto to = std::upper_bound(holidays_.begin(), holidays_.end(), last);
    return days - static_cast<int>(to - from);
}

Date WorkCalendar::onOrAfter(Date day) const {
    while (!isWorkDay(day)) {
        day = day + 1;
    }
    return day;
}

Date WorkCalendar::finishOf(Date start, int days) const {
    model::require(days >= 1, "work takes at least one day");
    Date day = onOrAfter(start);
    for (int k = 1; k < days; ++k) {
        day = onOrAfter(day + 1);
    }
    return day;
}

std::optional<PlannedLine> PlannedLine::make(const ScopeLine& line, Measure measure,
                                             const WorkCalendar& calendar) {
    if (!line.isBudgeted() || !line.isWork() || !line.finishOn) {
        return std::nullopt;
    }
    PlannedLine planned;
    planned.measure_ = measure;
    planned.finish_ = *line.finishOn;
    planned.start_ = *line.finishOn;
    planned.baseline_ = line.baseline;
    planned.changes_ = line.changes;
    if (!isPlannedByFinish(measure)) {
        if (!line.startOn || *line.startOn > *line.finishOn) {
            return std::nullopt;
        }
        planned.start_ = *line.startOn;
        planned.workDays_ = calendar.workDays(planned.start_, planned.finish_);
    }
    return planned;
}

Money PlannedLine::plannedBy(Date day, const WorkCalendar& calendar) const {
    if (day < start_) {
        return Money{};
    }
    Money entered = baseline_;
    for (const ChangePart& part : changes_) {
        if (part.signedOn <= day) {
            entered += part.amount;
        }
    }
    if (day >= finish_) {
        return entered;
    }
    if (isPlannedByFinish(measure_)) {
        return Money{};
    }
    if (measure_ == Measure::HalfAndHalf) {
        return model::roundedMoney(entered.minor(), 2);
    }
    if (workDays_ == 0) {
        return Money{};  // planned on days nobody works: at its finish
    }
    return model::roundedMoney(model::multiplyWide(entered.minor(), calendar.workDays(start_, day)),
                               workDays_);
}

Money PlannedValue::by(Date day) const {
    Money sum;
    for (const auto& line : lines) {
        if (line) {
            sum += line->plannedBy(day, calendar);
        }
    }
    return sum;
}

PlannedValue plannedValueOf(const model::JobRows& rows, const ScopeLines& scope) {
    PlannedValue out{{}, WorkCalendar(rows.job), 0, Money{}};
    out.lines.reserve(scope.lines.size());
    for (std::size_t k = 0; k < scope.lines.size(); ++k) {
        const ScopeLine& line = scope.lines[k];
        const Measure measure =
            line.kind == LineKind::Item ? measureOf(rows.items[k]) : Measure::JudgedPercent;
        out.lines.push_back(PlannedLine::make(line, measure, out.calendar));
        if (!out.lines.back() && line.isBudgeted() && line.isWork()) {
            ++out.undated;
            out.undatedBudget += line.budgetNow();
        }
    }
    return out;
}

}  // namespace ledgerboard::compute
