// How much of something: square feet, pieces, days. A decimal with three places, kept exactly.
//
// Units: thousandths of whatever unit the field names.
#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/model/decimal.h"
#include "core/model/overflow.h"
#include "core/model/result.h"

namespace ledgerboard::model {

class Quantity {
  public:
    constexpr Quantity() = default;

    [[nodiscard]] static constexpr Quantity fromThousandths(std::int64_t thousandths) {
        Quantity quantity;
        quantity.thousandths_ = thousandths;
        return quantity;
    }

    // Requires: whole within +-9 * 10^15.
    [[nodiscard]] static constexpr Quantity of(std::int64_t whole) {
        return fromThousandths(whole * 1000);
    }

    // Errors: as parseDecimal.
    [[nodiscard]] static Result<Quantity> parse(std::string_view text) {
        auto units = parseDecimal(text, 3);
        if (!units.ok()) {
            return units.error();
        }
        return fromThousandths(units.value());
    }

    [[nodiscard]] constexpr std::int64_t thousandths() const { return thousandths_; }

    // "42", "4.25": no more decimals than needed.
    [[nodiscard]] std::string toString() const { return printDecimal(thousandths_, 3, 0, false); }

    friend Quantity operator+(Quantity a, Quantity b) {
        return fromThousandths(addChecked(a.thousandths_, b.thousandths_));
    }

    friend Quantity operator-(Quantity a, Quantity b) {
        return fromThousandths(subtractChecked(a.thousandths_, b.thousandths_));
    }

    Quantity& operator+=(Quantity other) { return *this = *this + other; }

    friend constexpr auto operator<=>(Quantity, Quantity) = default;

  private:
    std::int64_t thousandths_ = 0;
};

}  // namespace ledgerboard::model
