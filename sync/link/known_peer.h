// Which peer does a book meet, and as whom? Kept beside the book, for its user's eyes alone.
//
// <book>.peer: one JSON object. <book>.key: the device's key (identity/device_key.h). Both have
// mode 0600. What is copied as a backup is the book; these stay with the device.
#pragma once

#include <optional>
#include <string>

#include "core/model/words.h"
#include "sync/identity/bytes.h"
#include "sync/identity/invitation.h"

namespace ledgerboard::sync {

struct KnownPeer {
    Place place;
    Digest certificate{};
    model::RawId device;  // as the peer knows it: the first identity this device ever had there
    model::Role role = model::Role::Unset;
    bool joined = false;  // false while an answer to joining is still owed
};

[[nodiscard]] std::string peerFileOf(const std::string& bookPath);
[[nodiscard]] std::string keyFileOf(const std::string& bookPath);

// Nothing where the book meets no peer. Errors: (CannotBeMet) others may read the file; (Damaged)
// it does not read.
[[nodiscard]] model::Result<std::optional<KnownPeer>> knownPeerOf(const std::string& bookPath);

// Errors (Damaged): the disk.
[[nodiscard]] model::Result<void> keepKnownPeer(const std::string& bookPath, const KnownPeer& peer);

}  // namespace ledgerboard::sync
