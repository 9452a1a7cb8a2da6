// Which devices joined, as the peer keeps it: in a file beside the book, or in the book's store
// where several peers serve it.
//
// Threads: any number.
#pragma once

#include "core/model/date.h"
#include "core/model/result.h"
#include "sync/identity/refusal.h"
#include "sync/identity/roster.h"

namespace ledgerboard::sync {

inline constexpr std::size_t kMostDevices = 10'000;

class DeviceList : public Roster {
  public:
    // How many ever joined. Errors: the list cannot be read now.
    [[nodiscard]] virtual model::Result<std::size_t> count() const = 0;

    // On disk before it returns. The same device with the same key again is no change and keeps
    // what it has. DeviceTaken: the id is known with another key; Revoked: it was shut out;
    // Crowded: there is no room. Errors: it cannot be written; nothing is changed then.
    [[nodiscard]] virtual model::Result<Refusal> admit(const model::RawId& device,
                                                       const PublicKey& key, const Grant& grant,
                                                       model::Instant now) = 0;

    // Shut out from now on, for good. False where no such device is known or it was already.
    // Errors: it cannot be written.
    [[nodiscard]] virtual model::Result<bool> revoke(const model::RawId& device,
                                                     model::Instant now) = 0;
};

}  // namespace ledgerboard::sync
