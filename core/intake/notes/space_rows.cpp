#include "core/intake/notes/space_rows.h"

#include <algorithm>
#include <string>

#include "core/intake/notes/space_names.h"
#include "core/intake/notes/space_which.h"

namespace ledgerboard::intake {

namespace {

// Which of several rooms, and where the word for it stands.
struct Part {
    Span span;
    std::string name;
};

bool isThe(const Token& token) {
    static const WordId kThe = tables().id("the");
    return token.word == kThe;
}

bool joins(const Token& token) {
    static const WordId kAnd = tables().id("and");
    return token.word == kAnd ||
           (token.kind == TokenKind::Mark && (token.mark == ',' || token.mark == '&'));
}

// The words from `at` on, joined by "and" and marks, that each tell one of several rooms.
std::vector<Part> partsAt(std::span<const Token> tokens, std::size_t at) {
    constexpr std::size_t kMost = 6;
    std::vector<Part> parts;
    bool joined = true;
    while (joined && at < tokens.size() && parts.size() < kMost) {
        const RowFound found = longestRow(tokens, at, From::Qualifier);
        if (found.row == kNone) {
            return {};
        }
        parts.push_back({{at, found.end}, tables().qualifiers[found.row]});
        at = found.end;
        joined = false;
        while (at < tokens.size() && (joins(tokens[at]) || (joined && isThe(tokens[at])))) {
            joined = true;
            ++at;
        }
    }
    return parts;
}

// The sort of room that is named at `at` by one word: "bedroom", "bathroom" or "room"; empty where
// it is another.
std::string sortAt(std::span<const Token> tokens, std::size_t at) {
    static const WordId kRoom = tables().id("room");
    const RowFound found = longestRow(tokens, at, From::Space);
    if (found.row == kNone) {
        return at < tokens.size() && tokens[at].word == kRoom ? "room" : "";
    }
    const std::string& row = tables().spaces[found.row].name;
    const bool one = found.end == at + 1;
    return one && row.starts_with("bed")    ? "bedroom"
           : one && row.starts_with("bath") ? "bathroom"
                                            : "";
}

SpaceSpot roomAt(const Span& span, const std::string& name) {
    SpaceSpot spot;
    spot.span = span;
    spot.key = spot.shown = name;
    return spot;
}

}  // namespace

std::vector<SpaceSpot> roomsInRow(std::span<const Token> tokens, std::size_t at) {
    const std::vector<Part> parts = partsAt(tokens, at);
    if (parts.size() < 2) {
        return {};
    }
    const std::size_t next = parts.back().span.end;
    const std::string sort = sortAt(tokens, next);
    const bool numbers = parts.front().name.size() == 1;
    const bool sides =
        std::all_of(parts.begin(), parts.end(), [](const Part& part) { return isSide(part.name); });
    const bool alike = std::all_of(parts.begin(), parts.end(), [&](const Part& part) {
        return (part.name.size() == 1) == numbers;
    });
    // "The hall and front bedroom" are a hall and a bedroom.
    if (sort.empty() || !alike || !(sides || tokens[next].plain.ends_with('s'))) {
        return {};
    }
    std::vector<SpaceSpot> rooms;
    for (const Part& part : parts) {
        const std::size_t end = &part == &parts.back() ? next + 1 : part.span.end;
        rooms.push_back(roomAt({part.span.begin, end},
                               numbers ? sort + " " + part.name : roomNamed(part.name, sort)));
    }
    return rooms;
}

std::vector<SpaceSpot> otherOfSort(std::span<const Token> tokens, std::size_t at,
                                   const SpaceSpot& before) {
    static const WordId kOne = tables().id("one");
    if (before.span.end + 2 != at || !isThe(tokens[at - 1]) ||
        tokens[at - 2].kind == TokenKind::Mark || !joins(tokens[at - 2]) ||
        before.kind != SpaceKind::Room) {
        return {};
    }
    const std::string sort = headOf(before.key);
    if (sort != "bedroom" && sort != "bath") {
        return {};
    }
    const RowFound found = longestRow(tokens, at, From::Qualifier);
    if (found.row == kNone || found.end >= tokens.size() || tokens[found.end].word != kOne ||
        tables().qualifiers[found.row].size() == 1) {
        return {};
    }
    return {roomAt({at, found.end + 1},
                   roomNamed(tables().qualifiers[found.row], sort == "bath" ? "bathroom" : sort))};
}

}  // namespace ledgerboard::intake
