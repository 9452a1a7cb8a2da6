// Weighs the clues that tell in which place a thing is, and prints core/intake/tables/places.tsv.
//
//   weigh-places FOLDER ... > places.tsv
//
// Reads notes that have a careful list beside them (NAME.txt, NAME.json). The lists tell where
// things are, not where in the talk that is said: a mention is taken to be right where the rules
// put it if the list has such a thing there; else it is meant where the list has such a thing and
// the rules put none. Other mentions teach nothing. Run it by tests/notes/weigh; notes of
// tests/notes/held-out are never given to it.
//
// To standard error goes how well it does on talk left out: notes are dealt into five parts, and
// each part is judged by weights made of the other four. Deterministic: no chance, no clock.
#include <cstdio>
#include <filesystem>
#include <map>
#include <set>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/intake/notes/read_notes.h"

#include "tests/notes/fit.h"
#include "tests/notes/lists.h"

namespace {

namespace intake = ledgerboard::intake;
namespace lists = ledgerboard::notes_lists;
namespace weights = ledgerboard::notes_weights;
using Weights = std::vector<weights::Weights<1>>;
using Placed = std::pair<std::string, std::string>;  // space, object

constexpr int kLeastSeen = 6;    // a clue of fewer places is left out
constexpr float kFaint = 0.05F;  // what weighs less is left out

struct Mention {
    std::string object;
    std::vector<std::string> ruled;
    std::vector<std::string> spaces;
    std::vector<std::vector<std::string>> clues;  // by space
    std::vector<bool> right;                      // likewise; empty where the list tells nothing
    weights::Ranking ranking;
    std::size_t chosen = 0;
};

struct Talk {
    std::string name;
    std::set<Placed> listed;
    std::vector<Mention> mentions;
};

std::string objectIn(const std::string& space, const std::string& object) {
    return lists::itemOf(space, "", object).object;
}

// Which of the spaces the mention is meant for, as far as the list tells.
void teach(Talk& talk) {
    std::set<Placed> ruled;
    for (const Mention& mention : talk.mentions) {
        for (const std::string& space : mention.ruled) {
            ruled.insert({space, mention.object});
        }
    }
    for (Mention& mention : talk.mentions) {
        if (mention.spaces.empty()) {
            continue;
        }
        const bool kept = talk.listed.contains({mention.ruled.front(), mention.object});
        std::vector<bool> right;
        for (const std::string& space : mention.spaces) {
            const Placed there{space, mention.object};
            right.push_back(talk.listed.contains(there) && (kept || !ruled.contains(there)));
        }
        if (std::find(right.begin(), right.end(), true) != right.end()) {
            mention.right = right;
        }
    }
}

Talk talkOf(const std::filesystem::path& path) {
    Talk talk;
    talk.name = path.stem().string();
    for (const lists::Item& item : lists::itemsListed(lists::listBeside(path))) {
        talk.listed.insert({item.space, item.object});
    }
    intake::ReadOptions options;
    options.explain = true;
    const auto reading = intake::explainNotes(lists::slurp(path), options);
    if (!reading.ok()) {
        std::fprintf(stderr, "weigh-places: %s: %s\n", talk.name.c_str(),
                     reading.error().message.c_str());
        return talk;
    }
    for (const intake::NamedWhereabouts& where : reading.value().whereabouts) {
        if (where.ruled.empty()) {
            continue;
        }
        Mention& mention = talk.mentions.emplace_back();
        mention.object = objectIn(where.ruled.front(), where.object);
        for (const std::string& space : where.ruled) {
            mention.ruled.push_back(lists::itemOf(space, "", where.object).space);
        }
        for (const intake::NamedPlace& place : where.places) {
            mention.spaces.push_back(lists::itemOf(place.space, "", where.object).space);
            mention.clues.push_back(place.clues);
        }
    }
    teach(talk);
    return talk;
}

weights::Numbers numbersOf(const std::vector<Talk*>& talks) {
    std::unordered_map<std::string, int> seen;
    for (const Talk* talk : talks) {
        for (const Mention& mention : talk->mentions) {
            for (std::size_t i = 0; i < mention.clues.size() && !mention.right.empty(); ++i) {
                const std::set<std::string_view> met(mention.clues[i].begin(),
                                                     mention.clues[i].end());
                for (const std::string_view clue : met) {
                    ++seen[std::string(clue)];
                }
            }
        }
    }
    return weights::Numbers(seen, kLeastSeen);
}

void lay(Mention& mention, const weights::Numbers& numbers) {
    mention.ranking.ways.clear();
    for (const std::vector<std::string>& clues : mention.clues) {
        std::vector<std::uint32_t> way = numbers.of(clues);
        std::sort(way.begin(), way.end());
        way.erase(std::unique(way.begin(), way.end()), way.end());
        mention.ranking.ways.push_back(std::move(way));
    }
    mention.ranking.right = mention.right;
}

Weights fit(const std::vector<Talk*>& talks, const weights::Numbers& numbers) {
    std::vector<const weights::Ranking*> examples;
    for (Talk* talk : talks) {
        for (Mention& mention : talk->mentions) {
            if (!mention.right.empty()) {
                lay(mention, numbers);
                examples.push_back(&mention.ranking);
            }
        }
    }
    Weights found = weights::RankFit(examples, numbers.names().size()).run();
    weights::dropFaint(found, kFaint);
    return found;
}

void judgeByOthers(std::vector<Talk>& talks) {
    const auto part = [](const Talk& talk) { return weights::partOf(talk.name); };
    const auto judge = [](const std::vector<Talk*>& others, const std::vector<Talk*>& left) {
        const weights::Numbers numbers = numbersOf(others);
        const Weights found = fit(others, numbers);
        for (Talk* talk : left) {
            for (Mention& mention : talk->mentions) {
                if (mention.spaces.empty()) {
                    continue;
                }
                lay(mention, numbers);
                const std::vector<float> scores = weights::scoresOf(mention.ranking.ways, found);
                mention.chosen = static_cast<std::size_t>(
                    std::max_element(scores.begin(), scores.end()) - scores.begin());
            }
        }
    };
    weights::eachPart(talks, part, judge);
}

// Of the listed things, how many were named in their place, by the rules and by the weights; and
// how many were named where the list has none, though it has such a thing elsewhere.
void printPlaced(const std::vector<Talk>& talks) {
    std::size_t listed = 0;
    std::map<bool, std::size_t> placed;
    std::map<bool, std::size_t> astray;
    for (const Talk& talk : talks) {
        listed += talk.listed.size();
        std::set<std::string> objects;
        for (const Placed& there : talk.listed) {
            objects.insert(there.second);
        }
        for (const bool weighed : {false, true}) {
            std::set<Placed> named;
            for (const Mention& mention : talk.mentions) {
                if (weighed && !mention.spaces.empty()) {
                    named.insert({mention.spaces[mention.chosen], mention.object});
                    continue;
                }
                for (const std::string& space : mention.ruled) {
                    named.insert({space, mention.object});
                }
            }
            for (const Placed& there : named) {
                if (talk.listed.contains(there)) {
                    ++placed[weighed];
                } else {
                    astray[weighed] += objects.contains(there.second) ? 1 : 0;
                }
            }
        }
    }
    for (const bool weighed : {false, true}) {
        std::fprintf(stderr, "%-15s %zu of %zu listed things named in their place, %zu astray\n",
                     weighed ? "by the weights:" : "by the rules:", placed[weighed], listed,
                     astray[weighed]);
    }
}

void writeTable(const weights::Numbers& numbers, const Weights& found) {
    std::printf(
        "# Which of the places spoken of near by is a thing in? Written by\n"
        "# tests/notes/weigh_places.cpp; not by hand. A clue, a tab, its weight in thousandths.\n");
    for (std::size_t i = 0; i < found.size(); ++i) {
        if (const long weight = std::lround(found[i][0] * 1000); weight != 0) {
            std::printf("%s\t%ld\n", numbers.names()[i].c_str(), weight);
        }
    }
}

}  // namespace

int main(int argc, char** argv) {
    const std::vector<std::filesystem::path> folders(argv + 1, argv + argc);
    if (folders.empty() || !std::all_of(folders.begin(), folders.end(), [](const auto& folder) {
            return std::filesystem::is_directory(folder);
        })) {
        std::fprintf(stderr, "weigh-places: folders of notes with lists are needed\n");
        return 2;
    }
    std::vector<Talk> talks;
    for (const std::filesystem::path& path : lists::notesIn(folders)) {
        talks.push_back(talkOf(path));
    }
    judgeByOthers(talks);
    printPlaced(talks);
    std::vector<Talk*> all;
    all.reserve(talks.size());
    for (Talk& talk : talks) {
        all.push_back(&talk);
    }
    const weights::Numbers numbers = numbersOf(all);
    writeTable(numbers, fit(all, numbers));
    return 0;
}
