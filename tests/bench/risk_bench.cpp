// What does the spread of cost and finish cost to work out?
//
// Compared, each the median processor time of five repetitions:
//   simulate   10,000 trials over 80 items, each with a cost and a duration of a shape of its own
//              and linked to two before it: tables built, percentiles and drivers found, all of it
//   draw       as many uniforms as that draws, from the same generator, added up: the bare minimum
// Goals: simulate at most 100 ms, and at most 5 times draw.
#include <benchmark/benchmark.h>
#include <random>

#include "core/compute/risk.h"
#include "core/compute/seeded_numbers.h"

#include "tests/bench/ratios.h"

namespace {

using namespace ledgerboard;

constexpr std::size_t kItems = 80;
constexpr std::size_t kTrials = 10'000;
constexpr std::size_t kDraws = kTrials * (2 * kItems + 1);  // costs, durations, the shared factor

compute::Spread spreadAround(std::mt19937& chance, std::int64_t likely) {
    return {likely - static_cast<std::int64_t>(chance() % 900), likely,
            likely + static_cast<std::int64_t>(1 + chance() % 2500)};
}

const compute::RiskInput& input() {
    static const compute::RiskInput kInput = [] {
        std::mt19937 chance(20260525);
        compute::RiskInput made;
        made.trials = kTrials;
        for (std::size_t k = 0; k < kItems; ++k) {
            made.items.push_back({spreadAround(chance, 100'000), spreadAround(chance, 3000), {}});
            for (int link = 0; k > 0 && link < 2; ++link) {
                made.precedences.push_back({chance() % k, k, model::LinkKind::FinishToStart, 0});
            }
        }
        return made;
    }();
    return kInput;
}

void simulate(benchmark::State& state) {
    for (auto _ : state) {
        benchmark::DoNotOptimize(compute::simulateRisk(input()));
    }
}

void draw(benchmark::State& state) {
    compute::SeededNumbers numbers(1);
    for (auto _ : state) {
        double sum = 0;
        for (std::size_t k = 0; k < kDraws; ++k) {
            sum += numbers.uniform();
        }
        benchmark::DoNotOptimize(sum);
    }
}

BENCHMARK(simulate)->Unit(benchmark::kMillisecond)->Repetitions(5);
BENCHMARK(draw)->Unit(benchmark::kMillisecond)->Repetitions(5);

}  // namespace

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    bench::Keeper keeper;
    benchmark::RunSpecifiedBenchmarks(&keeper);
    const double milliseconds = keeper.medianOfProcessor("simulate");
    const double ratio = milliseconds / keeper.medianOfProcessor("draw");
    bench::printRatio("risk, 10,000 trials over 80 linked items (ms)", milliseconds, "<= 100",
                      milliseconds <= 100);
    bench::printRatio("risk : drawing as many uniforms (time)", ratio, "<= 5", ratio <= 5);
    return 0;
}
