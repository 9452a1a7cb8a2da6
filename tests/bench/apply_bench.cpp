// What does the log cost over bare storage? Applying entries to a book against inserting the same
// bytes into one plain SQLite table, in equal batches of 1,000 a transaction, both in WAL mode with
// synchronous FULL. Goal: at least 0.30 of the bare rate.
#include <benchmark/benchmark.h>
#include <filesystem>

#include <sqlite3.h>

#include "core/store/book.h"

#include "tests/bench/ratios.h"
#include "tests/support/fixed_chance.h"

namespace {

using namespace ledgerboard;

constexpr std::size_t kEntries = 100'000;
constexpr std::size_t kBatch = 1'000;

// Entries as a device makes them: records of ten fields each, one after the other.
const std::vector<store::Entry>& entries() {
    static const std::vector<store::Entry> kList = [] {
        std::vector<store::Entry> list;
        model::IdMaker ids(tests::fixedChance(5));
        const auto start = model::Instant::fromMilliseconds(1'775'476'800'000);
        const model::RawId device = ids.next(start);
        const std::vector<std::pair<model::FieldCode, model::Value>> fields = {
            {model::field::Item::job, device},
            {model::field::Item::space, device},
            {model::field::Item::treatment, std::string("replace")},
            {model::field::Item::object, std::string("kitchen cabinets")},
            {model::field::Item::trade, std::string("carpentry")},
            {model::field::Item::quantity, std::int64_t{12'000}},
            {model::field::Item::unit, std::string("lin ft")},
            {model::field::Item::unitCostLabour, std::int64_t{9'500}},
            {model::field::Item::daysLikely, std::int64_t{2'000}},
            {model::field::Item::plannedStartOn, std::int64_t{20'560}},
        };
        std::int64_t numbers[2] = {0, 0};
        for (std::size_t k = 0; k < kEntries; ++k) {
            static model::RawId record;
            if (k % fields.size() == 0) {
                record = ids.next(
                    model::Instant::fromMilliseconds(start.milliseconds() + static_cast<int>(k)));
            }
            const auto& [field, value] = fields[k % fields.size()];
            store::Entry entry;
            const auto lane = store::laneOf(*model::fieldOf(field));
            entry.name = {device, lane, ++numbers[static_cast<int>(lane)]};
            entry.clock = model::HybridClock::fromRaw(
                (start.milliseconds() + static_cast<int>(k / fields.size())) << 16);
            entry.record = record;
            entry.field = field;
            entry.value = value;
            list.push_back(entry);
        }
        return list;
    }();
    return kList;
}

void applyToBook(benchmark::State& state) {
    for (auto _ : state) {
        state.PauseTiming();
        tests::TestFolder folder("bench-apply");
        auto book = store::Book::create(folder.file("book"), "Owner",
                                        model::Instant::fromMilliseconds(1), tests::fixedChance(1));
        state.ResumeTiming();
        for (std::size_t at = 0; at < entries().size(); at += kBatch) {
            auto taken = book.value().apply(std::span(entries()).subspan(at, kBatch));
            if (!taken.ok() || taken.value() != kBatch) {
                state.SkipWithError("not applied");
                return;
            }
        }
        state.PauseTiming();
        { auto closed = std::move(book); }
        state.ResumeTiming();
    }
}

void insertBare(benchmark::State& state) {
    for (auto _ : state) {
        state.PauseTiming();
        tests::TestFolder folder("bench-bare");
        sqlite3* handle = nullptr;
        sqlite3_open(folder.file("bare").c_str(), &handle);
        sqlite3_exec(
            handle,
            "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;"
            "PRAGMA cache_size = -16384;"
            "CREATE TABLE entries(arrival INTEGER PRIMARY KEY, device BLOB, lane INTEGER,"
            " number INTEGER, clock INTEGER, record BLOB, field INTEGER, value ANY) STRICT",
            nullptr, nullptr, nullptr);
        sqlite3_stmt* insert = nullptr;
        sqlite3_prepare_v2(handle,
                           "INSERT INTO entries(device, lane, number, clock, record, field, value) "
                           "VALUES(?1, ?2, ?3, ?4, ?5, ?6, ?7)",
                           -1, &insert, nullptr);
        state.ResumeTiming();
        for (std::size_t at = 0; at < entries().size(); at += kBatch) {
            sqlite3_exec(handle, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr);
            for (const auto& entry : std::span(entries()).subspan(at, kBatch)) {
                sqlite3_bind_blob(insert, 1, entry.name.device.bytes().data(), 16, SQLITE_STATIC);
                sqlite3_bind_int64(insert, 2, static_cast<int>(entry.name.lane));
                sqlite3_bind_int64(insert, 3, entry.name.number);
                sqlite3_bind_int64(insert, 4, entry.clock.raw());
                sqlite3_bind_blob(insert, 5, entry.record.bytes().data(), 16, SQLITE_STATIC);
                sqlite3_bind_int64(insert, 6, entry.field);
                if (const auto* integer = std::get_if<std::int64_t>(&entry.value)) {
                    sqlite3_bind_int64(insert, 7, *integer);
                } else if (const auto* text = std::get_if<std::string>(&entry.value)) {
                    sqlite3_bind_text(insert, 7, text->data(), static_cast<int>(text->size()),
                                      SQLITE_STATIC);
                } else {
                    const auto& id = std::get<model::RawId>(entry.value);
                    sqlite3_bind_blob(insert, 7, id.bytes().data(), 16, SQLITE_STATIC);
                }
                sqlite3_step(insert);
                sqlite3_reset(insert);
            }
            sqlite3_exec(handle, "COMMIT", nullptr, nullptr, nullptr);
        }
        state.PauseTiming();
        sqlite3_finalize(insert);
        sqlite3_close(handle);
        state.ResumeTiming();
    }
}

BENCHMARK(insertBare)->Unit(benchmark::kMillisecond)->Iterations(1)->Repetitions(5);
BENCHMARK(applyToBook)->Unit(benchmark::kMillisecond)->Iterations(1)->Repetitions(5);

}  // namespace

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    ledgerboard::bench::Keeper keeper;
    benchmark::RunSpecifiedBenchmarks(&keeper);
    const double ratio = keeper.median("insertBare") / keeper.median("applyToBook");
    ledgerboard::bench::printRatio("apply entries : bare inserts of the same bytes (rate)", ratio,
                                   ">= 0.30", ratio >= 0.30);
    return 0;
}
