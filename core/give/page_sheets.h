// How do the week's page and the draw become workbooks?
//
// The same figures as the pages, a sheet for each part, with the totals and differences as
// formulas.
#pragma once

#include <string>
#include <vector>

#include "core/compute/lender_draws.h"
#include "core/give/workbook.h"
#include "core/report/week_page.h"

namespace ledgerboard::give {

// "This week" (head figures), "Money by trade", "By room", "Next 14 days", "On Monday", "Asked".
[[nodiscard]] std::vector<Sheet> weekSheets(const report::WeekPage& page);

// One sheet: a line for each of the lender's lines. "Seen" and "Lent" are shares.
[[nodiscard]] std::vector<Sheet> drawSheets(const compute::DrawsNow& now, const std::string& job,
                                            model::Date today);

}  // namespace ledgerboard::give
