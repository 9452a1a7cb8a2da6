// How does the exchange travel over a link? One call of it is one signed request.
#pragma once

#include "sync/exchange/device_side.h"
#include "sync/link/link.h"

namespace ledgerboard::sync {

// Requires: `link` outlives what comes back. What the peer refuses before its exchange sees it
// (signature, limits, nobody there) is an error in words for a person; being shut out is an answer.
[[nodiscard]] Carry carryOver(Link& link);

}  // namespace ledgerboard::sync
