// How well does the reader read? Scores drafts against a careful reader's lists.
//
//   score-notes [--bar R] [--misses] [--no-texts] [--all] [--unmarked] [--second LISTS]
//               FOLDER ...
//
// Each FOLDER holds pairs NAME.txt and NAME.json (tests/notes/README.md tells their form). Items
// match one to one when space, treatment and object agree, spaces and objects brought to one name
// through the reader's tables on both sides. Prints recall and precision per file, their means, the
// same by manner of speaking, alternates and facts, and how often items of each sureness are right.
// --misses prints what was missed and what was invented; --no-texts forbids that, for notes that
// must stay unseen. --all counts what was too unsure to be made as well. --unmarked reads dictated
// notes alone, and these as a phone may write them: in small letters and without a mark. Where a
// folder holds passages (NAME.jsonl), the alternates of these are counted, by file of passages.
// --second scores the lists LISTS/open/NAME.json and the like in place of what the reader makes:
// how far a second person agrees, which no reader can be asked to surpass; notes without such a
// list are left out. Exit status: 0; 1 when a mean of items is below the bar; 2 for wrong use.
#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include <nlohmann/json.hpp>

#include "core/intake/notes/names.h"
#include "core/intake/notes/read_notes.h"

#include "tests/notes/lists.h"

namespace {

namespace intake = ledgerboard::intake;
namespace lists = ledgerboard::notes_lists;
using lists::Item;
using nlohmann::json;

struct Share {
    int hits = 0;
    int truths = 0;
    int made = 0;

    [[nodiscard]] double recall() const {
        return truths == 0 ? 1.0 : static_cast<double>(hits) / truths;
    }

