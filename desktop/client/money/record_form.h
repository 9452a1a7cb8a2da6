// All that is known of one record, field by field, to be edited in place; or a new one to be
// filled in.
//
// A record that is there is written field by field, each undone by itself. A new one is kept as
// one action once it is whole; until then it is nowhere but here. It is a sheet of two columns, so
// that the same keys serve. Threads: the UI's.
#pragma once

#include "desktop/client/money/record_pen.h"
#include "desktop/client/sheet.h"

namespace ledgerboard::desk {

class RecordForm : public Sheet {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool isOpen READ isOpen NOTIFY opened)
    Q_PROPERTY(bool isNew READ isNew NOTIFY opened)
    Q_PROPERTY(QString title READ title NOTIFY shown)

  public:
    explicit RecordForm(QObject* parent = nullptr);

    // Opens on a record of the job; `kind` by its name in JSON.
    Q_INVOKABLE void begin(const QString& kind, const QString& id);
    // Opens on the job itself.
    Q_INVOKABLE void beginJob();
    // A new one, with what is already known of it: { crew: "Tile crew" }. A value that cannot be
    // read is left out.
    Q_INVOKABLE void beginNew(const QString& kind, const QVariantMap& known);
    // Keeps the new record; false where it was refused, which Desk says why.
    Q_INVOKABLE bool keepNew();
    Q_INVOKABLE void close();

    [[nodiscard]] QString cellText() const override;

    [[nodiscard]] bool canEdit() const override { return onItem() && now() != nullptr; }

    [[nodiscard]] QStringList choices(const QString& typed) const override;
    bool put(const QString& text) override;

    [[nodiscard]] QVariantList columns() const override;

    [[nodiscard]] int count() const override { return static_cast<int>(fields_.size()); }

    [[nodiscard]] bool isEmpty() const override { return false; }

    [[nodiscard]] bool isReady() const override { return isOpen_; }

    [[nodiscard]] QString itemText() const override;
    [[nodiscard]] QStringList details() const override;

    [[nodiscard]] QString countText() const override { return {}; }

    [[nodiscard]] bool isOpen() const { return isOpen_; }

    [[nodiscard]] bool isNew() const { return isNew_; }

    [[nodiscard]] virtual QString title() const;

  signals:
    void opened();
    // A new one was kept.
    void kept(const QString& id);

  protected:
    // What else the action of a new record does. `id` is the record's.
    virtual model::Result<void> complete(store::Action& action, const model::RawId& id,
                                         const Draft& draft);

    [[nodiscard]] const Draft& draft() const { return draft_; }

    void fillIn(model::FieldCode field, const model::Value& value) { draft_[field] = value; }

    void arrange() override { tell(); }

    [[nodiscard]] bool isItem(int place) const override { return place >= 0 && place < count(); }

    [[nodiscard]] model::RawId idAt(int) const override { return {}; }

    [[nodiscard]] SheetRow rowAt(int place) const override;

    [[nodiscard]] int columnTotal() const override { return 2; }

    [[nodiscard]] model::Kind kind() const { return kind_; }

    // The record that is open; nil for a new one.
    [[nodiscard]] const model::RawId& record() const { return id_; }

    [[nodiscard]] std::shared_ptr<const JobNow> now() const;
    void look();

  private:
    [[nodiscard]] model::Value valueAt(int place) const;
    void open(model::Kind kind);

    model::Kind kind_ = model::Kind::None;
    model::RawId id_;
    std::vector<model::FieldCode> fields_;
    Draft draft_;
    std::shared_ptr<const JobNow> awaited_;  // read before the row that is open was written anew
    bool isOpen_ = false;
    bool isNew_ = false;
};

}  // namespace ledgerboard::desk
