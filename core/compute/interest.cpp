#include "core/compute/interest.h"

#include <algorithm>
#include <array>
#include <utility>

#include "core/model/check.h"

namespace ledgerboard::compute {

namespace {

using model::Date;

constexpr std::array<std::pair<DayCount, std::string_view>, 6> kNames = {{
    {DayCount::Actual360, "actual/360"},
    {DayCount::Actual365, "actual/365"},
    {DayCount::ActualActualIsda, "actual/actual-isda"},
    {DayCount::Thirty360Us, "30/360-us"},
    {DayCount::Thirty360Bond, "30/360-bond"},
    {DayCount::ThirtyE360, "30e/360"},
}};

constexpr std::int64_t kPlainYear = 365;
constexpr std::int64_t kLeapYear = 366;
constexpr std::int64_t kLenderYear = 360;

bool isLeap(int year) {
    return (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
}

bool isFebruaryEnd(Date date) {
    return date.month() == 2 && (date + 1).month() == 3;
}

int thirty360(Date from, Date to, int fromDay, int toDay) {
    return 360 * (to.year() - from.year()) + 30 * (to.month() - from.month()) + toDay - fromDay;
}

int thirty360Us(Date from, Date to) {
    int fromDay = from.dayOfMonth();
    int toDay = to.dayOfMonth();
    if (isFebruaryEnd(from)) {
        if (isFebruaryEnd(to)) {
            toDay = 30;
        }
        fromDay = 30;
    }
    if (toDay == 31 && fromDay >= 30) {
        toDay = 30;
    }
    return thirty360(from, to, std::min(fromDay, 30), toDay);
}

int thirty360Bond(Date from, Date to) {
    const int fromDay = std::min(from.dayOfMonth(), 30);
    const int toDay = fromDay == 30 ? std::min(to.dayOfMonth(), 30) : to.dayOfMonth();
    return thirty360(from, to, fromDay, toDay);
}

// Days of [from, to) that fall in leap years.
std::int64_t leapDays(Date from, Date to) {
    std::int64_t days = 0;
    for (Date at = from; at < to;) {
        // 1 January of the next year; months and days here always exist.
        const int year = at.year();
        const int dayOfYear = at - Date::fromYmd(year, 1, 1).value();
        const Date next =
            at + (static_cast<int>(isLeap(year) ? kLeapYear : kPlainYear) - dayOfYear);
        const Date end = std::min(next, to);
        days += isLeap(year) ? end - at : 0;
        at = end;
    }
    return days;
}

}  // namespace

std::string_view nameOf(DayCount basis) {
    for (const auto& [known, name] : kNames) {
        if (known == basis) {
            return name;
        }
    }
    return {};
}

std::optional<DayCount> dayCountNamed(std::string_view name) {
    for (const auto& [basis, known] : kNames) {
        if (known == name) {
            return basis;
        }
    }
    return std::nullopt;
}

DayCount dayCountOf(model::InterestBasis basis) {
    switch (basis) {
        case model::InterestBasis::Actual360:
            return DayCount::Actual360;
        case model::InterestBasis::ActualActual:
            return DayCount::ActualActualIsda;
        case model::InterestBasis::Thirty360:
            return DayCount::Thirty360Us;
        case model::InterestBasis::Unset:
        case model::InterestBasis::Actual365:
            return DayCount::Actual365;
    }
    return DayCount::Actual365;
}

int daysBetween(Date from, Date to, DayCount basis) {
    switch (basis) {
        case DayCount::Actual360:
        case DayCount::Actual365:
        case DayCount::ActualActualIsda:
            return to - from;
        case DayCount::Thirty360Us:
            return thirty360Us(from, to);
        case DayCount::Thirty360Bond:
            return thirty360Bond(from, to);
        case DayCount::ThirtyE360:
            return thirty360(from, to, std::min(from.dayOfMonth(), 30),
                             std::min(to.dayOfMonth(), 30));
    }
    return to - from;
}

YearFraction yearFraction(Date from, Date to, DayCount basis) {
    model::require(from <= to, "a year fraction of dates in order");
    const std::int64_t days = daysBetween(from, to, basis);
    if (basis == DayCount::Actual365) {
        return {days, kPlainYear};
    }
    if (basis == DayCount::ActualActualIsda) {
        const std::int64_t leap = leapDays(from, to);
        return {(days - leap) * kLeapYear + leap * kPlainYear, kPlainYear * kLeapYear};
    }
    return {days, kLenderYear};
}

int daysInYear(DayCount basis) {
    const bool plain = basis == DayCount::Actual365 || basis == DayCount::ActualActualIsda;
    return static_cast<int>(plain ? kPlainYear : kLenderYear);
}

model::Money simpleInterest(model::Money principal, model::Percent ratePerYear, Date from, Date to,
                            DayCount basis) {
    constexpr std::int64_t kBasisPointsPerWhole = 10'000;
    const YearFraction time = yearFraction(from, to, basis);
    return model::roundedMoney(
        model::multiplyWide(model::multiplyWide(principal.minor(), ratePerYear.basisPoints()),
                            time.numerator),
        model::multiplyWide(time.denominator, kBasisPointsPerWhole));
}

}  // namespace ledgerboard::compute
