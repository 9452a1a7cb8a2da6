// Which of several rooms of one sort is meant, by what is said after the name of the sort: "the
// bedroom at the front", "BATH (hall)", "bedroom, the small one"?
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <string>
#include <utility>

#include "core/intake/notes/phrases.h"
#include "core/intake/notes/tables.h"
#include "core/intake/notes/tokens.h"

namespace ledgerboard::intake {

// A phrase of a table, where it ends, and the row it is of; kNone where none begins.
struct RowFound {
    std::size_t end = 0;
    std::uint32_t row = kNone;
    std::uint8_t flag = 0;
};

// The same as longestRow, where the word at `at` opens a phrase of the table.
[[nodiscard]] RowFound longestOpened(std::span<const Token> tokens, std::size_t at, From from);

// The longest phrase of the table that begins at `at`; none beyond the end. Much asked, and mostly
// no phrase begins there.
[[nodiscard]] inline RowFound longestRow(std::span<const Token> tokens, std::size_t at, From from) {
    const bool opens = at < tokens.size() && tables().phrases.opens(tokens[at].word, from);
    return opens ? longestOpened(tokens, at, from) : RowFound{};
}

// Whether a hyphen that parts no words stands at `at`.
[[nodiscard]] bool isHyphen(std::span<const Token> tokens, std::size_t at);

// Which one, as it is named ("front", "upstairs"), and where that ends; empty where it is not said.
// The name of the sort begins at `begin` and ends before `at`.
[[nodiscard]] std::pair<std::string, std::size_t> whichAfter(std::span<const Token> tokens,
                                                             std::size_t begin, std::size_t at);

// "front" and "bedroom", "hall" and "bathroom": the name that the tables have for both together.
[[nodiscard]] std::string roomNamed(const std::string& which, const std::string& room);

}  // namespace ledgerboard::intake
