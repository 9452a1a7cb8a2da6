#include "core/intake/notes/walk_passed.h"

#include <algorithm>
#include <string_view>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/space_names.h"
#include "core/intake/notes/speech.h"

namespace ledgerboard::intake {

namespace {

using model::Treatment;

// Where the clause of token `at` begins.
std::size_t clauseStart(const Sentence& sentence, std::size_t at) {
    while (at > 0 && !isMark(sentence.tokens[at - 1], ".,;:!?-(")) {
        --at;
    }
    return at;
}

bool anyWord(const Sentence& sentence, std::size_t begin, std::size_t end,
             const std::vector<std::string_view>& words) {
    for (std::size_t i = begin; i < end; ++i) {
        for (const std::string_view word : words) {
            if (wordIs(sentence, i, word)) {
                return true;
            }
        }
    }
    return false;
}

// The first token of the articles before `at`.
std::size_t beforeArticles(const Sentence& sentence, std::size_t at) {
    while (at > 0 && anyWord(sentence, at - 1, at, {"the", "a", "an", "this", "that"})) {
        --at;
    }
    return at;
}

// "That's carrying the back half of the second floor": what rests on a wall.
bool isCarried(const Sentence& sentence, std::size_t begin, std::size_t end) {
    constexpr std::size_t kFar = 7;
    const std::size_t from = std::max(begin, end > kFar ? end - kFar : 0);
    for (std::size_t i = from; i < end; ++i) {
        const bool holds = wordIs(sentence, i, "hold") && wordIs(sentence, i + 1, "up");
        if (holds || wordIs(sentence, i, "carri") || wordIs(sentence, i, "support")) {
            return true;
        }
    }
    return false;
}

bool anyObject(const Spots& spots, std::size_t begin, std::size_t end) {
    return std::any_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
        return object.span.begin >= begin && object.span.end <= end;
    });
}

// "No hall.", "it's three bedrooms": there is none, or so many.
bool isCounted(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot) {
    const std::size_t begin = spot.span.begin;
    if (begin == 0) {
        return false;
    }
    if (wordIs(sentence, begin - 1, "no") && spot.kind != SpaceKind::Whole) {
        return true;
    }
    const bool is = wordIs(sentence, begin - 1, "is") || wordIs(sentence, begin - 1, "be") ||
                    sentence.tokens[begin - 1].text.ends_with("'s");
    return spot.kind == SpaceKind::Group && spot.count > 1 && is && spots.objects.empty();
}

// "Outside's rusty and the inside's been drawn on": the sides of a thing.
bool isSideOfThing(const Sentence& sentence, const SpaceSpot& spot) {
    if (!wordIs(sentence, spot.span.begin, "outsid") || spot.span.end != spot.span.begin + 1) {
        return false;
    }
    // "the hook's on the outside": of the door.
    const std::size_t begin = spot.span.begin;
    const bool on =
        begin > 1 && wordIs(sentence, begin - 1, "the") &&
        anyWord(sentence, begin - 2, begin - 1, {"on", "from"}) &&
        !(wordIs(sentence, spot.span.end, "of") && wordIs(sentence, spot.span.end + 2, "hous"));
    return on || anyWord(sentence, 0, sentence.tokens.size(), {"insid"});
}

// "There's a sink in a box in the garage.": goods that wait there.
bool isKeptThere(const Sentence& sentence, const Spots& spots, std::size_t index, std::size_t at) {
    static const std::vector<std::string_view> kStores = {"garage", "shed",     "barn",
                                                          "attic",  "basement", "workshop"};
    constexpr std::size_t kFar = 8;
    return at > 1 && anyWord(sentence, at - 1, at, {"in"}) &&
           isOneOf(spots.spaces[index].key, kStores) &&
           anyWord(sentence, at > kFar ? at - kFar : 0, at,
                   {"box", "spare", "leftov", "extra", "same"});
}

// "it blows into the attic": where air or water goes.
bool isBlownInto(const Sentence& sentence, std::size_t at) {
    return at > 1 && anyWord(sentence, at - 1, at, {"into", "in", "to"}) &&
           anyWord(sentence, at - 2, at - 1,
                   {"blow", "vent", "leak", "drip", "drain", "dump", "exhaust", "empti"});
}

