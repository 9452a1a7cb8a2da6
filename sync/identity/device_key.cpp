#include "sync/identity/device_key.h"

#include <sodium.h>

#include "core/model/check.h"
#include "core/model/saying.h"
#include "sync/identity/private_file.h"

namespace ledgerboard::sync {

using model::Result;

namespace {

constexpr std::string_view kOpening = "ledgerboard device key 1\n";

std::string fileText(const DeviceKey::Seed& seed) {
    return std::string(kOpening) + hexOf(seed) + "\n";
}

}  // namespace

DeviceKey::DeviceKey(const Seed& seed) {
    model::require(sodium_init() >= 0, "libsodium is ready");
    crypto_sign_seed_keypair(public_.data(), secret_.data(), seed.data());
}

DeviceKey DeviceKey::fresh(const model::FillRandom& random) {
    Seed seed{};
    random(seed.data(), seed.size());
    DeviceKey key(seed);
    wipe(seed);
    return key;
}

Result<DeviceKey> DeviceKey::keptAt(const std::string& path, const model::FillRandom& random) {
    auto text = readPrivate(path);
    if (text.ok() && !text.value()) {
        Seed seed{};
        random(seed.data(), seed.size());
        std::string fresh = fileText(seed);
        wipe(seed);
        auto made = makePrivate(path, fresh);
        wipe(fresh);
        if (!made.ok()) {
            return made.error();
        }
        text = readPrivate(path);  // another program may have been first
    }
    if (!text.ok()) {
        return text.error();
    }
    std::string held = text.value().value_or("");
    Seed seed{};
    const bool good = held.size() == kOpening.size() + 65 && held.rfind(kOpening, 0) == 0 &&
                      readHex(std::string_view(held).substr(kOpening.size(), 64), seed);
    wipe(held);
    if (!good) {
        return model::damaged(model::saying(
            "%1 is not the key of a device: put it back from a backup, or remove it and join anew",
            path));
    }
    DeviceKey key(seed);
    wipe(seed);
    return key;
}

Signature DeviceKey::sign(std::string_view bytes) const {
    Signature out{};
    crypto_sign_detached(out.data(), nullptr, reinterpret_cast<const unsigned char*>(bytes.data()),
                         bytes.size(), secret_.data());
    return out;
}

bool isSignedBy(const PublicKey& key, std::string_view bytes, const Signature& signature) {
    model::require(sodium_init() >= 0, "libsodium is ready");
    return crypto_sign_verify_detached(signature.data(),
                                       reinterpret_cast<const unsigned char*>(bytes.data()),
                                       bytes.size(), key.data()) == 0;
}

}  // namespace ledgerboard::sync
