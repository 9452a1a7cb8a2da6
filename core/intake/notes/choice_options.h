// Between what is a choice that is left open, and what does each way cost and take?
//
// People read the names of options in a list, so each is cut to the phrase that names it: of "new
// cabinets, 18 feet, countertop I'm thinking butcher block or quartz" these are "butcher block"
// and "quartz".
#pragma once

#include <cstddef>
#include <vector>

#include "core/intake/notes/draft.h"
#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"

namespace ledgerboard::intake {

// The options that the sentence names from that token on.
[[nodiscard]] std::vector<DraftOption> optionsOf(const Sentence& sentence, const Spots& spots,
                                                 std::size_t from);

}  // namespace ledgerboard::intake
