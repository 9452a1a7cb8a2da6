#include "sync/identity/pairing_code.h"

#include <array>

#include "core/model/saying.h"
#include "sync/identity/bytes.h"

namespace ledgerboard::sync {

using model::Result;

namespace {

constexpr std::string_view kAlphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

// Times 2 in GF(32).
constexpr unsigned doubled(unsigned element) {
    const unsigned shifted = element << 1;
    return (shifted & 32u) != 0 ? shifted ^ 0b100101u : shifted;
}

// The code's polynomial at 2; `characters` are of the alphabet.
unsigned valueAtTwo(std::string_view characters) {
    unsigned value = 0;
    for (const char c : characters) {
        value = doubled(value) ^ static_cast<unsigned>(kAlphabet.find(c));
    }
    return value;
}

// Of the alphabet, or 0 where it is none.
char asRead(char c) {
    if (c >= 'a' && c <= 'z') {
        c = static_cast<char>(c - 'a' + 'A');
    }
    if (c == 'O') {
        return '0';
    }
    if (c == 'I' || c == 'L') {
        return '1';
    }
    return kAlphabet.find(c) != std::string_view::npos ? c : '\0';
}

}  // namespace

PairingCode PairingCode::fresh(const model::FillRandom& random) {
    std::array<std::uint8_t, kLength - 1> bytes{};
    random(bytes.data(), bytes.size());
    std::string characters;
    for (const std::uint8_t byte : bytes) {
        characters += kAlphabet[byte % kAlphabet.size()];  // 256 is a multiple of 32: no bias
    }
    wipe(bytes);
    characters += kAlphabet[doubled(valueAtTwo(characters))];
    return PairingCode(std::move(characters));
}

Result<PairingCode> PairingCode::parse(std::string_view typed) {
    std::string characters;
    for (const char c : typed) {
        if (c == ' ' || c == '-') {
            continue;
        }
        const char read = asRead(c);
        if (read == '\0') {
            return model::wrongUse(
                model::saying("code: group %1 has a character that no code has; codes are of "
                              "digits and letters without I, L, O and U",
                              characters.size() / kGroup + 1));
        }
        if (characters.size() == kLength) {
            return model::wrongUse("code: it is too long; a code has five groups of five");
        }
        characters += read;
    }
    if (characters.size() < kLength) {
        return model::wrongUse(model::saying(
            "code: it has %1 characters of 25; a code has five groups of five", characters.size()));
    }
    if (valueAtTwo(characters) != 0) {
        return model::wrongUse(
            "code: a character is wrong or two are swapped; compare it group by group");
    }
    return PairingCode(std::move(characters));
}

std::string PairingCode::toText() const {
    std::string out;
    for (std::size_t at = 0; at < characters_.size(); at += kGroup) {
        out += (at == 0 ? "" : "-") + characters_.substr(at, kGroup);
    }
    return out;
}

bool PairingCode::isHandle(std::string_view text) {
    return text.size() == kHandle && text.find_first_not_of(kAlphabet) == std::string_view::npos;
}

}  // namespace ledgerboard::sync