// "You do this one, I'm going to wait in the hall.": where one of several speakers goes meanwhile.
bool isWaitedIn(const Sentence& sentence, std::size_t at) {
    constexpr std::size_t kFar = 3;
    return at > kFar && wordIs(sentence, at - 1, "in") &&
           anyWord(sentence, at - 2, at - 1, {"stand", "wait", "sit"}) &&
           anyWord(sentence, at - kFar, at - 2, {"to", "will", "gonna"}) &&
           anyWord(sentence, 0, at, {"you"});
}

// "in Carl's shed": somebody's, by the name of whom, and not of this house.
bool isSomebodys(const Sentence& sentence, const SpaceSpot& spot) {
    const std::size_t begin = spot.span.begin;
    const bool yard = spot.kind == SpaceKind::Outside || spot.key == "garage" ||
                      spot.key == "workshop" || spot.key == "basement";
    return yard && begin > 1 && sentence.tokens[begin - 1].text.ends_with("'s") &&
           sentence.tokens[begin - 1].capital &&
           anyWord(sentence, begin - 2, begin - 1, {"in", "at", "from"});
}

// "looks onto the orchard", "faces the yard"
bool isLookedAt(const Sentence& sentence, std::size_t at) {
    const bool onto = at > 1 && anyWord(sentence, at - 1, at, {"onto", "over", "on", "into", "at"});
    return (onto && anyWord(sentence, at - 2, at - 1, {"look", "give", "face"})) ||
           (at > 0 && anyWord(sentence, at - 1, at, {"face", "overlook"}));
}

// "a servery through to the kitchen": a thing that no table knows.
bool isStrangeThing(const Sentence& sentence, std::size_t at) {
    return at > 4 && sentence.tokens[at - 3].kind == TokenKind::Word &&
           sentence.tokens[at - 3].word == kUnknown &&
           anyWord(sentence, at - 4, at - 3, {"a", "the", "that"});
}

// "It's like the way into a swimming baths.": what something only looks like.
bool isLikened(const Sentence& sentence, std::size_t begin, std::size_t end) {
    // "hanging down like wet laundry"
    constexpr std::size_t kNear = 3;
    const bool near =
        anyWord(sentence, std::max(begin, end > kNear ? end - kNear : 0), end, {"like"});
    const bool one = end > 0 && !anyWord(sentence, end - 1, end, {"the", "this", "that"});
    if (near && one) {
        return true;
    }
    for (std::size_t i = begin + 1; i < end; ++i) {
        const bool is = sentence.tokens[i - 1].text.ends_with("'s") ||
                        anyWord(sentence, i - 1, i, {"is", "look", "feel", "be"});
        if (is && wordIs(sentence, i, "like")) {
            return true;
        }
    }
    return false;
}

// "Back terrace, that's the balcony to you": another name for the space that opens the sentence.
bool isCalledAlso(const Sentence& sentence, const Spots& spots, std::size_t index) {
    if (index != 1 || spots.spaces[0].span.begin > 1 || isBedroom(spots.spaces[1].key)) {
        return false;
    }
    const std::size_t from = spots.spaces[0].span.end;
    const std::size_t to = beforeArticles(sentence, spots.spaces[1].span.begin);
    const bool that = from + 2 <= to && isMark(sentence.tokens[from], ",") &&
                      (wordIs(sentence, from + 1, "that") || wordIs(sentence, from + 1, "it"));
    return that && (to == from + 2 || (to == from + 3 && wordIs(sentence, from + 2, "is")));
}

// "Bathroom's the back hall.": what a room that was just named is.
bool isWhatRoomIs(const Sentence& sentence, const Spots& spots, std::size_t index) {
    if (index == 0 || spots.spaces[index].kind != SpaceKind::Room ||
        spots.spaces[index - 1].span.begin > 1 || spots.spaces[index].key == "primary bedroom") {
        return false;
    }
    const std::size_t from = spots.spaces[index - 1].span.end;
    const std::size_t to = beforeArticles(sentence, spots.spaces[index].span.begin);
    const bool is = sentence.tokens[from - 1].text.ends_with("'s");
    return (is && from == to) ||
           (to == from + 1 && (wordIs(sentence, from, "is") || wordIs(sentence, from, "was")));
}

