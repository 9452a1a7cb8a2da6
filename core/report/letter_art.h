// How are the level, the tapes and the curve drawn with letters, on a terminal?
//
// With Script::Ascii nothing but ASCII is used. Drawings carry no figures but the axes of the
// curve; whoever prints them puts the figures beside.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/model/percent.h"
#include "core/report/plain_text.h"
#include "core/report/week_page.h"

namespace ledgerboard::report {

// A spirit level in lines `columns` wide: two hairlines, and a bubble that stays within the vial.
// Requires: columns >= 12.
[[nodiscard]] std::vector<std::string> levelLines(const Level& level, std::size_t columns,
                                                  Script script);

// A tape: the blade to `done`, a notch where the plan says. Requires: columns >= 4.
[[nodiscard]] std::string tapeLine(model::Percent done, std::optional<model::Percent> planned,
                                   std::size_t columns, Script script);

// The letters that the lines of the curve are drawn with; lines that meet take turns.
struct CurveLetters {
    std::string planned;
    std::string earned;
    std::string spent;
    std::string today;
};

[[nodiscard]] CurveLetters curveLetters(Script script);

// The curve in at most `columns` by `rows` letters with its axes (two more lines below). Empty
// where there is nothing to draw. Requires: columns >= 40, rows >= 5.
[[nodiscard]] std::vector<std::string> curveLines(const WeekPage& page, std::size_t columns,
                                                  std::size_t rows, Script script);

}  // namespace ledgerboard::report
