// How does the week's page look on one sheet of paper, two sides?
//
// Letter size, in the light colours, from the same WeekPage as the screen; parts with many lines
// are cut and say how many are left on the screen. Units: points, 72 to an inch. Threads: the UI's,
// for its fonts.
#pragma once

#include <QString>

#include "core/report/week_page.h"

namespace ledgerboard::desk {

// Writes the PDF, replacing a PDF that is there. False where it cannot be written, or where what is
// there is something else than a PDF.
[[nodiscard]] bool writeWeekSheet(const report::WeekPage& page, const QString& path);

}  // namespace ledgerboard::desk
