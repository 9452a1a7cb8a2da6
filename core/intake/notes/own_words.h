// What does this owner mean by words of their own?
//
// An owner's word is a phrase and what it means: an object, a space, a treatment, or no object at
// all. The reader takes such words as rows above its tables: where a phrase of the owner stands,
// the tables have no say, but for a longer name of theirs that holds it ("tap" is not meant in
// "basin tap handle"). An object may be one that the tables don't hold; at most kMostOwnThings of
// those are told apart in one reading, and phrases of further ones are read as without the words.
//
// Threads: one OwnWords belongs to one reading.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/intake/notes/own_word.h"
#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"
#include "core/intake/notes/words.h"

namespace ledgerboard::intake {

class OwnWords {
  public:
    explicit OwnWords(std::span<const OwnWord> words);

    // Puts what the owner means in place of what the tables found there. Returns the words that
    // stand in the tokens, by their place in the list; none twice.
    std::vector<std::size_t> apply(std::span<const Token> tokens, Spots& spots);

    [[nodiscard]] const std::vector<OwnWord>& all() const { return words_; }

    // The owner's name of an object, given by its name in the table.
    [[nodiscard]] std::string nameOf(const std::string& object) const;
    // Puts the owner's names of things that the tables don't hold into a text.
    void nameIn(std::string& text) const;

  private:
    struct Phrase {
        std::vector<std::string> stems;
        std::size_t word = 0;
    };

    const std::string& stemOf(std::string_view written);
    [[nodiscard]] const std::vector<Phrase>* phrasesAt(const Token& token);
    [[nodiscard]] std::size_t endOf(std::span<const Token> tokens, std::size_t begin,
                                    const Phrase& phrase);
    [[nodiscard]] bool put(const OwnWord& word, const Span& span, Spots& spots);
    [[nodiscard]] bool putObject(const OwnWord& word, const Span& span, Spots& spots);
    void putSpace(const OwnWord& word, const Span& span, Spots& spots);
    [[nodiscard]] static bool putTreatment(const OwnWord& word, const Span& span, Spots& spots);
    [[nodiscard]] std::uint32_t rowOf(const std::string& object);
    [[nodiscard]] std::uint32_t knownRow(const std::string& object);

    std::vector<OwnWord> words_;
    // By their first stem, the longest first.
    std::unordered_map<std::string, std::vector<Phrase>> phrases_;
    std::vector<std::string> things_;  // names that the tables don't hold, by their own row
    std::unordered_map<std::uint32_t, std::string> called_;  // the owner's name of a table's row
    Speller speller_;
    std::unordered_map<std::string, std::string> stems_;
};

}  // namespace ledgerboard::intake
