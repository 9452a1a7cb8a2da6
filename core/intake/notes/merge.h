// What do several things said of one come to: the rooms of a group, the figures of an item?
#pragma once

#include <string>
#include <vector>

#include "core/intake/notes/draft.h"
#include "core/intake/notes/walk.h"

namespace ledgerboard::intake {

// "bedrooms*3" as its rooms; any other place as itself.
[[nodiscard]] std::vector<std::string> placesOf(const std::string& place, const Walk& walk);

// Takes over the quantity, cost and times that `into` lacks.
void fillFigures(DraftItem& into, const DraftItem& from);

}  // namespace ledgerboard::intake
