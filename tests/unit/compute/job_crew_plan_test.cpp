// Protects the plan of a job by crews: who shares a crew or a space, when that makes the job
// finish, and who would be wanted twice. Days are counted by hand on the calendar of May and June
// 2026 (the 22nd, today, is a Friday; work goes on on Monday the 25th, and no holiday is entered).
#include "core/compute/job_crew_plan.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;
using testing::ElementsAre;
using testing::HasSubstr;

const Date kToday = day("2026-05-22");

struct CrewedJob : SampleJob {
    Item& of(std::string_view object, std::string_view days, std::uint32_t crew = 0,
             std::uint32_t space = 0) {
        Item& added = item(object, "1000");
        added.daysLikely = amountOf(days);
        if (crew > 0) {
            added.crew = id<Kind::Crew>(crew);
        }
        if (space > 0) {
            added.space = id<Kind::Space>(space);
        }
        return added;
    }

    Crew& crew(std::string_view name) {
        Crew& crew = add(rows.crews);
        crew.name = name;
        return crew;
    }

    Space& oneCrewSpace(std::string_view name) {
        Space& space = add(rows.spaces);
        space.name = name;
        space.oneCrewAtATime = true;
        return space;
    }

    void link(std::uint32_t from, std::uint32_t to) {
        Link& link = add(rows.links);
        link.fromItem = id<Kind::Item>(from);
        link.toItem = id<Kind::Item>(to);
        link.type = LinkKind::FinishToStart;
    }

    [[nodiscard]] Result<JobCrewPlan> tried() const {
        const JobFigures figures = figuresOf(rows, kToday);
        return crewPlanOf(rows, figures, jobNetworkOf(rows, figures, kToday), {500, 1, {}});
    }

    [[nodiscard]] JobCrewPlan plan() const {
        auto plan = tried();
        EXPECT_TRUE(plan.ok()) << plan.error().message;
        return std::move(plan).value();
    }
};

TEST(JobCrewPlan, OfNothing) {
    const JobCrewPlan plan = CrewedJob().plan();
    EXPECT_TRUE(plan.items.empty());
    EXPECT_FALSE(plan.on);
    EXPECT_TRUE(plan.stacked.empty());
}

// 3 and 4 days by one crew: Monday the 25th to Thursday the 28th without looking at crews; with
// them 7 days, to Tuesday June 2nd. Both want it for the first 3 days.
TEST(JobCrewPlan, OneCrewInTwoBaths) {
    CrewedJob job;
    job.crew("Tile crew");
    job.of("hall tile", "3", 1);
    job.of("main tile", "4", 1);
    const JobCrewPlan plan = job.plan();
    EXPECT_EQ(plan.plainOn, day("2026-05-28"));
    EXPECT_EQ(plan.on, day("2026-06-02"));
    EXPECT_EQ(plan.noSoonerThanOn, day("2026-06-02"));
    EXPECT_TRUE(plan.plan.isShortest());
    EXPECT_EQ(plan.plan.length, 7000);
    EXPECT_EQ(plan.crewsWithoutCapacity, 1U);
    EXPECT_EQ(plan.itemsWithoutCrew, 0U);
    ASSERT_EQ(plan.stacked.size(), 1U);
    EXPECT_EQ(plan.stacked[0].crew, 0U);
    EXPECT_EQ(plan.stacked[0].from, day("2026-05-25"));
    EXPECT_EQ(plan.stacked[0].to, day("2026-05-27"));
    EXPECT_EQ(plan.stacked[0].wanted, 2);
    EXPECT_EQ(plan.stacked[0].there, 1);
    EXPECT_THAT(plan.stacked[0].lines, ElementsAre(0, 1));
}

TEST(JobCrewPlan, ACapacityOfTwoIsEnoughForTwo) {
    CrewedJob job;
    job.crew("Tile crew").capacity = 2;
    job.of("hall tile", "3", 1);
    job.of("main tile", "4", 1);
    const JobCrewPlan plan = job.plan();
    EXPECT_EQ(plan.on, plan.plainOn);
    EXPECT_TRUE(plan.stacked.empty());
    EXPECT_EQ(plan.crewsWithoutCapacity, 0U);
}

TEST(JobCrewPlan, ACapacityOfNothingIsRefusedByName) {
    CrewedJob job;
    job.crew("Tile crew").capacity = 0;
    job.of("hall tile", "3", 1);
    const auto plan = job.tried();
    ASSERT_FALSE(plan.ok());
    EXPECT_EQ(plan.error().code, ErrorCode::CannotBeMet);
    EXPECT_THAT(plan.error().message, HasSubstr("\"Tile crew\" has work left"));
    job.mark(1, "2026-05-21", "100");  // nothing left for it
    EXPECT_TRUE(job.tried().ok());
}

