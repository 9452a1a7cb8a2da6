// Weighs the clues that tell where a choice is left open, and prints core/intake/tables/
// openings.tsv.
//
//   weigh-openings [--least PERCENT] FILE-OR-FOLDER ... > openings.tsv
//
// Reads notes that have a careful list beside them (NAME.txt, NAME.json) and files of labelled
// passages (NAME.jsonl). The lists tell what the choices of a note are about, not where they are
// said: a sentence is taken for one where it stands in the space of the choice and shares a word
// with the list; of several such, after a first fit, the likeliest and whatever is more likely than
// not. One that shares two words with a choice of another space tells nothing: either may be placed
// wrongly. Run it by tests/notes/weigh; notes of tests/notes/held-out are never given to it.
//
// To standard error goes how well it does on talk left out: notes and passages are dealt into five
// parts, a file of passages as one, and each part is judged by weights made of the other four.
// Deterministic: no chance, no clock.
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <set>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

#include "core/intake/notes/read_notes.h"

#include "tests/notes/fit.h"
#include "tests/notes/lists.h"

namespace {

namespace intake = ledgerboard::intake;
namespace lists = ledgerboard::notes_lists;
namespace weights = ledgerboard::notes_weights;
using nlohmann::json;
using Example = weights::Example<2>;
using Weights = std::vector<weights::Weights<2>>;

constexpr int kRounds = 3;
constexpr int kLeastSeen = 10;     // a clue of fewer sentences is left out
constexpr double kOfRules = 0.56;  // of the least chance: what is enough where the rules say so too
constexpr float kFaint = 0.05F;    // what weighs less is left out
constexpr double kHint = 0.05;     // two such sentences may tell together what neither tells alone
constexpr std::size_t kSent = 2;   // sentences within which more is said of the same choice

struct Place {
    std::string said;  // the sentence
    std::string space;
    std::vector<std::string> clues;
    std::vector<std::size_t> of;  // the choices of the list it may be said of
    bool unsure = false;          // it may be of a choice or not
    Example example;
    double chance = 0;  // by the weights at hand
    double judged = 0;  // by weights made of other talk
};

struct Talk {
    std::string name;
    std::size_t part = 0;
    bool passage = false;
    std::size_t listed = 0;
    std::vector<Place> places;
};

std::set<std::string> wordsOf(const std::string& text) {
    static const std::set<std::string> kPlain = {"as",     "is",   "the", "a",  "leav", "add", "no",
                                                 "materi", "with", "and", "it", "keep", "or"};
    std::set<std::string> words;
    for (const std::string& stem : intake::stemsIn(text)) {
        if (!kPlain.contains(stem)) {
            words.insert(stem);
        }
    }
    return words;
}

struct Listed {
    std::string space;
    std::set<std::string> words;
};

Listed listedOf(const std::string& space, const json& question, const json& options) {
    std::string words = question.get<std::string>();
    for (const json& option : options) {
        words += " " + (option.is_string() ? option.get<std::string>()
                                           : option.at("name").get<std::string>());
    }
    return {intake::spaceName(space), wordsOf(words)};
}

// Where a passage is said is given, not read: there the space is no matter.
Talk talkOf(const std::string& name, const std::string& text, const std::vector<Listed>& listed,
            bool passage) {
    Talk talk{.name = name, .part = 0, .passage = passage, .listed = listed.size(), .places = {}};
    intake::ReadOptions options;
    options.explain = true;
    const auto reading = intake::explainNotes(text, options);
    if (!reading.ok()) {
        std::fprintf(stderr, "weigh-openings: %s: %s\n", name.c_str(),
                     reading.error().message.c_str());
        return talk;
    }
    for (const intake::NamedChoice& choice : reading.value().choices) {
        Place& place = talk.places.emplace_back();
        place.said = choice.sentence;
        place.clues = choice.clues;
        const std::set<std::string> words = wordsOf(choice.sentence);
        place.space = intake::spaceName(choice.space);
        const bool ofThing = std::find(choice.clues.begin(), choice.clues.end(), "is of a thing") !=
                             choice.clues.end();
        for (std::size_t i = 0; i < listed.size(); ++i) {
            const bool here = passage || listed[i].space == place.space ||
                              listed[i].space == "outside" || listed[i].space == "whole house" ||
                              choice.sentence.find(listed[i].space) != std::string::npos;
            const auto shared = std::count_if(
                words.begin(), words.end(),
                [&](const std::string& word) { return listed[i].words.contains(word); });
            place.unsure = place.unsure || (here ? !ofThing : shared > 1);
            if (here && shared > 0) {
                place.of.push_back(i);
            }
        }
    }
    return talk;
}

std::vector<Talk> talksIn(const std::vector<std::filesystem::path>& folders) {
    std::vector<Talk> talks;
    for (const std::filesystem::path& path : lists::notesIn(folders)) {
        const json list = lists::listBeside(path);
        std::vector<Listed> listed;
        for (const json& one : list.at("alternates")) {
            listed.push_back(listedOf(one.at("space"), one.at("question"), one.at("options")));
        }
        talks.push_back(talkOf(path.stem().string(), lists::slurp(path), listed, false));
        talks.back().part = weights::partOf(path.stem().string());
    }
    for (const std::filesystem::path& path : lists::filesIn(folders, ".jsonl")) {
        std::ifstream in(path);
        std::string line;
        for (int number = 1; std::getline(in, line); ++number) {
            if (line.empty()) {
                continue;
            }
            const json passage = json::parse(line);
            const std::string space = passage.at("space");
            std::vector<Listed> listed;
            for (const json& one : passage.value("alternates", json::array())) {
                listed.push_back(listedOf(space, one.at(0), one.at(1)));
            }
            talks.push_back(talkOf(path.stem().string() + ":" + std::to_string(number),
                                   space + ":\n" + passage.at("say").get<std::string>() + "\n",
                                   listed, true));
            talks.back().part = weights::partOf(path.stem().string());
        }
    }
    return talks;
}

weights::Numbers numbersOf(const std::vector<Talk*>& talks) {
    std::unordered_map<std::string, int> seen;
    for (const Talk* talk : talks) {
        for (const Place& place : talk->places) {
            for (const std::string& clue : place.clues) {
                ++seen[clue];
            }
        }
    }
    return weights::Numbers(seen, kLeastSeen);
}

// Which sentences the choices of the list are said in, as far as can be told; the others of their
// space tell nothing.
void addExamples(Talk& talk, bool first, std::vector<const Example*>& examples) {
    std::set<const Place*> likeliest;
    for (std::size_t i = 0; i < talk.listed; ++i) {
        const Place* best = nullptr;
        for (const Place& place : talk.places) {
            const bool may = std::find(place.of.begin(), place.of.end(), i) != place.of.end();
            if (may && (best == nullptr || place.chance > best->chance)) {
                best = &place;
            }
        }
        likeliest.insert(best);
    }
    for (Place& place : talk.places) {
        const bool open =
            !place.of.empty() && (first || likeliest.contains(&place) || place.chance > 0.5);
        if (open || !place.unsure) {
            place.example.right = {open ? 0.0F : 1.0F, open ? 1.0F : 0.0F};
            examples.push_back(&place.example);
        }
    }
}

Weights fit(const std::vector<Talk*>& talks, const weights::Numbers& numbers) {
    Weights found;
    for (int round = 0; round < kRounds; ++round) {
        std::vector<const Example*> examples;
        for (Talk* talk : talks) {
            for (Place& place : talk->places) {
                if (round == 0) {
                    place.example.parts = {numbers.of(place.clues)};
                } else {
                    place.chance = weights::judge(place.example, found).chances[1];
                }
            }
            addExamples(*talk, round == 0, examples);
        }
        found = weights::Fit<2>(examples, numbers.names().size()).run();
    }
    weights::dropFaint(found, kFaint);
    return found;
}

void judgeByOthers(std::vector<Talk>& talks) {
    const auto part = [](const Talk& talk) { return talk.part; };
    const auto judge = [](const std::vector<Talk*>& others, const std::vector<Talk*>& left) {
        const weights::Numbers numbers = numbersOf(others);
        const Weights found = fit(others, numbers);
        for (Talk* talk : left) {
            for (Place& place : talk->places) {
                place.example.parts = {numbers.of(place.clues)};
                place.judged = weights::judge(place.example, found).chances[1];
            }
        }
    };
    weights::eachPart(talks, part, judge);
}

struct Counts {
    std::size_t listed = 0;
    int found = 0;
    int invented = 0;
};

Counts countsOf(const std::vector<Talk>& talks, bool passages, double least) {
    Counts counts;
    for (const Talk& talk : talks) {
        if (talk.passage != passages) {
            continue;
        }
        counts.listed += talk.listed;
        std::set<std::size_t> found;
        std::size_t quiet = kSent + 1;  // sentences since one was taken for open
        const Place* before = nullptr;  // a hint of one
        for (const Place& place : talk.places) {
            ++quiet;
            const double hinted = before != nullptr && before->space == place.space &&
                                          before->judged >= kHint && place.judged >= kHint
                                      ? before->judged
                                      : 0;
            const double chance = 1 - (1 - place.judged) * (1 - hinted);
            const bool rules =
                std::find(place.clues.begin(), place.clues.end(), "is opens") != place.clues.end();
            const Place* hint = std::exchange(before, &place);
            if (chance < (rules ? least * kOfRules : least)) {
                continue;
            }
            before = nullptr;
            bool idle = place.of.empty() && !place.unsure && quiet > kSent;
            found.insert(place.of.begin(), place.of.end());
            if (hinted > 0) {
                found.insert(hint->of.begin(), hint->of.end());
                idle = idle && hint->of.empty() && !hint->unsure;
            }
            counts.invented += idle ? 1 : 0;
            quiet = 0;
        }
        counts.found += static_cast<int>(found.size());
    }
    return counts;
}

void printLeast(const std::vector<Talk>& talks) {
    std::fprintf(stderr, "least   notes: found  of  invented   passages: found  of  invented\n");
    for (const int least : {20, 30, 35, 40, 45, 50, 60, 70}) {
        const Counts notes = countsOf(talks, false, least / 100.0);
        const Counts passages = countsOf(talks, true, least / 100.0);
        std::fprintf(stderr, "%5d  %12d %4zu %8d  %16d %4zu %8d\n", least, notes.found,
                     notes.listed, notes.invented, passages.found, passages.listed,
                     passages.invented);
    }
}

void writeTable(const weights::Numbers& numbers, const Weights& found, int least) {
    std::printf(
        "# What tells that a choice is left open? Written by tests/notes/weigh_openings.cpp; not\n"
        "# by hand. A clue, then its weight in thousandths.\nleast\t%d\nleast of rules\t%ld\n",
        least, std::lround(least * kOfRules));
    for (std::size_t i = 0; i < found.size(); ++i) {
        if (found[i][1] != 0) {
            std::printf("%s\t%ld\n", numbers.names()[i].c_str(), std::lround(found[i][1] * 1000));
        }
    }
}

int run(const std::vector<std::string>& arguments) {
    int least = 45;
    std::vector<std::filesystem::path> folders;
    for (std::size_t i = 0; i < arguments.size(); ++i) {
        if (arguments[i] == "--least" && i + 1 < arguments.size()) {
            least = std::atoi(arguments[++i].c_str());
        } else if (std::filesystem::is_directory(arguments[i])) {
            folders.emplace_back(arguments[i]);
        } else {
            std::fprintf(stderr, "weigh-openings: %s is no folder\n", arguments[i].c_str());
            return 2;
        }
    }
    if (folders.empty()) {
        std::fprintf(stderr, "weigh-openings: folders of labelled talk are needed\n");
        return 2;
    }
    std::vector<Talk> talks = talksIn(folders);
    judgeByOthers(talks);
    printLeast(talks);
    std::vector<Talk*> all;
    all.reserve(talks.size());
    for (Talk& talk : talks) {
        all.push_back(&talk);
    }
    const weights::Numbers numbers = numbersOf(all);
    writeTable(numbers, fit(all, numbers), least);
    return 0;
}

}  // namespace

int main(int argc, char** argv) {
    return lists::runTool("weigh-openings", [&] { return run({argv + 1, argv + argc}); });
}
