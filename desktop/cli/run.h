// How is a command line carried out?
#pragma once

#include <string>
#include <vector>

#include "desktop/cli/surroundings.h"

namespace ledgerboard::cli {

// Exit statuses: scripts rely on them.
inline constexpr int kDone = 0;
inline constexpr int kCannotBeMet = 1;  // the message says why, and what would
inline constexpr int kWrongUse = 2;
inline constexpr int kDamaged = 3;  // the book is damaged or cannot be written

// Carries out `arguments` (without the program's name) and returns the exit status. What is asked
// for goes to out, errors to err. A verb that fails leaves the book as it was.
[[nodiscard]] int run(const std::vector<std::string>& arguments, Surroundings& surroundings);

}  // namespace ledgerboard::cli