    [[nodiscard]] double precision() const {
        return made == 0 ? 1.0 : static_cast<double>(hits) / made;
    }
};

struct Score {
    std::string name;
    std::string manner;
    Share items;
    Share alternates;
    Share facts;
    int factsWrongButSure = 0;
    std::map<std::string, Share> factsByName;
    std::vector<Item> made;
    std::vector<Item> wanted;
    // How many of the list's items would match if one part were forgiven, and how many objects of
    // the list no table holds: where to look next, in figures alone.
    int butForSpace = 0;
    int butForTreatment = 0;
    int butForObject = 0;
    int objectsUnknown = 0;
    int spaces = 0;
    int spacesFound = 0;
    int spacesUnknown = 0;
};

// Matches one to one by the parts that `same` compares.
template <class Same>
int matches(const std::vector<Item>& wanted, const std::vector<Item>& made, Same same) {
    std::vector<bool> used(made.size(), false);
    int hits = 0;
    for (const Item& want : wanted) {
        for (std::size_t i = 0; i < made.size(); ++i) {
            if (!used[i] && same(want, made[i])) {
                used[i] = true;
                ++hits;
                break;
            }
        }
    }
    return hits;
}

// Whether the two name one choice: the same space, and a word of the question or an option shared.
bool sameChoice(const json& truth, const intake::DraftAlternate& made) {
    if (intake::spaceName(truth.at("space").get<std::string>()) != intake::spaceName(made.space)) {
        return false;
    }
    std::string words = truth.at("question").get<std::string>();
    for (const json& option : truth.at("options")) {
        words += " " + (option.is_string() ? option.get<std::string>()
                                           : option.at("name").get<std::string>());
    }
    std::string ours = made.question;
    for (const intake::DraftOption& option : made.options) {
        ours += " " + option.name;
    }
    const std::set<std::string> plain = {"as", "is",   "the", "a",  "leave", "add", "material",
                                         "no", "with", "and", "it", "keep",  "or"};
    const std::vector<std::string> left = intake::stemsIn(words);
    const std::vector<std::string> right = intake::stemsIn(ours);
    return std::any_of(left.begin(), left.end(), [&](const std::string& word) {
        return !plain.contains(word) && std::find(right.begin(), right.end(), word) != right.end();
    });
}

void scoreItems(const json& truth, const intake::Draft& draft, Score& score, bool misses) {
    std::vector<Item> wanted = lists::itemsListed(truth);
    score.made = lists::itemsMade(draft, wanted);
    score.items.hits = static_cast<int>(
        std::count_if(wanted.begin(), wanted.end(), [](const Item& item) { return item.right; }));
    score.items.truths = static_cast<int>(wanted.size());
    score.items.made = static_cast<int>(draft.items.size());
    const int hits = score.items.hits;
    score.butForSpace = matches(wanted, score.made,
                                [](const Item& a, const Item& b) {
                                    return a.treatment == b.treatment && a.object == b.object;
                                }) -
                        hits;
    score.butForTreatment = matches(wanted, score.made,
                                    [](const Item& a, const Item& b) {
                                        return a.space == b.space && a.object == b.object;
                                    }) -
                            hits;
    score.butForObject = matches(wanted, score.made,
                                 [](const Item& a, const Item& b) {
                                     return a.space == b.space && a.treatment == b.treatment;
                                 }) -
                         hits;
    for (const json& item : truth.at("items")) {
        score.objectsUnknown += intake::isKnownObject(item.at("object").get<std::string>()) ? 0 : 1;
    }
    for (const json& space : truth.at("spaces")) {
        const std::string name = intake::spaceName(space.get<std::string>());
        ++score.spaces;
        score.spacesFound += std::any_of(score.made.begin(), score.made.end(),
                                         [&](const Item& item) { return item.space == name; })
                                 ? 1
                                 : 0;
        score.spacesUnknown += intake::isKnownSpace(space.get<std::string>()) ? 0 : 1;
    }
    score.wanted = wanted;
    if (misses) {
        for (const Item& item : wanted) {
            if (!item.right) {
                std::printf("  missed   %s  (%s, %s)\n", item.written.c_str(), item.space.c_str(),
                            item.object.c_str());
            }
        }
        for (const Item& item : score.made) {
            if (!item.right) {
                std::printf("  invented %s\n", item.written.c_str());
            }
        }
    }
}

void scoreAlternates(const json& truth, const intake::Draft& draft, Score& score, bool misses) {
    std::vector<bool> used(draft.alternates.size(), false);
    for (const json& want : truth.at("alternates")) {
        bool found = false;
        for (std::size_t i = 0; i < draft.alternates.size() && !found; ++i) {
            if (!used[i] && sameChoice(want, draft.alternates[i])) {
                used[i] = found = true;
                ++score.alternates.hits;
            }
        }
        if (!found && misses) {
            std::printf("  missed   alternate %s: %s\n",
                        want.at("space").get<std::string>().c_str(),
                        want.at("question").get<std::string>().c_str());
        }
    }
    for (std::size_t i = 0; i < used.size(); ++i) {
        if (!used[i] && misses) {
            std::printf("  invented alternate %s: %s   <%d: %s>\n",
                        draft.alternates[i].space.c_str(), draft.alternates[i].question.c_str(),
                        draft.alternates[i].source.line,
                        draft.alternates[i].source.sentence.substr(0, 90).c_str());
        }
    }
    score.alternates.truths = static_cast<int>(truth.at("alternates").size());
    score.alternates.made = static_cast<int>(draft.alternates.size());
}

void scoreFacts(const json& truth, const intake::Draft& draft, Score& score, bool misses) {
    std::set<std::string> wanted;
    for (const auto& [name, values] : truth.at("facts").items()) {
        for (const json& value : values) {
            wanted.insert(name + " " +
                          (value.is_string() ? value.get<std::string>() : value.dump()));
            ++score.factsByName[name].truths;
        }
    }
    score.facts.truths = static_cast<int>(wanted.size());
    for (const intake::DraftFact& fact : draft.facts) {
        const std::string made = fact.name + " " + fact.value;
        ++score.facts.made;
        ++score.factsByName[fact.name].made;
        if (wanted.erase(made) > 0) {
            ++score.facts.hits;
            ++score.factsByName[fact.name].hits;
            continue;
        }
        score.factsWrongButSure += fact.source.sure >= 90 ? 1 : 0;
        if (misses) {
            std::printf("  wrong    fact %s   (%d) <%d: %s>\n", made.c_str(), fact.source.sure,
                        fact.source.line, fact.source.sentence.substr(0, 90).c_str());
        }
    }
    for (const std::string& fact : wanted) {
        if (misses) {
            std::printf("  missed   fact %s\n", fact.c_str());
        }
    }
}

struct Settings {
    double bar = 0;
    bool misses = false;
    bool noTexts = false;
    bool unsure = false;
    bool unmarked = false;
    std::filesystem::path second;  // a folder of lists
    std::vector<std::filesystem::path> folders;
};

// A list as if the reader had made it.
intake::Draft draftOf(const json& list) {
    intake::Draft draft;
    for (const json& item : list.at("items")) {
        intake::DraftItem& made = draft.items.emplace_back();
        made.space = item.at("space");
        made.treatment = item.at("treatment");
        made.object = item.at("object");
    }
    for (const json& alternate : list.at("alternates")) {
        intake::DraftAlternate& made = draft.alternates.emplace_back();
        made.space = alternate.at("space");
        made.question = alternate.at("question");
        for (const json& option : alternate.at("options")) {
            made.options.emplace_back().name = option;
        }
    }
    for (const auto& [name, values] : list.at("facts").items()) {
        for (const json& value : values) {
            intake::DraftFact& made = draft.facts.emplace_back();
            made.name = name;
            made.value = value;
        }
    }
    return draft;
}

// The notes' other list: LISTS/open/NAME.json for open/NAME.txt.
std::filesystem::path secondOf(const std::filesystem::path& notes, const Settings& settings) {
    return settings.second / notes.parent_path().filename() / (notes.stem().string() + ".json");
}

// As a phone may write what it hears. What is part of a figure stays: "1,350", "2.5", "0:45".
std::string withoutMarks(const std::string& text) {
    const auto isDigit = [&](std::size_t at) {
        return at < text.size() && text[at] >= '0' && text[at] <= '9';
    };
    std::string plain;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        const bool mark = std::string_view(".,;:!?\"()-").find(c) != std::string_view::npos;
        if (mark && !(isDigit(i + 1) && i > 0 && isDigit(i - 1))) {
            plain += ' ';
        } else {
            plain += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        }
    }
    return plain;
}

