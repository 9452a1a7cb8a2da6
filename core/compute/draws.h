// How much of what is in place may be drawn from the lender, line by line?
//
// A line's draw = max(0, min(amount, amount x allowed %) x share lent x (1 - holdback) - paid
// before). The final draw is without holdback and so releases what was held. All draws together,
// those before with them, never pass the limit: what is beyond it is cut from all lines alike.
// Source: project decision, as lenders pay for work in place; the holdback of 10 % is widely
// stated, not confirmed in a rule, and the owner's to change.
// Units: Money rounded once a line; the plain form below is unrounded, for `work`.
#pragma once

#include <optional>
#include <vector>

#include "core/model/money.h"

namespace ledgerboard::compute {

struct LineInPlace {
    model::Money amount;                             // of the lender's line
    model::Percent allowed;                          // seen in place
    model::Percent share = model::Percent::whole();  // of the line that is lent
    model::Money paidBefore;
};

struct DrawTerms {
    model::Percent holdback;
    std::optional<model::Money> limit;  // most in all, paid before with it
    bool isFinal = false;
};

struct DrawnLine {
    model::Money draw;
    model::Money heldBack;  // of what is in place and lent, after this draw
};

struct Drawn {
    std::vector<DrawnLine> lines;  // as given
    model::Money total;
    model::Money cutByLimit;
};

// Requires: nothing below 0; share, allowed and holdback within 0 to 100. Errors: OverflowError.
[[nodiscard]] Drawn drawnOf(const std::vector<LineInPlace>& lines, const DrawTerms& terms);

// What is lent of a line at a percent, less `holdback`: the most that may have been paid on it.
// Errors: OverflowError.
[[nodiscard]] model::Money lentInPlace(const LineInPlace& line, model::Percent holdback);

// The same in plain numbers.
struct PlainLine {
    double amount = 0;
    double allowedPercent = 0;
    double sharePercent = 100;
    double paidBefore = 0;
};

struct PlainDrawn {
    std::vector<double> draws;
    std::vector<double> heldBack;
    double total = 0;
    double cutByLimit = 0;
};

[[nodiscard]] PlainDrawn drawnOf(const std::vector<PlainLine>& lines, double holdbackPercent,
                                 std::optional<double> limit, bool isFinal);

}  // namespace ledgerboard::compute
