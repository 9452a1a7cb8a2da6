// How does a table go down the sheets?
//
// Columns of figures take what their widest needs, words share the rest; where figures alone are
// too wide all of it is written smaller, and at the end broken within. Its headings stand again on
// each sheet. Units: points.
#pragma once

#include "core/paper/flow.h"

namespace ledgerboard::paper {

void placeTable(Flow& flow, const Table& table);

// As much of it as may not be parted from a heading above: its headings and first row.
[[nodiscard]] Table beginningOf(const Table& table);

}  // namespace ledgerboard::paper
