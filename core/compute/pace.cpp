#include "core/compute/pace.h"

#include <algorithm>
#include <span>
#include <unordered_map>

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Percent;
using model::Wide;

constexpr std::int64_t kSlowest = 2000;  // thousandths
constexpr std::int64_t kFastest = 800;
constexpr std::int64_t kMostDays = 3650;  // ten years

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

}  // namespace

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

std::vector<Pace> pacesOf(const model::JobRows& rows, const ScopeLines& scope, const Marks& marks,
                          const WorkCalendar& calendar) {
    std::unordered_map<model::Id<model::Kind::Crew>, Worked> byCrew;
    for (std::size_t k = 0; k < rows.items.size(); ++k) {
        const ScopeLine& line = scope.lines[k];
        if (line.counting == Counting::Counts && !line.crew.isNil()) {
            const Worked worked = workedOn(rows.items[k], marks.of(k), calendar);
            byCrew[line.crew].actual += worked.actual;
            byCrew[line.crew].planned += worked.planned;
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

}  // namespace ledgerboard::compute
