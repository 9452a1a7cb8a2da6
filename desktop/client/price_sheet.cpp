#include "desktop/client/price_sheet.h"

#include <algorithm>
#include <set>

#include <QLocale>

#include "desktop/client/desk.h"
#include "desktop/client/said.h"

namespace ledgerboard::desk {

namespace f = model::field;

namespace {

constexpr int kUsed = 10;
constexpr std::size_t kMostNames = 8;

std::vector<RecordColumn> priceColumns() {
    const auto said = [](const char* title) { return PriceSheet::tr(title); };
    return {
        {said(QT_TRANSLATE_NOOP("ledgerboard::desk::PriceSheet", "Object")), f::Price::object, 150,
         false},
        {said(QT_TRANSLATE_NOOP("ledgerboard::desk::PriceSheet", "Treatment")), f::Price::treatment,
         84, false},
        {said(QT_TRANSLATE_NOOP("ledgerboard::desk::PriceSheet", "Unit")), f::Price::unit, 60,
         false},
        {said(QT_TRANSLATE_NOOP("ledgerboard::desk::PriceSheet", "Material")), f::Price::material,
         84, true},
        {said(QT_TRANSLATE_NOOP("ledgerboard::desk::PriceSheet", "Labour")), f::Price::labour, 84,
         true},
        {said(QT_TRANSLATE_NOOP("ledgerboard::desk::PriceSheet", "Low")), f::Price::low, 80, true},
        {said(QT_TRANSLATE_NOOP("ledgerboard::desk::PriceSheet", "High")), f::Price::high, 88,
         true},
        {said(QT_TRANSLATE_NOOP("ledgerboard::desk::PriceSheet", "Waste")), f::Price::waste, 54,
         true},
        {said(QT_TRANSLATE_NOOP("ledgerboard::desk::PriceSheet", "Source")), f::Price::source, 0,
         false},
        {said(QT_TRANSLATE_NOOP("ledgerboard::desk::PriceSheet", "As of")), f::Price::asOf, 128,
         false},
        {said(QT_TRANSLATE_NOOP("ledgerboard::desk::PriceSheet", "Used")), 0, 50, true}};
}

const model::Price* priceIn(const JobNow& now, const model::RawId& id) {
    for (const auto& price : now.rows.prices) {
        if (price.id.raw() == id) {
            return &price;
        }
    }
    return nullptr;
}

QString cents(const std::optional<model::Money>& money) {
    return money ? Said::cents(*money) : QString();
}

}  // namespace

PriceSheet::PriceSheet(QObject* parent) : RecordSheet(model::Kind::Price, &priceColumns, parent) {
    setHeadingColumns(1, -1);
    begin();
}

std::vector<RecordLine> PriceSheet::linesOf() {
    usedBy_.clear();
    for (std::size_t k = 0; k < now()->figures.scope.lines.size(); ++k) {
        const auto& line = now()->figures.scope.lines[k];
        if (line.pricing.by == compute::PricedBy::PriceBook) {
            usedBy_[line.pricing.price.raw()].push_back(k);
        }
    }
    std::set<std::string> trades;
    for (const auto& price : now()->rows.prices) {
        trades.insert(price.trade);
    }
    trades_.assign(trades.begin(), trades.end());
    std::vector<RecordLine> lines;
    for (const auto& price : now()->rows.prices) {
        RecordLine line;
        line.id = price.id.raw();
        line.group = static_cast<int>(std::find(trades_.begin(), trades_.end(), price.trade) -
                                      trades_.begin());
        line.cells = fieldCells(line.id);
        line.cells[3] = cents(price.material);
        line.cells[4] = cents(price.labour);
        line.cells[5] = cents(price.low);
        line.cells[6] = cents(price.high);
        const auto used = usedBy_.find(line.id);
        line.cells[kUsed] = used == usedBy_.end()
                                ? QString()
                                : QLocale().toString(static_cast<qulonglong>(used->second.size()));
        lines.push_back(std::move(line));
    }
    std::stable_sort(lines.begin(), lines.end(), [](const auto& a, const auto& b) {
        return std::pair(a.group, a.cells[0]) < std::pair(b.group, b.cells[0]);
    });
    return lines;
}

QString PriceSheet::groupName(int group) const {
    const auto at = static_cast<std::size_t>(group);
    return at < trades_.size() && !trades_[at].empty() ? Said::text(trades_[at]) : tr("No trade");
}

QString PriceSheet::sumText() const {
    if (now() == nullptr) {
        return {};
    }
    return tr("%n price(s)", nullptr, static_cast<int>(now()->rows.prices.size())) +
           QStringLiteral("; ") +
           tr("%n of them price items of this job", nullptr, static_cast<int>(usedBy_.size())) +
           QLatin1Char('.');
}

QString PriceSheet::itemText() const {
    const auto* price = onItem() ? priceIn(*now(), idInHand()) : nullptr;
    if (price == nullptr) {
        return {};
    }
    const QString treatment = Said::treatment(price->treatment);
    return (treatment.isEmpty() ? QString() : treatment + QLatin1Char(' ')) +
           Said::text(price->object);
}

QStringList PriceSheet::detailsOf(const model::RawId& id) const {
    const auto* price = priceIn(*now(), id);
    if (price == nullptr) {
        return {};
    }
    QStringList list;
    const auto used = usedBy_.find(id);
    if (used == usedBy_.end()) {
        list << tr("It prices no item of this job.");
    } else {
        QStringList names;
        for (std::size_t k = 0; k < std::min(kMostNames, used->second.size()); ++k) {
            names << Said::text(now()->figures.scope.lines[used->second[k]].name);
        }
        if (used->second.size() > kMostNames) {
            names << tr("%n more", nullptr, static_cast<int>(used->second.size() - kMostNames));
        }
        list << tr("Used by %1.").arg(names.join(QStringLiteral("; ")));
    }
    if (price->leadDays) {
        list << tr("%n day(s) from order to delivery.", nullptr,
                   static_cast<int>(std::min<std::int64_t>(*price->leadDays, 10'000)));
    }
    if (price->source.empty()) {
        list << tr("Nobody said where this price came from.");
    }
    return list;
}

}  // namespace ledgerboard::desk
