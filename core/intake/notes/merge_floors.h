// What becomes of the floors of one space, one upon another?
#pragma once

#include <vector>

#include "core/intake/notes/found.h"

namespace ledgerboard::intake {

// "Carpet comes up, we sand the boards": a covering that is taken out where the floor under it is
// worked on or kept is gone for good. In: what was found, settled thing by thing.
void settleFloors(std::vector<Found>& found);

// "This toilet down here goes": what no cellar or yard needs, and a deck that comes down, is taken
// out for good.
void settleTakenOut(std::vector<Found>& found);

}  // namespace ledgerboard::intake
