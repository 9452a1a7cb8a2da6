// What is written when a draw is asked for?
//
// Its number is the next one; each line that can be drawn on now is asked for at the percent seen.
// Source: project decision. Threads: any number may ask.
#pragma once

#include <vector>

#include "core/compute/lender_draws.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

// Ids are the caller's to give, and the draw's in each line.
struct DrawAsk {
    model::Draw draw;
    std::vector<model::DrawLine> lines;
};

// No lines where nothing can be asked for. Requires: now = drawsNowOf(rows, ...), by lender lines.
[[nodiscard]] DrawAsk drawAskOf(const model::JobRows& rows, const DrawsNow& now, model::Date day);

}  // namespace ledgerboard::compute
