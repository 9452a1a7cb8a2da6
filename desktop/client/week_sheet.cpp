#include "desktop/client/week_sheet.h"

#include <algorithm>

#include <QCoreApplication>
#include <QFile>
#include <QImage>
#include <QPageLayout>
#include <QPageSize>
#include <QPainterPath>

#include "core/report/theme.h"
#include "core/report/week_words.h"

#include "desktop/client/said.h"
#include "desktop/client/sheet_pen.h"
#include "desktop/client/week_plot.h"
#include "desktop/client/week_words.h"

namespace ledgerboard::desk {

namespace {

using Face = SheetPen::Face;
using model::Money;
using report::WeekPage;

constexpr int kDotsAnInch = 300;
constexpr double kMarginMm = 13;
constexpr double kGap = 14;
constexpr double kRow = 15;
constexpr double kSmall = 8;
constexpr double kBody = 9;
constexpr double kHead = 11;
constexpr std::size_t kMostRooms = 16;
constexpr std::size_t kMostToDos = 12;
constexpr std::size_t kMostLines = 9;

QString words(const char* text) {
    return QCoreApplication::translate("WeekSheet", text);
}

class Drawn {
  public:
    Drawn(const WeekPage& page, SheetPen& pen) : page_(page), pen_(pen) {}

    void draw() {
        head();
        level();
        figures();
        curveAndMovers();
        trades();
        pen_.nextSide();
        y_ = 0;
        roomsAndMonday();
        nextAndPapers();
        photos();
        foot();
    }

  private:
    void title(double x, double room, const QString& text) {
        pen_.line(x, y_ + kHead, room, text, kHead, Face::Slab);
    }

    void head() {
        pen_.line(0, y_ + 10, pen_.width(), Said::text(page_.job), 10, Face::Words,
                  SheetPen::pencil());
        pen_.line(0, y_ + 32, pen_.width() * 0.66, WeekWords::title(page_), 19, Face::Slab);
        pen_.line(pen_.width() * 0.6, y_ + 32, pen_.width() * 0.4, WeekWords::when(page_), kSmall,
                  Face::Words, SheetPen::pencil(), true);
        y_ += 44;
    }

    void level() {
        if (!page_.level || page_.level->end <= Money{}) {
            return;
        }
        constexpr double kHeight = 18;
        const auto end = static_cast<double>(page_.level->end.minor());
        const double middle = pen_.width() / 2;
        const double reach = middle - 24;
        const double lean =
            std::clamp(static_cast<double>(page_.level->over.minor()) / end, -1.0, 1.0);
        const double hair = static_cast<double>(page_.level->hairline.minor()) / end;
        QPainter& painter = pen_.painter();
        painter.setPen(QPen(SheetPen::pencil(), 0.8));
        painter.setBrush(SheetPen::plaster());
        painter.drawRoundedRect(QRectF(0, y_, pen_.width(), kHeight), kHeight / 2, kHeight / 2);
        painter.setPen(QPen(SheetPen::ink(), 1.2));
        painter.setBrush(Qt::white);
        painter.drawRoundedRect(QRectF(middle + lean * reach - 18, y_ + 3, 36, kHeight - 6), 6, 6);
        for (const int side : {-1, 1}) {
            const double x = middle + side * (hair * reach + 18);
            painter.drawLine(QPointF(x, y_), QPointF(x, y_ + kHeight));
        }
        painter.setBrush(Qt::NoBrush);
        y_ += kHeight + kSmall + 3;
        QString text = WeekWords::level(*page_.level);
        text.remove(QStringLiteral("<b>")).remove(QStringLiteral("</b>"));
        pen_.line(0, y_, 120, Said::change(-page_.level->end), kSmall, Face::Words,
                  SheetPen::pencil());
        pen_.line(pen_.width() - 120, y_, 120, Said::change(page_.level->end), kSmall, Face::Words,
                  SheetPen::pencil(), true);
        pen_.line(90, y_, pen_.width() - 180,
                  text + QStringLiteral("; ") + WeekWords::levelScale(*page_.level), kSmall);
        y_ += kGap;
    }

    void figures() {
        const auto lines = WeekWords::head(page_);
        const double room = (pen_.width() - 3 * kGap) / static_cast<double>(lines.size());
        double most = 0;
        for (std::size_t k = 0; k < lines.size(); ++k) {
            const double x = static_cast<double>(k) * (room + kGap);
            pen_.line(x, y_ + kSmall, room, lines[k].name, kSmall, Face::Words, SheetPen::pencil());
            pen_.line(x, y_ + 28, room, lines[k].figure, 18, Face::Slab);
            double at = y_ + 33;
            at += pen_.block(x, at, room, lines[k].strong + lines[k].rest, kBody);
            at += pen_.block(x, at, room, lines[k].spread, kSmall, SheetPen::pencil());
            most = std::max(most, at - y_);
        }
        y_ += most + kGap;
    }

