// How do the days of a plan look, each item a line across them?
//
// A column is a working day, or as many of them as it takes to fit. Critical work is a heavy line,
// other work a light one, and its float is dotted behind it.
#pragma once

#include <string>
#include <vector>

#include "core/compute/budget.h"
#include "core/compute/plan.h"
#include "core/report/table.h"

namespace ledgerboard::report {

// A line for each of `items` (positions in plan.items, unfinished), a line of dates above them and
// what the signs mean below. Empty where the width or the plan leaves nothing to draw.
[[nodiscard]] std::string planLines(const compute::JobFigures& figures, const compute::Plan& plan,
                                    const std::vector<std::size_t>& items, const model::Job& job,
                                    const TableStyle& style);

// Working days to a tenth, rounded up: "2.5", "3".
[[nodiscard]] std::string daysText(std::int64_t thousandths);

}  // namespace ledgerboard::report
