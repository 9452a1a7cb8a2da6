#include "core/report/letter_art.h"

#include <algorithm>
#include <cmath>

#include "core/model/check.h"
#include "core/report/chart_scale.h"
#include "core/report/money_text.h"
#include "core/report/plain_text.h"

namespace ledgerboard::report {

namespace {

using model::Date;
using model::Money;
using model::Percent;

// The place, 0 to last, of a share of the way; shares outside 0 to 1 are put at that end.
std::size_t placeOf(double share, std::size_t last) {
    return static_cast<std::size_t>(
        std::lround(std::clamp(share, 0.0, 1.0) * static_cast<double>(last)));
}

std::string joined(const std::vector<std::string>& cells) {
    std::string line;
    for (const auto& cell : cells) {
        line += cell;
    }
    while (!line.empty() && line.back() == ' ') {
        line.pop_back();
    }
    return line;
}

// What a line of the curve is worth on a day, between its points; empty outside them.
std::optional<Money> worthOn(const std::vector<CurvePoint>& curve,
                             std::optional<Money> CurvePoint::*figure, Date day) {
    const CurvePoint* before = nullptr;
    for (const auto& point : curve) {
        const auto& money = point.*figure;
        if (!money) {
            continue;
        }
        if (point.on == day) {
            return money;
        }
        if (point.on > day) {
            if (before == nullptr) {
                return std::nullopt;
            }
            const Money from = *(before->*figure);
            const model::Wide rise = model::Wide{money->minor()} - from.minor();
            return from + model::roundedMoney(rise * (day - before->on), point.on - before->on);
        }
        before = &point;
    }
    return std::nullopt;
}

// The letters that want to stand in each place of the plot; lines that meet take turns.
using Grid = std::vector<std::vector<std::vector<std::string>>>;

void drawLine(const WeekPage& page, const ChartScale& scale,
              std::optional<Money> CurvePoint::*figure, const std::string& letter, Grid& grid) {
    const std::size_t lastColumn = grid.front().size() - 1;
    const std::size_t lastRow = grid.size() - 1;
    const int span = scale.last - scale.first;
    for (std::size_t column = 0; column <= lastColumn; ++column) {
        const double share = static_cast<double>(column) / static_cast<double>(lastColumn);
        const Date day = scale.first + static_cast<int>(std::lround(share * span));
        if (const auto worth = worthOn(page.curve, figure, day)) {
            grid[lastRow - placeOf(scale.up(*worth), lastRow)][column].push_back(letter);
        }
    }
}

// One row of the plot, with the line of today where nothing else stands.
std::string plotRow(const std::vector<std::vector<std::string>>& row,
                    std::optional<std::size_t> today, const std::string& todayLetter) {
    std::vector<std::string> cells;
    for (std::size_t column = 0; column < row.size(); ++column) {
        const auto& letters = row[column];
        cells.push_back(!letters.empty()  ? letters[column % letters.size()]
                        : column == today ? todayLetter
                                          : " ");
    }
    return joined(cells);
}

// The dates below the curve, each where it belongs; one that would touch the last is left out.
std::string dayLine(const ChartScale& scale, std::size_t margin, std::size_t plot) {
    std::string line;
    for (const Date day : scale.days(std::max(2, static_cast<int>(plot / 9)))) {
        const std::size_t at = margin + placeOf(scale.across(day), plot - 1);
        const std::string text = dayMonthText(day);
        const std::size_t start = std::min(at, margin + plot - text.size());
        if (line.empty() || start >= line.size() + 2) {
            line = padded(line, start) + text;
        }
    }
    return line;
}

}  // namespace

std::vector<std::string> levelLines(const Level& level, std::size_t columns, Script script) {
    model::require(columns >= 12, "a level is 12 columns wide at least");
    const bool isAscii = script == Script::Ascii;
    const std::size_t inside = columns - 2;
    const auto end = static_cast<double>(level.end.minor());
    auto place = [&](Money money) {
        const double share = end > 0 ? static_cast<double>(money.minor()) / end : 0.0;
        return placeOf((share + 1) / 2, inside - 1);
    };
    const std::string hairline = isAscii ? "|" : "│";
    std::vector<std::string> middle(inside, " ");
    std::vector<std::string> edge(inside, isAscii ? "-" : "─");
    std::vector<std::string> top = edge;
    for (const Money at : {-level.hairline, level.hairline}) {
        middle[place(at)] = hairline;
        top[place(at)] = isAscii ? "-" : "┬";
        edge[place(at)] = isAscii ? "-" : "┴";
    }
    // Four letters of bubble, inside the vial whatever the figure.
    const std::size_t centre = std::clamp<std::size_t>(place(level.over), 2, inside - 3);
    middle[centre - 2] = "(";
    middle[centre - 1] = isAscii ? "_" : " ";
    middle[centre] = isAscii ? "_" : " ";
    middle[centre + 1] = ")";
    if (isAscii) {
        return {"[" + joined(middle) + std::string(inside - joined(middle).size(), ' ') + "]"};
    }
    auto framed = [](const char* left, const std::vector<std::string>& cells, const char* right) {
        std::string line = left;
        for (const auto& cell : cells) {
            line += cell;
        }
        return line + right;
    };
    return {framed("╭", top, "╮"), framed("│", middle, "│"), framed("╰", edge, "╯")};
}

std::string tapeLine(Percent done, std::optional<Percent> planned, std::size_t columns,
                     Script script) {
    model::require(columns >= 4, "a tape is 4 columns wide at least");
    const bool isAscii = script == Script::Ascii;
    auto share = [](Percent percent) {
        return static_cast<double>(percent.basisPoints()) / 10'000.0;
    };
    const std::size_t blade = placeOf(share(done), columns);
    std::vector<std::string> cells(columns, isAscii ? "-" : "─");
    std::fill_n(cells.begin(), blade, isAscii ? "=" : "━");
    if (planned) {
        cells[placeOf(share(*planned), columns - 1)] = isAscii ? "|" : "┃";
    }
    return joined(cells);
}

CurveLetters curveLetters(Script script) {
    return script == Script::Ascii ? CurveLetters{".", "o", "+", "|"}
                                   : CurveLetters{"·", "●", "+", "│"};
}

std::vector<std::string> curveLines(const WeekPage& page, std::size_t columns, std::size_t rows,
                                    Script script) {
    model::require(columns >= 40 && rows >= 5, "a curve is 40 by 5 letters at least");
    const auto scale = chartScale(page.curve, 5);
    if (!scale) {
        return {};
    }
    std::size_t margin = 0;
    for (const Money level : scale->levels()) {
        margin = std::max(margin, columnsOf(axisText(level, script)));
    }
    margin += 2;  // a space and the axis
    const std::size_t plot = columns - margin;
    Grid grid(rows, std::vector<std::vector<std::string>>(plot));
    const CurveLetters letters = curveLetters(script);
    std::optional<std::size_t> today;
    if (page.today >= scale->first && page.today <= scale->last) {
        today = placeOf(scale->across(page.today), plot - 1);
    }
    drawLine(page, *scale, &CurvePoint::planned, letters.planned, grid);
    drawLine(page, *scale, &CurvePoint::earned, letters.earned, grid);
    drawLine(page, *scale, &CurvePoint::spent, letters.spent, grid);

    std::vector<std::string> labels(rows);
    for (const Money level : scale->levels()) {
        labels[rows - 1 - placeOf(scale->up(level), rows - 1)] = axisText(level, script);
    }
    std::vector<std::string> lines;
    for (std::size_t row = 0; row < rows; ++row) {
        const bool isTick = !labels[row].empty();
        lines.push_back(paddedLeft(labels[row], margin - 2) + " " +
                        (script == Script::Ascii ? (isTick ? "+" : "|") : (isTick ? "┤" : "│")) +
                        plotRow(grid[row], today, letters.today));
    }
    std::string axis = std::string(margin - 1, ' ') + (script == Script::Ascii ? "+" : "└");
    for (std::size_t k = 0; k < plot; ++k) {
        axis += script == Script::Ascii ? "-" : "─";
    }
    lines.push_back(axis);
    lines.push_back(dayLine(*scale, margin, plot));
    return lines;
}

}  // namespace ledgerboard::report
