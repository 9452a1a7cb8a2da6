// How does a device prove that it is itself? By an Ed25519 key that never leaves it.
//
// Source: RFC 8032, by libsodium. The key file stands beside the book (<book>.key), mode 0600: one
// line that says what it is, one with the 32 bytes of the seed in hex.
#pragma once

#include <string>

#include "core/model/id.h"
#include "core/model/result.h"
#include "sync/identity/bytes.h"

namespace ledgerboard::sync {

class DeviceKey {
  public:
    using Seed = Bytes<32>;

    explicit DeviceKey(const Seed& seed);

    // A fresh key, not kept anywhere.
    [[nodiscard]] static DeviceKey fresh(const model::FillRandom& random);

    // The key in the file at `path`, made there once where there is none.
    // Errors: the file can be read by others (CannotBeMet), holds something else, or the disk.
    [[nodiscard]] static model::Result<DeviceKey> keptAt(const std::string& path,
                                                         const model::FillRandom& random);

    DeviceKey(const DeviceKey&) = default;
    DeviceKey& operator=(const DeviceKey&) = default;

    ~DeviceKey() { wipe(secret_); }

    [[nodiscard]] const PublicKey& publicKey() const { return public_; }

    [[nodiscard]] Signature sign(std::string_view bytes) const;

  private:
    Bytes<64> secret_{};
    PublicKey public_{};
};

// Whether the holder of `key` signed `bytes`. Keys of small order verify nothing.
[[nodiscard]] bool isSignedBy(const PublicKey& key, std::string_view bytes,
                              const Signature& signature);

}  // namespace ledgerboard::sync
