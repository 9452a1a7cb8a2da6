// The part of the reader that makes the items of the draft: of what the rules found, and of what
// the words around each thing tell.
#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>
#include <unordered_map>

#include "core/intake/notes/leanings.h"
#include "core/intake/notes/merge.h"
#include "core/intake/notes/reader.h"

namespace ledgerboard::intake {

using model::Treatment;

// The names of the draft for the thing, where it is and what it gets.
void Reader::nameItem(const std::string& place, std::uint32_t object, Treatment treatment,
                      DraftItem& item) const {
    item.space = shownAs(place);
    item.treatment = model::wordOf(treatment);
    item.object = tables().objects[object].name;
}

// The thing as an item: as the rules made it where they did, else as it was first named.
DraftItem Reader::itemOf(const Thing& thing, const Leaning& leaning,
                         const std::vector<Found>& made) const {
    DraftItem item;
    if (leaning.made) {
        item = made[*leaning.made].item;
    } else {
        item = thing.mentions.empty() ? made[thing.made.front()].item
                                      : mentions_[thing.mentions.front()].item;
        for (const std::size_t i : thing.made) {
            fillFigures(item, made[i].item);
        }
        for (const std::size_t i : thing.mentions) {
            fillFigures(item, mentions_[i].item);
        }
        const bool noted =
            leaning.treatment == Treatment::Keep || leaning.treatment == Treatment::Inspect;
        item.note = noted ? item.source.sentence : std::string();
    }
    nameItem(thing.place, thing.object, leaning.treatment, item);
    item.source.sure = leaning.sure;
    return item;
}

// "sink: replace 83 %, keep 9 %", at the sentence that names it.
void Reader::tellLeaning(const std::string& object, const Chances& chances, std::size_t sentence) {
    constexpr double kFaint = 0.05;
    std::vector<std::size_t> order;
    for (std::size_t t = 1; t < chances.size(); ++t) {
        if (chances[t] >= kFaint) {
            order.push_back(t);
        }
    }
    std::sort(order.begin(), order.end(),
              [&](std::size_t a, std::size_t b) { return chances[a] > chances[b]; });
    std::string told = object + ":";
    for (const std::size_t t : order) {
        told += (t == order.front() ? " " : ", ") +
                std::string(model::wordOf(static_cast<Treatment>(t))) + " " +
                std::to_string(std::lround(chances[t] * 100)) + " %";
    }
    told += order.empty() ? " nothing" : "";
    tell(sentence, "leanings", told);
}

// Adds to what a stage made of the sentence, where that is kept.
void Reader::tell(std::size_t sentence, const std::string& stage, const std::string& made) {
    if (sentence >= reading_.explained.size()) {
        return;
    }
    std::vector<StageWords>& stages = reading_.explained[sentence].stages;
    if (!stages.empty() && stages.back().stage == stage) {
        stages.back().made += "; " + made;
    } else {
        stages.push_back({stage, made});
    }
}

void Reader::nameThings(const std::vector<Thing>& things, const std::vector<Evidence>& evidence,
                        const std::vector<Chances>& chances, const std::vector<Found>& made) {
    for (std::size_t i = 0; i < things.size(); ++i) {
        NamedThing& named = reading_.things.emplace_back();
        named.space = shownAs(things[i].place);
        named.object = tables().objects[things[i].object].name;
        named.clues = evidence[i].thing.names();
        for (const Clues& clues : evidence[i].mentions) {
            named.mentions.push_back(clues.names());
        }
        for (const std::size_t k : things[i].made) {
            named.made.emplace_back(model::wordOf(made[k].treatment));
        }
        for (const std::size_t k : things[i].mentions) {
            tellLeaning(named.object, chances[i], mentions_[k].explained);
        }
    }
}

// In walking order of the spaces, then in the order of the notes.
void Reader::sortItems(std::vector<DraftItem>& items) const {
    std::unordered_map<std::string, std::size_t> order;
    for (std::size_t i = 0; i < walk_.known().size(); ++i) {
        order.emplace(walk_.known()[i].shown, i);
    }
    const auto rank = [&](const DraftItem& item) {
        const auto at = order.find(item.space);
        return at == order.end() ? walk_.known().size() : at->second;
    };
    // Items are big: their ranks are sorted, then they are moved once.
    std::vector<std::tuple<std::size_t, int, std::size_t>> ranks;
    ranks.reserve(items.size());
    for (std::size_t i = 0; i < items.size(); ++i) {
        ranks.emplace_back(rank(items[i]), items[i].source.line, i);
    }
    std::sort(ranks.begin(), ranks.end());
    std::vector<DraftItem> sorted;
    sorted.reserve(items.size());
    for (const auto& [space, line, i] : ranks) {
        sorted.push_back(std::move(items[i]));
    }
    items = std::move(sorted);
}

// Those that the speaker named, and those that an item turned out to belong to.
void Reader::listSpaces() {
    const std::vector<KnownSpace>& known = walk_.known();
    std::set<std::string> used;
    for (const DraftItem& item : reading_.draft.items) {
        used.insert(item.space);
    }
    for (std::size_t i = 0; i < known.size(); ++i) {
        const bool spoken = i < spoken_ && !unspoken_.contains(known[i].key);
        if (known[i].kind != SpaceKind::Group && (spoken || used.contains(known[i].shown))) {
            reading_.draft.spaces.push_back({known[i].shown});
        }
    }
}

void Reader::nameWhereabouts() {
    std::size_t next = 0;
    const std::vector<Whereabouts>& all = placeClues_.all();
    for (std::size_t i = 0; i < mentions_.size(); ++i) {
        NamedWhereabouts& named = reading_.whereabouts.emplace_back();
        named.object = tables().objects[mentions_[i].object].name;
        for (const std::string& place : mentions_[i].places) {
            named.ruled.push_back(shownAs(place));
        }
        if (next < all.size() && all[next].mention == i) {
            for (const MaybePlace& maybe : all[next].places) {
                const KnownSpace& space = *maybe.at.as;
                const bool known = walk_.find(space.key) != nullptr;
                named.places.push_back({known ? shownAs(space.key) : space.shown, maybe.names});
            }
            ++next;
        }
    }
}

// Puts each thing that was named, and what the rules made of it there, where it is likeliest.
void Reader::settlePlaces() {
    placeClues_.finish(mentions_);
    if (options_.explain) {
        nameWhereabouts();
    }
    for (const Whereabouts& where : placeClues_.all()) {
        const KnownSpace& ruled = *where.places.front().at.as;
        const KnownSpace& likeliest = *where.places[likeliestPlace(where)].at.as;
        if (likeliest.key == ruled.key) {
            continue;
        }
        walk_.learn(likeliest.key, likeliest.shown, likeliest.kind);
        Mention& mention = mentions_[where.mention];
        tell(mention.explained, "places",
             tables().objects[mention.object].name + ": " + shownAs(likeliest.key) + ", not " +
                 shownAs(ruled.key));
        mention.places = {likeliest.key};
        const auto after = [](const Found& found, std::size_t sentence) {
            return found.sentence < sentence;
        };
        for (auto found = std::lower_bound(found_.begin(), found_.end(), where.sentence, after);
             found != found_.end() && found->sentence == where.sentence; ++found) {
            if (found->object == mention.object && found->place == ruled.key) {
                found->place = likeliest.key;
            }
        }
    }
}

// "The suite stays": the tub, the toilet and the sink do.
void Reader::spellOutSets() {
    const auto spellOut = [](auto& told) {
        const bool any = std::any_of(told.begin(), told.end(), [](const auto& one) {
            return !tables().objects[one.object].members.empty();
        });
        if (!any) {
            return;
        }
        auto all = std::move(told);
        told.clear();
        told.reserve(all.size());
        for (auto& one : all) {
            const std::vector<std::uint32_t>& members = tables().objects[one.object].members;
            if (members.empty()) {
                told.push_back(std::move(one));
                continue;
            }
            one.item.quantity.reset();
            one.item.cost.reset();
            for (const std::uint32_t member : members) {
                told.push_back(one);
                told.back().object = member;
            }
        }
    };
    spellOut(mentions_);
    spellOut(found_);
}

void Reader::makeItems() {
    Draft& draft = reading_.draft;
    spoken_ = walk_.known().size();
    if (!options_.rulesAlone && !options_.placesAsRuled) {
        settlePlaces();
        settleChoices();
    }
    spellOutSets();
    const std::vector<Found> made = mergeFound(std::move(found_), walk_);
    if (options_.rulesAlone) {
        for (const Found& found : made) {
            DraftItem& item = draft.items.emplace_back(found.item);
            nameItem(found.place, found.object, found.treatment, item);
        }
        sortItems(draft.items);
        return;
    }
    for (const Mention& mention : mentions_) {
        for (const std::string& place : mention.places) {
            if (place.find('*') == std::string::npos) {
                walk_.learn(place, place, SpaceKind::Room);
            }
        }
    }
    const std::vector<Thing> things = thingsOf(mentions_, made, walk_);
    const std::vector<Evidence> evidence =
        evidenceOf(things, mentions_, made, walk_, options_.explain);
    const int least = options_.leastSure.value_or(leastSure());
    std::vector<Chances> chances;
    chances.reserve(things.size());
    std::vector<Chosen> chosen;
    for (std::size_t i = 0; i < things.size(); ++i) {
        chances.push_back(chancesOf(evidence[i]));
        for (const Leaning& leaning : leaningsOf(things[i], chances[i], made)) {
            if (leaning.sure < least) {
                ++draft.leftOut;
            } else if (chosen.size() < kMostItems) {
                chosen.push_back({i, leaning.treatment, itemOf(things[i], leaning, made)});
            }
        }
    }
    draft.leftOut += leaveOneNew(things, chosen);
    for (Chosen& one : chosen) {
        draft.items.push_back(std::move(one.item));
    }
    sortItems(draft.items);
    if (options_.explain) {
        nameThings(things, evidence, chances, made);
    }
}

}  // namespace ledgerboard::intake
