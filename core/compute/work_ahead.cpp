#include "core/compute/work_ahead.h"

#include <algorithm>

#include "core/compute/orders.h"
#include "core/compute/planned_value.h"
#include "core/compute/progress.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Percent;

// Whole working days left by likely days, at least 1. Requires: likely > 0.
int daysLeft(model::Quantity likely, Percent shown) {
    constexpr std::int64_t kMostThousandths = 3'650'000;
    const std::int64_t thousandths = std::min(likely.thousandths(), kMostThousandths);
    const std::int64_t left = thousandths * (10'000 - shown.basisPoints());
    constexpr std::int64_t kOneDay = 1'000LL * 10'000;
    return static_cast<int>(std::max<std::int64_t>(1, (left + kOneDay - 1) / kOneDay));
}

}  // namespace

std::vector<std::optional<WorkSpan>> workAheadOf(const model::JobRows& rows,
                                                 const JobFigures& figures, Date today) {
    const WorkCalendar calendar(rows.job);
    const Orders orders(rows);
    std::vector<std::optional<WorkSpan>> out(rows.items.size());
    for (std::size_t k = 0; k < rows.items.size(); ++k) {
        const model::Item& item = rows.items[k];
        const Percent shown = figures.lines[k].shown;
        if (figures.scope.lines[k].counting != Counting::Counts || shown == Percent::whole()) {
            continue;
        }
        const bool hasDays = item.daysLikely && *item.daysLikely > model::Quantity{};
        if (!hasDays && !item.plannedFinishOn) {
            continue;
        }
        Date first = today + 1;
        if (shown == Percent{} && item.plannedStartOn) {
            first = std::max(first, *item.plannedStartOn);
        }
        if (const auto comes = orders.comesOn(item)) {
            first = std::max(first, *comes);
        }
        first = calendar.onOrAfter(first);
        if (item.plannedFinishOn && *item.plannedFinishOn >= first) {
            out[k] = {first, *item.plannedFinishOn};
        } else {
            const int days = hasDays ? daysLeft(*item.daysLikely, shown) : 1;
            out[k] = {first, calendar.finishOf(first, days)};
        }
    }
    return out;
}

std::optional<Date> lastDayOf(const std::vector<std::optional<WorkSpan>>& ahead) {
    std::optional<Date> last;
    for (const auto& span : ahead) {
        if (span && (!last || *last < span->last)) {
            last = span->last;
        }
    }
    return last;
}

Percent seenBy(const LineFigures& line, const std::optional<WorkSpan>& span, Date day,
               const WorkCalendar& calendar) {
    if (!span) {
        return line.shown == Percent::whole() ? Percent::whole() : line.seen;
    }
    const int days = std::max(1, calendar.workDays(span->first, span->last));
    const int done = day >= span->last ? days : calendar.workDays(span->first, day);
    const std::int64_t left = Percent::whole().basisPoints() - line.seen.basisPoints();
    return line.seen + Percent::fromBasisPoints(left * done / days);
}

Percent seenBy(const JobFigures& figures, const std::vector<std::size_t>& items,
               const std::vector<std::optional<WorkSpan>>& ahead, Date day,
               const WorkCalendar& calendar) {
    WeightedPercent seen;
    for (const std::size_t item : items) {
        const LineFigures& line = figures.lines[item];
        seen.add(line.budgetNow, seenBy(line, ahead[item], day, calendar));
    }
    return seen.value();
}

}  // namespace ledgerboard::compute
