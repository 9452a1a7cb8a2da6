// What is a sheet of rows with a cell in hand: where does the cell go, which rows are chosen, what
// filters them?
//
// What the rows are and what their cells say is each sheet's own (scope_sheet.h, record_sheet.h);
// SheetView.qml draws any of them. Rows are worked out when they are looked at, so that ten
// thousand of them scroll. The cell in hand stays with its record when the book is read anew.
// Threads: the UI's.
#pragma once

#include <optional>
#include <vector>

#include <QColor>
#include <QStringList>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "core/model/catalog.h"
#include "core/model/id.h"

#include "desktop/client/row_model.h"

namespace ledgerboard::desk {

// A column as the page draws it. `width` is in pixels; 0 takes what is left.
struct SheetColumn {
    Q_GADGET
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(int width MEMBER width)
    Q_PROPERTY(bool right MEMBER right)
    Q_PROPERTY(bool editable MEMBER editable)

  public:
    QString title;
    int width = 0;
    bool right = false;
    bool editable = true;
};

// A row as the page draws it: a heading, or a record with a text for each column.
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
    Q_PROPERTY(int strongCell MEMBER strongCell)
    Q_PROPERTY(bool isBarred MEMBER isBarred)

  public:
    bool isHeading = false;
    QString heading;
    QString aside;  // "5 items"
    QString sum;    // what its lines come to
    QStringList cells;
    QColor ground;  // of the chip in the first column, where the sheet has chips
    QColor ink;
    bool isDim = false;     // in no sum
    int strongCell = -1;    // a cell to be seen first
    bool isBarred = false;  // and that one speaks of a payment that must not be made
};

class Sheet : public RowModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("each page has its own")
    Q_PROPERTY(QVariantList columns READ columns NOTIFY shown)
    Q_PROPERTY(int count READ count NOTIFY shown)
    Q_PROPERTY(bool isEmpty READ isEmpty NOTIFY shown)
    Q_PROPERTY(bool isReady READ isReady NOTIFY shown)
    Q_PROPERTY(int place READ place WRITE setPlace NOTIFY moved)
    Q_PROPERTY(int from READ from NOTIFY moved)
    Q_PROPERTY(int column READ column WRITE setColumn NOTIFY moved)
    Q_PROPERTY(QString filter READ filter WRITE setFilter NOTIFY shown)
    Q_PROPERTY(QString itemText READ itemText NOTIFY detailChanged)
    Q_PROPERTY(QStringList details READ details NOTIFY detailChanged)
    Q_PROPERTY(QString countText READ countText NOTIFY shown)
    Q_PROPERTY(bool onItem READ onItem NOTIFY moved)
    Q_PROPERTY(bool hasChips READ hasChips CONSTANT)
    Q_PROPERTY(int asideColumn READ asideColumn CONSTANT)
    Q_PROPERTY(int sumColumn READ sumColumn CONSTANT)

  public:
    using RowModel::RowModel;

    // Moves the cell in hand, within the sheet and over headings; with `extend` the rows between
    // stay chosen.
    Q_INVOKABLE void move(int down, int right, bool extend);
    Q_INVOKABLE void toEnd(bool last);
    // What typing begins with in the cell in hand; its text.
    [[nodiscard]] Q_INVOKABLE virtual QString cellText() const = 0;
    [[nodiscard]] Q_INVOKABLE virtual bool canEdit() const = 0;
    // Names that may stand in the cell in hand and go with what was typed.
    [[nodiscard]] Q_INVOKABLE virtual QStringList choices(const QString& typed) const = 0;
    // Writes the cell in hand; false where it was refused, which Desk says why.
    Q_INVOKABLE virtual bool put(const QString& text) = 0;

    // The top chosen row's cell into the others chosen.
    Q_INVOKABLE virtual void fill() {}

    Q_INVOKABLE virtual void dropItems() {}

    // The chosen rows with the headings, tabs between the cells, on the clipboard.
    Q_INVOKABLE virtual void copyRows();

    [[nodiscard]] virtual QVariantList columns() const = 0;
    // Whether there is nothing to show, whatever the filter.
    [[nodiscard]] virtual bool isEmpty() const = 0;
    [[nodiscard]] virtual bool isReady() const = 0;
    // What is in hand, and what else is known of it.
    [[nodiscard]] virtual QString itemText() const = 0;
    [[nodiscard]] virtual QStringList details() const = 0;
    [[nodiscard]] virtual QString countText() const = 0;

    // Whether the first column is a chip of two letters.
    [[nodiscard]] virtual bool hasChips() const { return false; }

    // Under which columns a heading's `aside` and `sum` stand; -1 for nowhere.
    [[nodiscard]] virtual int asideColumn() const { return -1; }

    [[nodiscard]] virtual int sumColumn() const { return -1; }

    [[nodiscard]] int place() const { return place_; }

    void setPlace(int place);

    [[nodiscard]] int from() const { return from_; }

    [[nodiscard]] int column() const { return column_; }

    void setColumn(int column);

    [[nodiscard]] QString filter() const { return filter_; }

    void setFilter(const QString& filter);

    [[nodiscard]] bool onItem() const { return isItem(place_); }

  signals:
    void shown();
    void moved();
    void detailChanged();

  protected:
    [[nodiscard]] QVariant drawnAt(int place) const override;

    // Takes the rows anew, as the filter asks.
    virtual void arrange() = 0;
    [[nodiscard]] virtual bool isItem(int place) const = 0;
    // Of a row that is an item.
    [[nodiscard]] virtual model::RawId idAt(int place) const = 0;
    [[nodiscard]] virtual SheetRow rowAt(int place) const = 0;
    [[nodiscard]] virtual int columnTotal() const = 0;

    // The places of the chosen items, from top to bottom.
    [[nodiscard]] std::vector<int> chosenPlaces() const;
    // The record in hand, wherever it stands now; else the row at the same height.
    void findPlace();
    // Tells the page that everything may say something else.
    void tell();

    // Takes this record in hand as soon as it is there.
    void want(const model::RawId& id, int column);

    QString filter_;

  private:
    void stepTo(int place, int column, bool extend);

    int place_ = -1;
    int from_ = -1;
    int column_ = 0;
    model::RawId inHand_;
};

}  // namespace ledgerboard::desk
