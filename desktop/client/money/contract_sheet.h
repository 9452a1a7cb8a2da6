// Which contracts and orders are there, what was signed, billed and paid on each, and what bars
// paying it?
//
// Every figure is compute::figuresOf's, as the command line's. Threads: the UI's.
#pragma once

#include "desktop/client/money/record_sheet.h"

namespace ledgerboard::desk {

class ContractSheet : public RecordSheet {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString barredText READ barredText NOTIFY detailChanged)

  public:
    explicit ContractSheet(QObject* parent = nullptr);

    // Why nothing may be paid on the one in hand; empty where nothing bars it.
    [[nodiscard]] QString barredText() const;

  protected:
    [[nodiscard]] std::vector<RecordLine> linesOf() override;
    [[nodiscard]] QString groupName(int group) const override;
    [[nodiscard]] QStringList detailsOf(const model::RawId& id) const override;

  private:
    [[nodiscard]] const compute::ContractFigures* figuresInHand() const;
};

// What was asked to be changed, signed or refused.
class ChangeSheet : public RecordSheet {
    Q_OBJECT
    QML_ELEMENT

  public:
    explicit ChangeSheet(QObject* parent = nullptr);

    // Signed, or refused, today. False where it cannot be, which Desk says why.
    Q_INVOKABLE bool sign();
    Q_INVOKABLE bool refuse();

  protected:
    [[nodiscard]] std::vector<RecordLine> linesOf() override;
    [[nodiscard]] QString groupName(int group) const override;
    [[nodiscard]] QStringList detailsOf(const model::RawId& id) const override;
};

// Goods that items wait for: to be ordered by when, ordered, promised, arrived. A row is the
// delivery of an item; where there is none yet, the item, and writing in it makes one.
class GoodsSheet : public RecordSheet {
    Q_OBJECT
    QML_ELEMENT

  public:
    explicit GoodsSheet(QObject* parent = nullptr);

    [[nodiscard]] QString itemText() const override;

  protected:
    [[nodiscard]] std::vector<RecordLine> linesOf() override;
    [[nodiscard]] QString groupName(int group) const override;
    [[nodiscard]] QStringList detailsOf(const model::RawId& id) const override;
    bool write(model::FieldCode field, const model::Value& value, const QString& said) override;

  private:
    [[nodiscard]] RecordLine lineOf(const model::Item& item, const model::Delivery* delivery,
                                    std::optional<model::Date> orderBy, bool isOrdered,
                                    std::optional<model::Date> comesOn) const;
    [[nodiscard]] const model::Item* itemOf(const model::RawId& id) const;
};

}  // namespace ledgerboard::desk
