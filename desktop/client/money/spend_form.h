// A bill, receipt or payment to be entered, with the lines of the bank that may be its payment
// beside it.
//
// A line chosen goes with the row when it is kept, in the same action: a receipt, fee, refund or
// payment bears the line's id; an invoice gets a payment of its own, on the line's day. A line that
// is not of the same sum is refused. Threads: the UI's.
#pragma once

#include "desktop/client/money/record_form.h"

namespace ledgerboard::desk {

// A line of the bank beside the entry.
struct BankFit {
    Q_GADGET
    Q_PROPERTY(QString words MEMBER words)
    Q_PROPERTY(QString amount MEMBER amount)
    Q_PROPERTY(QString why MEMBER why)
    Q_PROPERTY(bool isChosen MEMBER isChosen)

  public:
    QString words;
    QString amount;
    QString why;  // why it may be the one
    bool isChosen = false;
    model::RawId id;
};

class SpendForm : public RecordForm {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantList fits READ fits NOTIFY shown)
    Q_PROPERTY(QString picture READ picture NOTIFY opened)

  public:
    explicit SpendForm(QObject* parent = nullptr);

    // A new row from a line of the bank, which goes with it.
    Q_INVOKABLE void beginFromLine(const QString& lineId);
    // The line at this place of `fits` goes with the row, or no longer does.
    Q_INVOKABLE void choose(int fit);

    // Lines that wait and are of the same sum or payee; the one chosen among them.
    [[nodiscard]] QVariantList fits() const;
    // The picture of the paper, as a data address; empty where there is none.
    [[nodiscard]] QString picture() const;

  protected:
    model::Result<void> complete(store::Action& action, const model::RawId& id,
                                 const Draft& draft) override;

  private:
    [[nodiscard]] std::vector<BankFit> fitting() const;
    [[nodiscard]] const model::BankLine* lineOf(const model::RawId& id) const;

    model::RawId line_;
};

}  // namespace ledgerboard::desk
