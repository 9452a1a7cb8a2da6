// What needs whoever holds the phone today, each a way to where it is dealt with.
#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/row_list.h"

namespace ledgerboard::phone {

struct NeedRow {
    Q_GADGET
    QML_VALUE_TYPE(needRow)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QString what MEMBER what)
    Q_PROPERTY(QString why MEMBER why)
    Q_PROPERTY(QString spaceId MEMBER spaceId)
    Q_PROPERTY(QString itemId MEMBER itemId)
    Q_PROPERTY(QString changeId MEMBER changeId)
    Q_PROPERTY(bool hazard MEMBER hazard)

  public:
    QString id;  // its place
    QString what;
    QString why;
    QString spaceId;
    QString itemId;
    QString changeId;
    bool hazard = false;

    friend bool operator==(const NeedRow&, const NeedRow&) = default;
};

class NeedList : public RowList {
    Q_OBJECT
    QML_ELEMENT

  public:
    explicit NeedList(QObject* parent = nullptr);

  private:
    void fill();
};

}  // namespace ledgerboard::phone
