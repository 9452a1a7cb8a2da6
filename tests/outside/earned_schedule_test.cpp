// Protects earned schedule against its published example, through `work earned-schedule`. [S]:
// stands in the source; [C]: worked out from its inputs, exactly.
#include <array>
#include <gtest/gtest.h>
#include <string>

#include "tests/outside/worked.h"

namespace {

using ledgerboard::outside::asPrinted;
using ledgerboard::outside::expectExact;
using ledgerboard::outside::figure;
using ledgerboard::outside::worked;
using nlohmann::json;

// M. Vanhoucke, PM Knowledge Center, earned schedule: planned duration 9 weeks, BAC 150, done in
// 11. PV, EV and AC by week [S].
constexpr std::size_t kWeeks = 11;
constexpr std::array<double, kWeeks> kPlanned{5, 10, 25, 55, 85, 120, 130, 140, 150, 150, 150};
constexpr std::array<double, kWeeks> kEarned{10.0 / 3, 20.0 / 3, 10,  22.5, 70, 82.5,
                                             90,       120,      130, 140,  150};

json after(std::size_t weeks) {
    return worked("earned-schedule",
                  json{{"pv", kPlanned}, {"ev", kEarned[weeks - 1]}, {"at", weeks}}.dump());
}

// The first six [S] as printed, the others [C]: week 7, EV 90 lies 5 of 35 beyond week 5's 85.
TEST(EarnedScheduleOutside, WeekByWeek) {
    const std::array<std::string, kWeeks> printed{"0.67", "1.33", "2.00", "2.83", "4.50", "4.92",
                                                  "5.14", "6.00", "7.00", "8.00", "9.00"};
    const std::array<double, kWeeks> exact{2.0 / 3,  4.0 / 3, 2, 17.0 / 6, 4.5, 59.0 / 12,
                                           36.0 / 7, 6,       7, 8,        9};
    for (std::size_t week = 1; week <= kWeeks; ++week) {
        const json out = after(week);
        EXPECT_EQ(asPrinted(figure(out, "/es"), 2), printed[week - 1]) << "week " << week;
        expectExact(out, "/es", exact[week - 1]);
        expectExact(out, "/sv_t", exact[week - 1] - static_cast<double>(week));
    }
}

// ES / AT [C].
TEST(EarnedScheduleOutside, IndexInTime) {
    const std::array<std::string, kWeeks> index{"0.6667", "0.6667", "0.6667", "0.7083",
                                                "0.9000", "0.8194", "0.7347", "0.7500",
                                                "0.7778", "0.8000", "0.8182"};
    for (std::size_t week = 1; week <= kWeeks; ++week) {
        EXPECT_EQ(asPrinted(figure(after(week), "/spi_t"), 4), index[week - 1]) << "week " << week;
    }
}

// Two weeks late in the end: the index by cost has come back to 1, the one in time has not, and
// its forecast 9 / .8182 is the 11 weeks it took.
TEST(EarnedScheduleOutside, TheIndexByCostEndsAtOneAndTheOneInTimeDoesNot) {
    const json byCost = worked("earned-value", R"({"bac":150,"pv":150,"ev":150,"ac":200})");
    expectExact(byCost, "/spi", 1);
    expectExact(after(kWeeks), "/spi_t", 9.0 / 11.0);
    expectExact(after(kWeeks), "/forecast_duration", 11);
    // Week 5: 9 / .9.
    expectExact(after(5), "/forecast_duration", 10);
}

// The estimate at completion at that index, week 5: AC 120 + (150 - 70) / .9 [C].
TEST(EarnedScheduleOutside, GoesIntoTheEstimateAtCompletion) {
    const double index = figure(after(5), "/spi_t");
    const json out =
        worked("earned-value",
               json{{"bac", 150}, {"pv", 85}, {"ev", 70}, {"ac", 120}, {"spi_t", index}}.dump());
    expectExact(out, "/eac/remaining_at_spi_t", 120 + 80 / 0.9);
}

}  // namespace
