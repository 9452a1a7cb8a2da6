// Which short codes does the writer of these notes explain, and what treatment does each mean?
//
// "code: K stays / N old out new in / X out" or "R/R = tear out + new. NIC = leave alone": what
// such a line explains holds for the whole of the notes, as written, capitals and all.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/intake/notes/lines.h"
#include "core/intake/notes/tokens.h"

namespace ledgerboard::intake {

class Legend {
  public:
    // Takes in the lines that explain codes; a line is one where it says so ("code", "key") or has
    // two and more codes with a "=" behind. Codes whose meaning no table knows are left out.
    Legend(const std::vector<NoteLine>& lines, Speller& speller);

    // Whether the line only explains codes, and says nothing of the house.
    [[nodiscard]] bool explains(int line) const;

    // Turns the codes among the tokens from `begin` on into the words that they stand for.
    void apply(std::vector<Token>& tokens, std::size_t begin) const;

  private:
    struct Code {
        std::string written;
        std::vector<WordId> words;
    };

    void takeUsual(const std::vector<NoteLine>& lines);
    [[nodiscard]] static std::vector<Code> codesIn(std::string_view text, Speller& speller);

    std::vector<Code> codes_;
    std::vector<int> lines_;
};

}  // namespace ledgerboard::intake
