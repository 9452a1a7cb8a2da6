// What is an object of a sentence, what only says where it is, and what is a treatment at all?
#pragma once

#include "core/intake/notes/links.h"

namespace ledgerboard::intake {

// Makes the spots of a sentence ready for linking: compounds joined ("vanity light"), general
// objects made particular ("the floor is oak"), landmarks and materials told apart, treatments
// marked as passive or negated, and what only looks like a treatment dropped.
void prepareSpots(const Sentence& sentence, Spots& spots, const Context& context);

}  // namespace ledgerboard::intake
