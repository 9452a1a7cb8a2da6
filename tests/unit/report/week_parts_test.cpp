// Protects the lists of the week's page: trades and rooms that add up to the job, six kinds of
// money that are never mixed, and no more than fourteen rows. Figures are those of jobs.h.
#include "core/report/week_parts.h"

#include <gtest/gtest.h>

#include "tests/unit/report/jobs.h"

namespace ledgerboard::report {

namespace {

using model::Money;
using model::Percent;
using test::may;

compute::GroupFigures group(const std::string& name, std::int64_t dollars) {
    compute::GroupFigures out;
    out.name = name;
    out.budgetNow = Money::of(dollars);
    out.forecast = Money::of(dollars + 1);
    out.committed = Money::of(dollars + 2);
    out.billed = Money::of(dollars + 3);
    out.held = Money::of(dollars + 4);
    out.paid = Money::of(dollars + 5);
    out.items = 1;
    return out;
}

TEST(Trades, KeepSixKindsOfMoneyApart) {
    compute::JobFigures figures;
    figures.trades = {group("Tile", 100)};
    const auto trades = tradesOf(figures);
    ASSERT_EQ(trades.size(), 1U);
    EXPECT_EQ(trades[0].amounts.budgetNow, Money::of(100));
    EXPECT_EQ(trades[0].amounts.forecast, Money::of(101));
    EXPECT_EQ(trades[0].amounts.committed, Money::of(102));
    EXPECT_EQ(trades[0].amounts.billed, Money::of(103));
    EXPECT_EQ(trades[0].amounts.held, Money::of(104));
    EXPECT_EQ(trades[0].amounts.paid, Money::of(105));
}

TEST(Trades, AreThoseOfTheJob) {
    const WeekPage page = weekPage(test::smallJob(), may(15));
    ASSERT_EQ(page.trades.size(), 3U);
    EXPECT_EQ(page.trades[0].trade, "Carpentry");
    EXPECT_EQ(page.trades[0].amounts.billed, Money::of(4'300));
    EXPECT_EQ(page.trades[0].amounts.paid, Money{});
    EXPECT_EQ(page.trades[2].trade, "Tile");
    EXPECT_EQ(page.trades[2].amounts.paid, Money::of(900));
    EXPECT_EQ(page.trades[2].amounts.forecast, Money::of(1'800));
    EXPECT_EQ(page.total.forecast, Money::of(6'400));
    EXPECT_EQ(page.total.paid, Money::of(900));
}

TEST(Trades, AreEarlyWhereBilledBeforePlanWithinBudget) {
    auto rows = test::smallJob();
    // 1,300 billed on the tile by 15 May, 1,000 planned: 300 early. CPI 1,000 / 1,300, so to go
    // 1,300 and the forecast 2,600 would be over; a quote of the owner keeps it at budget.
    rows.spends[1].amount = Money::of(1'300);
    rows.items[1].estimateToFinish = Money::of(700);
    const WeekPage page = weekPage(rows, may(15));
    EXPECT_EQ(page.trades[2].amounts.forecast, Money::of(2'000));
    EXPECT_EQ(page.trades[2].early, Money::of(300));
    EXPECT_EQ(page.trades[0].early, Money{});  // over, not early
}

TEST(Trades, AreFourteenAtMostAndStillAddUp) {
    compute::JobFigures figures;
    for (int k = 0; k < 20; ++k) {
        figures.trades.push_back(group("Trade " + std::to_string(k), 100 + k));
    }
    const auto trades = tradesOf(figures);
    ASSERT_EQ(trades.size(), 14U);
    // the 13 largest, 107 to 119, in their order; 100 to 106 as one
    EXPECT_EQ(trades.front().trade, "Trade 7");
    EXPECT_EQ(trades.back().trade, "All other trades");
    EXPECT_EQ(trades.back().amounts.budgetNow, Money::of(100 + 101 + 102 + 103 + 104 + 105 + 106));
}

TEST(Trades, LeaveOutWhatIsNothing) {
    compute::JobFigures figures;
    figures.trades = {group("Tile", 100), compute::GroupFigures{}};
    EXPECT_EQ(tradesOf(figures).size(), 1U);
    figures.trades[1].billed = Money::of(5);
    const auto trades = tradesOf(figures);
    ASSERT_EQ(trades.size(), 2U);
    EXPECT_EQ(trades[1].trade, "No trade");
}

TEST(Rooms, AreInWalkingOrderWithTheirProgress) {
    const WeekPage page = weekPage(test::smallJob(), may(15));
    ASSERT_EQ(page.rooms.size(), 2U);
    EXPECT_EQ(page.rooms[0].name, "Kitchen");
    EXPECT_EQ(page.rooms[0].shortName, "KI");
    EXPECT_EQ(page.rooms[0].swatch, "#8A5545");
    EXPECT_EQ(page.rooms[0].done, Percent::whole());
    EXPECT_EQ(page.rooms[0].over, Money::of(300));
    EXPECT_EQ(page.rooms[1].shortName, "HB");
    EXPECT_EQ(page.rooms[1].items, 2);
    // 1,000 of 2,300 earned and planned: 43.478 %
    EXPECT_EQ(page.rooms[1].done, Percent::fromBasisPoints(4'348));
    EXPECT_EQ(page.rooms[1].planned, Percent::fromBasisPoints(4'348));
    EXPECT_EQ(page.rooms[1].over, Money::of(-200));
}

TEST(Rooms, HaveNoPlanWithoutDates) {
    auto rows = test::smallJob();
    for (auto& frozen : rows.baseline_items) {
        frozen.plannedStartOn.reset();
        frozen.plannedFinishOn.reset();
    }
    const WeekPage page = weekPage(rows, may(15));
    EXPECT_FALSE(page.rooms[0].planned.has_value());
    EXPECT_FALSE(page.progress.planned.has_value());
}

TEST(ProgressOf, IsOfBudgetNow) {
    const WeekPage page = weekPage(test::smallJob(), may(15));
    EXPECT_EQ(page.progress.done, Percent::fromBasisPoints(7'937));  // 5,000 of 6,300: 79.365 %
    EXPECT_EQ(page.progress.planned, Percent::fromBasisPoints(7'937));
    EXPECT_EQ(page.progress.spent, Percent::fromBasisPoints(8'254));
    EXPECT_EQ(page.progress.paid, Percent::fromBasisPoints(1'429));
}

TEST(Next, AndPapersAreNamed) {
    const WeekPage page = weekPage(test::smallJob(), may(15));
    ASSERT_EQ(page.next.size(), 1U);
    EXPECT_EQ(page.next[0].kind, compute::WaitKind::Payment);
    EXPECT_EQ(page.next[0].on, may(20));
    EXPECT_EQ(page.next[0].what, "Cabinet crew");
    EXPECT_EQ(page.next[0].amount, Money::of(4'300));
    ASSERT_EQ(page.papers.size(), 1U);
    EXPECT_EQ(page.papers[0].what, "Receipt, Corner hardware, 2026-05-13");
    EXPECT_EQ(page.papers[0].amount, Money::of(900));
    EXPECT_EQ(page.papers[0].days, 2);
}

}  // namespace

}  // namespace ledgerboard::report
