// Protects day counts and simple interest against published examples, through `work interest`.
// [S]: the number stands in the source; [C]: worked out by hand; [2]: a secondary text.
#include <gtest/gtest.h>
#include <string>

#include "tests/outside/worked.h"

namespace {

using ledgerboard::outside::asPrinted;
using ledgerboard::outside::expectExact;
using ledgerboard::outside::figure;
using ledgerboard::outside::worked;

nlohmann::json interest(const std::string& from, const std::string& to, const std::string& basis,
                        const std::string& principal = "1000", const std::string& rate = "10") {
    return worked("interest", R"({"principal":)" + principal + R"(,"rate":)" + rate +
                                  R"(,"from":")" + from + R"(","to":")" + to + R"(","basis":")" +
                                  basis + "\"}");
}

std::string fraction(const std::string& from, const std::string& to, const std::string& basis) {
    return asPrinted(figure(interest(from, to, basis), "/fraction"), 8);
}

int days(const std::string& from, const std::string& to, const std::string& basis) {
    return static_cast<int>(figure(interest(from, to, basis), "/days"));
}

// Spreadsheet function reference for year fractions [S]; actual/360 is 211/360 [C].
TEST(InterestOutside, YearFractions) {
    EXPECT_EQ(fraction("2012-01-01", "2012-07-30", "30/360-us"), "0.58055556");
    EXPECT_EQ(fraction("2012-01-01", "2012-07-30", "actual/actual-isda"), "0.57650273");
    EXPECT_EQ(fraction("2012-01-01", "2012-07-30", "actual/365"), "0.57808219");
    EXPECT_EQ(fraction("2012-01-01", "2012-07-30", "actual/360"), "0.58611111");
}

// Spreadsheet references for the 360-day year [S].
TEST(InterestOutside, DaysOfA360DayYear) {
    EXPECT_EQ(days("2011-01-30", "2011-02-01", "30/360-us"), 1);
    EXPECT_EQ(days("2011-01-01", "2011-12-31", "30/360-us"), 360);
    EXPECT_EQ(days("2008-02-27", "2009-03-31", "30/360-us"), 394);
    EXPECT_EQ(days("2008-02-27", "2009-03-31", "30e/360"), 393);
    EXPECT_EQ(days("1993-02-28", "1993-03-01", "30/360-us"), 1);
    EXPECT_EQ(days("1993-02-28", "1993-03-01", "30e/360"), 3);
}

// ISDA 30/360 conventions, as tested in QuantLib's day counters [S]: bond basis, US, 30E.
TEST(InterestOutside, ThirtyDayConventions) {
    struct Case {
        const char* from;
        const char* to;
        int bond;
        int us;
        int european;
    };

    for (const Case& one : {Case{"2006-08-31", "2007-02-28", 178, 178, 178},
                            Case{"2007-02-28", "2007-08-31", 183, 180, 182},
                            Case{"2006-02-28", "2006-03-03", 5, 3, 5},
                            Case{"2006-09-30", "2006-10-31", 30, 30, 30}}) {
        EXPECT_EQ(days(one.from, one.to, "30/360-bond"), one.bond) << one.from;
        EXPECT_EQ(days(one.from, one.to, "30/360-us"), one.us) << one.from;
        EXPECT_EQ(days(one.from, one.to, "30e/360"), one.european) << one.from;
    }
    // The source gives no 30E figure for this pair.
    EXPECT_EQ(days("2008-02-29", "2009-02-28", "30/360-bond"), 359);
    EXPECT_EQ(days("2008-02-29", "2009-02-28", "30/360-us"), 360);
}

// [2], exact by hand [C]: 1,000 x 10 % x 365/360 = 101.38888...
TEST(InterestOutside, SimpleInterestOverAPlainYear) {
    const auto lender = interest("2025-01-01", "2026-01-01", "actual/360");
    EXPECT_EQ(asPrinted(figure(lender, "/interest"), 2), "101.39");
    expectExact(lender, "/interest", 100 * 365.0 / 360.0);
    expectExact(interest("2025-01-01", "2026-01-01", "actual/365"), "/interest", 100);
}

// A span over a year's end, by hand [C]: 2011-07-01 to 2012-07-01 has 184 days in a plain year and
// 182 in a leap year, so 184/365 + 182/366.
TEST(InterestOutside, ActualActualAcrossALeapYear) {
    expectExact(interest("2011-07-01", "2012-07-01", "actual/actual-isda"), "/fraction",
                184.0 / 365.0 + 182.0 / 366.0);
}

}  // namespace