    void curveAndMovers() {
        const double left = pen_.width() * 0.62;
        const double top = y_;
        title(0, left, words(QT_TRANSLATE_NOOP("WeekSheet", "Planned, earned, spent")));
        constexpr double kHeight = 190;
        curve(QRectF(30, y_ + 22, left - 100, kHeight - 22));
        double below = y_ + kHeight + 18;
        below += pen_.block(0, below, left, WeekWords::progress(page_.progress), kBody);
        below += pen_.block(0, below, left,
                            Said::text(report::methodsText(page_, report::Script::Unicode)), kSmall,
                            SheetPen::pencil());
        const double x = left + kGap;
        const double room = pen_.width() - x;
        title(x, room, words(QT_TRANSLATE_NOOP("WeekSheet", "What moved it")));
        double at = top + 20;
        if (page_.movers) {
            for (const auto& mover : page_.movers->largest) {
                at = row(x, at, room, Said::text(mover.what), Said::told(mover.why),
                         Said::change(mover.amount), false);
            }
            at = row(x, at, room, words(QT_TRANSLATE_NOOP("WeekSheet", "All others")), {},
                     Said::change(page_.movers->others), false);
            at = row(x, at, room, WeekWords::since(page_), {}, Said::change(page_.movers->total),
                     true);
        }
        at += 3;
        at += pen_.block(x, at, room, WeekWords::asked(page_), kSmall, SheetPen::pencil());
        at += pen_.block(x, at, room, WeekWords::contingency(page_), kSmall, SheetPen::pencil());
        y_ = std::max(below, at) + kGap;
    }

    void curve(const QRectF& box) {
        const auto data = weekPlotOf(page_);
        QPainter& painter = pen_.painter();
        const auto place = [&box](double across, double up) {
            return QPointF(box.left() + across * box.width(), box.bottom() - up * box.height());
        };
        for (const auto& level : data.levels) {
            const QPointF at = place(0, level.place);
            pen_.hairline(box.left(), at.y(), box.width());
            pen_.line(0, at.y() + 3, box.left() - 5, level.text, kSmall, Face::Words,
                      SheetPen::pencil(), true);
        }
        for (const auto& day : data.days) {
            pen_.line(place(day.place, 0).x() - 20, box.bottom() + 11, 40, day.text, 7, Face::Words,
                      SheetPen::pencil());
        }
        if (data.today >= 0) {
            painter.setPen(QPen(SheetPen::pencil(), 0.7, Qt::DashLine));
            painter.drawLine(place(data.today, 0), place(data.today, 1));
        }
        for (const auto& line : data.lines) {
            const QColor tone = line.stroke == qml::PlotLine::Dashed  ? SheetPen::slate()
                                : line.stroke == qml::PlotLine::Heavy ? SheetPen::moss()
                                                                      : SheetPen::ink();
            QPainterPath path;
            for (qsizetype k = 0; k < line.points.size(); ++k) {
                const QPointF at = place(line.points[k].x(), line.points[k].y());
                k == 0 ? path.moveTo(at) : path.lineTo(at);
            }
            painter.setPen(
                QPen(tone, line.stroke == qml::PlotLine::Heavy ? 2.2 : 1.3,
                     line.stroke == qml::PlotLine::Dashed ? Qt::DashLine : Qt::SolidLine));
            painter.drawPath(path);
            pen_.line(box.right() + 6, place(1, line.labelUp).y() + 3, 66, line.label, kSmall,
                      line.stroke == qml::PlotLine::Heavy ? Face::Bold : Face::Words, tone);
        }
    }

    // What, why below it, and a figure at the right; returns where the next begins.
    double row(double x, double top, double room, const QString& what, const QString& why,
               const QString& figure, bool bold, const QColor& tone = SheetPen::ink()) {
        pen_.hairline(x, top, room);
        const double figureRoom = figure.isEmpty() ? 0 : 52;
        const Face face = bold ? Face::Bold : Face::Words;
        double at = top + 3;
        at += pen_.block(x, at, room - figureRoom - 4, what, kBody, tone, 2, face);
        at += pen_.block(x, at, room - figureRoom - 4, why, 7, SheetPen::pencil(), 2);
        if (!figure.isEmpty()) {
            pen_.line(x + room - figureRoom, top + 3 + kBody, figureRoom, figure, kBody, face,
                      SheetPen::ink(), true);
        }
        return std::max(at, top + kRow) + 2;
    }

