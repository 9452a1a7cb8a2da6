// Protects the S-curve: each point must be what the figures of the job say when asked as of that
// day, which is computed here the slow way.
#include "core/compute/series.h"

#include <gtest/gtest.h>

#include "core/compute/as_of.h"

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;

SampleJob underWay() {
    SampleJob job;
    for (int k = 0; k < 3; ++k) {
        Item& item = job.item("floor", "1000");
        item.plannedStartOn = day("2026-05-04") + 3 * k;
        item.plannedFinishOn = day("2026-05-08") + 4 * k;
        item.measure = k == 1 ? Measure::HalfAndHalf : Measure::JudgedPercent;
    }
    job.baseline("2026-05-01", {"1000", "900", "1100"});
    job.change("more", "333.33", "2026-05-07").items = {id<Kind::Item>(1), id<Kind::Item>(2)};
    job.change("whole job", "50", "2026-05-12");
    job.mark(1, "2026-05-05", "30");
    job.mark(1, "2026-05-09", "80");
    job.mark(2, "2026-05-06", "50");
    job.mark(1, "2026-05-11", "70");
    job.mark(3, "2026-05-13", "12.5");
    job.spend(SpendKind::Invoice, "2026-05-06", "400", 1);
    job.spend(SpendKind::Payment, "2026-05-07", "400", 1);
    job.spend(SpendKind::Fee, "2026-05-10", "20");
    job.spend(SpendKind::Refund, "2026-05-12", "15.50", 1);
    return job;
}

TEST(Series, EachPointIsTheFiguresAsOfItsDay) {
    const SampleJob job = underWay();
    const Date today = day("2026-05-15");
    const JobRows rows = asOf(job.rows, today);
    const auto points =
        seriesOf(rows, scopeLinesOf(rows), day("2026-05-02"), day("2026-05-20"), today, Every::Day);
    ASSERT_EQ(points.size(), 19U);
    for (const SeriesPoint& point : points) {
        if (point.on > today) {
            EXPECT_FALSE(point.earned);
            EXPECT_FALSE(point.billed);
            continue;
        }
        const Figures then = figuresOf(asOf(job.rows, point.on), point.on).job;
        EXPECT_EQ(point.planned, then.planned) << point.on.toString();
        EXPECT_EQ(point.earned, then.earned) << point.on.toString();
        EXPECT_EQ(point.billed, then.billed) << point.on.toString();
    }
}

TEST(Series, EndsWithTheFiguresOfToday) {
    const SampleJob job = underWay();
    const Date today = day("2026-05-15");
    const auto points =
        seriesOf(job.rows, scopeLinesOf(job.rows), day("2026-05-01"), today, today, Every::Week);
    ASSERT_FALSE(points.empty());
    // By hand: item 1 at 70 % of 1,000 + 333.33 x 1,000/1,900 = 1,175.44 (822.81), item 2 at 50 %
    // of 900 + 157.89 = 1,057.89 (528.95), item 3 at 12.5 % of 1,100 (137.50); the whole job's 50
    // at (82,280.8 + 52,894.5 + 13,750) / 3,333.33 = 44.68 % (22.34).
    EXPECT_EQ(points.back().earned, money("1511.60"));
    EXPECT_EQ(points.back().billed, money("404.50"));
}

TEST(Series, ByTheWeekStandsOnTodaysWeekday) {
    const SampleJob job = underWay();
    const auto points = seriesOf(job.rows, scopeLinesOf(job.rows), day("2026-04-29"),
                                 day("2026-05-20"), day("2026-05-08"), Every::Week);
    std::vector<std::string> days;
    for (const SeriesPoint& point : points) {
        days.push_back(point.on.toString());
    }
    EXPECT_EQ(days, (std::vector<std::string>{"2026-04-29", "2026-05-01", "2026-05-08",
                                              "2026-05-15", "2026-05-20"}));
}

TEST(Series, IsEmptyBackwardsAndPlannedOnlyBeforeItBegins) {
    const SampleJob job = underWay();
    const ScopeLines scope = scopeLinesOf(job.rows);
    EXPECT_TRUE(seriesOf(job.rows, scope, day("2026-05-20"), day("2026-05-02"), day("2026-05-08"),
                         Every::Day)
                    .empty());
    const auto ahead = seriesOf(job.rows, scope, day("2026-05-20"), day("2026-05-27"),
                                day("2026-04-01"), Every::Week);
    EXPECT_EQ(ahead.size(), 2U);
    EXPECT_FALSE(ahead[0].earned);
}

TEST(Span, RunsFromTheFirstDateToTheLastPlannedOne) {
    const SampleJob job = underWay();
    const auto span = spanOf(job.rows, scopeLinesOf(job.rows), day("2026-05-06"));
    ASSERT_TRUE(span);
    EXPECT_EQ(span->first, day("2026-05-04"));
    EXPECT_EQ(span->last, day("2026-05-16"));
    EXPECT_FALSE(spanOf(JobRows{}, scopeLinesOf(JobRows{}), day("2026-05-06")));
}

}  // namespace
