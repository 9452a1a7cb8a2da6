// Protects how a list of items becomes a plan, on small plans worked by hand, forward and mirrored.
#include "core/compute/crew_scheme.h"

#include <gtest/gtest.h>

#include "core/compute/crew_problem.h"

namespace ledgerboard::compute {
namespace {

using Times = std::vector<CrewTime>;

CrewWork work(CrewTime days, std::vector<CrewUse> uses, std::vector<StartLag> after = {}) {
    CrewWork out;
    out.days = days;
    out.uses = std::move(uses);
    out.after = std::move(after);
    return out;
}

CrewProblem problem(std::vector<CrewWork> items, std::vector<std::int64_t> capacities) {
    CrewProblem out;
    out.items = std::move(items);
    out.capacities = std::move(capacities);
    out.finish();
    return out;
}

TEST(CrewUsage, FindsTheFirstGapThatIsLongEnough) {
    CrewUsage usage(2);
    EXPECT_EQ(usage.earliest(3, 4, {0, 2, 0}), 3);
    usage.take(2, 3, {0, 1, 0});  // 2 to 5
    usage.take(7, 2, {0, 2, 0});  // 7 to 9
    EXPECT_EQ(usage.earliest(0, 2, {0, 2, 0}), 0);
    EXPECT_EQ(usage.earliest(0, 3, {0, 2, 0}), 9);  // 5 to 7 is too short
    EXPECT_EQ(usage.earliest(0, 7, {0, 1, 0}), 0);
    EXPECT_EQ(usage.earliest(1, 7, {0, 1, 0}), 9);
    EXPECT_EQ(usage.earliest(1, 2, {0, 2, 0}), 5);
    EXPECT_EQ(usage.earliest(20, 1, {0, 2, 0}), 20);
    usage.clear();
    EXPECT_EQ(usage.earliest(2, 9, {0, 2, 0}), 2);
}

TEST(CrewUsage, OnePartyAtATime) {
    CrewUsage space(kNoLimit);
    space.take(0, 4, {0, 1, 1});
    EXPECT_EQ(space.earliest(0, 2, {0, 1, 1}), 0);
    EXPECT_EQ(space.earliest(0, 2, {0, 1, 2}), 4);
    space.take(2, 4, {0, 1, 1});  // the first party until 6
    EXPECT_EQ(space.earliest(0, 2, {0, 1, 2}), 6);
}

TEST(CrewUsage, FreeUntilLooksOnlyThatFar) {
    CrewUsage usage(1);
    usage.take(2, 1, {0, 1, 0});
    usage.take(6, 3, {0, 1, 0});
    EXPECT_EQ(usage.freeUntil(0, 6, {0, 1, 0}), 3);
    EXPECT_EQ(usage.freeUntil(0, 2, {0, 1, 0}), 0);
    EXPECT_EQ(usage.freeUntil(4, 7, {0, 1, 0}), 7);
}

// One crew; 3 days, then 2 days, then 1 day that waits for the first. By hand: in the order of the
// keys 0 to 3, 3 to 5, 5 to 6; with the last first it comes right after what it waits for.
TEST(SerialScheme, ByKeysAndLinks) {
    const CrewProblem one =
        problem({work(3, {{0}}), work(2, {{0}}), work(1, {{0}}, {{0, 3}})}, {1});
    SerialScheme scheme(one);
    EXPECT_EQ(scheme.place(Times{0, 1, 2}), 6);
    EXPECT_EQ(scheme.starts(), (Times{0, 3, 5}));
    EXPECT_EQ(scheme.place(Times{1, 2, 0}), 6);
    EXPECT_EQ(scheme.starts(), (Times{0, 4, 3}));
    EXPECT_EQ(scheme.place(Times{2, 0, 1}), 6);
    EXPECT_EQ(scheme.starts(), (Times{2, 0, 5}));
    EXPECT_EQ(scheme.passes(), 1);
}

TEST(SerialScheme, EarliestStartsAndTails) {
    CrewProblem one = problem({work(2, {{0}}), work(2, {{0}})}, {1});
    one.items[0].head = 3;
    one.items[1].tail = 9;
    SerialScheme scheme(one);
    EXPECT_EQ(scheme.place(Times{0, 1}), 11);  // the second still fits before the first
    EXPECT_EQ(scheme.starts(), (Times{3, 0}));
}

// The second may start up to 3 before the first. One crew: placed first, it goes to 0, and the
// first to 2, which is early enough.
TEST(SerialScheme, AnOverlapMayComeFirst) {
    const CrewProblem one = problem({work(4, {{0}}), work(2, {{0}}, {{0, -3}})}, {1});
    SerialScheme scheme(one);
    EXPECT_EQ(scheme.place(Times{1, 0}), 6);
    EXPECT_EQ(scheme.starts(), (Times{2, 0}));
}

// The first cannot start before 8, so the second must not start before 5: found out only once the
// first is placed, and placed anew. By hand: the second at 5 to 7, the first at 8.
TEST(SerialScheme, AnOverlapThatWasTooEarlyIsHeldBack) {
    const CrewProblem one =
        problem({work(8, {{1}}), work(4, {{0}, {1}}), work(2, {{0}}, {{1, -3}})}, {1, 1});
    SerialScheme scheme(one);
    EXPECT_EQ(scheme.place(Times{1, 2, 0}), 12);
    EXPECT_EQ(scheme.starts(), (Times{0, 8, 5}));
    EXPECT_EQ(scheme.passes(), 2);
}

// Mirrored and mirrored again is the same; a mirrored plan is a plan.
TEST(CrewProblem, MirrorsTimesAndLinks) {
    CrewProblem one = problem({work(3, {{0}}), work(2, {{0}}, {{0, 1}})}, {1});
    one.items[0].head = 4;
    const CrewProblem mirror = mirrorOf(one);
    ASSERT_EQ(mirror.items[0].after.size(), 1U);
    EXPECT_EQ(mirror.items[0].after[0].item, 1U);
    // S1 >= S0 + 1 with starts L - S' - days: S'0 >= S'1 + 1 + 2 - 3.
    EXPECT_EQ(mirror.items[0].after[0].lag, 0);
    EXPECT_EQ(mirror.items[0].tail, 4);
    const CrewProblem again = mirrorOf(mirror);
    EXPECT_EQ(again.items[1].after[0].lag, 1);
    EXPECT_EQ(again.items[0].head, 4);
    SerialScheme scheme(mirror);
    EXPECT_EQ(scheme.place(Times{1, 0}), 9);  // 2 + 3, and the 4 that come before
    EXPECT_EQ(scheme.starts(), (Times{2, 0}));
}

TEST(CrewProblem, TellsWhoCannotBeUnderWayTogether) {
    const CrewProblem one = problem({work(1, {{0, 2}}), work(1, {{0, 1}}), work(1, {{0, 2}}),
                                     work(1, {{1, 1, 1}}), work(1, {{1, 1, 2}})},
                                    {3, kNoLimit});
    EXPECT_FALSE(areApart(one, 0, 1));
    EXPECT_TRUE(areApart(one, 0, 2));
    EXPECT_TRUE(areApart(one, 3, 4));
    EXPECT_FALSE(areApart(one, 0, 3));
}

}  // namespace
}  // namespace ledgerboard::compute
