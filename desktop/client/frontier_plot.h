// How is what each sum of money buys drawn? Cost across, what it earns up, a mark for each set that
// no other beats, and the most that can be earned for so much or less as a line of steps.
#pragma once

#include "core/compute/choices.h"
#include "core/qml/look_plot.h"

namespace ledgerboard::desk {

// Empty where there are fewer than two sets to compare. Threads: the UI's.
[[nodiscard]] qml::PlotData frontierPlotOf(const model::JobRows& rows,
                                           const compute::Choices& choices, model::Date today);

}  // namespace ledgerboard::desk
