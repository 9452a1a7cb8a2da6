// How much money? A signed count of the currency's minor unit (cents), never floating point.
//
// Units: minor units of the job's currency (ISO 4217); every currency taken has two decimals.
// Rounding happens once, half away from zero, at the end of a line: roundedMoney().
#pragma once

#include <compare>
#include <concepts>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/model/decimal.h"
#include "core/model/overflow.h"
#include "core/model/percent.h"
#include "core/model/quantity.h"
#include "core/model/result.h"

namespace ledgerboard::model {

class Money {
  public:
    constexpr Money() = default;

    [[nodiscard]] static constexpr Money fromMinor(std::int64_t minor) {
        Money money;
        money.minor_ = minor;
        return money;
    }

    // Money never comes from floating point, not even by a silent conversion.
    template <std::floating_point F>
    static Money fromMinor(F) = delete;

    // Whole dollars. Requires: |dollars| <= 10^13.
    [[nodiscard]] static constexpr Money of(std::int64_t dollars) {
        return fromMinor(dollars * 100);
    }

    template <std::floating_point F>
    static Money of(F) = delete;

    // Reads "1250", "$1,250.00", "(12.50)", and "265k" for 265,000. Errors: as parseDecimal.
    [[nodiscard]] static Result<Money> parse(std::string_view text) {
        const std::string_view plain = trimmed(text);
        const bool isThousands = plain.size() > 1 && (plain.back() == 'k' || plain.back() == 'K') &&
                                 plain[plain.size() - 2] >= '0' && plain[plain.size() - 2] <= '9';
        // A thousand of a unit of 10^-5 is one of 10^-2.
        auto units = isThousands ? parseDecimal(plain.substr(0, plain.size() - 1), 5)
                                 : parseDecimal(plain, 2);
        if (!units.ok()) {
            return units.error();
        }
        return fromMinor(units.value());
    }

    [[nodiscard]] constexpr std::int64_t minor() const { return minor_; }

    // "1250.00": what JSON, CSV and the log show.
    [[nodiscard]] std::string toString() const { return printDecimal(minor_, 2, 2, true); }

    friend Money operator+(Money a, Money b) { return fromMinor(addChecked(a.minor_, b.minor_)); }

    friend Money operator-(Money a, Money b) {
        return fromMinor(subtractChecked(a.minor_, b.minor_));
    }

    friend Money operator-(Money a) { return fromMinor(negateChecked(a.minor_)); }

    Money& operator+=(Money other) { return *this = *this + other; }

    Money& operator-=(Money other) { return *this = *this - other; }

    friend constexpr auto operator<=>(Money, Money) = default;

  private:
    std::int64_t minor_ = 0;
};

// The one rounding: numerator / denominator minor units, half away from zero.
// Requires: denominator > 0. Errors: OverflowError.
[[nodiscard]] inline Money roundedMoney(Wide numerator, Wide denominator) {
    return Money::fromMinor(divideRounded(numerator, denominator));
}

// quantity x a price per unit, rounded once. Errors: OverflowError.
[[nodiscard]] inline Money times(Quantity quantity, Money perUnit) {
    return roundedMoney(multiplyWide(quantity.thousandths(), perUnit.minor()), 1000);
}

// `percent` of `money`, rounded once. Errors: OverflowError.
[[nodiscard]] inline Money share(Percent percent, Money money) {
    return roundedMoney(multiplyWide(percent.basisPoints(), money.minor()), 10'000);
}

// Splits `total` by `weights` so that the parts add up to it to the cent: each part rounded toward
// zero, the cents left over go one each to the largest remainders, earlier parts first among
// equals. All weights 0: split evenly. Empty weights: empty result. Requires: no negative weight.
// Errors: OverflowError.
[[nodiscard]] std::vector<Money> allocate(Money total, const std::vector<std::int64_t>& weights);

}  // namespace ledgerboard::model
