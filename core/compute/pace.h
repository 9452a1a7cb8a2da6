// How fast does each crew work, against the days it was planned to take?
//
// Source: project decision.
#pragma once

#include <cstdint>
#include <vector>

#include "core/compute/planned_value.h"
#include "core/compute/progress.h"
#include "core/compute/scope_lines.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

inline constexpr std::int64_t kAsPlanned = 1000;  // thousandths

// Actual over planned days of a crew so far, in thousandths, within 800 to 2000; 1000 where nothing
// tells. Actual days are the working days between two marks of an item wherever its percent rose
// (from the actual start to the first mark where that start is entered); planned days are likely
// days x the percent gained. Where marks are far apart, days on other work are in it too: then it
// is slow rather than fast.
struct Pace {
    model::Id<model::Kind::Crew> crew;
    std::int64_t thousandths = kAsPlanned;
    bool measured = false;
};

// Likely days in thousandths; where none are entered, the planned working days. 0 where neither.
// Never beyond ten years: longer than that nothing is a forecast.
[[nodiscard]] std::int64_t likelyDays(const model::Item& item, const WorkCalendar& calendar);

// One for each of rows.crews. Requires: rows as of the day asked about; scope and marks of them.
[[nodiscard]] std::vector<Pace> pacesOf(const model::JobRows& rows, const ScopeLines& scope,
                                        const Marks& marks, const WorkCalendar& calendar);

}  // namespace ledgerboard::compute
