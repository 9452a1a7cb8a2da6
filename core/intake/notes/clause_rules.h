// What do the words of a clause tell of a treatment and of the things near it?
#pragma once

#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"

namespace ledgerboard::intake {

// Questions about one sentence; treatments and things are asked for by their index in the spots.
// Threads: one sentence, one thread.
class ClauseRules {
  public:
    ClauseRules(const Sentence& sentence, const Spots& spots)
        : sentence_(sentence), spots_(spots) {}

    [[nodiscard]] const Sentence& sentence() const { return sentence_; }

    [[nodiscard]] const Spots& spots() const { return spots_; }

    [[nodiscard]] const ActRow& row(std::size_t act) const;
    // "nail pops across the ceiling": a word that leads on to the second thing.
    [[nodiscard]] bool reaches(std::size_t begin, std::size_t end) const;
    [[nodiscard]] std::size_t reachOf(std::size_t act) const;
    [[nodiscard]] bool fits(std::size_t act, std::size_t thing) const;
    // "the pan moves": what the thing does, not what is to be done.
    [[nodiscard]] bool isDoing(std::size_t act) const;
    // "the newel post gets a long bolt", "they need new cranks": what is wanted is no thing of its
    // own but a part.
    [[nodiscard]] bool wantsPart(std::size_t act) const;
    // "won't stay up: new balance", "new guts for it": a part that no table knows.
    [[nodiscard]] bool newPart(std::size_t act) const;
    // "new throughout": nothing follows that could be its object.
    [[nodiscard]] bool newAllRound(std::size_t act) const;
    // "the vanity has swollen doors and has to go": a part, and not what is spoken of.
    [[nodiscard]] bool isHad(std::size_t subject, std::size_t thing) const;
    // "we buy one", "sand that": its object is within the phrase.
    [[nodiscard]] bool holdsItsObject(std::size_t act) const;
    // "blr gas 1 pipe steam": whether the second only says what the first is like.
    [[nodiscard]] bool isLike(std::size_t first, std::size_t second) const;

  protected:
    const Sentence& sentence_;
    const Spots& spots_;
};

}  // namespace ledgerboard::intake
