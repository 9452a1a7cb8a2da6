// How many days, and what part of a year, does a lender count between two dates?
//
// Units: days; a year fraction is an exact ratio, so that interest is rounded once, at its end.
// Source: ISDA 2006 definitions, section 4.16 (actual/360, actual/365, actual/actual, 30/360 bond
// basis, 30E/360), and the US rule of 30/360 for the end of February, as tested in QuantLib's day
// counters.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "core/model/date.h"
#include "core/model/money.h"
#include "core/model/percent.h"
#include "core/model/words.h"

namespace ledgerboard::compute {

enum class DayCount {
    Actual360,
    Actual365,
    ActualActualIsda,  // days in a leap year count 1/366, others 1/365
    Thirty360Us,       // a February end counts as the 30th
    Thirty360Bond,
    ThirtyE360,
};

// "actual/360", "actual/365", "actual/actual-isda", "30/360-us", "30/360-bond", "30e/360".
[[nodiscard]] std::string_view nameOf(DayCount basis);
// Empty where `name` is none of them.
[[nodiscard]] std::optional<DayCount> dayCountNamed(std::string_view name);
// The basis that a job's word stands for ("30/360" is the US rule). Unset: actual/365.
[[nodiscard]] DayCount dayCountOf(model::InterestBasis basis);

// numerator / denominator of a year. The denominator is the same for all dates of one basis.
struct YearFraction {
    std::int64_t numerator = 0;
    std::int64_t denominator = 1;

    [[nodiscard]] double value() const {
        return static_cast<double>(numerator) / static_cast<double>(denominator);
    }
};

// Days from `from` (counted) to `to` (not), as the basis counts them. Below 0 where to < from.
[[nodiscard]] int daysBetween(model::Date from, model::Date to, DayCount basis);

// Requires: from <= to.
[[nodiscard]] YearFraction yearFraction(model::Date from, model::Date to, DayCount basis);

// Days of a plain year of the basis: 360 or 365. What one day's interest is divided by.
[[nodiscard]] int daysInYear(DayCount basis);

// Simple interest on `principal` from `from` to `to`, rounded once. Requires: from <= to.
// Errors: OverflowError.
[[nodiscard]] model::Money simpleInterest(model::Money principal, model::Percent ratePerYear,
                                          model::Date from, model::Date to, DayCount basis);

}  // namespace ledgerboard::compute
