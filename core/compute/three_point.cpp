#include "core/compute/three_point.h"

#include <cmath>

namespace ledgerboard::compute {

double Expected::deviation() const {
    return std::sqrt(variance);
}

Expected expectedOf(const ThreePoint& estimate) {
    constexpr double kWeights = 6;
    const double sixth = (estimate.high - estimate.low) / kWeights;
    return {(estimate.low + 4 * estimate.likely + estimate.high) / kWeights, sixth * sixth};
}

Expected sumOf(std::span<const ThreePoint> estimates) {
    Expected sum;
    for (const ThreePoint& estimate : estimates) {
        const Expected one = expectedOf(estimate);
        sum.mean += one.mean;
        sum.variance += one.variance;
    }
    return sum;
}

std::optional<double> deviationsTo(double limit, const Expected& sum) {
    if (!(sum.variance > 0)) {
        return std::nullopt;
    }
    const double z = (limit - sum.mean) / sum.deviation();
    return std::isfinite(z) ? std::optional<double>(z) : std::nullopt;
}

double chanceWithin(double limit, const Expected& sum) {
    const auto z = deviationsTo(limit, sum);
    if (!z) {
        return limit >= sum.mean ? 1 : 0;
    }
    return std::erfc(-*z / std::sqrt(2.0)) / 2;
}

}  // namespace ledgerboard::compute
