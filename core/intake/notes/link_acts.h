// What is a treatment at all, which is passive, which negated, and which only told of?
#pragma once

#include "core/intake/notes/links.h"

namespace ledgerboard::intake {

// Drops words like "off" and "in" where they close no clause right after an object.
void dropEdgeActs(const Sentence& sentence, Spots& spots);

// Marks treatments as passive or negated; drops what is told, wished for on a condition, or only
// says what a thing is like. Requires: the objects are ready.
void prepareActs(const Sentence& sentence, Spots& spots);

}  // namespace ledgerboard::intake
