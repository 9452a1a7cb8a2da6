// A sum of money as a thumb types it: digit by digit, cents last.
#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "core/model/money.h"

namespace ledgerboard::phone {

class TypedAmount : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("a part of a desk")
    Q_PROPERTY(QString text READ text NOTIFY changed)
    Q_PROPERTY(bool isNone READ isNone NOTIFY changed)

  public:
    using QObject::QObject;

    [[nodiscard]] QString text() const;  // "214.60"

    [[nodiscard]] bool isNone() const { return cents_ == 0; }

    [[nodiscard]] model::Money money() const { return model::Money::fromMinor(cents_); }

    Q_INVOKABLE void type(const QString& digits);
    Q_INVOKABLE void rub();

  signals:
    void changed();

  private:
    qint64 cents_ = 0;
};

}  // namespace ledgerboard::phone
