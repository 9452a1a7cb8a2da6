// How do the draws on the loan for the work stand, and what is asked for when a draw is made?
//
// Every figure is that of compute/lender_draws.h, as the command line's `draw`; the request as PDF
// is the command line's own. Threads: the UI's; when to ask next is worked out in the background.
#pragma once

#include <memory>

#include <QObject>
#include <QString>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "core/compute/draws_ahead.h"
#include "core/compute/lender_draws.h"

#include "desktop/client/now/job_now.h"

namespace ledgerboard::desk {

class DrawsView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantList figures READ figures NOTIFY changed)
    Q_PROPERTY(QStringList notes READ notes NOTIFY changed)
    Q_PROPERTY(bool hasLoan READ hasLoan NOTIFY changed)
    Q_PROPERTY(bool canAsk READ canAsk NOTIFY changed)

  public:
    explicit DrawsView(QObject* parent = nullptr);

    // Asks for what can be drawn now, today, in one action. False where nothing can be, which Desk
    // says.
    Q_INVOKABLE bool ask();
    // Writes the request with its pictures as a PDF to a path or file address; what came of it is
    // said by Desk.
    Q_INVOKABLE bool print(const QString& where);
    // A name for that file, beside the book.
    [[nodiscard]] Q_INVOKABLE QString printName() const;

    [[nodiscard]] QVariantList figures() const;
    [[nodiscard]] QStringList notes() const;

    [[nodiscard]] bool hasLoan() const { return !draws_.lines.empty(); }

    [[nodiscard]] bool canAsk() const { return draws_.byLines && draws_.total > model::Money{}; }

  signals:
    void changed();

  private:
    void follow();

    std::shared_ptr<const JobNow> now_;
    compute::DrawsNow draws_;
    std::vector<compute::DrawAhead> ahead_;
};

}  // namespace ledgerboard::desk
