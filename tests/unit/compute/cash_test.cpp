// Protects the cash line: each day's balance against a calculation by hand written beside it, where
// it is lowest and gets short, what the owner's cash earns, and profit at other finishes.
#include "core/compute/cash.h"

#include <gtest/gtest.h>

#include "core/compute/deal_return.h"
#include "core/compute/profit_table.h"

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;

// Bought 1 January for 200,000 with 160,000 lent, sold 1 April for 300,000 less 5 %. At 7.3 % on
// actual/365 the purchase loan costs 32.00 a day and a draw of 9,000 costs 1.80; holding is
// 365 x 12 / 365 = 12.00 a day.
Job quarter() {
    Job job;
    job.purchasePrice = money("200000");
    job.purchasedOn = day("2026-01-01");
    job.purchaseLoan = money("160000");
    job.workLoan = money("20000");
    job.loanRate = percent("7.3");
    job.resaleLikely = money("300000");
    job.sellingCosts = percent("5");
    job.holdingCosts = {{"all", money("365")}};
    job.cashAtStart = money("70000");
    return job;
}

DealFigures soldInApril() {
    DealFigures figures;
    figures.work = money("15000");
    figures.saleOn = day("2026-04-01");
    figures.asOf = day("2026-02-15");
    figures.drawsAhead.emplace();
    return figures;
}

CashLine lineOf(const Job& job) {
    const std::vector<CashMove> work = {
        {day("2026-03-10"), CashKind::Work, -money("5000"), "tile crew", true},
        {day("2026-02-10"), CashKind::Work, -money("10000"), "plumbing crew", false}};
    const std::vector<DrawMoney> draws = {
        {day("2026-03-01"), money("8825"), money("175"), "draw 1", true}};
    auto line = cashLineOf(job, soldInApril(), work, draws);
    if (!line.ok()) {
        ADD_FAILURE() << line.error().message;
        return {};
    }
    return line.value();
}

TEST(Cash, DayByDay) {
    const CashLine line = lineOf(quarter());
    std::vector<std::pair<std::string, std::string>> days;
    for (const CashDay& one : line.days) {
        days.emplace_back(one.on.toString(), one.balance.toString());
    }
    const std::vector<std::pair<std::string, std::string>> expected = {
        {"2026-01-01", "30000.00"},    // 70,000 - (200,000 - 160,000)
        {"2026-02-01", "28636.00"},    // - 31 x 32 - 31 x 12
        {"2026-02-10", "18636.00"},    // - 10,000
        {"2026-03-01", "26229.00"},    // - 28 x 32 - 28 x 12 + 8,825
        {"2026-03-10", "21229.00"},    // - 5,000
        {"2026-04-01", "135809.20"}};  // - 31 x 33.80 - 31 x 12 + 285,000 - 169,000
    EXPECT_EQ(days, expected);
    // 300,000 - 200,000 - 175 - 2,935.80 - 1,080 - 15,000 - 15,000.
    EXPECT_EQ(line.deal.profit, money("65809.20"));
    EXPECT_EQ(line.end - line.start, money("65809.20"));
    EXPECT_TRUE(line.reachesSale);
}

TEST(Cash, LowestDayAndPeak) {
    const CashLine line = lineOf(quarter());
    EXPECT_EQ(line.lowest->on, day("2026-02-10"));
    EXPECT_EQ(line.lowest->balance, money("18636"));
    EXPECT_EQ(line.today, money("18636"));
    EXPECT_EQ(line.lowestAhead->on, day("2026-02-15"));  // today itself: it only rises from here
    EXPECT_EQ(line.peakCashIn, money("51364"));          // 70,000 - 18,636
    EXPECT_FALSE(line.underZeroOn || line.underTwoWeeksOn);
}

TEST(Cash, GettingShort) {
    Job job = quarter();
    job.cashAtStart = money("52000");  // 18,000 less each day: 636 on 15 February
    CashLine line = lineOf(job);
    // In the two weeks to 1 March 896 + 336 go out.
    EXPECT_EQ(line.underTwoWeeksOn, day("2026-02-15"));
    EXPECT_FALSE(line.underZeroOn);
    job.cashAtStart = money("51000");
    line = lineOf(job);
    EXPECT_EQ(line.underZeroOn, day("2026-02-15"));
    job.cashAtStart.reset();
    line = lineOf(job);
    EXPECT_EQ(line.start, Money{});
    EXPECT_EQ(line.leftOut.front().heading, "Cash at start");
    EXPECT_EQ(line.peakCashIn, money("51364"));
}

TEST(Cash, WithoutAPurchaseThereIsNoLine) {
    auto line = cashLineOf(Job{}, {}, {}, {});
    ASSERT_TRUE(line.ok());
    EXPECT_EQ(line.value().missing.size(), 2U);
    EXPECT_EQ(line.value().missing[0].heading, "Purchased");
    EXPECT_TRUE(line.value().days.empty());
}

