// What does an arrow in a line of shorthand say: "carpet > plank", "hood dead > 420"?
//
// Before an arrow stands what is there and what is wrong with it, after it what is to be: another
// thing, a material, a count or a price, or what is done. What is wrong is then only the reason.
#pragma once

#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"

namespace ledgerboard::intake {

// An arrow between two things makes the second the new one; one between a thing and a material says
// that the thing is replaced. Adds treatments to `spots` in the order of the sentence.
void readArrows(const Sentence& sentence, Spots& spots);

// An arrow before a price or a count replaces the thing before it, or adds it where it is gone;
// what is wrong with it, said before an arrow and an order, is dropped. Requires: readArrows has
// been called and landmarks are marked.
void readPricedArrows(const Sentence& sentence, Spots& spots);

}  // namespace ledgerboard::intake
