// When will it be finished, roughly, from the planned dates alone?
//
// Each item on its own: remaining days = likely x (1 - shown) x pace of its crew, from the next
// working day, or from its planned start or the arrival of its goods if that is later. The latest
// one is the answer. It is no plan: links between items and crews that cannot be in two places are
// not looked at, which makes it early, and pace read from sparse marks may make it late.
// Source: project decision.
#pragma once

#include <optional>
#include <vector>

#include "core/compute/budget.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

// Actual over planned days of a crew so far, in thousandths, within 800 to 2000; 1000 where nothing
// tells. Actual days are the working days between two marks of an item wherever its percent rose
// (from the actual start to the first mark where that start is entered); planned days are likely
// days x the percent gained. Where marks are far apart, days on other work are in it too: then it
// is slow rather than fast.
struct Pace {
    model::Id<model::Kind::Crew> crew;
    std::int64_t thousandths = 1000;
    bool measured = false;
};

struct RoughFinish {
    std::optional<model::Date> on;        // empty where no item can be computed, or nothing counts
    std::optional<std::size_t> lastItem;  // in rows.items: the one that ends last
    std::size_t withoutDays =
        0;                    // unfinished items left out: neither likely days nor planned dates
    bool finished = false;    // everything that counts is shown finished; `on` the latest mark
    std::vector<Pace> paces;  // as in rows.crews
};

// Requires: rows as of today.
[[nodiscard]] RoughFinish roughFinishOf(const model::JobRows& rows, const JobFigures& figures,
                                        model::Date today);

}  // namespace ledgerboard::compute
