// How fast is the best set found, beside GLPK on the same case in the same run?
//
// Compared, each the median processor time of five runs over the same 20 made-up cases of 12
// alternates of 4 options (limits on cash and days, ceiling, selling and day costs, 2 needs and 2
// excludes in half of them):
//   best      bestSetOf, from the input to the set
//   glpk      glp_intopt with presolve; building the program is not counted
//   frontier  frontierOf, all sets that no other beats
// Goal: best under 1 times glpk.
#include <benchmark/benchmark.h>
#include <cmath>
#include <memory>

#include "tests/bench/ratios.h"
#include "tests/support/glpk_choose.h"
#include "tests/support/made_up_alternates.h"

namespace {

using namespace ledgerboard;

constexpr std::uint64_t kCases = 20;

const std::vector<compute::ChooseInput>& cases() {
    static const std::vector<compute::ChooseInput> kAll = [] {
        std::vector<compute::ChooseInput> all;
        for (std::uint64_t seed = 1; seed <= kCases; ++seed) {
            const bool plain = seed % 2 == 0;
            all.push_back(tests::madeUpAlternates({.alternates = 12,
                                                   .options = 4,
                                                   .pairs = plain ? 0U : 2U,
                                                   .hasCeiling = !plain,
                                                   .hasDayCosts = !plain},
                                                  seed));
        }
        return all;
    }();
    return kAll;
}

void best(benchmark::State& state) {
    std::uint64_t branches = 0;
    for (auto _ : state) {
        branches = 0;
        for (const auto& input : cases()) {
            const auto found = compute::bestSetOf(input);
            if (!found.ok() || !found.value().proven) {
                state.SkipWithError("not solved");
                return;
            }
            branches += found.value().branches;
        }
    }
    state.counters["branches_a_case"] = static_cast<double>(branches) / kCases;
}

// Presolve works on a copy, so one program can be solved over and over.
std::vector<std::unique_ptr<tests::GlpkChoose>>& programs() {
    static std::vector<std::unique_ptr<tests::GlpkChoose>> all = [] {
        std::vector<std::unique_ptr<tests::GlpkChoose>> made;
        for (const auto& input : cases()) {
            made.push_back(std::make_unique<tests::GlpkChoose>(input));
        }
        return made;
    }();
    return all;
}

// That both find the same in every case, so that the same is compared.
bool agrees() {
    for (std::size_t k = 0; k < cases().size(); ++k) {
        const auto ours = compute::bestSetOf(cases()[k]);
        const auto theirs = programs()[k]->solve();
        const bool isSame =
            ours.ok() && ours.value().set.has_value() == theirs.has_value() &&
            (!theirs ||
             std::abs(static_cast<double>(ours.value().set->net.minor()) / 100 - *theirs) < 0.0051);
        if (!isSame) {
            return false;
        }
    }
    return true;
}

void glpk(benchmark::State& state) {
    for (auto _ : state) {
        for (const auto& program : programs()) {
            const auto net = program->solve();
            benchmark::DoNotOptimize(net);
        }
    }
}

void frontier(benchmark::State& state) {
    std::size_t sets = 0;
    for (auto _ : state) {
        sets = 0;
        for (const auto& input : cases()) {
            const auto found = compute::frontierOf(input);
            if (!found.ok() || found.value().cut) {
                state.SkipWithError("not whole");
                return;
            }
            sets += found.value().sets.size();
        }
    }
    state.counters["sets_a_case"] = static_cast<double>(sets) / kCases;
}

BENCHMARK(best)->Unit(benchmark::kMillisecond)->Repetitions(5);
BENCHMARK(glpk)->Unit(benchmark::kMillisecond)->Repetitions(5);
BENCHMARK(frontier)->Unit(benchmark::kMillisecond)->Repetitions(5);

}  // namespace

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    if (!agrees()) {
        std::fprintf(stderr, "choose_bench: the two do not find the same\n");
        return 1;
    }
    bench::Keeper keeper;
    benchmark::RunSpecifiedBenchmarks(&keeper);
    const double ratio = keeper.medianOfProcessor("best") / keeper.medianOfProcessor("glpk");
    bench::printRatio("best set, 12 alternates of 4 options, against GLPK", ratio, "< 1",
                      ratio < 1);
    const double whole = keeper.medianOfProcessor("frontier") / keeper.medianOfProcessor("glpk");
    bench::printRatio("the whole frontier of the same, against GLPK's one set", whole, "none",
                      true);
    return 0;
}
