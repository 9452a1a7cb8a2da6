// A change that is asked for, in the owner's hand: what it is, what it would cost, its picture; yes
// or no.
#pragma once

#include <QObject>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

#include "core/model/rows.h"

namespace ledgerboard::phone {

class ChangeDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString changeId READ changeId WRITE setChangeId NOTIFY changed)
    Q_PROPERTY(QString what READ what NOTIFY changed)
    Q_PROPERTY(QString asked READ asked NOTIFY changed)
    Q_PROPERTY(QString sum READ sum NOTIFY changed)
    Q_PROPERTY(QString items READ items NOTIFY changed)
    Q_PROPERTY(QString why READ why NOTIFY changed)
    Q_PROPERTY(QUrl picture READ picture NOTIFY changed)

  public:
    explicit ChangeDesk(QObject* parent = nullptr);

    [[nodiscard]] QString changeId() const { return changeId_; }

    void setChangeId(const QString& id);

    [[nodiscard]] QString what() const;   // "joists are rotten"
    [[nodiscard]] QString asked() const;  // "Asked Thu 14 May by Ana"
    [[nodiscard]] QString sum() const;    // "450", "no sum yet"
    [[nodiscard]] QString items() const;  // "Replace wall tile (Hall bath)"
    [[nodiscard]] QString why() const;
    // Empty where there is none, or it has not come yet.
    [[nodiscard]] QUrl picture() const;

    // Each is true once it is on disk. Signed, it counts from today.
    Q_INVOKABLE bool sign(bool fromContingency);
    Q_INVOKABLE bool refuse();

  signals:
    void changed();

  private:
    // Null where it is gone, or on a phone that is no owner's.
    [[nodiscard]] const model::Change* change() const;

    QString changeId_;
};

}  // namespace ledgerboard::phone
