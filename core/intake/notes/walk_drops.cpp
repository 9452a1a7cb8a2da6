// Which of the words that may name a space name none where they stand?
#include <algorithm>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/space_names.h"
#include "core/intake/notes/speech.h"
#include "core/intake/notes/walk.h"

namespace ledgerboard::intake {

namespace {

// "garage dr", "front dr": a door, and no dining room.
void dropDoors(Spots& spots) {
    std::erase_if(spots.spaces, [&](const SpaceSpot& space) {
        return std::any_of(
            spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
                const std::string& name = tables().objects[object.object].name;
                return object.span.begin == space.span.begin && object.span.end == space.span.end &&
                       name.ends_with("door") && space.span.end > space.span.begin + 1;
            });
    });
}

// "fuse bd": a board, where no figure says that bedrooms are counted.
void dropBoards(const Sentence& sentence, Spots& spots) {
    std::erase_if(spots.spaces, [&](const SpaceSpot& space) {
        const std::size_t at = space.span.begin;
        return sentence.terse && at > 0 && space.span.end == at + 1 &&
               sentence.tokens[at].plain == "bd" && sentence.tokens[at - 1].kind == TokenKind::Word;
    });
}

// "there's a kit for that": in prose the word is no short name of the kitchen.
void dropKits(const Sentence& sentence, Spots& spots) {
    std::erase_if(spots.spaces, [&](const SpaceSpot& space) {
        const std::size_t at = space.span.begin;
        return !sentence.terse && at > 0 && space.span.end == at + 1 &&
               sentence.tokens[at].plain == "kit" && !sentence.tokens[at].capital &&
               sentence.tokens[at - 1].kind == TokenKind::Word;
    });
}

// "No hall.", "- was a nursery": there is none of it, or no more.
void dropAbsent(const Sentence& sentence, Spots& spots) {
    std::erase_if(spots.spaces, [&](const SpaceSpot& space) {
        std::size_t at = space.span.begin;
        if (at > 0 && wordIs(sentence, at - 1, "no")) {
            return true;
        }
        static const std::vector<std::string_view> kLeads = {"a",   "the",   "his", "her",
                                                             "our", "their", "my",  "an"};
        const bool led = at > 0 && isOneOf(sentence.tokens[at - 1].plain, kLeads);
        at -= led ? 1 : 0;
        // "The bath was once the pantry."
        at -= at > 1 && wordIs(sentence, at - 1, "onc") ? 1 : 0;
        // "third bedroom this was his hobby room"
        const bool other = !spots.spaces.empty() && spots.spaces.front().span.end < at &&
                           spots.spaces.front().span.end + 2 >= at;
        return (at == 1 || at == 2 || other) && at > 0 && sentence.tokens[at - 1].plain == "was";
    });
}

// "Toilet (separate)", "the toilet's in a separate room": a room of its own.
bool isSeparate(const Sentence& sentence, const SpaceSpot& space) {
    constexpr std::size_t kNear = 4;
    if (space.key != "half bath" || space.span.begin > 1) {
        return false;
    }
    for (std::size_t i = space.span.end; i < space.span.end + kNear; ++i) {
        if (wordIs(sentence, i, "separ")) {
            return true;
        }
    }
    return false;
}

// "Toilet: rocks", "the pool is green": a thing that gives its name to a place in a heading alone.
void dropThings(const Sentence& sentence, Spots& spots, bool label) {
    for (SpaceSpot& space : spots.spaces) {
        space.headingOnly = space.headingOnly && !isSeparate(sentence, space);
    }
    std::erase_if(spots.spaces, [&](const SpaceSpot& space) {
        const bool plain = !space.headingOnly || space.key == "exterior" ||
                           space.key == "dining room" || space.kind == SpaceKind::Whole;
        const bool heads = sentence.opensLine && space.span.begin == 0 && !sentence.spoken &&
                           (label || sentence.heading || isInCapitals(sentence, space.span) ||
                            (sentence.alone && !sentence.bullet && space.key != "pool area" &&
                             space.span.end == sentence.tokens.size()));
        return !plain && !heads &&
               std::any_of(spots.objects.begin(), spots.objects.end(),
                           [&](const ObjectSpot& object) {
                               return object.span.begin <= space.span.begin &&
                                      object.span.end >= space.span.end;
                           });
    });
}

// "dr: bottom panel dented", where the dining room was spoken of as DR: a door.
void dropShortDoors(const Sentence& sentence, Spots& spots) {
    std::erase_if(spots.spaces, [&](const SpaceSpot& space) {
        return space.key == "dining room" && space.span.end == space.span.begin + 1 &&
               sentence.tokens[space.span.begin].text == "dr";
    });
}

// "Top floor flat, 1898 building.", where notes open: the home is all on that storey.
void dropStoreyOfFlat(const Sentence& sentence, Spots& spots) {
    static const std::vector<std::string_view> kFlats = {"flat", "apartment", "condo", "unit",
                                                         "maisonette"};
    constexpr std::size_t kNear = 3;
    std::erase_if(spots.spaces, [&](const SpaceSpot& space) {
        bool flat = false;
        for (std::size_t i = space.span.end;
             i < space.span.end + kNear && i < sentence.tokens.size() &&
             sentence.tokens[i].kind == TokenKind::Word;
             ++i) {
            flat = flat || isOneOf(sentence.tokens[i].plain, kFlats);
        }
        return space.kind == SpaceKind::Level && flat;
    });
}

}  // namespace

// Leaves out what only looks like a space.
void Walk::dropOthers(const Sentence& sentence, Spots& spots) const {
    dropDoors(spots);
    dropThings(sentence, spots, opensWithLabel(sentence, spots));
    dropBoards(sentence, spots);
    dropKits(sentence, spots);
    dropAbsent(sentence, spots);
    if (known_.empty() && !houseUnits_.lettered && !sentence.heading && !sentence.alone) {
        dropStoreyOfFlat(sentence, spots);
    }
    if (find("dining room") != nullptr) {
        dropShortDoors(sentence, spots);
    }
}

}  // namespace ledgerboard::intake
