// Which treatments of a sentence are only told of: done by others, or said of who is to come?
#pragma once

#include "core/intake/notes/links.h"

namespace ledgerboard::intake {

// "They've bricked up the fireplace", "Dell painted the walls": drops what others did, or takes it
// as kept where it is said when or how well. "The carpet's new" is kept. "I want the chimney man to
// come": no order of a new one. "No need for a fan": nothing. Requires: the objects are ready.
void dropToldActs(const Sentence& sentence, Spots& spots);

}  // namespace ledgerboard::intake
