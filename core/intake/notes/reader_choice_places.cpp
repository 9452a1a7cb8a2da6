// The part of the reader that finds the space of an open choice.
#include <algorithm>
#include <array>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/reader.h"
#include "core/intake/notes/speech.h"

namespace ledgerboard::intake {

namespace {

constexpr std::array<std::string_view, 9> kCounters = {
    "kitchen", "bath", "pantry", "laundry", "utility", "bar", "great room", "big room", "scullery"};

// "A gate across the side yard", "a stove in the den": the space that is said right after a thing.
const SpaceSpot* saidAfter(const Sentence& sentence, const Spots& spots, std::size_t end) {
    constexpr std::size_t kNear = 4;
    for (const SpaceSpot& spot : spots.spaces) {
        if (spot.span.begin < end || spot.span.begin - end >= kNear || spot.headingOnly) {
            continue;
        }
        bool leads = false;
        bool parts = false;
        for (std::size_t i = end; i < spot.span.begin; ++i) {
            leads = leads || wordIs(sentence, i, "in") || wordIs(sentence, i, "across") ||
                    wordIs(sentence, i, "over") || wordIs(sentence, i, "for") ||
                    wordIs(sentence, i, "on") || wordIs(sentence, i, "into");
            parts = parts || sentence.tokens[i].kind == TokenKind::Mark ||
                    wordIs(sentence, i, "off") || wordIs(sentence, i, "and");
        }
        if (leads && !parts && (spot.kind == SpaceKind::Room || spot.kind == SpaceKind::Outside)) {
            return &spot;
        }
    }
    return nullptr;
}

// Whether the place may have a counter other than the kitchen's.
bool hasCounters(const std::string& place) {
    return std::any_of(kCounters.begin(), kCounters.end(),
                       [&](std::string_view one) { return place.find(one) != place.npos; });
}

// What is of where the speaker stands, whatever else is named beside it: a wall between that and
// the next room, stairs that come down there, the roof of a room that has one of its own.
bool isOfHere(const ObjectRow& object, const std::string& place, const std::string& here) {
    static const std::vector<std::string_view> kRoofed = {"sunroom",   "conservatory", "porch",
                                                          "extension", "carport",      "kitchen"};
    const bool roofed = std::any_of(kRoofed.begin(), kRoofed.end(),
                                    [&](std::string_view one) { return here.ends_with(one); });
    return here != "exterior" &&
           ((object.name == "walls" && place != here) ||
            (object.name == "stairs" && (place.ends_with("stairs") || place.ends_with("stair"))) ||
            (object.name == "roof" && roofed) || object.name == "addition");
}

bool isThePatio(const Sentence& sentence, std::size_t at) {
    return at > 0 && wordIs(sentence, at, "patio") &&
           (wordIs(sentence, at - 1, "the") || wordIs(sentence, at - 1, "that"));
}

bool heatsHouse(const ObjectRow& object) {
    return object.name == "furnace" || object.name == "boiler" || object.name == "heat pump" ||
           object.name == "baseboard heat";
}

// "Mini splits, or a real furnace with ducts": two ways to heat a house, not one to cool a room.
bool joinsHeats(const Spots& spots, const ObjectRow& object) {
    const auto heats = std::count_if(
        spots.objects.begin(), spots.objects.end(),
        [](const ObjectSpot& spot) { return tables().objects[spot.object].trade == "heating"; });
    return heatsHouse(object) || (object.name == "mini split" && heats > 1);
}

// Where the sentence names the thing first; with no spot where it does not.
Said whereSaid(const Spots& spots, std::uint32_t object, std::size_t from) {
    Said said;
    said.object = object;
    said.at = from;
    for (std::size_t i = 0; i < spots.objects.size() && said.spot == kNone; ++i) {
        if (spots.objects[i].object == object && spots.objects[i].span.begin >= from) {
            said.spot = i;
            said.at = spots.objects[i].span.begin;
        }
    }
    return said;
}

}  // namespace

// The place a choice is of.
std::string Reader::placeOfChoice(const Spots& spots, const Placed& placed) const {
    const std::vector<std::string>& here = walk_.current();
    // "Take it out, or leave it and spend the money on the bath": where the first of it is said.
    const std::size_t said = spots.acts.empty() ? placed.from : spots.acts.front().span.begin;
    for (const Placing& part : placed.parts) {
        if (!part.keys.empty() && (part.span.holds(said) || spots.acts.empty())) {
            return part.keys.front();
        }
    }
    return here.empty() ? "whole house" : here.front();
}

// Whether what heats the house stands there, by the place or by what was spoken of in it.
bool Reader::isHeatedFrom(const std::string& place) const {
    static const std::vector<std::string_view> kPlants = {"basement", "cellar",  "utility",
                                                          "boiler",   "laundry", "mechanical"};
    return std::any_of(kPlants.begin(), kPlants.end(),
                       [&](std::string_view one) { return place.find(one) != place.npos; }) ||
           std::any_of(mentions_.begin(), mentions_.end(), [&](const Mention& mention) {
               return !mention.places.empty() && mention.places.front() == place &&
                      heatsHouse(tables().objects[mention.object]);
           });
}

// Where the matter of a choice is: a fence is outside, whatever room it is spoken of in.
Reader::ChoicePlace Reader::homeOfChoice(const Sentence& sentence, const Spots& spots,
                                         const Placed& placed, const Matter& matter,
                                         const std::string& place, bool joined) {
    const auto known = [&](const std::string& key, const std::string& shown, SpaceKind kind) {
        walk_.learn(key, shown, kind);
        return ChoicePlace{.place = key};
    };
    if (matter.space != nullptr && !place.ends_with(matter.space->key)) {
        return known(matter.space->key, matter.space->shown, matter.space->kind);
    }
    if (matter.objects.empty()) {
        return {.place = place};
    }
    const Said said = whereSaid(spots, matter.objects.front(), placed.from);
    if (said.spot != kNone) {
        if (const SpaceSpot* spot = saidAfter(sentence, spots, spots.objects[said.spot].span.end)) {
            return known(spot->key, spot->shown, spot->kind);
        }
    }
    const ObjectRow& object = tables().objects[said.object];
    // "The garage is leaning. Do we knock it down?"
    if (isPlaceToo(said.object) && walk_.find(object.name) != nullptr) {
        return {.place = object.name};
    }
    // "Quartz, or granite if the yard has a piece": no other room has such counters as a rule.
    if (object.name == "countertop" && said.spot != kNone && walk_.find("kitchen") != nullptr &&
        !hasCounters(place)) {
        return {.place = "kitchen"};
    }
    const std::string here = walk_.current().empty() ? place : walk_.current().front();
    if (isOfHere(object, place, here)) {
        return {.place = here};
    }
    ChoicePlace home = {place, said.object, static_cast<std::size_t>(sentences_)};
    // What is to heat the house is the house's, unless what heats it now was seen there.
    if (said.spot != kNone && joinsHeats(spots, object) && joined && !isHeatedFrom(place)) {
        return known("whole house", "whole house", SpaceKind::Whole);
    }
    // The patio that is lifted or torn out is a place as a deck is; a new one is of the yard.
    if (object.name == "patio" && (said.spot == kNone || isThePatio(sentence, said.at))) {
        return known(object.name, object.name, SpaceKind::Outside);
    }
    if (said.spot == kNone && object.home != Home::Self) {
        home.object = placed.parts.empty() ? home.object : kNone;
        return home;
    }
    if (object.home == Home::Self &&
        (said.spot == kNone || spots.objects[said.spot].place.empty())) {
        walk_.learn(object.name, object.name, SpaceKind::Outside);
        return {object.name, said.spot == kNone ? said.object : kNone, home.sentence};
    }
    // "The living room fireplace", said elsewhere.
    for (const SpaceSpot& spot : spots.spaces) {
        if (spot.span.end == said.at && spot.kind == SpaceKind::Room) {
            return known(spot.key, spot.shown, spot.kind);
        }
    }
    const std::vector<std::string> places = placesFor(spots, placed, said);
    home.place = places.empty() ? place : places.front();
    const KnownSpace* storey = walk_.find(home.place);
    if (heatsHouse(object) && storey != nullptr && storey->kind == SpaceKind::Level) {
        home.object = kNone;  // said in so many words
    }
    return home;
}

// The whereabouts of what a choice is about, as it was named last; nullptr where they tell nothing
// of the choice.
const Whereabouts* Reader::whereaboutsOf(const ChoicePlace& choice) const {
    // A wall between two rooms is opened from where one stands; a roof is of the building, a pantry
    // of the kitchen.
    static const std::vector<std::string_view> kStay = {"walls", "roof", "flat roof", "pantry",
                                                        "porch"};
    constexpr std::size_t kLately = 3;  // sentences
    constexpr int kSurer = 1500;        // thousandths
    if (choice.object == kNone || isOneOf(tables().objects[choice.object].name, kStay)) {
        return nullptr;
    }
    const std::vector<Whereabouts>& all = placeClues_.all();
    auto where = std::upper_bound(
        all.begin(), all.end(), choice.sentence,
        [](std::size_t sentence, const Whereabouts& one) { return sentence < one.sentence; });
    const Whereabouts* found = nullptr;
    while (where != all.begin() && (--where)->sentence + kLately >= choice.sentence) {
        if (found != nullptr && where->sentence < found->sentence) {
            break;
        }
        found = mentions_[where->mention].object == choice.object ? &*where : found;
    }
    if (found == nullptr) {
        return nullptr;
    }
    const KnownSpace& likeliest = *found->places[likeliestPlace(*found)].at.as;
    if (found->sentence < choice.sentence) {
        // A carport is its own place, unless the words around it tell another.
        const bool own = tables().objects[choice.object].home == Home::Self;
        return own && likeliest.key == found->places.front().at.as->key ? nullptr : found;
    }
    if (heatsHouse(tables().objects[choice.object]) && likeliest.key == "exterior") {
        return nullptr;
    }
    const MaybePlace& ruled = found->places.front();
    const bool surely = found->places[likeliestPlace(*found)].weight >= ruled.weight + kSurer;
    return surely && ruled.at.as->key == choice.place ? found : nullptr;
}

// Puts each choice where what it is about is likeliest.
void Reader::settleChoices() {
    for (std::size_t i = 0; i < choicePlaces_.size(); ++i) {
        const ChoicePlace& choice = choicePlaces_[i];
        const Whereabouts* where = whereaboutsOf(choice);
        if (where == nullptr) {
            continue;
        }
        const KnownSpace& likeliest = *where->places[likeliestPlace(*where)].at.as;
        walk_.learn(likeliest.key, likeliest.shown, likeliest.kind);
        alternates_[i].space = shownAs(likeliest.key);
        for (Found& found : found_) {
            if (found.sentence == choice.sentence && found.object == choice.object &&
                found.place == choice.place) {
                found.place = likeliest.key;
            }
        }
    }
}

}  // namespace ledgerboard::intake
