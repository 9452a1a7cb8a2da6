// How did planned, earned and billed grow, day by day or week by week? The S-curve.
//
// Each point is what the rows dated on or before its day add up to, as known now: marks, spends and
// signed changes by their dates. Budgets and planned dates are those of the latest baseline at
// every point, so that the curve has no step where a baseline was frozen. Undated marks and spends
// count from the first point.
#pragma once

#include <optional>
#include <vector>

#include "core/compute/budget.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

struct SeriesPoint {
    model::Date on;
    model::Money planned;
    std::optional<model::Money> earned;  // empty after today
    std::optional<model::Money> billed;  // empty after today
};

enum class Every { Day, Week };

// From `first` to `last`, both included. By the week: the days a whole number of weeks from
// `today`, and `first`, `today` and `last` themselves. In order of date; empty where last comes
// before first. Requires: rows = asOf(rows, today), scope of those rows. Errors: OverflowError.
[[nodiscard]] std::vector<SeriesPoint> seriesOf(const model::JobRows& rows, const ScopeLines& scope,
                                                model::Date first, model::Date last,
                                                model::Date today, Every every);

// The days a curve of this job should span: from the earliest planned start, mark or spend to the
// latest planned finish or today, whichever is later. Empty where nothing is dated.
struct Span {
    model::Date first;
    model::Date last;
};

[[nodiscard]] std::optional<Span> spanOf(const model::JobRows& rows, const ScopeLines& scope,
                                         model::Date today);

}  // namespace ledgerboard::compute
