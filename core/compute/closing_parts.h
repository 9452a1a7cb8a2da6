// The steps that closingOf (closing.h) is made of. Inside core/compute only.
#pragma once

#include <vector>

#include "core/compute/closing.h"

namespace ledgerboard::compute {

// The last word on one inspection: rows of one name are one inspection, asked for until it passed.
struct InspectionRead {
    std::size_t last = 0;  // in rows.inspections
    bool passed = false;
};

// One for each name, in the order of their first rows.
[[nodiscard]] std::vector<InspectionRead> inspectionsOf(const model::JobRows& rows);

// The subcontracts that aren't closed, with what releases each.
[[nodiscard]] std::vector<Release> releasesOf(const model::JobRows& rows, const JobFigures& figures,
                                              const PunchList& punch);

// The folder that goes with the house.
[[nodiscard]] std::vector<FinalPaper> finalPapersOf(const model::JobRows& rows,
                                                    const Cautions& cautions);

}  // namespace ledgerboard::compute
