// How many crew plans does a second make?
//
// A job of 60 items in five spaces, on twelve crews of one place and one of two, each item linked
// to the one before it in its space; a bath takes one crew at a time. Compared, each the median
// processor time of five repetitions:
//   search    1,000 plans of the search, forward and backward ones, with all that breeds them
//   plain     1,000 forward passes over the same network, without crews: the bare minimum
// No goal is set: the ratio tells what crews cost over links alone.
#include <benchmark/benchmark.h>

#include "core/compute/crew_search.h"
#include "core/compute/network.h"
#include "core/compute/seeded_numbers.h"

#include "tests/bench/ratios.h"

namespace {

using namespace ledgerboard;

constexpr std::size_t kItems = 60;
constexpr std::size_t kSpaces = 5;
constexpr std::size_t kCrews = 13;
constexpr int kPlans = 1000;

// Days are whole; the last space holds one crew at a time.
const compute::CrewProblem& job() {
    static const compute::CrewProblem kJob = [] {
        compute::SeededNumbers chance(20260525);
        compute::CrewProblem made;
        made.capacities.assign(kCrews, 1);
        made.capacities[0] = 2;
        made.capacities.push_back(compute::kNoLimit);
        for (std::size_t k = 0; k < kItems; ++k) {
            compute::CrewWork work;
            const std::size_t crew = chance.below(kCrews);
            work.days = static_cast<compute::CrewTime>(1 + chance.below(6));
            work.uses.push_back({crew, 1, 0});
            if (k % kSpaces == kSpaces - 1) {
                work.uses.push_back({kCrews, 1, crew + 1});
            }
            if (k >= kSpaces && chance.below(4) > 0) {
                work.after.push_back({k - kSpaces, made.items[k - kSpaces].days});
            }
            made.items.push_back(work);
        }
        made.finish();
        return made;
    }();
    return kJob;
}

void search(benchmark::State& state) {
    for (auto _ : state) {
        benchmark::DoNotOptimize(compute::searchCrewPlan(job(), {kPlans, 1, 0, {}}));
    }
}

void plain(benchmark::State& state) {
    std::vector<compute::Activity> activities;
    std::vector<compute::Precedence> links;
    std::vector<std::int64_t> days;
    for (const compute::CrewWork& work : job().items) {
        for (const compute::StartLag& link : work.after) {
            links.push_back({link.item, activities.size()});
        }
        activities.push_back({work.days, 0, {}});
        days.push_back(work.days);
    }
    const compute::Network network(activities, links);
    std::vector<std::int64_t> start(days.size());
    std::vector<std::int64_t> finish(days.size());
    for (auto _ : state) {
        for (int k = 0; k < kPlans; ++k) {
            benchmark::DoNotOptimize(network.forward(days, start, finish));
        }
    }
}

BENCHMARK(search)->Unit(benchmark::kMillisecond)->Repetitions(5);
BENCHMARK(plain)->Unit(benchmark::kMillisecond)->Repetitions(5);

}  // namespace

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    bench::Keeper keeper;
    benchmark::RunSpecifiedBenchmarks(&keeper);
    const double milliseconds = keeper.medianOfProcessor("search");
    bench::printRatio("crew plans a second, 60 items on 13 crews", kPlans * 1000 / milliseconds,
                      "none", true);
    bench::printRatio("crew plan : forward pass without crews (time)",
                      milliseconds / keeper.medianOfProcessor("plain"), "none", true);
    return 0;
}
