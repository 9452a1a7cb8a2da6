// Weighs the clues that tell where there is a mark in talk without marks, and where it is a full
// stop, and prints core/intake/tables/pauses.tsv or stops.tsv.
//
//   weigh-pauses pauses|stops FOLDER ... > pauses.tsv
//
// Reads notes in sentences (NAME.txt beside NAME.json, none that the list calls shorthand or
// bullets) and what is said in labelled passages (NAME.jsonl). Their marks are taken out, as a
// phone would leave them out that writes what it hears, and it is weighed what tells where a full
// stop, a colon or a new line stood, or for pauses where one of these or a comma did. Nothing is
// said of where a dash or a bracket stood. Run it by tests/notes/weigh; notes of
// tests/notes/held-out are never given to it.
//
// To standard error goes how well it does on talk left out: notes are dealt into five parts, and
// each part is judged by weights made of the other four. Deterministic: no chance, no clock.
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <set>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/intake/notes/lines.h"
#include "core/intake/notes/pauses.h"
#include "core/intake/notes/tables.h"
#include "core/intake/notes/tokens.h"

#include "tests/notes/fit.h"
#include "tests/notes/lists.h"

namespace {

namespace intake = ledgerboard::intake;
namespace lists = ledgerboard::notes_lists;
namespace weights = ledgerboard::notes_weights;
using Example = weights::Example<2>;
using Weights = std::vector<weights::Weights<2>>;

constexpr int kLeastSeen = 25;   // a clue of fewer places is left out
constexpr float kFaint = 0.08F;  // what weighs less is left out

// The logarithm of the odds from which a mark is put there, thousandths.
constexpr int kLeastOfStop = -500;
constexpr int kLeastOfPause = 200;

// Clues by a number for each that was met.
class Met {
  public:
    std::uint32_t numberOf(const std::string& clue) {
        const auto [at, fresh] = byName_.try_emplace(clue, names_.size());
        if (fresh) {
            names_.push_back(clue);
        }
        return at->second;
    }

    [[nodiscard]] const std::vector<std::string>& names() const { return names_; }

