#include "core/compute/earned_schedule.h"

#include <algorithm>
#include <cmath>

#include "core/model/check.h"

namespace ledgerboard::compute {

EarnedSchedule earnedSchedule(std::span<const double> planned, double earned, double at) {
    model::require(
        !planned.empty() && planned.back() > 0 && std::is_sorted(planned.begin(), planned.end()),
        "a planned value that rises");
    model::require(earned >= 0 && earned <= planned.back() && at >= 0,
                   "an earned value within the plan");
    const auto reached = std::lower_bound(planned.begin(), planned.end(), planned.back());
    const auto whole = static_cast<std::size_t>(reached - planned.begin()) + 1;
    const auto beyond = std::upper_bound(planned.begin(), reached, earned);
    const auto count = static_cast<std::size_t>(beyond - planned.begin());
    EarnedSchedule out;
    out.plannedDuration = static_cast<double>(whole);
    if (earned >= planned.back()) {
        out.es = out.plannedDuration;
    } else {
        const double before = count == 0 ? 0 : planned[count - 1];
        out.es = static_cast<double>(count) + (earned - before) / (planned[count] - before);
    }
    out.sv = out.es - at;
    if (at > 0) {
        out.spi = out.es / at;
        const double forecast = out.es > 0 ? out.plannedDuration * at / out.es : 0;
        if (out.es > 0 && std::isfinite(forecast)) {
            out.forecastDuration = forecast;
        }
    }
    return out;
}

}  // namespace ledgerboard::compute
