// Protects the figures of earned value against published examples, through `work earned-value`.
// Each test names its source. [S]: the number stands in the source; [C]: worked out by hand, here,
// from the source's inputs; [2]: a secondary text. Where a source rounded on the way, its printed
// digits and the exact value are both tested.
#include <gtest/gtest.h>
#include <string>

#include "tests/outside/worked.h"

namespace {

using ledgerboard::outside::asPrinted;
using ledgerboard::outside::expectExact;
using ledgerboard::outside::figure;
using ledgerboard::outside::worked;

// "Earned Value Exercise" teaching sheet, after a PMP exam text p. 210 [S], exact values [C]: a
// fence of four sides at 1,000 each, end of day 3.
TEST(EarnedValueOutside, FenceOfFourSides) {
    const auto out = worked("earned-value", R"({"bac":4000,"pv":3000,"ev":2500,"ac":2800})");
    expectExact(out, "/cv", -300);
    expectExact(out, "/sv", -500);
    EXPECT_EQ(asPrinted(figure(out, "/cpi"), 6), "0.892857");
    EXPECT_EQ(asPrinted(figure(out, "/spi"), 6), "0.833333");
    expectExact(out, "/cpi", 25.0 / 28.0);
    expectExact(out, "/spi", 5.0 / 6.0);
    expectExact(out, "/eac/remaining_at_cpi", 4480);     // 4000 x 28/25
    expectExact(out, "/eac/remaining_at_budget", 4300);  // 2800 + 1500
    // 2800 + 1500 x 28/25 x 6/5
    expectExact(out, "/eac/remaining_at_cpi_spi", 4816);
    expectExact(out, "/etc", 1680);
    expectExact(out, "/vac", -480);
    expectExact(out, "/tcpi/to_budget", 1.25);  // 1500 / 1200
}

// The same sheet: it rounds CPI to .893 first, and so prints 4479, 1679 and -479 [S].
TEST(EarnedValueOutside, FenceAsThePrintedSheetRoundsIt) {
    const auto out = worked("earned-value", R"({"bac":4000,"pv":3000,"ev":2500,"ac":2800})");
    const std::string roundedCpi = asPrinted(figure(out, "/cpi"), 3);
    EXPECT_EQ(roundedCpi, "0.893");
    const double eac = 4000 / std::stod(roundedCpi);
    EXPECT_EQ(asPrinted(eac, 0), "4479");
    EXPECT_EQ(asPrinted(eac - figure(out, "/ac"), 0), "1679");
    EXPECT_EQ(asPrinted(figure(out, "/bac") - eac, 0), "-479");
    // Given as the caller's own estimate, the printed one carries into ETC and VAC.
    const auto own =
        worked("earned-value", R"({"bac":4000,"pv":3000,"ev":2500,"ac":2800,"eac":4479})");
    expectExact(own, "/etc", 1679);
    expectExact(own, "/vac", -479);
}

// P. Govan, Project Risk Analysis (open textbook), ch. 5 [S]: five periods, after the third. BAC
// 500,000; planned 50 %, done 40 %; costs 45,000 + 110,000 + 135,000.
TEST(EarnedValueOutside, FivePeriodsAfterTheThird) {
    const auto out = worked(
        "earned-value",
        R"({"items":[{"budget":500000,"planned_percent":50,"percent":40,"actual":290000}]})");
    expectExact(out, "/pv", 250000);
    expectExact(out, "/ev", 200000);
    expectExact(out, "/ac", 290000);
    expectExact(out, "/sv", -50000);
    expectExact(out, "/cv", -90000);
    expectExact(out, "/spi", 0.8);
    EXPECT_EQ(asPrinted(figure(out, "/cpi"), 2), "0.69");
    expectExact(out, "/cpi", 20.0 / 29.0);
    expectExact(out, "/eac/remaining_at_cpi", 725000);
    expectExact(out, "/eac/remaining_at_budget", 590000);
    expectExact(out, "/eac/remaining_at_cpi_spi", 833750);
    expectExact(out, "/etc", 435000);
    expectExact(out, "/vac", -225000);
    EXPECT_EQ(asPrinted(figure(out, "/tcpi/to_budget"), 3), "1.429");
    expectExact(out, "/tcpi/to_budget", 10.0 / 7.0);
    EXPECT_EQ(asPrinted(figure(out, "/tcpi/to_estimate"), 2), "0.69");
    expectExact(out, "/tcpi/to_estimate", 20.0 / 29.0);
}

// The same inputs with the factors of M. Vanhoucke, PM Knowledge Center, worked out by hand [C]:
// weighted 0.8 x 20/29 + 0.2 x 0.8 = 20.64/29, so 290,000 + 300,000 x 29/20.64 = 711,511.627907;
// SPI(t) of 0.9: 290,000 + 300,000/0.9 = 623,333.3333.
TEST(EarnedValueOutside, WeightedAndTimeFactors) {
    const auto out =
        worked("earned-value", R"({"bac":500000,"pv":250000,"ev":200000,"ac":290000,"spi_t":0.9})");
    expectExact(out, "/eac/remaining_at_weighted", 711511.6279069767);
    expectExact(out, "/eac/remaining_at_spi_t", 623333.3333333334);
}

// Open lecture notes on forecasting [S], exact [C]; in thousands.
TEST(EarnedValueOutside, HundredFortyFortyFiveFifty) {
    const auto out = worked("earned-value", R"({"bac":100,"pv":50,"ev":40,"ac":45})");
    expectExact(out, "/eac/remaining_at_cpi", 112.5);
    expectExact(out, "/eac/remaining_at_budget", 105);
    expectExact(out, "/eac/remaining_at_cpi_spi", 129.375);
    expectExact(out, "/etc", 67.5);
    expectExact(out, "/vac", -12.5);
    EXPECT_EQ(asPrinted(figure(out, "/tcpi/to_budget"), 4), "1.0909");
    expectExact(out, "/tcpi/to_budget", 60.0 / 55.0);
}

// Inputs: Beverly, SUGI 30, paper 139-30 [S]. By hand [C]:
// PV 1000+1800+2400+2800+3000+3000+2800+2400+1800+1000 = 22,000;
// EV 1000+1900+2490+2600+2750+3180+3290+1760+1350+500 = 20,820;
// AC 1100+1750+2320+2750+3150+2950+2615+2502+1703+730 = 21,570.
TEST(EarnedValueOutside, TenTasks) {
    const auto out = worked("earned-value", R"({"items":[
        {"budget":1000,"actual":1100,"planned_percent":100,"percent":100},
        {"budget":2000,"actual":1750,"planned_percent":90,"percent":95},
        {"budget":3000,"actual":2320,"planned_percent":80,"percent":83},
        {"budget":4000,"actual":2750,"planned_percent":70,"percent":65},
        {"budget":5000,"actual":3150,"planned_percent":60,"percent":55},
        {"budget":6000,"actual":2950,"planned_percent":50,"percent":53},
        {"budget":7000,"actual":2615,"planned_percent":40,"percent":47},
        {"budget":8000,"actual":2502,"planned_percent":30,"percent":22},
        {"budget":9000,"actual":1703,"planned_percent":20,"percent":15},
        {"budget":10000,"actual":730,"planned_percent":10,"percent":5}]})");
    expectExact(out, "/bac", 55000);
    expectExact(out, "/pv", 22000);
    expectExact(out, "/ev", 20820);
    expectExact(out, "/ac", 21570);
    EXPECT_EQ(asPrinted(figure(out, "/cpi"), 6), "0.965229");
    EXPECT_EQ(asPrinted(figure(out, "/spi"), 6), "0.946364");
    EXPECT_EQ(asPrinted(figure(out, "/eac/remaining_at_cpi"), 3), "56981.268");
    expectExact(out, "/eac/remaining_at_budget", 55750);
    EXPECT_EQ(asPrinted(figure(out, "/eac/remaining_at_cpi_spi"), 3), "58988.247");
    EXPECT_EQ(asPrinted(figure(out, "/tcpi/to_budget"), 6), "1.022435");
    EXPECT_EQ(asPrinted(figure(out, "/percent_complete"), 4), "37.8545");
    expectExact(out, "/percent_spent", 100 * 21570.0 / 55000.0);
}

