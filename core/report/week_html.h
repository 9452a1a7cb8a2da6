// How does the week's page look as one HTML file, for a screen and for a sheet of paper?
//
// The file needs nothing else: style, drawings and photos are within it, fonts fall back to what
// the reader has, no script. Printed, it is one sheet, two sides at most (letter or A4): parts with
// many lines are cut on paper and say how many are left on the screen.
#pragma once

#include <string>

#include "core/report/week_page.h"

namespace ledgerboard::report {

// The whole file, UTF-8, ended by a line break; well-formed XML too, so that it can be checked as
// such. Whatever people typed is escaped. An empty job says so and what to do next.
[[nodiscard]] std::string weekHtml(const WeekPage& page);

}  // namespace ledgerboard::report
