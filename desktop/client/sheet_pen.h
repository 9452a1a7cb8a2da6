// What is written on a sheet of paper with: text in columns, hairlines, a place that moves down.
//
// Units: points, 72 to an inch, from the top left of the printed area. Threads: the UI's.
#pragma once

#include <QColor>
#include <QFont>
#include <QPainter>
#include <QPdfWriter>
#include <QString>

namespace ledgerboard::desk {

class SheetPen {
  public:
    enum class Face { Words, Bold, Slab };

    // Requires: both outlive it, and the painter paints on the writer.
    SheetPen(QPdfWriter& writer, QPainter& painter);

    [[nodiscard]] double width() const { return width_; }

    [[nodiscard]] double height() const { return height_; }

    [[nodiscard]] QPainter& painter() { return painter_; }

    // One line, elided to `room`; right-aligned ends at x + room.
    void line(double x, double baseline, double room, const QString& text, double size,
              Face face = Face::Words, const QColor& tone = ink(), bool right = false);
    // Text wrapped to `room`, at most `most` lines; returns the height it took.
    double block(double x, double top, double room, const QString& text, double size,
                 const QColor& tone = ink(), int most = 4, Face face = Face::Words);
    void hairline(double x, double y, double room);
    void nextSide();

    [[nodiscard]] static QColor ink();
    [[nodiscard]] static QColor pencil();
    [[nodiscard]] static QColor rule();
    [[nodiscard]] static QColor slate();
    [[nodiscard]] static QColor moss();
    [[nodiscard]] static QColor brick();
    [[nodiscard]] static QColor plaster();

    [[nodiscard]] static QFont font(double size, Face face);

  private:
    QPdfWriter& writer_;
    QPainter& painter_;
    double width_ = 0;
    double height_ = 0;
};

}  // namespace ledgerboard::desk
