// What kind of character is it? Of ASCII alone, whatever the locale.
#pragma once

namespace ledgerboard::intake {

[[nodiscard]] constexpr bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

[[nodiscard]] constexpr bool isUpper(char c) {
    return c >= 'A' && c <= 'Z';
}

[[nodiscard]] constexpr bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || isUpper(c);
}

}  // namespace ledgerboard::intake
