// Which words of a sentence praise a thing, find fault with it, or speak of work on it?
//
// Broader than the treatments: senses.tsv holds single words and sayings by what they tell of a
// thing that they are said of. They decide nothing; they are clues (clues.h).
// Threads: sensesIn may be called by several threads.
#pragma once

#include <cstdint>
#include <initializer_list>
#include <span>
#include <string_view>
#include <vector>

#include "core/intake/notes/clue_words.h"

namespace ledgerboard::intake {

inline constexpr std::size_t kMostSenses = 32;

// "good", as senses.tsv writes it; "not-good" where it is denied.
[[nodiscard]] const ClueWords& senseWords(std::uint8_t sense, bool denied = false);

// By their names, in the same order.
[[nodiscard]] std::vector<std::uint8_t> sensesNamed(std::initializer_list<std::string_view> names);

struct SenseSpot {
    std::size_t begin = 0;  // tokens
    std::size_t end = 0;
    std::uint8_t sense = 0;
    bool denied = false;  // a "not" stands up to three words before it

    [[nodiscard]] const ClueWords& told() const { return senseWords(sense, denied); }
};

// In order; of two that begin at the same word and have the same sense, the longer. `stems` holds
// one for each token.
[[nodiscard]] std::vector<SenseSpot> sensesIn(std::span<const ClueWords* const> stems);

}  // namespace ledgerboard::intake
