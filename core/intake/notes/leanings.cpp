#include "core/intake/notes/leanings.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <map>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>

#include "core/intake/notes/clue_table.h"
#include "core/intake/notes/merge.h"
#include "core/intake/tables/embedded.h"

namespace ledgerboard::intake {

namespace {

using model::Treatment;

constexpr std::size_t kTreatments = model::wordsOf<Treatment>().size();
constexpr std::size_t kFirstHeard = 6;
constexpr std::size_t kLastHeard = 6;
constexpr int kSureOfOwn = 95;        // percent: what the owner's own word says
constexpr double kLeastLooked = 0.1;  // what is less likely is not even counted as left out

// Of one clue, in hundredths, by treatment. As wide as is added up at once.
constexpr std::size_t kWide = 16;
static_assert(kTreatments <= kWide);
using Row = std::array<std::int16_t, kWide>;

// leanings.tsv: a clue, a tab, its weights parted by blanks.
class Weights {
  public:
    Weights() {
        std::string_view text = embeddedTable("leanings");
        for (int line = 1; !text.empty(); ++line) {
            const std::size_t end = std::min(text.find('\n'), text.size());
            const std::string_view row = text.substr(0, end);
            text.remove_prefix(std::min(end + 1, text.size()));
            if (!row.empty() && row.front() != '#' && !take(row)) {
                faults_.push_back("leanings.tsv:" + std::to_string(line) +
                                  ": not a clue, a tab, and a weight for each treatment");
            }
        }
    }

    [[nodiscard]] const ClueTable<Row>& rows() const { return rows_; }

    [[nodiscard]] int least() const { return least_; }

    // The odds on the item being right are those of the treatment, drawn in: a thing may be named
    // or placed wrongly too.
    [[nodiscard]] int sureOf(double chance) const {
        constexpr double kLeastOdds = 1e-6;
        const double odds = std::max(chance, kLeastOdds) / std::max(1 - chance, kLeastOdds);
        const double drawn = (shift_ + slope_ * std::log(odds)) / 100.0;
        const long percent = std::lround(100.0 / (1.0 + std::exp(-drawn)));
        return static_cast<int>(std::clamp(percent, 1L, 99L));
    }

    [[nodiscard]] const std::vector<std::string>& faults() const { return faults_; }

  private:
    bool take(std::string_view row) {
        const std::size_t tab = row.find('\t');
        if (tab == std::string_view::npos) {
            return false;
        }
        const std::string_view clue = row.substr(0, tab);
        Row weights{};
        std::size_t count = 0;
        const char* last = row.data() + row.size();
        for (const char* at = row.data() + tab + 1; at < last; ++count) {
            int weight = 0;
            const auto [stop, error] = std::from_chars(at, last, weight);
            if (error != std::errc() || (stop != last && *stop != ' ') ||
                std::abs(weight) > 3'000 || count + 1 == kTreatments) {
                return false;
            }
            weights[count + 1] = static_cast<std::int16_t>(weight);
            at = stop + (stop == last ? 0 : 1);
        }
        const std::array<std::pair<std::string_view, int*>, 3> figures = {
            {{"least", &least_}, {"sure shift", &shift_}, {"sure slope", &slope_}}};
        for (const auto& [name, figure] : figures) {
            if (clue == name) {
                *figure = weights[1];
                return count == 1;
            }
        }
        return count + 1 == kTreatments && rows_.add(clueKey(clue), weights);
    }