Score scoreFile(const std::filesystem::path& notes, const Settings& settings) {
    const bool misses = settings.misses && !settings.noTexts;
    const json truth = lists::listBeside(notes);
    Score score;
    score.name = notes.stem().string();
    score.manner = truth.at("manner").get<std::string>();
    intake::ReadOptions options;
    if (settings.unsure) {
        options.leastSure = 0;
    }
    const std::string text = lists::slurp(notes);
    const ledgerboard::model::Result<intake::Draft> draft =
        settings.second.empty()
            ? intake::readNotes(settings.unmarked ? withoutMarks(text) : text, options)
            : draftOf(lists::listBeside(secondOf(notes, settings)));
    if (!draft.ok()) {
        std::printf("%s: %s\n", score.name.c_str(), draft.error().message.c_str());
        score.items.truths = static_cast<int>(truth.at("items").size());
        return score;
    }
    if (misses) {
        std::printf("%s\n", score.name.c_str());
    }
    scoreItems(truth, draft.value(), score, misses);
    scoreAlternates(truth, draft.value(), score, misses);
    scoreFacts(truth, draft.value(), score, misses);
    return score;
}

void printLine(const char* name, const char* manner, double recall, double precision,
               const Share& alternates, const Share& facts, int wrongSure) {
    std::printf(
        "%-24s %-18s recall %.2f  precision %.2f   alternates %d of %d, invented %d   "
        "facts %d of %d, wrong %d, wrong at 90 and more %d\n",
        name, manner, recall, precision, alternates.hits, alternates.truths,
        alternates.made - alternates.hits, facts.hits, facts.truths, facts.made - facts.hits,
        wrongSure);
}

// Prints the means of some scores; returns the lower of mean recall and mean precision.
double printMean(const std::string& name, const std::vector<const Score*>& scores) {
    double recall = 0;
    double precision = 0;
    Share alternates;
    Share facts;
    int wrongSure = 0;
    const auto add = [](Share& sum, const Share& one) {
        sum.hits += one.hits;
        sum.truths += one.truths;
        sum.made += one.made;
    };
    for (const Score* score : scores) {
        recall += score->items.recall();
        precision += score->items.precision();
        add(alternates, score->alternates);
        add(facts, score->facts);
        wrongSure += score->factsWrongButSure;
    }
    const auto count = static_cast<double>(scores.size());
    recall /= count;
    precision /= count;
    printLine(name.c_str(), "", recall, precision, alternates, facts, wrongSure);
    return std::min(recall, precision);
}

