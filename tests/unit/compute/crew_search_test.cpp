// Protects the promises of the search: never longer than the plain list, the same for the same
// seed, no more tries than allowed, stopping when told. How good it is stands in tests/outside.
#include "core/compute/crew_search.h"

#include <gtest/gtest.h>

#include "core/compute/seeded_numbers.h"

namespace ledgerboard::compute {
namespace {

// 40 items on four crews, some waiting for others.
CrewProblem manyItems(std::uint64_t seed) {
    SeededNumbers chance(seed);
    CrewProblem out;
    out.capacities = {1, 2, 1, 3};
    for (std::size_t k = 0; k < 40; ++k) {
        CrewWork work;
        work.days = static_cast<CrewTime>(1 + chance.below(6));
        work.uses.push_back({static_cast<std::size_t>(chance.below(4)), 1, 0});
        for (std::size_t earlier = k < 6 ? 0 : k - 6; earlier < k; ++earlier) {
            if (chance.below(6) == 0) {
                work.after.push_back({earlier, out.items[earlier].days});
            }
        }
        out.items.push_back(work);
    }
    out.finish();
    return out;
}

TEST(CrewSearch, NeverLongerThanThePlainList) {
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        const CrewProblem problem = manyItems(seed);
        const CrewTime plain = plainCrewPlan(problem).length;
        for (const std::int64_t tries : {1, 2, 10, 35, 100}) {
            const CrewSearchResult found = searchCrewPlan(problem, {tries, seed, 0, {}});
            EXPECT_LE(found.length, plain);
            EXPECT_EQ(found.length, lengthOf(problem, found.starts));
            EXPECT_EQ(found.tries, tries);
        }
    }
}

TEST(CrewSearch, FindsMoreInMoreTries) {
    CrewTime few = 0;
    CrewTime many = 0;
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        const CrewProblem problem = manyItems(seed);
        few += searchCrewPlan(problem, {1, seed, 0, {}}).length;
        many += searchCrewPlan(problem, {500, seed, 0, {}}).length;
    }
    EXPECT_LT(many, few);
}

TEST(CrewSearch, SameSeedSamePlan) {
    const CrewProblem problem = manyItems(3);
    const CrewSearchResult one = searchCrewPlan(problem, {2000, 9, 0, {}});
    const CrewSearchResult again = searchCrewPlan(problem, {2000, 9, 0, {}});
    EXPECT_EQ(one.starts, again.starts);
    EXPECT_EQ(one.length, again.length);
}

TEST(CrewSearch, StopsWhenToldAndWhenShortEnough) {
    const CrewProblem problem = manyItems(4);
    int asked = 0;
    const CrewSearchResult stopped =
        searchCrewPlan(problem, {1'000'000, 1, 0, [&] { return ++asked <= 57; }});
    EXPECT_LE(stopped.tries, 58);
    EXPECT_GE(stopped.tries, 50);
    const CrewSearchResult refused =
        searchCrewPlan(problem, {1'000'000, 1, 0, [] { return false; }});
    EXPECT_EQ(refused.tries, 1);
    EXPECT_EQ(refused.starts, plainCrewPlan(problem).starts);
    const CrewSearchResult enough =
        searchCrewPlan(problem, {1'000'000, 1, plainCrewPlan(problem).length, {}});
    EXPECT_EQ(enough.tries, 1);
}

TEST(CrewSearch, NothingToDo) {
    const CrewProblem empty;
    EXPECT_EQ(searchCrewPlan(empty, {100, 1, 0, {}}).length, 0);
    EXPECT_EQ(plainCrewPlan(empty).length, 0);
}

}  // namespace
}  // namespace ledgerboard::compute
