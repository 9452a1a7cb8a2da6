// Which crews are here today? Touched once, a crew was here; a slip is undone.
#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/row_list.h"

namespace ledgerboard::phone {

struct PresenceRow {
    Q_GADGET
    QML_VALUE_TYPE(presenceRow)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(bool here MEMBER here)

  public:
    QString id;  // the crew's
    QString name;
    bool here = false;

    friend bool operator==(const PresenceRow&, const PresenceRow&) = default;
};

class PresenceList : public RowList {
    Q_OBJECT
    QML_ELEMENT

  public:
    explicit PresenceList(QObject* parent = nullptr);

    // True once it is on disk; a crew that is here already is not written again.
    Q_INVOKABLE bool keepHere(const QString& crewId);

  private:
    void fill();
};

}  // namespace ledgerboard::phone
