// Between which round figures, and on which days, is a curve drawn?
//
// Positions on a chart are drawing, not accounting: here, and nowhere else in report, money becomes
// a floating-point share of the height.
#pragma once

#include <optional>
#include <vector>

#include "core/report/week_page.h"

namespace ledgerboard::report {

struct ChartScale {
    model::Date first;
    model::Date last;
    model::Money bottom;  // a multiple of step, 0 or less
    model::Money top;     // a multiple of step, more than bottom
    model::Money step;

    // 0 at the first day, 1 at the last.
    [[nodiscard]] double across(model::Date day) const;

    // 0 at the bottom, 1 at the top.
    [[nodiscard]] double up(model::Money money) const;

    // bottom, bottom + step, ... top.
    [[nodiscard]] std::vector<model::Money> levels() const;

    // The first day, then every so many weeks after it, up to the last: `most` days at the most.
    // Requires: most >= 2.
    [[nodiscard]] std::vector<model::Date> days(int most) const;
};

// The scale that holds every point of `curve`, with round steps (1, 2, 2.5 or 5 times a power of
// ten), `steps` of them or a few more or fewer. Empty where there is nothing to draw: fewer than
// two days, or no figure but zero. Requires: curve in order of day; steps >= 2.
[[nodiscard]] std::optional<ChartScale> chartScale(const std::vector<CurvePoint>& curve, int steps);

}  // namespace ledgerboard::report
