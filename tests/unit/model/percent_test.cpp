// Protects: percents are kept to the hundredth of a percent and never mistaken for ratios. How:
// hand-written pairs of text and basis points.
#include "core/model/percent.h"

#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck/gtest.h>

#include "tests/unit/model/test_text.h"

namespace ledgerboard::model {
namespace {

TEST(Percent, ReadsWithAndWithoutItsSign) {
    EXPECT_EQ(Percent::parse("12.5").value().basisPoints(), 1250);
    EXPECT_EQ(Percent::parse("12.5%").value().basisPoints(), 1250);
    EXPECT_EQ(Percent::parse(" 10 % ").value().basisPoints(), 1000);
    EXPECT_EQ(Percent::parse("0.01").value().basisPoints(), 1);
    EXPECT_EQ(Percent::whole().basisPoints(), 10'000);
    EXPECT_EQ(Percent::of(8), Percent::parse("8").value());
}

TEST(Percent, RefusesWhatIsNone) {
    for (const auto* text : {"", "%", "ten", "12.345", "5%%"}) {
        EXPECT_FALSE(Percent::parse(text).ok()) << text;
    }
}

TEST(Percent, PrintsNoMoreDecimalsThanNeeded) {
    EXPECT_EQ(Percent::fromBasisPoints(7250).toString(), "72.5");
    EXPECT_EQ(Percent::of(100).toString(), "100");
    EXPECT_EQ(Percent::fromBasisPoints(-5).toString(), "-0.05");
    EXPECT_EQ(Percent().toString(), "0");
}

TEST(Percent, SumsThatDoNotFitAreErrors) {
    const auto most = Percent::fromBasisPoints(std::numeric_limits<std::int64_t>::max());
    const auto least = Percent::fromBasisPoints(std::numeric_limits<std::int64_t>::min());
    EXPECT_THROW((void)(most + Percent::of(1)), OverflowError);
    EXPECT_THROW((void)(least - Percent::of(1)), OverflowError);
    EXPECT_EQ(Percent::of(60) + Percent::of(40), Percent::whole());
    EXPECT_EQ(Percent::whole() - Percent::of(40), Percent::of(60));
}

RC_GTEST_PROP(PercentProperty, PrintedPercentsReadBack, (std::int32_t basisPoints)) {
    const auto percent = Percent::fromBasisPoints(basisPoints);
    RC_ASSERT(Percent::parse(percent.toString()).value() == percent);
}

}  // namespace
}  // namespace ledgerboard::model
