// Which treatment of a sentence goes with which thing, read clause by clause?
//
// A clause has a subject (things that stand before what is said of them) and predicates (what is
// said). A treatment that takes its objects after it ("replace the sink and the tap") opens a list;
// one that stands after its subject ("the sink and the tap are shot") closes one. What a comma or
// "and" brings after an open list belongs to the list, unless a treatment follows that needs it as
// its subject. A treatment with neither speaks of what was spoken of last: the topic.
#pragma once

#include <vector>

#include "core/intake/notes/links.h"

namespace ledgerboard::intake {

// A treatment said of a thing of the sentence.
struct Bond {
    std::size_t spot = 0;   // index into spots.objects
    std::uint32_t act = 0;  // index into spots.acts
    bool part = false;      // "needs a new latch": only a part of it that no table knows
    bool kept = false;      // "all go except the microwave"
    bool wanted = false;    // "worn to the glue, so sheet vinyl": no treatment is said at all
};

// A treatment that found no thing in the sentence.
struct Idle {
    std::uint32_t act = 0;
    bool pronoun = false;  // it is said of "it" or "those"
};

struct Bonds {
    std::vector<Bond> bonds;
    std::vector<Idle> idle;  // in the order of the sentence
};

// Reads the sentence from left to right, once. Requires: the spots are prepared.
[[nodiscard]] Bonds bondsOf(const Sentence& sentence, const Spots& spots, std::size_t from);

}  // namespace ledgerboard::intake
