// Protects how figures are written for people. Expected texts are written out by hand; rounding is
// half away from zero.
#include "core/report/money_text.h"

#include <cstdint>
#include <gtest/gtest.h>
#include <limits>

namespace ledgerboard::report {

namespace {

using model::Date;
using model::Money;
using model::Percent;

constexpr Script kUnicode = Script::Unicode;

TEST(WholeText, GroupsAndRoundsHalfAwayFromZero) {
    EXPECT_EQ(wholeText(Money::of(123'320), kUnicode), "123,320");
    EXPECT_EQ(wholeText(Money::fromMinor(50), kUnicode), "1");
    EXPECT_EQ(wholeText(Money::fromMinor(49), kUnicode), "0");
    EXPECT_EQ(wholeText(Money::fromMinor(-50), kUnicode), "−1");
    EXPECT_EQ(wholeText(Money::fromMinor(-49), kUnicode), "0");
    EXPECT_EQ(wholeText(Money::fromMinor(99'950), kUnicode), "1,000");
    EXPECT_EQ(wholeText(Money::of(-420), kUnicode), "−420");
    EXPECT_EQ(wholeText(Money::of(-420), Script::Ascii), "-420");
}

TEST(WholeText, HoldsTheLargestAndTheSmallest) {
    // 9223372036854775807 cents
    EXPECT_EQ(wholeText(Money::fromMinor(std::numeric_limits<std::int64_t>::max()), kUnicode),
              "92,233,720,368,547,758");
    EXPECT_EQ(wholeText(Money::fromMinor(std::numeric_limits<std::int64_t>::min()), Script::Ascii),
              "-92,233,720,368,547,758");
}

TEST(CentsText, AlwaysHasTwoDecimals) {
    EXPECT_EQ(centsText(Money::fromMinor(12'332'050), kUnicode), "123,320.50");
    EXPECT_EQ(centsText(Money::fromMinor(-5), kUnicode), "−0.05");
    EXPECT_EQ(centsText(Money{}, kUnicode), "0.00");
}

TEST(SignedText, SaysPlusAndMinusButNotForNothing) {
    EXPECT_EQ(signedText(Money::of(1'180), kUnicode), "+1,180");
    EXPECT_EQ(signedText(Money::of(-420), kUnicode), "−420");
    EXPECT_EQ(signedText(Money::fromMinor(49), kUnicode), "0");
    EXPECT_EQ(signedText(Money::fromMinor(-49), kUnicode), "0");
}

TEST(ShortText, TurnsToMillionsWhereColumnsAreNarrow) {
    EXPECT_EQ(shortText(Money::of(999'999'999), kUnicode), "999,999,999");
    EXPECT_EQ(shortText(Money::of(1'000'000'000), kUnicode), "1,000M");
    EXPECT_EQ(shortSignedText(Money::of(1'000'000'000), kUnicode), "+1,000M");
    EXPECT_EQ(shortSignedText(Money{}, kUnicode), "0");
}

TEST(AxisText, IsShort) {
    EXPECT_EQ(axisText(Money{}, kUnicode), "0");
    EXPECT_EQ(axisText(Money::of(950), kUnicode), "950");
    EXPECT_EQ(axisText(Money::of(30'000), kUnicode), "30k");
    EXPECT_EQ(axisText(Money::of(7'500), kUnicode), "7.5k");
    EXPECT_EQ(axisText(Money::of(1'200'000), kUnicode), "1.2M");
    EXPECT_EQ(axisText(Money::of(999'960), kUnicode), "1M");
    EXPECT_EQ(axisText(Money::of(-30'000), Script::Ascii), "-30k");
}

TEST(PercentText, IsWholeOrOneDecimal) {
    EXPECT_EQ(percentText(Percent::fromBasisPoints(7'250), kUnicode), "73 %");
    EXPECT_EQ(percentText(Percent::fromBasisPoints(-100), kUnicode), "−1 %");
    EXPECT_EQ(tenthsText(Percent::of(15), kUnicode), "15.0 %");
    EXPECT_EQ(tenthsText(Percent::fromBasisPoints(-5), kUnicode), "−0.1 %");
}

TEST(Dates, AreWrittenDayFirstWithTheirWeekday) {
    const Date today = Date::fromYmd(2026, 5, 15).value();  // a Friday, by any calendar of 2026
    EXPECT_EQ(longDateText(today), "Friday 15 May 2026");
    EXPECT_EQ(dateText(today, today), "Fri 15 May");
    EXPECT_EQ(dateText(Date::fromYmd(2027, 1, 4).value(), today), "Mon 4 Jan 2027");
    EXPECT_EQ(dayMonthText(today), "15 May");
}

TEST(CountText, ChoosesTheWord) {
    EXPECT_EQ(countText(1, "day", "days"), "1 day");
    EXPECT_EQ(countText(0, "day", "days"), "0 days");
    EXPECT_EQ(countText(1'200, "day", "days"), "1,200 days");
}

}  // namespace

}  // namespace ledgerboard::report
