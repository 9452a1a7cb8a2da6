// Which figures does a sentence hold, and what do they measure?
//
// Figures in digits and in words: "185k", "ninety-five grand", "four and a half thousand", "a
// couple of hundred", "nineteen sixty-two", "ten by twelve", "42 sf". Units: value is in
// thousandths of `unit`, of dollars for money.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "core/intake/notes/tables.h"
#include "core/intake/notes/tokens.h"

namespace ledgerboard::intake {

enum class AmountKind : std::uint8_t {
    Plain,     // a bare number: a count, a year, or money left without its sign
    Money,     // with a currency sign or word
    Measured,  // with a unit of area, length, volume or count
    Time,      // days, weeks, months, years
};

struct Amount {
    std::size_t begin = 0;  // tokens
    std::size_t end = 0;
    AmountKind kind = AmountKind::Plain;
    std::int64_t value = 0;
    std::uint32_t unit = kNone;  // row of the units table
    bool paired = false;   // "one eighty-five": figures said in pairs, as prices and years are
    bool perUnit = false;  // "@ 4.25", "four dollars a foot"
};

// In order, not overlapping.
[[nodiscard]] std::vector<Amount> amountsIn(std::span<const Token> tokens);

}  // namespace ledgerboard::intake
