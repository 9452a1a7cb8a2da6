#include "core/report/chart_scale.h"

#include <algorithm>

#include "core/model/check.h"
#include "core/model/overflow.h"

namespace ledgerboard::report {

namespace {

using model::Date;
using model::Money;
using model::Wide;

// The smallest round step, in minor units, that takes `range` in at most `steps`: 1, 2, 2.5 or 5
// times a power of ten, and a whole unit of money at least.
Wide roundStep(Wide range, int steps) {
    for (Wide power = 100;; power *= 10) {
        for (const int tenths : {10, 20, 25, 50}) {
            const Wide step = power * tenths / 10;
            if (step * steps >= range) {
                return step;
            }
        }
    }
}

Money asMoney(Wide minor) {
    return model::roundedMoney(minor, 1);
}

}  // namespace

double ChartScale::across(Date day) const {
    return static_cast<double>(day - first) / static_cast<double>(last - first);
}

double ChartScale::up(Money money) const {
    const auto low = static_cast<double>(bottom.minor());
    const auto high = static_cast<double>(top.minor());
    return (static_cast<double>(money.minor()) - low) / (high - low);
}

std::vector<Money> ChartScale::levels() const {
    std::vector<Money> out;
    for (Money level = bottom; level < top; level += step) {
        out.push_back(level);
    }
    out.push_back(top);
    return out;
}

std::vector<Date> ChartScale::days(int most) const {
    model::require(most >= 2, "an axis has two days at least");
    const int span = last - first;
    const int weeks = std::max(1, (span + 7 * (most - 1) - 1) / (7 * (most - 1)));
    std::vector<Date> out;
    for (Date day = first; day <= last; day = day + 7 * weeks) {
        out.push_back(day);
    }
    return out;
}

std::optional<ChartScale> chartScale(const std::vector<CurvePoint>& curve, int steps) {
    model::require(steps >= 2, "a scale has two steps at least");
    if (curve.size() < 2 || curve.back().on - curve.front().on < 1) {
        return std::nullopt;
    }
    Money low;
    Money high;
    for (const auto& point : curve) {
        for (const auto& figure : {point.planned, point.earned, point.spent}) {
            low = std::min(low, figure.value_or(Money{}));
            high = std::max(high, figure.value_or(Money{}));
        }
    }
    const Wide range = Wide{high.minor()} - low.minor();
    if (range == 0) {
        return std::nullopt;
    }
    const Wide step = roundStep(range, steps);
    ChartScale scale;
    scale.first = curve.front().on;
    scale.last = curve.back().on;
    scale.step = asMoney(step);
    scale.bottom = asMoney(-((-Wide{low.minor()} + step - 1) / step) * step);
    scale.top = asMoney((Wide{high.minor()} + step - 1) / step * step);
    return scale;
}

}  // namespace ledgerboard::report
