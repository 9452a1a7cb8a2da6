// What does timing a plan cost?
//
// Compared, each the median processor time of five repetitions, over made-up networks with two
// links an activity, of all four kinds:
//   buildAndTime   1,000 activities: finding a loop, building the network, all its times
//   timeAgain      80 activities: one forward pass with other durations, as a trial of risk does it
//   addUp          the same 80 durations only added up: the bare minimum
// Goal: buildAndTime at most 5 ms.
#include <benchmark/benchmark.h>
#include <numeric>
#include <random>

#include "core/compute/network.h"

#include "tests/bench/ratios.h"

namespace {

using namespace ledgerboard;

constexpr std::size_t kLarge = 1000;
constexpr std::size_t kSmall = 80;

struct Made {
    std::vector<compute::Activity> activities;
    std::vector<compute::Precedence> precedences;
};

Made made(std::size_t count) {
    std::mt19937 chance(20260525);
    Made out;
    for (std::size_t k = 0; k < count; ++k) {
        out.activities.push_back({static_cast<std::int64_t>(chance() % 9000), 0, std::nullopt});
        for (int link = 0; k > 0 && link < 2; ++link) {
            out.precedences.push_back({chance() % k, k,
                                       static_cast<model::LinkKind>(1 + chance() % 4),
                                       static_cast<std::int64_t>(chance() % 2000)});
        }
    }
    return out;
}

void buildAndTime(benchmark::State& state) {
    const Made made = ::made(kLarge);
    for (auto _ : state) {
        if (!compute::findLoop(kLarge, made.precedences).empty()) {
            state.SkipWithError("a loop where none was made");
            return;
        }
        benchmark::DoNotOptimize(compute::Network(made.activities, made.precedences).times());
    }
}

void timeAgain(benchmark::State& state) {
    const Made made = ::made(kSmall);
    const compute::Network network(made.activities, made.precedences);
    std::vector<std::int64_t> durations(kSmall, 1500);
    std::vector<std::int64_t> start(kSmall);
    std::vector<std::int64_t> finish(kSmall);
    for (auto _ : state) {
        ++durations[7];
        benchmark::DoNotOptimize(network.forward(durations, start, finish));
    }
}

void addUp(benchmark::State& state) {
    std::vector<std::int64_t> durations(kSmall, 1500);
    for (auto _ : state) {
        ++durations[7];
        benchmark::DoNotOptimize(durations.data());
        benchmark::DoNotOptimize(
            std::accumulate(durations.begin(), durations.end(), std::int64_t{0}));
    }
}

BENCHMARK(buildAndTime)->Unit(benchmark::kMillisecond)->Repetitions(5);
BENCHMARK(timeAgain)->Unit(benchmark::kNanosecond)->Repetitions(5);
BENCHMARK(addUp)->Unit(benchmark::kNanosecond)->Repetitions(5);

}  // namespace

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    bench::Keeper keeper;
    benchmark::RunSpecifiedBenchmarks(&keeper);
    const double milliseconds = keeper.medianOfProcessor("buildAndTime");
    bench::printRatio("plan of 1,000 items, built and timed (ms)", milliseconds, "<= 5",
                      milliseconds <= 5);
    std::printf("a forward pass over 80 items: %.0f ns, %.1f times adding them up\n",
                keeper.medianOfProcessor("timeAgain"),
                keeper.medianOfProcessor("timeAgain") / keeper.medianOfProcessor("addUp"));
    return 0;
}
