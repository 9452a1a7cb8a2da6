// What does a crew lead have to do, day by day, and whose work comes before and after it?
//
// Own unfinished items in this order: late (the planned finish is past), today, the days to come by
// their planned start, then those without a date. Neighbours are other crews' items of the same
// space, as the peer shows them: before, those that begin earlier, after, those that begin later or
// on the same day.
// Source: project decision. Threads: any number may ask.
#pragma once

#include <optional>
#include <vector>

#include "mobile/now/job_now.h"

namespace ledgerboard::phone {

enum class DayPart { Late, Today, Ahead, Undated };

struct CrewDayItem {
    DayPart part = DayPart::Undated;
    std::optional<model::Date> on;  // Late: its planned finish; Ahead: its planned start
    const ItemNow* item = nullptr;
    const SpaceNow* space = nullptr;
};

// Empty where nothing is left. Items of one day in walking order. Points into `now`.
[[nodiscard]] std::vector<CrewDayItem> crewDays(const JobNow& now);

struct Neighbours {
    std::vector<std::size_t> before;  // in rows.items, by planned start
    std::vector<std::size_t> after;
};

// Of the item found. Empty where it has no planned start. Requires: found.item is not null.
[[nodiscard]] Neighbours neighboursOf(const JobNow& now, const Found& found);

}  // namespace ledgerboard::phone
