// How long does a device wait before it tries again? Longer each time, never in step with others.
//
// Units: milliseconds. Source: project decision; doubling with chance added is common practice.
#pragma once

#include <cstdint>

namespace ledgerboard::sync {

struct RetryRules {
    int tries = 8;  // in all
    int firstMs = 250;
    int mostMs = 15'000;
};

// The wait after the `failed`-th failure (1, 2, ...), `chance` being any 32 random bits: between
// half of and the whole of firstMs doubled each time, at most mostMs; on top of what the peer asked
// for with Retry-After. Requires: failed >= 1.
[[nodiscard]] int waitBeforeRetryMs(const RetryRules& rules, int failed, int retryAfterSeconds,
                                    std::uint32_t chance);

}  // namespace ledgerboard::sync
