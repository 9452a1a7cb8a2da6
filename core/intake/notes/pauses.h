// Where do the full stops and commas stand that talk written down by a phone leaves out?
//
// A phone that takes dictation writes what it hears, often without a mark. Between two words there
// is a full stop, a comma or nothing; the words around, and the phrases of the tables that begin
// and end there, tell which. None decides: each such clue has a weight in
// core/intake/tables/pauses.tsv, that there is a mark at all, and one in stops.tsv, that it is a
// full stop.
//
// Source: logistic regression on the talk in tests/notes that has its marks, with these taken out,
// by tests/notes/weigh_pauses.cpp, which tells how it is done and how to do it again.
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <vector>

#include "core/intake/notes/clues.h"
#include "core/intake/notes/tokens.h"

namespace ledgerboard::intake {

// Whether the token is a mark that such talk leaves out: a full stop, a comma, a dash …
[[nodiscard]] bool isPause(const Token& token);

// The clues of the place before each of the tokens, as if there were no pauses; none before the
// first word and before a pause. With their names where `named`.
[[nodiscard]] std::vector<Clues> pauseClues(std::span<const Token> tokens, Stems& stems,
                                            bool named);

// Puts full stops and commas where they are likely between the tokens from `from` on and none is
// yet. Those that are put there are slices of no length.
void restorePauses(std::vector<Token>& tokens, std::size_t from, Stems& stems);

// Rows of pauses.tsv and stops.tsv that cannot be used, each with its line; a test keeps this
// empty.
[[nodiscard]] std::vector<std::string> pauseFaults();

}  // namespace ledgerboard::intake
