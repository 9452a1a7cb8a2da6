// Which treatment is meant for which object of a sentence?
//
// Each object goes to the treatment that is nearest on the side where the treatment's phrase takes
// its objects ("replace the sink and the faucet", "the sink and the faucet are shot"). A treatment
// without an object of its own speaks of what was named last ("rip it out").
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"

namespace ledgerboard::intake {

// A treatment said of an object.
struct Said {
    std::uint32_t object = kNone;
    std::uint32_t act = kNone;  // index into spots.acts
    std::size_t at = 0;         // token of the object, or of the treatment where none is named
    bool fromBefore = false;    // the object was named in an earlier sentence
    bool assumed = false;       // no object was named at all: the phrase implies one
    std::size_t spot = kNone;   // index into spots.objects, kNone if not in this sentence
};

// What earlier sentences leave behind.
struct Context {
    std::vector<std::uint32_t> before;    // the objects an "it" may mean
    bool loose = false;                   // nothing has been said yet of what to do with them
    WordId placeWord = kUnknown;          // the last word of the space's name: "porch"
    std::vector<std::uint32_t> absent;    // of those before, what is said to be missing
    std::vector<std::string_view> words;  // of the sentence before, those that no table knows
    std::uint32_t lastAct = kNone;        // row of the treatment said last
    std::vector<std::string> heads;       // how what "it" may mean was last named: "tank"
    std::vector<WordId> lately;           // of the two sentences before, those that kinds ask for
};

struct Linked {
    std::vector<Said> said;
    std::vector<std::size_t> loose;  // indexes of objects without a treatment
};

// Links the part of the sentence from token `from`. Marks objects that only say where something is
// as landmarks.
[[nodiscard]] Linked linkSentence(const Sentence& sentence, Spots& spots, std::size_t from,
                                  const Context& context);

// How hard the tokens from `begin` to `end` part what stands before from what stands after; 8 and
// more is another clause. What is `enough` already is added to no further.
[[nodiscard]] double partedBy(const Sentence& sentence, const Spots& spots, std::size_t begin,
                              std::size_t end, double enough = 1'000'000);

}  // namespace ledgerboard::intake
