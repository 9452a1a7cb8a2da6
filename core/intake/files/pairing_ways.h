// The two ways of pairing rows with records; pairRows (pairing.h) takes the one that fits the kind.
#pragma once

#include <vector>

#include "core/intake/files/pairing.h"

namespace ledgerboard::intake {

// For kinds with a key. As pairRows.
[[nodiscard]] model::Result<std::vector<Pairing>> pairByKey(const PairingInput& in,
                                                            Problems& problems);

// For facts. As pairRows.
[[nodiscard]] model::Result<std::vector<Pairing>> pairByContent(const PairingInput& in,
                                                                Problems& problems);

}  // namespace ledgerboard::intake