// Training-firm article [2]: .83 printed; exact 540,000 / 652,000 [C]. The article gives no planned
// value and no figure that needs it; 0 stands in, and SPI is then null.
TEST(EarnedValueOutside, ToReachAnEstimate) {
    const auto out =
        worked("earned-value", R"({"bac":1000000,"pv":0,"ev":460000,"ac":589744,"eac":1241744})");
    EXPECT_EQ(asPrinted(figure(out, "/tcpi/to_estimate"), 2), "0.83");
    expectExact(out, "/tcpi/to_estimate", 540.0 / 652.0);
    EXPECT_TRUE(out.at("spi").is_null());
}

// "Two-task example" teaching page [S]: A of 20,000 done, B of 30,000 not; both planned by now; one
// actual cost of 30,000, which the page doesn't divide.
TEST(EarnedValueOutside, NoneOrDone) {
    const auto out = worked("earned-value", R"({"items":[
        {"budget":20000,"planned_percent":100,"percent":100,"actual":30000},
        {"budget":30000,"planned_percent":100,"percent":0,"actual":0}]})");
    expectExact(out, "/pv", 50000);
    expectExact(out, "/ev", 20000);
    expectExact(out, "/sv", -30000);
    expectExact(out, "/cv", -10000);
}

}  // namespace
