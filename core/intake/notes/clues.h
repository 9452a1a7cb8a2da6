// What in the words around a thing tells what is to be done with it?
//
// The rules read phrases that the tables hold. A clue is weaker and broader: a word or two that
// stand in a certain place near the thing, whether any table knows them or not. None decides; each
// has a weight in core/intake/tables/leanings.tsv. core/intake/tables/README.md lists the kinds.
#pragma once

#include <array>
#include <concepts>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/intake/notes/clue_words.h"
#include "core/intake/notes/draft.h"
#include "core/intake/notes/senses.h"
#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"

namespace ledgerboard::intake {

// Clues are known by a number made of their words; the words themselves are kept on request.
class Clues {
  public:
    Clues() = default;

    explicit Clues(bool named) : named_(named) { keys_.reserve(kUsual); }

    // The words of the parts, one after the other, make the clue.
    void add(std::span<const ClueWords* const> parts) {
        std::uint64_t key = 0;
        for (const ClueWords* part : parts) {
            key = part->after(key);
        }
        keys_.push_back(key);
        if (named_) {
            nameLast(parts);
        }
    }

    template <std::convertible_to<const ClueWords*>... Parts>
    void add(Parts... parts) {
        std::uint64_t key = 0;
        ((key = parts->after(key)), ...);
        keys_.push_back(key);
        if (named_) {
            nameLast(std::array<const ClueWords*, sizeof...(parts)>{parts...});
        }
    }

    void add(std::string_view kind, std::string_view first = {}, std::string_view second = {},
             std::string_view third = {});

    // A clue that says something of a thing: with what it is said of it may tell more.
    void addSaid(const ClueWords& kind, const ClueWords& sense);

    // Each clue that was added as said, together with `what` it is said of: "thing sink && after
    // says rotten".
    void addSaidOf(const ClueWords& kind, const ClueWords& what);

    void clear();

    // Leaves each clue once, however often it was added.
    void settle();

    // In no particular order once settled.
    [[nodiscard]] const std::vector<std::uint64_t>& keys() const { return keys_; }

    // "after rusty", in the order in which they were first added; empty unless named.
    [[nodiscard]] const std::vector<std::string>& names() const { return names_; }

  private:
    static constexpr std::size_t kUsual = 64;

    void nameLast(std::span<const ClueWords* const> parts);

    bool named_ = false;
    std::vector<std::uint64_t> keys_;
    std::vector<std::string> names_;
    std::vector<std::size_t> said_;  // indexes of keys, until settled
};

// The number of a clue by its name, as leanings.tsv writes it: a clue, or two joined by " && ".
[[nodiscard]] std::uint64_t clueKey(std::string_view name);

// A thing where it is named.
struct Mention {
    std::uint32_t object = kNone;
    std::vector<std::string> places;
    DraftItem item;  // source and figures, as if it were an item
    Clues clues;
    bool aside = false;         // it only says where something is, or how
    bool placed = false;        // it can be nowhere else
    std::size_t begin = 0;      // its first token in the sentence
    std::size_t explained = 0;  // of the reading's explained sentences, where those are kept
};

// Collects the mentions of one reading, sentence by sentence.
class ClueReader {
  public:
    explicit ClueReader(Stems& stems) : stems_(stems) {}

    // Adds the clues of the sentence to `mentions`, which are its own in the order of their words.
    // `spots` are those that the tables know in it.
    void read(const Sentence& sentence, const Spots& spots, std::vector<Mention>& mentions,
              std::size_t first);

  private:
    struct Zone {
        std::size_t begin = 0;
        std::size_t end = 0;
    };

    void readWords(const Sentence& sentence);
    void addWords(const Zone& zone, Side side, Clues& clues) const;
    void addActs(const Spots& spots, const Zone& zone, const ClueWords& kind, Clues& clues) const;
    void addSenses(const Zone& zone, const ClueWords& kind, bool fromEnd, Clues& clues);
    void addSets(const ClueWords& kind, Clues& clues) const;
    void addForm(const Sentence& sentence, Clues& clues) const;
    void addNext(std::span<Mention> before, std::size_t end);
    void addMeant(const Zone& zone, const ClueWords& kind, Clues& clues) const;
    void addBefore(Clues& clues) const;
    [[nodiscard]] bool onlyJoins(std::size_t begin, std::size_t end) const;

    Stems& stems_;
    // Of the sentence.
    std::vector<const ClueWords*> words_;
    std::vector<SenseSpot> senses_;
    std::vector<SenseSpot> told_;         // those of the zone at hand
    std::vector<const ClueWords*> idle_;  // said in the sentence before, after its last thing
    std::size_t last_ = 0;                // first mention of the last sentence that had any
    int since_ = 0;                       // sentences without one after it
};

}  // namespace ledgerboard::intake