// "The AC outside is old", "the panel's outside on the back wall": right behind the thing.
bool isOutThere(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot) {
    const std::size_t begin = spot.span.begin;
    const std::size_t end = spot.span.end;
    if (!wordIs(sentence, begin, "outsid") || end != begin + 1 ||
        anyWord(sentence, end, end + 1, {"the", "a", "my", "your", "of", "that", "this"})) {
        return false;
    }
    const bool is = begin > 0 && wordIs(sentence, begin - 1, "is");
    const std::size_t at = begin - (is ? 1 : 0);
    return std::any_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
        return object.span.end == at && object.span.begin < at;
    });
}

}  // namespace

bool isWhatPlainRoomIs(const Sentence& sentence, const Spots& spots, std::size_t index) {
    if (index == 0 || !isWhatRoomIs(sentence, spots, index) || isBedroom(spots.spaces[index].key)) {
        return false;
    }
    const std::string& key = spots.spaces[index - 1].key;
    const std::string first = key.substr(0, key.find(' '));
    const std::size_t begin = spots.spaces[index].span.begin;
    return key.ends_with(" room") && (isSide(first) || namesRoom(first) || first == "other") &&
           !wordIs(sentence, begin - 1, "a") && !spots.spaces[index].headingOnly;
}

bool saysWhereItIs(const Sentence& sentence, std::size_t at) {
    std::size_t from = beforeArticles(sentence, at);
    // "Behind that the green bedroom, …": what lies there.
    const bool beyond = at > 1 && at - from > 1 && wordIs(sentence, at - 2, "that");
    if (from == 0 || beyond ||
        !anyWord(sentence, from - 1, from,
                 {"off", "behind", "abov", "under", "over", "besid", "below", "beneath"})) {
        return false;
    }
    --from;
    // "it's just off the kitchen"
    while (from > 0 && anyWord(sentence, from - 1, from, {"just", "right", "is", "it", "that"})) {
        --from;
    }
    return from == 0;
}

bool isCalledOut(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot) {
    const bool lived = spot.key == "kitchen" || spot.key.ends_with("ing room") ||
                       spot.key == "family room" || isBedroom(spot.key);
    if (!sentence.spoken || !sentence.alone || !lived || !spots.acts.empty() ||
        spots.spaces.size() != 1) {
        return false;
    }
    const std::size_t last =
        sentence.tokens.size() - (isMark(sentence.tokens.back(), ".?") ? 1 : 0);
    return std::any_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
        return object.span.end > spot.span.end && object.span.begin <= spot.span.end &&
               object.span.end == last;
    });
}

bool isUsedAs(const Sentence& sentence, std::size_t at) {
    const std::size_t from = beforeArticles(sentence, at);
    return from > 1 && wordIs(sentence, from - 1, "as") &&
           sentence.tokens[from - 2].plain == "used";
}

bool isCalledSo(const Sentence& sentence, const SpaceSpot& spot) {
    const std::size_t after = spot.span.end;
    bool called = false;
    for (std::size_t i = after; i < after + 4 && i < sentence.tokens.size(); ++i) {
        called = called || (wordIs(sentence, i, "call") && wordIs(sentence, i + 1, "it"));
    }
    return called && spot.kind == SpaceKind::Room;
}

bool isTurnedTo(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot) {
    const bool stands = spot.kind == SpaceKind::Room || spot.kind == SpaceKind::Outside;
    const std::size_t at = beforeArticles(sentence, spot.span.begin);
    // "At the end is the big bedroom, …", "next door is the bath, where …"
    const bool ends =
        spot.span.end >= sentence.tokens.size() || isMark(sentence.tokens[spot.span.end], ",.") ||
        anyWord(sentence, spot.span.end, spot.span.end + 1, {"with", "where", "which"});
    if (!stands || spot.headingOnly || at < 2 || !ends || at == spot.span.begin) {
        return false;
    }
    const bool is = wordIs(sentence, at - 1, "is") || sentence.tokens[at - 1].text.ends_with("'s");
    const bool acted = std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
        return act.span.begin < at && tables().acts[act.row].weight > 0;
    });
    const bool spaces = spots.spaces.front().span.begin < at;
    return is && !acted && !spaces && !anyObject(spots, 0, at) &&
           !anyWord(sentence, 0, at, {"not", "no", "wors", "onli"});
}

