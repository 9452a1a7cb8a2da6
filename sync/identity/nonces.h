// Has this very request come before? Nonces remembered for as long as their request could be sent
// again, and no more of them than fit.
//
// Units: instants are the peer's clock. Threads: any number.
#pragma once

#include <array>
#include <map>
#include <mutex>
#include <unordered_map>
#include <unordered_set>

#include "core/model/date.h"
#include "core/model/id.h"
#include "sync/identity/bytes.h"
#include "sync/identity/refusal.h"
#include "sync/wire/limits.h"

namespace ledgerboard::sync {

// Where nonces live: in memory for one peer, in the store where several peers serve one book.
class NonceMemory {
  public:
    NonceMemory() = default;
    NonceMemory(const NonceMemory&) = delete;
    NonceMemory& operator=(const NonceMemory&) = delete;
    virtual ~NonceMemory() = default;

    // Remembers the nonce of a request whose signature holds. None: it is new. Replayed: it came
    // before. Expired: it could have come before this memory began. Crowded: there is no room to
    // remember it, so it must not be answered. Unready: it cannot be remembered now.
    // Requires: `signedAt` is within kSignatureWindowMs of `now`.
    [[nodiscard]] virtual Refusal take(const model::RawId& device, const Nonce& nonce,
                                       model::Instant signedAt, model::Instant now) = 0;
};

class RecentNonces final : public NonceMemory {
  public:
    // `begin` is when the peer was started: what was signed up to then may have been answered by
    // the peer before it, so it is refused as Expired; the device signs again and goes on.
    explicit RecentNonces(model::Instant begin, std::size_t most = kMostNonces,
                          std::size_t mostPerDevice = kMostNoncesPerDevice)
        : begin_(begin), most_(most), mostPerDevice_(mostPerDevice) {}

    [[nodiscard]] Refusal take(const model::RawId& device, const Nonce& nonce,
                               model::Instant signedAt, model::Instant now) override;

    [[nodiscard]] std::size_t size() const;

  private:
    using Key = std::array<std::uint8_t, 32>;  // device, then nonce

    struct KeyHash {
        std::size_t operator()(const Key& key) const noexcept;
    };

    void forget(std::int64_t nowMs);

    const model::Instant begin_;
    const std::size_t most_;
    const std::size_t mostPerDevice_;
    mutable std::mutex mutex_;
    std::unordered_set<Key, KeyHash> taken_;
    std::multimap<std::int64_t, Key> untilMs_;  // when each can be forgotten
    std::unordered_map<model::RawId, std::size_t, model::RawIdHash> perDevice_;
};

}  // namespace ledgerboard::sync
