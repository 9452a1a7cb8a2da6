// Protects the network of activities: each kind of link against a calculation by hand written
// beside it, the rules for milestones, releases, deadlines and loops, and, over generated networks,
// that nothing starts before what it waits for, floats mean what they say, and the order in which
// the activities are given changes nothing. Published networks are in tests/outside.
#include "core/compute/network.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <limits>
#include <numeric>
#include <random>
#include <rapidcheck/gtest.h>

#include "core/model/overflow.h"

namespace {

using namespace ledgerboard::compute;
using ledgerboard::model::LinkKind;

constexpr std::int64_t kDay = 1000;
constexpr std::int64_t kMost = std::numeric_limits<std::int64_t>::max();

constexpr auto kFinishToStart = LinkKind::FinishToStart;
constexpr auto kStartToStart = LinkKind::StartToStart;
constexpr auto kFinishToFinish = LinkKind::FinishToFinish;
constexpr auto kStartToFinish = LinkKind::StartToFinish;

Activity days(std::int64_t count) {
    return {count * kDay, 0, std::nullopt};
}

// A of `a` days and B of `b`, B waiting for A.
NetworkTimes pair(std::int64_t a, std::int64_t b, LinkKind kind, std::int64_t lag) {
    return Network({days(a), days(b)}, {{0, 1, kind, lag * kDay}}).times();
}

TEST(Network, EachKindOfLinkHoldsItsOwnEnds) {
    // A 0 to 5 in each. B of 3 starts 2 days after A has finished.
    EXPECT_EQ(pair(5, 3, kFinishToStart, 2).activities[1].es, 7 * kDay);
    // B starts 2 days after A has started: 2 to 5.
    EXPECT_EQ(pair(5, 3, kStartToStart, 2).activities[1].es, 2 * kDay);
    // B finishes 2 days after A has: at 7, so it starts at 4.
    EXPECT_EQ(pair(5, 3, kFinishToFinish, 2).activities[1].es, 4 * kDay);
    // B finishes no sooner than 8 days after A has started: it starts at 5.
    EXPECT_EQ(pair(5, 3, kStartToFinish, 8).activities[1].es, 5 * kDay);
    EXPECT_EQ(pair(5, 3, LinkKind::Unset, 2).activities[1].es, 7 * kDay);
}

TEST(Network, NothingStartsBeforeTheWorkBegins) {
    // B would start 4 days before A begins; it starts with it, and has 5 days of its own then.
    const NetworkTimes times = pair(1, 2, kFinishToStart, -5);
    EXPECT_EQ(times.activities[1].es, 0);
    EXPECT_EQ(times.length, 2 * kDay);
    // A may finish at the end, 2, though B could begin long before.
    EXPECT_EQ(times.activities[0].lf, 2 * kDay);
    EXPECT_EQ(times.activities[0].totalFloat, 1 * kDay);
    EXPECT_FALSE(times.activities[0].critical);
    EXPECT_EQ(Network({{kDay, -3 * kDay, std::nullopt}}, {}).times().activities[0].es, 0);
}

TEST(Network, FloatsOfAShortBranch) {
    // A2 then B5 and, beside B, C1 then D2; E1 ends both. A 0-2, B 2-7, C 2-3, D 3-5, E 7-8.
    // C and D may slip by 7 - 5 = 2; C alone by none without moving D, D by 2.
    const NetworkTimes times = Network({days(2), days(5), days(1), days(2), days(1)},
                                       {{0, 1}, {0, 2}, {2, 3}, {1, 4}, {3, 4}})
                                   .times();
    EXPECT_EQ(times.length, 8 * kDay);
    EXPECT_EQ(times.activities[2].totalFloat, 2 * kDay);
    EXPECT_EQ(times.activities[3].totalFloat, 2 * kDay);
    EXPECT_EQ(times.activities[2].freeFloat, 0);
    EXPECT_EQ(times.activities[3].freeFloat, 2 * kDay);
    EXPECT_EQ(times.activities[2].ls, 4 * kDay);
    EXPECT_EQ(times.activities[2].lf, 5 * kDay);
    EXPECT_TRUE(times.activities[1].critical);
    EXPECT_FALSE(times.activities[2].critical);
}

TEST(Network, AStartMayBeHeldWhileTheFinishIsFree) {
    // B starts with A (start to start), C of 1 ends 6 days after B has started. A4, B2.
    // A 0-4, B 0-2, C finishes at 6: 5-6. A's start is held by B's, which is held by C's finish.
    const NetworkTimes times = Network({days(4), days(2), days(1)},
                                       {{0, 1, kStartToStart, 0}, {1, 2, kStartToFinish, 6 * kDay}})
                                   .times();
    EXPECT_EQ(times.length, 6 * kDay);
    EXPECT_EQ(times.activities[0].totalFloat, 0);  // its finish could be at 6, its start not later
    EXPECT_EQ(times.activities[0].lf, 4 * kDay);
    EXPECT_EQ(times.activities[1].totalFloat, 0);
    EXPECT_EQ(times.activities[2].es, 5 * kDay);
}

TEST(Network, AReleaseHoldsTheStartAndLeavesFloatBeforeIt) {
    // A1, then B1 not before day 4: B 4-5, A has 3 days.
    const NetworkTimes times = Network({days(1), {kDay, 4 * kDay, std::nullopt}}, {{0, 1}}).times();
    EXPECT_EQ(times.activities[1].es, 4 * kDay);
    EXPECT_EQ(times.activities[0].totalFloat, 3 * kDay);
    EXPECT_EQ(times.activities[0].freeFloat, 3 * kDay);
    EXPECT_TRUE(times.activities[1].critical);
}

TEST(Network, ADeadlineMovesNoDateAndMakesFloatsSmaller) {
    // A3 then B2, wanted by 4: one day too late. C1 beside, wanted by 3.
    const NetworkTimes times =
        Network({days(3), {2 * kDay, 0, 4 * kDay}, {kDay, 0, 3 * kDay}}, {{0, 1}}).times();
    EXPECT_EQ(times.length, 5 * kDay);
    EXPECT_EQ(times.activities[1].ef, 5 * kDay);
    EXPECT_EQ(times.activities[1].totalFloat, -1 * kDay);
    EXPECT_EQ(times.activities[0].totalFloat, -1 * kDay);
    EXPECT_TRUE(times.activities[0].critical);
    EXPECT_EQ(times.activities[2].totalFloat, 2 * kDay);
    EXPECT_EQ(times.activities[2].freeFloat, 4 * kDay);
}

TEST(Network, MilestonesAndTheEmptyNetwork) {
    const NetworkTimes times = Network({days(0), days(2), days(0)}, {{0, 1}, {1, 2}}).times();
    EXPECT_EQ(times.length, 2 * kDay);
    EXPECT_EQ(times.activities[2].es, 2 * kDay);
    EXPECT_EQ(times.activities[2].ef, 2 * kDay);
    EXPECT_TRUE(times.activities[2].critical);
    const NetworkTimes none = Network({}, {}).times();
    EXPECT_EQ(none.length, 0);
    EXPECT_TRUE(none.activities.empty());
}

TEST(Network, TellsWhichLinkDrives) {
    // A2 and B3 both before C: B's link has no slack, A's has a day.
    const Network network({days(2), days(3), days(1)}, {{0, 2}, {1, 2}});
    std::vector<std::int64_t> start(3);
    std::vector<std::int64_t> finish(3);
    EXPECT_EQ(network.forward(std::vector<std::int64_t>{2 * kDay, 3 * kDay, kDay}, start, finish),
              4 * kDay);
    ASSERT_EQ(network.into(2).size(), 2U);
    EXPECT_EQ(network.slack(network.into(2)[0], start, finish), kDay);
    EXPECT_EQ(network.slack(network.into(2)[1], start, finish), 0);
    EXPECT_TRUE(network.into(0).empty());
}

TEST(Network, OtherDurationsAndReleasesAreTimedWithoutBuildingAnew) {
    const Network network({days(2), days(3)}, {{0, 1}});
    std::vector<std::int64_t> start(2);
    std::vector<std::int64_t> finish(2);
    EXPECT_EQ(network.forward(std::vector<std::int64_t>{500, 1}, start, finish), 501);
    EXPECT_EQ(start[1], 500);
    const std::vector<std::int64_t> releases{0, 9 * kDay};
    EXPECT_EQ(network.forward(std::vector<std::int64_t>{500, 1}, releases, start, finish),
              9 * kDay + 1);
    EXPECT_EQ(network.times().length, 5 * kDay);
}

TEST(Network, ALoopIsReportedAsTheLoop) {
    // 0 > 1 > 2 > 3 > 1, and 4 waits for it.
    const std::vector<Precedence> ring{{0, 1}, {1, 2}, {2, 3}, {3, 1}, {3, 4}};
    EXPECT_EQ(findLoop(5, ring), (std::vector<std::size_t>{1, 2, 3}));
    const std::vector<Precedence> self{{1, 1}};
    EXPECT_EQ(findLoop(2, self), (std::vector<std::size_t>{1}));
    // There and back is a ring, though dates for it could be found.
    const std::vector<Precedence> back{{1, 0, kStartToStart, 0}, {0, 1, kFinishToFinish, 0}};
    EXPECT_EQ(findLoop(2, back), (std::vector<std::size_t>{0, 1}));
    // Two links the same way are none.
    const std::vector<Precedence> twice{{0, 1, kStartToStart, 0}, {0, 1, kFinishToFinish, 0}};
    EXPECT_TRUE(findLoop(2, twice).empty());
    EXPECT_TRUE(findLoop(0, {}).empty());
}

TEST(Network, WhatDoesNotFitIsAnError) {
    EXPECT_THROW((void)Network({{kMost, 0, {}}, {kMost, 0, {}}}, {{0, 1}}).times(),
                 ledgerboard::model::OverflowError);
    EXPECT_THROW((void)Network({{1, 0, {}}, {1, 0, {}}}, {{0, 1, kFinishToStart, kMost}}).times(),
                 ledgerboard::model::OverflowError);
    EXPECT_THROW((void)Network({{kMost, kMost, {}}}, {}).times(),
                 ledgerboard::model::OverflowError);
}

struct Drawn {
    std::vector<Activity> activities;
    std::vector<Precedence> precedences;
};

// Up to 25 activities; links go from a lower position to a higher one, so there is no loop.
Drawn drawn() {
    const auto count = *rc::gen::inRange<std::size_t>(1, 26);
    Drawn out;
    for (std::size_t k = 0; k < count; ++k) {
        out.activities.push_back({*rc::gen::inRange<std::int64_t>(0, 9000),
                                  *rc::gen::inRange<std::int64_t>(-500, 4000), std::nullopt});
    }
    const auto links = *rc::gen::inRange<std::size_t>(0, count > 1 ? 2 * count : 1);
    for (std::size_t k = 0; k < links; ++k) {
        const auto to = *rc::gen::inRange<std::size_t>(1, count);
        const auto from = *rc::gen::inRange<std::size_t>(0, to);
        const auto kind = static_cast<LinkKind>(*rc::gen::inRange(1, 5));
        out.precedences.push_back({from, to, kind, *rc::gen::inRange<std::int64_t>(-3000, 3000)});
    }
    return out;
}

bool holds(const Precedence& link, const std::vector<ActivityTimes>& times, bool late) {
    const ActivityTimes& a = times[link.from];
    const ActivityTimes& b = times[link.to];
    const bool fromStart = link.kind == kStartToStart || link.kind == kStartToFinish;
    const bool toStart = link.kind == kFinishToStart || link.kind == kStartToStart;
    const std::int64_t from = late ? (fromStart ? a.ls : a.lf) : (fromStart ? a.es : a.ef);
    const std::int64_t to = late ? (toStart ? b.ls : b.lf) : (toStart ? b.es : b.ef);
    return to >= from + link.lag;
}

RC_GTEST_PROP(NetworkProperty, EveryLinkHoldsEarlyAndLateAndFloatIsNeverBelowZero, ()) {
    const Drawn drawn = ::drawn();
    const NetworkTimes times = Network(drawn.activities, drawn.precedences).times();
    bool someCritical = false;
    for (std::size_t k = 0; k < drawn.activities.size(); ++k) {
        const ActivityTimes& one = times.activities[k];
        RC_ASSERT(one.es >= 0 && one.es >= drawn.activities[k].release);
        RC_ASSERT(one.ef == one.es + drawn.activities[k].duration);
        RC_ASSERT(one.lf == one.ls + drawn.activities[k].duration);
        RC_ASSERT(one.lf <= times.length);
        RC_ASSERT(one.totalFloat >= 0);
        RC_ASSERT(one.freeFloat >= 0 && one.freeFloat <= one.totalFloat);
        RC_ASSERT(one.critical == (one.totalFloat == 0));
        someCritical = someCritical || one.critical;
    }
    RC_ASSERT(someCritical);
    for (const Precedence& link : drawn.precedences) {
        RC_ASSERT(holds(link, times.activities, false));
        RC_ASSERT(holds(link, times.activities, true));
    }
}

// The meaning of float, tried: held back by its total float, an activity leaves the length as it
// is, and by one more it does not; held back by its free float, it moves nothing else.
RC_GTEST_PROP(NetworkProperty, FloatIsHowFarAnActivityMaySlip, ()) {
    const Drawn drawn = ::drawn();
    const NetworkTimes times = Network(drawn.activities, drawn.precedences).times();
    const auto at = *rc::gen::inRange<std::size_t>(0, drawn.activities.size());
    const auto heldUntil = [&](std::int64_t start) {
        auto activities = drawn.activities;
        activities[at].release = start;
        return Network(activities, drawn.precedences).times();
    };
    const ActivityTimes& one = times.activities[at];
    RC_ASSERT(heldUntil(one.ls).length == times.length);
    RC_ASSERT(heldUntil(one.ls + 1).length > times.length);
    const NetworkTimes freely = heldUntil(one.es + one.freeFloat);
    for (std::size_t k = 0; k < drawn.activities.size(); ++k) {
        RC_ASSERT(k == at || freely.activities[k].es == times.activities[k].es);
    }
}

RC_GTEST_PROP(NetworkProperty, TheOrderInWhichActivitiesAreGivenChangesNothing, ()) {
    const Drawn drawn = ::drawn();
    std::vector<std::size_t> to(drawn.activities.size());
    std::iota(to.begin(), to.end(), 0U);
    std::mt19937 chance(*rc::gen::arbitrary<std::uint32_t>());
    std::shuffle(to.begin(), to.end(), chance);
    Drawn moved = drawn;
    for (std::size_t k = 0; k < to.size(); ++k) {
        moved.activities[to[k]] = drawn.activities[k];
    }
    for (Precedence& link : moved.precedences) {
        link.from = to[link.from];
        link.to = to[link.to];
    }
    std::shuffle(moved.precedences.begin(), moved.precedences.end(), chance);
    const NetworkTimes a = Network(drawn.activities, drawn.precedences).times();
    const NetworkTimes b = Network(moved.activities, moved.precedences).times();
    RC_ASSERT(a.length == b.length);
    for (std::size_t k = 0; k < to.size(); ++k) {
        RC_ASSERT(a.activities[k].es == b.activities[to[k]].es);
        RC_ASSERT(a.activities[k].ls == b.activities[to[k]].ls);
        RC_ASSERT(a.activities[k].freeFloat == b.activities[to[k]].freeFloat);
    }
}

}  // namespace
