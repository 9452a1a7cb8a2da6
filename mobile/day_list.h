// A crew lead's own items by day: late, today, the days to come. Empty on an owner's phone.
#pragma once

#include <QColor>
#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/row_list.h"

namespace ledgerboard::phone {

struct DayRow {
    Q_GADGET
    QML_VALUE_TYPE(dayRow)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QString day MEMBER day)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString under MEMBER under)
    Q_PROPERTY(QString figure MEMBER figure)
    Q_PROPERTY(QString shortName MEMBER shortName)
    Q_PROPERTY(QColor ground MEMBER ground)
    Q_PROPERTY(QColor ink MEMBER ink)

  public:
    QString id;
    QString day;    // "Today", over the first item of a day; "" over the others
    QString title;  // "Replace wall tile, 86 sq ft"
    QString under;  // "Hall bath. Do not cover before it is looked at"
    QString figure;
    QString shortName;
    QColor ground;
    QColor ink;

    friend bool operator==(const DayRow&, const DayRow&) = default;
};

class DayList : public RowList {
    Q_OBJECT
    QML_ELEMENT

  public:
    explicit DayList(QObject* parent = nullptr);

  private:
    void fill();
};

}  // namespace ledgerboard::phone
