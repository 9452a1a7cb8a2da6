// Which spaces does a sentence name?
#pragma once

#include <span>
#include <vector>

#include "core/intake/notes/spots.h"

namespace ledgerboard::intake {

// In order, not overlapping. A qualifier and a room make one space of their own ("front bedroom",
// "upstairs bath", "bedroom 2"); "bedrooms 1, 2 and 3" are three.
[[nodiscard]] std::vector<SpaceSpot> spacesIn(std::span<const Token> tokens);

}  // namespace ledgerboard::intake
