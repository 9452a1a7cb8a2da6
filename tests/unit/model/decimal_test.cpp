// Protects: decimals are read exactly or refused, never guessed. How: both sides of each limit, and
// generated numbers printed and read back at every scale in use.
#include "core/model/decimal.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace ledgerboard::model {
namespace {

std::int64_t unitsOf(std::string_view text, int decimals) {
    const auto units = parseDecimal(text, decimals);
    EXPECT_TRUE(units.ok()) << text << ": " << (units.ok() ? "" : units.error().message);
    return units.ok() ? units.value() : -999;
}

TEST(Decimal, ReadsAtTheScaleAsked) {
    EXPECT_EQ(unitsOf("4.25", 3), 4250);
    EXPECT_EQ(unitsOf("4", 0), 4);
    EXPECT_EQ(unitsOf("4.000", 0), 4);
    EXPECT_EQ(unitsOf("+4.5", 1), 45);
    EXPECT_EQ(unitsOf("007", 0), 7);
    EXPECT_EQ(unitsOf("5.", 2), 500);
}

TEST(Decimal, ThousandsCommasStandAtEveryThirdDigitOrAreRefused) {
    EXPECT_EQ(unitsOf("1,234,567.8", 1), 12'345'678);
    EXPECT_EQ(unitsOf("12,345", 0), 12'345);
    for (const auto* text :
         {"1,2345", "1234,567", ",123", "1,,234", "12,34,567", "1,234,", "12,5"}) {
        const auto read = parseDecimal(text, 0);
        ASSERT_FALSE(read.ok()) << text;
        EXPECT_THAT(read.error().message, testing::HasSubstr("comma")) << text;
        EXPECT_EQ(read.error().code, ErrorCode::WrongUse);
    }
}

TEST(Decimal, TheLimitIsTenToTheFifteen) {
    EXPECT_EQ(unitsOf("1000000000000000", 0), 1'000'000'000'000'000);
    EXPECT_EQ(unitsOf("-10000000000000.00", 2), -1'000'000'000'000'000);
    EXPECT_FALSE(parseDecimal("1000000000000001", 0).ok());
    EXPECT_FALSE(parseDecimal("10000000000000.01", 2).ok());
    EXPECT_FALSE(parseDecimal(std::string(400, '9'), 0).ok());
}

TEST(Decimal, ANumberIsNamedInTheMessage) {
    EXPECT_THAT(parseDecimal("twelve", 2).error().message, testing::HasSubstr("\"twelve\""));
}

TEST(Decimal, PrintsAsManyDecimalsAsAsked) {
    EXPECT_EQ(printDecimal(125'000, 2, 2, true), "1250.00");
    EXPECT_EQ(printDecimal(7250, 2, 0, false), "72.5");
    EXPECT_EQ(printDecimal(7200, 2, 0, false), "72");
    EXPECT_EQ(printDecimal(7200, 2, 1, false), "72.0");
    EXPECT_EQ(printDecimal(-5, 3, 0, false), "-0.005");
    EXPECT_EQ(printDecimal(0, 3, 0, false), "0");
    EXPECT_EQ(printDecimal(42, 0, 0, false), "42");
}

TEST(Decimal, TrimmedTakesWhiteSpaceOffBothEnds) {
    EXPECT_EQ(trimmed(" \t a b \r\n"), "a b");
    EXPECT_EQ(trimmed("   "), "");
    EXPECT_EQ(trimmed(""), "");
}

RC_GTEST_PROP(DecimalProperty, PrintedNumbersReadBack, ()) {
    const auto units =
        *rc::gen::inRange<std::int64_t>(-1'000'000'000'000'000, 1'000'000'000'000'000);
    const auto decimals = *rc::gen::inRange(0, 4);
    const bool fixed = *rc::gen::arbitrary<bool>();
    const auto again = parseDecimal(printDecimal(units, decimals, decimals, fixed), decimals);
    RC_ASSERT(again.ok());
    RC_ASSERT(again.value() == units);
}

}  // namespace
}  // namespace ledgerboard::model
