// Which bills, receipts and payments are there, what is open of each, and which are still to be
// completed?
//
// Those that have no amount yet stand first: a phone began them, with a picture, on site. The
// others by month, the latest first; a month's sum is what was billed in it. Every figure is
// compute::figuresOf's, as the command line's. Threads: the UI's.
#pragma once

#include "desktop/client/money/record_sheet.h"

namespace ledgerboard::desk {

class SpendSheet : public RecordSheet {
    Q_OBJECT
    QML_ELEMENT

  public:
    explicit SpendSheet(QObject* parent = nullptr);

    // The paper of the row in hand is at hand, or is not.
    Q_INVOKABLE void turnPaper();
    // What a payment of the invoice in hand begins with; empty where it is no invoice, or nothing
    // is open of it.
    [[nodiscard]] Q_INVOKABLE QVariantMap paymentOf() const;

    [[nodiscard]] QString itemText() const override;

  protected:
    [[nodiscard]] std::vector<RecordLine> linesOf() override;
    [[nodiscard]] QString groupName(int group) const override;
    [[nodiscard]] QStringList detailsOf(const model::RawId& id) const override;

  private:
    [[nodiscard]] const model::Spend* spendOf(const model::RawId& id) const;
    [[nodiscard]] const compute::SpendRead* readOf(const model::RawId& id) const;
    [[nodiscard]] QString isFor(const model::Spend& spend) const;
};

// Lines of the bank that wait, each with the best guess, how sure it is and why.
class BankSheet : public RecordSheet {
    Q_OBJECT
    QML_ELEMENT

  public:
    explicit BankSheet(QObject* parent = nullptr);

    // Files the line in hand as what was guessed, as what is named ("kitchen/cabinets", "Tile
    // crew", "draw 3", "job"), or leaves it out as not ours. `once`: no rule is learnt. False where
    // it was refused, which Desk says why.
    Q_INVOKABLE bool takeGuess();
    Q_INVOKABLE bool fileTo(const QString& what, bool once);
    Q_INVOKABLE bool leaveOut();
    // Names that go with what was typed, eight at most.
    [[nodiscard]] Q_INVOKABLE QStringList near(const QString& typed) const;

    [[nodiscard]] QString itemText() const override;

  protected:
    [[nodiscard]] std::vector<RecordLine> linesOf() override;
    [[nodiscard]] QStringList detailsOf(const model::RawId& id) const override;
};

// What was learnt of payees: lines of the bank that are filed without asking.
class RuleSheet : public RecordSheet {
    Q_OBJECT
    QML_ELEMENT

  public:
    explicit RuleSheet(QObject* parent = nullptr);

  protected:
    [[nodiscard]] std::vector<RecordLine> linesOf() override;
};

}  // namespace ledgerboard::desk
