// Protects the edges of earned schedule: flat stretches of the plan, nothing done, everything done,
// no time gone by. The published example is in tests/outside.
#include "core/compute/earned_schedule.h"

#include <gtest/gtest.h>
#include <vector>

namespace {

using ledgerboard::compute::earnedSchedule;

const std::vector<double> kPlan{10, 10, 30, 40, 40, 40};

TEST(EarnedSchedule, ThePlanEndsWhereItReachesItsLastValue) {
    const auto out = earnedSchedule(kPlan, 40, 5);
    EXPECT_EQ(out.plannedDuration, 4);
    EXPECT_EQ(out.es, 4);  // not 6, though the plan stays at 40 until then
    EXPECT_EQ(out.sv, -1);
    EXPECT_EQ(out.forecastDuration, 5);
}

TEST(EarnedSchedule, AFlatStretchIsEarnedWithItsStart) {
    // 10 is planned by the end of period 1 and of 2: having 10, the plan stands at 2.
    EXPECT_EQ(earnedSchedule(kPlan, 10, 1).es, 2);
    EXPECT_EQ(earnedSchedule(kPlan, 15, 1).es, 2.25);
    EXPECT_EQ(earnedSchedule(kPlan, 5, 1).es, 0.5);
}

TEST(EarnedSchedule, NothingEarnedOrNoTimeGoneByTellsNoForecast) {
    const auto none = earnedSchedule(kPlan, 0, 2);
    EXPECT_EQ(none.es, 0);
    EXPECT_EQ(none.spi, 0);
    EXPECT_FALSE(none.forecastDuration);
    const auto start = earnedSchedule(kPlan, 5, 0);
    EXPECT_EQ(start.sv, 0.5);
    EXPECT_FALSE(start.spi);
    EXPECT_FALSE(start.forecastDuration);
}

TEST(EarnedSchedule, AForecastBeyondAllNumbersIsLeftOut) {
    EXPECT_FALSE(earnedSchedule(kPlan, 1e-308, 1e6).forecastDuration);
}

TEST(EarnedSchedule, APlanOfOnePeriod) {
    const std::vector<double> plan{8};
    EXPECT_EQ(earnedSchedule(plan, 2, 1).es, 0.25);
    EXPECT_EQ(earnedSchedule(plan, 2, 1).forecastDuration, 4);
    EXPECT_EQ(earnedSchedule(plan, 8, 1).es, 1);
}

}  // namespace
