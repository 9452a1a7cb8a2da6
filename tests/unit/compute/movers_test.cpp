// Protects what moved since the last review: the five largest and all others add up to the change
// in what it will cost, and each says why where the rows tell.
#include "core/compute/movers.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;
using testing::HasSubstr;

const Date kToday = day("2026-05-22");

Movers movers(const SampleJob& job) {
    return moversOf(job.rows, figuresOf(job.rows, kToday), kToday);
}

void addReview(SampleJob& job, std::string_view on) {
    Review review = reviewOf(figuresOf(job.rows, day(on)), day(on));
    review.id = id<Kind::Review>(static_cast<std::uint32_t>(job.rows.reviews.size() + 1));
    job.rows.reviews.push_back(review);
}

TEST(Movers, SayNothingWithoutAReviewOrBaseline) {
    SampleJob job;
    job.item("tub", "100");
    const Movers out = movers(job);
    EXPECT_EQ(out.since, Since::Nothing);
    EXPECT_TRUE(out.largest.empty());
    EXPECT_EQ(out.moved, Money{});
}

TEST(Movers, SinceTheBaselineWithoutAReview) {
    SampleJob job;
    job.item("tub", "100");
    job.baseline("2026-05-01", {"100"});
    job.change("valve", "40", "2026-05-10").items = {id<Kind::Item>(1)};
    const Movers out = movers(job);
    EXPECT_EQ(out.since, Since::Baseline);
    EXPECT_EQ(out.sinceOn, day("2026-05-01"));
    ASSERT_EQ(out.largest.size(), 1U);
    EXPECT_EQ(out.largest[0].moved, money("40"));
    EXPECT_EQ(out.largest[0].reason, MoveReason::SignedChange);
    EXPECT_EQ(out.largest[0].why.text(), "change signed: valve");
}

TEST(Movers, TheFiveLargestAndTheRestAddUp) {
    SampleJob job;
    for (int k = 0; k < 8; ++k) {
        job.item("item", "1000");
    }
    addReview(job, "2026-05-15");
    // Receipts beyond budget move items 1 to 8 by 10, 20, ... 70 and item 8 by -400 (estimate).
    for (std::uint32_t k = 1; k <= 7; ++k) {
        job.spend(SpendKind::Receipt, "2026-05-18", std::to_string(1000 + 10 * k), k);
    }
    job.rows.items[7].estimateToFinish = money("600");
    job.spend(SpendKind::Fee, "2026-05-18", "5");
    const Movers out = movers(job);
    EXPECT_EQ(out.since, Since::Review);
    EXPECT_EQ(out.willCostThen, money("8000"));
    EXPECT_EQ(out.willCostNow, money("7885"));  // 280 more, 400 less, a fee of 5
    ASSERT_EQ(out.largest.size(), 5U);
    EXPECT_EQ(out.largest[0].moved, money("-400"));
    EXPECT_EQ(out.largest[0].reason, MoveReason::OwnEstimate);
    EXPECT_EQ(out.largest[1].moved, money("70"));
    EXPECT_EQ(out.largest[1].reason, MoveReason::BilledBeyondBudget);
    EXPECT_EQ(out.largest[4].moved, money("40"));
    EXPECT_EQ(out.others, money("65"));  // 10 + 20 + 30 and the fee
    EXPECT_EQ(out.othersCount, 3U);
    Money sum = out.others;
    for (const Mover& mover : out.largest) {
        sum += mover.moved;
    }
    EXPECT_EQ(sum, out.moved);
}

TEST(Movers, ReadTheLatestReviewBeforeToday) {
    SampleJob job;
    job.item("tub", "1000");
    addReview(job, "2026-05-15");
    job.rows.items[0].lumpSum = money("1100");
    addReview(job, "2026-05-08");
    addReview(job, "2026-05-22");
    EXPECT_EQ(movers(job).sinceOn, day("2026-05-15"));
    EXPECT_EQ(movers(job).moved, money("100"));
}

TEST(Movers, KnowAnItemThatIsNewAndOneThatIsGone) {
    SampleJob job;
    job.item("tub", "1000");
    job.item("sink", "200");
    addReview(job, "2026-05-15");
    job.rows.items.pop_back();
    job.item("new", "50").id = id<Kind::Item>(9);
    const Movers out = movers(job);
    ASSERT_EQ(out.largest.size(), 1U);
    EXPECT_EQ(out.largest[0].reason, MoveReason::NewItem);
    EXPECT_EQ(out.others, money("-200"));
    EXPECT_EQ(out.moved, money("-150"));
}

TEST(Movers, NameTheTradeWhoseCostMovedIt) {
    SampleJob job;
    job.item("floor", "1000").trade = "tile";
    addReview(job, "2026-05-15");
    job.mark(1, "2026-05-18", "50");
    job.spend(SpendKind::Receipt, "2026-05-18", "600", 1);
    const Movers out = movers(job);
    ASSERT_EQ(out.largest.size(), 1U);
    EXPECT_EQ(out.largest[0].moved, money("200"));  // 600 + 500 x 600/500
    EXPECT_EQ(out.largest[0].reason, MoveReason::TradeCpi);
    EXPECT_THAT(out.largest[0].why.text(), HasSubstr("tile"));
}

TEST(Reviews, KeepTheFiguresByName) {
    SampleJob job;
    job.item("floor", "1000");
    job.spend(SpendKind::Receipt, "2026-05-18", "600", 1);
    const Review review = reviewOf(figuresOf(job.rows, kToday), kToday);
    EXPECT_EQ(keptFigure(review, kWillCost), money("1000"));
    EXPECT_EQ(keptFigure(review, kBilled), money("600"));
    EXPECT_FALSE(keptFigure(review, "profit"));
    ASSERT_EQ(review.forecasts.size(), 1U);
    EXPECT_EQ(review.forecasts[0].amount, money("1000"));
}

}  // namespace
