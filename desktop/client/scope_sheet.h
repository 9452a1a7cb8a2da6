// What does the scope sheet show, which cell is in hand, and what do its keys do?
//
// Rows are worked out when they are looked at, so that ten thousand of them scroll. The cell in
// hand stays with its item when the book is read anew. Threads: the UI's.
#pragma once

#include <map>
#include <memory>

#include <QAbstractListModel>
#include <QColor>
#include <QStringList>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "core/report/theme.h"

#include "desktop/client/now/job_now.h"
#include "desktop/client/now/scope_rows.h"
#include "desktop/client/scope_columns.h"

namespace ledgerboard::desk {

// A row as the page draws it: a heading, or an item with a text for each column.
struct SheetRow {
    Q_GADGET
    Q_PROPERTY(bool isHeading MEMBER isHeading)
    Q_PROPERTY(QString heading MEMBER heading)
    Q_PROPERTY(QString aside MEMBER aside)
    Q_PROPERTY(QString sum MEMBER sum)
    Q_PROPERTY(QStringList cells MEMBER cells)
    Q_PROPERTY(QColor ground MEMBER ground)
    Q_PROPERTY(QColor ink MEMBER ink)
    Q_PROPERTY(bool isDim MEMBER isDim)

  public:
    bool isHeading = false;
    QString heading;
    QString aside;  // "5 items"
    QString sum;    // what its lines come to
    QStringList cells;
    QColor ground;
    QColor ink;
    bool isDim = false;  // kept, or an option that is not the one carried: in no sum
};

class ScopeSheet : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantList columns READ columns NOTIFY shown)
    Q_PROPERTY(int count READ count NOTIFY shown)
    Q_PROPERTY(bool isEmpty READ isEmpty NOTIFY shown)
    Q_PROPERTY(bool isReady READ isReady NOTIFY shown)
    Q_PROPERTY(int place READ place WRITE setPlace NOTIFY moved)
    Q_PROPERTY(int from READ from NOTIFY moved)
    Q_PROPERTY(int column READ column WRITE setColumn NOTIFY moved)
    Q_PROPERTY(QString filter READ filter WRITE setFilter NOTIFY shown)
    Q_PROPERTY(QString groupText READ groupText NOTIFY shown)
    Q_PROPERTY(QString countText READ countText NOTIFY shown)
    Q_PROPERTY(QString lineSum READ lineSum NOTIFY shown)
    Q_PROPERTY(QString budgetSum READ budgetSum NOTIFY shown)
    Q_PROPERTY(bool hasBaseline READ hasBaseline NOTIFY shown)
    Q_PROPERTY(QString itemText READ itemText NOTIFY detailChanged)
    Q_PROPERTY(QStringList details READ details NOTIFY detailChanged)
    Q_PROPERTY(QString floorArea READ floorArea NOTIFY moved)
    Q_PROPERTY(QString wallArea READ wallArea NOTIFY moved)
    Q_PROPERTY(bool onItem READ onItem NOTIFY moved)

  public:
    static constexpr int kRowRole = Qt::UserRole;

    explicit ScopeSheet(QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    // Moves the cell in hand, within the sheet and over headings; with `extend` the rows between
    // stay chosen.
    Q_INVOKABLE void move(int down, int right, bool extend);
    Q_INVOKABLE void toEnd(bool last);
    // What typing begins with in the cell in hand; its text.
    [[nodiscard]] Q_INVOKABLE QString cellText() const;
    [[nodiscard]] Q_INVOKABLE bool canEdit() const;
    [[nodiscard]] Q_INVOKABLE QStringList choices(const QString& typed) const;
    // Writes the cell in hand; false where it was refused, which Desk says why.
    Q_INVOKABLE bool put(const QString& text);
    Q_INVOKABLE void fill();
    Q_INVOKABLE void dropItems();
    Q_INVOKABLE void usePriceBook();
    // "replace faucet", "Hall bath: replace faucet": a new item, which is then in hand.
    Q_INVOKABLE bool addItem(const QString& said);
    Q_INVOKABLE void nextGroup();
    // The chosen rows with the headings, tabs between the cells, on the clipboard.
    Q_INVOKABLE void copyRows();
    // Puts a quantity, in its unit where the item has none, into the item in hand.
    Q_INVOKABLE bool putQuantity(const QString& quantity, const QString& unit);

    [[nodiscard]] QVariantList columns() const;

    [[nodiscard]] int count() const { return static_cast<int>(rows_.rows.size()); }

    [[nodiscard]] bool isEmpty() const { return now_ != nullptr && now_->rows.items.empty(); }

    [[nodiscard]] bool isReady() const { return now_ != nullptr; }

    [[nodiscard]] int place() const { return place_; }

    void setPlace(int place);

    [[nodiscard]] int from() const { return from_; }

    [[nodiscard]] int column() const { return column_; }

    void setColumn(int column);

    [[nodiscard]] QString filter() const { return filter_; }

    void setFilter(const QString& filter);

    [[nodiscard]] QString groupText() const;
    [[nodiscard]] QString countText() const;
    [[nodiscard]] QString lineSum() const;
    [[nodiscard]] QString budgetSum() const;
    [[nodiscard]] bool hasBaseline() const;
    // What is in hand, what it is priced by, and what else is known of it.
    [[nodiscard]] QString itemText() const;
    [[nodiscard]] QStringList details() const;

    [[nodiscard]] bool onItem() const { return isItem(place_); }

    // Sizes of the space of the item in hand, in square feet; empty where not known.
    [[nodiscard]] QString floorArea() const;
    [[nodiscard]] QString wallArea() const;

    // The item in hand; empty where none is.
    [[nodiscard]] std::optional<std::size_t> item() const;
    // The space of the item in hand, with its sizes; null where it has none.
    [[nodiscard]] const model::Space* space() const;

  signals:
    void shown();
    void moved();
    void detailChanged();

  private:
    void follow();
    void arrange();
    [[nodiscard]] bool isItem(int place) const;
    [[nodiscard]] std::vector<std::size_t> chosen() const;
    [[nodiscard]] SheetRow rowAt(int place) const;
    [[nodiscard]] QStringList cellsOf(std::size_t item) const;
    [[nodiscard]] QString priceText(std::size_t item) const;
    void findPlace();
    void stepTo(int place, int column, bool extend);

    std::shared_ptr<const JobNow> now_;
    ScopeRows rows_;
    std::map<model::RawId, report::Chip> chips_;
    QString filter_;
    int place_ = -1;
    int from_ = -1;
    int column_ = scope_column::kObject;
    model::RawId itemInHand_;
};

}  // namespace ledgerboard::desk
