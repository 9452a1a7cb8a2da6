#include "core/model/date.h"

#include <array>
#include <charconv>
#include <chrono>
#include <cstdio>
#include <optional>
#include <vector>

#include "core/model/decimal.h"
#include "core/model/saying.h"

namespace ledgerboard::model {

namespace {

constexpr std::array<std::string_view, 12> kMonths = {
    "january", "february", "march",     "april",   "may",      "june",
    "july",    "august",   "september", "october", "november", "december"};
constexpr std::array<const char*, 12> kMonthsShown = {"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                                      "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
constexpr std::array<const char*, 7> kDaysShown = {"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"};

std::chrono::year_month_day civil(std::int32_t days) {
    return std::chrono::year_month_day{std::chrono::sys_days{std::chrono::days{days}}};
}

std::string quoted(std::string_view text) {
    return "\"" + std::string(trimmed(text).substr(0, 40)) + "\"";
}

// The number that `text` is, whole; empty where it is not one.
std::optional<int> number(std::string_view text) {
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || end != text.data() + text.size() || text.empty() ||
        text.front() == '-') {
        return std::nullopt;
    }
    return value;
}

// "May", "Sept", "december": three letters or more of a month's name.
std::optional<int> monthByName(std::string_view word) {
    if (word.size() < 3) {
        return std::nullopt;
    }
    std::string lower;
    for (const char c : word) {
        lower += static_cast<char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
    }
    for (std::size_t k = 0; k < kMonths.size(); ++k) {
        if (kMonths[k].substr(0, lower.size()) == lower) {
            return static_cast<int>(k) + 1;
        }
    }
    return std::nullopt;
}

std::vector<std::string_view> split(std::string_view text, std::string_view separators) {
    std::vector<std::string_view> parts;
    std::size_t start = 0;
    for (std::size_t k = 0; k <= text.size(); ++k) {
        if (k == text.size() || separators.find(text[k]) != std::string_view::npos) {
            if (k > start) {
                parts.push_back(text.substr(start, k - start));
            }
            start = k + 1;
        }
    }
    return parts;
}

Error unreadable(std::string_view text) {
    return wrongUse(saying("%1 is not a date: write it like 2026-05-15", quoted(text)));
}

// "5/15/2026": which number is the month is only sure when the other can't be one.
Result<Date> fromSlashes(std::string_view text, int first, int second, int year) {
    if (year < 100) {
        return wrongUse(saying("%1 has a two-digit year: write it like 2026-05-15", quoted(text)));
    }
    if (first > 12 && second <= 12) {
        return Date::fromYmd(year, second, first);
    }
    if (second > 12 || first == second) {
        return Date::fromYmd(year, first, second);
    }
    return wrongUse(
        saying("%1 can be read as two different days: write it like 2026-05-15", quoted(text)));
}

}  // namespace

Result<Date> Date::fromYmd(int year, int month, int day) {
    const std::chrono::year_month_day ymd{std::chrono::year{year},
                                          std::chrono::month{static_cast<unsigned>(month)},
                                          std::chrono::day{static_cast<unsigned>(day)}};
    // <chrono> keeps month and day in a byte each, so the plain numbers are judged first.
    if (year < 1600 || year > 2999 || month < 1 || month > 12 || day < 1 || day > 31 || !ymd.ok()) {
        return wrongUse(
            saying("there is no day %1 in the calendar: check the day and the month",
                   std::to_string(year) + "-" + std::to_string(month) + "-" + std::to_string(day)));
    }
    return fromDays(
        static_cast<std::int32_t>(std::chrono::sys_days{ymd}.time_since_epoch().count()));
}

Result<Date> Date::parse(std::string_view text) {
    text = trimmed(text);
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') {
        return unreadable(text);
    }
    const auto year = number(text.substr(0, 4));
    const auto month = number(text.substr(5, 2));
    const auto day = number(text.substr(8, 2));
    if (!year || !month || !day) {
        return unreadable(text);
    }
    return fromYmd(*year, *month, *day);
}

Result<Date> Date::parseLoose(std::string_view text) {
    text = trimmed(text);
    if (text.size() == 10 && text[4] == '-' && text[7] == '-') {
        return parse(text);
    }
    const auto parts = split(text, "/., -");
    if (parts.size() != 3) {
        return unreadable(text);
    }
    const auto first = number(parts[0]);
    const auto second = number(parts[1]);
    const auto third = number(parts[2]);
    if (!third) {
        return unreadable(text);
    }
    if (first && second) {
        if (*first > 31 && *third <= 31) {  // 2026/05/15: year first is never ambiguous
            return fromYmd(*first, *second, *third);
        }
        if (text.find('.') != std::string_view::npos && *third >= 100) {
            return fromYmd(*third, *second, *first);  // points: the day stands first, everywhere
        }
        return fromSlashes(text, *first, *second, *third);
    }
    if (*third < 100) {
        return wrongUse(saying("%1 has a two-digit year: write it like 2026-05-15", quoted(text)));
    }
    if (first && !second) {
        if (const auto month = monthByName(parts[1])) {
            return fromYmd(*third, *month, *first);
        }
    } else if (second) {
        if (const auto month = monthByName(parts[0])) {
            return fromYmd(*third, *month, *second);
        }
    }
    return unreadable(text);
}

