// A receipt in the hand: its picture, its amount typed digit by digit, and what it is for.
//
// An amount may come later: a receipt without one is unfinished and counts nowhere.
#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/row_list.h"

namespace ledgerboard::phone {

struct PayForRow {
    Q_GADGET
    QML_VALUE_TYPE(payForRow)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QString words MEMBER words)

  public:
    QString id;     // an item's; "" for the whole house
    QString words;  // "Replace wall tile"

    friend bool operator==(const PayForRow&, const PayForRow&) = default;
};

// What it may be for: items of the space, the one used last first, then the whole house.
class ReceiptDesk : public RowList {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString spaceId READ spaceId WRITE setSpaceId NOTIFY spaceIdChanged)
    Q_PROPERTY(QString amountText READ amountText NOTIFY amountChanged)

  public:
    explicit ReceiptDesk(QObject* parent = nullptr);

    [[nodiscard]] QString spaceId() const { return spaceId_; }

    void setSpaceId(const QString& id);

    // "214.60"
    [[nodiscard]] QString amountText() const;
    // Digits as they are typed, cents last.
    Q_INVOKABLE void type(const QString& digits);
    Q_INVOKABLE void rub();
    // True once it is on disk.
    Q_INVOKABLE bool keepReceipt(const QString& picture, const QString& itemId,
                                 const QString& payee);

  signals:
    void spaceIdChanged();
    void amountChanged();

  private:
    void fill();

    QString spaceId_;
    qint64 cents_ = 0;
};

}  // namespace ledgerboard::phone
