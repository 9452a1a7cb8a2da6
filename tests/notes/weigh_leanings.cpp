// Weighs the clues that tell what is to be done with a thing, and prints core/intake/tables/
// leanings.tsv.
//
//   weigh-leanings [--floor PERCENT] FILE-OR-FOLDER ... > leanings.tsv
//
// Reads notes that have a careful list beside them (NAME.txt, NAME.json) and files of labelled
// passages (NAME.jsonl); what is in a folder `open` or named in studied.txt was studied by those
// who made the rules, so that the rules do better there than they would for a stranger: a weight of
// its own takes that up and is thrown away. Run it by tests/notes/weigh; notes of
// tests/notes/held-out are never given to it.
//
// To standard error goes how well it does on talk left out: notes and passages are dealt into five
// parts, and each part is judged by weights made of the other four. Deterministic: no chance, no
// clock.
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <map>
#include <set>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/intake/notes/read_notes.h"
#include "core/model/words.h"

#include "tests/notes/fit.h"
#include "tests/notes/lists.h"

namespace {

namespace intake = ledgerboard::intake;
namespace lists = ledgerboard::notes_lists;
namespace weights = ledgerboard::notes_weights;
using ledgerboard::model::Treatment;

constexpr std::size_t kChoices = 10;  // none and nine treatments
using Example = weights::Example<kChoices>;
using Weights = std::vector<weights::Weights<kChoices>>;

constexpr int kLeastSeen = 8;    // a clue of fewer things is left out
constexpr float kFaint = 0.04F;  // what weighs less is left out
constexpr const char* kStudied = "studied";

// A thing as it was read, and the treatments that the careful list gives it.
struct Thing {
    std::string space;
    std::string object;
    std::vector<std::vector<std::string>> clues;  // of itself, then of each mention
    std::vector<std::size_t> made;                // treatments, by the rules
    std::set<std::size_t> wanted;                 // there; an item put into another space is wrong
    std::set<std::size_t> meant;  // there, or in another space that nothing else was read for
    std::array<float, kChoices> chances{};
    Example example;
};

struct Talk {
    std::string name;
    bool passage = false;
    bool studied = false;
    int listed = 0;
    std::vector<Thing> things;
};

std::size_t numberOf(const std::string& treatment) {
    const auto words = ledgerboard::model::wordsOf<Treatment>();
    return static_cast<std::size_t>(std::find(words.begin(), words.end(), treatment) -
                                    words.begin());
}

// Where a passage is said is given, not read: there the space is no matter.
Talk talkOf(const std::string& name, const std::string& text, const std::vector<lists::Item>& items,
            bool passage, bool studied) {
    Talk talk;
    talk.name = name;
    talk.passage = passage;
    talk.studied = studied;
    talk.listed = static_cast<int>(items.size());
    intake::ReadOptions options;
    options.explain = true;
    options.placesAsRuled = true;
    const auto reading = intake::explainNotes(text, options);
    if (!reading.ok()) {
        std::fprintf(stderr, "weigh-leanings: %s: %s\n", name.c_str(),
                     reading.error().message.c_str());
        return talk;
    }
    std::set<std::pair<std::string, std::string>> places;
    for (const intake::NamedThing& named : reading.value().things) {
        Thing& thing = talk.things.emplace_back();
        thing.clues = {named.clues};
        thing.clues.insert(thing.clues.end(), named.mentions.begin(), named.mentions.end());
        for (const std::string& treatment : named.made) {
            thing.made.push_back(numberOf(treatment));
            if (studied) {
                thing.clues.front().push_back(kStudied + (" " + treatment));
            }
        }
        const lists::Item item = lists::itemOf(named.space, "", named.object);
        places.insert({item.space, item.object});
        thing.space = item.space;
        thing.object = item.object;
    }
    for (Thing& thing : talk.things) {
        for (const lists::Item& want : items) {
            const bool here = passage || want.space == thing.space;
            if (want.object == thing.object && here) {
                thing.wanted.insert(numberOf(want.treatment));
            }
            if (want.object == thing.object &&
                (here || !places.contains({want.space, want.object}))) {
                thing.meant.insert(numberOf(want.treatment));
            }
        }
        thing.meant = thing.wanted.empty() ? thing.meant : thing.wanted;
    }
    return talk;
}

void addPassages(const std::filesystem::path& path, std::vector<Talk>& talks) {
    std::ifstream in(path);
    std::string line;
    for (int number = 1; std::getline(in, line); ++number) {
        if (line.empty()) {
            continue;
        }
        const nlohmann::json passage = nlohmann::json::parse(line);
        const std::string space = passage.at("space");
        std::vector<lists::Item> items;
        for (const nlohmann::json& item : passage.at("items")) {
            items.push_back(lists::itemOf(space, item.at(0), item.at(1)));
        }
        talks.push_back(talkOf(path.stem().string() + ":" + std::to_string(number),
                               space + ":\n" + passage.at("say").get<std::string>() + "\n", items,
                               true, false));
    }
}

std::vector<Talk> talksIn(const std::vector<std::filesystem::path>& folders,
                          const std::set<std::string>& studied) {
    std::vector<Talk> talks;
    for (const std::filesystem::path& path : lists::notesIn(folders)) {
        const bool known =
            path.parent_path().filename() == "open" || studied.contains(path.stem().string());
        talks.push_back(talkOf(path.stem().string(), lists::slurp(path),
                               lists::itemsListed(lists::listBeside(path)), false, known));
    }
    for (const std::filesystem::path& file : lists::filesIn(folders, ".jsonl")) {
        addPassages(file, talks);
    }
    return talks;
}

weights::Numbers numbersOf(const std::vector<Talk*>& talks) {
    std::unordered_map<std::string, int> seen;
    for (const Talk* talk : talks) {
        for (const Thing& thing : talk->things) {
            std::set<std::string_view> met;
            for (const std::vector<std::string>& part : thing.clues) {
                met.insert(part.begin(), part.end());
            }
            for (const std::string_view clue : met) {
                ++seen[std::string(clue)];
            }
        }
    }
    return weights::Numbers(seen, kLeastSeen);
}

void lay(Thing& thing, const weights::Numbers& numbers) {
    thing.example = {};
    for (const std::vector<std::string>& part : thing.clues) {
        thing.example.parts.push_back(numbers.of(part));
    }
    for (const std::size_t meant : thing.meant) {
        thing.example.right[meant] = 1.0F / static_cast<float>(thing.meant.size());
    }
    thing.example.right[0] = thing.meant.empty() ? 1.0F : 0.0F;
}

Weights fit(const std::vector<Talk*>& talks, const weights::Numbers& numbers) {
    std::vector<const Example*> examples;
    for (Talk* talk : talks) {
        for (Thing& thing : talk->things) {
            lay(thing, numbers);
            examples.push_back(&thing.example);
        }
    }
    Weights found = weights::Fit<kChoices>(examples, numbers.names().size()).run();
    weights::dropFaint(found, kFaint);
    return found;
}

void judgeByOthers(std::vector<Talk>& talks) {
    const auto part = [](const Talk& talk) { return weights::partOf(talk.name); };
    const auto judge = [](const std::vector<Talk*>& others, const std::vector<Talk*>& left) {
        const weights::Numbers numbers = numbersOf(others);
        const Weights found = fit(others, numbers);
        for (Talk* talk : left) {
            for (Thing& thing : talk->things) {
                lay(thing, numbers);
                thing.chances = weights::judge(thing.example, found).chances;
            }
        }
    };
    weights::eachPart(talks, part, judge);
}

std::size_t bestOf(const Thing& thing) {
    return static_cast<std::size_t>(
        std::max_element(thing.chances.begin() + 1, thing.chances.end()) - thing.chances.begin());
}

// Mean recall and precision where the likeliest treatment is made if it is likelier than a floor.
void printFloors(const char* title, const std::vector<const Talk*>& talks) {
    std::fprintf(stderr, "\n%s: %zu\nfloor   recall  precision     F1\n", title, talks.size());
    for (const int floor : {0, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90}) {
        double recall = 0;
        double precision = 0;
        double count = 0;
        for (const Talk* talk : talks) {
            int made = 0;
            int right = 0;
            for (const Thing& thing : talk->things) {
                if (floor == 0) {  // what the rules alone make
                    for (const std::size_t treatment : thing.made) {
                        ++made;
                        right += thing.wanted.contains(treatment) ? 1 : 0;
                    }
                } else if (100.0 * thing.chances[bestOf(thing)] >= floor) {
                    ++made;
                    right += thing.wanted.contains(bestOf(thing)) ? 1 : 0;
                }
            }
            if (talk->listed > 0) {
                ++count;
                recall += static_cast<double>(right) / talk->listed;
                precision += made == 0 ? 1.0 : static_cast<double>(right) / made;
            }
        }
        recall /= count;
        precision /= count;
        const std::string name = floor == 0 ? "rules" : std::to_string(floor);
        std::fprintf(stderr, "%5s  %7.3f  %9.3f  %5.3f\n", name.c_str(), recall, precision,
                     2 * recall * precision / (recall + precision));
    }
}

void printCalibration(const std::vector<const Talk*>& talks) {
    constexpr std::array<int, 8> kFrom = {95, 90, 80, 70, 60, 50, 40, 25};
    std::array<int, kFrom.size()> made{};
    std::array<int, kFrom.size()> right{};
    for (const Talk* talk : talks) {
        for (const Thing& thing : talk->things) {
            const double chance = 100.0 * thing.chances[bestOf(thing)];
            for (std::size_t i = 0; i < kFrom.size(); ++i) {
                if (chance >= kFrom[i]) {
                    ++made[i];
                    right[i] += thing.wanted.contains(bestOf(thing)) ? 1 : 0;
                    break;
                }
            }
        }
    }
    std::fprintf(stderr, "sure       items  right\n");
    for (std::size_t i = 0; i < kFrom.size(); ++i) {
        if (made[i] > 0) {
            std::fprintf(stderr, "from %3d  %6d  %4d %%\n", kFrom[i], made[i],
                         right[i] * 100 / made[i]);
        }
    }
}

// The line that turns the logarithm of the odds of the likeliest treatment into that of the item's
// being right: logistic regression of two weights, by Newton's method.
std::array<double, 2> drawnIn(const std::vector<const Talk*>& talks) {
    constexpr double kLooked = 0.1;
    std::array<double, 2> line = {0, 1};
    for (int round = 0; round < 30; ++round) {
        std::array<double, 2> slope{};
        std::array<double, 3> bend = {1e-6, 0, 1e-6};
        for (const Talk* talk : talks) {
            for (const Thing& thing : talk->things) {
                const double chance = thing.chances[bestOf(thing)];
                if (chance < kLooked) {
                    continue;
                }
                const double x = std::log(chance / std::max(1 - chance, 1e-6));
                const double p = 1.0 / (1.0 + std::exp(-(line[0] + line[1] * x)));
                const double off = (thing.wanted.contains(bestOf(thing)) ? 1.0 : 0.0) - p;
                slope[0] += off;
                slope[1] += off * x;
                bend[0] += p * (1 - p);
                bend[1] += p * (1 - p) * x;
                bend[2] += p * (1 - p) * x * x;
            }
        }
        const double whole = bend[0] * bend[2] - bend[1] * bend[1];
        line[0] += (bend[2] * slope[0] - bend[1] * slope[1]) / whole;
        line[1] += (bend[0] * slope[1] - bend[1] * slope[0]) / whole;
    }
    return line;
}

void drawIn(std::vector<Talk>& talks, const std::array<double, 2>& line) {
    for (Talk& talk : talks) {
        for (Thing& thing : talk.things) {
            for (float& chance : thing.chances) {
                const double x = std::log(std::max<double>(chance, 1e-9) /
                                          std::max(1 - static_cast<double>(chance), 1e-6));
                chance = static_cast<float>(1.0 / (1.0 + std::exp(-(line[0] + line[1] * x))));
            }
        }
    }
}

void writeTable(const weights::Numbers& numbers, const Weights& found, int floor,
                const std::array<double, 2>& line) {
    const auto words = ledgerboard::model::wordsOf<Treatment>();
    std::printf(
        "# What do the words around a thing tell of what is to be done with it? Written by\n"
        "# tests/notes/weigh_leanings.cpp; not by hand. A clue, then its weights in hundredths:");
    for (std::size_t k = 1; k < kChoices; ++k) {
        std::printf(" %s", std::string(words[k]).c_str());
    }
    std::printf("\nleast\t%d\nsure shift\t%ld\nsure slope\t%ld\n", floor,
                std::lround(line[0] * 100), std::lround(line[1] * 100));
    for (std::size_t i = 0; i < found.size(); ++i) {
        std::string row;
        for (std::size_t k = 1; k < kChoices; ++k) {
            row += (k == 1 ? "" : " ") + std::to_string(std::lround(found[i][k] * 100));
        }
        const bool told =
            std::any_of(found[i].begin(), found[i].end(), [](float weight) { return weight != 0; });
        if (told && !numbers.names()[i].starts_with(kStudied)) {
            std::printf("%s\t%s\n", numbers.names()[i].c_str(), row.c_str());
        }
    }
}

std::set<std::string> namesIn(const char* path) {
    std::set<std::string> names;
    std::ifstream in(path);
    for (std::string line; std::getline(in, line);) {
        names.insert(line);
    }
    return names;
}

}  // namespace

