// How does the week's page read on paper? In the order of the page, on one sheet with two sides.
//
// Parts with many lines are cut as the printed page of week_html.h is, and say how many are left on
// the screen. Threads: any number may ask.
#pragma once

#include "core/paper/paper.h"
#include "core/report/week_page.h"

namespace ledgerboard::paper {

[[nodiscard]] Paper weekPaper(const report::WeekPage& page);

}  // namespace ledgerboard::paper
