#include "core/report/week_svg.h"

#include <algorithm>
#include <vector>

#include "core/report/chart_scale.h"
#include "core/report/html_text.h"
#include "core/report/money_text.h"
#include "core/report/week_words.h"

namespace ledgerboard::report {

namespace {

using model::Money;
using model::Percent;

constexpr Script kPage = Script::Unicode;

// The picture of the curve, in its own units; one is a pixel on a wide screen.
constexpr double kWidth = 760;
constexpr double kHeight = 320;
constexpr double kRight = 152;  // labels of the lines
constexpr double kTop = 12;
constexpr double kBottom = 36;  // dates
constexpr double kLabelGap = 20;

std::string number(double value) {
    return svgNumber(value);
}

double shareOf(Percent percent) {
    return std::clamp(static_cast<double>(percent.basisPoints()) / 100.0, 0.0, 100.0);
}

struct Spot {
    double x = 0;
    double y = 0;
};

struct Line {
    std::string name;
    std::vector<Spot> spots;
    Money last;
};

// The scale laid out in the picture.
struct Frame {
    ChartScale scale;
    double left = 0;  // of the plot; the labels of the levels stand before it

    [[nodiscard]] double x(model::Date day) const {
        return left + scale.across(day) * (kWidth - left - kRight);
    }

