// What does the week's page cost beside reading its rows, and does it feel other jobs in the book?
//
// Compared, each the median processor time of five runs of 10, on an open book read once before
// (its file is then in the memory of the system, and as much of it in SQLite's as fits there):
//   readRows        Book::jobRows of the job alone: 300 items, 5,000 marks, 2,000 spends, a
//   baseline weekAlone       what the verb `week` does once the book is open: Book::jobRows, voided
//   rows out,
//                   the page worked out, the page as text; in a book of that one job
//   weekAmongMany   the same, of the 101st job in a book of 200 such jobs
// Goals: weekAlone under 5 times readRows; weekAmongMany within 1.5 times weekAlone.
#include <benchmark/benchmark.h>

#include "core/compute/as_of.h"
#include "core/report/week_page.h"
#include "core/report/week_terminal.h"

#include "tests/bench/made_up_jobs.h"
#include "tests/bench/ratios.h"
#include "tests/support/fixed_chance.h"

namespace {

using namespace ledgerboard;

constexpr int kJobs = 200;
constexpr int kPages = 10;  // a run

struct Shelf {
    tests::TestFolder folder{"bench-week"};
    std::optional<store::Book> book;
    std::vector<model::Id<model::Kind::Job>> jobs;
};

std::unique_ptr<Shelf> shelfOf(int jobs) {
    auto shelf = std::make_unique<Shelf>();
    auto made = store::Book::create(shelf->folder.file("book"), "Owner",
                                    model::Instant::fromMilliseconds(1), tests::fixedChance(1));
    model::require(made.ok(), "a book for the bench");
    shelf->book.emplace(std::move(made).value());
    shelf->jobs = bench::fillWithJobs(*shelf->book, jobs, tests::fixedChance(2));
    return shelf;
}

Shelf& one() {
    static const std::unique_ptr<Shelf> kShelf = shelfOf(1);
    return *kShelf;
}

Shelf& many() {
    static const std::unique_ptr<Shelf> kShelf = [] {
        std::printf("writing a book of %d jobs, which takes a minute or more\n", kJobs);
        std::fflush(stdout);
        return shelfOf(kJobs);
    }();
    return *kShelf;
}

// The rows of a job, or none where they are not the ones meant.
std::optional<model::JobRows> rowsOf(Shelf& shelf, std::size_t job) {
    auto rows = shelf.book->jobRows(shelf.jobs.at(job));
    const bool whole = rows.ok() && rows.value().items.size() == bench::kItems &&
                       rows.value().marks.size() == bench::kMarks &&
                       rows.value().spends.size() == bench::kSpends;
    return whole ? std::optional(std::move(rows).value()) : std::nullopt;
}

bool makePage(Shelf& shelf, std::size_t job) {
    auto rows = rowsOf(shelf, job);
    if (!rows) {
        return false;
    }
    const auto page = report::weekPage(compute::withoutVoided(std::move(*rows)), bench::kToday);
    const std::string text = report::weekText(page, {});
    return page.cost.forecast > model::Money{} && !text.empty();
}

template <class Run>
void measure(benchmark::State& state, Run&& run) {
    for (auto _ : state) {
        for (int k = 0; k < kPages; ++k) {
            if (!run()) {
                state.SkipWithError("the book does not hold what was written");
                return;
            }
        }
    }
}

void readRows(benchmark::State& state) {
    measure(state, [] { return rowsOf(one(), 0).has_value(); });
}

void weekAlone(benchmark::State& state) {
    measure(state, [] { return makePage(one(), 0); });
}

void weekAmongMany(benchmark::State& state) {
    measure(state, [] { return makePage(many(), kJobs / 2); });
}

BENCHMARK(readRows)->Unit(benchmark::kMillisecond)->Iterations(1)->Repetitions(5);
BENCHMARK(weekAlone)->Unit(benchmark::kMillisecond)->Iterations(1)->Repetitions(5);
BENCHMARK(weekAmongMany)->Unit(benchmark::kMillisecond)->Iterations(1)->Repetitions(5);

}  // namespace

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    // Written, and read once, before anything is measured.
    if (!makePage(one(), 0) || !makePage(many(), kJobs / 2)) {
        std::fprintf(stderr, "week_bench: the book does not hold what was written\n");
        return 1;
    }
    bench::Keeper keeper;
    benchmark::RunSpecifiedBenchmarks(&keeper);
    const double toRead =
        keeper.medianOfProcessor("weekAlone") / keeper.medianOfProcessor("readRows");
    const double toOne =
        keeper.medianOfProcessor("weekAmongMany") / keeper.medianOfProcessor("weekAlone");
    bench::printRatio("week : reading the same rows (time)", toRead, "< 5", toRead < 5);
    bench::printRatio("week in a book of 200 such jobs : in a book of one (time)", toOne, "<= 1.5",
                      toOne <= 1.5);
    return 0;
}
