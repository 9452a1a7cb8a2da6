#include "core/qml/look_plot.h"

#include <cmath>

namespace ledgerboard::qml {

QVariantList Plot::rows() const {
    QVariantList out;
    for (const int stop : data_.listed) {
        if (isStop(stop)) {
            out << QVariant::fromValue(data_.stops.at(stop));
        }
    }
    return out;
}

QVariant Plot::path(int line, double width, double height) const {
    QPolygonF path;
    if (line >= 0 && line < data_.lines.size()) {
        for (const auto& point : data_.lines.at(line).points) {
            path << QPointF(point.x() * width, (1 - point.y()) * height);
        }
    }
    return QVariant::fromValue(path);
}

int Plot::nearest(double across) const {
    int best = -1;
    for (int k = 0; k < stops(); ++k) {
        if (best < 0 || std::abs(data_.stops.at(k).across - across) <
                            std::abs(data_.stops.at(best).across - across)) {
            best = k;
        }
    }
    return best;
}

double Plot::acrossOf(int stop) const {
    return isStop(stop) ? data_.stops.at(stop).across : 0;
}

double Plot::upOf(int stop, int line) const {
    return isStop(stop) && line >= 0 && line < data_.stops.at(stop).ups.size()
               ? data_.stops.at(stop).ups.at(line)
               : -1;
}

QString Plot::whenOf(int stop) const {
    return isStop(stop) ? data_.stops.at(stop).when : QString();
}

QStringList Plot::figuresOf(int stop) const {
    QStringList out;
    if (!isStop(stop)) {
        return out;
    }
    const auto& figures = data_.stops.at(stop).figures;
    for (qsizetype k = 0; k < figures.size() && k < data_.lines.size(); ++k) {
        if (!figures.at(k).isEmpty()) {
            out << data_.lines.at(k).name + QLatin1Char(' ') + figures.at(k);
        }
    }
    return out;
}

}  // namespace ledgerboard::qml
