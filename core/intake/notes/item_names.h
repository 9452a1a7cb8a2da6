// What is a thing called in the trade, once it is known what is done to it?
#pragma once

#include "core/intake/notes/found.h"
#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"

namespace ledgerboard::intake {

// The floor that is sanded is wood, a lamp that is rewired is mended, what every house has is not
// taken out for good. In and out: `found`, of which `row` was said.
void nameRight(const ActRow& row, Found& found);

// "A few shingles", "two sections of fence": whether the thing at `span` is but a part of one.
[[nodiscard]] bool isPartOf(const Sentence& sentence, const Spots& spots, const Span& span);

}  // namespace ledgerboard::intake
