// What do three estimates, low, likely and high, come to; how far may it be off; and how likely is
// it to stay within a limit?
//
// Units: whatever the estimates are in (days, dollars); chances are 0 to 1.
// Source: PERT. Mean (low + 4 likely + high) / 6 and variance ((high - low) / 6)^2; for a sum,
// means and variances add up and the sum is taken as normally distributed: D. Anderson et al., An
// Introduction to Management Science, ch. 9. Both the independence of the parts and the normal sum
// are assumptions of the method.
#pragma once

#include <optional>
#include <span>

namespace ledgerboard::compute {

// Requires, of every use: low <= likely <= high, all finite.
struct ThreePoint {
    double low = 0;
    double likely = 0;
    double high = 0;
};

struct Expected {
    double mean = 0;
    double variance = 0;

    [[nodiscard]] double deviation() const;
};

[[nodiscard]] Expected expectedOf(const ThreePoint& estimate);

// Of all of them together. Empty: 0 and 0.
[[nodiscard]] Expected sumOf(std::span<const ThreePoint> estimates);

// How many deviations `limit` lies above the mean. Empty where there is no deviation.
[[nodiscard]] std::optional<double> deviationsTo(double limit, const Expected& sum);

// The chance that a normally distributed value is no more than `limit`; where there is no
// deviation, 1 at or above the mean and 0 below.
[[nodiscard]] double chanceWithin(double limit, const Expected& sum);

}  // namespace ledgerboard::compute