  private:
    std::unordered_map<std::string, std::uint32_t> byName_;
    std::vector<std::string> names_;
};

struct Talk {
    std::string name;
    std::vector<Example> places;
    std::vector<float> chances;
};

enum class Mark : std::uint8_t { None, Comma, Stop, Other };

Mark markOf(const intake::Token& token) {
    switch (token.mark) {
        case ',':
            return Mark::Comma;
        case '.':
        case '?':
        case '!':
        case ';':
        case ':':
            return Mark::Stop;
        default:
            return Mark::Other;
    }
}

Talk talkOf(const std::string& name, const std::string& text, Mark least, Met& met) {
    Talk talk;
    talk.name = name;
    intake::Speller speller(intake::tables().lexicon);
    intake::Stems stems(intake::tables().lexicon);
    std::vector<intake::Token> tokens;
    std::vector<bool> opens;  // by token: a line that begins a sentence begins with it
    for (const intake::NoteLine& line : intake::noteLines(text)) {
        const std::size_t begin = tokens.size();
        intake::cutTokens(line.text, line.number, speller, intake::tables().lexicon, tokens);
        opens.resize(tokens.size(), false);
        if (begin < tokens.size()) {
            opens[begin] = line.opens;
        }
    }
    const std::vector<intake::Clues> clues = intake::pauseClues(tokens, stems, true);
    Mark since = Mark::None;
    for (std::size_t i = 0; i < tokens.size(); ++i) {
        since = opens[i] ? Mark::Stop : since;
        if (intake::isPause(tokens[i])) {
            since = std::max(since, markOf(tokens[i]));
            continue;
        }
        if (since != Mark::Other && !clues[i].names().empty()) {
            Example& place = talk.places.emplace_back();
            place.parts.emplace_back();
            for (const std::string& clue : clues[i].names()) {
                place.parts.front().push_back(met.numberOf(clue));
            }
            place.right[since >= least ? 1 : 0] = 1;
        }
        since = Mark::None;
    }
    return talk;
}

std::vector<Talk> talksIn(const std::vector<std::filesystem::path>& folders, Mark least, Met& met) {
    std::vector<Talk> talks;
    for (const std::filesystem::path& path : lists::notesIn(folders)) {
        const std::string manner = lists::listBeside(path).value("manner", "");
        if (manner != "shorthand" && manner != "bullets") {
            talks.push_back(talkOf(path.stem().string(), lists::slurp(path), least, met));
        }
    }
    for (const std::filesystem::path& file : lists::filesIn(folders, ".jsonl")) {
        std::ifstream in(file);
        std::string text;
        for (std::string line; std::getline(in, line);) {
            if (!line.empty()) {
                text += nlohmann::json::parse(line).at("say").get<std::string>() + "\n\n";
            }
        }
        talks.push_back(talkOf(file.stem().string(), text, least, met));
    }
    return talks;
}

// Those clues of the examples that were seen often enough, numbered anew; `names` gets theirs.
std::vector<Example> examplesOf(const std::vector<Talk*>& talks, std::size_t met,
                                std::vector<std::uint32_t>& numbers) {
    std::vector<int> seen(met, 0);
    for (const Talk* talk : talks) {
        for (const Example& place : talk->places) {
            for (const std::uint32_t clue : place.parts.front()) {
                ++seen[clue];
            }
        }
    }
    numbers.assign(met, intake::kNone);
    std::uint32_t next = 0;
    for (std::size_t i = 0; i < met; ++i) {
        if (seen[i] >= kLeastSeen) {
            numbers[i] = next++;
        }
    }
    std::vector<Example> examples;
    for (const Talk* talk : talks) {
        examples.insert(examples.end(), talk->places.begin(), talk->places.end());
    }
    return examples;
}

void renumber(Example& example, const std::vector<std::uint32_t>& numbers) {
    std::vector<std::uint32_t>& clues = example.parts.front();
    for (std::uint32_t& clue : clues) {
        clue = numbers[clue];
    }
    std::erase(clues, intake::kNone);
    std::sort(clues.begin(), clues.end());
    clues.erase(std::unique(clues.begin(), clues.end()), clues.end());
}

Weights fit(const std::vector<Talk*>& talks, std::size_t met, std::vector<std::uint32_t>& numbers) {
    std::vector<Example> examples = examplesOf(talks, met, numbers);
    std::vector<const Example*> given;
    given.reserve(examples.size());
    for (Example& example : examples) {
        renumber(example, numbers);
        given.push_back(&example);
    }
    const auto kept = static_cast<std::size_t>(
        std::count_if(numbers.begin(), numbers.end(),
                      [](std::uint32_t number) { return number != intake::kNone; }));
    Weights found = weights::Fit<2>(given, kept).run();
    weights::dropFaint(found, kFaint);
    return found;
}

void judgeByOthers(std::vector<Talk>& talks, std::size_t met) {
    const auto part = [](const Talk& talk) { return weights::partOf(talk.name); };
    const auto judge = [met](const std::vector<Talk*>& others, const std::vector<Talk*>& left) {
        std::vector<std::uint32_t> numbers;
        const Weights found = fit(others, met, numbers);
        for (Talk* talk : left) {
            for (const Example& place : talk->places) {
                Example known = place;
                renumber(known, numbers);
                talk->chances.push_back(weights::judge(known, found).chances[1]);
            }
        }
    };
    weights::eachPart(talks, part, judge);
}

void printFloors(const std::vector<Talk>& talks) {
    std::fprintf(stderr, "least    found  right of those made\n");
    for (const int least : {10, 20, 30, 35, 40, 45, 50, 55, 60, 70, 80, 90}) {
        std::size_t made = 0;
        std::size_t right = 0;
        std::size_t all = 0;
        for (const Talk& talk : talks) {
            for (std::size_t i = 0; i < talk.places.size(); ++i) {
                const bool stop = talk.places[i].right[1] > 0;
                const bool said = talk.chances[i] * 100 >= static_cast<float>(least);
                all += stop ? 1 : 0;
                made += said ? 1 : 0;
                right += said && stop ? 1 : 0;
            }
        }
        std::fprintf(stderr, "%5d  %6.1f %%  %6.1f %%\n", least,
                     100.0 * static_cast<double>(right) / static_cast<double>(all),
                     100.0 * static_cast<double>(right) / static_cast<double>(made));
    }
}

void writeTable(const std::string& what, const Met& met, const std::vector<std::uint32_t>& numbers,
                const Weights& found) {
    std::printf(
        "# %s between two words of talk without marks? Written by\n"
        "# tests/notes/weigh_pauses.cpp; not by hand. A clue, a tab, its weight in thousandths.\n"
        "least\t%d\n",
        what == "stops" ? "Is there a full stop" : "Is there a full stop or a comma",
        what == "stops" ? kLeastOfStop : kLeastOfPause);
    std::vector<std::string> rows;
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        if (numbers[i] == intake::kNone) {
            continue;
        }
        if (const long weight = std::lround(found[numbers[i]][1] * 1000); weight != 0) {
            rows.push_back(met.names()[i] + "\t" + std::to_string(weight));
        }
    }
    std::sort(rows.begin(), rows.end());
    for (const std::string& row : rows) {
        std::printf("%s\n", row.c_str());
    }
}

int run(const std::string& what, const std::vector<std::filesystem::path>& folders) {
    if ((what != "pauses" && what != "stops") || folders.empty() ||
        !std::all_of(folders.begin(), folders.end(),
                     [](const auto& folder) { return std::filesystem::is_directory(folder); })) {
        std::fprintf(
            stderr, "weigh-pauses: pauses or stops, then folders of notes with lists are needed\n");
        return 2;
    }
    const Mark least = what == "stops" ? Mark::Stop : Mark::Comma;
    Met met;
    std::vector<Talk> talks = talksIn(folders, least, met);
    judgeByOthers(talks, met.names().size());
    printFloors(talks);
    std::vector<Talk*> all;
    all.reserve(talks.size());
    for (Talk& talk : talks) {
        all.push_back(&talk);
    }
    std::vector<std::uint32_t> numbers;
    const Weights found = fit(all, met.names().size(), numbers);
    writeTable(what, met, numbers, found);
    return 0;
}

}  // namespace

int main(int argc, char** argv) {
    return lists::runTool("weigh-pauses", [&] {
        return run(argc > 1 ? argv[1] : "", {argv + std::min(argc, 2), argv + argc});
    });
}
