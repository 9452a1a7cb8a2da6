// Protects: quantities keep three decimals exactly. How: hand-written pairs of text and
// thousandths, and sums at the edge of the range.
#include "core/model/quantity.h"

#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck/gtest.h>

#include "tests/unit/model/test_text.h"

namespace ledgerboard::model {
namespace {

TEST(Quantity, ReadsAndPrintsThreeDecimals) {
    EXPECT_EQ(Quantity::parse("4.25").value().thousandths(), 4250);
    EXPECT_EQ(Quantity::parse("1,440").value(), Quantity::of(1440));
    EXPECT_EQ(shown(Quantity::parse("0.125")), "0.125");
    EXPECT_EQ(Quantity::of(42).toString(), "42");
    EXPECT_FALSE(Quantity::parse("0.1234").ok());
    EXPECT_FALSE(Quantity::parse("12 sq ft").ok());
}

TEST(Quantity, AddsAndSubtracts) {
    Quantity total = Quantity::of(3);
    total += Quantity::fromThousandths(500);
    EXPECT_EQ(total.toString(), "3.5");
    EXPECT_EQ(total - Quantity::of(4), Quantity::fromThousandths(-500));
    EXPECT_LT(Quantity::of(1), Quantity::fromThousandths(1001));
}

TEST(Quantity, SumsThatDoNotFitAreErrors) {
    Quantity most = Quantity::fromThousandths(std::numeric_limits<std::int64_t>::max());
    const Quantity least = Quantity::fromThousandths(std::numeric_limits<std::int64_t>::min());
    EXPECT_THROW((void)(most + Quantity::of(1)), OverflowError);
    EXPECT_THROW((void)(least - Quantity::of(1)), OverflowError);
    EXPECT_THROW(most += Quantity::of(1), OverflowError);
}

RC_GTEST_PROP(QuantityProperty, PrintedQuantitiesReadBack, (std::int32_t thousandths)) {
    const auto quantity = Quantity::fromThousandths(thousandths);
    RC_ASSERT(Quantity::parse(quantity.toString()).value() == quantity);
}

}  // namespace
}  // namespace ledgerboard::model
