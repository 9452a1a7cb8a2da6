// Protects the edges of earned value: divisors of zero, a target already passed, nothing done. The
// figures themselves are checked against published examples in tests/outside.
#include "core/compute/earned_value.h"

#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <vector>

namespace {

using ledgerboard::compute::addUp;
using ledgerboard::compute::EarnedValue;
using ledgerboard::compute::earnedValue;
using ledgerboard::compute::EarnedValueInput;
using ledgerboard::compute::EarnedValueItem;
using ledgerboard::model::Money;

EarnedValueInput input(double bac, double pv, double ev, double ac) {
    EarnedValueInput in;
    in.bac = bac;
    in.pv = pv;
    in.ev = ev;
    in.ac = ac;
    return in;
}

std::vector<double> allFigures(const EarnedValue& value) {
    std::vector<double> all = {
        value.bac, value.pv, value.ev, value.ac, value.cv, value.sv, value.eac.remainingAtBudget};
    for (const auto& figure :
         {value.cpi, value.spi, value.eac.remainingAtCpi, value.eac.remainingAtCpiSpi,
          value.eac.remainingAtWeighted, value.eac.remainingAtSpiT, value.etc, value.vac,
          value.tcpiToBudget, value.tcpiToEstimate, value.percentComplete, value.percentSpent}) {
        if (figure) {
            all.push_back(*figure);
        }
    }
    return all;
}

TEST(EarnedValueEdges, NothingAtAll) {
    const EarnedValue out = earnedValue(EarnedValueInput{});
    EXPECT_EQ(out.eac.remainingAtBudget, 0);
    EXPECT_FALSE(out.cpi || out.spi || out.eac.remainingAtCpi || out.eac.remainingAtCpiSpi ||
                 out.eac.remainingAtWeighted || out.eac.remainingAtSpiT || out.etc || out.vac ||
                 out.tcpiToBudget || out.tcpiToEstimate || out.percentComplete || out.percentSpent);
}

TEST(EarnedValueEdges, NothingBilledYetHasNoCostIndex) {
    const EarnedValue out = earnedValue(input(1000, 100, 200, 0));
    EXPECT_FALSE(out.cpi);
    EXPECT_EQ(out.spi, 2.0);
    EXPECT_FALSE(out.eac.remainingAtCpi);
    EXPECT_FALSE(out.etc);
    EXPECT_EQ(out.eac.remainingAtBudget, 800);
    EXPECT_EQ(out.tcpiToBudget, 0.8);
}

TEST(EarnedValueEdges, BilledWithNothingDoneHasNoPaceToGoBy) {
    const EarnedValue out = earnedValue(input(1000, 100, 0, 50));
    EXPECT_EQ(out.cpi, 0.0);
    EXPECT_EQ(out.spi, 0.0);
    EXPECT_FALSE(out.eac.remainingAtCpi);
    EXPECT_FALSE(out.eac.remainingAtCpiSpi);
    EXPECT_FALSE(out.eac.remainingAtWeighted);
    EXPECT_EQ(out.eac.remainingAtBudget, 1050);
}

TEST(EarnedValueEdges, NothingPlannedYetHasNoScheduleIndex) {
    const EarnedValue out = earnedValue(input(1000, 0, 200, 100));
    EXPECT_FALSE(out.spi);
    EXPECT_FALSE(out.eac.remainingAtCpiSpi);
    EXPECT_FALSE(out.eac.remainingAtWeighted);
    EXPECT_EQ(out.eac.remainingAtCpi, 500.0);  // 100 + 800 / 2
}

// Once cost has reached the target, the figure is left out: it would be infinite, then negative.
TEST(EarnedValueEdges, TargetReachedOrPassed) {
    EXPECT_FALSE(earnedValue(input(1000, 900, 800, 1000)).tcpiToBudget);
    EXPECT_FALSE(earnedValue(input(1000, 900, 800, 1200)).tcpiToBudget);
    EXPECT_TRUE(earnedValue(input(1000, 900, 800, 999.99)).tcpiToBudget);
    EarnedValueInput own = input(1000, 900, 800, 1200);
    own.eac = 1200;
    EXPECT_FALSE(earnedValue(own).tcpiToEstimate);
    own.eac = 1400;  // 200 of work left, 200 of money left
    EXPECT_EQ(earnedValue(own).tcpiToEstimate, 1.0);
    EXPECT_EQ(earnedValue(own).vac, -400.0);
    EXPECT_EQ(earnedValue(own).etc, 200.0);
}

// Property: everything done forecasts what it cost, by every method.
TEST(EarnedValueEdges, FinishedForecastsItsActualCost) {
    EarnedValueInput in = input(5000, 5000, 5000, 5600);
    in.spiT = 0.8;
    const EarnedValue out = earnedValue(in);
    EXPECT_EQ(out.eac.remainingAtBudget, 5600);
    EXPECT_EQ(out.eac.remainingAtCpi, 5600);
    EXPECT_EQ(out.eac.remainingAtCpiSpi, 5600);
    EXPECT_EQ(out.eac.remainingAtWeighted, 5600);
    EXPECT_EQ(out.eac.remainingAtSpiT, 5600);
    EXPECT_EQ(out.etc, 0);
    EXPECT_FALSE(out.tcpiToEstimate);
}

TEST(EarnedValueEdges, RefundsBeyondCostHaveNoIndex) {
    EXPECT_FALSE(earnedValue(input(1000, 100, 200, -50)).cpi);
}

// Every combination of awkward sizes: a figure is a finite number or not there.
TEST(EarnedValueEdges, NeverNanOrInfinite) {
    constexpr std::array kAwkward = {0.0, 1e-300, 0.01, 1.0, 1e12, 1e300};
    for (const double bac : kAwkward) {
        for (const double pv : kAwkward) {
            for (const double ev : kAwkward) {
                for (const double ac : kAwkward) {
                    EarnedValueInput in = input(bac, pv, ev, ac);
                    in.spiT = pv;
                    for (const double figure : allFigures(earnedValue(in))) {
                        ASSERT_TRUE(std::isfinite(figure))
                            << bac << " " << pv << " " << ev << " " << ac;
                    }
                }
            }
        }
    }
}

TEST(EarnedValueEdges, MoneyGoesInAsDollars) {
    const EarnedValue out =
        earnedValue(Money::of(4000), Money::of(3000), Money::of(2500), Money::of(2800));
    EXPECT_EQ(out.cv, -300);
    EXPECT_DOUBLE_EQ(out.eac.remainingAtCpi.value(), 4480);
    EXPECT_FALSE(out.eac.remainingAtSpiT);
    EXPECT_EQ(ledgerboard::compute::toDollars(Money::fromMinor(-1234)), -12.34);
}

TEST(EarnedValueEdges, AddingUpItems) {
    EXPECT_EQ(addUp({}).bac, 0);
    const std::array<EarnedValueItem, 2> items = {{{1000, 50, 25, 300}, {3000, 0, 10, 0}}};
    const EarnedValueInput sum = addUp(items);
    EXPECT_EQ(sum.bac, 4000);
    EXPECT_EQ(sum.pv, 500);
    EXPECT_EQ(sum.ev, 550);  // 250 + 300
    EXPECT_EQ(sum.ac, 300);
}

}  // namespace
