// How many and how large is what the exchange says? Beside limits.h, which bounds every call.
//
// Source: project decision (docs/sync.md). Units in the names.
#pragma once

#include <cstddef>
#include <cstdint>

#include "sync/wire/limits.h"

namespace ledgerboard::sync {

inline constexpr int kExchangeVersion = 1;

inline constexpr std::size_t kMostEntries = kMostEntriesUp;  // in one message, up or down
inline constexpr std::size_t kMostDrops = 5'000;
// What a sender fills a message with at most, by its own rough count.
inline constexpr std::size_t kFillBytes = kMostBodyBytes * 3 / 4;
inline constexpr int kMostDepth = 6;
inline constexpr std::size_t kMostReplaces = 64;  // entries named by one entry
inline constexpr std::size_t kMostCursorBytes = 96;

inline constexpr std::int64_t kMostAheadMs = 300'000;  // an entry's clock beyond the peer's
// A device that only ever sends what it may not write is refused beyond this many.
inline constexpr std::size_t kMostAsidesPerDevice = 10'000;

// Values that were written over longer ago may go from the log.
inline constexpr std::int64_t kKeptMs = std::int64_t{365} * 24 * 3600 * 1000;
// A device that was not heard for longer does not hold that up.
inline constexpr std::int64_t kSilentMs = std::int64_t{90} * 24 * 3600 * 1000;
inline constexpr std::int64_t kCompactEveryMs = std::int64_t{24} * 3600 * 1000;

inline constexpr std::size_t kMostPhotoBytes = 64 * kMiB;
inline constexpr std::size_t kMostDigests = 1'000;

}  // namespace ledgerboard::sync
