// What do the house and the line at the top of each page say of the job as a whole?
#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace ledgerboard::phone {

class HouseView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString dayText READ dayText NOTIFY changed)
    Q_PROPERTY(QString waitingText READ waitingText NOTIFY changed)
    Q_PROPERTY(QString accessText READ accessText NOTIFY changed)
    Q_PROPERTY(bool hasLevel READ hasLevel NOTIFY changed)
    Q_PROPERTY(double lean READ lean NOTIFY changed)
    Q_PROPERTY(double hair READ hair NOTIFY changed)
    Q_PROPERTY(QString levelText READ levelText NOTIFY changed)

  public:
    explicit HouseView(QObject* parent = nullptr);

    [[nodiscard]] QString name() const;
    // "Fri 15 May, week 6"
    [[nodiscard]] QString dayText() const;
    // "3 marks and 2 photos wait"; what has not left the phone, in one line.
    [[nodiscard]] QString waitingText() const;
    // A crew lead's: where it stands and how one gets in (address, gate, lock, hours).
    [[nodiscard]] QString accessText() const;
    [[nodiscard]] bool hasLevel() const;
    [[nodiscard]] double lean() const;
    [[nodiscard]] double hair() const;
    // "will cost <b>2,140 more</b> than budget"
    [[nodiscard]] QString levelText() const;

  signals:
    void changed();
};

}  // namespace ledgerboard::phone
