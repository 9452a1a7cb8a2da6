// How does a written word become the number that the tables know it by?
//
// Every word is brought to lower case, spelled out where it is short for something ("won't" is
// "will not", "ctop" is "countertop"), and cut to its stem, so that "replacing", "replaced" and
// "replace" are one. Words that no table holds share the id kUnknown.
//
// Source: stems are those of the Snowball English stemmer; exceptions stand in words.tsv.
// Threads: a Lexicon may be read by several threads once the tables are loaded; a Speller belongs
// to one reading.
#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/intake/notes/abbreviations.h"

struct sb_stemmer;

namespace ledgerboard::intake {

using WordId = std::uint32_t;
inline constexpr WordId kUnknown = 0;

// The words of the tables.
class Lexicon {
  public:
    // The id of a stem; makes one when it is new. Only while tables are loaded.
    WordId learn(const std::string& stem);
    // kUnknown when no table holds it.
    [[nodiscard]] WordId find(std::string_view stem) const;

    // Ids are 1 to this.
    [[nodiscard]] std::size_t size() const { return stems_.size(); }

    // The stem of an id that learn() gave.
    [[nodiscard]] const std::string& stem(WordId word) const { return *stems_[word - 1]; }

    void addRespelling(std::string word, std::string meaning);

    // What shorthand may be short for.
    [[nodiscard]] Abbreviations& abbreviations() { return abbreviations_; }

    [[nodiscard]] const Abbreviations& abbreviations() const { return abbreviations_; }

    // What `word` is short for, or nullptr.
    [[nodiscard]] const std::string* respelling(const std::string& word) const;

  private:
    // Looks up a slice without making a string of it.
    struct Hash {
        using is_transparent = void;

        std::size_t operator()(std::string_view word) const {
            return std::hash<std::string_view>()(word);
        }
    };

    std::unordered_map<std::string, WordId, Hash, std::equal_to<>> ids_;
    std::vector<const std::string*> stems_;  // by id, less 1: the keys of ids_
    std::unordered_map<std::string, std::string> respellings_;
    Abbreviations abbreviations_;
};

// Turns written words into ids, remembering those it has met.
class Speller {
  public:
    explicit Speller(const Lexicon& lexicon);
    ~Speller();
    Speller(const Speller&) = delete;
    Speller& operator=(const Speller&) = delete;

    // Whether words that no table holds are read as shorthand for words of the tables.
    void setTerse(bool terse) { terse_ = terse; }

    // The ids that `plain`, a plainWord(), stands for, one or more; valid until the next call.
    const std::vector<WordId>& idsOf(const std::string& plain);
    // The stems that `word` stands for, for loading tables.
    [[nodiscard]] std::vector<std::string> stemsOf(std::string_view word);

  private:
    [[nodiscard]] std::string stemOf(const std::string& word);

    const Lexicon& lexicon_;
    sb_stemmer* stemmer_;
    std::unordered_map<std::string, std::vector<WordId>> met_;
    bool terse_ = false;
};

// Lower case of ASCII letters; curly apostrophes made straight; at most 48 bytes are looked at.
[[nodiscard]] std::string plainWord(std::string_view word);

}  // namespace ledgerboard::intake
