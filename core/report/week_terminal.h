// How is the week's page read on a terminal?
//
// Black on white in plain columns; it reads the same with Script::Ascii on a terminal that can draw
// nothing, or in a file. No colour is used anywhere.
#pragma once

#include <cstddef>
#include <string>

#include "core/report/plain_text.h"
#include "core/report/week_page.h"

namespace ledgerboard::report {

struct Style {
    std::size_t width = 80;  // columns; the page uses 48 to 100 of them
    Script script = Script::Unicode;
    bool bold = false;  // headings and what stands out; only for a terminal
};

// The whole page, no line wider than style.width (48 at least), each ended by a line break.
[[nodiscard]] std::string weekText(const WeekPage& page, const Style& style);

}  // namespace ledgerboard::report
