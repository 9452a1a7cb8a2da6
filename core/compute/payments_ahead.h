// What is paid for the work, on which days: so far, and still to come?
//
// So far: every payment, receipt, fee and refund on its day; one without a day on the day of
// looking. To come, adding up with it to the forecast, to the cent:
//   bills      what is open of each, less retainage, on its due date; one without, the next Friday;
//              one overdue, the next day
//   to go      of a contract with payment steps: each step on the Friday after its work is planned
//              to reach the sum of the steps up to it, a deposit not yet billed the next day
//              of an order: all of it on its agreed finish, else when its goods are put in
//              of bought goods: on the first day of the item's work
//              of all else: over the item's remaining working days, paid each Friday; without days,
//              up to the forecast finish
//   retainage  of what is billed and of what is to come, in one sum on the fifth working day after
//              the contract's last item is planned to finish
// What was paid beyond what is billed is taken off the next payments to the same contract, or of
// the same job where there is none.
// Source: project decision (common practice, no source).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/compute/budget.h"
#include "core/compute/cash.h"
#include "core/compute/work_ahead.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

// In no order. `ahead` one for each of rows.items; `finishOn`: the forecast finish, for work
// without days (four weeks from today where it is not known). Requires: rows and figures as of
// today. Errors: OverflowError.
[[nodiscard]] std::vector<CashMove> workPaymentsOf(
    const model::JobRows& rows, const JobFigures& figures,
    const std::vector<std::optional<WorkSpan>>& ahead, std::optional<model::Date> finishOn,
    model::Date today);

}  // namespace ledgerboard::compute
