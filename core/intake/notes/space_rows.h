// Several rooms of one sort that are named in one breath: "front and back bedrooms", "the front
// bedroom and the middle one".
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "core/intake/notes/spots.h"

namespace ledgerboard::intake {

// The rooms that share the name of their sort, from the words at `at` on; empty where there are
// none.
[[nodiscard]] std::vector<SpaceSpot> roomsInRow(std::span<const Token> tokens, std::size_t at);

// "… and the middle one" at `at`: another of the sort of the room that was named right before.
[[nodiscard]] std::vector<SpaceSpot> otherOfSort(std::span<const Token> tokens, std::size_t at,
                                                 const SpaceSpot& before);

}  // namespace ledgerboard::intake
