// Protects: money is exact. Amounts read and print to the cent, sums that do not fit are an error
// and never wrap, the one rounding goes half away from zero, and parts of a split add up to the
// whole. How: hand-worked figures beside each check, and generated splits.
#include "core/model/money.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <limits>
#include <numeric>
#include <rapidcheck/gtest.h>

#include "tests/unit/model/test_text.h"

namespace ledgerboard::model {
namespace {

constexpr auto kMost = std::numeric_limits<std::int64_t>::max();
constexpr auto kLeast = std::numeric_limits<std::int64_t>::min();

std::vector<std::int64_t> minors(const std::vector<Money>& parts) {
    std::vector<std::int64_t> out;
    for (const auto part : parts) {
        out.push_back(part.minor());
    }
    return out;
}

TEST(Money, ReadsWhatPeopleWrite) {
    EXPECT_EQ(shown(Money::parse("1250")), "1250.00");
    EXPECT_EQ(shown(Money::parse(" $1,250.5 ")), "1250.50");
    EXPECT_EQ(shown(Money::parse("(12.50)")), "-12.50");
    EXPECT_EQ(shown(Money::parse("-$3")), "-3.00");
    EXPECT_EQ(shown(Money::parse("$-3")), "-3.00");
    EXPECT_EQ(shown(Money::parse(".05")), "0.05");
    EXPECT_EQ(shown(Money::parse("-0.01")), "-0.01");
    EXPECT_EQ(shown(Money::parse("\xE2\x88\x92"
                                 "7")),
              "-7.00");
    EXPECT_EQ(shown(Money::parse("265k")), "265000.00");
    EXPECT_EQ(shown(Money::parse("$1.25K")), "1250.00");
    EXPECT_EQ(Money::parse("1250").value(), Money::of(1250));
    EXPECT_EQ(Money::of(1250).minor(), 125'000);
}

TEST(Money, RefusesWhatIsNoAmountOfMoney) {
    for (const auto* text : {"", "abc", "12.345", "1,25", "1.250,00", "12a", "--5", "$", "(", "1e3",
                             "0x10", "1 250", "(-5)", ".", "k", "12kk", "1 k"}) {
        EXPECT_FALSE(Money::parse(text).ok()) << text;
    }
    EXPECT_THAT(Money::parse("12.345").error().message, testing::HasSubstr("more than 2 decimals"));
    EXPECT_THAT(Money::parse("1.250,00").error().message, testing::HasSubstr("comma"));
    EXPECT_THAT(Money::parse("99999999999999").error().message, testing::HasSubstr("too large"));
}

TEST(Money, PrintsTheWholeRange) {
    // 2^63 - 1 = 9223372036854775807, so these are the largest and least counts of cents.
    EXPECT_EQ(Money::fromMinor(kMost).toString(), "92233720368547758.07");
    EXPECT_EQ(Money::fromMinor(kLeast).toString(), "-92233720368547758.08");
    EXPECT_EQ(Money().toString(), "0.00");
}

TEST(Money, SumsThatDoNotFitAreErrors) {
    const Money most = Money::fromMinor(kMost);
    const Money least = Money::fromMinor(kLeast);
    const Money cent = Money::fromMinor(1);
    EXPECT_THROW((void)(most + cent), OverflowError);
    EXPECT_THROW((void)(least - cent), OverflowError);
    EXPECT_THROW((void)(-least), OverflowError);
    EXPECT_EQ((most + -cent).minor(), kMost - 1);
    Money sum = most;
    EXPECT_THROW(sum += cent, OverflowError);
    EXPECT_EQ(sum, most) << "a sum that failed leaves the amount as it was";
    EXPECT_THROW(sum -= -cent, OverflowError);
}

TEST(Money, RoundsHalfAwayFromZeroOnce) {
    EXPECT_EQ(roundedMoney(5, 2).minor(), 3);    // 2.5
    EXPECT_EQ(roundedMoney(-5, 2).minor(), -3);  // -2.5
    EXPECT_EQ(roundedMoney(7, 3).minor(), 2);    // 2.33
    EXPECT_EQ(roundedMoney(8, 3).minor(), 3);    // 2.67
    EXPECT_EQ(roundedMoney(-8, 3).minor(), -3);
    EXPECT_EQ(roundedMoney(1, 1).minor(), 1);
    EXPECT_EQ(roundedMoney(0, 7).minor(), 0);
    EXPECT_THROW((void)roundedMoney(static_cast<Wide>(kMost) * 3, 2), OverflowError);
}

TEST(Money, QuantityTimesPrice) {
    // 12.5 sq ft at $3.33 is $41.625, half away from zero $41.63.
    EXPECT_EQ(times(Quantity::fromThousandths(12'500), Money::fromMinor(333)).minor(), 4163);
    EXPECT_EQ(times(Quantity::fromThousandths(-12'500), Money::fromMinor(333)).minor(), -4163);
    EXPECT_EQ(times(Quantity::of(0), Money::of(5)).minor(), 0);
    EXPECT_THROW((void)times(Quantity::fromThousandths(kMost), Money::fromMinor(kMost)),
                 OverflowError);
}

TEST(Money, ShareOfAnAmount) {
    // 8.25 % of $19.99 is $1.649175.
    EXPECT_EQ(share(Percent::fromBasisPoints(825), Money::fromMinor(1999)).minor(), 165);
    // 50 % of one cent is half a cent.
    EXPECT_EQ(share(Percent::of(50), Money::fromMinor(1)).minor(), 1);
    EXPECT_EQ(share(Percent::of(50), Money::fromMinor(-1)).minor(), -1);
    EXPECT_EQ(share(Percent::whole(), Money::fromMinor(kMost)).minor(), kMost);
}

TEST(Money, SplitsByLargestRemainder) {
    // $100.00 in three: 33.33 each, the cent left over goes to the first of equals.
    EXPECT_EQ(minors(allocate(Money::of(100), {1, 1, 1})),
              (std::vector<std::int64_t>{3334, 3333, 3333}));
    // 10 cents by 1 : 2 : 4. Exact 1.43, 2.86, 5.71; floors 1, 2, 5 leave two cents, which go to
    // the remainders .86 and .71.
    EXPECT_EQ(minors(allocate(Money::fromMinor(10), {1, 2, 4})),
              (std::vector<std::int64_t>{1, 3, 6}));
    EXPECT_EQ(minors(allocate(Money::fromMinor(-10), {1, 2, 4})),
              (std::vector<std::int64_t>{-1, -3, -6}));
    EXPECT_EQ(minors(allocate(Money::fromMinor(5), {0, 0})), (std::vector<std::int64_t>{3, 2}));
    EXPECT_EQ(minors(allocate(Money::fromMinor(5), {0, 7})), (std::vector<std::int64_t>{0, 5}));
    EXPECT_TRUE(allocate(Money::of(1), {}).empty());
    EXPECT_THROW((void)allocate(Money::fromMinor(kLeast), {1}), OverflowError);
}

RC_GTEST_PROP(MoneyProperty, PartsAddUpAndStayWithinACentOfTheirShare, ()) {
    const auto total = *rc::gen::inRange<std::int64_t>(-1'000'000'000, 1'000'000'000);
    const auto weights = *rc::gen::nonEmpty(
        rc::gen::container<std::vector<std::int64_t>>(rc::gen::inRange(0, 9999)));
    const auto parts = minors(allocate(Money::fromMinor(total), weights));
    RC_ASSERT(parts.size() == weights.size());
    RC_ASSERT(std::accumulate(parts.begin(), parts.end(), std::int64_t{0}) == total);
    const std::int64_t sum = std::accumulate(weights.begin(), weights.end(), std::int64_t{0});
    for (std::size_t k = 0; sum > 0 && k < parts.size(); ++k) {
        // |part - total * weight / sum| < 1, multiplied out so that it stays exact.
        const std::int64_t off = parts[k] * sum - total * weights[k];
        RC_ASSERT(off < sum && off > -sum);
    }
}

RC_GTEST_PROP(MoneyProperty, PrintedAmountsReadBack, ()) {
    const auto minor =
        *rc::gen::inRange<std::int64_t>(-1'000'000'000'000'000, 1'000'000'000'000'000);
    const Money money = Money::fromMinor(minor);
    const auto again = Money::parse(money.toString());
    RC_ASSERT(again.ok());
    RC_ASSERT(again.value() == money);
}

RC_GTEST_PROP(MoneyProperty, RoundingIsNearestAndTiesGoOutward, ()) {
    const auto numerator = *rc::gen::inRange<std::int64_t>(-1'000'000'000, 1'000'000'000);
    const auto denominator = *rc::gen::inRange<std::int64_t>(1, 100'000);
    const std::int64_t rounded = roundedMoney(numerator, denominator).minor();
    const std::int64_t off = 2 * (rounded * denominator - numerator);
    RC_ASSERT(off <= denominator && off >= -denominator);
    if (off == denominator) {
        RC_ASSERT(numerator > 0);  // a tie that went up belongs to a positive amount
    }
    if (off == -denominator) {
        RC_ASSERT(numerator < 0);
    }
}

TEST(Overflow, BecomesAnErrorAtTheEdge) {
    const auto result =
        guarded([]() -> Result<Money> { return Money::fromMinor(kMost) + Money::fromMinor(1); });
    ASSERT_FALSE(result.ok());
    EXPECT_EQ(result.error().code, ErrorCode::CannotBeMet);
    EXPECT_THAT(result.error().message, testing::HasSubstr("check the amounts"));
}

}  // namespace
}  // namespace ledgerboard::model
