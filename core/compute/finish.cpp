#include "core/compute/finish.h"

#include <algorithm>
#include <unordered_map>

#include "core/compute/orders.h"
#include "core/compute/planned_value.h"
#include "core/compute/progress.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Percent;
using model::Wide;

constexpr std::int64_t kSlowest = 2000;  // thousandths
constexpr std::int64_t kFastest = 800;
constexpr std::int64_t kMostDays = 3650;  // ten years: beyond it nothing is a forecast

// Likely days in thousandths; where none are entered, the planned working days. 0 where neither.
std::int64_t likelyDays(const model::Item& item, const WorkCalendar& calendar) {
    if (item.daysLikely && *item.daysLikely > model::Quantity{}) {
        return std::min(item.daysLikely->thousandths(), kMostDays * 1000);
    }
    if (item.plannedStartOn && item.plannedFinishOn) {
        const int days = calendar.workDays(*item.plannedStartOn, *item.plannedFinishOn);
        return std::min<std::int64_t>(std::max(days, 0), kMostDays) * 1000;
    }
    return 0;
}

// Days worked and days planned for the same work, both in ten-millionths of a day.
struct Worked {
    Wide actual = 0;
    Wide planned = 0;
};

// What the marks of one item tell: the working days from one mark to the next wherever the percent
// rose between them, and from the actual start, where it is entered, to the first mark. A percent
// that falls is a correction: it takes back the work, not the days.
Worked workedOn(const model::Item& item, std::span<const MarkRead> marks,
                const WorkCalendar& calendar) {
    std::optional<Date> before;
    if (item.actualStartOn) {
        before = *item.actualStartOn - 1;
    }
    Percent last;
    Wide days = 0;
    std::int64_t gained = 0;
    for (const MarkRead& mark : marks) {
        if (before && mark.on) {
            gained += mark.percent.basisPoints() - last.basisPoints();
            days += mark.percent > last ? calendar.workDays(*before + 1, *mark.on) : 0;
        }
        before = mark.on;
        last = mark.percent;
    }
    const Wide planned = Wide{likelyDays(item, calendar)} * gained;
    return gained > 0 ? Worked{days * 10'000'000, planned} : Worked{};
}

std::vector<Pace> pacesOf(const model::JobRows& rows, const JobFigures& figures, const Marks& marks,
                          const WorkCalendar& calendar) {
    std::unordered_map<model::Id<model::Kind::Crew>, Worked> byCrew;
    for (std::size_t k = 0; k < rows.items.size(); ++k) {
        const ScopeLine& scope = figures.scope.lines[k];
        if (scope.counting == Counting::Counts && !scope.crew.isNil()) {
            const Worked worked = workedOn(rows.items[k], marks.of(k), calendar);
            byCrew[scope.crew].actual += worked.actual;
            byCrew[scope.crew].planned += worked.planned;
        }
    }
    std::vector<Pace> out;
    for (const model::Crew& crew : rows.crews) {
        Pace pace;
        pace.crew = crew.id;
        const Worked worked = byCrew[crew.id];
        if (worked.planned > 0) {
            pace.measured = true;
            const Wide thousandths = worked.actual * 1000 / worked.planned;
            pace.thousandths =
                static_cast<std::int64_t>(std::clamp<Wide>(thousandths, kFastest, kSlowest));
        }
        out.push_back(pace);
    }
    return out;
}

// Whole days left, rounded up. Requires: likely > 0.
int daysLeft(std::int64_t likely, Percent shown, std::int64_t pace) {
    const Wide left = Wide{likely} * (10'000 - shown.basisPoints()) * pace;
    const Wide oneDay = Wide{1000} * 10'000 * 1000;
    return static_cast<int>((left + oneDay - 1) / oneDay);
}

}  // namespace

RoughFinish roughFinishOf(const model::JobRows& rows, const JobFigures& figures, Date today) {
    const WorkCalendar calendar(rows.job);
    const Marks marks(rows);
    const Orders orders(rows);
    RoughFinish out;
    out.paces = pacesOf(rows, figures, marks, calendar);
    std::unordered_map<model::Id<model::Kind::Crew>, std::int64_t> paceOf;
    for (const Pace& pace : out.paces) {
        paceOf.emplace(pace.crew, pace.thousandths);
    }
    std::size_t counting = 0;
    std::size_t done = 0;
    std::optional<Date> lastMark;
    for (std::size_t k = 0; k < rows.items.size(); ++k) {
        const ScopeLine& scope = figures.scope.lines[k];
        if (scope.counting != Counting::Counts) {
            continue;
        }
        ++counting;
        const LineFigures& line = figures.lines[k];
        if (line.shown == Percent::whole()) {
            ++done;
            lastMark = std::max(lastMark, line.markedOn);
            continue;
        }
        const model::Item& item = rows.items[k];
        const std::int64_t likely = likelyDays(item, calendar);
        if (likely == 0) {
            ++out.withoutDays;
            continue;
        }
        Date start = today + 1;
        if (line.shown == Percent{} && item.plannedStartOn) {
            start = std::max(start, *item.plannedStartOn);
        }
        if (const auto comes = orders.comesOn(item)) {
            start = std::max(start, *comes);
        }
        const auto pace = paceOf.find(scope.crew);
        const int left = daysLeft(likely, line.shown, pace == paceOf.end() ? 1000 : pace->second);
        const Date finish = calendar.finishOf(start, std::max(1, left));
        if (!out.on || *out.on < finish) {
            out.on = finish;
            out.lastItem = k;
        }
    }
    if (counting > 0 && done == counting) {
        out.finished = true;
        out.on = lastMark;
    }
    return out;
}

}  // namespace ledgerboard::compute
