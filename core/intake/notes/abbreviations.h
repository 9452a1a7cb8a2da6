// Which word of the tables does a short form in shorthand stand for?
//
// "vnty" is vanity, "chandl" chandelier, "regrt" regrout. Short forms keep the first letter and the
// order of letters; they drop vowels, doubled letters and the end. A word is taken only where it
// fits much better than any other.
// Source: project decision; the weights are from looking at short forms, not from a document.
// Threads: may be read by several threads once all names are added.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace ledgerboard::intake {

// Whether `shortened`, in small letters, is `name` with letters left out: "lnge" of "lounge".
[[nodiscard]] bool isShortFor(std::string_view shortened, std::string_view name);

class Abbreviations {
  public:
    // A whole word of a thing, a room or a treatment; a word added often is the likelier.
    void addName(std::string_view word);

    // The word that `shortened`, in small letters, stands for. Empty where none or several do.
    [[nodiscard]] std::string fullWord(std::string_view shortened) const;

  private:
    struct Name {
        std::string word;
        std::string bones;  // the letters without vowels behind the first and without doubled ones
        int times = 0;      // how often it stands in the tables
        std::uint32_t letters = 0;  // those it has, a bit each
    };

    // How well a short form, given with its own bones, fits a name, 0 to 100.
    [[nodiscard]] static int fitOf(std::string_view shortened, std::string_view bones,
                                   const Name& name);

    std::vector<std::vector<Name>> names_;  // by first letter
};

}  // namespace ledgerboard::intake
