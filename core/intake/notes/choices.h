// Which choices does the speaker leave open?
//
// A sentence that says a choice is open ("not sure yet", "either … or", "we could", "if the numbers
// work") makes an alternate, and what it says of treatments is no item. Sentences that go on with
// the same choice ("Soapstone is fifty-four hundred.") add to it.
#pragma once

#include <cstddef>

#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"

namespace ledgerboard::intake {

// How open a sentence leaves what it says.
struct Openness {
    bool surely = false;     // an open choice, said so
    bool choice = false;     // "either … or", "X or Y?"
    bool asks = false;       // somebody is to be asked, a price or money to be seen first
    bool otherwise = false;  // "if not": what is done if the money or the price is not right
    bool condition = false;  // what such an "if not" goes on from
    bool thought = false;    // what may be done, or "or": what such an ask would be about
    bool hinted = false;     // "we could", "maybe": for the treatments after the hint
    std::size_t hintAt = 0;  // token
    int materials = 0;       // different materials named
    bool both = false;       // "or" stands in it
    bool priced = false;     // two ways with a price each

    [[nodiscard]] bool any() const { return surely || choice || hinted; }
};

[[nodiscard]] Openness opennessOf(const Sentence& sentence, const Spots& spots);

// A figure that is what something costs: "£380", "1,400", "nine hundred"; no year and no count.
[[nodiscard]] bool isPrice(const Amount& amount);

// Whether the token is an "or" between two ways.
[[nodiscard]] bool joinsWays(const Sentence& sentence, const Spots& spots, std::size_t at);

}  // namespace ledgerboard::intake