// The line goes on without a sale while nobody knows when or for how much.
TEST(Cash, WithoutASaleItEndsWithTheLastMove) {
    Job job = quarter();
    job.resaleLikely.reset();
    DealFigures figures = soldInApril();
    figures.saleOn.reset();
    auto line = cashLineOf(
        job, figures, {{day("2026-02-10"), CashKind::Work, -money("15000"), "all", false}}, {});
    ASSERT_TRUE(line.ok()) << line.error().message;
    EXPECT_FALSE(line.value().reachesSale);
    EXPECT_EQ(line.value().days.back().on, day("2026-02-15"));
    // 70,000 - 40,000 - 15,000 - 45 x 44.
    EXPECT_EQ(line.value().end, money("13020"));
}

TEST(Cash, ADrawAfterTheSaleIsNotTaken) {
    auto line = cashLineOf(quarter(), soldInApril(),
                           {{day("2026-02-10"), CashKind::Work, -money("15000"), "all", false}},
                           {{day("2026-04-02"), money("8825"), money("175"), "late", true}});
    ASSERT_TRUE(line.ok());
    EXPECT_EQ(line.value().deal.visitFees, Money{});
    EXPECT_EQ(line.value().end - line.value().start, line.value().deal.profit);
}

TEST(Return, OnTheCashThatWasIn) {
    const DealReturn earned = dealReturnOf(lineOf(quarter()));
    EXPECT_NEAR(earned.onCashPercent.value(), 100 * 65'809.20 / 51'364, 1e-9);
    EXPECT_NEAR(earned.yearlySimplePercent.value(), 100 * 65'809.20 / 51'364 * 365 / 90, 1e-9);
    EXPECT_TRUE(earned.yearlyDatedPercent);
    EXPECT_TRUE(earned.notes.empty());
}

// Everything lent and received in time: the owner's own was never in it.
TEST(Return, WithNoCashInThereIsNone) {
    Job job;
    job.purchasePrice = money("100");
    job.purchaseLoan = money("100");
    job.purchasedOn = day("2026-01-01");
    job.resaleLikely = money("150");
    DealFigures figures;
    figures.work = Money{};
    figures.saleOn = day("2026-02-01");
    auto line = cashLineOf(job, figures, {}, {});
    ASSERT_TRUE(line.ok()) << line.error().message;
    const DealReturn earned = dealReturnOf(line.value());
    EXPECT_FALSE(earned.onCashPercent || earned.yearlySimplePercent || earned.yearlyDatedPercent);
    ASSERT_EQ(earned.notes.size(), 2U);
    EXPECT_NE(earned.notes[0].find("never in it"), std::string::npos);
    EXPECT_NE(earned.notes[1].find("no sign change"), std::string::npos);
}

// Two weeks later cost 14 x (32 + 12) = 616 without draws; after the season's last day 6,000 less
// come in, 5 % of which need not be paid to sell.
TEST(ProfitTable, LaterAndLowerEarnsLess) {
    Job job = quarter();
    job.resaleLow = money("280000");
    job.seasonDrop = {{"2026-04-10", money("6000")}};
    DealFigures figures = soldInApril();
    figures.willFinishOn = day("2026-03-01");
    const auto table = profitTableOf(job, figures);
    ASSERT_TRUE(table.ok()) << table.error().message;
    ASSERT_EQ(table.value().values, (std::vector<Money>{money("280000"), money("300000")}));
    const auto& rows = table.value().rows;
    ASSERT_EQ(rows.size(), 5U);
    // 300,000 - 200,000 - 2,880 - 1,080 - 15,000 - 15,000; 280,000: 20,000 x .95 less.
    EXPECT_EQ(rows[0].profits[1], money("66040"));
    EXPECT_EQ(rows[0].profits[0], money("47040"));
    EXPECT_EQ(rows[1].profits[1], money("65732"));  // a week: 308 less, sold 8 April
    EXPECT_EQ(rows[2].saleOn, day("2026-04-15"));
    EXPECT_EQ(rows[2].profits[1], money("59724"));  // 66,040 - 616 - 6,000 x .95
}

TEST(Deal, SeasonDropNamesADay) {
    Job job = quarter();
    job.seasonDrop = {{"summer", money("6000")}};
    const auto out = deal(job, soldInApril());
    ASSERT_FALSE(out.ok());
    EXPECT_NE(out.error().message.find("Season drop"), std::string::npos);
}

TEST(Deal, DoublePriceAndDay180) {
    Job job = quarter();
    auto out = deal(job, soldInApril());
    EXPECT_FALSE(out.value().isDoublePrice);
    EXPECT_EQ(out.value().day180On, day("2026-06-30"));  // 1 January + 180
    job.resaleLikely = money("400000");
    EXPECT_TRUE(deal(job, soldInApril()).value().isDoublePrice);
}

// With the days of draws known nothing is charged on what is not drawn: 9,000 for 31 days at
// 1.80 a day beside the purchase loan's 90 x 32.
TEST(Deal, KnownDrawsAreChargedFromTheirDaysAlone) {
    DealFigures figures = soldInApril();
    figures.drawsAhead = {{day("2026-03-01"), money("9000")}};
    EXPECT_EQ(deal(quarter(), figures).value().interest, money("2935.80"));
    // Unknown: half of 20,000 at 2.00 a day for 45 days from the day of looking.
    figures.drawsAhead.reset();
    EXPECT_EQ(deal(quarter(), figures).value().interest, money("2970"));
}

}  // namespace
