// How is the deal told on a terminal: the sum of it, what the owner's cash earns, profit at other
// values and finishes, the days that matter, and what was counted as nothing.
#pragma once

#include <string>

#include "core/compute/cash_plan.h"
#include "core/compute/deal_return.h"
#include "core/compute/profit_table.h"
#include "core/model/rows.h"
#include "core/report/table.h"

namespace ledgerboard::report {

// In lines no wider than the style's width. `figures`: what the deal leans on.
[[nodiscard]] std::string dealText(const model::Job& job, const compute::DealFigures& figures,
                                   const compute::Deal& deal, const compute::DealReturn& earned,
                                   const compute::ProfitTable& table, const TableStyle& style);

}  // namespace ledgerboard::report
