// Which words that name a space in a heading alone name one in a sentence too?
//
// "Dining" is a room where it stands among rooms ("lounge, dining and hall") or where a sentence
// begins with it ("Dining, paint."), and no room in "a dining table".
#include <algorithm>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/speech.h"
#include "core/intake/notes/walk.h"

namespace ledgerboard::intake {

namespace {

// "and", a comma or a bar, and an article: between two rooms of a row.
bool joinsRooms(const Sentence& sentence, std::size_t begin, std::size_t end) {
    bool joined = false;
    for (std::size_t i = begin; i < end; ++i) {
        const bool joint = isMark(sentence.tokens[i], ",/&+") || wordIs(sentence, i, "and");
        if (!joint && !wordIs(sentence, i, "the")) {
            return false;
        }
        joined = joined || joint;
    }
    return joined;
}

// Whether what stands behind the name leaves it whole: "dining table" goes on.
bool closesName(const Sentence& sentence, const Spots& spots, std::size_t at) {
    static const std::vector<std::string_view> kJoints = {
        "and", "has", "have",  "had",   "needs", "need", "wants",  "want", "gets",
        "get", "the", "there", "where", "which", "with", "behind", "off",  "beside"};
    return at >= sentence.tokens.size() || sentence.tokens[at].kind == TokenKind::Mark ||
           sentence.tokens[at - 1].text.ends_with("'s") ||
           isOneOf(sentence.tokens[at].plain, kJoints) || spots.endOf(Cue::Passive, at) > at;
}

// Whether the tables know the word with "room" behind it: "utility".
bool isShortOfRoom(WordId word) {
    static const WordId kRoom = tables().id("room");
    const std::uint32_t first = word == kUnknown ? 0 : tables().phrases.step(0, word);
    const std::uint32_t node = first == 0 ? 0 : tables().phrases.step(first, kRoom);
    return node != 0 && !tables().phrases.at(node).empty();
}

// "dining", "living", "utility": the name without its last word.
bool isFirstWord(const Sentence& sentence, const SpaceSpot& spot) {
    constexpr std::size_t kShortest = 5;
    std::string_view word = sentence.tokens[spot.span.begin].plain;
    word.remove_suffix(word.ends_with("'s") ? 2 : 0);
    return spot.span.end == spot.span.begin + 1 && word.size() >= kShortest &&
           (std::string_view(spot.key).starts_with(word) ||
            isShortOfRoom(sentence.tokens[spot.span.begin].word));
}

// "In the utility, …", "into the dining, …"
bool isCameInto(const Sentence& sentence, std::size_t at) {
    return at > 1 && wordIs(sentence, at - 1, "the") &&
           (wordIs(sentence, at - 2, "in") || wordIs(sentence, at - 2, "into") ||
            wordIs(sentence, at - 2, "to"));
}

// "Under the house, there's no insulation."
bool isUnderHouse(const Sentence& sentence, const SpaceSpot& spot) {
    return spot.key == "crawl space" && !sentence.bullet && spot.span.end > spot.span.begin + 1 &&
           wordIs(sentence, spot.span.begin, "under");
}

bool isThing(const Spots& spots, const Span& span) {
    return std::any_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
        return object.span.begin <= span.end && object.span.end > span.begin;
    });
}

}  // namespace

void Walk::hearShortNames(const Sentence& sentence, Spots& spots) {
    if (sentence.heading || (sentence.terse && !sentence.bullet)) {
        return;
    }
    // In a line of its own only a row of rooms tells: "living, hall, all 3 bedrooms - sand".
    const bool rowsAlone = sentence.alone || sentence.terse;
    std::vector<SpaceSpot>& spaces = spots.spaces;
    const auto besides = [&](std::size_t one, std::size_t other) {
        return spaces[other].kind == SpaceKind::Room && !spaces[other].headingOnly &&
               joinsRooms(sentence, spaces[std::min(one, other)].span.end,
                          spaces[std::max(one, other)].span.begin);
    };
    const auto isNamed = [&](std::size_t i) {
        const SpaceSpot& spot = spaces[i];
        if (!spot.headingOnly || spot.kind != SpaceKind::Room || isThing(spots, spot.span) ||
            !(closesName(sentence, spots, spot.span.end) || isUnderHouse(sentence, spot))) {
            return false;
        }
        const bool opens = !rowsAlone &&
                           (isFirstWord(sentence, spot) || isUnderHouse(sentence, spot)) &&
                           (spot.span.begin <= skipSmall(sentence, spots, 0) ||
                            isCameInto(sentence, spot.span.begin));
        return opens || (i > 0 && besides(i, i - 1)) ||
               (i + 1 < spaces.size() && besides(i, i + 1));
    };
    // Forth and back: each may join the next.
    for (std::size_t i = 0; i < spaces.size(); ++i) {
        spaces[i].headingOnly = spaces[i].headingOnly && !isNamed(i);
    }
    for (std::size_t i = spaces.size(); i-- > 0;) {
        spaces[i].headingOnly = spaces[i].headingOnly && !isNamed(i);
    }
}

}  // namespace ledgerboard::intake
