// Protects the inverse table of the beta distribution against QuantLib's incomplete beta function,
// which the program itself never links.
#include "core/compute/quantile_table.h"

#include <cmath>
#include <gtest/gtest.h>

#include <ql/math/beta.hpp>

namespace {

using namespace ledgerboard::compute;

double chanceBelow(double mode, std::uint32_t value) {
    return QuantLib::incompleteBetaFunction(1 + 4 * mode, 5 - 4 * mode,
                                            double{1} * value / QuantileTable::kOne);
}

// 101 shapes x 1,000 chances. A bin is 1/256 of all: the value's own chance is off by 3 hundredths
// of a bin at most, but for the first and the last one, where the curve bends within the bin.
TEST(QuantileTableOutside, InvertsTheIncompleteBetaFunction) {
    double worst = 0;
    double worstAtAnEnd = 0;
    for (int shape = 0; shape <= 100; ++shape) {
        const double mode = shape / 100.0;
        const QuantileTable table(SpreadShape::PertBeta, mode);
        for (int k = 0; k < 1000; ++k) {
            const double chance = (k + 0.5) / 1000;
            const auto asBits = static_cast<std::uint32_t>(chance * 4294967296.0);
            const double off = std::abs(chanceBelow(mode, table.at(asBits)) - chance);
            const bool atAnEnd =
                chance * QuantileTable::kBins < 1 || (1 - chance) * QuantileTable::kBins < 1;
            double& most = atAnEnd ? worstAtAnEnd : worst;
            most = std::max(most, off);
        }
    }
    EXPECT_LT(worst * QuantileTable::kBins, 0.1);
    EXPECT_LT(worstAtAnEnd * QuantileTable::kBins, 0.5);
}

}  // namespace
