// What does the scope sheet show, which cell is in hand, and what do its keys do?
//
// Rows are worked out when they are looked at, so that ten thousand of them scroll. The cell in
// hand stays with its item when the book is read anew. Threads: the UI's.
#pragma once

#include <map>
#include <memory>

#include "core/compute/cautions.h"
#include "core/report/theme.h"

#include "desktop/client/now/job_now.h"
#include "desktop/client/now/scope_rows.h"
#include "desktop/client/scope_columns.h"
#include "desktop/client/sheet.h"

namespace ledgerboard::desk {

class ScopeSheet : public Sheet {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString groupText READ groupText NOTIFY shown)
    Q_PROPERTY(QString lineSum READ lineSum NOTIFY shown)
    Q_PROPERTY(QString budgetSum READ budgetSum NOTIFY shown)
    Q_PROPERTY(bool hasBaseline READ hasBaseline NOTIFY shown)
    Q_PROPERTY(QString floorArea READ floorArea NOTIFY moved)
    Q_PROPERTY(QString wallArea READ wallArea NOTIFY moved)
    Q_PROPERTY(QString recordId READ recordId NOTIFY detailChanged)
    Q_PROPERTY(QString cautionAbout READ cautionAbout NOTIFY detailChanged)
    Q_PROPERTY(QString cautionText READ cautionText NOTIFY detailChanged)
    Q_PROPERTY(QString cautionSource READ cautionSource NOTIFY detailChanged)

  public:
    explicit ScopeSheet(QObject* parent = nullptr);

    [[nodiscard]] QString cellText() const override;
    [[nodiscard]] bool canEdit() const override;
    [[nodiscard]] QStringList choices(const QString& typed) const override;
    bool put(const QString& text) override;
    void fill() override;
    void dropItems() override;
    Q_INVOKABLE void usePriceBook();
    // The chosen items are marked finished today. Where a caution of one of them is open, nothing
    // is, and that item is in hand.
    Q_INVOKABLE void finish();
    // The caution that holds up the item in hand was read; what was found, where it was tested.
    Q_INVOKABLE bool acknowledge(const QString& found);
    // "replace faucet", "Hall bath: replace faucet": a new item, which is then in hand.
    Q_INVOKABLE bool addItem(const QString& said);
    Q_INVOKABLE void nextGroup();
    void copyRows() override;
    // Puts a quantity, in its unit where the item has none, into the item in hand.
    Q_INVOKABLE bool putQuantity(const QString& quantity, const QString& unit);

    [[nodiscard]] QVariantList columns() const override;

    [[nodiscard]] int count() const override { return static_cast<int>(rows_.rows.size()); }

    [[nodiscard]] bool isEmpty() const override {
        return now_ != nullptr && now_->rows.items.empty();
    }

    [[nodiscard]] bool isReady() const override { return now_ != nullptr; }

    [[nodiscard]] bool hasChips() const override { return true; }

    [[nodiscard]] int asideColumn() const override { return scope_column::kQuantity; }

    [[nodiscard]] int sumColumn() const override { return scope_column::kLine; }

    [[nodiscard]] QString groupText() const;
    [[nodiscard]] QString countText() const override;
    [[nodiscard]] QString lineSum() const;
    [[nodiscard]] QString budgetSum() const;
    [[nodiscard]] bool hasBaseline() const;
    // What is in hand, what it is priced by, and what else is known of it.
    [[nodiscard]] QString itemText() const override;
    [[nodiscard]] QStringList details() const override;

    // Sizes of the space of the item in hand, in square feet; empty where not known.
    [[nodiscard]] QString floorArea() const;
    [[nodiscard]] QString wallArea() const;

    // The id of the item in hand, as RecordForm::begin takes it; "" for none.
    [[nodiscard]] QString recordId() const;
    // The first caution that holds up the item in hand; "" where none is open.
    [[nodiscard]] QString cautionAbout() const;
    [[nodiscard]] QString cautionText() const;
    [[nodiscard]] QString cautionSource() const;
    // The item in hand; empty where none is.
    [[nodiscard]] std::optional<std::size_t> item() const;
    // The space of the item in hand, with its sizes; null where it has none.
    [[nodiscard]] const model::Space* space() const;

  protected:
    void arrange() override;
    [[nodiscard]] bool isItem(int place) const override;
    [[nodiscard]] model::RawId idAt(int place) const override;
    [[nodiscard]] SheetRow rowAt(int place) const override;

    [[nodiscard]] int columnTotal() const override { return scope_column::kCount; }

  private:
    void follow();
    [[nodiscard]] std::vector<std::size_t> chosen() const;
    [[nodiscard]] QStringList cellsOf(std::size_t item) const;
    [[nodiscard]] QString priceText(std::size_t item) const;
    // Null where none is open on the item in hand.
    [[nodiscard]] const compute::CautionRead* caution() const;

    std::shared_ptr<const JobNow> now_;
    mutable std::optional<compute::Cautions> cautions_;  // of now_, once they were asked for
    ScopeRows rows_;
    std::map<model::RawId, report::Chip> chips_;
};

}  // namespace ledgerboard::desk
