// By when was the work done so far planned to be done, and how long will the whole take at that
// pace? The schedule told in time, for the index by cost ends at 1 however late the work is.
//
// Units: periods, of whatever length the caller counts in (weeks, working days); value in any unit.
// Source: W. Lipke; Lipke and Henderson, "Earned Schedule: An Emerging Enhancement to Earned Value
// Management", 2006. ES = C + (EV - PV_C) / (PV_C+1 - PV_C), where C is the last period with
// PV_C <= EV and PV_0 is 0; SV(t) = ES - AT; SPI(t) = ES / AT; the forecast is the planned duration
// PD / SPI(t). PD is the first period at which PV reaches its last value and C is no later than PD,
// so that a plan that goes flat does not look early (project decision).
#pragma once

#include <optional>
#include <span>

namespace ledgerboard::compute {

struct EarnedSchedule {
    double es = 0;              // periods of the plan that are earned
    double sv = 0;              // SV(t): below 0 is late
    std::optional<double> spi;  // SPI(t): ES / AT; empty at the very start
    double plannedDuration = 0;
    std::optional<double> forecastDuration;  // empty where SPI(t) is, or nothing is earned
};

// `planned` is the cumulative planned value at the end of periods 1, 2, ...; `earned` the
// cumulative value earned after `at` periods.
// Requires: planned not empty, never falling, its last above 0; 0 <= earned <= its last; 0 <= at.
[[nodiscard]] EarnedSchedule earnedSchedule(std::span<const double> planned, double earned,
                                            double at);

}  // namespace ledgerboard::compute
