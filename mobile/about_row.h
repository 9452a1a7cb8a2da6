// What something is for or about, as one choice of a row: an item, or more than one item.
#pragma once

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace ledgerboard::phone {

struct AboutRow {
    Q_GADGET
    QML_VALUE_TYPE(aboutRow)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QString words MEMBER words)

  public:
    QString id;     // an item's; "" for the space, or the whole house
    QString words;  // "Replace wall tile"

    friend bool operator==(const AboutRow&, const AboutRow&) = default;
};

}  // namespace ledgerboard::phone
