// How does the week's curve become a chart: planned, earned and spent, a stop for each day?
#pragma once

#include "core/qml/look_plot.h"
#include "core/report/week_page.h"

namespace ledgerboard::desk {

// Empty where there is nothing to draw.
[[nodiscard]] qml::PlotData weekPlotOf(const report::WeekPage& page);

}  // namespace ledgerboard::desk
