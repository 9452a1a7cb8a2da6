// Which phrases of the tables begin at a word?
//
// A trie over word ids: one walk finds every phrase of every table that begins at a place.
// Threads: read only once loaded.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "core/intake/notes/number_table.h"
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
    // Requires: words not empty.
    void add(std::span<const WordId> words, Meaning meaning);

    // The node after `word` from `node`; 0 is the root and also "none".
    [[nodiscard]] std::uint32_t step(std::uint32_t node, WordId word) const {
        if (node == 0) {
            return word < openings_.size() ? openings_[word].node : 0;
        }
        const std::uint32_t at = edges_.indexOf(edge(node, word));
        return at == NumberTable<std::uint32_t>::kNoRow ? 0 : edges_.row(at);
    }

    // Whether a phrase of that table begins with the word.
    [[nodiscard]] bool opens(WordId word, From from) const {
        return word < openings_.size() && (openings_[word].tables & bitOf(from)) != 0;
    }

    // What ends at `node`.
    [[nodiscard]] std::span<const Meaning> at(std::uint32_t node) const {
        const Node& held = nodes_[node];
        return held.count < 2 ? std::span(&held.one, held.count) : std::span(many_[held.many]);
    }

  private:
    [[nodiscard]] static std::uint16_t bitOf(From from) {
        return static_cast<std::uint16_t>(1U << static_cast<unsigned>(from));
    }

    // What begins with a word.
    struct Opening {
        std::uint32_t node = 0;
        std::uint16_t tables = 0;  // those that have a phrase with it first
    };

    // What ends at a node: mostly nothing or one thing.
    struct Node {
        std::uint32_t count = 0;
        Meaning one;             // where it is one
        std::uint32_t many = 0;  // where it is more, their index
    };

    [[nodiscard]] static std::uint64_t edge(std::uint32_t node, WordId word) {
        return (static_cast<std::uint64_t>(node) << 32) | word;
    }

    std::vector<Opening> openings_;  // by word
    NumberTable<std::uint32_t> edges_;
    std::vector<Node> nodes_ = std::vector<Node>(1);
    std::vector<std::vector<Meaning>> many_;
};

}  // namespace ledgerboard::intake
