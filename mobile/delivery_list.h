// Deliveries that have not come, those of the space on screen first; and saying that one came, and
// what is wrong with it.
#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/space_rows.h"

namespace ledgerboard::phone {

struct DeliveryRow {
    Q_GADGET
    QML_VALUE_TYPE(deliveryRow)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QString words MEMBER words)

  public:
    QString id;
    QString words;  // "Storm windows, promised for Tuesday (Outside)"

    friend bool operator==(const DeliveryRow&, const DeliveryRow&) = default;
};

class DeliveryList : public SpaceRows {
    Q_OBJECT
    QML_ELEMENT

  public:
    using SpaceRows::SpaceRows;

    // It came today; `wrong` says what is wrong or missing, "" where nothing is. True once it is on
    // disk.
    Q_INVOKABLE bool keepArrived(int row, const QString& wrong);

  private:
    void fill() override;
};

}  // namespace ledgerboard::phone
