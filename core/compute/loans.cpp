#include "core/compute/loans.h"

#include <cmath>

#include "core/model/check.h"

namespace ledgerboard::compute {

namespace {

constexpr double kMonthsPerYear = 12;
constexpr double kHundred = 100;

// What `months` payments at the end of each month repay. The forms with log1p and expm1 keep their
// digits at rates near nothing.
double paymentAtEnd(double principal, double monthlyRate, int months) {
    if (monthlyRate == 0) {
        return principal / months;
    }
    return principal * monthlyRate / -std::expm1(-months * std::log1p(monthlyRate));
}

}  // namespace

LevelPayment levelPayment(double principal, double ratePerYear, int months, PaidAt paidAt) {
    model::require(principal >= 0 && ratePerYear >= 0 && months >= 1, "a loan that can be repaid");
    const double monthlyRate = ratePerYear / kHundred / kMonthsPerYear;
    LevelPayment out;
    out.payment = paymentAtEnd(principal, monthlyRate, months);
    if (paidAt == PaidAt::PeriodStart) {
        out.payment /= 1 + monthlyRate;
    }
    double balance = principal;
    for (int n = 1; n <= months; ++n) {
        const bool nothingAccrued = paidAt == PaidAt::PeriodStart && n == 1;
        const double interest = nothingAccrued ? 0 : balance * monthlyRate;
        const double repaid = out.payment - interest;
        balance = n == months ? 0 : balance - repaid;
        out.interestTotal += interest;
        out.rows.push_back({n, interest, repaid, balance});
    }
    return out;
}

std::vector<DrawInterest> interestOnDraws(const std::vector<DatedSum>& draws, double ratePerYear,
                                          DayCount basis, model::Date to) {
    std::vector<DrawInterest> out;
    for (const DatedSum& draw : draws) {
        DrawInterest one;
        one.draw = draw;
        if (draw.on < to) {
            one.days = daysBetween(draw.on, to, basis);
            one.interest =
                draw.amount * ratePerYear / kHundred * yearFraction(draw.on, to, basis).value();
        }
        out.push_back(one);
    }
    return out;
}

double interestWithDatesUnknown(double commitment, double ratePerYear, double months,
                                bool onWhole) {
    const double charged = onWhole ? commitment : commitment / 2;
    return charged * ratePerYear / kHundred * months / kMonthsPerYear;
}

}  // namespace ledgerboard::compute
