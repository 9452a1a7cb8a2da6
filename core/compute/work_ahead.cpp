#include "core/compute/work_ahead.h"

#include <algorithm>

#include "core/compute/progress.h"

namespace ledgerboard::compute {

using model::Date;
using model::Percent;

std::vector<std::optional<WorkSpan>> workAheadOf(const model::JobRows& rows,
                                                 const JobFigures& figures, const Plan& plan) {
    std::vector<std::optional<WorkSpan>> out(rows.items.size());
    for (const PlanItem& item : plan.items) {
        if (item.line >= out.size() || item.state == PlanState::Finished || !item.finishOn ||
            figures.lines[item.line].shown == Percent::whole()) {
            continue;
        }
        if (const auto first = item.resumesOn ? item.resumesOn : item.startOn) {
            out[item.line] = {*first, std::max(*first, *item.finishOn)};
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
