// What does the sentence that opens a paragraph of prose say of where the paragraph stands?
#include <algorithm>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/space_names.h"
#include "core/intake/notes/speech.h"
#include "core/intake/notes/walk.h"

namespace ledgerboard::intake {

namespace {

// What a house has one of, wherever it is spoken of.
bool isSystem(const std::string& object) {
    static const std::vector<std::string_view> kSystems = {
        "wiring",          "electrical panel", "boiler",       "furnace",
        "air conditioner", "heat pump",        "water heater", "supply pipe",
        "ductwork",        "smoke alarms",     "meter"};
    return isOneOf(object, kSystems);
}

// "Electricity: …", "Now, the wires.", "As to the heating, …"
bool beginsWithSystem(const Sentence& sentence, const Spots& spots) {
    static const std::vector<std::string_view> kWords = {
        "electricity", "electrics", "electrical", "electric",    "power",   "wiring",   "wires",
        "heating",     "plumbing",  "hvac",       "mechanicals", "systems", "utilities"};
    const std::size_t at = skipSmall(sentence, spots, 0);
    constexpr std::size_t kLead = 4;
    for (std::size_t i = 0; i < std::min(sentence.tokens.size(), kLead); ++i) {
        std::string word = sentence.tokens[i].plain;
        if (word.ends_with("'s")) {
            word.resize(word.size() - 2);
        }
        const bool leads = i <= at || wordIs(sentence, 0, "as");
        if (leads && isOneOf(word, kWords)) {
            return true;
        }
    }
    return !spots.objects.empty() && spots.objects.front().span.begin <= kLead &&
           isSystem(tables().objects[spots.objects.front().object].name);
}

// Where no system of a house stands.
bool isLivedIn(const std::string& key) {
    return isBedroom(key) || isBath(key) || key == "half bath" || key == "living room" ||
           key == "dining room" || key == "family room" || key == "deck" || key.ends_with("porch");
}

// Where systems of a house stand, whatever paragraph they are in.
bool isPlantRoom(const std::string& key) {
    static const std::vector<std::string_view> kRooms = {"basement", "mechanical room", "garage",
                                                         "attic", "crawl space"};
    return isOneOf(key, kRooms);
}

bool speaksOfRoom(const Spots& spots) {
    return std::any_of(spots.spaces.begin(), spots.spaces.end(), [](const SpaceSpot& spot) {
        return spot.kind == SpaceKind::Room && !spot.headingOnly;
    });
}

// "One goes up to the sitting room, by a staircase that turns on itself."
bool goesThere(const Sentence& sentence, const Spots& spots) {
    constexpr std::size_t kNear = 7;
    if (spots.spaces.empty() || spots.spaces.front().kind != SpaceKind::Room ||
        spots.spaces.front().headingOnly || spots.spaces.front().span.begin > kNear) {
        return false;
    }
    const bool somebody = wordIs(sentence, 0, "one") || wordIs(sentence, 0, "you") ||
                          wordIs(sentence, 0, "we") || wordIs(sentence, 0, "i");
    static const std::vector<std::string_view> kGo = {"go",    "goes",   "went", "come",
                                                      "comes", "came",   "step", "steps",
                                                      "climb", "climbs", "walk", "walked"};
    const std::string word = sentence.tokens.size() > 1 ? sentence.tokens[1].plain : std::string();
    const bool goes = isOneOf(word, kGo);
    const std::size_t begin = spots.spaces.front().span.begin;
    const bool article =
        begin > 0 && (wordIs(sentence, begin - 1, "the") || wordIs(sentence, begin - 1, "a") ||
                      wordIs(sentence, begin - 1, "an"));
    const std::size_t at = article ? begin - 1 : begin;
    return somebody && goes && at > 0 &&
           (wordIs(sentence, at - 1, "to") || wordIs(sentence, at - 1, "into") ||
            wordIs(sentence, at - 1, "in"));
}

// "there is an …", before token `at`
bool thereIs(const Sentence& sentence, std::size_t at) {
    constexpr std::size_t kFar = 3;
    for (std::size_t i = at > kFar ? at - kFar : 0; i < at; ++i) {
        if (wordIs(sentence, i, "there") || wordIs(sentence, i, "have") ||
            wordIs(sentence, i, "has")) {
            return true;
        }
    }
    return false;
}

// "from the hall", "over the garage"
bool saysOnlyWhere(const Sentence& sentence, std::size_t at) {
    static const std::vector<std::string_view> kWhere = {
        "from", "of",     "off",  "over", "under",   "above",   "below", "behind",  "like",
        "than", "beside", "near", "by",   "through", "across",  "with",  "outside", "past",
        "down", "up",     "as",   "and",  "than",    "between", "for"};
    return isOneOf(sentence.tokens[at - 1].plain, kWhere);
}

// "AC isn't cooling.": a line of prose, and no heading.
bool isWholeSentence(const Sentence& sentence) {
    constexpr std::size_t kLeast = 4;
    return sentence.alone && sentence.tokens.size() >= kLeast &&
           isMark(sentence.tokens.back(), ".!?");
}

// "The fireplace is stone.", "Toilet: fine.": the paragraph goes on about the room of the last.
bool goesOn(const Sentence& sentence, const Spots& spots) {
    if (spots.objects.empty() || spots.objects.front().span.begin > 1) {
        return false;
    }
    const ObjectRow& object = tables().objects[spots.objects.front().object];
    return (wordIs(sentence, 0, "the") || object.home == Home::Room) &&
           object.place != Place::Outside && object.name != "windows" && !isSystem(object.name);
}

// "All the windows are getting replaced.", "every outlet", "the windows were all done in '15"
bool isEveryOne(const Sentence& sentence, const ObjectSpot& object) {
    static const std::vector<std::string_view> kThings = {"windows", "outlets", "switches",
                                                          "interior doors", "trim"};
    const std::string& name = tables().objects[object.object].name;
    if (!isOneOf(name, kThings)) {
        return false;
    }
    std::size_t at = object.span.begin;
    while (at > 0 && (wordIs(sentence, at - 1, "the") || wordIs(sentence, at - 1, "of"))) {
        --at;
    }
    if (at > 0 && (sentence.tokens[at - 1].plain == "every" ||
                   (wordIs(sentence, at - 1, "all") && at < object.span.begin))) {
        return true;
    }
    std::size_t end = object.span.end;
    for (std::size_t i = 0; i < 2 && end < sentence.tokens.size(); ++i) {
        const std::string& word = sentence.tokens[end].plain;
        end += word == "are" || word == "were" || word == "have" || word == "been" ? 1 : 0;
    }
    // "The window's all right."
    return wordIs(sentence, end, "all") && end + 1 < sentence.tokens.size() &&
           sentence.tokens[end + 1].plain != "right";
}

bool isProse(const Sentence& sentence) {
    return sentence.opensLine && !sentence.bullet && !sentence.heading && !sentence.terse;
}

}  // namespace

// "The water heater's from 2004, …" in a paragraph of its own after that of the bathroom: the
// talk has left the rooms.
void Walk::takeSystems(const Sentence& sentence, const Spots& spots, Placed& placed) {
    constexpr std::size_t kName = 3;
    if (spots.has(Cue::Here)) {
        return;
    }
    // "New cylinder.", one answers in the box room: said of it there.
    const bool uttered = sentence.spoken && (sentence.tokens.size() > kName || !spots.acts.empty());
    if (!isProse(sentence) || uttered || placed.moved || !placed.parts.empty() ||
        speaksOfRoom(spots) || current_.size() != 1 || headingIndent_ >= 0 || sinceMove_ < 2 ||
        !(isLivedIn(current_.front()) ||
          (sentence.opensParagraph && !isPlantRoom(current_.front()))) ||
        !beginsWithSystem(sentence, spots)) {
        return;
    }
    learn("whole house", "whole house", SpaceKind::Whole);
    stand({"whole house"});
    placed.moved = true;
}

// "All the windows are getting replaced.", said in a room: all of the house.
void Walk::takeEveryOne(const Sentence& sentence, Spots& spots) {
    const KnownSpace* here = current_.size() == 1 ? find(current_.front()) : nullptr;
    if (here == nullptr || here->kind != SpaceKind::Room || headingIndent_ >= 0 ||
        sentence.bullet || spots.has(Cue::Here) || speaksOfRoom(spots)) {
        return;
    }
    for (ObjectSpot& object : spots.objects) {
        if (object.place.empty() && isEveryOne(sentence, object)) {
            learn("whole house", "whole house", SpaceKind::Whole);
            object.place = "whole house";
        }
    }
}

// "I don't know how to be kind about the kitchen.", "I wouldn't do a thing to the living room
// except get that carpet up.": the one room that the first sentence of a paragraph names, before
// any thing or work, is what the paragraph is about.
void Walk::takeBroughtUp(const Sentence& sentence, const Spots& spots, Placed& placed) {
    constexpr std::size_t kShort = 16;
    if (!isProse(sentence) || sentence.alone || sentence.spoken || placed.moved ||
        headingIndent_ >= 0) {
        return;
    }
    if (goesThere(sentence, spots)) {
        moveTo({&spots.spaces.front()});
        placed.moved = true;
        placed.parts.clear();
        return;
    }
    const SpaceSpot* only = nullptr;
    for (const SpaceSpot& spot : spots.spaces) {
        if (spot.headingOnly) {
            continue;
        }
        if (only != nullptr) {
            return;
        }
        only = &spot;
    }
    if (only == nullptr || only->kind != SpaceKind::Room) {
        return;
    }
    std::size_t at = only->span.begin;
    while (at > 0 && (wordIs(sentence, at - 1, "the") || wordIs(sentence, at - 1, "this"))) {
        --at;
    }
    const bool brief =
        sentence.tokens.size() <= kShort && only->span.end + 3 >= sentence.tokens.size();
    const std::size_t to = sentence.opensParagraph && !brief ? at : sentence.tokens.size();
    const bool works = std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
        return act.span.begin < to && tables().acts[act.row].weight > 0;
    });
    const bool undone = sentence.opensParagraph && spots.has(Cue::Negation);
    const bool things =
        std::any_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
            return object.span.begin < to &&
                   !tables().objects[object.object].name.ends_with("door");
        });
    // Which room is meant is said by what leads to it: "the stairs to the attic" leads away.
    const bool led = at > 0 && (wordIs(sentence, at - 1, "about") ||
                                wordIs(sentence, at - 1, "on") || wordIs(sentence, at - 1, "in") ||
                                wordIs(sentence, at - 1, "into") || wordIs(sentence, at - 1, "to"));
    // "We won't change the front room much."
    const bool object =
        sentence.opensParagraph && at > 0 && at < only->span.begin && !saysOnlyWhere(sentence, at);
    const bool about = led || object;
    if (!about || (works && !undone) || things || !(brief || sentence.opensParagraph)) {
        return;
    }
    moveTo({only});
    placed.moved = true;
    placed.parts.clear();
}

