// Protects the axes of the curve: round levels that hold every figure, days within the span, and
// nothing drawn where there is nothing. Expected levels are worked out by hand.
#include "core/report/chart_scale.h"

#include <gtest/gtest.h>

#include "tests/unit/report/pages.h"

namespace ledgerboard::report {

namespace {

using model::Date;
using model::Money;

CurvePoint at(int day, std::int64_t planned) {
    return {Date::fromDays(day), Money::of(planned), {}, {}};
}

TEST(ChartScale, HasRoundLevelsThatHoldEveryFigure) {
    // 121,180 in five steps: 24,236 each, so 25,000; the top is 125,000.
    const auto scale = chartScale(test::fullPage().curve, 5);
    ASSERT_TRUE(scale.has_value());
    EXPECT_EQ(scale->step, Money::of(25'000));
    EXPECT_EQ(scale->bottom, Money{});
    EXPECT_EQ(scale->top, Money::of(125'000));
    EXPECT_EQ(scale->levels().size(), 6U);
    EXPECT_DOUBLE_EQ(scale->up(Money::of(125'000)), 1.0);
    EXPECT_DOUBLE_EQ(scale->up(Money::of(50'000)), 0.4);
}

TEST(ChartScale, ReachesBelowZeroWhereAFigureDoes) {
    const auto scale = chartScale({at(0, -30), at(7, 100)}, 4);
    ASSERT_TRUE(scale.has_value());
    // a range of 130 in four: 32.50, so 50; from -50 to 100
    EXPECT_EQ(scale->bottom, Money::of(-50));
    EXPECT_EQ(scale->top, Money::of(100));
}

TEST(ChartScale, HoldsTheLargestSums) {
    const auto scale = chartScale({at(0, -10'000'000'000'000), at(1, 10'000'000'000'000)}, 5);
    ASSERT_TRUE(scale.has_value());
    EXPECT_EQ(scale->step, Money::of(5'000'000'000'000));
    EXPECT_EQ(scale->levels().size(), 5U);
}

TEST(ChartScale, HasNothingToShow) {
    EXPECT_FALSE(chartScale({}, 5).has_value());
    EXPECT_FALSE(chartScale({at(0, 100)}, 5).has_value());
    EXPECT_FALSE(chartScale({at(0, 100), at(0, 200)}, 5).has_value());
    EXPECT_FALSE(chartScale({at(0, 0), at(7, 0)}, 5).has_value());
}

TEST(ChartScale, NamesDaysWholeWeeksApart) {
    const auto eight = chartScale({at(0, 1), at(56, 100)}, 5);
    EXPECT_EQ(eight->days(9).size(), 9U);  // every week
    EXPECT_EQ(eight->days(8).size(), 5U);  // every other week
    EXPECT_EQ(eight->days(2).size(), 2U);  // the ends
    const auto century = chartScale({at(0, 1), at(36'525, 100)}, 5);
    for (const int most : {2, 3, 8, 20}) {
        const auto days = century->days(most);
        EXPECT_LE(days.size(), static_cast<std::size_t>(most));
        EXPECT_EQ(days.front(), Date::fromDays(0));
        EXPECT_LE(days.back(), Date::fromDays(36'525));
    }
}

}  // namespace

}  // namespace ledgerboard::report