    ClueTable<Row> rows_;
    std::vector<std::string> faults_;
    int least_ = 0;
    int shift_ = 0;    // hundredths
    int slope_ = 100;  // hundredths
};

const Weights& weights() {
    static const Weights kWeights;
    return kWeights;
}

// The words that clues of a thing by itself begin with, and those that they tell with.
struct Words {
    const ClueWords every{"every"};
    const ClueWords thing{"thing"};
    const ClueWords family{"family"};
    const ClueWords trade{"trade"};
    const ClueWords mentions{"mentions"};
    const ClueWords walk{"walk"};
    const ClueWords place{"place"};
    const ClueWords outdoors{"outdoors"};
    const ClueWords whole{"whole"};
    const ClueWords room{"room"};
    const ClueWords thingIn{"thing in"};
    const ClueWords made{"made"};
    const ClueWords nothing{"nothing"};
    const ClueWords thingMade{"thing made"};
    const ClueWords familyMade{"family made"};
    const ClueWords sign{"sign"};
    const ClueWords rival{"rival"};
    const ClueWords rivalBefore{"rival before"};
    const ClueWords rivalAfter{"rival after"};
};

const Words& words() {
    static const Words kWords;
    return kWords;
}

// What the thing is, and what the rules made of it.
void addThing(const Thing& thing, const std::vector<Found>& made, const Walk& walk, Clues& clues) {
    constexpr std::size_t kMany = 4;
    const Words& to = words();
    const ThingWords& object = thingWords(thing.object);
    clues.add(&to.every);
    clues.add(&to.thing, &object.name);
    clues.add(&to.family, &object.family);
    clues.add(&to.trade, &object.trade);
    clues.add(&to.mentions, &figureWords(std::min(thing.mentions.size(), kMany)));
    if (walk.known().size() > 2) {
        clues.add(&to.walk);
    }
    if (const KnownSpace* space = walk.find(thing.place)) {
        clues.add(&to.place, space->kind == SpaceKind::Outside ? &to.outdoors
                             : space->kind == SpaceKind::Whole ? &to.whole
                                                               : &to.room);
        const std::string_view key = space->key;
        const ClueWords room(key.substr(key.rfind(' ') + 1));
        clues.add(&to.room, &room);
        clues.add(&to.thingIn, &object.name, &room);
    }
    if (thing.made.empty()) {
        clues.add(&to.made, &to.nothing);
        clues.add(&to.thingMade, &object.name, &to.nothing);
    }
    for (const std::size_t i : thing.made) {
        const ClueWords& treatment = treatmentWords(made[i].treatment);
        clues.add(&to.made, &treatment);
        clues.add(&to.made, &treatment, &figureWords(static_cast<std::size_t>(made[i].weight)));
        clues.add(&to.thingMade, &object.name, &treatment);
        clues.add(&to.familyMade, &object.family, &treatment);
        for (const Sign& sign : made[i].signs) {
            clues.add(&to.sign, &treatment, &kindWords(sign.kind), &valueWords(sign));
        }
    }
}

// Another thing that serves the same end, and what was made of it: plank where carpet was.
void addRivals(const std::vector<Thing>& things, const std::vector<Found>& made,
               std::vector<Evidence>& evidence) {
    std::unordered_map<std::string, std::vector<std::size_t>> byEnd;
    const auto endOf = [](const Thing& thing) {
        return thing.place + "\n" + tables().objects[thing.object].family;
    };
    for (std::size_t i = 0; i < things.size(); ++i) {
        if (!tables().objects[things[i].object].family.empty()) {
            byEnd[endOf(things[i])].push_back(i);
        }
    }
    constexpr std::size_t kMost = 8;
    const Words& to = words();
    for (const auto& [end, all] : byEnd) {
        for (std::size_t k = 0; k < all.size(); ++k) {
            Clues& clues = evidence[all[k]].thing;
            for (std::size_t other = 0; other < all.size() && other < kMost; ++other) {
                if (other == k) {
                    continue;
                }
                clues.add(other < k ? &to.rivalBefore : &to.rivalAfter);
                for (const std::size_t i : things[all[other]].made) {
                    clues.add(&to.rival, &treatmentWords(made[i].treatment));
                }
            }
        }
    }
}

// By treatment: the weights of the clues, added up.
Chances scoresOf(const Clues& clues) {
    std::array<int, kWide> sums{};  // hundredths
    weights().rows().each(clues.keys(), [&](const Row& row) {
        for (std::size_t t = 0; t < kWide; ++t) {
            sums[t] += row[t];
        }
    });
    Chances scores{};
    for (std::size_t t = 1; t < kTreatments; ++t) {
        scores[t] = sums[t] / 100.0;
    }
    return scores;
}

bool isExchange(Treatment treatment) {
    return treatment == Treatment::Replace || treatment == Treatment::Remove ||
           treatment == Treatment::Add;
}

// What is exchanged is not mended, what is kept gets no work.
bool contradicts(Treatment a, Treatment b) {
    return isWork(a) != isWork(b) || isExchange(a) || isExchange(b) || !isWork(a);
}

// "It's oak. … Sand the floor.": where one floor is named, the floor is that one.
void joinFloors(std::vector<Thing>& things) {
    static const std::uint32_t kFloor = tables().objectNamed("floor");

    struct Floors {
        std::size_t general = kNone;
        std::size_t named = kNone;
        int count = 0;
    };

    std::unordered_map<std::string, Floors> byPlace;
    for (std::size_t i = 0; i < things.size(); ++i) {
        if (things[i].object == kFloor) {
            byPlace[things[i].place].general = i;
        } else if (tables().objects[things[i].object].family == "floor") {
            Floors& floors = byPlace[things[i].place];
            floors.named = i;
            ++floors.count;
        }
    }
    for (const auto& [place, floors] : byPlace) {
        if (floors.general == kNone || floors.count != 1) {
            continue;
        }
        Thing& general = things[floors.general];
        Thing& named = things[floors.named];
        for (auto part : {&Thing::mentions, &Thing::made}) {
            (named.*part)
                .insert((named.*part).end(), (general.*part).begin(), (general.*part).end());
            std::sort((named.*part).begin(), (named.*part).end());
        }
        general.object = kNone;
    }
    std::erase_if(things, [](const Thing& thing) { return thing.object == kNone; });
}

}  // namespace

std::vector<Thing> thingsOf(const std::vector<Mention>& mentions, const std::vector<Found>& made,
                            const Walk& walk) {
    std::vector<Thing> things;
    std::unordered_map<std::string, std::size_t> byKey;
    const auto thingAt = [&](const std::string& place, std::uint32_t object) -> Thing& {
        const std::string key = place + "\n" + std::to_string(object);
        const auto [at, fresh] = byKey.emplace(key, things.size());
        if (fresh) {
            things.push_back({place, object, {}, {}});
        }
        return things[at->second];
    };
    for (std::size_t i = 0; i < mentions.size(); ++i) {
        for (const std::string& group : mentions[i].places) {
            for (const std::string& place : placesOf(group, walk)) {
                thingAt(place, mentions[i].object).mentions.push_back(i);
            }
        }
    }
    for (std::size_t i = 0; i < made.size(); ++i) {
        thingAt(made[i].place, made[i].object).made.push_back(i);
    }
    joinFloors(things);
    return things;
}

std::vector<Evidence> evidenceOf(const std::vector<Thing>& things,
                                 const std::vector<Mention>& mentions,
                                 const std::vector<Found>& made, const Walk& walk, bool named) {
    std::vector<Evidence> all;
    all.reserve(things.size());
    for (const Thing& thing : things) {
        Evidence& one = all.emplace_back(Evidence{Clues(named), {}});
        addThing(thing, made, walk, one.thing);
        // What only says where something is tells nothing where the thing is named otherwise too.
        // Of what is named again and again, the first and the last times tell enough.
        std::vector<std::size_t> told;
        for (const std::size_t i : thing.mentions) {
            if (!mentions[i].aside) {
                told.push_back(i);
            }
        }
        const std::vector<std::size_t>& heard = told.empty() ? thing.mentions : told;
        const ThingWords& object = thingWords(thing.object);
        for (std::size_t k = 0; k < heard.size(); ++k) {
            if (k < kFirstHeard || k + kLastHeard >= heard.size()) {
                Clues& clues = one.mentions.emplace_back(mentions[heard[k]].clues);
                clues.addSaidOf(words().thing, object.name);
                clues.addSaidOf(words().family, object.family);
            }
        }
    }
    addRivals(things, made, all);
    if (named) {
        for (Evidence& one : all) {
            one.thing.settle();
            for (Clues& clues : one.mentions) {
                clues.settle();
            }
        }
    }
    return all;
}

Chances chancesOf(const Evidence& evidence) {
    Chances scores = scoresOf(evidence.thing);
    std::vector<Chances> told;
    told.reserve(evidence.mentions.size());
    for (const Clues& clues : evidence.mentions) {
        told.push_back(scoresOf(clues));
    }
    for (std::size_t t = 1; t < kTreatments && !told.empty(); ++t) {
        double most = told.front()[t];
        for (const Chances& one : told) {
            most = std::max(most, one[t]);
        }
        double sum = 0;
        for (const Chances& one : told) {
            sum += std::exp(one[t] - most);
        }
        scores[t] += most + std::log(sum / static_cast<double>(told.size()));
    }
    const double most = *std::max_element(scores.begin(), scores.end());
    Chances chances{};
    double sum = 0;
    for (std::size_t t = 0; t < kTreatments; ++t) {
        chances[t] = std::exp(scores[t] - most);
        sum += chances[t];
    }
    for (double& chance : chances) {
        chance /= sum;
    }
    return chances;
}

std::vector<Leaning> leaningsOf(const Thing& thing, const Chances& chances,
                                const std::vector<Found>& made) {
    std::vector<Leaning> leanings;
    for (const std::size_t i : thing.made) {
        if (made[i].own) {
            leanings.push_back({made[i].treatment, kSureOfOwn, i});
        }
    }
    if (!leanings.empty()) {
        return leanings;
    }
    const auto best = static_cast<Treatment>(std::max_element(chances.begin() + 1, chances.end()) -
                                             chances.begin());
    const auto add = [&](Treatment treatment, std::optional<std::size_t> from) {
        const double chance = chances[static_cast<std::size_t>(treatment)];
        leanings.push_back({treatment, weights().sureOf(chance), from});
    };
    const auto madeAs = [&](Treatment treatment) -> std::optional<std::size_t> {
        for (const std::size_t i : thing.made) {
            if (made[i].treatment == treatment) {
                return i;
            }
        }
        return std::nullopt;
    };
    if (chances[static_cast<std::size_t>(best)] >= kLeastLooked) {
        add(best, madeAs(best));
    }
    const bool rest = std::any_of(thing.made.begin(), thing.made.end(),
                                  [&](std::size_t i) { return made[i].rest; });
    for (const std::size_t i : thing.made) {
        const Treatment other = made[i].treatment;
        const double chance = chances[static_cast<std::size_t>(other)];
        if (other != best && !contradicts(best, other) && chance >= kLeastLooked) {
            // Both may well be so: what speaks for the likeliest does not speak against the other.
            const double left = 1 - chances[static_cast<std::size_t>(best)];
            leanings.push_back({other, weights().sureOf(chance / left), i});
            continue;
        }
        // "The rest of it is fine.": what is kept of it and what is worked on go together.
        const bool parted =
            (made[i].rest && isWork(best)) || (rest && best == Treatment::Keep && isWork(other));
        if (parted && !leanings.empty()) {
            leanings.push_back({other, leanings.front().sure, i});
        }
    }
    return leanings;
}

int leastSure() {
    return weights().least();
}

const std::vector<std::string>& leaningFaults() {
    return weights().faults();
}

int leaveOneNew(const std::vector<Thing>& things, std::vector<Chosen>& chosen) {
    constexpr int kSureByItself = 80;
    const auto isNew = [](const Chosen& one) {
        return one.treatment == Treatment::Replace || one.treatment == Treatment::Add;
    };
    const auto rowOf = [&](const Chosen& one) -> const ObjectRow& {
        return tables().objects[things[one.thing].object];
    };
    const auto keyOf = [&](const Chosen& one) {
        return std::pair(things[one.thing].place, rowOf(one).family);
    };

    struct Surest {
        int sure = 0;
        bool measured = false;
    };

    std::map<std::pair<std::string, std::string>, Surest> surest;  // by place and family
    for (const Chosen& one : chosen) {
        if (rowOf(one).lone && isNew(one)) {
            Surest& best = surest[keyOf(one)];
            if (one.item.source.sure > best.sure) {
                best = {one.item.source.sure, one.item.quantity.has_value()};
            }
        }
    }
    const auto isLeft = [&](const Chosen& one) {
        const bool lone = rowOf(one).lone && (isNew(one) || one.treatment == Treatment::Remove);
        const auto best = lone ? surest.find(keyOf(one)) : surest.end();
        return best != surest.end() && one.item.source.sure < kSureByItself &&
               one.item.source.sure < best->second.sure &&
               !(isNew(one) && one.item.quantity && best->second.measured);
    };
    return static_cast<int>(std::erase_if(chosen, isLeft));
}

}  // namespace ledgerboard::intake
