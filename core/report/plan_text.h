// How is the plan read in a terminal?
//
// What will finish when and why, the items in the order of the days they begin on, a line of days
// for each, what to order by when, what is near critical, and what the plan rests on. What is
// critical is told by the word and a heavy line, never by colour.
#pragma once

#include <string>

#include "core/compute/budget.h"
#include "core/compute/plan.h"
#include "core/model/rows.h"
#include "core/report/table.h"

namespace ledgerboard::report {

// Requires: plan and figures of `rows`, which are as of today; style.width >= 40. Errors: none.
[[nodiscard]] std::string planText(const model::JobRows& rows, const compute::JobFigures& figures,
                                   const compute::Plan& plan, model::Date today,
                                   const TableStyle& style);

}  // namespace ledgerboard::report
