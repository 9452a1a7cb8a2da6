#include "desktop/client/sheet_pen.h"

#include <QFontMetricsF>
#include <QTextLayout>

#include "core/report/theme.h"

namespace ledgerboard::desk {

namespace {

constexpr double kLeading = 1.25;

QColor colour(std::string_view token) {
    return QColor(QString::fromLatin1(token.data(), static_cast<qsizetype>(token.size())));
}

}  // namespace

SheetPen::SheetPen(QPdfWriter& writer, QPainter& painter) : writer_(writer), painter_(painter) {
    const double scale = writer.resolution() / 72.0;
    width_ = writer.width() / scale;
    height_ = writer.height() / scale;
    painter_.scale(scale, scale);
    painter_.setRenderHint(QPainter::Antialiasing);
}

QFont SheetPen::font(double size, Face face) {
    QFont font(face == Face::Slab ? QStringLiteral("Roboto Slab") : QStringLiteral("Lato"));
    // The painter is scaled to points, so a pixel of it is one.
    font.setPixelSize(qMax(1, static_cast<int>(size)));
    font.setBold(face == Face::Bold);
    return font;
}

void SheetPen::line(double x, double baseline, double room, const QString& text, double size,
                    Face face, const QColor& tone, bool right) {
    painter_.setFont(font(size, face));
    painter_.setPen(tone);
    const QFontMetricsF metrics(painter_.font());
    const QString shown = metrics.elidedText(text, Qt::ElideRight, room);
    const double left = right ? x + room - metrics.horizontalAdvance(shown) : x;
    painter_.drawText(QPointF(left, baseline), shown);
}

double SheetPen::block(double x, double top, double room, const QString& text, double size,
                       const QColor& tone, int most, Face face) {
    if (text.isEmpty()) {
        return 0;
    }
    painter_.setPen(tone);
    QTextLayout layout(text, font(size, face));
    const double step = size * kLeading;
    layout.beginLayout();
    int lines = 0;
    for (QTextLine line = layout.createLine(); line.isValid() && lines < most;
         line = layout.createLine()) {
        line.setLineWidth(room);
        line.setPosition(QPointF(0, lines * step));
        ++lines;
    }
    layout.endLayout();
    for (int k = 0; k < lines; ++k) {
        layout.lineAt(k).draw(&painter_, QPointF(x, top));
    }
    return lines * step;
}

void SheetPen::hairline(double x, double y, double room) {
    painter_.setPen(QPen(rule(), 0.6));
    painter_.drawLine(QPointF(x, y), QPointF(x + room, y));
}

void SheetPen::nextSide() {
    writer_.newPage();
}

QColor SheetPen::ink() {
    return colour(report::kLight.ink);
}

QColor SheetPen::pencil() {
    return colour(report::kLight.pencil);
}

QColor SheetPen::rule() {
    return colour(report::kLight.rule);
}

QColor SheetPen::slate() {
    return colour(report::kLight.slate);
}

QColor SheetPen::moss() {
    return colour(report::kLight.moss);
}

QColor SheetPen::brick() {
    return colour(report::kLight.brick);
}

QColor SheetPen::plaster() {
    return colour(report::kLight.plaster);
}

}  // namespace ledgerboard::desk
