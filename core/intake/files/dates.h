// Which day does a cell of a date column mean, when the same figures could be two days?
//
// "5/6/2026" is read as the rest of its column is: one row that can only be day-first or
// month-first settles it. Where no row does, or rows speak against each other, it is refused.
// Source: project decision: a date guessed wrong moves money to another week unseen.
#pragma once

#include <string_view>
#include <vector>

#include "core/model/date.h"
#include "core/model/result.h"

namespace ledgerboard::intake {

enum class DateOrder { Unknown, DayFirst, MonthFirst, Mixed };

// What the cells of one column prove. Cells of other forms prove nothing.
[[nodiscard]] DateOrder dateOrderOf(const std::vector<std::string_view>& cells);

// A date as Date::parseLoose reads it, also "5/6/2026" in the column's order, and an ISO date with
// a time of day behind it, which is left off. Errors (WrongUse): as parseLoose; ambiguous, saying
// what the column lacks.
[[nodiscard]] model::Result<model::Date> parseDateIn(std::string_view text, DateOrder order);

}  // namespace ledgerboard::intake
