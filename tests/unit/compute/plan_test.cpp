// Protects the job's plan: days, floats, what drives the finish, what to order by when. Each case
// is worked by hand on the calendar of May 2026 (the 22nd, today, is a Friday; the first day
// planned is Monday the 25th).
#include "core/compute/plan.h"

#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;

const Date kToday = day("2026-05-22");

struct PlannedJob : SampleJob {
    Item& of(std::string_view object, std::string_view days) {
        Item& added = item(object, "1000");
        added.daysLikely = amountOf(days);
        return added;
    }

    void link(std::uint32_t from, std::uint32_t to, std::string_view lag = "0",
              LinkKind type = LinkKind::FinishToStart) {
        Link& link = add(rows.links);
        link.fromItem = id<Kind::Item>(from);
        link.toItem = id<Kind::Item>(to);
        link.type = type;
        link.lag = amountOf(lag);
    }

    [[nodiscard]] JobFigures figures() const { return figuresOf(rows, kToday); }

    [[nodiscard]] Plan plan() const { return planOf(rows, figures(), kToday); }
};

TEST(Plan, IsEmptyWhereNothingCanBeComputed) {
    PlannedJob job;
    EXPECT_FALSE(job.plan().on);
    EXPECT_FALSE(job.plan().isFinished);
    job.item("walls", "1000");
    const Plan plan = job.plan();
    EXPECT_FALSE(plan.on);
    EXPECT_EQ(plan.withoutDays, 1U);
    EXPECT_FALSE(plan.isFinished);
    EXPECT_TRUE(plan.driving.empty());
}

TEST(Plan, WhatIsLeftGoesOnFromTheNextWorkingDay) {
    PlannedJob job;
    job.of("walls", "10").plannedStartOn = day("2026-05-11");
    job.mark(1, "2026-05-19", "40");
    job.mark(1, "2026-05-21", "65");
    const Plan plan = job.plan();
    // 3.5 days left: Monday 25 to Thursday 28.
    EXPECT_EQ(plan.on, day("2026-05-28"));
    EXPECT_EQ(plan.items[0].state, PlanState::UnderWay);
    EXPECT_EQ(plan.items[0].startOn, day("2026-05-19"));
    EXPECT_EQ(plan.items[0].resumesOn, day("2026-05-25"));
    EXPECT_EQ(plan.items[0].finishOn, day("2026-05-28"));
}

TEST(Plan, WithoutLikelyDaysThePlannedOnesStand) {
    PlannedJob job;
    Item& item = job.item("walls", "1000");
    item.plannedStartOn = day("2026-05-18");
    item.plannedFinishOn = day("2026-05-22");
    // Five days planned, none done: 25 to 29 May.
    EXPECT_EQ(job.plan().on, day("2026-05-29"));
}

TEST(Plan, AFinishedJobEndedWithTheLastOfItsFinishes) {
    PlannedJob job;
    job.item("walls", "1000");
    job.item("floor", "1000");
    job.mark(1, "2026-05-20", "100");
    job.mark(2, "2026-05-18", "100");
    job.mark(2, "2026-05-21", "100");  // looked at again
    const Plan plan = job.plan();
    EXPECT_TRUE(plan.isFinished);
    EXPECT_EQ(plan.on, day("2026-05-20"));
    EXPECT_EQ(plan.items[1].state, PlanState::Finished);
    EXPECT_EQ(plan.items[1].finishOn, day("2026-05-18"));
}

// A chain of tile 2, vanity 1, toilet 1 after a day's wait; beside it trim 3 and paint 1.
//   tile 0-2 Mon Tue; vanity 2-3 Wed; toilet 4-5 Fri; trim 0-3 Mon to Wed; paint 3-4 Thu.
// The length is 5. Paint may slip a day; trim, paint: float 1. Free float of trim 0, of paint 1.
struct Chain : PlannedJob {
    Chain() {
        of("tile", "2");
        of("vanity", "1");
        of("toilet", "1");
        of("trim", "3");
        of("paint", "1");
        link(1, 2);
        link(2, 3, "1");
        link(4, 5);
    }
};

TEST(Plan, AChainInDays) {
    const Plan plan = Chain().plan();
    EXPECT_EQ(plan.on, day("2026-05-29"));
    EXPECT_EQ(plan.items[0].startOn, day("2026-05-25"));
    EXPECT_EQ(plan.items[0].finishOn, day("2026-05-26"));
    EXPECT_EQ(plan.items[1].startOn, day("2026-05-27"));
    EXPECT_EQ(plan.items[2].startOn, day("2026-05-29"));
    EXPECT_EQ(plan.items[4].startOn, day("2026-05-28"));
    EXPECT_TRUE(plan.items[0].isCritical && plan.items[1].isCritical && plan.items[2].isCritical);
    EXPECT_EQ(plan.items[3].totalFloat, 1000);
    EXPECT_EQ(plan.items[3].freeFloat, 0);
    EXPECT_EQ(plan.items[4].freeFloat, 1000);
    EXPECT_TRUE(plan.items[3].isNearCritical);
    EXPECT_EQ(plan.items[3].latestStartOn, day("2026-05-26"));
    EXPECT_EQ(plan.items[3].latestFinishOn, day("2026-05-28"));
    EXPECT_EQ(plan.driving, (std::vector<std::size_t>{0, 1, 2}));
    EXPECT_EQ(plan.items[2].hold, Hold::Link);
    EXPECT_EQ(plan.items[2].heldBy, 1U);
    EXPECT_EQ(plan.items[0].hold, Hold::Nothing);
}