// Three in a small bath, 2 + 3 + 1 days: two by crews of their own and one by nobody in particular.
TEST(JobCrewPlan, ASpaceThatTakesOneCrewAtATime) {
    CrewedJob job;
    job.crew("Tile crew");
    job.crew("Plumber");
    job.oneCrewSpace("Hall bath");
    job.of("tile", "2", 1, 1);
    job.of("vanity", "3", 2, 1);
    job.of("drying", "1", 0, 1);
    const JobCrewPlan plan = job.plan();
    EXPECT_EQ(plan.plan.length, 6000);
    EXPECT_EQ(plan.plainOn, day("2026-05-27"));
    EXPECT_EQ(plan.on, day("2026-06-01"));
    EXPECT_EQ(plan.oneCrewSpaces, 1U);
    EXPECT_EQ(plan.itemsWithoutCrew, 0U);  // drying waits for the space
    ASSERT_EQ(plan.stacked.size(), 1U);
    EXPECT_EQ(plan.stacked[0].space, 0U);
    EXPECT_EQ(plan.stacked[0].wanted, 3);
    job.rows.spaces[0].oneCrewAtATime = false;
    EXPECT_EQ(job.plan().on, day("2026-05-27"));
    EXPECT_EQ(job.plan().oneCrewSpaces, 0U);
}

// The same crew with capacity 2 works twice in the small bath.
TEST(JobCrewPlan, OneCrewTwiceInASmallSpace) {
    CrewedJob job;
    job.crew("Tile crew").capacity = 2;
    job.oneCrewSpace("Hall bath");
    job.of("tile", "2", 1, 1);
    job.of("floor", "3", 1, 1);
    EXPECT_EQ(job.plan().plan.length, 3000);
}

// Half of 4 days is left and counts 2; what is finished is out of it. A link still holds.
TEST(JobCrewPlan, WhatIsLeftCounts) {
    CrewedJob job;
    job.crew("Tile crew");
    job.of("done", "5", 1);
    job.of("half", "4", 1);
    job.of("next", "3", 1);
    job.of("after", "1", 1);
    job.link(2, 4);
    job.mark(1, "2026-05-20", "100");
    job.mark(2, "2026-05-20", "50");
    for (Item& item : job.rows.items) {
        item.actualStartOn = std::nullopt;
    }
    const JobCrewPlan plan = job.plan();
    ASSERT_EQ(plan.items.size(), 3U);
    EXPECT_EQ(plan.items[0].line, 1U);
    EXPECT_EQ(plan.plan.length, plan.plan.lowerBound);
    std::int64_t sum = 0;
    const JobFigures figures = figuresOf(job.rows, kToday);
    for (const JobActivity& activity : jobNetworkOf(job.rows, figures, kToday).activities) {
        sum += activity.left;
    }
    EXPECT_EQ(plan.plan.length, sum);  // one crew, so all of it one after another
    EXPECT_GT(plan.items[2].startOn, plan.items[0].finishOn);
}

// An item without days takes no time, wherever it is: it passes on what it waits for, and one that
// comes late does not make the plan longer. 2 days, then 3 after it: Friday the 29th.
TEST(JobCrewPlan, WithoutDaysItTakesNoTime) {
    CrewedJob job;
    job.crew("Tile crew");
    job.of("tile", "2", 1);
    job.item("choose grout", "10").crew = id<Kind::Crew>(1);
    job.of("grout", "3", 1);
    job.item("late", "10").plannedStartOn = day("2026-09-01");
    job.link(1, 2);
    job.link(2, 3);
    const JobCrewPlan plan = job.plan();
    EXPECT_EQ(plan.on, day("2026-05-29"));
    EXPECT_EQ(plan.plan.length, 5000);
    EXPECT_EQ(plan.withoutDays, 2U);
    ASSERT_EQ(plan.items.size(), 4U);
    EXPECT_EQ(plan.items[1].startOn, day("2026-05-26"));  // the end of what it waits for
    EXPECT_EQ(plan.items[3].startOn, day("2026-09-01"));
}

TEST(JobCrewPlan, StackedAloneIsTheSame) {
    CrewedJob job;
    job.crew("Tile crew");
    job.of("hall tile", "3", 1);
    job.of("main tile", "4", 1);
    job.of("paint", "4");
    const JobFigures figures = figuresOf(job.rows, kToday);
    const JobNetwork network = jobNetworkOf(job.rows, figures, kToday);
    const auto stacked = stackedDaysOf(job.rows, figures, network);
    ASSERT_EQ(stacked.size(), 1U);
    EXPECT_EQ(stacked[0].lines, job.plan().stacked[0].lines);
    EXPECT_EQ(stacked[0].to, day("2026-05-27"));
}

}  // namespace
