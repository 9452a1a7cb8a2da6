// Protects the exchange as a whole: whatever happened in between, once all devices have met the
// peer again they hold what their role may hold, all of it and nothing else, and nothing that was
// acknowledged is lost. How: worlds drawn from a seed (world.h). LEDGERBOARD_LONG=1 draws more and
// longer ones. A failure prints the seed and the shortest beginning of its history that fails.
#include <cstdlib>
#include <gtest/gtest.h>

#include "tests/sim/world.h"

namespace ledgerboard::sim {
namespace {

std::uint64_t numberFrom(const char* name, std::uint64_t otherwise) {
    const char* said = std::getenv(name);
    return said != nullptr ? std::strtoull(said, nullptr, 10) : otherwise;
}

// The fewest steps after which the world of `seed` fails, found by halving. Failing need not go
// hand in hand with length, so this is a short history, and mostly the shortest.
std::string shortestFailure(std::uint64_t seed, int steps) {
    int good = 0;
    int bad = steps;
    Outcome worst = World(seed).run(bad);
    while (bad - good > 1) {
        const int middle = good + (bad - good) / 2;
        Outcome outcome = World(seed).run(middle);
        if (outcome.failure.empty()) {
            good = middle;
        } else {
            bad = middle;
            worst = std::move(outcome);
        }
    }
    std::string text = "seed " + std::to_string(seed) + ", " + std::to_string(bad) +
                       " steps: " + worst.failure + "\n";
    const auto& history = worst.history;
    for (std::size_t k = history.size() > 40 ? history.size() - 40 : 0; k < history.size(); ++k) {
        text += "  " + std::to_string(k + 1) + " " + history[k] + "\n";
    }
    return text;
}

TEST(Simulation, DevicesAgreeWhateverHappened) {
    const int steps =
        static_cast<int>(numberFrom("LEDGERBOARD_STEPS", tests::isLong() ? 1'000 : 120));
    const std::uint64_t first = numberFrom("LEDGERBOARD_SEED", 1);
    const std::uint64_t count = numberFrom("LEDGERBOARD_SEEDS", tests::isLong() ? 200 : 20);
    Outcome sum;
    for (std::uint64_t seed = first; seed < first + count; ++seed) {
        const Outcome outcome = World(seed).run(steps);
        ASSERT_TRUE(outcome.failure.empty()) << shortestFailure(seed, steps);
        sum.entries += outcome.entries;
        sum.asides += outcome.asides;
        sum.renewed += outcome.renewed;
        sum.restamped += outcome.restamped;
        sum.dropped += outcome.dropped;
        sum.clashes += outcome.clashes;
        sum.restores += outcome.restores;
        sum.cuts += outcome.cuts;
    }
    std::cout << count << " worlds of " << steps << " steps: " << sum.entries << " entries, "
              << sum.cuts << " bad deliveries, " << sum.asides << " set aside, " << sum.dropped
              << " cells dropped, " << sum.restamped << " restamped, " << sum.renewed
              << " new identities, " << sum.clashes << " clashes, " << sum.restores
              << " restored peers\n";
    if (count >= 20) {
        for (const auto happened : {sum.asides, sum.dropped, sum.restamped, sum.renewed,
                                    sum.clashes, sum.restores, sum.cuts}) {
            EXPECT_GT(happened, 0u);  // otherwise nothing was tried
        }
    }
}

}  // namespace
}  // namespace ledgerboard::sim
