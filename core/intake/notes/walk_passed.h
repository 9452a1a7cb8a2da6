// Is a space only named on the way to saying something else, so that nobody is in it?
#pragma once

#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"

namespace ledgerboard::intake {

// "It's carrying half of the second floor", "cracked from the hatch over to the bathroom", "two
// birches leaning at the bedroom", "a hatch through to the kitchen". `index` is of spots.spaces.
[[nodiscard]] bool isOnlyNamed(const Sentence& sentence, const Spots& spots, std::size_t index);

// "Off the kitchen there.", "it's off the living room": whether the sentence begins with where the
// room it speaks of lies, seen from the space named at token `at`.
[[nodiscard]] bool saysWhereItIs(const Sentence& sentence, std::size_t at);

// Whether a part of the grounds holds the thing that names this space: "The decking's gone soft,
// take it up", "Shed's a good one, leave it", said in the garden.
[[nodiscard]] bool isThingOfGrounds(const Sentence& sentence, const Spots& spots,
                                    const SpaceSpot& spot);

}  // namespace ledgerboard::intake
