// How is told what can be requested from the lender now: line by line, what before, what held back,
// and why not more?
#pragma once

#include <string>

#include "core/compute/cash_plan.h"
#include "core/model/rows.h"
#include "core/report/table.h"

namespace ledgerboard::report {

// In lines no wider than the style's width. Where there is no loan, or no lender lines: how to
// enter them.
[[nodiscard]] std::string drawText(const model::JobRows& rows, const compute::DrawsNow& now,
                                   const std::vector<compute::DrawAhead>& ahead, model::Date today,
                                   const TableStyle& style);

}  // namespace ledgerboard::report
