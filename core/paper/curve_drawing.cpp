#include "core/paper/curve_drawing.h"

#include <algorithm>

#include "core/report/chart_scale.h"
#include "core/report/money_text.h"
#include "core/report/theme.h"

namespace ledgerboard::paper {

namespace {

using model::Money;
using model::Percent;
using report::CurvePoint;

constexpr report::Script kPage = report::Script::Unicode;
constexpr double kSmall = 7.5;
constexpr double kLabelRoom = 88;
constexpr double kLabelGap = 11;
constexpr double kFoot = 14;  // for the days
constexpr int kMostLevels = 5;
constexpr int kMostDays = 8;

struct Line {
    std::string label;
    Colour colour;
    double thick = 1.2;
    bool isDashed = false;
    std::vector<double> places;
    double labelY = 0;
};

// The scale laid out on the sheet.
struct Frame {
    report::ChartScale scale;
    Place plot;

    [[nodiscard]] double x(model::Date day) const {
        return plot.x + scale.across(day) * plot.width;
    }

    [[nodiscard]] double y(Money figure) const {
        return plot.y + plot.height - scale.up(figure) * plot.height;
    }
};

Line lineOf(const Curve& curve, const Frame& frame, const char* name,
            std::optional<Money> CurvePoint::*figure) {
    Line line;
    Money last;
    for (const auto& point : curve.points) {
        if (const auto& money = point.*figure) {
            line.places.push_back(frame.x(point.on));
            line.places.push_back(frame.y(*money));
            last = *money;
        }
    }
    if (!line.places.empty()) {
        line.label = std::string(name) + " " + report::shortText(last, kPage);
        line.labelY = line.places.back();
    }
    return line;
}

std::vector<Line> linesOf(const Curve& curve, const Frame& frame) {
    Line planned = lineOf(curve, frame, "planned", &CurvePoint::planned);
    planned.colour = {report::kLight.slate};
    planned.isDashed = true;
    Line spent = lineOf(curve, frame, "spent", &CurvePoint::spent);
    spent.colour = {report::kLight.ink};
    Line earned = lineOf(curve, frame, "earned", &CurvePoint::earned);
    earned.colour = {report::kLight.moss};
    earned.thick = 2.2;
    std::vector<Line> lines;
    for (auto* line : {&planned, &spent, &earned}) {
        if (!line->places.empty()) {
            lines.push_back(std::move(*line));
        }
    }
    // Labels from the top down, pushed apart until none touches another.
    std::stable_sort(lines.begin(), lines.end(),
                     [](const Line& a, const Line& b) { return a.labelY < b.labelY; });
    double above = frame.plot.y - kLabelGap;
    for (auto& line : lines) {
        line.labelY = above = std::max(line.labelY, above + kLabelGap);
    }
    double below = frame.plot.y + frame.plot.height + kLabelGap;
    for (auto line = lines.rbegin(); line != lines.rend(); ++line) {
        line->labelY = below = std::min(line->labelY, below - kLabelGap);
    }
    return lines;
}

void drawGrid(Pen& pen, const Frame& frame, double left) {
    const Place& plot = frame.plot;
    for (const auto& level : frame.scale.levels()) {
        const double y = frame.y(level);
        pen.line(plot.x, y, plot.x + plot.width, y, 0.5, {report::kLight.rule});
        pen.write(pen.lay(report::axisText(level, kPage),
                          {kSmall, Face::Words, Tone::Pencil, Side::Right}, plot.x - left - 5),
                  left, y - kSmall * 0.62);
    }
    for (const auto& day : frame.scale.days(kMostDays)) {
        pen.write(pen.lay(report::dayMonthText(day),
                          {kSmall, Face::Words, Tone::Pencil, Side::Middle}, 50),
                  frame.x(day) - 25, plot.y + plot.height + 3);
    }
}

}  // namespace

bool hasCurve(const Curve& curve) {
    return report::chartScale(curve.points, kMostLevels).has_value();
}

void drawCurve(Pen& pen, const Curve& curve, const Place& place) {
    const auto scale = report::chartScale(curve.points, kMostLevels);
    if (!scale) {
        return;
    }
    double widest = 0;
    for (const auto& level : scale->levels()) {
        widest = std::max(widest, pen.lay(report::axisText(level, kPage), {kSmall}, 0).width());
    }
    const double left = widest + 7;
    const Frame frame{
        *scale,
        {place.x + left, place.y + 5, place.width - left - kLabelRoom, place.height - kFoot - 5}};
    drawGrid(pen, frame, place.x);
    const Place& plot = frame.plot;
    if (curve.today >= scale->first && curve.today <= scale->last) {
        const double x = frame.x(curve.today);
        pen.line(x, plot.y, x, plot.y + plot.height, 0.7, {report::kLight.pencil}, true);
        pen.write(pen.lay("today", {kSmall, Face::Words, Tone::Pencil, Side::Right}, 40), x - 43,
                  plot.y + plot.height - 12);
    }
    for (const auto& line : linesOf(curve, frame)) {
        pen.path(line.places, line.thick, line.colour, line.isDashed);
        pen.write(
            pen.layLine(line.label, {8.5, line.thick > 2 ? Face::Bold : Face::Words, Tone::Ink},
                        kLabelRoom - 8),
            plot.x + plot.width + 8, line.labelY - 6);
    }
}

void drawLevel(Pen& pen, const report::Level& level, const Place& place) {
    const auto end = static_cast<double>(level.end.minor());
    const auto across = [&](Money money) {
        const double share =
            end > 0 ? std::clamp(static_cast<double>(money.minor()) / end, -1.0, 1.0) : 0.0;
        return place.x + place.width * (0.5 + 0.5 * share);
    };
    const double round = place.height / 2;
    pen.fill(place.x, place.y, place.width, place.height, {report::kLight.plaster}, round);
    pen.frame(place.x, place.y, place.width, place.height, 0.7, {report::kLight.pencil}, round);
    constexpr double kBubble = 40;
    const double middle = std::clamp(across(level.over), place.x + kBubble / 2 + 2,
                                     place.x + place.width - kBubble / 2 - 2);
    const double height = place.height - 6;
    pen.fill(middle - kBubble / 2, place.y + 3, kBubble, height, {"#FFFFFF"}, height / 2);
    pen.frame(middle - kBubble / 2, place.y + 3, kBubble, height, 0.9, {report::kLight.moss},
              height / 2);
    for (const Money at : {-level.hairline, level.hairline}) {
        pen.line(across(at), place.y, across(at), place.y + place.height, 1.2,
                 {report::kLight.ink});
    }
}

void drawTape(Pen& pen, const Tape& tape, const Place& place) {
    const auto share = [](Percent percent) {
        return std::clamp(static_cast<double>(percent.basisPoints()) / 10'000, 0.0, 1.0);
    };
    const double base = place.y + place.height;
    pen.line(place.x, base, place.x + place.width, base, 0.5, {report::kLight.pencil});
    for (const double quarter : {0.0, 0.25, 0.5, 0.75, 1.0}) {
        const double x = place.x + quarter * place.width;
        pen.line(x, base - 4, x, base, 0.5, {report::kLight.pencil});
    }
    const double done = share(tape.done);
    if (done > 0) {
        pen.fill(place.x, base - 5, place.width * done, 4, {report::kLight.moss});
    }
    if (tape.planned) {
        const double x = place.x + share(*tape.planned) * place.width;
        pen.line(x, base - 8, x, base + 1, 1.6, {report::kLight.ink});
    }
}

}  // namespace ledgerboard::paper
