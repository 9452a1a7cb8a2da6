// Which devices joined this peer? A small private file beside the book: id, key, what was granted,
// when it joined, when it was shut out.
//
// JSON, one object with a version and a list; written anew at each change, whole or not at all.
// Threads: any number.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <shared_mutex>
#include <string>

#include "core/model/date.h"
#include "core/model/result.h"
#include "sync/identity/refusal.h"
#include "sync/identity/roster.h"

namespace ledgerboard::sync {

inline constexpr std::size_t kMostDevices = 10'000;

class PairedDevices final : public Roster {
  public:
    // Nothing is written until a device joins. Errors: the file can be read by others
    // (CannotBeMet), is damaged or newer (Damaged).
    [[nodiscard]] static model::Result<std::unique_ptr<PairedDevices>> open(std::string path);

    [[nodiscard]] std::optional<KnownDevice> find(const model::RawId& device) const override;
    [[nodiscard]] std::size_t size() const;

    // On disk before it returns. The same device with the same key again is no change and keeps
    // what it has. DeviceTaken: the id is known with another key; Crowded: there is no room.
    // Errors (Damaged): the disk; nothing is changed then.
    [[nodiscard]] model::Result<Refusal> admit(const model::RawId& device, const PublicKey& key,
                                               const Grant& grant, model::Instant now);

    // Shut out from now on, for good. False where no such device is known or it was already.
    // Errors (Damaged): the disk; the device is shut out all the same until the peer is stopped.
    [[nodiscard]] model::Result<bool> revoke(const model::RawId& device, model::Instant now);

  private:
    struct Entry {
        KnownDevice known;
        model::Instant joined;
        model::Instant revoked;  // where known.revoked
    };

    explicit PairedDevices(std::string path) : path_(std::move(path)) {}

    [[nodiscard]] bool read(const std::string& text);
    [[nodiscard]] std::string text() const;

    const std::string path_;
    mutable std::shared_mutex mutex_;
    std::map<model::RawId, Entry> devices_;
};

}  // namespace ledgerboard::sync
