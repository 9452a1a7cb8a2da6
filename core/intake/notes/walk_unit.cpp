// In which flat of the house does the speaker stand: "Lower unit first.", "Okay, unit B."?
#include <algorithm>
#include <array>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/space_names.h"
#include "core/intake/notes/speech.h"
#include "core/intake/notes/units.h"
#include "core/intake/notes/walk.h"

namespace ledgerboard::intake {

namespace {

// What the storey or side that begins at `at` is called, and where it ends.
std::pair<std::string, std::size_t> qualifierAt(const Sentence& sentence, std::size_t at) {
    std::pair<std::string, std::size_t> found{std::string(), at};
    std::uint32_t node = 0;
    for (std::size_t i = at; i < sentence.tokens.size(); ++i) {
        const Token& token = sentence.tokens[i];
        node = token.word == kUnknown ? 0 : tables().phrases.step(node, token.word);
        if (node == 0) {
            break;
        }
        for (const Meaning& meaning : tables().phrases.at(node)) {
            if (meaning.from == From::Qualifier) {
                found = {tables().qualifiers[meaning.row], i + 1};
            }
        }
    }
    return found;
}

bool isStorey(const std::string& name) {
    return name == "upstairs" || name == "downstairs" || name.ends_with(" floor");
}

// "A", "B's", "2": what a flat goes by. Empty where the token is none.
std::string letterAt(const Sentence& sentence, std::size_t at, bool alone) {
    if (at >= sentence.tokens.size()) {
        return {};
    }
    const Token& token = sentence.tokens[at];
    const bool letter = token.text.front() >= 'A' && token.text.front() <= 'F' &&
                        (token.text.size() == 1 || token.text.substr(1) == "'s");
    if (letter) {
        return {static_cast<char>(token.text.front() | 0x20)};
    }
    const int number = alone ? 0 : smallNumber(sentence.tokens, at);
    return number > 0 ? std::to_string(number) : std::string();
}

// What all the flats have together.
bool isShared(const SpaceSpot& spot) {
    static const std::vector<std::string_view> kShared = {"basement", "attic", "stairs", "garage",
                                                          "exterior"};
    return spot.kind == SpaceKind::Whole || spot.kind == SpaceKind::Level ||
           isOneOf(spot.key, kShared) ||
           (spot.kind == SpaceKind::Outside && spot.key.find("porch") == std::string::npos);
}

}  // namespace

// The flat that is named from token `at` on, and where its name ends; nothing where none is.
std::pair<std::string, std::size_t> Walk::unitAt(const Sentence& sentence, const Spots& spots,
                                                 std::size_t at) const {
    std::pair<std::string, std::size_t> none{std::string(), at};
    if (at >= sentence.tokens.size()) {
        return none;
    }
    const std::string& word = sentence.tokens[at].plain;
    if (houseUnits_.lettered && isUnitWord(word)) {
        const std::string letter = letterAt(sentence, at + 1, false);
        return letter.empty() ? none : std::pair(word + " " + letter, at + 2);
    }
    if (houseUnits_.lettered && isShortUnit(word)) {
        return {"unit " + word.substr(1), at + 1};
    }
    // "A kitchen.", "B's been redone."
    if (houseUnits_.lettered && unit_.find(' ') != std::string::npos) {
        const std::string letter = letterAt(sentence, at, true);
        const bool room =
            std::any_of(spots.spaces.begin(), spots.spaces.end(),
                        [&](const SpaceSpot& spot) { return spot.span.begin == at + 1; });
        const bool closes =
            at + 1 < sentence.tokens.size() && isMark(sentence.tokens[at + 1], ",:");
        if (!letter.empty() && (room || closes || sentence.tokens[at].text.size() > 1)) {
            return {unit_.substr(0, unit_.find(' ') + 1) + letter, at + 1};
        }
    }
    const auto [name, end] = qualifierAt(sentence, at);
    if (name.empty() || name.starts_with("unit ")) {
        return none;
    }
    // "upper unit" is one word of the table.
    if (end > at + 1 && isUnitWord(sentence.tokens[end - 1].plain)) {
        return {name, end};
    }
    const bool unit = end < sentence.tokens.size() && isUnitWord(sentence.tokens[end].plain);
    const bool side =
        unit && (sentence.tokens[end].plain == "side" || sentence.tokens[end].plain == "half");
    if (unit && (!side || houseUnits_.stacked) && (isStorey(name) || isSide(name))) {
        return {name, end + 1};
    }
    return isStorey(unit_) && isStorey(name) ? std::pair(name, end) : none;
}

// Whether the sentence enters a flat, by its name alone or with the room there.
void Walk::hearUnit(const Sentence& sentence, const Spots& spots) {
    std::size_t at = 0;
    while (at < sentence.tokens.size() && at < 4 &&
           (sentence.tokens[at].kind == TokenKind::Mark || spots.endOf(Cue::Split, at) > at ||
            wordIs(sentence, at, "the") || wordIs(sentence, at, "in") ||
            wordIs(sentence, at, "now") || wordIs(sentence, at, "okay") ||
            wordIs(sentence, at, "and") || wordIs(sentence, at, "so"))) {
        ++at;
    }
    for (std::size_t i = at; i < sentence.tokens.size(); ++i) {
        // Elsewhere than at the start it has to be what is gone through next.
        const bool opens = i == at;
        if (!opens && !isMark(sentence.tokens[i - 1], ",")) {
            continue;
        }
        const std::pair<std::string, std::size_t> unit = unitAt(sentence, spots, i);
        const std::string& name = unit.first;
        const std::size_t end = unit.second;
        const bool first = wordIs(sentence, end, "first") || wordIs(sentence, end, "next") ||
                           wordIs(sentence, end, "now");
        const bool closes = end >= sentence.tokens.size() || isMark(sentence.tokens[end], ".:,-") ||
                            (!isStorey(name) && isMark(sentence.tokens[end], "(")) ||
                            wordIs(sentence, end, "is") ||
                            sentence.tokens[end - (end > i ? 1 : 0)].text.ends_with("'s");
        const bool room =
            std::any_of(spots.spaces.begin(), spots.spaces.end(),
                        [&](const SpaceSpot& spot) { return spot.span.begin == end; });
        // "Top floor flat, 1898 building.", where notes open: all of the home is there.
        const bool home = known_.empty() && !houseUnits_.stacked && isStorey(name) &&
                          end + 1 < sentence.tokens.size() && isMark(sentence.tokens[end], ",");
        if (!name.empty() && (first || (opens && !home && (closes || room)))) {
            unit_ = name;
            return;
        }
    }
}

// Rooms that are named in a flat are its own.
void Walk::nameInUnit(Spots& spots) {
    if (unit_.empty()) {
        return;
    }
    for (SpaceSpot& spot : spots.spaces) {
        if (isShared(spot) || spot.headingOnly || spot.kind == SpaceKind::Group) {
            continue;
        }
        const bool other = spot.key.starts_with("upstairs ") ||
                           spot.key.starts_with("downstairs ") || spot.key.starts_with("unit ");
        if (other && isStorey(unit_)) {
            unit_ = spot.key.substr(0, spot.key.find(' '));
        }
        if (!other && !spot.key.starts_with(unit_ + " ")) {
            spot.key = unit_ + " " + spot.key;
            spot.shown = unit_ + " " + spot.shown;
        }
    }
}

// In the basement or outdoors the flats are done with.
void Walk::leaveUnit() {
    if (current_.size() == 1 && (current_.front() == "basement" || current_.front() == "exterior" ||
                                 current_.front() == "whole house")) {
        unit_.clear();
    }
}

}  // namespace ledgerboard::intake
