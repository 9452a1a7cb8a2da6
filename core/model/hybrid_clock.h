// When was an entry made, in an order that every device agrees on?
//
// Source: Kulkarni, Demirbas et al., "Logical Physical Clocks" (2014). Units: milliseconds << 16 |
// counter, in a signed 64-bit integer. Stored in the log and sent: do not change the layout.
#pragma once

#include <algorithm>
#include <compare>
#include <cstdint>

#include "core/model/date.h"

namespace ledgerboard::model {

class HybridClock {
  public:
    constexpr HybridClock() = default;

    [[nodiscard]] static constexpr HybridClock fromRaw(std::int64_t raw) {
        HybridClock clock;
        clock.raw_ = raw;
        return clock;
    }

    // The last reading that still belongs to `instant`: everything known then is at or below it.
    [[nodiscard]] static constexpr HybridClock endOf(Instant instant) {
        return fromRaw((instant.milliseconds() << 16) | 0xffff);
    }

    [[nodiscard]] constexpr std::int64_t raw() const { return raw_; }

    [[nodiscard]] constexpr Instant instant() const {
        return Instant::fromMilliseconds(raw_ >> 16);
    }

    // The reading for a new entry: above this one, and not below `now`. A full counter runs over
    // into the next millisecond, which is what the layout intends.
    [[nodiscard]] constexpr HybridClock next(Instant now) const {
        return fromRaw(std::max(raw_ + 1, now.milliseconds() << 16));
    }

    friend constexpr auto operator<=>(HybridClock, HybridClock) = default;

  private:
    std::int64_t raw_ = 0;
};

}  // namespace ledgerboard::model