// "Breakfast nook stays put", in a paragraph under the heading "Kitchen": the next sentence is of
// the kitchen again.
bool Walk::isAsideOfSection(const Sentence& sentence, const Spots& spots, std::size_t index) const {
    const SpaceSpot& spot = spots.spaces[index];
    constexpr int kSeveral = 2;
    return headings_ >= kSeveral && headingIndent_ >= 0 && !sentence.opensLine &&
           !sentence.bullet && !sentence.spoken && !sentence.terse && !isBreathless(sentence) &&
           spot.kind == SpaceKind::Room && !current_.empty() &&
           !cueBefore(sentence, spots, Cue::Move, spot.span.begin) &&
           !cueBefore(sentence, spots, Cue::Enter, spot.span.begin);
}

// "There is an airing cupboard with a tank in it.", said of a room in the middle of a paragraph.
bool Walk::isCupboardHere(const Sentence& sentence, const Spots& spots, std::size_t index) const {
    static const std::vector<std::string_view> kCupboards = {
        "airing cupboard", "cloak cupboard", "hall closet", "primary closet", "storage room"};
    const SpaceSpot& spot = spots.spaces[index];
    const KnownSpace* here = current_.size() == 1 ? find(current_.front()) : nullptr;
    // "There's a breakfast nook at the end with a table and benches.", said in the kitchen.
    const bool things = !spots.objects.empty() && spots.objects.back().span.begin > spot.span.end;
    if (spot.key == "breakfast nook" && things && current_.size() == 1 &&
        current_.front() == "kitchen" && thereIs(sentence, spot.span.begin)) {
        return true;
    }
    if (sentence.opensLine || sentence.bullet || sentence.terse || here == nullptr) {
        return false;
    }
    // "The larder's cool and we'd keep it. Lino up, …": in the kitchen all along.
    if (here->key == "kitchen" && (spot.key == "pantry" || spot.key == "breakfast nook")) {
        return true;
    }
    return isOneOf(spot.key, kCupboards) && here->kind == SpaceKind::Room &&
           thereIs(sentence, spot.span.begin);
}

