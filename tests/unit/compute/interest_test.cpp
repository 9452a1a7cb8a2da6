// Protects day counts at their edges, names of the bases, and the one rounding of interest.
// Published examples are in tests/outside.
#include "core/compute/interest.h"

#include <gtest/gtest.h>

namespace {

using namespace ledgerboard::compute;
using ledgerboard::model::Date;
using ledgerboard::model::InterestBasis;
using ledgerboard::model::Money;
using ledgerboard::model::Percent;

constexpr DayCount kAll[] = {DayCount::Actual360,        DayCount::Actual365,
                             DayCount::ActualActualIsda, DayCount::Thirty360Us,
                             DayCount::Thirty360Bond,    DayCount::ThirtyE360};

Date day(const char* text) {
    return Date::parse(text).value();
}

TEST(Interest, NamesReadBack) {
    for (const DayCount basis : kAll) {
        EXPECT_EQ(dayCountNamed(nameOf(basis)), basis);
    }
    EXPECT_FALSE(dayCountNamed("30/360"));
    EXPECT_FALSE(dayCountNamed(""));
}

TEST(Interest, AJobsWordStandsForABasis) {
    EXPECT_EQ(dayCountOf(InterestBasis::Unset), DayCount::Actual365);
    EXPECT_EQ(dayCountOf(InterestBasis::Actual360), DayCount::Actual360);
    EXPECT_EQ(dayCountOf(InterestBasis::Actual365), DayCount::Actual365);
    EXPECT_EQ(dayCountOf(InterestBasis::ActualActual), DayCount::ActualActualIsda);
    EXPECT_EQ(dayCountOf(InterestBasis::Thirty360), DayCount::Thirty360Us);
}

TEST(Interest, TheSameDayIsNoTime) {
    for (const DayCount basis : kAll) {
        EXPECT_EQ(daysBetween(day("2024-02-29"), day("2024-02-29"), basis), 0);
        EXPECT_EQ(yearFraction(day("2024-02-29"), day("2024-02-29"), basis).numerator, 0);
    }
}

// Property: a whole calendar year is one year on every basis that says so.
TEST(Interest, WholeYears) {
    for (const DayCount basis : {DayCount::ActualActualIsda, DayCount::Thirty360Us,
                                 DayCount::Thirty360Bond, DayCount::ThirtyE360}) {
        EXPECT_EQ(yearFraction(day("2024-01-01"), day("2025-01-01"), basis).value(), 1.0);
        EXPECT_EQ(yearFraction(day("2025-01-01"), day("2027-01-01"), basis).value(), 2.0);
    }
}

// Property: actual/actual of two spans adds up to that of the whole.
TEST(Interest, SpansAddUp) {
    const Date from = day("2023-06-15");
    const Date to = day("2025-03-10");
    const auto whole = yearFraction(from, to, DayCount::ActualActualIsda);
    for (Date between = from; between < to; between = between + 17) {
        const auto first = yearFraction(from, between, DayCount::ActualActualIsda);
        const auto second = yearFraction(between, to, DayCount::ActualActualIsda);
        ASSERT_EQ(first.numerator + second.numerator, whole.numerator) << between.toString();
        ASSERT_EQ(first.denominator, whole.denominator);
    }
}

TEST(Interest, DaysOfAYear) {
    EXPECT_EQ(daysInYear(DayCount::Actual360), 360);
    EXPECT_EQ(daysInYear(DayCount::Actual365), 365);
    EXPECT_EQ(daysInYear(DayCount::ActualActualIsda), 365);
    EXPECT_EQ(daysInYear(DayCount::Thirty360Us), 360);
}

// 1,000 at 10 % for 365 days: 101.388... on actual/360 (a secondary text prints 101.39), 100.00 on
// actual/365.
TEST(Interest, RoundedOnceToTheCent) {
    const auto interest = [](DayCount basis) {
        return simpleInterest(Money::of(1000), Percent::of(10), day("2025-01-01"),
                              day("2026-01-01"), basis);
    };
    EXPECT_EQ(interest(DayCount::Actual360), Money::fromMinor(101'39));
    EXPECT_EQ(interest(DayCount::Actual365), Money::fromMinor(100'00));
    EXPECT_EQ(interest(DayCount::ActualActualIsda), Money::fromMinor(100'00));
}

}  // namespace
