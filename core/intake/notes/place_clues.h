// Which of the places that were spoken of near by is a thing in?
//
// The rules put each thing that is named somewhere (reader_places.cpp); where the speaker
// turns without a word that they know, everything said there goes astray. So each mention keeps the
// places it may be of: where the rules put it, where the speaker stands, stood before and was last,
// what was named shortly before and after it, the whole house and the outside. Each has clues: how
// it came to be one, what stands around its name, what things are usually in such a place. Each
// clue that core/intake/tables/places.tsv holds has a weight; the mention is of the place whose
// weights add up to most.
//
// Source: conditional logistic regression (one choice among the places of a mention) on the
// labelled talk in tests/notes, by tests/notes/weigh_places.cpp, which tells how it is done.
#pragma once

#include <set>
#include <string>
#include <vector>

#include "core/intake/notes/clues.h"
#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"
#include "core/intake/notes/walk.h"

namespace ledgerboard::intake {

// A place that a mention may be of.
struct MaybePlace {
    KnownSpace space;
    std::vector<const ClueWords*> roles;  // how it came to be one, what tells most first
    Clues clues;                          // kept where they are named
    int weight = 0;                       // of all its clues, thousandths
};

// Where a mention may be; the first is where the rules put it.
struct Whereabouts {
    std::size_t mention = 0;  // index
    std::size_t sentence = 0;
    std::vector<MaybePlace> places;
};

// Collects the whereabouts of one reading, sentence by sentence.
class PlaceClues {
  public:
    explicit PlaceClues(bool named) : named_(named) {}

    // The sentence, after the walk has taken it in. `stood`: where the speaker was before it.
    void begin(const Sentence& sentence, const Spots& spots, const Placed& placed,
               const std::vector<std::string>& stood, const Walk& walk, std::size_t number);

    // A mention in that sentence among the objects `heard` in it. One in several places, or in a
    // group of rooms, stays where it is.
    void add(std::size_t index, const Mention& mention, const std::vector<ObjectSpot>& heard,
             const Walk& walk);

    // After the mentions of the sentence: what it named may be meant in the next ones.
    void end();

    // Weighs what is known once all is read: how much else is in a place.
    void finish(const std::vector<Mention>& mentions);

    [[nodiscard]] const std::vector<Whereabouts>& all() const { return all_; }

  private:
    // A space where it was named.
    struct Named {
        std::size_t sentence = 0;
        KnownSpace space;
        std::string two;  // the words before and after it
        std::string one;
        std::string next;
        std::size_t begin = 0;
        bool last = false;  // it closes its sentence
    };

    // What a mention's thing is, in words.
    struct ThingWords;

    [[nodiscard]] std::string wordAt(std::size_t at) const;
    [[nodiscard]] Named namedAt(const SpaceSpot& spot) const;
    MaybePlace& place(Whereabouts& where, const KnownSpace& space, const ClueWords& role) const;
    void addNear(Whereabouts& where, const Mention& mention,
                 const std::vector<ObjectSpot>& heard) const;
    void addBefore(MaybePlace& maybe, const SpaceSpot& spot, const Mention& mention,
                   const std::vector<ObjectSpot>& heard, const ClueWords& role) const;
    void addAfter(MaybePlace& maybe, const SpaceSpot& spot, const Mention& mention,
                  const std::vector<ObjectSpot>& heard, const ClueWords& role) const;
    void addEarlier(Whereabouts& where) const;
    void weigh(MaybePlace& maybe) const;
    void addUsual(MaybePlace& maybe, const ThingWords& thing) const;

    bool named_ = false;
    std::vector<Whereabouts> all_;
    std::vector<Named> lately_;      // latest last
    std::vector<KnownSpace> trail_;  // where the speaker stood, latest first, each once
    std::set<std::string> walked_;   // where they ever stood
    // Of the sentence at hand.
    std::size_t number_ = 0;
    const Sentence* sentence_ = nullptr;
    const Spots* spots_ = nullptr;
    std::size_t from_ = 0;
    std::vector<KnownSpace> here_;
    std::vector<KnownSpace> stood_;
    const ClueWords* form_ = nullptr;
    const ClueWords* since_ = nullptr;
};

// How long ago the speaker moved, in sentences, as clues name it: from "now" to "long".
[[nodiscard]] const ClueWords& sinceMoveWords(int sentences);

// Of these whereabouts the place that weighs most, by index; of equals the first.
[[nodiscard]] std::size_t likeliestPlace(const Whereabouts& where);

// Rows of places.tsv that cannot be used, each with its line; a test keeps this empty.
[[nodiscard]] const std::vector<std::string>& placeFaults();

}  // namespace ledgerboard::intake
