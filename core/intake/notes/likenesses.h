// What looks like a thing or a treatment, and only says what another is like or who comes?
#pragma once

#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"

namespace ledgerboard::intake {

// Drops the things of "hvac guy to look" (a person), "smells of sewer" (a smell) and "it is
// concrete, leave it" (what it is made of), and the treatments of "oven built in, clean, stays" and
// "ceiling is smooth and clean, no work" (how it is). `hasTopic`: an "it" means something spoken of
// before.
void dropLikenesses(const Sentence& sentence, Spots& spots, bool hasTopic);

}  // namespace ledgerboard::intake
