// How is the week's page given to a program?
//
// One JSON object: money as strings with two decimals ("1250.00"), dates in ISO 8601, percents 0 to
// 100, keys in snake_case. What is not known is null; lists are always there. Photos are named by
// caption and day, their bytes left out.
#pragma once

#include <string>

#include "core/report/week_page.h"

namespace ledgerboard::report {

// Indented by two, ended by a line break. Text that is not UTF-8 is replaced, never an error.
[[nodiscard]] std::string weekJson(const WeekPage& page);

}  // namespace ledgerboard::report
