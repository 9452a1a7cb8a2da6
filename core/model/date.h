// Which day, and which instant?
//
// Units: Date counts days since 1970-01-01 in the proleptic Gregorian calendar; Instant counts UTC
// milliseconds since 1970-01-01T00:00Z. Both print as ISO 8601.
#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/model/result.h"

namespace ledgerboard::model {

class Date {
  public:
    constexpr Date() = default;

    [[nodiscard]] static constexpr Date fromDays(std::int32_t days) {
        Date date;
        date.days_ = days;
        return date;
    }

    // Errors (WrongUse): no such day in the calendar, or a year outside 1600 to 2999.
    [[nodiscard]] static Result<Date> fromYmd(int year, int month, int day);
    // ISO 8601 only: "2026-05-15". Errors: anything else.
    [[nodiscard]] static Result<Date> parse(std::string_view text);
    // As people write it in files: ISO, "5/15/2026", "15.5.2026", "15 May 2026", "May 15, 2026".
    // Errors: a two-digit year; slashes that read as two different days (5/6/2026), saying so.
    [[nodiscard]] static Result<Date> parseLoose(std::string_view text);

    [[nodiscard]] constexpr std::int32_t days() const { return days_; }

    [[nodiscard]] int year() const;
    [[nodiscard]] int month() const;       // 1 to 12
    [[nodiscard]] int dayOfMonth() const;  // 1 to 31

    // 0 is Monday, 6 is Sunday.
    [[nodiscard]] constexpr int weekday() const { return ((days_ + 3) % 7 + 7) % 7; }

    [[nodiscard]] std::string toString() const;  // "2026-05-15"
    // "Fri 15 May": what a page shows.
    [[nodiscard]] std::string toShortText() const;

    friend constexpr auto operator<=>(Date, Date) = default;

    friend constexpr Date operator+(Date date, int days) { return fromDays(date.days_ + days); }

    friend constexpr Date operator-(Date date, int days) { return fromDays(date.days_ - days); }

    // Calendar days from b to a.
    friend constexpr int operator-(Date a, Date b) { return a.days_ - b.days_; }

  private:
    std::int32_t days_ = 0;
};

class Instant {
  public:
    constexpr Instant() = default;

    [[nodiscard]] static constexpr Instant fromMilliseconds(std::int64_t milliseconds) {
        Instant instant;
        instant.milliseconds_ = milliseconds;
        return instant;
    }

    // "2026-05-15T18:03Z", seconds and fractions optional, "Z" or an offset such as +02:00.
    // Errors (WrongUse): anything else; a time without zone is refused, not guessed.
    [[nodiscard]] static Result<Instant> parse(std::string_view text);

    [[nodiscard]] constexpr std::int64_t milliseconds() const { return milliseconds_; }

    // The UTC day it falls on.
    [[nodiscard]] Date utcDate() const;
    [[nodiscard]] std::string toString() const;  // "2026-05-15T18:03:00.000Z"

    friend constexpr auto operator<=>(Instant, Instant) = default;

  private:
    std::int64_t milliseconds_ = 0;
};

}  // namespace ledgerboard::model