int main(int argc, char** argv) {
    int floor = 30;
    std::vector<std::filesystem::path> folders;
    std::set<std::string> studied;
    for (int i = 1; i < argc; ++i) {
        const std::string argument = argv[i];
        if (argument == "--floor" && i + 1 < argc) {
            floor = std::atoi(argv[++i]);
        } else if (argument == "--studied" && i + 1 < argc) {
            studied = namesIn(argv[++i]);
        } else if (std::filesystem::is_directory(argument)) {
            folders.emplace_back(argument);
        } else {
            std::fprintf(stderr, "weigh-leanings: %s is no folder\n", argument.c_str());
            return 2;
        }
    }
    if (folders.empty()) {
        std::fprintf(stderr, "weigh-leanings: folders of labelled talk are needed\n");
        return 2;
    }
    std::vector<Talk> talks = talksIn(folders, studied);
    judgeByOthers(talks);
    std::vector<const Talk*> passages;
    std::vector<const Talk*> fresh;
    std::vector<const Talk*> known;
    std::vector<Talk*> all;
    for (Talk& talk : talks) {
        (talk.passage ? passages : talk.studied ? known : fresh).push_back(&talk);
        all.push_back(&talk);
    }
    const std::array<double, 2> line = drawnIn(fresh);
    drawIn(talks, line);
    printFloors("Passages", passages);
    printFloors("Studied notes", known);
    printFloors("Notes that nobody studied", fresh);
    printCalibration(fresh);
    const weights::Numbers numbers = numbersOf(all);
    writeTable(numbers, fit(all, numbers), floor, line);
    return 0;
}
