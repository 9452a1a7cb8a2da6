#include "sync/identity/bytes.h"

#include <sodium.h>

#include "core/model/check.h"

namespace ledgerboard::sync {

namespace {

const unsigned char* bytesOf(std::string_view text) {
    return reinterpret_cast<const unsigned char*>(text.data());
}

int digitOf(char c) {
    if (c >= '0' && c <= '9') {
        return c - '0';
    }
    return c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
}

}  // namespace

std::string hexOf(std::span<const std::uint8_t> bytes) {
    constexpr std::string_view kDigits = "0123456789abcdef";
    std::string out;
    out.reserve(bytes.size() * 2);
    for (const std::uint8_t byte : bytes) {
        out += kDigits[byte >> 4];
        out += kDigits[byte & 15];
    }
    return out;
}

bool readHex(std::string_view hex, std::span<std::uint8_t> out) {
    if (hex.size() != out.size() * 2) {
        return false;
    }
    for (const char c : hex) {
        if (digitOf(c) < 0) {
            return false;
        }
    }
    for (std::size_t k = 0; k < out.size(); ++k) {
        out[k] = static_cast<std::uint8_t>(digitOf(hex[2 * k]) * 16 + digitOf(hex[2 * k + 1]));
    }
    return true;
}

Digest sha256(std::string_view bytes) {
    model::require(sodium_init() >= 0, "libsodium is ready");
    Digest out{};
    crypto_hash_sha256(out.data(), bytesOf(bytes), bytes.size());
    return out;
}

Digest keyedDigest(std::string_view key, std::string_view bytes) {
    model::require(sodium_init() >= 0, "libsodium is ready");
    Digest out{};
    const int done = crypto_generichash(out.data(), out.size(), bytesOf(bytes), bytes.size(),
                                        bytesOf(key), key.size());
    model::require(done == 0 && key.size() >= crypto_generichash_KEYBYTES_MIN,
                   "keyedDigest: a key of 16 to 64 bytes");
    return out;
}

bool sameDigest(const Digest& a, const Digest& b) {
    return sodium_memcmp(a.data(), b.data(), a.size()) == 0;
}

void wipe(std::span<std::uint8_t> bytes) {
    sodium_memzero(bytes.data(), bytes.size());
}

void wipe(std::string& text) {
    sodium_memzero(text.data(), text.size());
    text.clear();
}

}  // namespace ledgerboard::sync
