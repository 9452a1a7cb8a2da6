// Protects how near crew plans come to proven optima, on the 480 problems of PSPLIB's set j30
// (R. Kolisch, A. Sprecher, European Journal of Operational Research 96 (1996), 205 to 216). The
// files are not part of this project: LEDGERBOARD_PSPLIB names the folder they are in, with a table
// optimum.csv ("problem,optimum"); where it is not set, these tests are skipped and say so.
// Without LEDGERBOARD_LONG=1 only seven of them are planned: all 480 at 50,000 plans take some
// minutes even in a release build.
#include "tests/support/psplib.h"

#include <cstdlib>
#include <gtest/gtest.h>
#include <iostream>

#include "core/compute/crew_plan.h"

#include "tests/support/crew_jobs.h"

namespace {

namespace compute = ledgerboard::compute;
namespace tests = ledgerboard::tests;

std::string folder() {
    const char* named = std::getenv("LEDGERBOARD_PSPLIB");
    return named == nullptr ? "" : named;
}

bool isLong() {
    const char* asked = std::getenv("LEDGERBOARD_LONG");
    return asked != nullptr && std::string(asked) == "1";
}

// Mean over all problems of (length - optimum) / optimum, in percent. The optimum is not told to
// the search; it stops early only where its own bound proves the plan.
struct Deviation {
    double meanPercent = 0;
    int above = 0;  // problems
    int proven = 0;
};

Deviation deviationAt(std::int64_t tries, std::uint64_t seed) {
    Deviation out;
    const auto optima = tests::psplibOptima(folder());
    for (const auto& [name, optimum] : optima) {
        const auto input = tests::readPsplib(folder() + "/" + name);
        EXPECT_TRUE(input) << name;
        const auto plan = compute::crewPlan(*input, {tries, seed, {}});
        EXPECT_TRUE(plan.ok()) << name << ": " << plan.error().message;
        EXPECT_EQ(tests::brokenRule(*input, plan.value().starts), "") << name;
        EXPECT_EQ(tests::lengthOf(*input, plan.value().starts), plan.value().length) << name;
        EXPECT_GE(plan.value().length, optimum) << name;
        EXPECT_LE(plan.value().lowerBound, optimum) << name;
        EXPECT_LE(plan.value().tries, tries) << name;
        out.meanPercent += 100.0 * static_cast<double>(plan.value().length - optimum) /
                           static_cast<double>(optimum) / static_cast<double>(optima.size());
        out.above += plan.value().length > optimum ? 1 : 0;
        out.proven += plan.value().isShortest() ? 1 : 0;
    }
    std::cout << tries << " plans, seed " << seed << ": " << out.meanPercent
              << " % above the optimum in the mean; " << out.above << " of " << optima.size()
              << " above it, " << out.proven << " proven shortest\n";
    return out;
}

class Psplib : public testing::Test {
  protected:
    void SetUp() override {
        if (folder().empty()) {
            GTEST_SKIP() << "LEDGERBOARD_PSPLIB is not set: it names the folder with PSPLIB's j30";
        }
        ASSERT_EQ(tests::psplibOptima(folder()).size(), 480U) << "in " << folder();
    }
};

// Optima as in PSPLIB's own table of j30. Six of them are reached in 5,000 plans of this seed (of
// most others, j3013_1 is not); j3029_1 is one of the hardest of the set, and 5,000 plans
// come within two days of it.
TEST_F(Psplib, SevenOptima) {
    const std::map<std::string, std::int64_t> known = {
        {"j301_1.sm", 43},  {"j301_2.sm", 47},  {"j305_1.sm", 53},  {"j3013_1.sm", 58},
        {"j3029_1.sm", 85}, {"j3045_1.sm", 82}, {"j3048_10.sm", 54}};
    const auto optima = tests::psplibOptima(folder());
    for (const auto& [name, optimum] : known) {
        EXPECT_EQ(optima.at(name), optimum);
        const auto input = tests::readPsplib(folder() + "/" + name);
        ASSERT_TRUE(input) << name;
        const auto plan = compute::crewPlan(*input, {5000, 7, {}});
        ASSERT_TRUE(plan.ok()) << plan.error().message;
        EXPECT_LE(plan.value().lowerBound, optimum) << name;
        EXPECT_GE(plan.value().length, optimum) << name;
        EXPECT_LE(plan.value().length, optimum + (name == "j3029_1.sm" ? 2 : 0)) << name;
        EXPECT_EQ(tests::brokenRule(*input, plan.value().starts), "") << name;
    }
}

TEST_F(Psplib, MeanDeviationAt5000Plans) {
    if (!isLong()) {
        GTEST_SKIP() << "runs with LEDGERBOARD_LONG=1";
    }
    for (std::uint64_t seed = 1; seed <= 5; ++seed) {
        EXPECT_LE(deviationAt(5000, seed).meanPercent, 0.25) << "seed " << seed;
    }
}

TEST_F(Psplib, MeanDeviationAt50000Plans) {
    if (!isLong()) {
        GTEST_SKIP() << "runs with LEDGERBOARD_LONG=1";
    }
    for (std::uint64_t seed = 1; seed <= 3; ++seed) {
        EXPECT_LE(deviationAt(50'000, seed).meanPercent, 0.10) << "seed " << seed;
    }
}

}  // namespace
