// Which space does a label in capitals mean that the tables don't know: "LNGE:", "CUPBD:",
// "PUMPS:"?
//
// Where the lines of the notes open with labels, each label says where the speaker is; a line must
// not be read as of the room before only because its label is strange.
#include <algorithm>

#include "core/intake/notes/names.h"
#include "core/intake/notes/one_of.h"
#include "core/intake/notes/space_names.h"
#include "core/intake/notes/speech.h"
#include "core/intake/notes/walk.h"

namespace ledgerboard::intake {

namespace {

// The words of a label and where it ends, its mark included; 0 where the line has none.
struct Label {
    Span words;
    std::size_t end = 0;
};

Label labelOf(const Sentence& sentence) {
    constexpr std::size_t kMostWords = 5;
    Label label;
    // "OUT roof '14 ok", "UNDER belly wrap torn": without a mark.
    if ((wordIs(sentence, 0, "out") || wordIs(sentence, 0, "under")) &&
        isInCapitals(sentence, {0, 1}) && sentence.tokens.size() > 1 &&
        sentence.tokens[1].kind == TokenKind::Word && !isInCapitals(sentence, {1, 2})) {
        return {{0, 1}, 1};
    }
    bool bracket = false;
    for (std::size_t i = 0; i < sentence.tokens.size(); ++i) {
        const Token& token = sentence.tokens[i];
        bracket = bracket || isMark(token, "(");
        if (!bracket && isMark(token, ":-") && !(token.glued && isMark(token, "-"))) {
            label.end = i + 1;
            break;
        }
        if (isMark(token, ")")) {
            bracket = false;
        } else if (!bracket) {
            const bool small = std::any_of(token.text.begin(), token.text.end(),
                                           [](char c) { return c >= 'a' && c <= 'z'; });
            if ((small && !sentence.terse) || isMark(token, ".;!?,") || i >= kMostWords) {
                return {};
            }
            label.words.end = i + 1;
        }
    }
    return label.end > 0 && label.words.end > 0 ? label : Label{};
}

// The space whose name is the word with letters left out; kNone where none or several are.
std::uint32_t spaceShortened(const std::string& word) {
    std::uint32_t row = kNone;
    for (const SpaceWord& name : tables().spaceWords) {
        if (!isShortFor(word, name.word)) {
            continue;
        }
        if (row != kNone && row != name.row) {
            return kNone;
        }
        row = name.row;
    }
    return row;
}

// The space whose name is the words of the label with letters left out: "brkfst nk", "cr sp".
std::uint32_t spaceOfWords(const Sentence& sentence, const Span& label) {
    const auto fits = [&](std::string_view name) {
        for (std::size_t i = label.begin; i < label.end; ++i) {
            const std::size_t end = std::min(name.find(' '), name.size());
            const std::string& word = sentence.tokens[i].plain;
            const bool starts = word.size() > 1 && name.substr(0, end).starts_with(word);
            if (!starts && !isShortFor(word, name.substr(0, end)) &&
                !(word.size() == 2 && word[0] == name[0] && word[1] == name[end - 1])) {
                return false;
            }
            name.remove_prefix(std::min(end + 1, name.size()));
        }
        return name.empty();
    };
    const auto& rows = tables().spaces;
    const auto row = std::find_if(rows.begin(), rows.end(),
                                  [&](const SpaceRow& space) { return fits(space.name); });
    return row == rows.end() ? kNone : static_cast<std::uint32_t>(row - rows.begin());
}

// The label in small letters, written out where the tables say how.
std::string nameOf(const Sentence& sentence, const Span& label) {
    std::string name;
    const char* last = nullptr;
    for (std::size_t i = label.begin; i < label.end; ++i) {
        const Token& token = sentence.tokens[i];
        if (token.kind == TokenKind::Mark || token.text.data() == last) {
            continue;
        }
        last = token.text.data();
        const std::string& word = token.plain;
        const std::string* meaning = tables().lexicon.respelling(word);
        name += (name.empty() ? "" : " ") + (meaning == nullptr ? word : *meaning);
    }
    return name;
}

// "STUMPS:", "PANEL:": whose the thing is that the label names; nothing for a closet, a place.
std::optional<SpaceSpot> spaceOfThing(const Spots& spots, const Span& label) {
    static const std::vector<std::string_view> kPlaces = {"closet", "cabinets", "closet doors"};
    for (const ObjectSpot& spot : spots.objects) {
        if (spot.span.begin >= label.end) {
            break;
        }
        const ObjectRow& object = tables().objects[spot.object];
        if (isOneOf(object.name, kPlaces)) {
            return std::nullopt;
        }
        SpaceSpot space;
        space.span = label;
        const bool out = object.place == Place::Outside || object.home == Home::Outside;
        space.kind = out ? SpaceKind::Outside : SpaceKind::Whole;
        space.key = out ? "exterior" : "whole house";
        return space;
    }
    return std::nullopt;
}

// "2ND:", as a label by itself: a floor.
bool namesFloor(const Sentence& sentence) {
    return wordIs(sentence, 0, "first") || wordIs(sentence, 0, "second") ||
           wordIs(sentence, 0, "third");
}

}  // namespace

SpaceSpot Walk::spaceOfLabel(const Sentence& sentence, const Spots& spots,
                             const Span& label) const {
    SpaceSpot space;
    space.span = label;
    // "POLE SHED": a word that tells a known space from others of its sort.
    for (const SpaceSpot& spot : spots.spaces) {
        if (spot.span.end <= label.end && !spot.headingOnly) {
            space = spot;
            space.key = space.shown = nameOf(sentence, label);
            // "bk/kit": two names of one room.
            const std::size_t begin = spot.span.begin;
            const bool named = begin > label.begin && !isMark(sentence.tokens[begin - 1], "/");
            return named ? space : spot;
        }
    }
    if (label.end == 1 && namesFloor(sentence)) {
        space.kind = SpaceKind::Level;
        space.shown = nameOf(sentence, label) + " floor";
        space.key = spaceName(space.shown);
        return space;
    }
    const std::uint32_t row = label.end == 1   ? spaceShortened(sentence.tokens[0].plain)
                              : label.end == 2 ? spaceOfWords(sentence, label)
                                               : kNone;
    if (row != kNone) {
        space.kind = tables().spaces[row].kind;
        space.key = space.shown = tables().spaces[row].name;
        return space;
    }
    if (label.end == 1 && wordIs(sentence, 0, "bed")) {
        space.key = space.shown = "bedroom";
        return space;
    }
    if (label.end == 1 && wordIs(sentence, 0, "out")) {
        space.kind = SpaceKind::Outside;
        space.key = "exterior";
        space.shown = "outside";
        return space;
    }
    if (label.end == 1 && wordIs(sentence, 0, "under")) {
        space.key = "crawl space";
        space.shown = "under the house";
        return space;
    }
    if (const std::optional<SpaceSpot> thing = spaceOfThing(spots, label)) {
        return *thing;
    }
    space.key = space.shown = nameOf(sentence, label);
    return space;
}

// False where the sentence opens with no label.
bool Walk::takeLabel(const Sentence& sentence, const Spots& spots, Placed& placed) {
    const Label label = sentence.labelled ? labelOf(sentence) : Label{};
    if (label.end == 0 || headingIndent_ >= 0) {
        return false;
    }
    const SpaceSpot space = spaceOfLabel(sentence, spots, label.words);
    const bool thing = space.kind == SpaceKind::Whole || space.key == "exterior";
    moveTo({&space});
    placed.from = thing ? 0 : label.end;
    placed.moved = true;
    placed.onlyPlace = label.end >= sentence.tokens.size();
    return true;
}

}  // namespace ledgerboard::intake
