// Protects the figures of the week's page against a small job worked out by hand (jobs.h): what is
// compared with what, what is left out, and that rows of a later day do not count.
#include "core/report/week_page.h"

#include <gtest/gtest.h>

#include "core/compute/movers.h"

#include "tests/unit/report/jobs.h"

namespace ledgerboard::report {

namespace {

using model::Money;
using model::Percent;
using test::may;

TEST(WeekPage, TellsTheHeadFigures) {
    const WeekPage page = weekPage(test::smallJob(), may(15));
    EXPECT_EQ(page.cost.forecast, Money::of(6'400));
    EXPECT_EQ(page.cost.budget, Money::of(6'300));
    EXPECT_EQ(page.cost.forecastBefore, Money::of(6'300));
    EXPECT_EQ(page.cost.overBefore, Money{});
    // half of ten days is left: Mon 18 to Fri 22 May, the day that was planned
    EXPECT_EQ(page.finish.on, may(22));
    EXPECT_EQ(page.finish.planned, may(22));
    EXPECT_EQ(page.finish.workingDaysLate, 0);
    EXPECT_EQ(page.finish.workingDaysLateBefore, 0);
    EXPECT_FALSE(page.finish.isFinished);
    EXPECT_EQ(page.week, 2);   // begun Mon 4 May
    EXPECT_EQ(page.weeks, 3);  // 4 to 22 May
    EXPECT_EQ(page.since.against, Against::Baseline);
    EXPECT_EQ(page.since.on, may(1));
}

TEST(WeekPage, CountsWhatItLeavesOut) {
    const WeekPage page = weekPage(test::smallJob(), may(15));
    EXPECT_EQ(page.items, 3);
    EXPECT_EQ(page.undated, 1);
    EXPECT_EQ(page.withoutDays, 1);
    EXPECT_EQ(page.unpriced, 0);
    EXPECT_EQ(page.outside.unsignedChanges, 1);
    EXPECT_EQ(page.outside.ifSigned, Money::of(250));
    EXPECT_EQ(page.outside.unknownsExpected, Money{});
}

TEST(WeekPage, DrawsTheLevel) {
    const WeekPage page = weekPage(test::smallJob(), may(15));
    ASSERT_TRUE(page.level.has_value());
    EXPECT_EQ(page.level->over, Money::of(100));
    EXPECT_EQ(page.level->hairline, Money::of(126));  // 2 % of 6,300
    EXPECT_EQ(page.level->end, Money::of(630));
    EXPECT_TRUE(page.level->endIsContingencyLeft);
    // With no contingency the ends stand a quarter beyond the hairlines.
    auto rows = test::smallJob();
    rows.baselines[0].contingency = Money{};
    const WeekPage bare = weekPage(rows, may(15));
    EXPECT_EQ(bare.level->end, Money::fromMinor(15'750));
    EXPECT_FALSE(bare.level->endIsContingencyLeft);
    EXPECT_FALSE(bare.contingency.has_value());
}

TEST(WeekPage, TellsWhatMovedIt) {
    const WeekPage page = weekPage(test::smallJob(), may(15));
    ASSERT_TRUE(page.movers.has_value());
    ASSERT_EQ(page.movers->largest.size(), 2U);
    EXPECT_EQ(page.movers->largest[0].what, "Kitchen/cabinets");
    EXPECT_EQ(page.movers->largest[0].amount, Money::of(300));
    EXPECT_EQ(page.movers->largest[1].what, "hall bath/tile");
    EXPECT_EQ(page.movers->largest[1].amount, Money::of(-200));
    EXPECT_EQ(page.movers->total, Money::of(100));
    EXPECT_EQ(page.movers->others, Money{});
}

TEST(WeekPage, DrawsTheCurveToToday) {
    const WeekPage page = weekPage(test::smallJob(), may(15));
    ASSERT_FALSE(page.curve.empty());
    EXPECT_EQ(page.curve.front().on, may(4));
    EXPECT_EQ(page.curve.back().on, may(22));
    EXPECT_EQ(page.curve.back().planned, Money::of(6'000));  // the fan has no dates
    EXPECT_FALSE(page.curve.back().earned.has_value());
    for (const auto& point : page.curve) {
        if (point.on == may(8)) {
            EXPECT_EQ(point.planned, Money::of(4'000));
            EXPECT_EQ(point.earned, Money::of(4'000));
            EXPECT_EQ(point.spent, Money::of(4'300));
        }
        if (point.on == may(15)) {
            EXPECT_EQ(point.planned, Money::of(5'000));
            EXPECT_EQ(point.earned, Money::of(5'000));
            EXPECT_EQ(point.spent, Money::of(5'200));
        }
    }
}

TEST(WeekPage, KnowsNothingOfLaterDays) {
    // On 8 May neither the receipt, nor the tile's mark, nor the change was there.
    const WeekPage page = weekPage(test::smallJob(), may(8));
    EXPECT_EQ(page.total.billed, Money::of(4'300));
    EXPECT_EQ(page.outside.unsignedChanges, 0);
    EXPECT_EQ(page.cost.forecast, Money::of(6'600));  // 4,300 + 2,000 + 300
    EXPECT_EQ(page.rooms[1].done, Percent{});
}

TEST(WeekPage, StandsBesideTheLastReview) {
    auto rows = test::smallJob();
    model::Review review = weekPage(rows, may(8)).review;
    EXPECT_EQ(review.job, rows.job.id);
    EXPECT_EQ(review.reviewedOn, may(8));
    EXPECT_EQ(compute::keptFigure(review, compute::kWillCost), Money::of(6'600));
    review.willFinishOn = may(26);
    rows.reviews = {review};
    const WeekPage page = weekPage(rows, may(15));
    EXPECT_EQ(page.since.against, Against::Review);
    EXPECT_EQ(page.since.on, may(8));
    EXPECT_EQ(page.cost.forecastBefore, Money::of(6'600));
    EXPECT_EQ(page.cost.overBefore, Money::of(300));
    EXPECT_EQ(page.finish.before, may(26));
    EXPECT_EQ(page.finish.workingDaysLateBefore, 2);  // Mon 25 and Tue 26 May
    EXPECT_EQ(page.movers->total, Money::of(-200));   // the tile alone
}

TEST(WeekPage, TellsWhatItWillEarn) {
    auto rows = test::smallJob();
    const WeekPage unknown = weekPage(rows, may(15));
    EXPECT_FALSE(unknown.earn.profit.has_value());
    EXPECT_NE(unknown.earn.whatIsMissing.find("Purchase price"), std::string::npos)
        << unknown.earn.whatIsMissing;
    rows.job.purchasePrice = Money::of(100'000);
    rows.job.purchasedOn = may(1);
    rows.job.resaleLikely = Money::of(200'000);
    rows.job.resaleDays = 30;
    // No loan, no holding, no selling costs: 200,000 - 100,000 - 6,400.
    const WeekPage known = weekPage(rows, may(15));
    EXPECT_EQ(known.earn.profit, Money::of(93'600));
    EXPECT_EQ(known.earn.ofResale, Percent::fromBasisPoints(4'680));
    EXPECT_EQ(known.earn.dayCosts, Money{});
    rows.reviews = {weekPage(rows, may(8)).review};
    EXPECT_EQ(weekPage(rows, may(15)).earn.before, Money::of(93'400));  // it cost 6,600 then
}

TEST(WeekPage, TakesThreePhotos) {
    std::vector<WeekPhoto> photos(5);
    photos[2].caption = "third";
    const WeekPage page = weekPage(test::smallJob(), may(15), photos);
    ASSERT_EQ(page.photos.size(), 3U);
    EXPECT_EQ(page.photos[2].caption, "third");
}

TEST(WeekPage, IsEmptyForAnEmptyJob) {
    const WeekPage page = weekPage(model::JobRows{}, may(15));
    EXPECT_EQ(page.items, 0);
    EXPECT_FALSE(page.level.has_value());
    EXPECT_FALSE(page.movers.has_value());
    EXPECT_FALSE(page.finish.on.has_value());
    EXPECT_FALSE(page.week.has_value());
    EXPECT_TRUE(page.curve.empty());
    EXPECT_TRUE(page.trades.empty());
    EXPECT_TRUE(page.rooms.empty());
    EXPECT_TRUE(page.monday.empty());
}

}  // namespace

}  // namespace ledgerboard::report
