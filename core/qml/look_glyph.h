// A sign drawn in one line, such as a camera or a check. Never alone: words or an accessible name
// stand with it.
//
// Threads: the UI's; painted where Qt paints.
#pragma once

#include <QColor>
#include <QPainterPath>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

namespace ledgerboard::qml {

// The outline of a sign on a square of 24; empty where there is none of that name.
[[nodiscard]] QPainterPath glyphPath(const QString& name);

class Glyph : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed)
    Q_PROPERTY(QColor tone READ tone WRITE setTone NOTIFY changed)
    Q_PROPERTY(int size READ size WRITE setSize NOTIFY changed)
    Q_PROPERTY(bool heavy READ heavy WRITE setHeavy NOTIFY changed)

  public:
    explicit Glyph(QQuickItem* parent = nullptr);

    void paint(QPainter* painter) override;

    [[nodiscard]] QString name() const { return name_; }

    void setName(const QString& name) { keep(name_, name); }

    [[nodiscard]] QColor tone() const { return tone_; }

    void setTone(const QColor& tone) { keep(tone_, tone); }

    // Width and height, in pixels.
    [[nodiscard]] int size() const { return size_; }

    void setSize(int size);

    [[nodiscard]] bool heavy() const { return heavy_; }

    void setHeavy(bool heavy) { keep(heavy_, heavy); }

  signals:
    void changed();

  private:
    template <class T>
    void keep(T& member, const T& value) {
        if (member != value) {
            member = value;
            update();
            emit changed();
        }
    }

    QString name_;
    QColor tone_ = Qt::black;
    int size_ = 0;
    bool heavy_ = false;
};

}  // namespace ledgerboard::qml
