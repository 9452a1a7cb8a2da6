// How do the figures of a job become the lists of the week's page: trades, rooms, what is next,
// what is missing, what to do on Monday? Used by week_page.cpp alone.
#pragma once

#include <vector>

#include "core/compute/budget.h"
#include "core/compute/concerns.h"
#include "core/model/rows.h"
#include "core/report/week_page.h"

namespace ledgerboard::report {

[[nodiscard]] Amounts amountsOf(const compute::Figures& figures);

// Shares of budget now; planned, spent and paid are empty where there is no budget.
[[nodiscard]] Progress progressOf(const compute::JobFigures& figures);

// By name, what belongs to no trade last, lines of nothing but zeros left out. More than 14: the 13
// largest by forecast or budget, and the others as one. The rows always add up to the job.
// Errors: OverflowError.
[[nodiscard]] std::vector<TradeMoney> tradesOf(const compute::JobFigures& figures);

// In walking order; what belongs to no space last, left out where it is nothing.
[[nodiscard]] std::vector<RoomProgress> roomsOf(const model::JobRows& rows,
                                                const compute::JobFigures& figures);

// Requires of the rest: rows as of today.
[[nodiscard]] std::vector<NextEvent> nextOf(const model::JobRows& rows,
                                            const compute::JobFigures& figures,
                                            const compute::Plan& plan, model::Date today);

[[nodiscard]] std::vector<MissingPaper> papersOf(const model::JobRows& rows, model::Date today);

// Hazards that hold work up and nobody has acknowledged first, each by name where that work begins
// within 14 days or has begun, the others as one line (none for work that is done); then concerns,
// most pressing first, three of a kind by name and the others as one line.
[[nodiscard]] std::vector<ToDo> mondayOf(const model::JobRows& rows,
                                         const compute::JobFigures& figures,
                                         const compute::Plan& plan, model::Date today,
                                         const compute::Outlook& outlook);

}  // namespace ledgerboard::report
