// How is a word that somebody wrote shown back in a message? In quotes, and cut where it is long.
#pragma once

#include <string>
#include <string_view>

namespace ledgerboard::compute {

// At most 40 bytes of `text`, never half a UTF-8 character.
[[nodiscard]] inline std::string inQuotes(std::string_view text) {
    constexpr std::size_t kMostBytes = 40;
    std::size_t size = text.size();
    if (size > kMostBytes) {
        size = kMostBytes;
        while (size > 0 && (static_cast<unsigned char>(text[size]) & 0xC0U) == 0x80U) {
            --size;
        }
    }
    return "\"" + std::string(text.substr(0, size)) + "\"";
}

}  // namespace ledgerboard::compute
