// How fast are walk notes read? readNotes on a note of 20,000 words or more, which is hours of
// talk: the texts of tests/notes/open one after the other, again and again, each time with other
// figures in them, so that no two rounds are the same text. Goal: at least 1 MB/s (a megabyte is
// 1,000,000 bytes; the time is the median of five).
#include <algorithm>
#include <benchmark/benchmark.h>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <sstream>

#include "core/intake/notes/read_notes.h"

#include "tests/bench/ratios.h"

namespace {

constexpr std::size_t kWords = 20'000;

std::size_t wordsIn(const std::string& text) {
    std::istringstream stream(text);
    return static_cast<std::size_t>(std::distance(std::istream_iterator<std::string>(stream), {}));
}

// Every digit from 1 to 8 moved on by `round`, wrapping within 1 to 8: other figures, same shapes.
std::string withOtherFigures(std::string text, int round) {
    for (char& c : text) {
        if (c >= '1' && c <= '8') {
            c = static_cast<char>('1' + (c - '1' + round) % 8);
        }
    }
    return text;
}

const std::string& notes() {
    static const std::string kNotes = [] {
        std::vector<std::filesystem::path> files;
        for (const auto& entry : std::filesystem::directory_iterator(LEDGERBOARD_OPEN_NOTES)) {
            if (entry.path().extension() == ".txt") {
                files.push_back(entry.path());
            }
        }
        std::sort(files.begin(), files.end());
        std::string once;
        for (const auto& file : files) {
            std::ifstream in(file, std::ios::binary);
            once.append(std::istreambuf_iterator<char>(in), {});
            once += "\n\n";
        }
        std::string all;
        for (int round = 0; !once.empty() && wordsIn(all) < kWords; ++round) {
            all += withOtherFigures(once, round);
        }
        return all;
    }();
    return kNotes;
}

void readLongNote(benchmark::State& state) {
    std::size_t items = 0;
    for (auto _ : state) {
        auto draft = ledgerboard::intake::readNotes(notes());
        if (!draft.ok() || draft.value().items.empty()) {
            state.SkipWithError("not read, or nothing found");
            return;
        }
        items = draft.value().items.size();
    }
    state.counters["items"] = static_cast<double>(items);
}

BENCHMARK(readLongNote)->Unit(benchmark::kMillisecond)->Iterations(1)->Repetitions(5);

}  // namespace

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    std::printf("a note of %zu words, %zu bytes\n", wordsIn(notes()), notes().size());
    ledgerboard::bench::Keeper keeper;
    benchmark::RunSpecifiedBenchmarks(&keeper);
    const double seconds = keeper.medianOfProcessor("readLongNote") / 1e3;
    const double megabytes = static_cast<double>(notes().size()) / 1e6;
    ledgerboard::bench::printRatio("read a long note (MB/s)", megabytes / seconds, ">= 1.0",
                                   megabytes / seconds >= 1.0);
    return 0;
}
