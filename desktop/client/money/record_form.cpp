#include "desktop/client/money/record_form.h"

#include "core/model/value.h"

#include "desktop/client/desk.h"
#include "desktop/client/money/field_words.h"
#include "desktop/client/said.h"

namespace ledgerboard::desk {

using model::Kind;

namespace {

constexpr int kLabelWidth = 168;
constexpr int kValue = 1;

}  // namespace

RecordForm::RecordForm(QObject* parent) : Sheet(parent) {
    connect(Desk::here(), &Desk::changed, this, &RecordForm::look);
}

std::shared_ptr<const JobNow> RecordForm::now() const {
    return Desk::here()->now();
}

// What is said may be another; the fields stay.
void RecordForm::look() {
    if (!isOpen_) {
        return;
    }
    if (awaited_ != nullptr && awaited_ == now()) {
        return;  // the row that was written anew is not read yet
    }
    awaited_.reset();
    if (now() == nullptr || (!isNew_ && namesIn(now()).kindOf(id_) == Kind::None)) {
        close();
        return;
    }
    redraw();
    tell();
}

void RecordForm::open(Kind kind) {
    beginResetModel();
    kind_ = kind;
    fields_ = FieldWords::fields(kind);
    endResetModel();
    isOpen_ = true;
    findPlace();
    setColumn(kValue);
    setPlace(0);
    emit opened();
    tell();
}

void RecordForm::begin(const QString& kind, const QString& id) {
    const auto known = model::kindNamed(kind.toStdString());
    const auto raw = model::RawId::parse(id.toStdString());
    if (!known || !raw.ok() || now() == nullptr) {
        return;
    }
    id_ = raw.value();
    isNew_ = false;
    draft_.clear();
    open(*known);
}

void RecordForm::beginJob() {
    if (now() != nullptr) {
        begin(QStringLiteral("job"), QString::fromStdString(now()->rows.job.id.raw().toString()));
    }
}

void RecordForm::beginNew(const QString& kind, const QVariantMap& known) {
    const auto meant = model::kindNamed(kind.toStdString());
    if (!meant || now() == nullptr) {
        return;
    }
    draft_.clear();
    id_ = {};
    isNew_ = true;
    for (auto it = known.begin(); it != known.end(); ++it) {
        const model::Field* field = model::fieldNamed(*meant, it.key().toStdString());
        if (field == nullptr || it.value().toString().isEmpty()) {
            continue;
        }
        if (auto value = readField(now(), field->code, it.value().toString()); value.ok()) {
            draft_[field->code] = value.value();
        }
    }
    open(*meant);
}

void RecordForm::close() {
    isOpen_ = false;
    isNew_ = false;
    draft_.clear();
    emit opened();
}

model::Value RecordForm::valueAt(int place) const {
    const auto field = fields_[static_cast<std::size_t>(place)];
    if (!isNew_) {
        return valueIn(*now(), field, id_);
    }
    const auto found = draft_.find(field);
    return found == draft_.end() ? model::Value() : found->second;
}

QString RecordForm::cellText() const {
    return canEdit()
               ? typedText(now(), fields_[static_cast<std::size_t>(place())], valueAt(place()))
               : QString();
}

QStringList RecordForm::choices(const QString& typed) const {
    return canEdit() ? choicesFor(now(), fields_[static_cast<std::size_t>(place())], typed)
                     : QStringList();
}

bool RecordForm::put(const QString& text) {
    if (!canEdit()) {
        return false;
    }
    if (text.trimmed() == cellText()) {
        return true;
    }
    Desk& desk = *Desk::here();
    const auto field = fields_[static_cast<std::size_t>(place())];
    auto value = readField(now(), field, text);
    if (!value.ok()) {
        desk.sayNotKept(Said::trouble(value.error()));
        return false;
    }
    desk.forgetKept();
    if (isNew_) {
        draft_[field] = value.value();
        look();
        return true;
    }
    const QString shown =
        model::isEmpty(value.value()) ? tr("nothing") : typedText(now(), field, value.value());
    const QString said =
        tr("%1, %2: %3")
            .arg(Said::text(namesIn(now()).nameOf(id_)), FieldWords::heading(field), shown);
    model::RawId stands;
    const auto action =
        setField(desk.book(), now(), field, id_, value.value(), desk.instant(), stands);
    if (!desk.keep(action, said)) {
        return false;
    }
    awaited_ = stands == id_ ? nullptr : now();
    id_ = stands;
    return true;
}

bool RecordForm::keepNew() {
    if (!isOpen_ || !isNew_ || now() == nullptr) {
        return false;
    }
    Desk& desk = *Desk::here();
    bool saysSomething = false;
    for (const auto& [field, value] : draft_) {
        saysSomething = saysSomething || !model::isEmpty(value);
    }
    if (!saysSomething) {
        desk.sayNotKept(tr("Nothing is filled in yet: Enter on a line, or begin to type."));
        return false;
    }
    const model::RawId id = desk.book().newId(desk.instant());
    store::Action action = newRecord(*now(), kind_, id, draft_);
    if (auto whole = complete(action, id, draft_); !whole.ok()) {
        desk.sayNotKept(Said::trouble(whole.error()));
        return false;
    }
    if (!desk.keep(action, tr("Added: %1").arg(FieldWords::kind(kind_)))) {
        return false;
    }
    close();
    emit kept(QString::fromStdString(id.toString()));
    return true;
}

model::Result<void> RecordForm::complete(store::Action&, const model::RawId&, const Draft&) {
    return {};
}

QVariantList RecordForm::columns() const {
    SheetColumn label;
    label.title = tr("What");
    label.width = kLabelWidth;
    label.editable = false;
    SheetColumn value;
    value.title = tr("As it is");
    return {QVariant::fromValue(label), QVariant::fromValue(value)};
}

SheetRow RecordForm::rowAt(int place) const {
    SheetRow row;
    row.cells << FieldWords::heading(fields_[static_cast<std::size_t>(place)])
              << (now() == nullptr
                      ? QString()
                      : typedText(now(), fields_[static_cast<std::size_t>(place)], valueAt(place)));
    return row;
}

QString RecordForm::itemText() const {
    return onItem() ? FieldWords::heading(fields_[static_cast<std::size_t>(place())]) : QString();
}

// What may be typed in the field in hand.
QStringList RecordForm::details() const {
    if (!onItem()) {
        return {};
    }
    const model::Field& field = *model::fieldOf(fields_[static_cast<std::size_t>(place())]);
    switch (field.type) {
        case model::FieldType::Words: {
            QStringList words;
            for (const auto& word : field.words) {
                if (!word.empty()) {
                    words << FieldWords::word(word).toLower();
                }
            }
            return {tr("One of: %1").arg(words.join(QStringLiteral(", ")))};
        }
        case model::FieldType::Date:
            return {tr("A day: 2026-05-22, or 22 May 2026")};
        case model::FieldType::Flag:
            return {tr("“yes”, or nothing")};
        case model::FieldType::Amounts:
            return {tr("Name and sum, with semicolons between: taxes 210; insurance 95")};
        case model::FieldType::Steps:
            return {tr("Name and percent, with semicolons between: rough passed 45; done 55")};
        case model::FieldType::ItemAmounts:
            return {
                tr("Item = sum, with semicolons between: Kitchen/outlets=830; "
                   "Attic/insulation=120")};
        case model::FieldType::Refs:
            if (field.meant == Kind::Option) {
                return {tr("Options with semicolons between, as they are named here")};
            }
            return {tr("Items with semicolons between: Kitchen/outlets; Attic/insulation")};
        case model::FieldType::Percent:
            return {tr("A percent: 10")};
        default:
            return {};
    }
}

QString RecordForm::title() const {
    if (!isOpen_) {
        return {};
    }
    const QString kind = FieldWords::kind(kind_);
    return isNew_ ? tr("New: %1").arg(kind) : Said::text(namesIn(now()).nameOf(id_));
}

}  // namespace ledgerboard::desk
