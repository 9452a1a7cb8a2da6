// A share of a hundred, kept in basis points (hundredths of a percent).
#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/model/decimal.h"
#include "core/model/overflow.h"
#include "core/model/result.h"

namespace ledgerboard::model {

class Percent {
  public:
    constexpr Percent() = default;

    [[nodiscard]] static constexpr Percent fromBasisPoints(std::int64_t basisPoints) {
        Percent percent;
        percent.basisPoints_ = basisPoints;
        return percent;
    }

    [[nodiscard]] static constexpr Percent of(std::int64_t whole) {
        return fromBasisPoints(whole * 100);
    }

    [[nodiscard]] static constexpr Percent whole() { return of(100); }

    // Reads "10", "12.5", "10 %", "10%". Errors: as parseDecimal.
    [[nodiscard]] static Result<Percent> parse(std::string_view text) {
        text = trimmed(text);
        if (!text.empty() && text.back() == '%') {
            text.remove_suffix(1);
        }
        auto units = parseDecimal(text, 2);
        if (!units.ok()) {
            return units.error();
        }
        return fromBasisPoints(units.value());
    }

    [[nodiscard]] constexpr std::int64_t basisPoints() const { return basisPoints_; }

    // "72.5", without the sign.
    [[nodiscard]] std::string toString() const { return printDecimal(basisPoints_, 2, 0, false); }

    friend Percent operator+(Percent a, Percent b) {
        return fromBasisPoints(addChecked(a.basisPoints_, b.basisPoints_));
    }

    friend Percent operator-(Percent a, Percent b) {
        return fromBasisPoints(subtractChecked(a.basisPoints_, b.basisPoints_));
    }

    friend constexpr auto operator<=>(Percent, Percent) = default;

  private:
    std::int64_t basisPoints_ = 0;
};

}  // namespace ledgerboard::model
