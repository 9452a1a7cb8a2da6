#include "core/report/money_text.h"

#include <array>

#include "core/model/overflow.h"

namespace ledgerboard::report {

namespace {

using model::Date;
using model::Money;
using model::Percent;

constexpr std::array<const char*, 7> kWeekdays = {"Monday", "Tuesday",  "Wednesday", "Thursday",
                                                  "Friday", "Saturday", "Sunday"};
constexpr std::array<const char*, 12> kMonths = {"January",   "February", "March",    "April",
                                                 "May",       "June",     "July",     "August",
                                                 "September", "October",  "November", "December"};

const char* minus(Script script) {
    return script == Script::Unicode ? "−" : "-";
}

std::uint64_t magnitudeOf(std::int64_t number) {
    const auto bits = static_cast<std::uint64_t>(number);
    return number < 0 ? 0 - bits : bits;
}

std::string grouped(std::uint64_t number) {
    std::string digits = std::to_string(number);
    for (std::size_t at = digits.size(); at > 3;) {
        at -= 3;
        digits.insert(at, 1, ',');
    }
    return digits;
}

std::int64_t dollarsOf(Money money) {
    return model::divideRounded(money.minor(), 100);
}

// "12.5" of 125 tenths, "12" of 120.
std::string tenths(std::uint64_t count) {
    const std::string whole = grouped(count / 10);
    return count % 10 == 0 ? whole : whole + "." + std::to_string(count % 10);
}

}  // namespace

std::string wholeText(Money money, Script script) {
    const std::int64_t dollars = dollarsOf(money);
    return (dollars < 0 ? minus(script) : "") + grouped(magnitudeOf(dollars));
}

std::string centsText(Money money, Script script) {
    const std::uint64_t cents = magnitudeOf(money.minor());
    const std::string fraction = std::to_string(100 + cents % 100).substr(1);
    return (money.minor() < 0 ? minus(script) : "") + grouped(cents / 100) + "." + fraction;
}

std::string signedText(Money money, Script script) {
    return (dollarsOf(money) > 0 ? "+" : "") + wholeText(money, script);
}

std::string shortText(Money money, Script script) {
    constexpr std::size_t kNarrow = 11;
    const std::string whole = wholeText(money, script);
    return columnsOf(whole) <= kNarrow ? whole : axisText(money, script);
}

std::string shortSignedText(Money money, Script script) {
    return (dollarsOf(money) > 0 ? "+" : "") + shortText(money, script);
}

std::string axisText(Money money, Script script) {
    const std::int64_t dollars = dollarsOf(money);
    const std::string sign = dollars < 0 ? minus(script) : "";
    const std::uint64_t size = magnitudeOf(dollars);
    if (size < 1'000) {
        return sign + std::to_string(size);
    }
    if (size < 999'950) {
        return sign + tenths((size + 50) / 100) + "k";
    }
    return sign + tenths((size + 50'000) / 100'000) + "M";
}

std::string percentText(Percent percent, Script script) {
    const std::int64_t whole = model::divideRounded(percent.basisPoints(), 100);
    return (whole < 0 ? minus(script) : "") + grouped(magnitudeOf(whole)) + " %";
}

std::string tenthsText(Percent percent, Script script) {
    const std::int64_t count = model::divideRounded(percent.basisPoints(), 10);
    const std::uint64_t size = magnitudeOf(count);
    return (count < 0 ? minus(script) : "") + grouped(size / 10) + "." + std::to_string(size % 10) +
           " %";
}

std::string longDateText(Date date) {
    return std::string(kWeekdays.at(static_cast<std::size_t>(date.weekday()))) + " " +
           std::to_string(date.dayOfMonth()) + " " +
           kMonths.at(static_cast<std::size_t>(date.month() - 1)) + " " +
           std::to_string(date.year());
}

std::string dateText(Date date, Date today) {
    const std::string day =
        std::string(kWeekdays.at(static_cast<std::size_t>(date.weekday()))).substr(0, 3) + " " +
        dayMonthText(date);
    return date.year() == today.year() ? day : day + " " + std::to_string(date.year());
}

std::string dayMonthText(Date date) {
    return std::to_string(date.dayOfMonth()) + " " +
           std::string(kMonths.at(static_cast<std::size_t>(date.month() - 1))).substr(0, 3);
}

std::string countText(std::int64_t count, const char* one, const char* many) {
    return grouped(magnitudeOf(count)) + " " + (count == 1 ? one : many);
}

}  // namespace ledgerboard::report
