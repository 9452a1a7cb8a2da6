// How does the money of the job stand: committed, billed, paid, held, owed, and who is paid ahead?
//
// Every figure is compute::figuresOf's, as the command line's. Threads: the UI's.
#pragma once

#include <QObject>
#include <QString>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

namespace ledgerboard::desk {

class MoneyHead : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantList figures READ figures NOTIFY changed)
    Q_PROPERTY(QString aheadText READ aheadText NOTIFY changed)
    Q_PROPERTY(QString barredText READ barredText NOTIFY changed)
    Q_PROPERTY(QString askedText READ askedText NOTIFY changed)
    Q_PROPERTY(QString unfinishedText READ unfinishedText NOTIFY changed)
    Q_PROPERTY(int waiting READ waiting NOTIFY changed)

  public:
    explicit MoneyHead(QObject* parent = nullptr);

    [[nodiscard]] QVariantList figures() const;
    // Who is paid ahead of work seen, and by how much; empty where nobody is.
    [[nodiscard]] QString aheadText() const;
    // Payments that are owed and barred; empty where there are none.
    [[nodiscard]] QString barredText() const;
    // Changes asked and not decided.
    [[nodiscard]] QString askedText() const;
    // Receipts that were begun and have no amount yet.
    [[nodiscard]] QString unfinishedText() const;
    // Lines of the bank that wait.
    [[nodiscard]] int waiting() const;

  signals:
    void changed();
};

}  // namespace ledgerboard::desk
