// What does timing a plan cost?
//
// Compared, each the median processor time of five repetitions, over made-up networks with two
// links an activity, of all four kinds:
//   buildAndTime   1,000 activities: finding a loop, building the network, all its times
//   planAJob       a job of 1,000 items with two links each, its figures known: its whole plan in
//   days timeAgain      80 activities: one forward pass with other durations, as a trial of risk
//   does it addUp          the same 80 durations only added up: the bare minimum
// Goals: buildAndTime and planAJob at most 5 ms.
#include <array>
#include <benchmark/benchmark.h>
#include <numeric>
#include <random>

#include "core/compute/network.h"
#include "core/compute/plan.h"

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

template <model::Kind K>
model::Id<K> numbered(std::size_t number) {
    std::array<std::uint8_t, model::RawId::kBytes> bytes{};
    bytes[14] = static_cast<std::uint8_t>(number >> 8);
    bytes[15] = static_cast<std::uint8_t>(number);
    return model::Id<K>(model::RawId(bytes));
}

model::JobRows madeJob() {
    const Made made = ::made(kLarge);
    model::JobRows rows;
    for (const compute::Activity& activity : made.activities) {
        model::Item& item = rows.items.emplace_back();
        item.id = numbered<model::Kind::Item>(rows.items.size());
        item.treatment = model::Treatment::Repair;
        item.lumpSum = model::Money::of(1000);
        item.daysLikely = model::Quantity::fromThousandths(activity.duration + 1);
    }
    for (const compute::Precedence& precedence : made.precedences) {
        model::Link& link = rows.links.emplace_back();
        link.id = numbered<model::Kind::Link>(rows.links.size());
        link.fromItem = rows.items[precedence.from].id;
        link.toItem = rows.items[precedence.to].id;
        link.type = precedence.kind;
        link.lag = model::Quantity::fromThousandths(precedence.lag);
    }
    return rows;
}

void planAJob(benchmark::State& state) {
    const model::JobRows rows = madeJob();
    const model::Date today = model::Date::fromYmd(2026, 5, 22).value();
    const compute::JobFigures figures = compute::figuresOf(rows, today);
    for (auto _ : state) {
        const compute::Plan plan = compute::planOf(rows, figures, today);
        if (!plan.on || plan.items.size() != kLarge) {
            state.SkipWithError("a plan without a finish");
            return;
        }
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
BENCHMARK(planAJob)->Unit(benchmark::kMillisecond)->Repetitions(5);
BENCHMARK(timeAgain)->Unit(benchmark::kNanosecond)->Repetitions(5);
BENCHMARK(addUp)->Unit(benchmark::kNanosecond)->Repetitions(5);

}  // namespace

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    bench::Keeper keeper;
    benchmark::RunSpecifiedBenchmarks(&keeper);
    const double milliseconds = keeper.medianOfProcessor("buildAndTime");
    bench::printRatio("network of 1,000 items, built and timed (ms)", milliseconds, "<= 5",
                      milliseconds <= 5);
    const double planned = keeper.medianOfProcessor("planAJob");
    bench::printRatio("plan of a job of 1,000 items (ms)", planned, "<= 5", planned <= 5);
    std::printf("a forward pass over 80 items: %.0f ns, %.1f times adding them up\n",
                keeper.medianOfProcessor("timeAgain"),
                keeper.medianOfProcessor("timeAgain") / keeper.medianOfProcessor("addUp"));
    return 0;
}
