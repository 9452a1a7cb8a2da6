// What does the deal lean on beside the job's own fields? The forecast of the work, of the finish,
// and the draws so far, gathered once so that the week's page and the deal itself say the same.
#pragma once

#include <optional>

#include "core/compute/budget.h"
#include "core/compute/deal.h"
#include "core/model/rows.h"

namespace ledgerboard::report {

// `work` is left out where nothing counts yet. A draw adds to the debt what was received and the
// lender's fee for it, from the day it was funded. Requires: rows = asOf(rows, today).
// Errors: OverflowError.
[[nodiscard]] compute::DealFigures dealFiguresOf(const model::JobRows& rows,
                                                 const compute::JobFigures& figures,
                                                 std::optional<model::Date> willFinishOn,
                                                 model::Date today);

}  // namespace ledgerboard::report
