// When does the talk go back to a room that was named before, without saying so?
#include <algorithm>
#include <string_view>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/space_names.h"
#include "core/intake/notes/speech.h"
#include "core/intake/notes/walk.h"

namespace ledgerboard::intake {

namespace {

// What stands in one sort of room alone, wherever the speaker seems to be.
enum class Fit { Any, Bath, Kitchen, Plant };

Fit fitOf(const std::string& object) {
    static const std::vector<std::string_view> kBath = {
        "toilet",       "bathtub",      "shower", "shower pan",  "shower door", "shower tile",
        "tub surround", "shower valve", "vanity", "toilet tank", "toilet seat", "toilet flange"};
    static const std::vector<std::string_view> kKitchen = {"stove", "cooktop", "wall oven",
                                                           "range hood", "dishwasher"};
    if (isOneOf(object, kBath)) {
        return Fit::Bath;
    }
    static const std::vector<std::string_view> kPlant = {
        "furnace",  "boiler",   "water heater", "sump pump",
        "oil tank", "ductwork", "floor drain",  "electrical panel"};
    const bool kitchen = isOneOf(object, kKitchen);
    const bool plant = isOneOf(object, kPlant);
    return kitchen ? Fit::Kitchen : plant ? Fit::Plant : Fit::Any;
}

// "Counters, quartz.", said in the breakfast nook: what only the kitchen beside it has.
Fit fitBeside(const std::string& object, const std::string& here) {
    static const std::vector<std::string_view> kThings = {"countertop", "backsplash",   "sink",
                                                          "faucet",     "refrigerator", "cabinets"};
    const bool beside = here == "breakfast nook" || here == "pantry";
    const bool kitchen = isOneOf(object, kThings);
    return beside && kitchen ? Fit::Kitchen : fitOf(object);
}

bool fits(const std::string& key, Fit fit) {
    if (fit == Fit::Plant) {
        return key == "basement" || key == "mechanical room" || key == "crawl space";
    }
    return fit == Fit::Kitchen ? key.starts_with("kitchen") : isBath(key) || key == "half bath";
}

// Rooms that have neither sort of things of their own.
bool isDry(const std::string& key) {
    static const std::vector<std::string_view> kDry = {
        "living room", "dining room", "family room",    "office",          "hall",    "entry",
        "stairs",      "pantry",      "breakfast nook", "airing cupboard", "sunroom", "nursery"};
    return isBedroom(key) || isOneOf(key, kDry);
}

}  // namespace

// Keeps that a room was named or left in this sentence.
void Walk::noteNamed(const std::string& key) {
    constexpr std::size_t kFew = 6;
    std::erase_if(named_, [&](const Lately& one) { return one.key == key; });
    named_.push_back({key, sentences_});
    if (named_.size() > kFew) {
        named_.erase(named_.begin());
    }
}

// "The heater's down there too": the crawl space that was named a little before; empty where none
// was, or where the speaker is in it.
std::string Walk::thatPlace(const Sentence& sentence) const {
    constexpr int kLately = 3;
    for (std::size_t i = 1; i < sentence.tokens.size(); ++i) {
        if (!wordIs(sentence, i, "there")) {
            continue;
        }
        const bool down = wordIs(sentence, i - 1, "down") || wordIs(sentence, i - 1, "under");
        const bool up = wordIs(sentence, i - 1, "up");
        for (std::size_t k = named_.size(); (down || up) && k-- > 0;) {
            const std::string& key = named_[k].key;
            const bool fits = down ? key == "basement" || key == "crawl space" : key == "attic";
            if (fits && named_[k].sentence + kLately >= sentences_ && !contains(current_, key)) {
                return key;
            }
        }
    }
    return {};
}

// "You come in by a little lobby": the first room there is, where the talk was of none.
bool Walk::isFirstRoom(const Sentence& sentence, const SpaceSpot& spot) const {
    if (!current_.empty() || spot.kind != SpaceKind::Room || spot.headingOnly) {
        return false;
    }
    constexpr std::size_t kFar = 8;
    const std::size_t from = spot.span.begin > kFar ? spot.span.begin - kFar : 0;
    for (std::size_t i = from; i + 1 < spot.span.begin; ++i) {
        const bool comes = wordIs(sentence, i, "come") || wordIs(sentence, i, "walk") ||
                           wordIs(sentence, i, "step") || wordIs(sentence, i, "go");
        if (comes && (wordIs(sentence, i + 1, "in") || wordIs(sentence, i + 1, "into"))) {
            return true;
        }
    }
    return false;
}

// "Basement stairs, there's no rail. Down here, the furnace …": at their foot.
bool Walk::leaveStairs(const Sentence& sentence) {
    constexpr std::string_view kStairs = " stairs";
    const bool here =
        wordIs(sentence, 1, "here") && (wordIs(sentence, 0, "down") || wordIs(sentence, 0, "up"));
    if (!here || current_.size() != 1 || !current_.front().ends_with(kStairs)) {
        return false;
    }
    const std::string head = current_.front().substr(0, current_.front().size() - kStairs.size());
    if (head != "basement" && head != "attic") {
        return false;
    }
    learn(head, head, SpaceKind::Room);
    stand({head});
    sinceMove_ = 0;
    return true;
}

// "Great room and kitchen are one big room and I'll call it the great room."
void Walk::keepJoined(const Sentence& sentence, const Spots& spots) {
    ++joinedAge_;
    std::vector<std::string> rooms;
    for (const SpaceSpot& spot : spots.spaces) {
        if (spot.kind == SpaceKind::Room && !spot.headingOnly && !contains(rooms, spot.key)) {
            rooms.push_back(spot.key);
        }
    }
    bool one = false;
    std::size_t called = 0;
    for (std::size_t i = 1; i < sentence.tokens.size(); ++i) {
        one = one || (wordIs(sentence, i, "one") &&
                      (wordIs(sentence, i - 1, "in") || wordIs(sentence, i - 1, "is")));
        called = wordIs(sentence, i - 1, "call") && wordIs(sentence, i, "it") ? i : called;
    }
    if (one && rooms.size() == 2) {
        joined_ = rooms;
        joinedAge_ = 0;
    }
    if (called == 0 || joinedAge_ > 1 || spots.spaces.empty()) {
        return;
    }
    const SpaceSpot& name = spots.spaces.back();
    if (name.span.begin <= called || !contains(joined_, name.key)) {
        return;
    }
    for (const std::string& part : joined_) {
        if (part != name.key) {
            parts_.emplace_back(part, name.key);
        }
    }
}

// Keeps what a sentence names where it ends, if that is another room than where the speaker stands.
void Walk::keepThings(const Sentence& sentence, const Spots& spots, const Placed& placed) {
    thingsAt_.clear();
    thingsThere_.clear();
    if (placed.moved || placed.parts.empty() || headingIndent_ >= 0) {
        return;
    }
    const Placing& last = placed.parts.back();
    const KnownSpace* space = last.keys.size() == 1 ? find(last.keys.front()) : nullptr;
    if (last.span.end + 1 < sentence.tokens.size() || space == nullptr ||
        space->kind != SpaceKind::Room || space->key == "stairs") {
        return;
    }
    for (const ObjectSpot& object : spots.objects) {
        const bool beyond =
            std::any_of(spots.spaces.begin(), spots.spaces.end(), [&](const SpaceSpot& spot) {
                return spot.span.end <= object.span.begin && spot.key == space->key;
            });
        if (beyond) {
            thingsThere_.push_back(object.object);
        }
    }
    thingsAt_ = last.keys.front();
}

// "… and it stops at the lounge where the carpet begins." and a paragraph that opens with "That
// carpet!": in the lounge now.
bool Walk::followThing(const Sentence& sentence, const Spots& spots) {
    constexpr std::size_t kOpens = 2;
    const bool follows = sentence.opensParagraph && !thingsAt_.empty() && spots.spaces.empty() &&
                         !spots.objects.empty() && spots.objects.front().span.begin < kOpens &&
                         std::find(thingsThere_.begin(), thingsThere_.end(),
                                   spots.objects.front().object) != thingsThere_.end();
    if (follows) {
        stand({thingsAt_});
        sinceMove_ = 0;
    }
    return follows;
}

// "The pantry is all shelves. The stove beside the range wants replacing.": in the kitchen again,
// which was left for the pantry a few sentences ago.
bool Walk::goBack(const Sentence& sentence, const Spots& spots) {
    constexpr std::size_t kOpens = 3;
    constexpr int kLately = 8;
    const bool named = std::any_of(spots.spaces.begin(), spots.spaces.end(),
                                   [](const SpaceSpot& spot) { return !spot.headingOnly; });
    if (current_.size() != 1 || headingIndent_ >= 0 || sentence.heading || sentence.terse ||
        named || spots.objects.empty()) {
        return false;
    }
    const ObjectSpot& first = spots.objects.front();
    const std::string& here = current_.front();
    const Fit fit = fitBeside(tables().objects[first.object].name, here);
    // A paragraph that begins with the furnace speaks of the house's systems.
    if (fit == Fit::Plant && sentence.opensParagraph) {
        return false;
    }
    if (fit == Fit::Any || first.span.begin > kOpens || fits(here, fit) ||
        afterPreposition(sentence, spots, first.span.begin) ||
        !(isDry(here) || fits(here, Fit::Bath) ||
          (fits(here, Fit::Kitchen) && fit != Fit::Plant))) {
        return false;
    }
    for (std::size_t i = named_.size(); i-- > 0;) {
        if (fits(named_[i].key, fit) && named_[i].sentence + kLately >= sentences_) {
            stand({named_[i].key});
            sinceMove_ = 0;
            return true;
        }
    }
    return false;
}

}  // namespace ledgerboard::intake
