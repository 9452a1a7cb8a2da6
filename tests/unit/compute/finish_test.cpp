// Protects the rough finish: remaining days x pace from the next working day, later where the plan
// or the goods are. Days are counted by hand on the calendar of May 2026 (the 22nd is a Friday).
#include "core/compute/finish.h"

#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;

const Date kToday = day("2026-05-22");

RoughFinish finish(const SampleJob& job) {
    return roughFinishOf(job.rows, figuresOf(job.rows, kToday), kToday);
}

TEST(RoughFinish, IsEmptyWhereNothingCanBeComputed) {
    SampleJob job;
    EXPECT_FALSE(finish(job).on);
    job.item("walls", "1000");
    EXPECT_FALSE(finish(job).on);
    EXPECT_EQ(finish(job).withoutDays, 1U);
    EXPECT_FALSE(finish(job).finished);
}

TEST(RoughFinish, CountsWhatIsLeftFromTheNextWorkingDay) {
    SampleJob job;
    Item& item = job.item("walls", "1000");
    item.daysLikely = amountOf("10");
    item.plannedStartOn = day("2026-05-11");
    job.mark(1, "2026-05-21", "65");
    // 3.5 days left, so 4: Monday 25 to Thursday 28.
    EXPECT_EQ(finish(job).on, day("2026-05-28"));
    EXPECT_EQ(finish(job).lastItem, 0U);
}

TEST(RoughFinish, DoesNotBeginBeforeThePlanOrTheGoods) {
    SampleJob job;
    Item& item = job.item("windows", "1000");
    item.daysLikely = amountOf("2");
    item.plannedStartOn = day("2026-06-03");  // a Wednesday
    EXPECT_EQ(finish(job).on, day("2026-06-04"));
    Delivery& delivery = job.add(job.rows.deliveries);
    delivery.item = id<Kind::Item>(1);
    delivery.promisedOn = day("2026-06-05");  // Friday: that day and Monday
    EXPECT_EQ(finish(job).on, day("2026-06-08"));
}

TEST(RoughFinish, WithoutLikelyDaysThePlannedOnesStand) {
    SampleJob job;
    Item& item = job.item("walls", "1000");
    item.plannedStartOn = day("2026-05-18");
    item.plannedFinishOn = day("2026-05-22");
    // Five days planned, none done: 25 to 29 May.
    EXPECT_EQ(finish(job).on, day("2026-05-29"));
}

TEST(RoughFinish, AFinishedJobEndedWithItsLastMark) {
    SampleJob job;
    job.item("walls", "1000");
    job.item("floor", "1000");
    job.mark(1, "2026-05-20", "100");
    job.mark(2, "2026-05-18", "100");
    EXPECT_TRUE(finish(job).finished);
    EXPECT_EQ(finish(job).on, day("2026-05-20"));
}

struct Crewed : SampleJob {
    Crewed() {
        add(rows.crews);
        for (const auto* name : {"first", "second"}) {
            Item& added = item(name, "1000");
            added.crew = id<Kind::Crew>(1);
            added.daysLikely = amountOf("4");
        }
    }
};

TEST(Pace, IsActualOverPlannedDaysBetweenMarks) {
    Crewed job;
    job.mark(1, "2026-05-11", "0");
    job.mark(1, "2026-05-14", "50");
    // Tue to Thu: 3 days for 50 % of 4 planned, so 1.5. The second: 4 x 1.5 = 6 days, 25 May to
    // 1 June; the first has 2 x 1.5 = 3 left.
    EXPECT_EQ(finish(job).paces[0].thousandths, 1500);
    EXPECT_TRUE(finish(job).paces[0].measured);
    EXPECT_EQ(finish(job).on, day("2026-06-01"));
}

TEST(Pace, StaysWithinItsBounds) {
    Crewed fast;
    fast.mark(1, "2026-05-11", "0");
    fast.mark(1, "2026-05-12", "100");
    EXPECT_EQ(finish(fast).paces[0].thousandths, 800);
    Crewed slow;
    slow.mark(1, "2026-05-04", "0");
    slow.mark(1, "2026-05-20", "10");
    EXPECT_EQ(finish(slow).paces[0].thousandths, 2000);
}

TEST(Pace, OneMarkTellsNothingUnlessTheStartIsKnown) {
    Crewed job;
    job.mark(1, "2026-05-14", "100");
    EXPECT_FALSE(finish(job).paces[0].measured);
    EXPECT_EQ(finish(job).paces[0].thousandths, 1000);
    job.rows.items[0].actualStartOn = day("2026-05-11");
    EXPECT_EQ(finish(job).paces[0].thousandths, 1000);  // four days for four
    EXPECT_TRUE(finish(job).paces[0].measured);
}

TEST(Pace, StandingStillDoesNotCountAndACorrectionTakesBackTheWork) {
    Crewed job;
    job.mark(1, "2026-05-04", "0");
    job.mark(1, "2026-05-06", "50");  // Tue, Wed: 2 days
    job.mark(1, "2026-05-12", "50");  // nothing done
    job.mark(1, "2026-05-13", "75");  // 1 day
    job.mark(1, "2026-05-14", "50");  // a correction: 50 % in 3 days, planned 2
    EXPECT_EQ(finish(job).paces[0].thousandths, 1500);
}

}  // namespace
