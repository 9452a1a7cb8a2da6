// What would be frozen if today's budget and plan became what the week compares with? Asked once,
// then frozen as one action. Threads: the UI's.
#pragma once

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "core/intake/keep/keep_baseline.h"

namespace ledgerboard::desk {

class BaselineForm : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool isOpen READ isOpen NOTIFY changed)
    Q_PROPERTY(QStringList words READ words NOTIFY changed)

  public:
    using QObject::QObject;

    // Works out what would be frozen, and asks; refused where there is nothing, or there is a
    // baseline of that day, which Desk says.
    Q_INVOKABLE void begin();
    // Freezes it. False where it was refused, which Desk says why.
    Q_INVOKABLE bool keep();
    Q_INVOKABLE void close();

    [[nodiscard]] bool isOpen() const { return isOpen_; }

    // What would be frozen, what is left out of it, and what becomes of an earlier one.
    [[nodiscard]] QStringList words() const { return words_; }

  signals:
    void changed();

  private:
    [[nodiscard]] static model::Result<intake::KeptBaseline> worked();

    bool isOpen_ = false;
    QStringList words_;
};

}  // namespace ledgerboard::desk
