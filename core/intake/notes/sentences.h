// Where does one sentence end and the next begin, also where the speaker never stops for breath?
#pragma once

#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/intake/notes/lines.h"
#include "core/intake/notes/tokens.h"

namespace ledgerboard::intake {

struct Sentence {
    std::vector<Token> tokens;  // the closing mark included; without what is taken back
    std::vector<Token> whole;   // as said, where something is taken back; else empty
    int line = 0;
    int indent = 0;
    bool opensLine = false;  // the first of its line
    bool alone = false;      // all there is in its line
    bool heading = false;    // marked as a heading
    bool bullet = false;
    bool ticked = false;          // of a list of boxes, and done
    bool roomless = false;        // of a list whose lines open with rooms, and without one
    bool spoken = false;          // a speaker's name stands before it
    bool terse = false;           // of notes in shorthand
    bool labelled = false;        // opens with a label, in capitals or shorthand, as other lines do
    bool opensParagraph = false;  // the first after a blank line, and no list or heading
    bool unlabelled = false;      // begins what stands after such lines without one
};

// Calls `use` with each sentence in order. A stretch without any full stop is parted where talk
// usually turns ("and then", "okay so"), and in any case before kMostTokens.
inline constexpr std::size_t kMostTokens = 120;
void eachSentence(std::string_view notes, Speller& speller,
                  const std::function<void(Sentence&)>& use);

// The tokens as they were written, without the line breaks, stamps and names between them; at most
// 400 bytes of it.
[[nodiscard]] std::string writtenAs(std::span<const Token> tokens);
[[nodiscard]] std::string sourceOf(const Sentence& sentence);

}  // namespace ledgerboard::intake
