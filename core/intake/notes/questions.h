// What does a question ask for, and does the next sentence say yes to it?
#pragma once

#include <cstdint>

#include "core/intake/notes/sentences.h"

namespace ledgerboard::intake {

enum class Asks : std::uint8_t {
    Nothing,  // no question
    Leave,    // "Can we knock out this soffit?", "You want the paint off?": work is proposed
    Fact,     // "How many spindles are gone?", "Is that a crack?": no work is ordered
    Other,    // "Floor?"
};

[[nodiscard]] Asks asksFor(const Sentence& sentence);

// "Yes please.", "Do it.", "All the way up.": whether the sentence begins with assent.
[[nodiscard]] bool agrees(const Sentence& sentence);

// Whether a short sentence answers "tub or shower?", asked in the one before, by naming one of the
// two.
[[nodiscard]] bool answers(const Sentence& sentence, const Sentence& question);

}  // namespace ledgerboard::intake