bool isWhereThingIs(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot) {
    if (isOutThere(sentence, spots, spot)) {
        return true;
    }
    if (spot.kind != SpaceKind::Room || spot.headingOnly) {
        return false;
    }
    const std::size_t at = beforeArticles(sentence, spot.span.begin);
    const bool under = spot.key == "stairs" && at > 0 && anyWord(sentence, at - 1, at, {"under"});
    if (at < 2 || (!under && !anyWord(sentence, at - 1, at, {"in", "insid"}))) {
        return false;
    }
    // What stands between the thing and "in": nothing but "it is".
    std::size_t from = at - 1;
    bool is = false;
    while (from > 0 && (isMark(sentence.tokens[from - 1], ",") ||
                        sentence.tokens[from - 1].text.ends_with("'s") ||
                        anyWord(sentence, from - 1, from,
                                {"is", "it", "that", "though", "still", "out", "over", "down", "up",
                                 "just", "live", "sit"}))) {
        --from;
        is = is || !isMark(sentence.tokens[from], ",");
    }
    return is &&
           std::any_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
               return object.span.end == from ||
                      (object.span.end == from + 1 && sentence.tokens[from].text.ends_with("'s"));
           });
}

bool isOnlyNamed(const Sentence& sentence, const Spots& spots, std::size_t index) {
    const SpaceSpot& spot = spots.spaces[index];
    if (sentence.heading) {
        return false;
    }
    // "The upstairs unit's is a '94": which of two furnaces, seen in the cellar.
    const std::size_t end = spot.span.end;
    const bool unit = end < sentence.tokens.size() && wordIs(sentence, end, "unit") &&
                      sentence.tokens[end].text.ends_with("'s");
    if (spot.kind == SpaceKind::Level && (unit || wordIs(sentence, end, "one"))) {
        return true;
    }
    // "the kitchen one": which of two chimneys
    const bool the = beforeArticles(sentence, spot.span.begin) < spot.span.begin;
    if (the && wordIs(sentence, end, "one") && spot.kind == SpaceKind::Room &&
        !isBedroom(spot.key)) {
        return true;
    }
    if (isCounted(sentence, spots, spot) || isCalledAlso(sentence, spots, index) ||
        isWhatRoomIs(sentence, spots, index) || isSideOfThing(sentence, spot) ||
        isSomebodys(sentence, spot)) {
        return true;
    }
    const std::size_t start = clauseStart(sentence, spot.span.begin);
    if (isCarried(sentence, start, spot.span.begin) ||
        isLikened(sentence, start, spot.span.begin)) {
        return true;
    }
    const std::size_t at = beforeArticles(sentence, spot.span.begin);
    if (at == 0) {
        return false;
    }
    if (isKeptThere(sentence, spots, index, at) || isBlownInto(sentence, at)) {
        return true;
    }
    if (isWaitedIn(sentence, at)) {
        return true;
    }
    // "leaning at the bedroom"
    if (wordIs(sentence, at - 1, "at") && at > 1 &&
        anyWord(sentence, at - 2, at - 1, {"lean", "leans", "leaning"})) {
        return true;
    }
    // "a serving hatch through to the kitchen", "cracked from the hatch clear over to the bath"
    const bool to = wordIs(sentence, at - 1, "to") || wordIs(sentence, at - 1, "into");
    if (isLookedAt(sentence, at)) {
        return true;
    }
    const bool thing = anyObject(spots, start, at) || isStrangeThing(sentence, at);
    const bool goes =
        anyWord(sentence, start, at,
                {"we", "i", "you", "go", "come", "let's", "on", "now", "step", "walk", "back"});
    const bool way = at > 1 && anyWord(sentence, at - 2, at - 1,
                                       {"through", "over", "across", "clear", "up", "down"});
    return to && thing && way && !goes;
}