    [[nodiscard]] double y(Money figure) const {
        return kHeight - kBottom - scale.up(figure) * (kHeight - kTop - kBottom);
    }
};

Frame frameOf(const ChartScale& scale) {
    std::size_t widest = 0;
    for (const Money level : scale.levels()) {
        widest = std::max(widest, columnsOf(axisText(level, kPage)));
    }
    return {scale, 12 + 9 * static_cast<double>(widest)};
}

Line lineOf(const WeekPage& page, const Frame& frame, const char* name,
            std::optional<Money> CurvePoint::*figure) {
    Line line{name, {}, Money{}};
    for (const auto& point : page.curve) {
        if (const auto& money = point.*figure) {
            line.spots.push_back({frame.x(point.on), frame.y(*money)});
            line.last = *money;
        }
    }
    return line;
}

std::string pathOf(const Line& line) {
    std::string path;
    for (const auto& spot : line.spots) {
        path += (path.empty() ? "M" : " L") + number(spot.x) + " " + number(spot.y);
    }
    return "<path class=\"" + line.name + "\" d=\"" + path + "\"/>";
}

std::string gridOf(const Frame& frame) {
    std::string out;
    for (const auto& level : frame.scale.levels()) {
        const std::string y = number(frame.y(level));
        out += "<line class=\"grid\" x1=\"" + number(frame.left) + "\" x2=\"" +
               number(kWidth - kRight) + "\" y1=\"" + y + "\" y2=\"" + y + "\"/>" +
               "<text class=\"axis\" text-anchor=\"end\" dy=\"4\" x=\"" + number(frame.left - 8) +
               "\" y=\"" + y + "\">" + axisText(level, kPage) + "</text>";
    }
    for (const auto& day : frame.scale.days(8)) {
        const double x = frame.x(day);
        out += "<line class=\"grid\" x1=\"" + number(x) + "\" x2=\"" + number(x) + "\" y1=\"" +
               number(kHeight - kBottom) + "\" y2=\"" + number(kHeight - kBottom + 5) + "\"/>" +
               "<text class=\"axis\" text-anchor=\"middle\" x=\"" + number(x) + "\" y=\"" +
               number(kHeight - kBottom + 20) + "\">" + dayMonthText(day) + "</text>";
    }
    return out;
}

std::string todayOf(const WeekPage& page, const Frame& frame) {
    if (page.today < frame.scale.first || page.today > frame.scale.last) {
        return {};
    }
    const double x = frame.x(page.today);
    // Beside the line, on the side with more room, at the foot where lines are rare.
    const bool atLeft = frame.scale.across(page.today) > 0.5;
    return "<line class=\"today\" x1=\"" + number(x) + "\" x2=\"" + number(x) + "\" y1=\"" +
           number(kTop) + "\" y2=\"" + number(kHeight - kBottom) +
           "\"/><text class=\"axis halo\" " + "text-anchor=\"" + (atLeft ? "end" : "start") +
           "\" x=\"" + number(atLeft ? x - 6 : x + 6) + "\" y=\"" + number(kHeight - kBottom - 8) +
           "\">today</text>";
}

// The labels at the right, in order of height, pushed apart until none touches another.
std::string labelsOf(std::vector<Line> lines) {
    std::stable_sort(lines.begin(), lines.end(), [](const Line& a, const Line& b) {
        return a.spots.back().y < b.spots.back().y;
    });
    std::vector<double> heights;
    double above = kTop - kLabelGap;
    for (const auto& line : lines) {
        above = std::max(line.spots.back().y, above + kLabelGap);
        heights.push_back(above);
    }
    double below = kHeight - kBottom + kLabelGap;
    for (std::size_t k = heights.size(); k-- > 0;) {
        below = std::min(heights[k], below - kLabelGap);
        heights[k] = below;
    }
    std::string out;
    const double labelX = kWidth - kRight + 14;
    for (std::size_t k = 0; k < lines.size(); ++k) {
        const Spot end = lines[k].spots.back();
        const std::string exact = wholeText(lines[k].last, kPage);
        out += "<circle class=\"end " + lines[k].name + "\" cx=\"" + number(end.x) + "\" cy=\"" +
               number(end.y) + "\" r=\"3.5\"/><line class=\"leader\" x1=\"" + number(end.x + 6) +
               "\" y1=\"" + number(end.y) + "\" x2=\"" + number(labelX - 4) + "\" y2=\"" +
               number(heights[k]) + "\"/><text class=\"label " + lines[k].name +
               "\" dy=\"5\" x=\"" + number(labelX) + "\" y=\"" + number(heights[k]) + "\">" +
               lines[k].name + " " + (exact.size() <= 9 ? exact : axisText(lines[k].last, kPage)) +
               "</text>";
    }
    return out;
}

// The drawing in words.
std::string curveLabel(const std::vector<Line>& lines) {
    std::string text = "Money over time.";
    for (const auto& line : lines) {
        text += " " + line.name + (line.name == "planned" ? " in all " : " so far ") +
                wholeText(line.last, kPage) + ".";
    }
    return text;
}

}  // namespace

std::string levelSvg(const Level& level) {
    const auto end = static_cast<double>(level.end.minor());
    auto across = [end](Money money) {
        const double share = end > 0 ? static_cast<double>(money.minor()) / end : 0.0;
        return 50 + 50 * std::clamp(share, -1.0, 1.0);
    };
    std::string out =
        "<svg class=\"level\" role=\"img\" width=\"100%\" height=\"30\" aria-label=\"" +
        htmlText("Level: " + levelText(level, kPage)) +
        "\"><rect class=\"vial\" x=\"1\" y=\"1\" width=\"99.8%\" height=\"28\" "
        "rx=\"14\"/>";
    const double bubble = std::clamp(across(level.over), 3.5, 96.5);
    out += "<svg x=\"" + number(bubble) +
           "%\" y=\"15\" overflow=\"visible\"><rect class=\"bubble\" x=\"-29\" y=\"-10\" "
           "width=\"58\" height=\"20\" rx=\"10\"/><rect class=\"glint\" x=\"-19\" y=\"-6\" "
           "width=\"26\" height=\"4\" rx=\"2\"/></svg>";
    for (const Money at : {-level.hairline, level.hairline}) {
        const std::string x = number(across(at)) + "%";
        out += "<line class=\"hairline\" x1=\"" + x + "\" x2=\"" + x + "\" y1=\"1\" y2=\"29\"/>";
    }
    return out + "</svg>";
}

std::string tapeSvg(Percent done, std::optional<Percent> planned) {
    std::string label = doneText(done, kPage);
    if (planned) {
        label += ", the plan says " + percentText(*planned, kPage);
    }
    std::string out =
        "<svg class=\"tape\" role=\"img\" width=\"100%\" height=\"18\" aria-label=\"" +
        htmlText(label) + "\"><line class=\"rule\" x1=\"0\" x2=\"100%\" y1=\"13.5\" y2=\"13.5\"/>";
    for (const char* quarter : {"0.5", "25%", "50%", "75%", "99.5%"}) {
        out += std::string("<line class=\"tick\" x1=\"") + quarter + "\" x2=\"" + quarter +
               "\" y1=\"8\" y2=\"13\"/>";
    }
    out += "<rect class=\"blade\" x=\"0\" y=\"7\" width=\"" + number(shareOf(done)) +
           "%\" height=\"6\"/>";
    if (planned) {
        out += "<svg x=\"" + number(std::clamp(shareOf(*planned), 1.0, 99.0)) +
               "%\" overflow=\"visible\"><rect class=\"notch\" x=\"-1.5\" y=\"2\" width=\"3\" "
               "height=\"15\"/></svg>";
    }
    return out + "</svg>";
}

std::string curveSvg(const WeekPage& page) {
    const auto scale = chartScale(page.curve, 5);
    if (!scale) {
        return {};
    }
    const Frame frame = frameOf(*scale);
    std::vector<Line> lines;
    for (auto line : {lineOf(page, frame, "planned", &CurvePoint::planned),
                      lineOf(page, frame, "spent", &CurvePoint::spent),
                      lineOf(page, frame, "earned", &CurvePoint::earned)}) {
        if (!line.spots.empty()) {
            lines.push_back(std::move(line));
        }
    }
    std::string out = "<svg class=\"curve\" role=\"img\" viewBox=\"0 0 " + number(kWidth) + " " +
                      number(kHeight) + "\" aria-label=\"" + htmlText(curveLabel(lines)) + "\">" +
                      gridOf(frame) + todayOf(page, frame);
    for (const auto& line : lines) {
        out += pathOf(line);
    }
    return out + labelsOf(lines) + "</svg>";
}

}  // namespace ledgerboard::report
