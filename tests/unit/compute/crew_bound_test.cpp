// Protects that no plan is ever shorter than the bound, against trying every start, and that each
// reason it rests on is at work, on jobs whose shortest length is plain by hand.
#include "core/compute/crew_bound.h"

#include <gtest/gtest.h>

#include "tests/support/crew_jobs.h"

namespace ledgerboard::compute {
namespace {

struct Piece {
    CrewTime days;
    std::vector<CrewUse> uses;
    std::vector<StartLag> after = {};
    CrewTime head = 0;
    CrewTime tail = 0;
};

CrewProblem problem(const std::vector<Piece>& pieces, std::vector<std::int64_t> capacities) {
    CrewProblem out;
    out.capacities = std::move(capacities);
    for (const Piece& piece : pieces) {
        out.items.push_back({piece.days, piece.head, piece.tail, piece.after, {}, piece.uses});
    }
    out.finish();
    return out;
}

TEST(CrewBound, TheLongestChain) {
    EXPECT_EQ(crewLowerBound(problem({{3, {}}, {2, {}, {{0, 4}}}}, {}), 50), 6);
    EXPECT_EQ(crewLowerBound(CrewProblem{}, 0), 0);
}

// Never above the length of a plan that is known.
TEST(CrewBound, StopsAtTheKnownPlan) {
    EXPECT_EQ(crewLowerBound(problem({{3, {{0}}}, {4, {{0}}}}, {1}), 7), 7);
}

// Two items apart: 3 + 4.
TEST(CrewBound, TwoThatAreApart) {
    EXPECT_EQ(crewLowerBound(problem({{3, {{0, 2}}}, {4, {{0, 2}}}}, {3}), 50), 7);
}

// Five items of 3 days, two at a time: 15 crew-days on two are 7.5, so 8; whole, they take 9: two
// rounds of 3 leave one of 3.
TEST(CrewBound, CrewDays) {
    const std::vector<Piece> five(5, Piece{3, {{0, 1}}});
    const CrewTime bound = crewLowerBound(problem(five, {2}), 50);
    EXPECT_GE(bound, 8);
    EXPECT_LE(bound, 9);
}

// Three parties in one space are never there together: 2 + 3 + 4, with 1 before and 5 behind.
TEST(CrewBound, PartiesOfASpace) {
    EXPECT_EQ(crewLowerBound(problem({{2, {{0, 1, 1}}, {}, 1, 5},
                                      {3, {{0, 1, 2}}, {}, 1, 5},
                                      {4, {{0, 1, 3}}, {}, 1, 5}},
                                     {kNoLimit}),
                             50),
              15);
}

// The long one of 10 is under way from 2 to 8 whatever happens within 12, so two of 4 by the same
// crew do not fit beside it.
TEST(CrewBound, PartsThatAreUnderWayAnyhow) {
    const CrewProblem one = problem({{10, {{0, 1}}}, {4, {{0, 1}}}, {4, {{0, 1}}}, {12, {}}}, {1});
    EXPECT_EQ(crewLowerBound(one, 50), 18);
}

TEST(CrewBound, StopsWhenTold) {
    const CrewProblem one = problem({{3, {{0}}}, {4, {{0}}}, {5, {{0}}}}, {1});
    const CrewTime bound = crewLowerBound(one, 50, [] { return false; });
    EXPECT_GE(bound, 5);
    EXPECT_LE(bound, 12);
}

TEST(CrewBoundProperty, NeverAboveTheShortestPlan) {
    std::int64_t below = 0;
    for (std::uint64_t seed = 1000; seed < 1060; ++seed) {
        SeededNumbers chance(seed);
        tests::CrewJobShape shape;
        shape.items = 6;
        shape.mostDays = 4;
        const CrewPlanInput input = tests::crewJobByChance(chance, shape);
        const auto plan = crewPlan(input, {300, 1, {}});
        ASSERT_TRUE(plan.ok());
        const std::int64_t shortest = tests::EveryPlan(input).shortest();
        EXPECT_LE(plan.value().lowerBound, shortest) << seed;
        below += shortest - plan.value().lowerBound;
    }
    EXPECT_LE(below, 12);  // a fifth of a day in the mean: it is worth something
}

}  // namespace
}  // namespace ledgerboard::compute