bool isAskedAbout(const Sentence& sentence, const SpaceSpot& spot) {
    std::size_t at = spot.span.begin;
    while (at > 0 && (wordIs(sentence, at - 1, "the") || wordIs(sentence, at - 1, "that") ||
                      wordIs(sentence, at - 1, "this"))) {
        --at;
    }
    const bool about = at > 1 && wordIs(sentence, at - 1, "about") &&
                       (wordIs(sentence, at - 2, "what") || wordIs(sentence, at - 2, "how"));
    const bool with = at > 1 && wordIs(sentence, at - 1, "with") &&
                      (sentence.tokens[at - 2].text.ends_with("'s") ||
                       (at > 2 && wordIs(sentence, at - 2, "is"))) &&
                      wordIs(sentence, 0, "what");
    return (about || with) && !spot.headingOnly && isMark(sentence.tokens.back(), "?") &&
           (spot.kind == SpaceKind::Room || spot.kind == SpaceKind::Outside);
}

bool isServed(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot,
              const std::string& here) {
    static const std::vector<std::string_view> kPlant = {"basement", "mechanical room", "attic",
                                                         "crawl space", "whole house"};
    static const std::vector<std::string_view> kRuns = {"wiring", "water supply", "supply pipe",
                                                        "ductwork", "drain"};
    static const std::uint32_t kWiring = tables().objectNamed("wiring");
    const bool stands = spot.kind == SpaceKind::Room || spot.kind == SpaceKind::Level;
    if (!stands || sentence.heading || spot.span.end >= sentence.tokens.size() ||
        sentence.tokens[spot.span.end].kind != TokenKind::Word || !isOneOf(here, kPlant)) {
        return false;
    }
    const bool runs =
        std::all_of(spots.objects.begin(), spots.objects.end(), [](const ObjectSpot& object) {
            const std::string& name = tables().objects[object.object].name;
            return isOneOf(name, kRuns);
        });
    const bool rewired = std::any_of(spots.acts.begin(), spots.acts.end(), [](const ActSpot& act) {
        return tables().acts[act.row].object == kWiring;
    });
    return runs && (rewired || !spots.objects.empty());
}

bool isLaundryIn(const Sentence& sentence, const Spots& spots) {
    if (spots.spaces.size() < 2 || spots.spaces[0].key != "laundry room" ||
        spots.spaces[0].span.begin > 1 || spots.spaces[1].kind == SpaceKind::Level) {
        return false;
    }
    std::size_t at = spots.spaces[0].span.end;
    const bool is = sentence.tokens[at - 1].text.ends_with("'s") || wordIs(sentence, at, "is");
    at += wordIs(sentence, at, "is") ? 1 : 0;
    at += wordIs(sentence, at, "out") || wordIs(sentence, at, "down") ? 1 : 0;
    const bool in = wordIs(sentence, at, "in");
    at += in ? 1 : 0;
    at += wordIs(sentence, at, "the") || wordIs(sentence, at, "this") ? 1 : 0;
    return is && in && at == spots.spaces[1].span.begin;
}

bool isThingOfGrounds(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot) {
    const bool hut = spot.key == "shed" || spot.key == "greenhouse" || spot.key == "carport";
    const bool patio = spot.key == "patio";
    if ((!hut && !patio && spot.key != "deck") || sentence.heading ||
        (spot.span.end < sentence.tokens.size() && isMark(sentence.tokens[spot.span.end], ".:-"))) {
        return false;
    }
    // "The shed is rotten, get rid.": nothing else is spoken of.
    const bool alone =
        spot.key == "shed" && !spots.acts.empty() &&
        std::all_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
            return object.span.begin >= spot.span.begin && object.span.end <= spot.span.end;
        });
    return alone || patio ||
           std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
               const ActRow& row = tables().acts[act.row];
               const bool goes = row.treatment == Treatment::Remove && row.weight > 1;
               const bool stays = row.treatment == Treatment::Keep && row.weight > 1;
               return goes || (hut && stays);
           });
}

}  // namespace ledgerboard::intake
