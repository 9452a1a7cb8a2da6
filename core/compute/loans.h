// What does a loan cost: in level payments, and in interest on what is drawn?
//
// Units: amounts in any one currency, unrounded; rates are percents a year (8 is 8 %).
// Source: level payments: the annuity formula, payment = P i / (1 - (1 + i)^-n), i = rate / 12.
// Interest while the dates of draws are unknown: Regulation Z, 12 CFR 1026 Appendix D (half the
// commitment x rate x time; all of it where interest is charged on all).
#pragma once

#include <vector>

#include "core/compute/interest.h"
#include "core/model/date.h"

namespace ledgerboard::compute {

enum class PaidAt { PeriodEnd, PeriodStart };

struct LevelPaymentRow {
    int number = 0;  // from 1
    double interest = 0;
    double principal = 0;
    double balance = 0;  // after it; exactly 0 after the last
};

struct LevelPayment {
    double payment = 0;
    double interestTotal = 0;
    std::vector<LevelPaymentRow> rows;  // one a month
};

// Requires: principal >= 0, rate >= 0, months >= 1.
[[nodiscard]] LevelPayment levelPayment(double principal, double ratePerYear, int months,
                                        PaidAt paidAt);

struct DatedSum {
    model::Date on;
    double amount = 0;
};

struct DrawInterest {
    DatedSum draw;
    int days = 0;  // as the basis counts them, up to the end
    double interest = 0;
};

// Simple interest on each draw from its day to `to`, in the order given. A draw after `to` costs
// nothing. Empty where there are no draws.
[[nodiscard]] std::vector<DrawInterest> interestOnDraws(const std::vector<DatedSum>& draws,
                                                        double ratePerYear, DayCount basis,
                                                        model::Date to);

// Half the commitment x rate x months / 12; all of it where `onWhole`.
[[nodiscard]] double interestWithDatesUnknown(double commitment, double ratePerYear, double months,
                                              bool onWhole);

}  // namespace ledgerboard::compute
