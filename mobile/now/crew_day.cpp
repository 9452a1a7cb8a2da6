#include "mobile/now/crew_day.h"

#include <algorithm>

namespace ledgerboard::phone {

namespace {

CrewDayItem placed(const JobNow& now, const ItemNow& item, const SpaceNow& space) {
    const model::Item& row = now.rows.items[item.row];
    CrewDayItem out{DayPart::Undated, std::nullopt, &item, &space};
    if (row.plannedFinishOn && *row.plannedFinishOn < now.today) {
        out.part = DayPart::Late;
        out.on = row.plannedFinishOn;
    } else if (item.isStarted() || (row.plannedStartOn && *row.plannedStartOn <= now.today)) {
        out.part = DayPart::Today;
    } else if (row.plannedStartOn) {
        out.part = DayPart::Ahead;
        out.on = row.plannedStartOn;
    }
    return out;
}

}  // namespace

std::vector<CrewDayItem> crewDays(const JobNow& now) {
    std::vector<CrewDayItem> days;
    for (const auto& space : now.spaces) {
        for (const auto& item : space.items) {
            if (item.isMine && !item.isKept && !item.isFinished()) {
                days.push_back(placed(now, item, space));
            }
        }
    }
    std::stable_sort(days.begin(), days.end(), [](const CrewDayItem& a, const CrewDayItem& b) {
        return a.part != b.part ? a.part < b.part : a.on < b.on;
    });
    return days;
}

Neighbours neighboursOf(const JobNow& now, const Found& found) {
    Neighbours out;
    const auto& start = now.rows.items[found.item->row].plannedStartOn;
    if (!start) {
        return out;
    }
    for (const auto& other : found.space->items) {
        const auto& begins = now.rows.items[other.row].plannedStartOn;
        if (!other.isMine && begins) {
            (*begins < *start ? out.before : out.after).push_back(other.row);
        }
    }
    const auto sooner = [&now](std::size_t a, std::size_t b) {
        return now.rows.items[a].plannedStartOn < now.rows.items[b].plannedStartOn;
    };
    std::stable_sort(out.before.begin(), out.before.end(), sooner);
    std::stable_sort(out.after.begin(), out.after.end(), sooner);
    return out;
}

}  // namespace ledgerboard::phone
