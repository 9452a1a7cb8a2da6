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

#include <cstdint>
#include <deque>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/intake/notes/clues.h"
#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"
#include "core/intake/notes/walk.h"

namespace ledgerboard::intake {

// A space that was spoken of, numbered once: its words as clues have them.
struct SpokenSpace {
    SpokenSpace(const std::string& name, std::size_t count);
    SpokenSpace(const SpokenSpace&) = delete;
    SpokenSpace& operator=(const SpokenSpace&) = delete;

    std::uint64_t number = 0;
    std::string keyName;
    std::string sortName;  // the last word of its name
    ClueWords key;
    ClueWords sort;
    ClueWords kind;
    bool walked = false;     // the speaker ever stood there
    std::size_t things = 0;  // mentions that the rules put there, once all is read
    std::deque<KnownSpace> names;
};

// A space by one of its names.
struct Spoken {
    SpokenSpace* space = nullptr;
    const KnownSpace* as = nullptr;
};

// A place that a mention may be of.
struct MaybePlace {
    Spoken at;
    const ClueWords* role = nullptr;  // how it came to be one, what tells most
    int weight = 0;                   // of all its clues, thousandths
    std::vector<std::string> names;   // of its clues, where they are kept
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
        Spoken at;
        std::size_t begin = 0;  // tokens
        std::size_t end = 0;
        bool last = false;  // it closes its sentence
        std::string text;   // the two words before it, and the one after it
        std::string nextText;
        ClueWords two;
        ClueWords one;
        ClueWords next;
    };

    // A place while its clues are collected.
    struct Candidate {
        Spoken at;
        std::vector<const ClueWords*> roles;  // how it came to be one, what tells most first
        Clues clues;
    };

    [[nodiscard]] Spoken spokenOf(const KnownSpace& known, std::size_t most);
    [[nodiscard]] std::vector<Spoken> spacesOf(const std::vector<std::string>& keys,
                                               const Walk& walk);
    [[nodiscard]] std::string_view wordAt(std::size_t at) const;
    void nameSpaces();
    Candidate& candidate(const Spoken& at, const ClueWords& role);
    void addNear(const Mention& mention, const std::vector<ObjectSpot>& heard);
    void addBefore(const Named& named, const Mention& mention, const std::vector<ObjectSpot>& heard,
                   const ClueWords& role);
    void addAfter(const Named& named, const Mention& mention, const std::vector<ObjectSpot>& heard,
                  const ClueWords& role);
    void addEarlier();
    void addUsual(Candidate& maybe, std::uint32_t object, const SpokenSpace& ruled);

    bool named_ = false;
    std::vector<Whereabouts> all_;
    std::unordered_map<std::string, SpokenSpace> spaces_;  // by key
    std::deque<Named> lately_;                             // latest last
    std::vector<Spoken> trail_;  // where the speaker stood, latest first, each once
    // Of the sentence at hand.
    std::size_t number_ = 0;
    const Sentence* sentence_ = nullptr;
    const Spots* spots_ = nullptr;
    std::size_t from_ = 0;
    std::vector<Spoken> here_;
    std::vector<Spoken> stood_;
    const ClueWords* form_ = nullptr;
    const ClueWords* since_ = nullptr;
    std::optional<std::size_t> own_;  // the first of lately_ that it named, once they are there
    // Of the mention at hand; those past `count_` wait to be used again.
    std::vector<Candidate> maybe_;
    std::size_t count_ = 0;
    std::vector<const ClueWords*> parts_;
};

// How long ago the speaker moved, in sentences, as clues name it: from "now" to "long".
[[nodiscard]] const ClueWords& sinceMoveWords(int sentences);

// Of these whereabouts the place that weighs most, by index; of equals the first.
[[nodiscard]] std::size_t likeliestPlace(const Whereabouts& where);

// Rows of places.tsv that cannot be used, each with its line; a test keeps this empty.
[[nodiscard]] const std::vector<std::string>& placeFaults();

}  // namespace ledgerboard::intake
