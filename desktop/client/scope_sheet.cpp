#include "desktop/client/scope_sheet.h"

#include <algorithm>

#include <QClipboard>
#include <QGuiApplication>

#include "core/model/overflow.h"
#include "core/model/value.h"
#include "core/report/theme.h"

#include "desktop/client/desk.h"
#include "desktop/client/mark_work.h"
#include "desktop/client/preferences.h"
#include "desktop/client/said.h"
#include "desktop/client/scope_edit.h"

namespace ledgerboard::desk {

using compute::Counting;
using compute::PricedBy;
namespace f = model::field;

namespace {

constexpr int kGroups = 4;

GroupBy groupNow() {
    return static_cast<GroupBy>(std::clamp(Preferences::here()->scopeGroup(), 0, kGroups - 1));
}

QString quantityText(const std::optional<model::Quantity>& quantity) {
    return quantity ? Said::text(quantity->toString()) : QString();
}

QString centsText(const std::optional<model::Money>& money) {
    return money ? Said::cents(*money) : QString();
}

}  // namespace

ScopeSheet::ScopeSheet(QObject* parent) : Sheet(parent) {
    setColumn(scope_column::kObject);
    connect(Desk::here(), &Desk::changed, this, &ScopeSheet::follow);
    connect(Preferences::here(), &Preferences::changed, this, &ScopeSheet::arrange);
    follow();
}

void ScopeSheet::follow() {
    auto now = Desk::here()->now();
    if (now == now_) {
        return;
    }
    now_ = std::move(now);
    cautions_.reset();
    chips_.clear();
    if (now_ != nullptr) {
        std::vector<const model::Space*> spaces;
        for (const auto& space : now_->rows.spaces) {
            spaces.push_back(&space);
        }
        std::stable_sort(spaces.begin(), spaces.end(), [](const auto* a, const auto* b) {
            return a->walkOrder.value_or(INT64_MAX) < b->walkOrder.value_or(INT64_MAX);
        });
        for (std::size_t k = 0; k < spaces.size(); ++k) {
            chips_.emplace(spaces[k]->id.raw(), report::chipFor(spaces[k]->swatch, k));
        }
    }
    arrange();
}

// Takes the rows anew. Where the same items stand in the same order, the rows stay and only what
// they say is looked at again.
void ScopeSheet::arrange() {
    ScopeRows rows;
    if (now_ != nullptr) {
        auto made = model::guarded([this]() -> model::Result<ScopeRows> {
            return scopeRowsOf(*now_, groupNow(), filter_.toStdString());
        });
        if (made.ok()) {
            rows = std::move(made).value();
        } else {
            Desk::here()->sayNotKept(Said::trouble(made.error()));
        }
    }
    const bool isSame = rows.rows.size() == rows_.rows.size() &&
                        std::equal(rows.rows.begin(), rows.rows.end(), rows_.rows.begin(),
                                   [](const ScopeRow& a, const ScopeRow& b) {
                                       return a.isHeading == b.isHeading && a.item == b.item;
                                   });
    if (isSame) {
        rows_ = std::move(rows);
        redraw();
    } else {
        beginResetModel();
        rows_ = std::move(rows);
        endResetModel();
        findPlace();
    }
    tell();
}

bool ScopeSheet::isItem(int place) const {
    return place >= 0 && place < count() && !rows_.rows[static_cast<std::size_t>(place)].isHeading;
}

model::RawId ScopeSheet::idAt(int place) const {
    return now_->rows.items[rows_.rows[static_cast<std::size_t>(place)].item].id.raw();
}

QString ScopeSheet::recordId() const {
    const auto here = item();
    return here ? QString::fromStdString(now_->rows.items[*here].id.raw().toString()) : QString();
}

std::optional<std::size_t> ScopeSheet::item() const {
    return onItem() ? std::optional(rows_.rows[static_cast<std::size_t>(place())].item)
                    : std::nullopt;
}

const model::Space* ScopeSheet::space() const {
    const auto here = item();
    if (!here) {
        return nullptr;
    }
    for (const auto& space : now_->rows.spaces) {
        if (space.id == now_->rows.items[*here].space) {
            return &space;
        }
    }
    return nullptr;
}

std::vector<std::size_t> ScopeSheet::chosen() const {
    std::vector<std::size_t> items;
    for (const int k : chosenPlaces()) {
        items.push_back(rows_.rows[static_cast<std::size_t>(k)].item);
    }
    return items;
}

void ScopeSheet::nextGroup() {
    Preferences::here()->setScopeGroup((static_cast<int>(groupNow()) + 1) % kGroups);
}

QString ScopeSheet::cellText() const {
    const auto here = item();
    const auto field = scopeColumns()[static_cast<std::size_t>(column())].field;
    return here && field != 0 ? Said::text(desk::cellText(*now_, *here, field)) : QString();
}

bool ScopeSheet::canEdit() const {
    return item().has_value() && scopeColumns()[static_cast<std::size_t>(column())].field != 0;
}

QStringList ScopeSheet::choices(const QString& typed) const {
    QStringList list;
    if (canEdit()) {
        for (const auto& name :
             cellChoices(*now_, scopeColumns()[static_cast<std::size_t>(column())].field,
                         typed.toStdString())) {
            list << Said::text(name);
        }
    }
    return list;
}

bool ScopeSheet::put(const QString& text) {
    if (!canEdit()) {
        return false;
    }
    if (text.trimmed() == cellText()) {
        return true;
    }
    Desk& desk = *Desk::here();
    const auto here = *item();
    const auto field = scopeColumns()[static_cast<std::size_t>(column())].field;
    auto action = putCell(desk.book(), *now_, here, field, text.toStdString(), desk.instant());
    if (!action.ok()) {
        desk.sayNotKept(Said::trouble(action.error()));
        return false;
    }
    const QString what = text.trimmed().isEmpty() ? tr("nothing") : text.trimmed();
    return desk.keep(action.value(),
                     tr("%1, %2: %3")
                         .arg(Said::text(itemName(*now_, here)),
                              tr(scopeColumns()[static_cast<std::size_t>(column())].title), what));
}

void ScopeSheet::fill() {
    const auto items = chosen();
    const auto field = scopeColumns()[static_cast<std::size_t>(column())].field;
    if (items.size() < 2 || field == 0) {
        Desk::here()->sayNotKept(
            tr("Choose several rows first: Shift with the arrow down, from the cell to be filled "
               "down."));
        return;
    }
    Desk::here()->keep(fillDown(*now_, items, field),
                       tr("%n row(s) filled", nullptr, static_cast<int>(items.size()) - 1));
}

void ScopeSheet::dropItems() {
    const auto items = chosen();
    if (items.empty()) {
        return;
    }
    store::Action action("drop " + (items.size() == 1 ? itemName(*now_, items.front())
                                                      : std::to_string(items.size()) + " items"));
    for (const std::size_t k : items) {
        action.drop(model::Kind::Item, now_->rows.items[k].id.raw());
    }
    Desk::here()->keep(action, tr("%n item(s) dropped", nullptr, static_cast<int>(items.size())));
}

void ScopeSheet::usePriceBook() {
    const auto items = chosen();
    if (!items.empty()) {
        Desk::here()->keep(priceFromBook(*now_, items), tr("Priced from the price book"));
    }
}

void ScopeSheet::finish() {
    const auto items = chosen();
    if (items.empty()) {
        return;
    }
    Desk& desk = *Desk::here();
    auto made =
        markWork(desk.book(), *now_, items, compute::finishedWish(), now_->today, desk.instant());
    if (!made.ok()) {
        desk.sayNotKept(Said::trouble(made.error()));
        return;
    }
    if (!made.value().heldUp.empty()) {
        const auto& first = made.value().heldUp.front();
        for (int k = 0; k < count(); ++k) {
            if (isItem(k) && idAt(k) == first.item.raw()) {
                setPlace(k);
                break;
            }
        }
        desk.sayNotKept(tr("%1 is not marked while a caution of it is open: %2. Read it first.")
                            .arg(Said::text(first.what), Said::told(first.about)));
        return;
    }
    const int marked = made.value().marked;
    if (marked == 0) {
        desk.sayPlainly(tr("That is finished already."));
        return;
    }
    desk.keep(made.value().action,
              items.size() == 1 ? tr("%1: finished").arg(Said::text(itemName(*now_, items.front())))
                                : tr("%n item(s) finished", nullptr, marked));
}

bool ScopeSheet::acknowledge(const QString& found) {
    const auto* open = caution();
    if (open == nullptr) {
        return false;
    }
    Desk& desk = *Desk::here();
    return desk.keep(
        acknowledgement(desk.book(), *now_, *open, found.trimmed().toStdString(), desk.instant()),
        tr("%1, read: %2").arg(Said::told(open->about), Said::text(open->what)));
}

const compute::CautionRead* ScopeSheet::caution() const {
    const auto here = item();
    if (!here) {
        return nullptr;
    }
    if (!cautions_) {
        auto read = model::guarded([this]() -> model::Result<compute::Cautions> {
            return compute::cautionsOf(now_->rows, now_->today);
        });
        cautions_ = read.ok() ? std::move(read).value() : compute::Cautions{};
    }
    const auto open = cautions_->holdingUp(now_->rows.items[*here].id);
    return open.empty() ? nullptr : open.front();
}

QString ScopeSheet::cautionAbout() const {
    const auto* open = caution();
    return open == nullptr ? QString() : Said::told(open->about);
}

QString ScopeSheet::cautionText() const {
    const auto* open = caution();
    if (open == nullptr) {
        return {};
    }
    QStringList parts{Said::told(open->text()), Said::told(open->consequence())};
    parts.removeAll(QString());
    return parts.isEmpty() ? Said::told(open->why) : parts.join(QStringLiteral("\n\n"));
}

QString ScopeSheet::cautionSource() const {
    const auto* open = caution();
    if (open == nullptr) {
        return {};
    }
    QStringList parts{tr("Raised by: %1.").arg(Said::told(open->why).trimmed())};
    if (!open->source().empty()) {
        parts << tr("Source: %1.").arg(Said::told(open->source()));
    }
    parts << Said::told(compute::kCautionReminder);
    return parts.join(QLatin1Char(' '));
}

bool ScopeSheet::addItem(const QString& said) {
    Desk& desk = *Desk::here();
    if (now_ == nullptr) {
        return false;
    }
    const auto here = item();
    const auto space = here ? now_->rows.items[*here].space : model::Id<model::Kind::Space>();
    auto made = newItem(desk.book(), *now_, said.toStdString(), space, desk.instant());
    if (!made.ok()) {
        desk.sayNotKept(Said::trouble(made.error()));
        return false;
    }
    if (!desk.keep(made.value().action, tr("Added: %1").arg(said.trimmed()))) {
        return false;
    }
    filter_.clear();
    want(made.value().id.raw(), scope_column::kQuantity);
    return true;
}

bool ScopeSheet::putQuantity(const QString& quantity, const QString& unit) {
    const auto here = item();
    if (!here) {
        return false;
    }
    Desk& desk = *Desk::here();
    const model::Field& field = *model::fieldOf(f::Item::quantity);
    auto value = model::parseValue(field, quantity.toStdString(), {});
    if (!value.ok()) {
        desk.sayNotKept(Said::trouble(value.error()));
        return false;
    }
    const model::Item& row = now_->rows.items[*here];
    store::Action action("set " + itemName(*now_, *here) + ", Quantity");
    action.set(row.id.raw(), f::Item::quantity, value.value());
    if (row.unit.empty() && !unit.isEmpty()) {
        action.set(row.id.raw(), f::Item::unit, model::valueOf(unit.toStdString()));
    }
    return desk.keep(action,
                     tr("%1: %2 %3").arg(Said::text(itemName(*now_, *here)), quantity, unit));
}

void ScopeSheet::copyRows() {
    QStringList lines;
    QStringList titles;
    for (const auto& column : scopeColumns()) {
        if (column.field != 0) {
            titles << Said::text(model::fieldOf(column.field)->heading);
        }
    }
    lines << titles.join(QLatin1Char('\t'));
    for (const std::size_t k : chosen()) {
        QStringList cells;
        for (const auto& column : scopeColumns()) {
            if (column.field != 0) {
                cells << Said::text(desk::cellText(*now_, k, column.field))
                             .replace(QLatin1Char('\t'), QLatin1Char(' '))
                             .replace(QLatin1Char('\n'), QLatin1Char(' '));
            }
        }
        lines << cells.join(QLatin1Char('\t'));
    }
    QGuiApplication::clipboard()->setText(lines.join(QLatin1Char('\n')));
    Desk::here()->sayPlainly(tr("%n row(s) copied", nullptr, static_cast<int>(lines.size()) - 1));
}

QString ScopeSheet::floorArea() const {
    const auto* room = space();
    return room == nullptr ? QString() : quantityText(room->floorArea);
}

QString ScopeSheet::wallArea() const {
    const auto* room = space();
    return room == nullptr ? QString() : quantityText(room->wallArea);
}

QVariantList ScopeSheet::columns() const {
    QVariantList list;
    for (const auto& column : scopeColumns()) {
        SheetColumn shown;
        shown.title = tr(column.title);
        shown.width = column.width;
        shown.right = column.right;
        shown.editable = column.field != 0;
        list << QVariant::fromValue(shown);
    }
    return list;
}

QStringList ScopeSheet::cellsOf(std::size_t item) const {
    const model::Item& row = now_->rows.items[item];
    const auto& line = now_->figures.scope.lines[item];
    QString letters;
    for (const auto& space : now_->rows.spaces) {
        if (space.id == row.space) {
            letters = Said::text(space.shortName.empty() ? space.name : space.shortName)
                          .left(2)
                          .toUpper();
        }
    }
    const bool counts = line.counting == Counting::Counts;
    return {letters,
            Said::treatment(row.treatment),
            Said::text(row.object),
            Said::text(line.trade),
            quantityText(row.quantity),
            Said::text(row.unit),
            centsText(row.unitCostMaterial),
            centsText(row.unitCostLabour),
            centsText(row.lumpSum),
            !counts ? (line.counting == Counting::Kept ? tr("kept") : tr("open"))
            : line.pricing.by == PricedBy::Nothing ? tr("no price")
                                                   : Said::money(line.pricing.line),
            Said::text(crewName(now_->rows, row.crew)),
            quantityText(row.daysLikely)};
}

SheetRow ScopeSheet::rowAt(int place) const {
    const ScopeRow& row = rows_.rows[static_cast<std::size_t>(place)];
    SheetRow out;
    out.isHeading = row.isHeading;
    if (row.isHeading) {
        out.heading = !row.heading.empty()           ? Said::text(row.heading)
                      : groupNow() == GroupBy::Space ? tr("No space")
                      : groupNow() == GroupBy::Trade ? tr("No trade")
                                                     : tr("No crew");
        out.aside = tr("%n item(s)", nullptr, static_cast<int>(row.count));
        out.sum = Said::money(row.line);
        return out;
    }
    out.cells = cellsOf(row.item);
    out.isDim = now_->figures.scope.lines[row.item].counting != Counting::Counts;
    if (const auto chip = chips_.find(now_->rows.items[row.item].space.raw());
        chip != chips_.end()) {
        out.ground = QColor(Said::text(chip->second.ground));
        out.ink = QColor(Said::text(chip->second.text));
    }
    return out;
}

QString ScopeSheet::groupText() const {
    switch (groupNow()) {
        case GroupBy::Space:
            return tr("By space");
        case GroupBy::Trade:
            return tr("By trade");
        case GroupBy::Crew:
            return tr("By crew");
        case GroupBy::Nothing:
            break;
    }
    return tr("In one list");
}

QString ScopeSheet::countText() const {
    QStringList parts{tr("%n item(s)", nullptr, static_cast<int>(rows_.items))};
    if (rows_.counting < rows_.items) {
        parts << tr("%n kept or open, in no sum", nullptr,
                    static_cast<int>(rows_.items - rows_.counting));
    }
    if (rows_.unpriced > 0) {
        parts << tr("%n without a price", nullptr, static_cast<int>(rows_.unpriced));
    }
    return parts.join(QStringLiteral(", "));
}

QString ScopeSheet::lineSum() const {
    return Said::money(rows_.line);
}

QString ScopeSheet::budgetSum() const {
    return Said::money(rows_.budgetNow);
}

bool ScopeSheet::hasBaseline() const {
    return now_ != nullptr && now_->figures.scope.baseline.has_value();
}

QString ScopeSheet::itemText() const {
    const auto here = item();
    if (!here) {
        return {};
    }
    const model::Item& row = now_->rows.items[*here];
    const QString where = Said::text(spaceName(now_->rows, row.space));
    const QString what =
        (Said::treatment(row.treatment) + QLatin1Char(' ') + Said::text(row.object)).trimmed();
    return where.isEmpty() ? what : where + QStringLiteral(": ") + what;
}

QString ScopeSheet::priceText(std::size_t item) const {
    const auto& pricing = now_->figures.scope.lines[item].pricing;
    switch (pricing.by) {
        case PricedBy::LumpSum:
            return tr("Priced by its own lump sum.");
        case PricedBy::OwnUnitCosts:
            return tr("Priced by its own costs a unit.");
        case PricedBy::Nothing:
            return pricing.whyNot.empty() ? QString()
                                          : tr("Not priced: %1.").arg(Said::told(pricing.whyNot));
        case PricedBy::PriceBook:
            break;
    }
    for (const auto& price : now_->rows.prices) {
        if (price.id != pricing.price) {
            continue;
        }
        QString text =
            tr("Priced from the price book, a %1: material %2, labour %3")
                .arg(Said::text(price.unit), centsText(price.material.value_or(model::Money{})),
                     centsText(price.labour.value_or(model::Money{})));
        text += price.waste ? tr(", waste %1").arg(Said::percent(*price.waste)) : QString();
        text += price.source.empty() ? tr("; no source was entered")
                                     : tr("; source: %1").arg(Said::text(price.source));
        text += price.asOf ? tr(", as of %1").arg(Said::day(*price.asOf, now_->today)) : QString();
        return text + QLatin1Char('.');
    }
    return tr("Priced from the price book.");
}

QStringList ScopeSheet::details() const {
    QStringList list;
    const auto here = item();
    if (!here) {
        return list;
    }
    const model::Item& row = now_->rows.items[*here];
    const auto& line = now_->figures.scope.lines[*here];
    const auto& figures = now_->figures.lines[*here];
    if (const QString about = cautionAbout(); !about.isEmpty()) {
        list << tr("A caution is open: %1. Ctrl+K to read it; until then its work is not marked.")
                    .arg(about);
    }
    QStringList money;
    const QString price = line.counting == Counting::Kept ? QString() : priceText(*here);
    if (!price.isEmpty()) {
        money << price;
    }
    if (line.pricing.low && line.pricing.high) {
        money << tr("Between %1 and %2.")
                     .arg(Said::money(*line.pricing.low), Said::money(*line.pricing.high));
    }
    if (hasBaseline() && line.isBudgeted()) {
        money << tr("Budget now %1, billed %2, forecast %3.")
                     .arg(Said::money(figures.budgetNow), Said::money(figures.billed),
                          Said::money(figures.forecast));
    }
    if (line.counting == Counting::Counts && figures.shown > model::Percent{}) {
        money << (figures.shown >= model::Percent::whole()
                      ? tr("Finished.")
                      : tr("Done %1.").arg(Said::percent(figures.shown)));
    }
    list << money.join(QLatin1Char(' '));
    QStringList words;
    if (line.counting == Counting::Kept) {
        words << (row.reason.empty() ? tr("Kept as it is: in no count.")
                                     : tr("Kept as it is: %1").arg(Said::text(row.reason)));
    } else if (line.counting == Counting::NotCarried) {
        words << tr("Belongs to an option that is not the one carried: in no sum.");
    }
    for (const auto& text : {row.hazards, row.condition, row.note}) {
        if (!text.empty()) {
            words << Said::text(text);
        }
    }
    if (!row.source.empty()) {
        words << tr("Read from: “%1”").arg(Said::text(row.source));
    }
    list << words.join(QStringLiteral("  "));
    list.removeAll(QString());
    return list;
}

}  // namespace ledgerboard::desk
