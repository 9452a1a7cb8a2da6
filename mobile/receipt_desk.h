// A receipt in the hand: its picture, its amount typed digit by digit, and what it is for.
//
// An amount may come later: a receipt without one is unfinished and counts nowhere.
#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/about_row.h"
#include "mobile/space_rows.h"
#include "mobile/typed_amount.h"

namespace ledgerboard::phone {

// What it may be for: items of the space, the one used last first, then the whole house.
class ReceiptDesk : public SpaceRows {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(ledgerboard::phone::TypedAmount* amount READ amount CONSTANT)
    Q_PROPERTY(ledgerboard::phone::TypedAmount* tax READ tax CONSTANT)

  public:
    using SpaceRows::SpaceRows;

    // The sum on the paper, and the tax that is in it.
    [[nodiscard]] TypedAmount* amount() { return &amount_; }

    [[nodiscard]] TypedAmount* tax() { return &tax_; }

    // True once it is on disk.
    Q_INVOKABLE bool keepReceipt(const QString& picture, const QString& itemId,
                                 const QString& payee);

  private:
    void fill() override;

    TypedAmount amount_;
    TypedAmount tax_;
};

}  // namespace ledgerboard::phone
