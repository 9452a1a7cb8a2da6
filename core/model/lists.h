// What do the fields hold that are short lists? Named sums, weighted steps, sums per item, dates,
// and the days of a work week.
#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/model/date.h"
#include "core/model/id.h"
#include "core/model/money.h"
#include "core/model/percent.h"
#include "core/model/result.h"

namespace ledgerboard::model {

struct NamedAmount {
    std::string name;
    Money amount;
    friend auto operator<=>(const NamedAmount&, const NamedAmount&) = default;
};

struct NamedShare {
    std::string name;
    Percent percent;
    friend auto operator<=>(const NamedShare&, const NamedShare&) = default;
};

struct ItemAmount {
    Id<Kind::Item> item;
    Money amount;
    friend auto operator<=>(const ItemAmount&, const ItemAmount&) = default;
};

// The days of the week on which crews work.
class Weekdays {
  public:
    constexpr Weekdays() = default;

    // Bit k is set where day k is worked (0 is Monday). Requires: bits < 128.
    [[nodiscard]] static constexpr Weekdays fromBits(std::int64_t bits) {
        Weekdays days;
        days.bits_ = bits;
        return days;
    }

    [[nodiscard]] static constexpr Weekdays mondayToFriday() { return fromBits(0b0011111); }

    // "Mon Tue Wed Thu Fri" or "Mon-Sat", any case. Errors: an unknown day, or none.
    [[nodiscard]] static Result<Weekdays> parse(std::string_view text);

    [[nodiscard]] constexpr bool has(int weekday) const { return ((bits_ >> weekday) & 1) != 0; }

    [[nodiscard]] constexpr std::int64_t bits() const { return bits_; }

    [[nodiscard]] std::string toString() const;  // "Mon Tue Wed Thu Fri"
    friend constexpr auto operator<=>(Weekdays, Weekdays) = default;

  private:
    std::int64_t bits_ = 0;
};

}  // namespace ledgerboard::model
