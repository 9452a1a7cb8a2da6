// The steps that deal (deal.h) is made of. Inside core/compute only.
#pragma once

#include <optional>

#include "core/compute/deal.h"
#include "core/compute/interest.h"

namespace ledgerboard::compute {

// The job's figures with nothing where nothing was entered; what is absent stands in Deal.
struct DealTerms {
    model::Money price;
    model::Money purchaseLoan;
    model::Money workLoan;
    model::Percent rate;
    model::Percent sellingShare;  // selling costs + commission
    model::Money monthlyHolding;
    DayCount basis = DayCount::Actual365;
};

[[nodiscard]] DealTerms dealTermsOf(const model::Job& job);

// Errors (CannotBeMet), naming the field: below 0, a season's day that is none.
[[nodiscard]] model::Result<void> checkDealInputs(const model::Job& job,
                                                  const DealFigures& figures);

// The day of the money from the sale. Empty where nothing tells.
[[nodiscard]] std::optional<model::Date> saleDay(const model::Job& job, const DealFigures& figures);

// What the sale brings less for the seasons it misses. Errors: OverflowError.
[[nodiscard]] model::Money seasonDropOn(const model::Job& job, model::Date sale);

// Fills `missing` and `leftOut`.
void noteAbsent(const model::Job& job, const DealFigures& figures, const DealTerms& terms,
                Deal& out);

// Interest from purchase to `to`, rounded once. Requires: job.purchasedOn; to >= it.
// Errors: OverflowError.
[[nodiscard]] model::Money interestBy(const model::Job& job, const DealFigures& figures,
                                      const DealTerms& terms, model::Date to);

// Holding costs from purchase to `to`, rounded once. Requires: job.purchasedOn. Errors:
// OverflowError.
[[nodiscard]] model::Money holdingBy(const model::Job& job, const DealTerms& terms, model::Date to);

}  // namespace ledgerboard::compute
