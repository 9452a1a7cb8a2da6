// Small questions about a sentence that tells a fact of the deal.
#pragma once

#include <string>
#include <string_view>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"

namespace ledgerboard::intake {

// Whether the token at `at` is the mark `mark`. False beyond the end.
[[nodiscard]] bool markIs(const Sentence& sentence, std::size_t at, char mark);

// The word at `at` in lower case; empty where none is.
[[nodiscard]] inline std::string_view lower(const Sentence& sentence, std::size_t at) {
    return at < sentence.tokens.size() && sentence.tokens[at].kind == TokenKind::Word
               ? std::string_view(sentence.tokens[at].plain)
               : std::string_view();
}

// How hard strokes and full stops part two stretches of a line: "265k // out at 362k".
[[nodiscard]] double strokesBetween(const Sentence& sentence, std::size_t begin, std::size_t end);

// The unit of a figure, or nullptr.
[[nodiscard]] const UnitRow* unitOf(const Amount& amount);

// Whether the word at `at` is the name of a month.
[[nodiscard]] bool isMonth(const Sentence& sentence, std::size_t at);

// The year a bare figure may be, 1780 to 2060; else 0.
[[nodiscard]] int yearOf(const Sentence& sentence, const Amount& amount);

// Whether a word with that stem stands anywhere in it.
[[nodiscard]] bool says(const Sentence& sentence, std::string_view word);

// The words beside its figures; many where it names a thing or work.
[[nodiscard]] int wordsBesideFigures(const Sentence& sentence, const Spots& spots);

// Whether it tells figures and hardly anything else: "612 is the number", "275 and 40."
[[nodiscard]] bool tellsFigures(const Sentence& sentence, const Spots& spots);

// Whether it speaks of work: "clear thirty on it" is of the deal, "three bedrooms up" tells where.
[[nodiscard]] bool tellsWork(const Sentence& sentence, const Spots& spots);

// Whether a phrase of that fact's row in the table stands in it.
[[nodiscard]] bool speaksOf(const Spots& spots, std::string_view fact);

// Where the last word is spoken: "call it", "I'm going with", "we agree on", "put". The token after
// it; the end of the sentence where none stands.
[[nodiscard]] std::size_t afterLastWord(const Sentence& sentence);

// A count given in thousandths, as it is written: "3", "2.5".
[[nodiscard]] std::string countText(std::int64_t thousandths);

}  // namespace ledgerboard::intake
