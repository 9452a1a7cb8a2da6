// How is the plan read in which no crew is in two places at once?
//
// How much later it makes the finish and how good it is, the items left in the order of the days
// they begin on, which crew or space would be wanted twice without it, and what it rests on.
#pragma once

#include <optional>
#include <string>

#include "core/compute/budget.h"
#include "core/compute/job_crew_plan.h"
#include "core/model/rows.h"
#include "core/report/table.h"

namespace ledgerboard::report {

// Requires: figures and plan of `rows`, which are as of today; style.width >= 40.
[[nodiscard]] std::string crewPlanText(const model::JobRows& rows,
                                       const compute::JobFigures& figures,
                                       const compute::JobCrewPlan& plan, model::Date today,
                                       const TableStyle& style);

// "Tile crew in 2 places at once, and can be in 1, Mon 1 Jun to Wed 3 Jun: Hall bath/tile, Main
// bath/tile": one stretch as a line, for any page.
[[nodiscard]] std::string stackedText(const model::JobRows& rows,
                                      const compute::JobFigures& figures,
                                      const compute::StackedDays& stacked, model::Date today);

// One JSON document, ended by a line break: days as ISO 8601, lengths in working days; `kept`: of
// how many items it became the planned dates, where that was asked for.
[[nodiscard]] std::string crewPlanJson(const model::JobRows& rows,
                                       const compute::JobFigures& figures,
                                       const compute::JobCrewPlan& plan, model::Date today,
                                       std::optional<std::size_t> kept = {});

}  // namespace ledgerboard::report
