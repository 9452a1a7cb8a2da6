#include "core/compute/draw_ask.h"

#include <algorithm>

namespace ledgerboard::compute {

DrawAsk drawAskOf(const model::JobRows& rows, const DrawsNow& now, model::Date day) {
    DrawAsk ask;
    std::int64_t last = 0;
    for (const model::Draw& draw : rows.draws) {
        last = std::max(last, draw.number.value_or(0));
    }
    ask.draw.job = rows.job.id;
    ask.draw.number = last + 1;
    ask.draw.askedOn = day;
    for (const LenderLineFigures& line : now.lines) {
        if (line.draw == model::Money{} || !line.line) {
            continue;
        }
        model::DrawLine asked;
        asked.job = rows.job.id;
        asked.lenderLine = rows.lender_lines[*line.line].id;
        asked.asked = line.inPlace.allowed;
        ask.lines.push_back(std::move(asked));
    }
    return ask;
}

}  // namespace ledgerboard::compute
