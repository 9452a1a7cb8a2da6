// Protects the exchange as a whole: whatever happened in between, once all devices have met the
// peer again they hold what their role may hold, all of it and nothing else, and nothing that was
// acknowledged is lost. How: worlds drawn from a seed (world.h). LEDGERBOARD_LONG=1 draws more and
// longer ones. A failure prints the seed and a short history that fails still: steps
// that it does not need are left out.
#include <cstdlib>
#include <gtest/gtest.h>
#include <iterator>
#include <numeric>
#include <sstream>

#include "tests/sim/world.h"

namespace ledgerboard::sim {
namespace {

std::uint64_t numberFrom(const char* name, std::uint64_t otherwise) {
    const char* said = std::getenv(name);
    return said != nullptr ? std::strtoull(said, nullptr, 10) : otherwise;
}

std::vector<int> firstSteps(int count) {
    std::vector<int> steps(static_cast<std::size_t>(count));
    std::iota(steps.begin(), steps.end(), 1);
    return steps;
}

// The steps without those from `from` on, `count` of them.
std::vector<int> without(const std::vector<int>& steps, std::size_t from, std::size_t count) {
    std::vector<int> fewer(steps.begin(), steps.begin() + static_cast<std::ptrdiff_t>(from));
    const std::size_t end = std::min(from + count, steps.size());
    fewer.insert(fewer.end(), steps.begin() + static_cast<std::ptrdiff_t>(end), steps.end());
    return fewer;
}

// What a failure says before it names the entry or the line.
std::string kindOf(const std::string& failure) {
    return failure.substr(0, failure.find(':'));
}

// A short history that fails: steps are left out, many at once and then fewer, as long as the rest
// still fails in the same way, until each that is left is needed or there were tries enough.
std::string shortestFailure(std::uint64_t seed, int count) {
    std::vector<int> steps = firstSteps(count);
    Outcome worst = World(seed).run(steps);
    int tries = 0;
    const auto triesEnough = static_cast<int>(numberFrom("LEDGERBOARD_TRIES", 400));
    for (std::size_t chunk = steps.size() / 2; chunk > 0 && tries < triesEnough;) {
        bool shorter = false;
        for (std::size_t from = 0; from < steps.size() && tries < triesEnough;) {
            const auto fewer = without(steps, from, chunk);
            Outcome outcome = World(seed).run(fewer);
            ++tries;
            if (kindOf(outcome.failure) != kindOf(worst.failure)) {
                from += chunk;
            } else {
                steps = fewer;
                worst = std::move(outcome);
                shorter = true;
            }
        }
        if (!shorter || chunk > 1) {
            chunk /= 2;
        }
    }
    std::string text = "seed " + std::to_string(seed) + ", " + std::to_string(steps.size()) +
                       " steps of " + std::to_string(count) + " fail still: " + worst.failure +
                       "\n";
    for (const auto& line : worst.history) {
        text += "  " + line + "\n";
    }
    return text;
}

// LEDGERBOARD_ONLY="3 17 21" does these steps of LEDGERBOARD_SEED alone, as a failure names them.
TEST(Simulation, TheStepsThatWereAskedFor) {
    const char* said = std::getenv("LEDGERBOARD_ONLY");
    if (said == nullptr) {
        GTEST_SKIP();
    }
    std::istringstream words(said);
    const std::vector<int> steps{std::istream_iterator<int>(words), {}};
    EXPECT_EQ(World(numberFrom("LEDGERBOARD_SEED", 1)).run(steps).failure, "");
}

// A world in another database than a file takes several times as long.
std::uint64_t mostSeeds() {
    const std::uint64_t files = tests::isLong() ? 2'000 : 200;
    return tests::bookPlace().isFile ? files : files / 20;
}

TEST(Simulation, DevicesAgreeWhateverHappened) {
    const int steps =
        static_cast<int>(numberFrom("LEDGERBOARD_STEPS", tests::isLong() ? 250 : 100));
    const std::uint64_t first = numberFrom("LEDGERBOARD_SEED", 1);
    const std::uint64_t count = numberFrom("LEDGERBOARD_SEEDS", mostSeeds());
    Outcome sum;
    for (std::uint64_t seed = first; seed < first + count; ++seed) {
        const Outcome outcome = World(seed).run(firstSteps(steps));
        ASSERT_TRUE(outcome.failure.empty()) << shortestFailure(seed, steps);
        sum.entries += outcome.entries;
        sum.asides += outcome.asides;
        sum.renewed += outcome.renewed;
        sum.restamped += outcome.restamped;
        sum.dropped += outcome.dropped;
        sum.clashes += outcome.clashes;
        sum.restores += outcome.restores;
        sum.cuts += outcome.cuts;
        sum.compacted += outcome.compacted;
    }
    std::cout << count << " worlds of " << steps << " steps: " << sum.entries << " entries, "
              << sum.cuts << " bad deliveries, " << sum.asides << " set aside, " << sum.dropped
              << " cells dropped, " << sum.restamped << " restamped, " << sum.renewed
              << " new identities, " << sum.clashes << " clashes, " << sum.restores
              << " restored peers, " << sum.compacted << " let go\n";
    if (count >= 20) {
        for (const auto happened : {sum.asides, sum.dropped, sum.restamped, sum.renewed,
                                    sum.clashes, sum.restores, sum.cuts, sum.compacted}) {
            EXPECT_GT(happened, 0u);  // otherwise nothing was tried
        }
    }
}

}  // namespace
}  // namespace ledgerboard::sim
