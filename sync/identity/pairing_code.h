// What does a person type to let a device join? 25 characters in five groups of five.
//
// The first four name the invitation and are no secret, the next twenty are the secret (100 bits),
// the last one is a check. Read without regard to case, spaces and hyphens; O is read as 0, I and L
// as 1, so that what looks alike is alike.
// Source: the alphabet of 32 characters without I, L, O, U is in common use (from memory). The
// check is a project decision: reading characters as elements of GF(32) made by x^5 + x^2 + 1, the
// polynomial with the code's characters as coefficients, highest first, is zero at x = 2. Since the
// powers of 2 differ over 31 places, every wrong character and every swap of two is found.
#pragma once

#include <string>
#include <string_view>

#include "core/model/id.h"
#include "core/model/result.h"

namespace ledgerboard::sync {

class PairingCode {
  public:
    static constexpr std::size_t kHandle = 4;
    static constexpr std::size_t kSecret = 20;
    static constexpr std::size_t kLength = kHandle + kSecret + 1;
    static constexpr std::size_t kGroup = 5;

    // A new one.
    [[nodiscard]] static PairingCode fresh(const model::FillRandom& random);

    // As typed or as read from a picture. Errors (WrongUse): too short or too long, a character
    // that is none of ours with its group, a check that does not hold.
    [[nodiscard]] static model::Result<PairingCode> parse(std::string_view typed);

    // 25 characters, upper case, nothing between them.
    [[nodiscard]] const std::string& plain() const { return characters_; }

    // "7K3QM-...": five groups.
    [[nodiscard]] std::string toText() const;

    [[nodiscard]] std::string_view handle() const {
        return std::string_view(characters_).substr(0, kHandle);
    }

    [[nodiscard]] std::string_view secret() const {
        return std::string_view(characters_).substr(kHandle, kSecret);
    }

    // Whether `text` could be a handle: four characters of the alphabet, upper case.
    [[nodiscard]] static bool isHandle(std::string_view text);

    friend bool operator==(const PairingCode&, const PairingCode&) = default;

  private:
    explicit PairingCode(std::string characters) : characters_(std::move(characters)) {}

    std::string characters_;
};

}  // namespace ledgerboard::sync
