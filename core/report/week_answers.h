// What are the answers to the questions an owner asks every week, in the order they are asked?
//
// The order and the questions are common practice, no source. Each answer is told from the same
// figures as the rest of the page and computes none of its own. Amounts are written for a page
// (whole, with a real minus sign); a plain terminal spells them in ASCII when it shows them.
#pragma once

#include <vector>

#include "core/compute/this_week.h"
#include "core/report/week_page.h"

namespace ledgerboard::report {

// Thirteen of them, always; one that cannot be told says what to enter. Requires: `page` filled but
// for its answers; rows, figures and week of the same day.
[[nodiscard]] std::vector<Answer> answersOf(const WeekPage& page, const model::JobRows& rows,
                                            const compute::JobFigures& figures,
                                            const compute::ThisWeek& week);

}  // namespace ledgerboard::report
