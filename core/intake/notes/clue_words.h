// What number has a word that clues are made of?
//
// A clue (clues.h) is known by a number made of those of its words, so that neither finding one nor
// looking up what it weighs needs its name.
// Threads: a Stems belongs to one reading; all else may be called by several threads.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/intake/notes/tables.h"
#include "core/intake/notes/tokens.h"
#include "core/intake/notes/words.h"
#include "core/model/words.h"

namespace ledgerboard::intake {

// Words of clues, parted by blanks, with their number: "wood floor". It keeps no copy of the words.
class ClueWords {
  public:
    ClueWords() = default;

    explicit ClueWords(std::string_view words);

    [[nodiscard]] std::string_view text() const { return text_; }

    // The number of the words by themselves.
    [[nodiscard]] std::uint64_t key() const { return key_; }

    // The number of the words behind those that have the number `key`.
    [[nodiscard]] std::uint64_t after(std::uint64_t key) const { return key * step_ + key_; }

  private:
    std::string_view text_;
    std::uint64_t key_ = 0;
    std::uint64_t step_ = 1;
};

// The number of two clues that are one together.
[[nodiscard]] std::uint64_t keyOfBoth(std::uint64_t one, std::uint64_t other);

// What the tables know of a thing.
struct ThingWords {
    explicit ThingWords(const ObjectRow& object);

    ClueWords name;
    ClueWords head;  // the last word of its name
    ClueWords family;
    ClueWords trade;
    ClueWords home;  // to what it belongs, and whether it stands indoors: "room in"
};

// By row of the object table.
[[nodiscard]] const ThingWords& thingWords(std::uint32_t object);
[[nodiscard]] const ClueWords& cueWords(Cue cue);
[[nodiscard]] const ClueWords& treatmentWords(model::Treatment treatment);
// Of a small figure; all large ones have the same.
[[nodiscard]] const ClueWords& figureWords(std::size_t figure);

// The words of the notes as clues have them, each worked out once.
class Stems {
  public:
    explicit Stems(const Lexicon& lexicon);

    // The stem of a word, "#" for a figure, the mark of a mark; as long as this is.
    [[nodiscard]] const ClueWords& of(const Token& token);

  private:
    struct Stem {
        std::string text;
        ClueWords words;
    };

    const std::vector<ClueWords>& known_;  // by word, less 1
    Speller speller_;
    std::unordered_map<std::string, Stem> unknown_;  // of words that no table holds
};

}  // namespace ledgerboard::intake