int Date::year() const {
    return static_cast<int>(civil(days_).year());
}

int Date::month() const {
    return static_cast<int>(static_cast<unsigned>(civil(days_).month()));
}

int Date::dayOfMonth() const {
    return static_cast<int>(static_cast<unsigned>(civil(days_).day()));
}

std::string Date::toString() const {
    std::array<char, 40> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02d-%02d", year(), month(), dayOfMonth());
    return text.data();
}

std::string Date::toShortText() const {
    return std::string(kDaysShown[static_cast<std::size_t>(weekday())]) + " " +
           std::to_string(dayOfMonth()) + " " + kMonthsShown[static_cast<std::size_t>(month() - 1)];
}

Result<Instant> Instant::parse(std::string_view text) {
    text = trimmed(text);
    const Error bad =
        wrongUse(saying("%1 is not an instant: write it like 2026-05-15T18:03:00Z or "
                        "2026-05-15T18:03:00-05:00",
                        quoted(text)));
    if (text.size() < 17 || (text[10] != 'T' && text[10] != ' ')) {
        return bad;
    }
    const auto date = Date::parse(text.substr(0, 10));
    if (!date.ok()) {
        return date.error();
    }
    std::string_view rest = text.substr(11);
    std::int64_t offsetMinutes = 0;
    if (rest.back() == 'Z' || rest.back() == 'z') {
        rest.remove_suffix(1);
    } else {
        if (rest.size() < 6 || rest[rest.size() - 3] != ':' ||
            (rest[rest.size() - 6] != '+' && rest[rest.size() - 6] != '-')) {
            return bad;
        }
        const auto hours = number(rest.substr(rest.size() - 5, 2));
        const auto minutes = number(rest.substr(rest.size() - 2));
        if (!hours || !minutes || *hours > 14 || *minutes > 59) {
            return bad;
        }
        offsetMinutes = *hours * 60 + *minutes;
        offsetMinutes = rest[rest.size() - 6] == '-' ? -offsetMinutes : offsetMinutes;
        rest.remove_suffix(6);
    }
    const auto hour = number(rest.substr(0, 2));
    const auto minute =
        rest.size() >= 5 && rest[2] == ':' ? number(rest.substr(3, 2)) : std::nullopt;
    std::optional<int> second = 0;
    std::optional<int> millisecond = 0;
    if (rest.size() > 5) {
        second = rest.size() >= 8 && rest[5] == ':' ? number(rest.substr(6, 2)) : std::nullopt;
        if (rest.size() > 8) {
            const std::string_view fraction = rest.substr(9);
            std::string digits(fraction.substr(0, 3));
            digits.resize(3, '0');
            const bool good = rest[8] == '.' && !fraction.empty() &&
                              fraction.find_first_not_of("0123456789") == std::string_view::npos;
            millisecond = good ? number(digits) : std::nullopt;
        }
    }
    if (!hour || !minute || !second || !millisecond || *hour > 23 || *minute > 59 || *second > 60) {
        return bad;
    }
    const std::int64_t minutes = *hour * 60 + *minute - offsetMinutes;
    return fromMilliseconds(date.value().days() * 86'400'000LL + minutes * 60'000LL +
                            *second * 1000LL + *millisecond);
}

Date Instant::utcDate() const {
    const std::int64_t day = 86'400'000;
    const std::int64_t floor =
        milliseconds_ >= 0 ? milliseconds_ / day : -((-milliseconds_ + day - 1) / day);
    return Date::fromDays(static_cast<std::int32_t>(floor));
}

std::string Instant::toString() const {
    const Date date = utcDate();
    const std::int64_t inDay = milliseconds_ - date.days() * 86'400'000LL;
    std::array<char, 40> text{};
    std::snprintf(text.data(), text.size(), "T%02d:%02d:%02d.%03dZ",
                  static_cast<int>(inDay / 3'600'000), static_cast<int>(inDay / 60'000 % 60),
                  static_cast<int>(inDay / 1000 % 60), static_cast<int>(inDay % 1000));
    return date.toString() + text.data();
}

}  // namespace ledgerboard::model
