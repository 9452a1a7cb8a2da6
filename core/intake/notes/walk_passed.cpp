#include "core/intake/notes/walk_passed.h"

#include <algorithm>
#include <string_view>

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

}  // namespace

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
    const std::size_t start = clauseStart(sentence, spot.span.begin);
    if (isCarried(sentence, start, spot.span.begin)) {
        return true;
    }
    const std::size_t at = beforeArticles(sentence, spot.span.begin);
    if (at == 0) {
        return false;
    }
    // "leaning at the bedroom"
    if (wordIs(sentence, at - 1, "at") && at > 1 &&
        anyWord(sentence, at - 2, at - 1, {"lean", "leans", "leaning"})) {
        return true;
    }
    // "a serving hatch through to the kitchen", "cracked from the hatch clear over to the bath"
    const bool to = wordIs(sentence, at - 1, "to") || wordIs(sentence, at - 1, "into");
    const bool thing =
        std::any_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
            return object.span.begin >= start && object.span.end <= at;
        });
    const bool goes =
        anyWord(sentence, start, at,
                {"we", "i", "you", "go", "come", "let's", "on", "now", "step", "walk", "back"});
    const bool way = at > 1 && anyWord(sentence, at - 2, at - 1,
                                       {"through", "over", "across", "clear", "up", "down"});
    return to && thing && way && !goes;
}

bool isThingOfGrounds(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot) {
    const bool hut = spot.key == "shed" || spot.key == "greenhouse" || spot.key == "carport";
    if ((!hut && spot.key != "deck") || sentence.heading ||
        (spot.span.end < sentence.tokens.size() && isMark(sentence.tokens[spot.span.end], ".:-"))) {
        return false;
    }
    return std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
        const ActRow& row = tables().acts[act.row];
        const bool goes = row.treatment == Treatment::Remove && row.weight > 1;
        const bool stays = row.treatment == Treatment::Keep && row.weight > 1;
        return goes || (hut && stays);
    });
}

}  // namespace ledgerboard::intake
