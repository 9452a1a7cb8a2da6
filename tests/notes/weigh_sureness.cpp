// What does each sign of an item say of whether it is right? Run by hand, never by a test.
//
//   weigh-sureness [--first FILE] [--ridge R] [--least PERCENT] FOLDER ... > sureness.tsv
//   weigh-sureness --write-first FILE FOLDER ...
//
// Reads the notes of every FOLDER, holds the items against the careful reader's lists
// (tests/notes/README.md), and writes the table of core/intake/tables: a logistic regression whose
// weights are held near nought in proportion to their square. After a change of the reader's rules,
// tests/notes/weigh does it.
//
// A note that the rules were made with is read better than a stranger's. The items of FILE
// (tests/notes/first-readings.tsv) were read from notes that nobody had studied yet; one weight, of
// having been studied, takes up the difference and is left out of the table, so that its scale is
// that of the unseen. --write-first makes such a file, of signs alone, when new notes come in.
// The notes of tests/notes/held-out are never given to it.
//
// To standard error goes how well it does on notes left out: the notes are dealt into ten parts,
// and each part is judged by weights made of the other nine. Deterministic: no chance, no clock.
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <map>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "core/intake/notes/read_notes.h"

#include "tests/notes/lists.h"

namespace {

namespace intake = ledgerboard::intake;
namespace lists = ledgerboard::notes_lists;

constexpr int kParts = 10;
constexpr std::size_t kLeastNotes = 5;  // a sign seen in fewer notes is left out

// Holds for items of notes that the rules were made with; of no other note.
constexpr const char* kStudied = "studied\t\tany";

// Marks the name of a note that was read before anyone had studied it.
constexpr const char* kAtFirst = " at first";

// One item that was read.
struct Example {
    std::size_t note = 0;
    bool first = false;  // of a note that nobody had studied
    bool right = false;
    std::string treatment;
    std::vector<std::string> signs;
    std::vector<std::uint32_t> columns;
    double chance = 0;  // as judged by notes left out
};

struct Examples {
    std::vector<Example> all;
    std::vector<std::string> notes;
    std::vector<int> listed;  // items of the careful reader's list, by note
};

Examples examplesOf(const std::vector<std::filesystem::path>& folders) {
    Examples examples;
    for (const std::filesystem::path& path : lists::notesIn(folders)) {
        intake::ReadOptions options;
        options.explain = true;
        options.leastSure = 0;
        const auto reading = intake::explainNotes(lists::slurp(path), options);
        std::vector<lists::Item> wanted = lists::itemsListed(lists::listBeside(path));
        const std::size_t note = examples.listed.size();
        examples.listed.push_back(static_cast<int>(wanted.size()));
        examples.notes.push_back(path.stem().string());
        if (!reading.ok()) {
            continue;
        }
        const std::vector<lists::Item> made = lists::itemsMade(reading.value().draft, wanted);
        for (std::size_t i = 0; i < made.size(); ++i) {
            Example example;
            example.note = note;
            example.right = made[i].right;
            example.treatment = made[i].treatment;
            for (const intake::NamedSign& sign : reading.value().signs[i]) {
                example.signs.push_back(sign.name + "\t" + sign.value + "\t");
            }
            std::sort(example.signs.begin(), example.signs.end());
            example.signs.erase(std::unique(example.signs.begin(), example.signs.end()),
                                example.signs.end());
            examples.all.push_back(std::move(example));
        }
    }
    return examples;
}

// Each sign counts for every treatment and for the item's own.
void spread(std::vector<Example>& examples) {
    for (Example& example : examples) {
        std::vector<std::string> spread;
        for (const std::string& sign : example.signs) {
            spread.push_back(sign + "any");
            spread.push_back(sign + example.treatment);
        }
        if (!example.first) {
            spread.emplace_back(kStudied);
        }
        example.signs = std::move(spread);
    }
}

void writeFirst(const char* path, const Examples& examples) {
    std::ofstream out(path);
    for (const Example& example : examples.all) {
        out << examples.notes[example.note] << '\t' << examples.listed[example.note] << '\t'
            << (example.right ? "right" : "wrong") << '\t' << example.treatment;
        for (const std::string& sign : example.signs) {
            const std::size_t tab = sign.find('\t');
            out << '\t' << sign.substr(0, tab) << '='
                << sign.substr(tab + 1, sign.size() - tab - 2);
        }
        out << '\n';
    }
}

// Adds the items of a file of first readings; false where it is none.
bool readFirst(const char* path, Examples& examples) {
    std::ifstream in(path);
    std::string line;
    while (std::getline(in, line)) {
        std::istringstream row(line);
        std::string cell;
        std::vector<std::string> cells;
        while (std::getline(row, cell, '\t')) {
            cells.push_back(cell);
        }
        if (cells.size() < 4) {
            return false;
        }
        Example example;
        example.first = true;
        const std::string name = cells[0] + kAtFirst;
        if (examples.notes.empty() || examples.notes.back() != name) {
            examples.notes.push_back(name);
            examples.listed.push_back(std::atoi(cells[1].c_str()));
        }
        example.note = examples.notes.size() - 1;
        example.right = cells[2] == "right";
        example.treatment = cells[3];
        for (std::size_t i = 4; i < cells.size(); ++i) {
            const std::size_t equals = cells[i].find('=');
            example.signs.push_back(cells[i].substr(0, equals) + "\t" +
                                    cells[i].substr(equals + 1) + "\t");
        }
        examples.all.push_back(std::move(example));
    }
    return in.eof();
}

// Gives every sign that is seen in enough notes its column.
std::vector<std::string> numberSigns(std::vector<Example>& examples) {
    std::map<std::string, std::set<std::size_t>> notes;
    for (const Example& example : examples) {
        for (const std::string& sign : example.signs) {
            notes[sign].insert(example.note);
        }
    }
    std::vector<std::string> names = {"every\t0\tany", kStudied};
    std::map<std::string, std::uint32_t> columns = {{names[0], 0}, {names[1], 1}};
    for (const auto& [sign, seenIn] : notes) {
        if (seenIn.size() >= kLeastNotes && columns.emplace(sign, names.size()).second) {
            names.push_back(sign);
        }
    }
    for (Example& example : examples) {
        for (const std::string& sign : example.signs) {
            if (const auto at = columns.find(sign); at != columns.end()) {
                example.columns.push_back(at->second);
            }
        }
    }
    return names;
}

double chanceOf(const Example& example, const std::vector<double>& weights) {
    double sum = 0;
    for (const std::uint32_t column : example.columns) {
        sum += weights[column];
    }
    return 1.0 / (1.0 + std::exp(-sum));
}

// Logistic regression with a ridge on all weights but the first: one weight after another goes a
// step of Newton's method, until none moves.
std::vector<double> fit(const std::vector<const Example*>& examples, std::size_t columns,
                        double ridge) {
    constexpr int kMostRounds = 200;
    constexpr double kStill = 1e-4;
    std::vector<std::vector<std::uint32_t>> rows(columns);
    for (std::uint32_t i = 0; i < examples.size(); ++i) {
        for (const std::uint32_t column : examples[i]->columns) {
            rows[column].push_back(i);
        }
    }
    std::vector<double> weights(columns, 0.0);
    std::vector<double> sums(examples.size(), 0.0);
    for (int round = 0; round < kMostRounds; ++round) {
        double moved = 0;
        for (std::size_t column = 0; column < columns; ++column) {
            const double hold = column < 2 ? 1e-6 : ridge;
            double slope = -hold * weights[column];
            double bend = hold;
            for (const std::uint32_t i : rows[column]) {
                const double chance = 1.0 / (1.0 + std::exp(-sums[i]));
                slope += (examples[i]->right ? 1.0 : 0.0) - chance;
                bend += chance * (1.0 - chance);
            }
            const double step = std::clamp(slope / bend, -1.0, 1.0);
            weights[column] += step;
            moved = std::max(moved, std::abs(step));
            for (const std::uint32_t i : rows[column]) {
                sums[i] += step;
            }
        }
        if (moved < kStill) {
            break;
        }
    }
    return weights;
}

// Which part a note is dealt into: the same for both readings of it.
std::size_t partOf(const std::string& note) {
    std::size_t sum = 0;
    for (const char c : note.substr(0, note.find(kAtFirst))) {
        sum = (sum * 31 + static_cast<unsigned char>(c)) % 9973;
    }
    return sum % kParts;
}

void judgeByOthers(Examples& examples, std::size_t columns, double ridge) {
    for (std::size_t part = 0; part < kParts; ++part) {
        std::vector<const Example*> others;
        for (const Example& example : examples.all) {
            if (partOf(examples.notes[example.note]) != part) {
                others.push_back(&example);
            }
        }
        const std::vector<double> weights = fit(others, columns, ridge);
        for (Example& example : examples.all) {
            if (partOf(examples.notes[example.note]) == part) {
                example.chance = chanceOf(example, weights);
            }
        }
    }
}

void printCalibration(const Examples& examples) {
    constexpr std::array<double, 9> kFrom = {0.95, 0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.25, 0};
    std::array<int, kFrom.size()> made{};
    std::array<int, kFrom.size()> right{};
    double loss = 0;
    for (const Example& example : examples.all) {
        std::size_t band = 0;
        while (example.chance < kFrom[band]) {
            ++band;
        }
        ++made[band];
        right[band] += example.right ? 1 : 0;
        loss -= std::log(std::max(1e-9, example.right ? example.chance : 1 - example.chance));
    }
    std::fprintf(stderr, "sure       items  right\n");
    for (std::size_t i = 0; i < kFrom.size(); ++i) {
        if (made[i] > 0) {
            std::fprintf(stderr, "from %3.0f  %6d  %4d %%\n", kFrom[i] * 100, made[i],
                         right[i] * 100 / made[i]);
        }
    }
    std::fprintf(stderr, "mean loss %.4f\n", loss / static_cast<double>(examples.all.size()));
}

// Mean recall and precision of the notes where items below a floor are not made.
void printFloors(const Examples& examples) {
    std::fprintf(stderr, "floor  recall  precision     F1\n");
    for (int floor = 0; floor <= 50; floor += 5) {
        std::vector<int> made(examples.listed.size(), 0);
        std::vector<int> right(examples.listed.size(), 0);
        for (const Example& example : examples.all) {
            if (example.chance * 100 >= floor) {
                ++made[example.note];
                right[example.note] += example.right ? 1 : 0;
            }
        }
        double recall = 0;
        double precision = 0;
        double notes = 0;
        for (std::size_t i = 0; i < made.size(); ++i) {
            if (examples.listed[i] == 0) {
                continue;
            }
            ++notes;
            recall += static_cast<double>(right[i]) / std::max(1, examples.listed[i]);
            precision += made[i] == 0 ? 1.0 : static_cast<double>(right[i]) / made[i];
        }
        recall /= notes;
        precision /= notes;
        std::fprintf(stderr, "%5d  %6.3f  %9.3f  %5.3f\n", floor, recall, precision,
                     2 * recall * precision / (recall + precision));
    }
}

void printJudged(const Examples& examples, bool first) {
    Examples part = examples;
    std::erase_if(part.all, [&](const Example& one) { return one.first != first; });
    for (std::size_t i = 0; i < part.listed.size(); ++i) {
        const bool ofFirst = part.notes[i].find(kAtFirst) != std::string::npos;
        part.listed[i] = ofFirst == first ? part.listed[i] : 0;
    }
    if (!part.all.empty()) {
        std::fprintf(stderr, first ? "\nRead before they were studied:\n" : "\nStudied notes:\n");
        printCalibration(part);
        printFloors(part);
    }
}

void writeTable(const std::vector<std::string>& names, const std::vector<double>& weights,
                int least) {
    constexpr long kFaint = 20;
    std::printf(
        "# How likely is an item right? Written by tests/notes/weigh_sureness.cpp; not by hand.\n"
        "# sign, its value, the treatment of the item it holds for, weight in thousandths\n"
        "least\t\tany\t%d\n",
        least);
    for (std::size_t i = 0; i < names.size(); ++i) {
        const long weight = std::lround(weights[i] * 1000);
        if (std::abs(weight) >= kFaint && names[i] != kStudied) {
            std::printf("%s\t%ld\n", names[i].c_str(), weight);
        }
    }
}

struct Wanted {
    double ridge = 8;
    int least = 25;
    const char* first = nullptr;
    const char* writeTo = nullptr;
    std::vector<std::filesystem::path> folders;
};

// False where the arguments are not as the header says.
bool takeArguments(int argc, char** argv, Wanted& wanted) {
    for (int i = 1; i < argc; ++i) {
        const std::string argument = argv[i];
        if (argument == "--ridge" && i + 1 < argc) {
            wanted.ridge = std::atof(argv[++i]);
        } else if (argument == "--least" && i + 1 < argc) {
            wanted.least = std::atoi(argv[++i]);
        } else if (argument == "--first" && i + 1 < argc) {
            wanted.first = argv[++i];
        } else if (argument == "--write-first" && i + 1 < argc) {
            wanted.writeTo = argv[++i];
        } else if (std::filesystem::is_directory(argument)) {
            wanted.folders.emplace_back(argument);
        } else {
            std::fprintf(stderr, "weigh-sureness: %s is no folder\n", argument.c_str());
            return false;
        }
    }
    if (wanted.folders.empty() || wanted.ridge <= 0) {
        std::fprintf(stderr, "weigh-sureness: folders of notes with lists are needed\n");
        return false;
    }
    return true;
}

}  // namespace

int main(int argc, char** argv) {
    Wanted wanted;
    if (!takeArguments(argc, argv, wanted)) {
        return 2;
    }
    Examples examples = examplesOf(wanted.folders);
    if (wanted.writeTo != nullptr) {
        writeFirst(wanted.writeTo, examples);
        return 0;
    }
    if (wanted.first != nullptr && !readFirst(wanted.first, examples)) {
        std::fprintf(stderr, "weigh-sureness: %s is no file of first readings\n", wanted.first);
        return 2;
    }
    spread(examples.all);
    const std::vector<std::string> names = numberSigns(examples.all);
    std::fprintf(stderr, "%zu readings of notes, %zu items, %zu signs\n", examples.listed.size(),
                 examples.all.size(), names.size());
    judgeByOthers(examples, names.size(), wanted.ridge);
    printJudged(examples, false);
    printJudged(examples, true);
    std::vector<const Example*> all;
    for (const Example& example : examples.all) {
        all.push_back(&example);
    }
    writeTable(names, fit(all, names.size(), wanted.ridge), wanted.least);
    return 0;
}
