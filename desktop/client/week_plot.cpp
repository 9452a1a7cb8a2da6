#include "desktop/client/week_plot.h"

#include <algorithm>
#include <array>
#include <numeric>

#include <QCoreApplication>

#include "core/report/chart_scale.h"

#include "desktop/client/said.h"

namespace ledgerboard::desk {

namespace {

using model::Money;
using qml::PlotData;
using qml::PlotLine;
using report::CurvePoint;

constexpr int kLevels = 5;
constexpr int kDays = 9;
constexpr int kAWeek = 7;
// Least distance between two labels, as a share of the height.
constexpr double kLabelGap = 0.075;

struct Wanted {
    std::optional<Money> CurvePoint::*figure;
    int stroke;
    const char* name;
};

constexpr std::array<Wanted, 3> kLines = {
    {{&CurvePoint::planned, PlotLine::Dashed, QT_TRANSLATE_NOOP("WeekPlot", "planned")},
     {&CurvePoint::spent, PlotLine::Solid, QT_TRANSLATE_NOOP("WeekPlot", "spent")},
     {&CurvePoint::earned, PlotLine::Heavy, QT_TRANSLATE_NOOP("WeekPlot", "earned")}}};

QString words(const char* text) {
    return QCoreApplication::translate("WeekPlot", text);
}

// Labels pushed apart, from the top down and then from the bottom up, until none touches another.
void spread(QList<PlotLine>& lines) {
    QList<int> order(lines.size());
    std::iota(order.begin(), order.end(), 0);
    std::stable_sort(order.begin(), order.end(),
                     [&](int a, int b) { return lines[a].endUp > lines[b].endUp; });
    double above = 1 + kLabelGap;
    for (const int k : order) {
        above = std::min(lines[k].endUp, above - kLabelGap);
        lines[k].labelUp = above;
    }
    double below = -kLabelGap;
    for (auto at = order.rbegin(); at != order.rend(); ++at) {
        below = std::max(lines[*at].labelUp, below + kLabelGap);
        lines[*at].labelUp = below;
    }
}

PlotLine lineOf(const report::WeekPage& page, const report::ChartScale& scale,
                const Wanted& wanted) {
    PlotLine line;
    line.name = words(wanted.name);
    line.stroke = wanted.stroke;
    Money last;
    for (const auto& point : page.curve) {
        if (const auto& money = point.*wanted.figure) {
            line.points << QPointF(scale.across(point.on), scale.up(*money));
            last = *money;
        }
    }
    if (!line.points.isEmpty()) {
        line.endAcross = line.points.last().x();
        line.endUp = line.points.last().y();
        line.label = line.name + QLatin1Char(' ') + Said::money(last);
    }
    return line;
}

}  // namespace

PlotData weekPlotOf(const report::WeekPage& page) {
    const auto scale = report::chartScale(page.curve, kLevels);
    PlotData data;
    if (!scale) {
        return data;
    }
    std::vector<Wanted> drawn;
    for (const auto& wanted : kLines) {
        PlotLine line = lineOf(page, *scale, wanted);
        if (!line.points.isEmpty()) {
            data.lines << line;
            drawn.push_back(wanted);
        }
    }
    spread(data.lines);
    for (const auto& level : scale->levels()) {
        data.levels << qml::PlotTick{scale->up(level), Said::axis(level)};
    }
    for (const auto& day : scale->days(kDays)) {
        data.days << qml::PlotTick{scale->across(day), Said::dayMonth(day)};
    }
    for (const auto& point : page.curve) {
        qml::PlotStop stop;
        stop.across = scale->across(point.on);
        stop.when = Said::day(point.on, page.today);
        for (const auto& wanted : drawn) {
            const auto& money = point.*(wanted.figure);
            stop.figures << (money ? Said::money(*money) : QString());
            stop.ups << (money ? scale->up(*money) : -1.0);
        }
        if ((page.today - point.on) % kAWeek == 0 || point.on == page.curve.back().on) {
            data.listed << static_cast<int>(data.stops.size());
        }
        data.stops << stop;
    }
    if (page.today >= scale->first && page.today <= scale->last) {
        data.today = scale->across(page.today);
        data.todayText = words(QT_TRANSLATE_NOOP("WeekPlot", "today"));
    }
    QStringList labels;
    for (const auto& line : data.lines) {
        labels << line.label;
    }
    data.spoken = words(QT_TRANSLATE_NOOP("WeekPlot", "Money over time: ")) +
                  labels.join(QStringLiteral(", "));
    return data;
}

}  // namespace ledgerboard::desk
