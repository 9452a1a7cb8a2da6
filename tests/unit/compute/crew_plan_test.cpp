// Protects that a crew plan keeps every rule whatever the job looks like, what it tells beside the
// dates, and what it refuses. That it is short is protected in tests/outside.
#include "core/compute/crew_plan.h"

#include <algorithm>
#include <cstdlib>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <limits>
#include <numeric>

#include "core/compute/stacked.h"

#include "tests/support/crew_jobs.h"

namespace ledgerboard::compute {
namespace {

using testing::HasSubstr;

CrewPlanInput twoBaths() {
    CrewPlanInput input;
    input.crews = {{"tile", 1}};
    input.items = {{"hall bath", {4000, 0, {}}, {{0}}, {}},
                   {"main bath", {3000, 0, {}}, {{0}}, {}}};
    return input;
}

CrewPlan planOf(const CrewPlanInput& input, std::int64_t tries = 300, std::uint64_t seed = 1) {
    auto plan = crewPlan(input, {tries, seed, {}});
    EXPECT_TRUE(plan.ok()) << plan.error().message;
    return plan.ok() ? plan.value() : CrewPlan{};
}

std::string refusal(const CrewPlanInput& input) {
    const auto plan = crewPlan(input, {100, 1, {}});
    return plan.ok() ? "" : plan.error().message;
}

TEST(CrewPlan, TwoBathsByOneCrewByHand) {
    const CrewPlan plan = planOf(twoBaths());
    EXPECT_EQ(plan.length, 7000);
    EXPECT_EQ(plan.lowerBound, 7000);
    EXPECT_TRUE(plan.isShortest());
    EXPECT_EQ(plan.withoutCrews, 4000);
    EXPECT_EQ(plan.plainLength, 7000);
    EXPECT_EQ(plan.tries, 1);
}

TEST(CrewPlan, NothingToPlan) {
    const CrewPlan plan = planOf({});
    EXPECT_EQ(plan.length, 0);
    EXPECT_EQ(plan.lowerBound, 0);
    EXPECT_TRUE(plan.starts.empty());
}

// Times with no common measure: 1.337 + 0.5 days of one crew.
TEST(CrewPlan, AnyFractionOfADay) {
    CrewPlanInput input = twoBaths();
    input.items[0].activity.duration = 1337;
    input.items[1].activity.duration = 500;
    EXPECT_EQ(planOf(input).length, 1837);
    EXPECT_EQ(planOf(input).lowerBound, 1837);
}

TEST(CrewPlan, EarliestStartsHold) {
    CrewPlanInput input = twoBaths();
    input.items[0].activity.release = 2000;
    const CrewPlan plan = planOf(input);  // 3 days first, then 4; or 2 to 6, and 3 more: 7 or 9
    EXPECT_EQ(plan.length, 7000);
    EXPECT_EQ(plan.starts, (std::vector<std::int64_t>{3000, 0}));
    input.items[0].activity.release = -5000;
    EXPECT_EQ(planOf(input).length, 7000);
}

// 60 jobs of all kinds (600 and larger ones with LEDGERBOARD_LONG=1): links, capacities, spaces and
// earliest starts hold; never longer than the plain list, never below the bound, nothing stacked;
// the same seed gives the same plan.
TEST(CrewPlanProperty, EveryPlanKeepsEveryRule) {
    const char* asked = std::getenv("LEDGERBOARD_LONG");
    const bool isLong = asked != nullptr && std::string(asked) == "1";
    for (std::uint64_t seed = 1; seed <= (isLong ? 600U : 60U); ++seed) {
        SCOPED_TRACE(seed);
        SeededNumbers chance(seed);
        tests::CrewJobShape shape;
        shape.items = 1 + chance.below(isLong ? 30 : 16);
        shape.crews = 1 + chance.below(4);
        shape.spaces = chance.below(3);
        const CrewPlanInput input = tests::crewJobByChance(chance, shape);
        const CrewPlan plan = planOf(input, 150, seed);
        EXPECT_EQ(tests::brokenRule(input, plan.starts), "");
        EXPECT_EQ(tests::lengthOf(input, plan.starts), plan.length);
        EXPECT_LE(plan.length, plan.plainLength);
        EXPECT_GE(plan.length, plan.lowerBound);
        EXPECT_GE(plan.lowerBound, plan.withoutCrews);
        EXPECT_TRUE(stackedIn(input, plan.starts).empty());
        EXPECT_EQ(planOf(input, 150, seed).starts, plan.starts);
    }
}

// Without crews and spaces it is the critical path.
TEST(CrewPlanProperty, WithoutCrewsAsTheCriticalPath) {
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        SeededNumbers chance(seed);
        tests::CrewJobShape shape;
        shape.items = 15;
        CrewPlanInput input = tests::crewJobByChance(chance, shape);
        std::vector<Activity> activities;
        for (CrewedItem& item : input.items) {
            activities.push_back(item.activity);
        }
        const std::int64_t length = Network(activities, input.precedences).times().length;
        EXPECT_EQ(planOf(input, 50).withoutCrews, length) << seed;
        for (CrewedItem& item : input.items) {
            item.needs.clear();
            item.space.reset();
        }
        const CrewPlan plan = planOf(input, 50);
        EXPECT_EQ(plan.length, length) << seed;
        EXPECT_EQ(plan.tries, 1) << seed;
    }
}

// The order in which items are entered is no rule: shuffled, the plan keeps every rule, and what is
// proven about the length is the same.
TEST(CrewPlanProperty, AnyOrderOfItems) {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        SCOPED_TRACE(seed);
        SeededNumbers chance(seed);
        const CrewPlanInput input = tests::crewJobByChance(chance, {});
        std::vector<std::size_t> to(input.items.size());
        std::iota(to.begin(), to.end(), std::size_t{0});
        for (std::size_t k = to.size(); k > 1; --k) {
            std::swap(to[k - 1], to[chance.below(k)]);
        }
        CrewPlanInput shuffled = input;
        for (std::size_t k = 0; k < to.size(); ++k) {
            shuffled.items[to[k]] = input.items[k];
        }
        for (Precedence& link : shuffled.precedences) {
            link.from = to[link.from];
            link.to = to[link.to];
        }
        const CrewPlan plan = planOf(input, 400);
        const CrewPlan other = planOf(shuffled, 400);
        EXPECT_EQ(tests::brokenRule(shuffled, other.starts), "");
        EXPECT_EQ(other.withoutCrews, plan.withoutCrews);
        EXPECT_LE(other.lowerBound, plan.length);
        EXPECT_LE(plan.lowerBound, other.length);
    }
}

