#include "desktop/client/money/record_sheet.h"

#include <algorithm>

#include "core/compute/pricing.h"
#include "core/model/overflow.h"
#include "core/model/value.h"

#include "desktop/client/desk.h"
#include "desktop/client/money/field_words.h"
#include "desktop/client/money/record_pen.h"
#include "desktop/client/said.h"

namespace ledgerboard::desk {

RecordSheet::RecordSheet(model::Kind kind, Columns columns, QObject* parent)
    : Sheet(parent), kind_(kind), makeColumns_(columns), columns_(columns()) {
    connect(Desk::here(), &Desk::wordsChanged, this, [this] {
        columns_ = makeColumns_();
        read();
    });
    connect(Desk::here(), &Desk::changed, this, &RecordSheet::follow);
}

void RecordSheet::begin() {
    follow();
}

void RecordSheet::follow() {
    auto now = Desk::here()->now();
    if (now == now_) {
        return;
    }
    now_ = std::move(now);
    read();
}

void RecordSheet::read() {
    lines_.clear();
    if (now_ != nullptr) {
        auto made = model::guarded(
            [this]() -> model::Result<std::vector<RecordLine>> { return linesOf(); });
        if (made.ok()) {
            lines_ = std::move(made).value();
        } else {
            Desk::here()->sayNotKept(Said::trouble(made.error()));
        }
    }
    arrange();
}

void RecordSheet::arrange() {
    const QStringList words = filter_.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    const bool hasGroups = !groupName(lines_.empty() ? 0 : lines_.front().group).isEmpty();
    beginResetModel();
    rows_.clear();
    std::size_t heading = 0;
    for (std::size_t k = 0; k < lines_.size(); ++k) {
        const RecordLine& line = lines_[k];
        const bool fits = std::all_of(words.begin(), words.end(), [&line](const QString& word) {
            return std::any_of(line.cells.begin(), line.cells.end(), [&word](const QString& cell) {
                return cell.contains(word, Qt::CaseInsensitive);
            });
        });
        if (!fits) {
            continue;
        }
        if (hasGroups && (rows_.empty() || lines_[rows_[heading].line].group != line.group)) {
            heading = rows_.size();
            rows_.push_back({true, k, 0, {}});
        }
        if (hasGroups) {
            ++rows_[heading].count;
            rows_[heading].sum += line.counts;
        }
        rows_.push_back({false, k, 0, {}});
    }
    endResetModel();
    findPlace();
    tell();
}

bool RecordSheet::isItem(int place) const {
    return place >= 0 && place < count() && !rows_[static_cast<std::size_t>(place)].isHeading;
}

model::RawId RecordSheet::idAt(int place) const {
    return lines_[rows_[static_cast<std::size_t>(place)].line].id;
}

SheetRow RecordSheet::rowAt(int place) const {
    const Row& row = rows_[static_cast<std::size_t>(place)];
    const RecordLine& line = lines_[row.line];
    SheetRow out;
    out.isHeading = row.isHeading;
    if (row.isHeading) {
        out.heading = groupName(line.group);
        out.aside = asideColumn_ < 0 ? QString() : tr("%n row(s)", nullptr, row.count);
        out.sum = sumColumn_ < 0 || row.sum == model::Money{} ? QString() : Said::money(row.sum);
        return out;
    }
    out.cells = line.cells;
    out.isDim = line.isDim;
    out.strongCell = line.strongCell;
    out.isBarred = line.isBarred;
    return out;
}

QVariantList RecordSheet::columns() const {
    QVariantList list;
    for (const auto& column : columns_) {
        SheetColumn shown;
        shown.title = column.title;
        shown.width = column.width;
        shown.right = column.right;
        shown.editable = column.field != 0;
        list << QVariant::fromValue(shown);
    }
    return list;
}

QStringList RecordSheet::fieldCells(const model::RawId& id) const {
    QStringList cells;
    for (const auto& column : columns_) {
        cells << (column.field == 0 || id.isNil()
                      ? QString()
                      : shownText(now_, column.field, valueIn(*now_, column.field, id)));
    }
    return cells;
}

model::RawId RecordSheet::idInHand() const {
    return onItem() ? idAt(place()) : model::RawId();
}

model::Value RecordSheet::valueOf(model::FieldCode field) const {
    const auto id = idInHand();
    return id.isNil() ? model::Value() : valueIn(*now_, field, id);
}

QString RecordSheet::recordId() const {
    const auto id = idInHand();
    return id.isNil() ? QString() : QString::fromStdString(id.toString());
}

QString RecordSheet::kindName() const {
    return Said::text(model::infoOf(kind_).name);
}

QString RecordSheet::cellText() const {
    const auto field = columns_[static_cast<std::size_t>(column())].field;
    return field == 0 || !onItem() ? QString() : typedText(now_, field, valueOf(field));
}

bool RecordSheet::canEdit() const {
    return onItem() && columns_[static_cast<std::size_t>(column())].field != 0;
}

QStringList RecordSheet::choices(const QString& typed) const {
    return canEdit() ? choicesFor(now_, columns_[static_cast<std::size_t>(column())].field, typed)
                     : QStringList();
}

bool RecordSheet::put(const QString& text) {
    if (!canEdit()) {
        return false;
    }
    if (text.trimmed() == cellText()) {
        return true;
    }
    const auto field = columns_[static_cast<std::size_t>(column())].field;
    auto value = readField(now_, field, text);
    if (!value.ok()) {
        Desk::here()->sayNotKept(Said::trouble(value.error()));
        return false;
    }
    const QString shown =
        model::isEmpty(value.value()) ? tr("nothing") : typedText(now_, field, value.value());
    return write(field, value.value(),
                 tr("%1, %2: %3").arg(itemText(), FieldWords::heading(field), shown));
}

bool RecordSheet::write(model::FieldCode field, const model::Value& value, const QString& said) {
    Desk& desk = *Desk::here();
    model::RawId stands;
    const auto action =
        setField(desk.book(), now_, field, idInHand(), value, desk.instant(), stands);
    if (!desk.keep(action, said)) {
        return false;
    }
    want(stands, column());
    return true;
}

bool RecordSheet::setToday(const QString& name) {
    const model::Field* field = model::fieldNamed(kind_, name.toStdString());
    if (field == nullptr || !onItem()) {
        return false;
    }
    return write(field->code, model::valueOf(now_->today),
                 tr("%1, %2: %3")
                     .arg(itemText(), FieldWords::heading(field->code),
                          Said::day(now_->today, now_->today)));
}

void RecordSheet::dropItems() {
    const auto places = chosenPlaces();
    if (places.empty()) {
        return;
    }
    const std::string title(model::infoOf(kind_).title);
    store::Action action("drop " + (places.size() == 1
                                        ? title + " " + namesIn(now_).nameOf(idAt(places.front()))
                                        : std::to_string(places.size()) + " records"));
    for (const int k : places) {
        action.drop(kind_, idAt(k));
    }
    Desk::here()->keep(action, tr("%n row(s) dropped", nullptr, static_cast<int>(places.size())));
}

void RecordSheet::show(const QString& id) {
    const auto raw = model::RawId::parse(id.toStdString());
    if (!raw.ok()) {
        return;
    }
    want(raw.value(), column());
    filter_.clear();
    // One that was only just kept is there once the book is read anew.
    const bool isThere = std::any_of(lines_.begin(), lines_.end(), [&](const RecordLine& line) {
        return line.id == raw.value();
    });
    if (isThere) {
        arrange();
    }
}

QString RecordSheet::itemText() const {
    return onItem() ? Said::text(namesIn(now_).nameOf(idInHand())) : QString();
}

QString RecordSheet::countText() const {
    const auto items =
        std::count_if(rows_.begin(), rows_.end(), [](const Row& row) { return !row.isHeading; });
    return tr("%n row(s)", nullptr, static_cast<int>(items));
}

QString RecordSheet::groupName(int) const {
    return {};
}

QStringList RecordSheet::details() const {
    return onItem() ? detailsOf(idInHand()) : QStringList();
}

QStringList RecordSheet::detailsOf(const model::RawId&) const {
    return {};
}

}  // namespace ledgerboard::desk
