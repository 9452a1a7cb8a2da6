// Which phrases of the tables begin at a word?
//
// A trie over word ids: one walk finds every phrase of every table that begins at a place.
// Threads: read only once loaded.
#pragma once

#include <cstdint>
#include <span>
#include <unordered_map>
#include <vector>

#include "core/intake/notes/likely.h"
#include "core/intake/notes/words.h"

namespace ledgerboard::intake {

// Which table a phrase is from.
enum class From : std::uint8_t { Object, Act, GapHead, Space, Qualifier, Cue, Unit, Fact, Caution };

// Flags of a Meaning.
inline constexpr std::uint8_t kHeadingOnly = 1;  // of a space: means it in a heading alone
inline constexpr std::uint8_t kMaterial = 2;     // of an object: a material, unless it stands alone

struct Meaning {
    From from = From::Object;
    std::uint8_t flag = 0;  // what it says depends on the table
    std::uint32_t row = 0;  // row of that table
};

class PhraseTrie {
  public:
    PhraseTrie();
    // Requires: words not empty.
    void add(std::span<const WordId> words, Meaning meaning);
    // The node after `word` from `node`; 0 is the root and also "none".
    [[nodiscard]] std::uint32_t step(std::uint32_t node, WordId word) const;

    // Whether a phrase of that table begins with the word.
    [[nodiscard]] bool opens(WordId word, From from) const {
        return word < openings_.size() && (openings_[word].tables & bitOf(from)) != 0;
    }

    // What ends at `node`.
    [[nodiscard]] std::span<const Meaning> at(std::uint32_t node) const;

  private:
    [[nodiscard]] static std::uint16_t bitOf(From from) {
        return static_cast<std::uint16_t>(1U << static_cast<unsigned>(from));
    }

    // What begins with a word.
    struct Opening {
        std::uint32_t node = 0;
        std::uint16_t tables = 0;  // those that have a phrase with it first
    };

    std::vector<Opening> openings_;  // by word
    Likely<18> likely_;              // most words follow no phrase
    std::unordered_map<std::uint64_t, std::uint32_t> edges_;
    std::vector<std::vector<Meaning>> meanings_;
};

}  // namespace ledgerboard::intake