    void trades() {
        title(0, pen_.width(), words(QT_TRANSLATE_NOOP("WeekSheet", "Money by trade")));
        y_ += 18;
        const char* headings[] = {QT_TRANSLATE_NOOP("WeekSheet", "Budget now"),
                                  QT_TRANSLATE_NOOP("WeekSheet", "Committed"),
                                  QT_TRANSLATE_NOOP("WeekSheet", "Billed"),
                                  QT_TRANSLATE_NOOP("WeekSheet", "Held"),
                                  QT_TRANSLATE_NOOP("WeekSheet", "Paid"),
                                  QT_TRANSLATE_NOOP("WeekSheet", "Forecast"),
                                  QT_TRANSLATE_NOOP("WeekSheet", "Over or early")};
        const double first = pen_.width() * 0.2;
        const double room = (pen_.width() - first) / 7;
        for (int k = 0; k < 7; ++k) {
            pen_.line(first + k * room, y_ + kSmall, room, words(headings[k]), kSmall, Face::Words,
                      SheetPen::pencil(), true);
        }
        y_ += 12;
        for (const auto& trade : page_.trades) {
            tradeRow(trade, Said::text(trade.trade), Face::Words, first, room);
        }
        tradeRow({std::string(), page_.total, Money{}},
                 words(QT_TRANSLATE_NOOP("WeekSheet", "All")), Face::Bold, first, room);
    }

    void tradeRow(const report::TradeMoney& trade, const QString& name, Face face, double first,
                  double room) {
        const auto& amounts = trade.amounts;
        pen_.hairline(0, y_, pen_.width());
        pen_.line(0, y_ + 10, first, name, kBody, face);
        int k = 0;
        for (const Money money : {amounts.budgetNow, amounts.committed, amounts.billed,
                                  amounts.held, amounts.paid, amounts.forecast}) {
            pen_.line(first + k++ * room, y_ + 10, room, Said::money(money), kBody, face,
                      SheetPen::ink(), true);
        }
        pen_.line(first + 6 * room, y_ + 10, room, WeekWords::standing(trade), kBody, face,
                  SheetPen::ink(), true);
        y_ += kRow - 1;
    }

    void roomsAndMonday() {
        const double left = pen_.width() * 0.5 - kGap;
        const double top = y_;
        title(0, left, words(QT_TRANSLATE_NOOP("WeekSheet", "By room")));
        double at = top + 20;
        for (std::size_t k = 0; k < page_.rooms.size() && k < kMostRooms; ++k) {
            room(k, at, left);
            at += kRow + 2;
        }
        at = more(0, at, left, page_.rooms.size(), kMostRooms);
        const double x = left + 2 * kGap;
        const double room = pen_.width() - x;
        title(x, room, words(QT_TRANSLATE_NOOP("WeekSheet", "On Monday")));
        double other = top + 20;
        for (std::size_t k = 0; k < page_.monday.size() && k < kMostToDos; ++k) {
            const auto& todo = page_.monday[k];
            other = row(x, other, room, Said::told(todo.what), Said::told(todo.because), {},
                        todo.isPressing, todo.isBarred ? SheetPen::brick() : SheetPen::ink());
        }
        other = more(x, other, room, page_.monday.size(), kMostToDos);
        y_ = std::max(at, other) + kGap;
    }

    void room(std::size_t k, double top, double width) {
        const auto& room = page_.rooms[k];
        const auto chip = report::chipFor(room.swatch, k);
        QPainter& painter = pen_.painter();
        pen_.hairline(0, top, width);
        painter.fillRect(QRectF(0, top + 3, 20, 11), QColor(Said::text(chip.ground)));
        pen_.line(3, top + 12, 18, Said::text(room.shortName).toUpper(), 7, Face::Bold,
                  QColor(Said::text(chip.text)));
        pen_.line(26, top + 12, width * 0.32, Said::text(room.name), kBody);
        const double from = width * 0.45;
        const double length = width * 0.26;
        if (room.items > 0) {
            const double done = static_cast<double>(room.done.basisPoints()) / 10'000;
            painter.setPen(QPen(SheetPen::pencil(), 0.5));
            painter.drawLine(QPointF(from, top + 12), QPointF(from + length, top + 12));
            painter.fillRect(QRectF(from, top + 7.5, length * done, 4.5),
                             done >= 1 ? SheetPen::moss() : SheetPen::slate());
            if (room.planned && done < 1) {
                const double plan = static_cast<double>(room.planned->basisPoints()) / 10'000;
                painter.fillRect(QRectF(from + length * plan - 0.9, top + 3, 1.8, 10),
                                 SheetPen::ink());
            }
            pen_.line(width * 0.72, top + 12, width * 0.11, Said::done(room.done), kBody,
                      Face::Words, SheetPen::ink(), true);
        }
        pen_.line(width * 0.84, top + 12, width * 0.16, Said::change(room.over), kBody, Face::Words,
                  SheetPen::ink(), true);
    }

