// How is the spread of cost, finish and earnings shown on a terminal? The percentiles, the chances
// of what the owner asked for, a row of bars for each spread, what drives them, and what all of it
// rests on.
#pragma once

#include <string>
#include <vector>

#include "core/compute/job_risk.h"
#include "core/model/rows.h"
#include "core/report/plain_text.h"

namespace ledgerboard::report {

// Bars for the counts, one letter each, the largest at full height; a count above 0 shows. All 0:
// spaces. With Script::Ascii: " .:-=+*#".
[[nodiscard]] std::string barsText(const std::vector<std::size_t>& counts, Script script);

struct RiskView {
    const model::JobRows& rows;
    const compute::JobRisk& risk;
    model::Date today;
    std::size_t width = 80;
    Script script = Script::Unicode;
    bool bold = false;
};

// The whole page, no line wider than width but for commands, each ended by a line break.
// Requires: width of 72 or more; risk of these rows.
[[nodiscard]] std::string riskText(const RiskView& view);

}  // namespace ledgerboard::report
