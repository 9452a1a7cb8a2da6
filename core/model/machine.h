// What time is it on this machine, and where does chance come from? For the main of a program
// alone: everything else is given both, so that tests can be.
#pragma once

#include <cstddef>
#include <cstdint>

#include "core/model/date.h"

namespace ledgerboard::model {

[[nodiscard]] Instant clockNow();

// Chance fit for keys and ids, from getrandom(2). Waits until there is enough.
void fillRandom(std::uint8_t* bytes, std::size_t count);

}  // namespace ledgerboard::model
