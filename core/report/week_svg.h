// How are the page's drawings made: the level, the tapes and the curve?
//
// Each is one inline SVG element that takes its colours from the page's style sheet (week_css.h)
// and carries a label that says the same in words; every figure it shows also stands in text.
#pragma once

#include <optional>
#include <string>

#include "core/model/percent.h"
#include "core/report/week_page.h"

namespace ledgerboard::report {

// A spirit level: a vial with two hairlines and a bubble that drifts right when the job will cost
// more than budget, left when less. A bubble beyond an end stays at that end.
[[nodiscard]] std::string levelSvg(const Level& level);

// A tape: the blade drawn out to `done`, ticks at the quarters, a notch where the plan says.
[[nodiscard]] std::string tapeSvg(model::Percent done, std::optional<model::Percent> planned);

// Planned (dashed), earned and spent over time, with a line at today and a label at each line's
// end; labels keep clear of each other. Empty where there is nothing to draw (see chartScale).
[[nodiscard]] std::string curveSvg(const WeekPage& page);

}  // namespace ledgerboard::report
