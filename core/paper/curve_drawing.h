// How are the week's drawings put on paper: the curve, the level, a tape?
//
// As on the page (core/report/week_svg.h): planned dashed, earned heavy, spent solid, a label at
// each line's end; each figure also stands in text. Units: points.
#pragma once

#include "core/paper/pen.h"

namespace ledgerboard::paper {

struct Place {
    double x = 0;
    double y = 0;
    double width = 0;
    double height = 0;
};

// True where there is something to draw.
[[nodiscard]] bool hasCurve(const Curve& curve);

void drawCurve(Pen& pen, const Curve& curve, const Place& place);
void drawLevel(Pen& pen, const report::Level& level, const Place& place);
void drawTape(Pen& pen, const Tape& tape, const Place& place);

}  // namespace ledgerboard::paper
