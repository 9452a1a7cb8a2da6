// The spaces of the job in walking order, for the house and its strip.
#pragma once

#include <QColor>
#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/row_list.h"

namespace ledgerboard::phone {

struct SpaceRow {
    Q_GADGET
    QML_VALUE_TYPE(spaceRow)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString shortName MEMBER shortName)
    Q_PROPERTY(QColor ground MEMBER ground)
    Q_PROPERTY(QColor ink MEMBER ink)
    Q_PROPERTY(QString figure MEMBER figure)
    Q_PROPERTY(QString left MEMBER left)
    Q_PROPERTY(double done MEMBER done)
    Q_PROPERTY(double plan MEMBER plan)
    Q_PROPERTY(bool finished MEMBER finished)
    Q_PROPERTY(bool hasWork MEMBER hasWork)

  public:
    QString id;  // "" for what belongs to no space
    QString name;
    QString shortName;
    QColor ground;
    QColor ink;
    QString figure;  // "72 %", "done"; "" without work
    QString left;    // "6 items, 2 to start. 1 punch item open."
    double done = 0;
    double plan = -1;
    bool finished = false;
    bool hasWork = false;

    friend bool operator==(const SpaceRow&, const SpaceRow&) = default;
};

class SpaceList : public RowList {
    Q_OBJECT
    QML_ELEMENT

  public:
    explicit SpaceList(QObject* parent = nullptr);

  private:
    void fill();
};

}  // namespace ledgerboard::phone
