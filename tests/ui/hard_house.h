// A house that is hard to show, for tests of the screens and their pictures: 60 spaces, names as
// long as people write them and names that are missing, 400 punch items in one space.
#pragma once

#include <string>

#include "tests/ui/alder_street.h"

namespace ledgerboard::ui {

inline constexpr int kHardSpaces = 60;
inline constexpr int kHardPunches = 400;

// The first space has the longest name, the second has none; all punch items are of the third.
[[nodiscard]] AlderStreet buildHardHouse(const std::string& path);

}  // namespace ledgerboard::ui
