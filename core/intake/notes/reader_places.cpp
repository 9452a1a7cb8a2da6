// The part of the reader that finds the space of an item.
#include <algorithm>

#include "core/intake/notes/reader.h"

namespace ledgerboard::intake {

using model::Treatment;

// The porch that a thing names as its place; empty where it names none.
std::string Reader::porchOf(const ObjectSpot& spot) const {
    const std::string& name = tables().objects[spot.object].name;
    const bool part = name.starts_with("porch ") || (name == "steps" && spot.porch);
    if (!part) {
        return {};
    }
    for (const KnownSpace& space : walk_.known()) {
        if (space.key.ends_with("porch")) {
            return space.key;
        }
    }
    return "front porch";
}

std::vector<std::string> Reader::placesFor(const Spots& spots, const Placed& placed,
                                           const Said& said) {
    const ObjectRow& object = tables().objects[said.object];
    if (said.spot != kNone && !spots.objects[said.spot].place.empty()) {
        const std::string& place = spots.objects[said.spot].place;
        walk_.learn(place, place, SpaceKind::Room);
        return {place};
    }
    for (const Placing& part : placed.parts) {
        if (part.span.holds(said.at)) {
            // "Paint the whole house", of its siding.
            if (object.place == Place::Outside &&
                part.keys == std::vector<std::string>{"whole house"}) {
                walk_.learn("exterior", "outside", SpaceKind::Outside);
                return {"exterior"};
            }
            return part.keys;
        }
    }
    std::vector<std::string> keys = walk_.current();
    // "Stairs and upstairs hall": the treads are the stairs', the walls the hall's.
    if (keys.size() > 1) {
        const bool ofStairs = object.home == Home::Stairs;
        const auto stairs = std::find(keys.begin(), keys.end(), "stairs");
        if (stairs != keys.end() && ofStairs) {
            return {"stairs"};
        }
        if (stairs != keys.end()) {
            keys.erase(stairs);
        }
    }
    const auto outside = [&](const std::string& key) {
        // An outbuilding has a roof and walls of its own.
        static const std::vector<std::string_view> kOutbuildings = {
            "garage", "workshop", "carriage house", "guest house", "boathouse", "well house"};
        const KnownSpace* space = walk_.find(key);
        const bool building =
            std::find(kOutbuildings.begin(), kOutbuildings.end(), key) != kOutbuildings.end();
        return space != nullptr &&
               (space->kind == SpaceKind::Outside || (building && walk_.underHeading()));
    };
    // "Outside … the barn we leave": an outbuilding is its own space.
    const bool space = object.home == Home::Self;
    if (space && (keys.empty() || keys.front() == "exterior")) {
        walk_.learn(object.name, object.name, SpaceKind::Outside);
        return {object.name};
    }
    // What is the house's own outdoors, seen from the yard or the porch.
    const bool always = object.home == Home::Outside;
    const bool ofHouse = always || object.home == Home::House;
    const bool yard =
        !keys.empty() && (keys.front().ends_with("yard") || keys.front() == "garden" ||
                          keys.front() == "deck" || keys.front() == "patio");
    if ((ofHouse && yard) || always) {
        walk_.learn("exterior", "outside", SpaceKind::Outside);
        return {"exterior"};
    }
    // "Porch steps", "porch ceiling": the porch's.
    const std::string porch =
        said.spot == kNone ? std::string() : porchOf(spots.objects[said.spot]);
    if (!porch.empty() && (keys.empty() || keys.front().find("porch") == std::string::npos)) {
        walk_.learn(porch, porch, SpaceKind::Outside);
        return {porch};
    }
    // A deck is a place of its own, and its parts are in it.
    const bool ofDeck = object.home == Home::Deck;
    if (ofDeck && (keys.empty() || keys.front() == "exterior" || keys.front().ends_with("yard"))) {
        walk_.learn("deck", "deck", SpaceKind::Outside);
        return {"deck"};
    }
    // A garage door is the garage's, wherever it is spoken of.
    const bool ofGarage = object.home == Home::Garage;
    if (ofGarage && (keys.empty() || keys.front().find("garage") == std::string::npos)) {
        walk_.learn("garage", "garage", SpaceKind::Room);
        return {"garage"};
    }
    // "Door to the yard, fine. Fridge stays.": a fridge stands in the room before.
    const bool indoor = object.home == Home::Room;
    if (indoor && !keys.empty() && outside(keys.front()) && !walk_.lastRoom().empty()) {
        return {walk_.lastRoom()};
    }
    if (object.place == Place::Outside && (keys.empty() || !outside(keys.front()))) {
        walk_.learn("exterior", "outside", SpaceKind::Outside);
        keys = {"exterior"};
    } else if (keys.empty()) {
        walk_.learn("whole house", "whole house", SpaceKind::Whole);
        keys = {"whole house"};
    }
    return keys;
}

// "Siding is sound, paint all": out of doors the walls are the siding.
void Reader::nameOutside(Found& found) const {
    static const std::uint32_t kWalls = tables().objectNamed("walls");
    static const std::uint32_t kSiding = tables().objectNamed("siding");
    if (found.object == kWalls && found.place == "exterior" &&
        found.treatment == Treatment::Refinish) {
        found.object = kSiding;
    }
}

// "Yard's a mess, clean it up", "sweep out the garage": the place itself.
void Reader::cleanPlace(const Sentence& sentence, const Spots& spots, const Placed& placed,
                        const Linked& linked) {
    static const std::vector<std::string_view> kPlaces = {"yard",  "backyard", "garage",
                                                          "attic", "basement", "crawl space"};
    const bool things = std::any_of(spots.objects.begin(), spots.objects.end(),
                                    [](const ObjectSpot& object) { return !object.landmark; });
    if (things || !linked.said.empty() || section_ == Section::NotDoing) {
        return;
    }
    for (const ActSpot& act : spots.acts) {
        const ActRow& row = tables().acts[act.row];
        if (row.treatment != Treatment::Clean || row.weight < 2 || row.object != kNone ||
            isDead(sentence, spots, act.span.begin, row.weight)) {
            continue;
        }
        std::string place = walk_.current().empty() ? std::string() : walk_.current().front();
        for (const Placing& part : placed.parts) {
            place = part.span.holds(act.span.begin) ? part.keys.front() : place;
        }
        if (std::find(kPlaces.begin(), kPlaces.end(), place) == kPlaces.end() || !before_.empty()) {
            return;
        }
        Found found;
        found.object = tables().objectNamed(place == "backyard" ? "yard" : place);
        found.treatment = Treatment::Clean;
        found.weight = row.weight;
        found.place = place;
        found.item.source = {sourceOf(sentence), sentence.line, 60};
        if (found.object != kNone && found_.size() < kMostItems) {
            found_.push_back(std::move(found));
        }
        return;
    }
}

}  // namespace ledgerboard::intake