// "Cloth wire in the attic", under the heading "Systems".
bool Walk::isWhereSystemIs(const Spots& spots, std::size_t index) const {
    const std::size_t begin = spots.spaces[index].span.begin;
    return headingIndent_ >= 0 && current_ == std::vector<std::string>{"whole house"} &&
           spots.spaces[index].kind == SpaceKind::Room &&
           std::any_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
               return object.span.end <= begin && isSystem(tables().objects[object.object].name);
           });
}

bool Walk::opensByRooms() const {
    constexpr int kFew = 3;
    return roomLines_ >= std::max(kFew, otherLines_);
}

// "Toilet: new pan. Paint.", in a letter whose lines open with rooms.
bool Walk::opensWithLabel(const Sentence& sentence, const Spots& spots) const {
    if (!isProse(sentence) || sentence.spoken || spots.spaces.empty() || !opensByRooms()) {
        return false;
    }
    const SpaceSpot& spot = spots.spaces.front();
    return spot.kind == SpaceKind::Room && spot.span.begin == 0 &&
           spot.span.end < sentence.tokens.size() && isMark(sentence.tokens[spot.span.end], ":(-");
}

// "All walls and ceilings painted.", "Mini splits, two heads, I'd guess.": a paragraph that begins
// with no room has left the last one, where that was only come to in the middle of a paragraph or
// where most paragraphs begin with rooms. "Roof, the tin's rusted …" has left any.
void Walk::leaveRooms(const Sentence& sentence, const Spots& spots, const Placed& placed) {
    constexpr std::size_t kOpens = 3;
    const bool prose = isProse(sentence) && !sentence.spoken && headingIndent_ < 0 &&
                       (!sentence.alone || isWholeSentence(sentence));
    const bool roomless = !placed.moved && !speaksOfRoom(spots);
    const bool byRooms = opensByRooms();
    if (prose) {
        ++(roomless ? otherLines_ : roomLines_);
    }
    const bool within = cameWithin_;
    cameWithin_ = placed.moved ? !sentence.opensLine : cameWithin_;
    if (!roomless || headingIndent_ >= 0) {
        return;
    }
    const bool begins = prose && (sentence.opensParagraph || sentence.alone);
    if (begins && placed.parts.empty() && !spots.has(Cue::Here) && (within || byRooms) &&
        !goesOn(sentence, spots)) {
        stand({});
    }
    if (!sentence.opensParagraph || spots.objects.empty()) {
        return;
    }
    const ObjectSpot& first = spots.objects.front();
    if (!first.landmark && first.span.begin < kOpens &&
        tables().objects[first.object].place == Place::Outside) {
        learn("exterior", "outside", SpaceKind::Outside);
        stand({"exterior"});
    }
}

}  // namespace ledgerboard::intake
