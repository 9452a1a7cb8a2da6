// What does a chart of a few lines over time show, and what does it say at each place along it?
//
// Filled by whoever knows the figures; the picture (PlotPicture.qml) draws it and the table
// (PlotTable.qml) lists it. Shares are 0 to 1: across from the left, up from the bottom.
// Threads: the UI's.
#pragma once

#include <QList>
#include <QObject>
#include <QPointF>
#include <QPolygonF>
#include <QString>
#include <QStringList>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

namespace ledgerboard::qml {

// A line: told apart by its stroke and its name, never by colour alone.
struct PlotLine {
    Q_GADGET
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString label MEMBER label)
    Q_PROPERTY(int stroke MEMBER stroke)
    Q_PROPERTY(double endAcross MEMBER endAcross)
    Q_PROPERTY(double endUp MEMBER endUp)
    Q_PROPERTY(double labelUp MEMBER labelUp)

  public:
    // Dashed: what is planned, in slate. Solid: what was spent, in ink. Heavy: earned, in moss.
    enum Stroke { Dashed = 0, Solid = 1, Heavy = 2 };
    Q_ENUM(Stroke)

    QString name;   // "earned"
    QString label;  // "earned 91,420": at its end
    int stroke = Solid;
    double endAcross = 0;
    double endUp = 0;
    double labelUp = 0;     // where its label stands, clear of the others
    QList<QPointF> points;  // shares
};

struct PlotTick {
    Q_GADGET
    Q_PROPERTY(double place MEMBER place)
    Q_PROPERTY(QString text MEMBER text)

  public:
    double place = 0;
    QString text;
};

// One place along the chart: what each line says there, in the order of the lines; "" where it has
// nothing.
struct PlotStop {
    Q_GADGET
    Q_PROPERTY(double across MEMBER across)
    Q_PROPERTY(QString when MEMBER when)
    Q_PROPERTY(QStringList figures MEMBER figures)

  public:
    double across = 0;
    QString when;
    QStringList figures;
    QList<double> ups;  // share of each figure, below 0 where there is none
};

struct PlotData {
    QList<PlotLine> lines;
    QList<PlotTick> levels;  // places are shares up
    QList<PlotTick> days;    // shares across
    QList<PlotStop> stops;
    QList<int> listed;  // stops that the table has
    double today = -1;  // share across; below 0 where it is not on the chart
    QString todayText;
    QString spoken;           // the drawing in words
    bool marksStops = false;  // a mark at each figure of each stop
};

class Plot : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool isEmpty READ isEmpty NOTIFY changed)
    Q_PROPERTY(QVariantList lines READ lines NOTIFY changed)
    Q_PROPERTY(QVariantList levels READ levels NOTIFY changed)
    Q_PROPERTY(QVariantList days READ days NOTIFY changed)
    Q_PROPERTY(QVariantList rows READ rows NOTIFY changed)
    Q_PROPERTY(int stops READ stops NOTIFY changed)
    Q_PROPERTY(int todayStop READ todayStop NOTIFY changed)
    Q_PROPERTY(double today READ today NOTIFY changed)
    Q_PROPERTY(QString todayText READ todayText NOTIFY changed)
    Q_PROPERTY(bool marksStops READ marksStops NOTIFY changed)
    Q_PROPERTY(QString spoken READ spoken NOTIFY changed)

  public:
    using QObject::QObject;

    void show(PlotData data) {
        data_ = std::move(data);
        emit changed();
    }

    [[nodiscard]] bool isEmpty() const { return data_.lines.isEmpty(); }

    [[nodiscard]] QVariantList lines() const { return listOf(data_.lines); }

    [[nodiscard]] QVariantList levels() const { return listOf(data_.levels); }

    [[nodiscard]] QVariantList days() const { return listOf(data_.days); }

    // The stops that the table lists.
    [[nodiscard]] QVariantList rows() const;

    [[nodiscard]] int stops() const { return static_cast<int>(data_.stops.size()); }

    // The stop nearest today, else the last.
    [[nodiscard]] int todayStop() const {
        return data_.today < 0 ? stops() - 1 : nearest(data_.today);
    }

    [[nodiscard]] double today() const { return data_.today; }

    [[nodiscard]] QString todayText() const { return data_.todayText; }

    [[nodiscard]] bool marksStops() const { return data_.marksStops; }

    [[nodiscard]] QString spoken() const { return data_.spoken; }

    // The path of a line on a picture of this size, in pixels from the top left.
    Q_INVOKABLE [[nodiscard]] QVariant path(int line, double width, double height) const;
    // The stop nearest to a share across; -1 where there is none.
    Q_INVOKABLE [[nodiscard]] int nearest(double across) const;
    Q_INVOKABLE [[nodiscard]] double acrossOf(int stop) const;
    // Share up of a line's figure at a stop; below 0 where it has none there.
    Q_INVOKABLE [[nodiscard]] double upOf(int stop, int line) const;
    Q_INVOKABLE [[nodiscard]] QString whenOf(int stop) const;
    // "planned 61,200": a line for each figure there is.
    Q_INVOKABLE [[nodiscard]] QStringList figuresOf(int stop) const;

  signals:
    void changed();

  private:
    template <class T>
    [[nodiscard]] static QVariantList listOf(const QList<T>& list) {
        QVariantList out;
        for (const auto& one : list) {
            out << QVariant::fromValue(one);
        }
        return out;
    }

    [[nodiscard]] bool isStop(int stop) const { return stop >= 0 && stop < stops(); }

    PlotData data_;
};

}  // namespace ledgerboard::qml
