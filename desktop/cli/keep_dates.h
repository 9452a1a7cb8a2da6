// How do a plan's dates become the planned dates of the items?
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/model/rows.h"

#include "desktop/cli/session.h"

namespace ledgerboard::cli {

struct DatesToKeep {
    std::size_t item = 0;  // in rows.items
    model::Date startOn;
    model::Date finishOn;
    bool isUnderWay = false;  // then a planned start that is there stays
};

// Writes those that differ, as one action. What comes out: how many items that is.
[[nodiscard]] model::Result<std::size_t> keepDates(Session& session, const model::JobRows& rows,
                                                   const std::vector<DatesToKeep>& dates,
                                                   model::Date today);

// "Kept as the planned dates of 12 items; ...", on a line of its own after an empty one.
[[nodiscard]] std::string keptText(std::size_t count);

}  // namespace ledgerboard::cli
