// What the stages that make spots ready for linking ask of a sentence.
#pragma once

#include <algorithm>
#include <string_view>
#include <vector>

#include "core/intake/notes/links.h"

namespace ledgerboard::intake {

// A sentence with its spots. Threads: one sentence, one thread.
class SpottedWords {
  public:
    SpottedWords(const Sentence& sentence, Spots& spots) : sentence_(sentence), spots_(spots) {}

  protected:
    [[nodiscard]] const ActRow& row(const ActSpot& act) const { return tables().acts[act.row]; }

    [[nodiscard]] bool word(std::size_t at, std::string_view stem) const {
        return at < sentence_.tokens.size() && tables().is(sentence_.tokens[at].word, stem);
    }

    [[nodiscard]] bool cueEnds(Cue cue, std::size_t at) const {
        return std::any_of(spots_.cues.begin(), spots_.cues.end(), [&](const CueSpot& spot) {
            return spot.cue == cue && spot.span.end == at && !withinAct(spot.span);
        });
    }

    // "paint over the valve": the preposition belongs to the treatment.
    [[nodiscard]] bool withinAct(const Span& span) const {
        return std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& act) {
            // "cracks all along the wall": the place of the fault, not what is at fault.
            const bool along = row(act).side == Side::Before && word(span.begin, "along");
            return act.span.begin < span.begin && span.begin < act.span.end && !along;
        });
    }

    [[nodiscard]] bool cueIsMark(std::size_t at, std::string_view marks) const {
        return sentence_.tokens[at].kind == TokenKind::Mark &&
               marks.find(sentence_.tokens[at].mark) != std::string_view::npos;
    }

    const Sentence& sentence_;
    Spots& spots_;
};

}  // namespace ledgerboard::intake
