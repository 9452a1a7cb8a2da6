// Is work on old paint minor, and does the asbestos of a house call for notice? The limits of
// cautions.def, applied to the scope.
//
// Lead (40 CFR 745.83): minor is up to 6 sq ft of painted surface a room inside and up to 20 sq ft
// outside, both ends included. What is replaced or removed counts whole. All work in one room
// within the same 30 days (the first day to the thirtieth) is one job; outdoors is one place.
// Replacing windows, or tearing out painted surfaces, is never minor, nor is anything else of that
// job. Work whose area isn't entered isn't minor, and work without dates counts with every day
// (project decisions, on the careful side).
// Asbestos (40 CFR 61.145(a)): amounts that reach the limit call for notice.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/model/rows.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

struct LeadSize {
    bool isMinor = false;
    model::Saying why;  // "420 sq ft; outside, more than 20 isn't minor"
};

// One for each of rows.items; empty where `disturbsPaint` is false. Requires: disturbsPaint as long
// as rows.items. Errors: OverflowError.
[[nodiscard]] std::vector<std::optional<LeadSize>> leadSizesOf(
    const model::JobRows& rows, const std::vector<bool>& disturbsPaint);

// Which limits the items that may hold asbestos reach together: "160 sq ft" and so on, empty where
// none. Requires: mayHold as long as rows.items. Errors: OverflowError.
[[nodiscard]] model::Saying asbestosNotice(const model::JobRows& rows,
                                           const std::vector<bool>& mayHold);

}  // namespace ledgerboard::compute
