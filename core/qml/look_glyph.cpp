#include "core/qml/look_glyph.h"

#include <array>
#include <utility>

#include <QPainter>
#include <QPen>
#include <QStringList>

namespace ledgerboard::qml {

namespace {

constexpr int kSquare = 24;

// Words with a space between: "M x y" lifts the pencil, "L x y" draws to there, "Z" closes, "O x y
// r" is a circle.
constexpr std::array<std::pair<const char*, const char*>, 22> kDrawings = {{
    {"photo", "M 3 7 L 7 7 L 9 4 L 15 4 L 17 7 L 21 7 L 21 20 L 3 20 Z O 12 13 4"},
    {"mark",
     "M 2 14 L 2 20 L 22 20 L 22 14 M 6 20 L 6 17 M 10 20 L 10 16 M 14 20 L 14 17 "
     "M 18 20 L 18 16 M 8 8 L 11 11 L 18 3"},
    {"punch", "M 6 3 L 18 3 L 18 15 L 12 21 L 6 15 Z M 9 9 L 15 9"},
    {"receipt",
     "M 5 3 L 19 3 L 19 21 L 16.7 19 L 14.3 21 L 12 19 L 9.7 21 L 7.3 19 L 5 21 Z "
     "M 9 8 L 15 8 M 9 12 L 15 12"},
    {"back", "M 14 5 L 7 12 L 14 19"},
    {"close", "M 6 6 L 18 18 M 18 6 L 6 18"},
    {"warning", "M 12 3.5 L 22 20.5 L 2 20.5 Z M 12 10 L 12 15 M 12 17.4 L 12 18"},
    {"check", "M 4 12.5 L 9.5 18 L 20 6.5"},
    {"less", "M 5 12 L 19 12"},
    {"more", "M 5 12 L 19 12 M 12 5 L 12 19"},
    {"rub", "M 9 5 L 21 5 L 21 19 L 9 19 L 3 12 Z M 12 9 L 18 15 M 18 9 L 12 15"},
    {"note", "M 5 4 L 19 4 L 19 20 L 5 20 Z M 8 9 L 16 9 M 8 13 L 16 13"},
    {"house",
     "M 3 11.5 L 12 4 L 21 11.5 M 6 10 L 6 20 L 18 20 L 18 10 M 10 20 L 10 14 L 14 14 "
     "L 14 20"},
    {"people",
     "O 9 8 3.5 M 2.5 20 L 4 14.5 L 14 14.5 L 15.5 20 M 16 5 L 18.5 6.5 L 18.5 9.5 "
     "L 16 11 M 17.5 14.5 L 20 14.5 L 21.5 20"},
    {"truck",
     "M 2 6 L 14 6 L 14 17 L 2 17 Z M 14 10 L 19 10 L 22 13.5 L 22 17 L 14 17 "
     "O 6.5 18 2.2 O 17.5 18 2.2"},
    {"found", "O 10.5 10.5 6.5 M 15.5 15.5 L 21 21"},
    {"walk", "O 13 4.5 2 M 12 8 L 9 13 L 13 15 L 12 21 M 9 13 L 6 21 M 12 8 L 16 12 L 19 12"},
    {"speak",
     "M 9 4 L 15 4 L 15 13 L 9 13 Z M 5.5 11 L 5.5 13 L 8.5 16.5 L 15.5 16.5 L 18.5 13 L 18.5 11 "
     "M 12 16.5 L 12 21 M 8.5 21 L 15.5 21"},
    {"folder", "M 3 5 L 10 5 L 12 8 L 21 8 L 21 19 L 3 19 Z"},
    {"again",
     "M 19 12 L 16 17.5 L 9.5 18.5 L 5 14 L 6 8 L 11.5 5 L 17 7.5 M 17.5 3 L 17 7.5 "
     "L 12.5 7.5"},
    {"sun", "O 12 12 4.5 M 12 2 L 12 4.5 M 12 19.5 L 12 22 M 2 12 L 4.5 12 M 19.5 12 L 22 12"},
    {"devices", "M 3 4 L 15 4 L 15 15 L 3 15 Z M 17 9 L 22 9 L 22 20 L 17 20 Z M 6 19 L 13 19"},
}};

QPainterPath read(const QString& drawing) {
    QPainterPath path;
    const QStringList words = drawing.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    for (qsizetype k = 0; k < words.size();) {
        const QChar what = words.at(k).at(0);
        const auto number = [&](qsizetype at) { return words.at(k + at).toDouble(); };
        if (what == QLatin1Char('Z')) {
            path.closeSubpath();
            k += 1;
        } else if (what == QLatin1Char('O')) {
            path.addEllipse(QPointF(number(1), number(2)), number(3), number(3));
            k += 4;
        } else {
            const QPointF point(number(1), number(2));
            what == QLatin1Char('M') ? path.moveTo(point) : path.lineTo(point);
            k += 3;
        }
    }
    return path;
}

}  // namespace

QPainterPath glyphPath(const QString& name) {
    for (const auto& [known, drawing] : kDrawings) {
        if (name == QLatin1String(known)) {
            return read(QString::fromLatin1(drawing));
        }
    }
    return {};
}

Glyph::Glyph(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setSize(kSquare);
    setAntialiasing(true);
}

void Glyph::setSize(int size) {
    if (size_ != size) {
        size_ = size;
        setImplicitSize(size, size);
        update();
        emit changed();
    }
}

void Glyph::paint(QPainter* painter) {
    const qreal side = qMin(width(), height());
    painter->scale(side / kSquare, side / kSquare);
    QPen pen(tone_, heavy_ ? 2.4 : 1.7);
    pen.setCapStyle(Qt::RoundCap);
    pen.setJoinStyle(Qt::RoundJoin);
    painter->setPen(pen);
    painter->drawPath(glyphPath(name_));
}

}  // namespace ledgerboard::qml
