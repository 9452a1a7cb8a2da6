// When should a draw be asked for, and when does which money come?
//
// A draw already asked for comes after the lender's own days. From today on, each Friday is looked
// at: a draw is suggested where what can be drawn by the work planned to be in place by then
//   - is worth the visit: 8,000 or more (common practice, no source)
//   - or is ten times the visit's fee, and without it the cash would not cover two weeks of bills
//     before the money of the Friday after could come, or a single payment of 4,000 or more comes
//     in the week after the money
//   - or the work is planned to be finished by then
// and the last one, which releases the holdback, on the fifth working day after the last item.
// Only draws whose money comes before the sale are in it.
// Source: project decision.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/compute/cash.h"
#include "core/compute/lender_draws.h"
#include "core/compute/work_ahead.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

struct DrawAhead {
    std::optional<model::Date> askOn;  // empty: asked for already
    model::Date moneyOn;
    model::Money total;  // before the fee
    model::Money fee;
    std::string why;
    bool isFinal = false;
};

// In order of money. `without` is the cash line without draws still to be asked for (null where
// there is none), `saleOn` the day of the sale where known. Requires: rows as of today.
// Errors: OverflowError.
[[nodiscard]] std::vector<DrawAhead> drawsAheadOf(const model::JobRows& rows,
                                                  const JobFigures& figures, const DrawsNow& now,
                                                  const std::vector<std::optional<WorkSpan>>& ahead,
                                                  const CashLine* without,
                                                  std::optional<model::Date> saleOn,
                                                  model::Date today);

// The draws asked for and not yet funded alone.
[[nodiscard]] std::vector<DrawAhead> openDrawsOf(const model::JobRows& rows, const DrawsNow& now,
                                                 model::Date today);

}  // namespace ledgerboard::compute