    double more(double x, double top, double room, std::size_t count, std::size_t most) {
        if (count <= most) {
            return top;
        }
        pen_.line(
            x, top + kSmall + 2, room,
            words(QT_TRANSLATE_NOOP("WeekSheet", "and %1 more, on the screen")).arg(count - most),
            kSmall, Face::Words, SheetPen::pencil());
        return top + kRow;
    }

    void nextAndPapers() {
        const double left = pen_.width() * 0.5 - kGap;
        const double top = y_;
        title(0, left, words(QT_TRANSLATE_NOOP("WeekSheet", "Next 14 days")));
        double at = top + 20;
        for (std::size_t k = 0; k < page_.next.size() && k < kMostLines; ++k) {
            const auto& event = page_.next[k];
            const QString day = event.on ? Said::day(*event.on, page_.today)
                                         : words(QT_TRANSLATE_NOOP("WeekSheet", "no day yet"));
            at = row(0, at, left, day + QStringLiteral("  ") + WeekWords::next(event),
                     event.isLate ? words(QT_TRANSLATE_NOOP("WeekSheet", "late")) : QString(),
                     event.amount ? Said::money(*event.amount) : QString(), event.isLate);
        }
        at = more(0, at, left, page_.next.size(), kMostLines);
        const double x = left + 2 * kGap;
        const double room = pen_.width() - x;
        title(x, room, words(QT_TRANSLATE_NOOP("WeekSheet", "Papers missing")));
        double other = top + 20;
        for (std::size_t k = 0; k < page_.papers.size() && k < kMostLines; ++k) {
            const auto& paper = page_.papers[k];
            other = row(x, other, room, Said::told(paper.what), {},
                        paper.amount ? Said::cents(*paper.amount) : QString(), false);
        }
        other = more(x, other, room, page_.papers.size(), kMostLines);
        y_ = std::max(at, other) + kGap;
    }

    // As large as the room that is left.
    void photos() {
        const double room = (pen_.width() - 2 * kGap) / 3;
        const double height = std::min(room * 0.66, pen_.height() - y_ - 60);
        if (page_.photos.empty() || height < 40) {
            return;
        }
        for (std::size_t k = 0; k < page_.photos.size(); ++k) {
            const auto& photo = page_.photos[k];
            const QImage image = QImage::fromData(QByteArray::fromStdString(photo.bytes));
            if (image.isNull()) {
                continue;
            }
            const double x = static_cast<double>(k) * (room + kGap);
            const QSizeF fitted = QSizeF(image.size()).scaled(room, height, Qt::KeepAspectRatio);
            pen_.painter().drawImage(QRectF(QPointF(x, y_), fitted), image);
            pen_.line(x, y_ + height + 10, room, Said::text(photo.caption), kSmall, Face::Words,
                      SheetPen::pencil());
        }
        y_ += height + kGap + 6;
    }

    void foot() {
        QStringList parts{WeekWords::buyer(page_), WeekWords::leftOut(page_)};
        if (report::showsBarred(page_)) {
            parts << words(QT_TRANSLATE_NOOP("WeekSheet",
                                             "Reminders only: rules change by place; ask your "
                                             "building office and a licensed trade."));
        }
        parts.removeAll(QString());
        pen_.block(0, std::min(y_, pen_.height() - 36), pen_.width(), parts.join(QLatin1Char(' ')),
                   kSmall, SheetPen::pencil());
    }

    const WeekPage& page_;
    SheetPen& pen_;
    double y_ = 0;
};

bool mayReplace(const QString& path) {
    QFile file(path);
    if (!file.exists()) {
        return true;
    }
    return file.open(QIODevice::ReadOnly) && file.read(5) == "%PDF-";
}

}  // namespace

bool writeWeekSheet(const WeekPage& page, const QString& path) {
    if (path.isEmpty() || !mayReplace(path)) {
        return false;
    }
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly)) {
        return false;
    }
    QPdfWriter writer(&file);
    writer.setResolution(kDotsAnInch);
    writer.setPageSize(QPageSize(QPageSize::Letter));
    writer.setPageMargins(QMarginsF(kMarginMm, kMarginMm, kMarginMm, kMarginMm),
                          QPageLayout::Millimeter);
    writer.setTitle(Said::text(page.job) + QStringLiteral(": ") + WeekWords::title(page));
    QPainter painter(&writer);
    if (!painter.isActive()) {
        return false;
    }
    SheetPen pen(writer, painter);
    Drawn(page, pen).draw();
    return painter.end();
}

}  // namespace ledgerboard::desk
