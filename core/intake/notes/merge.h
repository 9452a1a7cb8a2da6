// Which rooms does a group of them stand for?
#pragma once

#include <string>
#include <vector>

#include "core/intake/notes/walk.h"

namespace ledgerboard::intake {

// "bedrooms*3" as its rooms; any other place as itself.
[[nodiscard]] std::vector<std::string> placesOf(const std::string& place, const Walk& walk);

}  // namespace ledgerboard::intake
