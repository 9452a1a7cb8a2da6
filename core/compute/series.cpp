#include "core/compute/series.h"

#include <algorithm>
#include <set>

#include "core/compute/planned_value.h"
#include "core/compute/progress.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Money;

constexpr int kDaysInWeek = 7;

std::vector<Date> daysOf(Date first, Date last, Date today, Every every) {
    std::set<Date> days;
    if (last < first) {
        return {};
    }
    if (every == Every::Day) {
        for (Date day = first; day <= last; day = day + 1) {
            days.insert(day);
        }
    } else {
        const int ahead = ((today - first) % kDaysInWeek + kDaysInWeek) % kDaysInWeek;
        for (Date day = first + ahead; day <= last; day = day + kDaysInWeek) {
            days.insert(day);
        }
        days.insert(first);
        days.insert(last);
        if (first <= today && today <= last) {
            days.insert(today);
        }
    }
    return {days.begin(), days.end()};
}

// What was billed, cumulative, as days go by.
class BilledByDay {
  public:
    BilledByDay(const model::JobRows& rows, const ScopeLines& scope) {
        for (const SpendRead& read : spendingOf(rows, scope)) {
            const auto& on = rows.spends[read.spend].spentOn;
            if (read.effect.billed != Money{}) {
                bills_.emplace_back(on, read.effect.billed);
            }
        }
        std::stable_sort(bills_.begin(), bills_.end(),
                         [](const auto& a, const auto& b) { return a.first < b.first; });
    }

    // Requires: days asked about rise.
    Money by(Date day) {
        while (next_ < bills_.size() && (!bills_[next_].first || *bills_[next_].first <= day)) {
            sum_ += bills_[next_].second;
            ++next_;
        }
        return sum_;
    }

  private:
    std::vector<std::pair<std::optional<Date>, Money>> bills_;
    std::size_t next_ = 0;
    Money sum_;
};

// What is earned, cumulative, as days go by: a line is looked at again only on a day that a mark or
// a signed change of its own comes in; the whole job's money follows all of them.
class EarnedByDay {
  public:
    EarnedByDay(const model::JobRows& rows, const ScopeLines& scope)
        : scope_(scope), marks_(rows), lines_(scope.lines.size()) {
        for (std::size_t k = 0; k < scope.lines.size(); ++k) {
            lines_[k].budget = scope.lines[k].baseline;
            lines_[k].isBudgeted = scope.lines[k].isWork() && scope.lines[k].isBudgeted();
        }
    }

    // Requires: days asked about rise.
    Money by(Date day) {
        Money sum;
        WeightedPercent whole;
        for (std::size_t k = 0; k < lines_.size(); ++k) {
            Line& line = lines_[k];
            bool isChanged = takeChanges(k, day);
            isChanged = takeMarks(k, day) || isChanged;
            if (isChanged) {
                line.earned = share(line.shown, line.budget);
            }
            if (line.isBudgeted) {
                whole.add(line.budget, line.shown);
            }
            if (scope_.lines[k].isWork()) {
                sum += line.earned;
            }
        }
        for (std::size_t k = 0; k < lines_.size(); ++k) {
            if (!scope_.lines[k].isWork()) {
                sum += share(whole.value(), lines_[k].budget);
            }
        }
        return sum;
    }

  private:
    struct Line {
        Money budget;
        Money earned;
        model::Percent shown;
        std::size_t nextMark = 0;
        std::size_t nextChange = 0;
        bool isBudgeted = false;
    };

    bool takeChanges(std::size_t k, Date day) {
        Line& line = lines_[k];
        const auto& changes = scope_.lines[k].changes;
        const std::size_t before = line.nextChange;
        while (line.nextChange < changes.size() && changes[line.nextChange].signedOn <= day) {
            line.budget += changes[line.nextChange].amount;
            ++line.nextChange;
        }
        return line.nextChange != before;
    }

    bool takeMarks(std::size_t k, Date day) {
        if (scope_.lines[k].kind != LineKind::Item ||
            scope_.lines[k].counting != Counting::Counts) {
            return false;
        }
        Line& line = lines_[k];
        const auto marks = marks_.of(k);
        const std::size_t before = line.nextMark;
        while (line.nextMark < marks.size() &&
               (!marks[line.nextMark].on || *marks[line.nextMark].on <= day)) {
            line.shown = marks[line.nextMark].percent;
            ++line.nextMark;
        }
        return line.nextMark != before;
    }

    const ScopeLines& scope_;
    Marks marks_;
    std::vector<Line> lines_;
};

void widen(std::optional<Span>& span, const std::optional<Date>& day) {
    if (!day) {
        return;
    }
    if (!span) {
        span = Span{*day, *day};
    }
    span->first = std::min(span->first, *day);
    span->last = std::max(span->last, *day);
}

}  // namespace

std::vector<SeriesPoint> seriesOf(const model::JobRows& rows, const ScopeLines& scope, Date first,
                                  Date last, Date today, Every every) {
    const PlannedValue planned = plannedValueOf(rows, scope);
    BilledByDay billed(rows, scope);
    EarnedByDay earned(rows, scope);
    std::vector<SeriesPoint> out;
    for (const Date day : daysOf(first, last, today, every)) {
        SeriesPoint point;
        point.on = day;
        point.planned = planned.by(day);
        if (day <= today) {
            point.earned = earned.by(day);
            point.billed = billed.by(day);
        }
        out.push_back(point);
    }
    return out;
}

std::optional<Span> spanOf(const model::JobRows& rows, const ScopeLines& scope, Date today) {
    std::optional<Span> span;
    for (const ScopeLine& line : scope.lines) {
        if (line.isBudgeted()) {
            widen(span, line.startOn);
            widen(span, line.finishOn);
        }
    }
    for (const model::Mark& mark : rows.marks) {
        widen(span, mark.markedOn);
    }
    for (const model::Spend& spend : rows.spends) {
        widen(span, spend.spentOn);
    }
    if (span) {
        span->last = std::max(span->last, today);
    }
    return span;
}

}  // namespace ledgerboard::compute
