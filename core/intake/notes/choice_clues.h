// What in a sentence, and in those before and after it, tells that a choice is left open there?
//
// The rules (choices.h) know some ways of leaving a choice open. People have many more, and most of
// the words that make a choice also stand where nothing is open: "paint it or it rots", "I might
// as well", "oak or pine? Pine." So each word and each sign of the rules has a weight, and what
// they add up to decides (openings.h). core/intake/tables/README.md lists the kinds of clues.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/intake/notes/choices.h"
#include "core/intake/notes/clues.h"
#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"

namespace ledgerboard::intake {

// The sentences around one, as far as there are any.
struct Around {
    const Sentence* before = nullptr;
    const Sentence* next = nullptr;
    const Sentence* later = nullptr;  // the one after the next
};

// What the rules make of the sentence.
struct ChoiceSigns {
    bool opens = false;    // a choice
    bool dead = false;     // talk, or put aside
    bool section = false;  // it stands under "Undecided"
    bool pending = false;  // the sentence before said that something is open, and not what
    bool goesOn = false;   // there is a choice that it adds to
    bool matter = false;   // it names a thing
};

class ChoiceClues {
  public:
    explicit ChoiceClues(Stems& stems) : stems_(stems) {}

    // Whether the sentence has a word without which hardly anything is left open.
    [[nodiscard]] static bool mayOpen(const Sentence& sentence);

    // Each perhaps more than once; with their names, then each once, where `named`.
    [[nodiscard]] Clues read(const Sentence& sentence, const Spots& spots, const Openness& open,
                             const ChoiceSigns& signs, const Around& around, bool named);

  private:
    [[nodiscard]] const ClueWords& wordOf(const Token& token);
    void addOwnWords(const Sentence& sentence, const Spots& spots, Clues& clues);
    void addWords(const Sentence* sentence, const ClueWords& kind, Clues& clues);
    static void addSigns(const Sentence& sentence, const Spots& spots, const Openness& open,
                         const ChoiceSigns& signs, Clues& clues);

    Stems& stems_;
    std::vector<const ClueWords*> words_;  // of the sentence at hand
};

}  // namespace ledgerboard::intake