void printCalibration(const std::vector<Score>& scores) {
    constexpr std::array<int, 6> kFrom = {90, 80, 70, 60, 40, 0};
    std::array<int, 6> made{};
    std::array<int, 6> right{};
    for (const Score& score : scores) {
        for (const Item& item : score.made) {
            std::size_t band = 0;
            while (item.sure < kFrom[band]) {
                ++band;
            }
            ++made[band];
            right[band] += item.right ? 1 : 0;
        }
    }
    std::printf("sure      items  right\n");
    for (std::size_t i = 0; i < kFrom.size(); ++i) {
        if (made[i] > 0) {
            std::printf("from %-3d  %5d   %3d %%\n", kFrom[i], made[i], right[i] * 100 / made[i]);
        }
    }
}

// Of each treatment, how many items are listed, made and right: where to look next.
void printTreatments(const std::vector<Score>& scores) {
    struct Counts {
        int listed = 0;
        int made = 0;
        int right = 0;
    };

    std::map<std::string, Counts> counts;
    for (const Score& score : scores) {
        for (const Item& item : score.wanted) {
            ++counts[item.treatment].listed;
        }
        for (const Item& item : score.made) {
            ++counts[item.treatment].made;
            counts[item.treatment].right += item.right ? 1 : 0;
        }
    }
    std::printf("treatment   listed   made  right\n");
    for (const auto& [treatment, count] : counts) {
        std::printf("%-10s  %6d  %5d  %5d\n", treatment.c_str(), count.listed, count.made,
                    count.right);
    }
}

// The same of each fact of the deal.
void printFacts(const std::vector<Score>& scores) {
    std::map<std::string, Share> facts;
    for (const Score& score : scores) {
        for (const auto& [name, share] : score.factsByName) {
            facts[name].truths += share.truths;
            facts[name].made += share.made;
            facts[name].hits += share.hits;
        }
    }
    std::printf("fact            listed   made  right\n");
    for (const auto& [name, share] : facts) {
        std::printf("%-14s  %6d  %5d  %5d\n", name.c_str(), share.truths, share.made, share.hits);
    }
}

// A passage's list of alternates, as those of a note are written.
json alternatesOf(const json& passage) {
    json list = {{"alternates", json::array()}};
    for (const json& alternate : passage.value("alternates", json::array())) {
        list["alternates"].push_back({{"space", passage.at("space")},
                                      {"question", alternate.at(0)},
                                      {"options", alternate.at(1)}});
    }
    return list;
}

// The choices of passages, by the manner their file is named for; each is read by itself, under
// its space.
std::map<std::string, Share> scorePassages(const std::vector<std::filesystem::path>& folders,
                                           bool misses) {
    std::map<std::string, Share> shares;
    for (const std::filesystem::path& path : lists::filesIn(folders, ".jsonl")) {
        std::ifstream in(path);
        std::string line;
        const std::string name = path.stem().string();
        Share& share = shares[name.substr(0, name.find_last_of('-'))];
        for (int number = 1; std::getline(in, line); ++number) {
            if (line.empty()) {
                continue;
            }
            const json passage = json::parse(line);
            const auto draft = intake::readNotes(passage.at("space").get<std::string>() + ":\n" +
                                                 passage.at("say").get<std::string>() + "\n");
            if (!draft.ok()) {
                std::printf("%s:%d: %s\n", name.c_str(), number, draft.error().message.c_str());
                continue;
            }
            Score score;
            scoreAlternates(alternatesOf(passage), draft.value(), score, misses);
            const Share& one = score.alternates;
            if (misses && (one.hits < one.truths || one.hits < one.made)) {
                std::printf("%s:%d: %s\n\n", name.c_str(), number, line.c_str());
            }
            share.hits += one.hits;
            share.truths += one.truths;
            share.made += one.made;
        }
    }
    return shares;
}

