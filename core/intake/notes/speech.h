// How does a sentence run: what stands before a word, and is there breath between clauses?
#pragma once

#include <string_view>

#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"

namespace ledgerboard::intake {

// Whether the token is one of `marks`.
[[nodiscard]] bool isMark(const Token& token, std::string_view marks);

// Whether the token at `at` has that stem, which a table must hold. False beyond the end.
[[nodiscard]] inline bool wordIs(const Sentence& sentence, std::size_t at, std::string_view stem) {
    return at < sentence.tokens.size() && tables().is(sentence.tokens[at].word, stem);
}

// The end of a run of words that may stand between the start and a space: articles, "okay", marks.
[[nodiscard]] std::size_t skipSmall(const Sentence& sentence, const Spots& spots, std::size_t at);

// Whether a cue of this kind ends right before `at`, articles between them allowed.
[[nodiscard]] bool cueBefore(const Sentence& sentence, const Spots& spots, Cue cue, std::size_t at);

// Whether the tokens hold no small letter.
[[nodiscard]] bool isInCapitals(const Sentence& sentence, const Span& span);

// "This, the dining room, and the hall too": a list that begins with where one stands.
[[nodiscard]] bool listsThis(const Sentence& sentence);

// Speech written down without marks.
[[nodiscard]] bool isBreathless(const Sentence& sentence);

// "in the", "paint the": a word before the space, articles aside, that makes it a part of its
// clause.
[[nodiscard]] bool afterPreposition(const Sentence& sentence, const Spots& spots, std::size_t at);

// "and then in the kitchen we …": in speech without marks this is how a room is entered.
[[nodiscard]] bool stepsInto(const Sentence& sentence, std::size_t at);

}  // namespace ledgerboard::intake