TEST(Plan, HolidaysAndHalfDaysOffPushWhatComesAfter) {
    Chain job;
    job.rows.job.holidays = {day("2026-05-25")};
    job.rows.job.halfDays = {day("2026-05-27")};
    // Tile: Tue, and one day more: half of Wednesday, half of Thursday. Vanity: Thu noon to Fri
    // noon. A day's wait: Mon noon. Toilet: Mon noon to Tue noon, 2 June.
    const Plan plan = job.plan();
    EXPECT_EQ(plan.items[0].finishOn, day("2026-05-28"));
    EXPECT_EQ(plan.items[1].startOn, day("2026-05-28"));
    EXPECT_EQ(plan.items[1].finishOn, day("2026-05-29"));
    EXPECT_EQ(plan.items[2].startOn, day("2026-06-01"));
    EXPECT_EQ(plan.on, day("2026-06-02"));
}

TEST(Plan, FloatIsNearCriticalUpToTwoDays) {
    PlannedJob job;
    job.of("long", "5");
    job.of("two", "3");
    job.of("more", "2.999");
    const Plan plan = job.plan();
    EXPECT_FALSE(plan.items[0].isNearCritical);
    EXPECT_TRUE(plan.items[1].isNearCritical);
    EXPECT_FALSE(plan.items[2].isNearCritical);
}

TEST(Plan, OrderByLeavesTimeForTheLeadAndToLookThemOver) {
    PlannedJob job;
    job.of("rough", "15");
    job.of("cabinets", "2").leadDays = 10;
    job.link(1, 2);
    // Rough: 25 May to Friday 12 June. Cabinets: Monday 15 June less 10, less 3: 2 June.
    const Plan plan = job.plan();
    EXPECT_EQ(plan.items[1].startOn, day("2026-06-15"));
    EXPECT_EQ(plan.items[1].orderBy, day("2026-06-02"));
    EXPECT_EQ(plan.items[1].hold, Hold::Link);
    EXPECT_EQ(plan.checkDays, 3);
    EXPECT_FALSE(plan.items[0].orderBy);
    Delivery& delivery = job.add(job.rows.deliveries);
    delivery.item = id<Kind::Item>(2);
    delivery.orderedOn = day("2026-05-20");
    EXPECT_FALSE(job.plan().items[1].orderBy);
    EXPECT_EQ(job.plan().items[1].goodsOn, day("2026-05-30"));
}

TEST(Plan, AnOrderThatIsLateIsDueTomorrowAndHoldsItsItem) {
    PlannedJob job;
    Item& item = job.of("cabinets", "2");
    item.leadDays = 10;
    item.orderOn = day("2026-05-01");
    const Plan plan = job.plan();
    // Saturday + 10 + 3 = Friday 5 June.
    EXPECT_EQ(plan.items[0].orderBy, day("2026-05-23"));
    EXPECT_EQ(plan.items[0].startOn, day("2026-06-05"));
    EXPECT_EQ(plan.items[0].hold, Hold::Order);
    EXPECT_FALSE(plan.items[0].goodsOn);
}

TEST(Plan, TheDrivingChainBeginsWithWhatIsPastWhereThatHolds) {
    PlannedJob job;
    job.of("slab", "1");
    job.of("walls", "2");
    job.mark(1, "2026-05-21", "100");
    job.link(1, 2, "4");
    const Plan plan = job.plan();
    EXPECT_EQ(plan.driving, (std::vector<std::size_t>{0, 1}));
    EXPECT_EQ(plan.items[1].startOn, day("2026-05-28"));
}

TEST(Plan, AnItemWithoutDaysPassesItsLinksOn) {
    PlannedJob job;
    job.of("walls", "3");
    job.item("inspect", "0");
    job.of("board", "2");
    job.link(1, 2);
    job.link(2, 3);
    const Plan plan = job.plan();
    EXPECT_EQ(plan.items[1].startOn, day("2026-05-27"));  // with the end of the walls
    EXPECT_EQ(plan.items[1].finishOn, day("2026-05-27"));
    EXPECT_EQ(plan.items[2].startOn, day("2026-05-28"));
    EXPECT_EQ(plan.withoutDays, 1U);
    EXPECT_FALSE(plan.items[1].hasDays);
}

TEST(Plan, ALoopIsToldByNamesAndLeavesNoDates) {
    PlannedJob job;
    job.of("tile", "1");
    job.of("vanity", "1");
    job.link(1, 2);
    job.link(2, 1);
    const Plan plan = job.plan();
    EXPECT_EQ(plan.loop, (std::vector<std::size_t>{0, 1}));
    EXPECT_EQ(loopText(plan, job.figures()), "tile > vanity > tile");
    EXPECT_FALSE(plan.on);
    EXPECT_FALSE(plan.items[0].startOn);
    EXPECT_EQ(loopText(Chain().plan(), Chain().figures()), "");
}

TEST(Plan, NothingIsPlannedInThePast) {
    PlannedJob job;
    job.of("walls", "2").plannedStartOn = day("2026-05-04");
    job.rows.items[0].plannedFinishOn = day("2026-05-05");
    EXPECT_EQ(job.plan().items[0].startOn, day("2026-05-25"));
}

}  // namespace
