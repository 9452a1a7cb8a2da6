// Protects the inverse tables that samples are drawn from: within low to high, rising, and with the
// mean and variance of their closed forms. Against an independent beta function:
// tests/outside/quantile_table_test.cpp.
#include "core/compute/quantile_table.h"

#include <cmath>
#include <gtest/gtest.h>

namespace {

using namespace ledgerboard::compute;

struct Moments {
    double mean = 0;
    double variance = 0;
};

// Exact for a table: each bin is a straight line from its start s to its end e, with mean
// (s + e) / 2 and mean square (s^2 + s e + e^2) / 3.
Moments momentsOf(const QuantileTable& table) {
    double sum = 0;
    double squares = 0;
    for (std::uint32_t bin = 0; bin < QuantileTable::kBins; ++bin) {
        const double start = double{1} * table.at(bin << 24U) / QuantileTable::kOne;
        const double end = double{1} * table.at((bin << 24U) + 0xffffffU) / QuantileTable::kOne;
        sum += (start + end) / 2;
        squares += (start * start + start * end + end * end) / 3;
    }
    const double mean = sum / QuantileTable::kBins;
    return {mean, squares / QuantileTable::kBins - mean * mean};
}

constexpr int kModes = 40;  // 0, 1/40, ... 1

// Mean (0 + 4 m + 1) / 6; variance alpha beta / ((alpha + beta)^2 (alpha + beta + 1)) with
// alpha = 1 + 4 m and beta = 5 - 4 m.
TEST(QuantileTable, PertBetaMoments) {
    for (int k = 0; k <= kModes; ++k) {
        const double mode = double{1} * k / kModes;
        const Moments out = momentsOf({SpreadShape::PertBeta, mode});
        EXPECT_NEAR(out.mean, (4 * mode + 1) / 6, 1e-6) << mode;
        const double variance = (1 + 4 * mode) * (5 - 4 * mode) / (36 * 7);
        EXPECT_NEAR(out.variance / variance, 1, 5e-4) << mode;
    }
}

// Mean (0 + m + 1) / 3; variance (m^2 - m + 1) / 18.
TEST(QuantileTable, TriangularMoments) {
    for (int k = 0; k <= kModes; ++k) {
        const double mode = double{1} * k / kModes;
        const Moments out = momentsOf({SpreadShape::Triangular, mode});
        EXPECT_NEAR(out.mean, (mode + 1) / 3, 1e-8) << mode;
        EXPECT_NEAR(out.variance * 18 / (mode * mode - mode + 1), 1, 5e-5) << mode;
    }
}

TEST(QuantileTable, RisesWithinItsRange) {
    for (const auto shape : {SpreadShape::PertBeta, SpreadShape::Triangular}) {
        for (int k = 0; k <= kModes; ++k) {
            const QuantileTable table(shape, double{1} * k / kModes);
            std::uint32_t before = 0;
            for (std::uint64_t chance = 0; chance < (std::uint64_t{1} << 32U);
                 chance += 1'000'003) {
                const std::uint32_t value = table.at(static_cast<std::uint32_t>(chance));
                // A rounded unit, a part in 2^31, may go back between bins.
                ASSERT_GE(value + 1, before);
                before = value;
            }
            EXPECT_LE(table.at(0xffffffffU), QuantileTable::kOne);
        }
    }
}

}  // namespace
