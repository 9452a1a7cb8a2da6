#include "desktop/client/frontier_plot.h"

#include <algorithm>

#include <QCoreApplication>

#include "core/report/choices_text.h"

#include "desktop/client/said.h"

namespace ledgerboard::desk {

namespace {

using compute::SetChoice;
using model::Money;

constexpr int kSteps = 5;
constexpr int kLongest = 60;

QString words(const char* text) {
    return QCoreApplication::translate("FrontierPlot", text);
}

// Between which round figures an axis runs.
struct Axis {
    std::int64_t low = 0;  // minor units
    std::int64_t high = 0;
    std::int64_t step = 0;

    [[nodiscard]] double share(Money money) const {
        return static_cast<double>(money.minor() - low) / static_cast<double>(high - low);
    }
};

// Steps of 1, 2 or 5 times a power of ten of whole units; 0 is on it.
Axis axisOf(Money least, Money most) {
    const std::int64_t low = std::min<std::int64_t>(0, least.minor());
    const std::int64_t high = std::max<std::int64_t>(100, most.minor());
    std::int64_t step = 100;
    for (int turn = 0; (high - low) / step >= kSteps; ++turn) {
        step = turn % 3 == 1 ? step / 2 * 5 : step * 2;
    }
    const auto down = [step](std::int64_t value) {
        return value >= 0 ? value / step * step : -((-value + step - 1) / step * step);
    };
    return {down(low), -down(-high), step};
}

QList<qml::PlotTick> ticksOf(const Axis& axis) {
    QList<qml::PlotTick> ticks;
    for (std::int64_t at = axis.low; at <= axis.high; at += axis.step) {
        const Money money = Money::fromMinor(at);
        ticks << qml::PlotTick{axis.share(money), Said::axis(money)};
    }
    return ticks;
}

QString namesOf(const model::JobRows& rows, const compute::Choices& choices, const SetChoice& set) {
    QStringList names;
    for (std::size_t k = 0; k < set.options.size(); ++k) {
        if (set.options[k]) {
            const auto& option = choices.alternates[k].options[*set.options[k]];
            names << Said::text(report::optionLabel(rows.options[option.option]));
        }
    }
    const QString text = names.join(QStringLiteral("; "));
    return text.size() > kLongest ? text.left(kLongest) + QStringLiteral("\u2026") : text;
}

qml::PlotStop stopOf(const model::JobRows& rows, const compute::Choices& choices,
                     const SetChoice& set, const Axis& across, const Axis& up, model::Date today) {
    qml::PlotStop stop;
    stop.across = across.share(set.cost);
    stop.when = Said::money(set.cost) + QStringLiteral(": ") + namesOf(rows, choices, set);
    QString figure = Said::money(set.net);
    if (set.finishOn) {
        figure += words(QT_TRANSLATE_NOOP("FrontierPlot", ", the work ends %1"))
                      .arg(Said::day(*set.finishOn, today));
    }
    stop.figures << figure;
    stop.ups << up.share(set.net);
    return stop;
}

}  // namespace

qml::PlotData frontierPlotOf(const model::JobRows& rows, const compute::Choices& choices,
                             model::Date today) {
    qml::PlotData data;
    std::vector<const SetChoice*> sets;
    for (const auto& set : choices.frontier) {
        sets.push_back(&set);
    }
    if (sets.size() < 2) {
        return data;
    }
    std::stable_sort(sets.begin(), sets.end(),
                     [](const SetChoice* a, const SetChoice* b) { return a->cost < b->cost; });
    const auto [least, most] =
        std::minmax_element(sets.begin(), sets.end(),
                            [](const SetChoice* a, const SetChoice* b) { return a->net < b->net; });
    const Axis across = axisOf(sets.front()->cost, sets.back()->cost);
    const Axis up = axisOf((*least)->net, (*most)->net);
    qml::PlotLine line;
    line.name = words(QT_TRANSLATE_NOOP("FrontierPlot", "earns"));
    line.stroke = qml::PlotLine::Solid;
    Money best = sets.front()->net;
    for (const SetChoice* set : sets) {
        line.points << QPointF(across.share(set->cost), up.share(best));
        best = std::max(best, set->net);
        line.points << QPointF(across.share(set->cost), up.share(best));
        data.listed << static_cast<int>(data.stops.size());
        data.stops << stopOf(rows, choices, *set, across, up, today);
    }
    line.endAcross = line.points.last().x();
    line.endUp = line.labelUp = line.points.last().y();
    line.label = words(QT_TRANSLATE_NOOP("FrontierPlot", "at most %1")).arg(Said::money(best));
    data.lines << line;
    data.levels = ticksOf(up);
    data.days = ticksOf(across);
    data.marksStops = true;
    const double now = across.share(choices.now.cost);
    if (now >= 0 && now <= 1) {
        data.today = now;
        data.todayText = words(QT_TRANSLATE_NOOP("FrontierPlot", "carried now"));
    }
    data.spoken = words(QT_TRANSLATE_NOOP("FrontierPlot", "What each cost earns: ")) + line.label;
    return data;
}

}  // namespace ledgerboard::desk