TEST(CrewPlan, RefusesWhatCannotBe) {
    CrewPlanInput input = twoBaths();
    input.items[1].needs[0].places = 2;
    EXPECT_THAT(refusal(input),
                HasSubstr(R"(item "main bath" uses 2 of "tile", which has only 1)"));
    input.items[1].needs[0].places = 0;
    EXPECT_THAT(refusal(input), HasSubstr(R"(item "main bath" uses 0 of "tile")"));
    input.items[1].needs = {{0}, {0}};
    EXPECT_THAT(refusal(input), HasSubstr(R"(item "main bath" uses "tile" twice)"));
    input.items[1].needs = {{7}};
    EXPECT_THAT(refusal(input), HasSubstr(R"(item "main bath" uses a crew that is not there)"));

    input = twoBaths();
    input.items[0].space = 0;
    EXPECT_THAT(refusal(input), HasSubstr(R"(item "hall bath" is in a space that is not there)"));
    input = twoBaths();
    input.items[0].activity.duration = -1;
    EXPECT_THAT(refusal(input), HasSubstr(R"(item "hall bath" has fewer than 0 days)"));
    input = twoBaths();
    input.crews[0].capacity = -1;
    EXPECT_THAT(refusal(input), HasSubstr(R"(the capacity of "tile" is -1)"));
    input.crews[0].capacity = 0;
    EXPECT_THAT(refusal(input), HasSubstr(R"(uses 1 of "tile", which has only 0)"));
    input = twoBaths();
    input.precedences = {{0, 5}};
    EXPECT_THAT(refusal(input), HasSubstr("a link names an item that is not there"));
    input.precedences = {{0, 1}, {1, 0}};
    EXPECT_THAT(refusal(input), HasSubstr(R"("hall bath" > "main bath" > "hall bath")"));
}

TEST(CrewPlan, RefusesWhatIsTooMuch) {
    constexpr std::int64_t kMost = std::numeric_limits<std::int64_t>::max();
    for (const std::int64_t days : {std::int64_t{10'000'000'000'001}, kMost}) {
        CrewPlanInput input = twoBaths();
        input.items[0].activity.duration = days;
        EXPECT_THAT(refusal(input), HasSubstr("too long to add up"));
        input = twoBaths();
        input.items[0].activity.release = days;
        EXPECT_THAT(refusal(input), HasSubstr("too long to add up"));
        input = twoBaths();
        input.precedences = {{0, 1, model::LinkKind::FinishToStart, -days}};
        EXPECT_THAT(refusal(input), HasSubstr("too long to add up"));
    }
    CrewPlanInput input;
    input.items.resize(kMostCrewItems + 1);
    EXPECT_THAT(refusal(input), HasSubstr("at most 2000 items; these are 2001"));
}

}  // namespace
}  // namespace ledgerboard::compute
