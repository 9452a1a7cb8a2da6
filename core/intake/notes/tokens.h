// What are the words, figures and marks of a stretch of text?
//
// Units: value is in thousandths.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/intake/notes/words.h"

namespace ledgerboard::intake {

enum class TokenKind : std::uint8_t { Word, Number, Mark };

struct Token {
    TokenKind kind = TokenKind::Word;
    std::string_view text;   // a slice of the notes; the words of "don't" share theirs
    std::string plain = {};  // plainWord(text), which much is asked of
    WordId word = kUnknown;  // of a Word
    std::int64_t value = 0;  // of a Number; fractions like "1/2" and signs like a half included
    char mark = 0;           // of a Mark: one of . , ; : ! ? ( ) - > $ @ & + / # " ' % = * ~
    std::int32_t line = 0;
    bool capital = false;  // begins with a capital
    bool glued = false;    // no white space before it
};

// Appends the tokens of `text`, which stands in line `line`, to `tokens`.
// A currency sign becomes the Mark '$', whatever the currency.
void cutTokens(std::string_view text, std::int32_t line, Speller& speller, const Lexicon& lexicon,
               std::vector<Token>& tokens);

}  // namespace ledgerboard::intake
