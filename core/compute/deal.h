// What does the house earn: cash in at closing, what money and time cost, profit, the resale value
// at which nothing is earned, and what one day more costs?
//
// Units: Money; percents 0 to 100; days are calendar days. Before income tax.
// Source: project decisions, in the words of the trade; the 70 % rule is common practice, no
// source; interest while the dates of draws are unknown: Regulation Z, 12 CFR 1026 Appendix D (half
// the commitment).
//
// Exactly what is meant:
//   cash at closing   price - purchase loan + buying costs + points + lender fees
//   points            each loan's own, on the whole of that loan
//   interest          purchase loan from purchase to sale; work loan: the whole of it for as long,
//                     or, where charged on what is drawn, each draw from its day, those ahead from
//                     their planned days; where those are not known, half of what is not yet drawn
//                     from the day of looking (else the last draw, else purchase); rounded once
//   visit fees        the lender's fee for each visit, so far and planned
//   holding           the monthly costs x 12 / 365 a day, from purchase to sale; no interest in it
//   extension fee     of both loans, once the sale comes after the term end
//   selling           (selling costs + commission) of resale
//   season drop       what a sale after the season brings less: the owner's own number
//   all-in            price + buying costs + points + lender fees + visit fees + interest +
//                     extension fee + holding + work + selling; the work loan and contingency are
//                     not in it
//   profit            resale - season drop - all-in; margin: profit / (resale - season drop)
//   break-even        (all-in - selling) / (1 - selling percents)
//   a day costs       interest a day on both loans wholly drawn + holding a day + the extension fee
//                     spread over the days past term end, at least 30, once it is crossed
//   top offer         the price that leaves the wanted profit, all else as it is
// Inputs that were not entered are never guessed: `missing` ones leave profit empty, `leftOut` ones
// count as nothing and are to be named wherever a figure is shown.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/model/date.h"
#include "core/model/money.h"
#include "core/model/result.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

struct DatedAmount {
    model::Date on;
    model::Money amount;
};

// What the deal leans on beside the job's own fields.
struct DealFigures {
    std::optional<model::Money> work;             // forecast of the work
    std::optional<model::Money> contingencyLeft;  // for the top offer alone; empty: none
    std::optional<model::Date> willFinishOn;      // forecast; the job's own finish where empty
    std::optional<model::Date> saleOn;   // money from the sale; finish + days to resale where empty
    std::optional<model::Date> asOf;     // the day of looking
    std::vector<DatedAmount> workDraws;  // paid out of the work loan so far, any order
    // Planned, the lender's fees in them; empty: their days are not known.
    std::optional<std::vector<DatedAmount>> drawsAhead;
    model::Money visitFees;  // the lender's, so far and planned
};

// An input that was not entered: its heading and the job's field to set ("" where it is no field).
struct AbsentInput {
    std::string_view heading;
    std::string_view field;
};

struct Deal {
    std::optional<model::Date> saleOn;
    std::optional<int> daysHeld;       // purchase to sale
    std::optional<int> daysToTermEnd;  // from the sale; below 0 once it is crossed
    // First day a buyer with a government-insured loan may sign; through day 180 a second appraisal
    // is called for where the resale is double the price or more (HUD resale rules).
    std::optional<model::Date> day91On;
    std::optional<model::Date> day180On;
    bool isDoublePrice = false;

    model::Money buyingCosts;
    model::Money points;
    model::Money lenderFees;
    model::Money visitFees;
    std::optional<model::Money> cashAtClosing;
    model::Money interest;
    model::Money extensionFee;
    model::Money holding;
    model::Money selling;
    model::Money seasonDrop;             // of the sale day
    std::optional<model::Money> resale;  // likely, less the season drop; with the profit
    model::Money interestPerDay;
    model::Money holdingPerDay;
    model::Money extensionPerDay;
    model::Money dayCosts;  // the three above

    std::optional<model::Money> allIn;
    std::optional<model::Money> profit;
    std::optional<model::Money> profitLow;   // at the low resale value
    std::optional<model::Money> profitHigh;  // at the high one
    std::optional<double> marginPercent;
    std::optional<model::Money> breakEvenResale;
    std::optional<double> resaleDropPercent;       // drop of resale that eats the profit
    std::optional<model::Money> ruleOfThumbOffer;  // 70 % of resale - work: common practice
    std::optional<model::Money> topOffer;          // needs the wanted profit

    std::vector<AbsentInput> missing;  // profit needs these
    std::vector<AbsentInput> leftOut;  // counted as nothing
};

// Errors (CannotBeMet), naming the field: an amount or percent below 0, selling percents of 100 or
// more together, a sale before the purchase. OverflowError.
[[nodiscard]] model::Result<Deal> deal(const model::Job& job, const DealFigures& figures);

}  // namespace ledgerboard::compute