// With a last line for all of them.
void printPassages(std::map<std::string, Share> shares) {
    Share sum;
    for (const auto& [manner, share] : shares) {
        sum.hits += share.hits;
        sum.truths += share.truths;
        sum.made += share.made;
    }
    shares["~ of all passages"] = sum;
    for (const auto& [manner, share] : shares) {
        std::printf("%-24s alternates %d of %d, invented %d\n", manner.c_str(), share.hits,
                    share.truths, share.made - share.hits);
    }
}

// Nothing where the arguments can't be used; why is printed.
std::optional<Settings> settingsOf(const std::vector<std::string>& arguments) {
    Settings settings;
    for (std::size_t i = 0; i < arguments.size(); ++i) {
        const std::string& argument = arguments[i];
        if (argument == "--bar" && i + 1 < arguments.size()) {
            settings.bar = std::atof(arguments[++i].c_str());
        } else if (argument == "--second" && i + 1 < arguments.size()) {
            settings.second = arguments[++i];
        } else if (argument == "--misses") {
            settings.misses = true;
        } else if (argument == "--no-texts") {
            settings.noTexts = true;
        } else if (argument == "--unmarked") {
            settings.unmarked = true;
        } else if (argument == "--all") {
            settings.unsure = true;
        } else if (std::filesystem::is_directory(argument)) {
            settings.folders.emplace_back(argument);
        } else {
            std::fprintf(stderr, "score-notes: %s is no folder\n", argument.c_str());
            return std::nullopt;
        }
    }
    if (!settings.second.empty() && !std::filesystem::is_directory(settings.second)) {
        std::fprintf(stderr, "score-notes: %s is no folder\n", settings.second.c_str());
        return std::nullopt;
    }
    return settings;
}

// Prints all of them; returns the lower of mean recall and mean precision.
double printScores(const std::vector<Score>& scores) {
    std::map<std::string, std::vector<const Score*>> byManner;
    std::vector<const Score*> all;
    for (const Score& score : scores) {
        printLine(score.name.c_str(), score.manner.c_str(), score.items.recall(),
                  score.items.precision(), score.alternates, score.facts, score.factsWrongButSure);
        std::printf(
            "%24s %d of %d; but for the space +%d, the treatment +%d, the object +%d; "
            "objects in no table %d; spaces %d of %d, in no table %d\n",
            "", score.items.hits, score.items.truths, score.butForSpace, score.butForTreatment,
            score.butForObject, score.objectsUnknown, score.spacesFound, score.spaces,
            score.spacesUnknown);
        byManner[score.manner].push_back(&score);
        all.push_back(&score);
    }
    std::printf("\n");
    for (const auto& [manner, group] : byManner) {
        printMean(manner, group);
    }
    const double lower = printMean("mean of all", all);
    printTreatments(scores);
    printFacts(scores);
    printCalibration(scores);
    return lower;
}

int run(const std::vector<std::string>& arguments) {
    const std::optional<Settings> settings = settingsOf(arguments);
    if (!settings) {
        return 2;
    }
    std::vector<std::filesystem::path> notes = lists::notesIn(settings->folders);
    if (!settings->second.empty()) {
        std::erase_if(notes, [&](const std::filesystem::path& path) {
            return !std::filesystem::exists(secondOf(path, *settings));
        });
    }
    if (settings->unmarked) {
        std::erase_if(notes, [](const std::filesystem::path& path) {
            return lists::listBeside(path).value("manner", "") != "dictated";
        });
    }
    const std::map<std::string, Share> passages =
        scorePassages(settings->folders, settings->misses && !settings->noTexts);
    if (!passages.empty()) {
        printPassages(passages);
    }
    if (notes.empty() && !passages.empty()) {
        return 0;
    }
    if (notes.empty()) {
        std::fprintf(stderr, "score-notes: no notes with a list beside them in the folders\n");
        return 2;
    }
    std::vector<Score> scores;
    scores.reserve(notes.size());
    for (const std::filesystem::path& path : notes) {
        scores.push_back(scoreFile(path, *settings));
    }
    const double lower = printScores(scores);
    if (settings->bar > 0 && lower < settings->bar) {
        std::printf("Below the bar of %.2f.\n", settings->bar);
        return 1;
    }
    return 0;
}

}  // namespace

int main(int argc, char** argv) {
    return lists::runTool("score-notes", [&] { return run({argv + 1, argv + argc}); });
}
