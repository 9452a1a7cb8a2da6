// What does a sheet of records of one kind show, edited in place field by field?
//
// Each page's sheet says which records there are, in which groups, and what its worked-out columns
// say (contract_sheet.h, spend_sheet.h); the rest is here. Typing filters: every word typed must be
// found in some cell. Threads: the UI's.
#pragma once

#include <memory>

#include "core/model/value.h"

#include "desktop/client/now/job_now.h"
#include "desktop/client/sheet.h"

namespace ledgerboard::desk {

// A column: a field of the record, or, with field 0, something worked out.
struct RecordColumn {
    QString title;
    model::FieldCode field = 0;
    int width = 0;  // pixels; 0 takes what is left
    bool right = false;
};

// A record as the sheet shows it.
struct RecordLine {
    model::RawId id;
    int group = 0;        // lines of one group stand together
    model::Money counts;  // what it adds to the sum of its group
    QStringList cells;
    bool isDim = false;
    int strongCell = -1;
    bool isBarred = false;
};

class RecordSheet : public Sheet {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("each page has its own")
    Q_PROPERTY(QString recordId READ recordId NOTIFY detailChanged)
    Q_PROPERTY(QString kindName READ kindName CONSTANT)

  public:
    // `columns` gives them in the language of the pages.
    using Columns = std::vector<RecordColumn> (*)();

    RecordSheet(model::Kind kind, Columns columns, QObject* parent);

    [[nodiscard]] QString cellText() const override;
    [[nodiscard]] bool canEdit() const override;
    [[nodiscard]] QStringList choices(const QString& typed) const override;
    bool put(const QString& text) override;
    void dropItems() override;

    [[nodiscard]] QVariantList columns() const override;

    [[nodiscard]] int count() const override { return static_cast<int>(rows_.size()); }

    [[nodiscard]] bool isEmpty() const override { return now_ != nullptr && lines_.empty(); }

    [[nodiscard]] bool isReady() const override { return now_ != nullptr; }

    [[nodiscard]] QString itemText() const override;
    [[nodiscard]] QString countText() const override;
    [[nodiscard]] QStringList details() const override;

    [[nodiscard]] int sumColumn() const override { return sumColumn_; }

    [[nodiscard]] int asideColumn() const override { return asideColumn_; }

    // The record in hand; "" for none.
    [[nodiscard]] QString recordId() const;
    // As RecordForm::begin takes it.
    [[nodiscard]] QString kindName() const;

    // Takes a record in hand, with the filter taken away; "" does nothing.
    Q_INVOKABLE void show(const QString& id);
    // Today's day into a field of the record in hand ("signed_on").
    Q_INVOKABLE bool setToday(const QString& field);

  protected:
    // In the order of the sheet, groups together. Requires: now() is not null.
    [[nodiscard]] virtual std::vector<RecordLine> linesOf() = 0;
    [[nodiscard]] virtual QString groupName(int group) const;
    // What is known of the record in hand.
    [[nodiscard]] virtual QStringList detailsOf(const model::RawId& id) const;
    // The record that a field of the line in hand is written into; made by the sheet where it is
    // not there yet.
    virtual bool write(model::FieldCode field, const model::Value& value, const QString& said);

    void arrange() override;
    [[nodiscard]] bool isItem(int place) const override;
    [[nodiscard]] model::RawId idAt(int place) const override;
    [[nodiscard]] SheetRow rowAt(int place) const override;

    [[nodiscard]] int columnTotal() const override { return static_cast<int>(columns_.size()); }

    // Takes the lines anew: what is asked for is something else.
    void reread() { read(); }

    // Begins to show what lies on the desk: last thing in a constructor.
    void begin();

    void setHeadingColumns(int aside, int sum) {
        asideColumn_ = aside;
        sumColumn_ = sum;
    }

    [[nodiscard]] const std::shared_ptr<const JobNow>& now() const { return now_; }

    [[nodiscard]] model::RawId idInHand() const;
    [[nodiscard]] model::Value valueOf(model::FieldCode field) const;
    // A cell for each column that holds a field.
    [[nodiscard]] QStringList fieldCells(const model::RawId& id) const;

    [[nodiscard]] const std::vector<RecordLine>& lines() const { return lines_; }

    [[nodiscard]] model::Kind kind() const { return kind_; }

  private:
    struct Row {
        bool isHeading = false;
        std::size_t line = 0;  // of a heading: its first
        int count = 0;
        model::Money sum;
    };

    void follow();
    void read();

    model::Kind kind_;
    Columns makeColumns_;
    std::vector<RecordColumn> columns_;
    int asideColumn_ = -1;
    int sumColumn_ = -1;
    std::shared_ptr<const JobNow> now_;
    std::vector<RecordLine> lines_;
    std::vector<Row> rows_;
};

}  // namespace ledgerboard::desk
