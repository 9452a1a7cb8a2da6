// Protects the edges of three-point estimates: nothing to add up, no spread, limits far away. The
// published examples are in tests/outside.
#include "core/compute/three_point.h"

#include <gtest/gtest.h>
#include <vector>

namespace {

using namespace ledgerboard::compute;

TEST(ThreePoint, NothingAddsUpToNothing) {
    EXPECT_EQ(sumOf({}).mean, 0);
    EXPECT_EQ(sumOf({}).variance, 0);
}

TEST(ThreePoint, WithoutSpreadALimitIsKeptOrNot) {
    const Expected fixed = expectedOf({3, 3, 3});
    EXPECT_EQ(fixed.mean, 3);
    EXPECT_EQ(fixed.deviation(), 0);
    EXPECT_FALSE(deviationsTo(4, fixed));
    EXPECT_EQ(chanceWithin(3, fixed), 1);
    EXPECT_EQ(chanceWithin(2.9, fixed), 0);
}

TEST(ThreePoint, TheMeanItselfIsAnEvenChance) {
    // (0 + 4 x 3 + 6) / 6 = 3, deviation 1.
    const Expected one = expectedOf({0, 3, 6});
    EXPECT_EQ(one.mean, 3);
    EXPECT_EQ(one.variance, 1);
    EXPECT_DOUBLE_EQ(chanceWithin(3, one), 0.5);
    // One deviation: .841345 (any table of the normal distribution).
    EXPECT_NEAR(chanceWithin(4, one), 0.841345, 5e-7);
    EXPECT_NEAR(chanceWithin(2, one), 0.158655, 5e-7);
}

TEST(ThreePoint, LimitsFarAwayStayWithinZeroAndOne) {
    const Expected one = expectedOf({0, 3, 6});
    EXPECT_EQ(chanceWithin(1e12, one), 1);
    EXPECT_EQ(chanceWithin(-1e12, one), 0);
}

}  // namespace
