// The part of the reader that finds the space of an item.
#include <algorithm>
#include <optional>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/reader.h"
#include "core/intake/notes/space_names.h"
#include "core/intake/notes/speech.h"

namespace ledgerboard::intake {

namespace {

using model::Treatment;

KnownSpace exterior() {
    return {"exterior", "outside", SpaceKind::Outside};
}

// Makes sure the space is known, and gives it as the only place.
std::vector<std::string> placedIn(Walk& walk, const KnownSpace& space) {
    walk.learn(space.key, space.shown, space.kind);
    return {space.key};
}

// A part of the grounds from which the house is seen.
bool isYard(const std::string& key) {
    return key.ends_with("yard") || key == "garden" || key == "deck" || key == "patio" ||
           key == "dock" || key == "pool area" || key == "lane" || key == "alley";
}

// "Siding's good.", said on the porch: what hangs on the walls of the house. An outbuilding has
// walls of its own.
bool isOfWalls(const ObjectRow& object, const KnownSpace* here) {
    static const std::vector<std::string_view> kThings = {
        "siding", "stucco", "gutters", "downspouts", "fascia", "exterior soffit"};
    return here != nullptr && here->kind == SpaceKind::Outside && isOneOf(object.name, kThings) &&
           !isOutbuilding(here->key);
}

// "The chimney needs a cap.", said where no fireplace is.
bool isOfStack(const ObjectRow& object, const std::string& here) {
    static const std::vector<std::string_view> kRooms = {
        "basement", "hall",    "entry", "laundry room", "half bath", "garage",
        "barn",     "carport", "shed",  "stoop",        "stairs",    "balcony"};
    return object.name == "chimney" &&
           (isBath(here) || here.ends_with("porch") || isOneOf(here, kRooms));
}

// "Stairs and upstairs hall": the treads are the stairs', the walls the hall's.
bool isOfStairs(const ObjectRow& object, const std::vector<std::string>& keys) {
    return keys.size() > 1 && object.home == Home::Stairs &&
           std::find(keys.begin(), keys.end(), "stairs") != keys.end();
}

// "New wire, all of it": the house's, whatever room it is said in. What is only to be looked at is
// where it was seen.
bool isOfWholeHouse(const ObjectRow& object, const ActRow* act, const std::string& here) {
    // Alarms that are seen in a hall or a bedroom hang there.
    if (object.name == "smoke alarms") {
        return here != "hall" && here != "entry" && here != "stairs" && !isBedroom(here);
    }
    return object.name == "wiring" && act != nullptr &&
           (act->fresh || act->treatment == Treatment::Replace ||
            act->treatment == Treatment::Keep);
}

bool isPlantRoom(const std::string& here) {
    return here == "basement" || here == "mechanical room" || here == "stairs";
}

// "The house is to be rewired, with a new board": the panel goes with the wiring.
bool isRewired(const ObjectRow& object, const Spots& spots, const Said& said) {
    static const std::uint32_t kWiring = tables().objectNamed("wiring");
    const auto rewires = [](const ActSpot& act) {
        const ActRow& row = tables().acts[act.row];
        return row.object == kWiring && row.treatment == Treatment::Replace && row.weight > 1;
    };
    return object.name == "electrical panel" && said.act != kNone &&
           tables().acts[spots.acts[said.act].row].treatment != Treatment::Keep &&
           std::any_of(spots.acts.begin(), spots.acts.end(), rewires);
}

// "Now the fuses, there are four.", in a paragraph of its own after that of a room: what a house
// has one of, and no room is named for it.
bool isOfNoRoom(const ObjectRow& object, const Walk& walk, const std::string& here) {
    static const std::vector<std::string_view> kSystems = {"wiring", "electrical panel", "boiler",
                                                           "furnace", "water heater"};
    const bool system = isOneOf(object.name, kSystems);
    if (!system && object.name != "air conditioner") {
        return false;
    }
    const bool lived = isBedroom(here) || isBath(here) || here == "half bath" ||
                       here == "living room" || here == "dining room" || here == "family room" ||
                       here == "laundry room";
    // "And a new panel.", said anywhere in talk: no panel is in a bedroom or on a porch.
    const bool apart = lived && here != "laundry room";
    const bool panel = object.name == "electrical panel" && !walk.underHeading() &&
                       (apart || here == "attic" || here.ends_with("porch") || here == "deck");
    const bool furnace = object.name == "furnace" && (apart || here == "kitchen");
    const bool cooling = object.name == "air conditioner" && (isBath(here) || here == "half bath");
    if (panel || furnace || cooling) {
        return true;
    }
    return lived && walk.hasLeftParagraph() && system;
}

// What is outdoors where no room is spoken of.
bool isOfOutdoors(const ObjectRow& object, const std::string& here) {
    const bool roomless = here.empty() || here == "whole house";
    static const std::vector<std::string_view> kOut = {"chimney", "chimney cap", "water tank",
                                                       "front door", "storm door"};
    return roomless && isOneOf(object.name, kOut);
}

// "AC's good.", said on the deck: what serves the house and stands outside.
bool isServant(const ObjectRow& object, const std::string& here) {
    static const std::vector<std::string_view> kThings = {"air conditioner", "heat pump",
                                                          "well pump", "well water", "seawall"};
    static const std::vector<std::string_view> kOil = {"oil tank", "propane tank", "shutters",
                                                       "generator"};
    const bool lookout = here == "deck" || here == "dock" || here == "patio" || here == "stoop" ||
                         here.ends_with("porch");
    return ((lookout || isYard(here)) && isOneOf(object.name, kThings)) ||
           (lookout && isOneOf(object.name, kOil));
}

// What stands about the grounds and not on the deck or in the barn from which it is seen.
bool isOfGrounds(const ObjectRow& object, const std::string& here) {
    static const std::vector<std::string_view> kThings = {
        "fence", "fence panel", "gate",       "lawn", "trees",  "shrubs",
        "brush", "sprinklers",  "greenhouse", "pond", "gravel", "clothesline"};
    static const std::vector<std::string_view> kLookouts = {
        "deck",    "balcony", "shed",       "barn",  "boathouse", "dock",
        "carport", "garage",  "greenhouse", "stoop", "workshop",  "patio"};
    const bool lookout = here.ends_with("porch") || isOneOf(here, kLookouts);
    return lookout && isOneOf(object.name, kThings);
}

// "The pantry's good.", said of a cupboard of the kitchen by the name of which one stands in it.
bool isPantryItself(const ObjectRow& object, const std::string& here) {
    return here == "pantry" && object.name == here;
}

// "The shed's sound.": it stands about the grounds, and is not in itself.
bool isHutItself(const ObjectRow& object, const ActRow* act, const std::string& here) {
    const bool hut = here == "shed" || here == "privy" || here == "dock" || here == "greenhouse";
    return hut && act != nullptr &&
           (object.name == here || (here == "shed" && object.name == "outbuilding") ||
            (here == "privy" && object.name == "outhouse")) &&
           (act->treatment == Treatment::Keep || act->treatment == Treatment::Remove);
}

// What is outdoors, and where it is seen from within: frost on the boards of the roof, the doors of
// a bulkhead, the pump of a well.
bool isSeenWithin(const ObjectRow& object, const std::string& here) {
    if (object.name == "roof decking") {
        return here == "attic";
    }
    const bool below = here == "basement" || here == "crawl space";
    const bool plant = below || here == "mechanical room" || here == "laundry room";
    return (object.name == "bulkhead door" && below) || (object.name == "well pump" && plant) ||
           (object.name == "cistern" && below);
}

// "The brick's fine.", said where a fireplace stands.
bool isBrickOfRoom(const ObjectRow& object, const KnownSpace* here) {
    static const std::vector<std::string_view> kRooms = {"living room", "family room", "great room",
                                                         "main room", "big room"};
    return object.name == "brickwork" && here != nullptr && isOneOf(here->key, kRooms);
}

// "The carpet on both runs of stairs", "carpet on the treads"
bool saysStairs(const Spots& spots) {
    return std::any_of(spots.objects.begin(), spots.objects.end(), [](const ObjectSpot& spot) {
        return tables().objects[spot.object].home == Home::Stairs;
    });
}

void dropStairs(std::vector<std::string>& keys) {
    const auto stairs = std::find(keys.begin(), keys.end(), "stairs");
    if (stairs != keys.end()) {
        keys.erase(stairs);
    }
}

// The thing that work on the place itself is done to; kNone where a place is none.
std::uint32_t thingNamed(const std::string& place) {
    static const std::vector<std::string_view> kPlaces = {"yard",  "backyard", "garage",
                                                          "attic", "basement", "crawl space"};
    return isOneOf(place, kPlaces) ? tables().objectNamed(place == "backyard" ? "yard" : place)
                                   : kNone;
}

// "The garage leans", "clean out the attic and the cellar". What is painted or put in is a part of
// the place, which has words of its own.
bool isSaidOfPlace(const Sentence& sentence, const ActSpot& act, const SpaceSpot& space) {
    constexpr std::size_t kNear = 3;
    const ActRow& row = tables().acts[act.row];
    const bool garage = space.key == "garage";
    const bool works =
        row.treatment == Treatment::Clean ||
        (row.treatment == Treatment::Keep && (garage || space.key == "yard")) ||
        (garage && (row.treatment == Treatment::Remove || row.treatment == Treatment::Inspect ||
                    row.treatment == Treatment::Repair));
    if (row.weight == 0 || row.fresh || row.object != kNone || !works) {
        return false;
    }
    const Span& place = space.span;
    const bool before = place.end <= act.span.begin;
    const std::size_t begin = before ? place.end : std::max(act.span.end, act.tail.end);
    const std::size_t end = before ? act.span.begin : place.begin;
    if (begin > end || end > begin + kNear || (before && row.side == Side::After && !act.passive) ||
        (!before && row.side == Side::Before)) {
        return false;
    }
    for (std::size_t i = begin; i < end; ++i) {
        if (sentence.tokens[i].kind != TokenKind::Word || afterPreposition(sentence, {}, i + 1)) {
            return false;
        }
    }
    return true;
}

}  // namespace

bool isPlaceItself(const ObjectSpot& spot) {
    return !spot.place.empty() && thingNamed(spot.place) == spot.object;
}

bool isPlaceToo(std::uint32_t object) {
    return thingNamed(tables().objects[object].name) == object;
}

// The porch that a thing names as its place; empty where it names none.
std::string Reader::porchOf(const ObjectSpot& spot) const {
    const std::string& name = tables().objects[spot.object].name;
    const bool part =
        name.starts_with("porch ") || (spot.porch && (name == "steps" || name == "railing"));
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

// Whether the key is of the outdoors.
bool Reader::isOutdoors(const std::string& key) const {
    const KnownSpace* space = walk_.find(key);
    return space != nullptr &&
           (space->kind == SpaceKind::Outside || (isOutbuilding(key) && walk_.underHeading()));
}

// The place that the words at the object name for it; nothing where they name none.
std::optional<std::vector<std::string>> Reader::namedPlaces(const Spots& spots,
                                                            const Placed& placed,
                                                            const Said& said) {
    if (said.spot != kNone && !spots.objects[said.spot].place.empty()) {
        const std::string& place = spots.objects[said.spot].place;
        return placedIn(walk_, {place, place, SpaceKind::Room});
    }
    for (const Placing& part : placed.parts) {
        if (part.span.holds(said.at)) {
            // "The larder is good, keep it.": a thing of the kitchen.
            if (isPantryItself(tables().objects[said.object], part.keys.front()) &&
                contains(walk_.current(), "kitchen")) {
                return walk_.current();
            }
            // "Paint the whole house", of its siding.
            if (tables().objects[said.object].place == Place::Outside &&
                part.keys == std::vector<std::string>{"whole house"}) {
                return placedIn(walk_, exterior());
            }
            return part.keys;
        }
    }
    return std::nullopt;
}

// The space an object belongs to by what it is, seen from the spaces where the speaker is; nothing
// where it is of the room.
std::optional<KnownSpace> Reader::homeOf(const Spots& spots, const Said& said,
                                         const std::vector<std::string>& keys) const {
    const ObjectRow& object = tables().objects[said.object];
    const bool nowhere = keys.empty();
    const std::string here = nowhere ? std::string() : keys.front();
    // "Outside … the barn we leave": an outbuilding is its own space; a shed but stands about.
    if (object.home == Home::Self && object.name != "shed" && (nowhere || here == "exterior")) {
        return KnownSpace{object.name, object.name, SpaceKind::Outside};
    }
    const KnownSpace* space = walk_.find(here);
    const bool storey = space != nullptr && space->kind == SpaceKind::Level;
    const ActRow* act = said.act == kNone ? nullptr : &tables().acts[spots.acts[said.act].row];
    if (!storey && isOfWholeHouse(object, act, here)) {
        return KnownSpace{"whole house", "whole house", SpaceKind::Whole};
    }
    if (isRewired(object, spots, said) && !isPlantRoom(here)) {
        return KnownSpace{"whole house", "whole house", SpaceKind::Whole};
    }
    if (isOfNoRoom(object, walk_, here)) {
        return KnownSpace{"whole house", "whole house", SpaceKind::Whole};
    }
    const KnownSpace* kitchen = isPantryItself(object, here) ? walk_.find("kitchen") : nullptr;
    if (kitchen != nullptr) {
        return *kitchen;
    }
    if (isOfGrounds(object, here) || isHutItself(object, act, here)) {
        return walk_.groundsBefore();
    }
    // What is the house's own outdoors, seen from the yard or the porch.
    if (object.home == Home::Outside || isOfOutdoors(object, here) || isOfWalls(object, space) ||
        isOfStack(object, here) || isServant(object, here) ||
        (object.home == Home::House && isYard(here))) {
        return exterior();
    }
    // "Upstairs. There's no rail.": a storey has none of its own.
    if (storey && object.home == Home::Stairs) {
        return KnownSpace{"stairs", "stairs", SpaceKind::Room};
    }
    // "Porch steps", "porch ceiling": the porch's.
    const std::string porch =
        said.spot == kNone ? std::string() : porchOf(spots.objects[said.spot]);
    if (!porch.empty() && here.find("porch") == std::string::npos) {
        return KnownSpace{porch, porch, SpaceKind::Outside};
    }
    // A deck is a place of its own, and its parts are in it.
    if (object.home == Home::Deck && (nowhere || here == "exterior" || here.ends_with("yard"))) {
        return KnownSpace{"deck", "deck", SpaceKind::Outside};
    }
    // "Dishwasher" in a list that names no room.
    static const std::vector<std::string_view> kKitchen = {"dishwasher", "refrigerator", "stove",
                                                           "range hood", "garbage disposal"};
    if ((nowhere || here == "whole house") && isOneOf(object.name, kKitchen)) {
        return KnownSpace{"kitchen", "kitchen", SpaceKind::Room};
    }
    // A garage door is the garage's, wherever it is spoken of.
    if (object.home == Home::Garage && here.find("garage") == std::string::npos) {
        return KnownSpace{"garage", "garage", SpaceKind::Room};
    }
    return std::nullopt;
}

std::vector<std::string> Reader::placesFor(const Spots& spots, const Placed& placed,
                                           const Said& said) {
    if (said.spot != kNone && isPlaceItself(spots.objects[said.spot])) {
        return {spots.objects[said.spot].place};
    }
    if (std::optional<std::vector<std::string>> named = namedPlaces(spots, placed, said)) {
        return *std::move(named);
    }
    const ObjectRow& object = tables().objects[said.object];
    std::vector<std::string> keys = walk_.current();
    if (isOfStairs(object, keys)) {
        return {"stairs"};
    }
    // Carpet runs on over both, unless it is that of the treads.
    static const std::uint32_t kCarpet = tables().objectNamed("carpet");
    if (keys.size() > 1 && said.object != kCarpet) {
        dropStairs(keys);
    } else if (keys.size() > 1 && contains(keys, "stairs") && saysStairs(spots)) {
        return {"stairs"};
    }
    // "The carpet on the stairs is worn. The railing's fine."
    const KnownSpace* here = keys.empty() ? nullptr : walk_.find(keys.front());
    static const std::uint32_t kRailing = tables().objectNamed("railing");
    static const std::uint32_t kBalusters = tables().objectNamed("balusters");
    static const std::uint32_t kTreads = tables().objectNamed("stair treads");
    const bool rail = said.object == kRailing;
    const bool part = rail || said.object == kBalusters || said.object == kTreads;
    if (part && walk_.spokeOfStairs() && here != nullptr &&
        (here->kind == SpaceKind::Room || here->kind == SpaceKind::Level)) {
        return placedIn(walk_, {"stairs", "stairs", SpaceKind::Room});
    }
    if (const std::optional<KnownSpace> home = homeOf(spots, said, keys)) {
        return placedIn(walk_, *home);
    }
    if (said.fromBefore && !meant_.places.empty() && object.place != Place::Outside) {
        return meant_.places;
    }
    // "New porch steps, and a rail": on the steps.
    static const std::uint32_t kSteps = tables().objectNamed("steps");
    const auto steps = std::find_if(spots.objects.begin(), spots.objects.end(),
                                    [](const ObjectSpot& spot) { return spot.object == kSteps; });
    if (rail && keys.empty() && steps != spots.objects.end()) {
        const std::string porch = porchOf(*steps);
        return placedIn(walk_,
                        porch.empty() ? exterior() : KnownSpace{porch, porch, SpaceKind::Outside});
    }
    // "Door to the yard, fine. Fridge stays.": a fridge stands in the room before.
    const bool indoor = object.home == Home::Room;
    if (indoor && !keys.empty() && isOutdoors(keys.front()) && !walk_.lastRoom().empty()) {
        return {walk_.lastRoom()};
    }
    if (here != nullptr && isSeenWithin(object, here->key)) {
        return keys;
    }
    // "Sleeping porch": a room by its name, and a porch by its floor and ceiling.
    const bool porch =
        here != nullptr && here->key.ends_with("porch") && object.name.starts_with("porch ");
    if (object.place == Place::Outside && !porch && !isBrickOfRoom(object, here) &&
        (keys.empty() || !isOutdoors(keys.front()))) {
        return placedIn(walk_, exterior());
    }
    if (keys.empty()) {
        return placedIn(walk_, {"whole house", "whole house", SpaceKind::Whole});
    }
    return keys;
}

// "The garage is leaning.", "clean out the attic": where nothing else is named, what is said right
// beside the name of the place is said of the place itself.
void Reader::namePlaceItself(const Sentence& sentence, Spots& spots) const {
    const bool things = std::any_of(spots.objects.begin(), spots.objects.end(),
                                    [](const ObjectSpot& object) { return !object.landmark; });
    if (things || spots.acts.empty()) {
        return;
    }
    constexpr std::size_t kJoined = 3;
    std::size_t last = kNone;  // end of the place before that the same is said of
    for (const SpaceSpot& space : spots.spaces) {
        const std::uint32_t thing =
            walk_.find(space.key) == nullptr ? kNone : thingNamed(space.key);
        const bool joined = last != kNone && space.span.begin <= last + kJoined;
        const bool said =
            joined || std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
                return isSaidOfPlace(sentence, act, space);
            });
        last = thing != kNone && said ? space.span.end : kNone;
        if (last != kNone) {
            ObjectSpot spot;
            spot.span = space.span;
            spot.object = thing;
            spot.place = space.key;
            spots.objects.push_back(spot);
        }
    }
}

// "Yard's a mess, clean it up", "sweep out the garage": the place itself.
void Reader::cleanPlace(const Sentence& sentence, const Spots& spots, const Placed& placed,
                        const Linked& linked) {
    const bool things = std::any_of(spots.objects.begin(), spots.objects.end(),
                                    [](const ObjectSpot& object) { return !object.landmark; });
    if (things || !linked.said.empty() || section_.is == Section::NotDoing) {
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
        Found found;
        found.object = thingNamed(place);
        if (found.object == kNone || !meant_.objects.empty()) {
            return;
        }
        found.treatment = Treatment::Clean;
        found.weight = row.weight;
        found.place = place;
        found.signs = {{}, signOf(SignFlag::Place)};
        found.item.source = {sourceOf(sentence), sentence.line, 0};
        if (found_.size() < kMostItems) {
            found_.push_back(std::move(found));
        }
        return;
    }
}

}  // namespace ledgerboard::intake
