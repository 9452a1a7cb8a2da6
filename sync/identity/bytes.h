// How do keys, digests and nonces look? Arrays of a fixed length, written as lower-case hex.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace ledgerboard::sync {

template <std::size_t N>
using Bytes = std::array<std::uint8_t, N>;

using Digest = Bytes<32>;     // SHA-256, or keyed BLAKE2b where said
using PublicKey = Bytes<32>;  // Ed25519
using Signature = Bytes<64>;  // Ed25519
using Nonce = Bytes<16>;      // a number used once

[[nodiscard]] std::string hexOf(std::span<const std::uint8_t> bytes);

// Fills `out` from exactly twice as many lower-case hex digits. False, and `out` as it was, where
// `hex` is anything else: one value has one spelling.
[[nodiscard]] bool readHex(std::string_view hex, std::span<std::uint8_t> out);

template <class Array>
[[nodiscard]] std::optional<Array> fromHex(std::string_view hex) {
    Array out{};
    if (!readHex(hex, out)) {
        return std::nullopt;
    }
    return out;
}

// SHA-256, FIPS 180-4.
[[nodiscard]] Digest sha256(std::string_view bytes);

// Keyed BLAKE2b with 32 bytes of output, RFC 7693. Requires: a key of 16 to 64 bytes.
[[nodiscard]] Digest keyedDigest(std::string_view key, std::string_view bytes);

// Whether two digests are the same, in a time that does not tell where they differ.
[[nodiscard]] bool sameDigest(const Digest& a, const Digest& b);

// Overwrites what must not stay in memory.
void wipe(std::span<std::uint8_t> bytes);
void wipe(std::string& text);

}  // namespace ledgerboard::sync
