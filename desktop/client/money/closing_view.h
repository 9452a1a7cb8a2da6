// What does the page Closing show: what still stands between this job and finished, what releases
// each crew, and what should be in the folder of the house?
//
// compute::closingOf's, as the command line's `close`. Threads: the UI's.
#pragma once

#include <memory>

#include <QObject>
#include <QStringList>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "core/compute/closing.h"

#include "desktop/client/now/job_now.h"

namespace ledgerboard::desk {

// Lines under a title.
struct ClosingGroup {
    Q_GADGET
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString foot MEMBER foot)
    Q_PROPERTY(QVariantList lines MEMBER lines)

  public:
    QString title;
    QString foot;
    QVariantList lines;  // of PageLine
};

class ClosingView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(bool isEmpty READ isEmpty NOTIFY changed)
    Q_PROPERTY(QVariantList stands READ stands NOTIFY changed)
    Q_PROPERTY(QVariantList releases READ releases NOTIFY changed)
    Q_PROPERTY(QVariantList papers READ papers NOTIFY changed)

  public:
    explicit ClosingView(QObject* parent = nullptr);

    [[nodiscard]] QString title() const;

    [[nodiscard]] bool isEmpty() const { return now_ != nullptr && closing_.items == 0; }

    // A group for each part that has something left, each line a jump to where it is dealt with.
    [[nodiscard]] QVariantList stands() const;
    // A group for each contract that is not closed, its steps in order.
    [[nodiscard]] QVariantList releases() const;
    [[nodiscard]] QVariantList papers() const;

  signals:
    void changed();

  private:
    void follow();

    std::shared_ptr<const JobNow> now_;
    compute::Closing closing_;
};

}  // namespace ledgerboard::desk
