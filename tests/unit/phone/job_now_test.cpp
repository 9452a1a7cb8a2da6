// Protects what the phone shows of the job: order of walking, what is left first, percents by
// budget for an owner and by days for a crew lead, the plan's notch, the level, and that a crew
// lead's view carries no figure of money. Expected figures are worked by hand beside each.
#include "mobile/now/job_now.h"

#include <gtest/gtest.h>

#include "tests/unit/phone/made_job.h"

namespace ledgerboard::phone {
namespace {

using model::Percent;
using tests::day;
using tests::MadeJob;

// Friday 15 May 2026.
const model::Date kToday = day(5, 15);

TEST(JobNow, SpacesStandInWalkingOrderAndWhatHasNoSpaceLast) {
    MadeJob made;
    const auto bath = made.space("Hall bath", 2).id;
    made.space("Kitchen", 1);
    made.item("tub", bath, 100);
    made.item("permits", {}, 100);
    const auto now = jobNowOf(made.rows, kToday, true);
    ASSERT_EQ(now->spaces.size(), 3u);
    EXPECT_EQ(now->spaces[0].name, "Kitchen");
    EXPECT_EQ(now->spaces[0].shortName, "KI");
    EXPECT_EQ(now->spaces[1].name, "Hall bath");
    EXPECT_EQ(now->spaces[1].shortName, "HB");
    EXPECT_EQ(now->spaces[2].name, "");
    EXPECT_TRUE(now->spaces[2].id.isNil());
}

TEST(JobNow, WhatIsLeftComesFirstThenFinishedThenKept) {
    MadeJob made;
    const auto bath = made.space("Hall bath", 1).id;
    made.item("mirror", bath, 0).treatment = model::Treatment::Keep;
    const auto tub = made.item("tub", bath, 100).id;
    made.item("vanity", bath, 100).plannedStartOn = day(5, 20);
    made.item("tile", bath, 100).plannedStartOn = day(5, 12);
    made.mark(tub, 100, day(5, 8));
    const auto now = jobNowOf(made.rows, kToday, true);
    std::vector<std::string> order;
    for (const auto& item : now->spaces[0].items) {
        order.push_back(now->rows.items[item.row].object);
    }
    EXPECT_EQ(order, (std::vector<std::string>{"tile", "vanity", "tub", "mirror"}));
    EXPECT_EQ(now->spaces[0].counted, 3u);
    EXPECT_EQ(now->spaces[0].finished, 1u);
    EXPECT_EQ(now->spaces[0].toStart, 2u);
}

// 300 at 100 % and 100 at 20 %: (300 + 20) / 400 = 80 %.
TEST(JobNow, AnOwnersSpaceIsWeighedByBudget) {
    MadeJob made;
    const auto bath = made.space("Hall bath", 1).id;
    const auto tub = made.item("tub", bath, 300).id;
    const auto tile = made.item("tile", bath, 100).id;
    made.mark(tub, 100, day(5, 8));
    made.mark(tile, 20, day(5, 8));
    EXPECT_EQ(jobNowOf(made.rows, kToday, true)->spaces[0].shown, Percent::of(80));
}

// The tub takes 1 day and the tile 4: (1 x 100 + 4 x 20) / 5 = 36 %. The neighbour's item, which
// names no crew on a crew lead's phone, is in no count.
TEST(JobNow, ACrewLeadsSpaceIsWeighedByDaysOverItsOwnItems) {
    MadeJob made;
    const auto bath = made.space("Hall bath", 1).id;
    const auto crew = tests::idOf<model::Kind::Crew>(1);
    auto& tub = made.item("tub", bath, 300);
    tub.crew = crew;
    tub.daysLikely = model::Quantity::of(1);
    const auto tubId = tub.id;
    auto& tile = made.item("tile", bath, 100);
    tile.crew = crew;
    tile.daysLikely = model::Quantity::of(4);
    const auto tileId = tile.id;
    made.item("wiring", bath, 900);
    made.mark(tubId, 100, day(5, 8));
    made.mark(tileId, 20, day(5, 8));
    const auto now = jobNowOf(made.rows, kToday, false);
    EXPECT_EQ(now->spaces[0].shown, Percent::of(36));
    EXPECT_EQ(now->spaces[0].counted, 2u);
    EXPECT_FALSE(now->figures.has_value());
    EXPECT_FALSE(now->level.has_value());
}

TEST(JobNow, AWholeSpaceIsFinishedOnlyWhenEachItemIs) {
    MadeJob made;
    const auto bath = made.space("Hall bath", 1).id;
    const auto tub = made.item("tub", bath, 300).id;
    made.item("haul away", bath, 0);  // weighs nothing, and is still to be done
    made.mark(tub, 100, day(5, 8));
    const auto now = jobNowOf(made.rows, kToday, true);
    EXPECT_FALSE(now->spaces[0].isFinished());
    EXPECT_LT(now->spaces[0].shown, Percent::whole());
}

// Monday 11 to Friday 22 May is ten working days, of which five are over on the 15th: 50 %.
TEST(JobNow, ThePlanRunsEvenlyOverWorkingDays) {
    MadeJob made;
    const auto bath = made.space("Hall bath", 1).id;
    auto& tile = made.item("tile", bath, 100);
    tile.plannedStartOn = day(5, 11);
    tile.plannedFinishOn = day(5, 22);
    made.item("mirror", bath, 100);
    const auto now = jobNowOf(made.rows, kToday, true);
    ASSERT_TRUE(now->spaces[0].items[0].plan.has_value());
    EXPECT_EQ(*now->spaces[0].items[0].plan, Percent::of(50));
    EXPECT_FALSE(now->spaces[0].items[1].plan.has_value());
    // Weighed over both items: (50 + 0) / 2.
    EXPECT_EQ(now->spaces[0].plan, Percent::of(25));
}

// A budget of 1,000 and an estimate of 1,010 to finish: 10 over. Hairlines at 2 % are 20 away; with
// no contingency the ends are twice that, 40: lean 0.25, hair 0.5.
TEST(JobNow, TheBubbleDriftsTowardMore) {
    MadeJob made;
    const auto bath = made.space("Hall bath", 1).id;
    made.item("tile", bath, 1000).estimateToFinish = model::Money::of(1010);
    const auto now = jobNowOf(made.rows, kToday, true);
    ASSERT_TRUE(now->level.has_value());
    EXPECT_EQ(now->level->over, model::Money::of(10));
    EXPECT_DOUBLE_EQ(now->level->lean, 0.25);
    EXPECT_DOUBLE_EQ(now->level->hair, 0.5);
}

TEST(JobNow, AnEmptyJobHasNothingToShow) {
    const auto now = jobNowOf(MadeJob().rows, kToday, true);
    EXPECT_TRUE(now->spaces.empty());
    EXPECT_FALSE(now->level.has_value());
    EXPECT_EQ(findItem(*now, tests::idOf<model::Kind::Item>(1)).item, nullptr);
}

}  // namespace
}  // namespace ledgerboard::phone
