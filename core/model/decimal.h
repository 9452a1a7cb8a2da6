// How is a decimal number written by a person read, exactly, into a count of small units?
//
// Shared by Money, Quantity and Percent. Never goes through floating point.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "core/model/result.h"

namespace ledgerboard::model {

// Reads "1250", "-12.5", "1,250.00", "$1,250.00", "(12.50)" (brackets are a minus, as on paper) as
// a count of 10^-decimals. Thousands commas must stand at every third digit. Errors (WrongUse):
// empty, not a number, more decimals than fit, a comma where none belongs (so that 1.250,00 and
// 12,5 are refused, not guessed), beyond +-10^15 units.
[[nodiscard]] Result<std::int64_t> parseDecimal(std::string_view text, int decimals);

// The reverse: exactly `shown` decimals, or as many as needed but at least `shown` when !fixed.
[[nodiscard]] std::string printDecimal(std::int64_t units, int decimals, int shown, bool fixed);

// White space taken off both ends.
[[nodiscard]] std::string_view trimmed(std::string_view text);

}  // namespace ledgerboard::model
