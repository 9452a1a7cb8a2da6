#include <algorithm>

#include "core/compute/orders.h"
#include "core/compute/orders_due.h"
#include "core/compute/plan.h"
#include "core/model/value.h"

#include "desktop/client/desk.h"
#include "desktop/client/money/contract_sheet.h"
#include "desktop/client/money/record_pen.h"
#include "desktop/client/said.h"

namespace ledgerboard::desk {

using model::Date;
using model::Delivery;
using model::Item;
namespace f = model::field;

namespace {

constexpr Date kNever = Date::fromDays(INT32_MAX);

constexpr int kToOrder = 0;
constexpr int kToCome = 1;
constexpr int kThere = 2;

constexpr int kItem = 0;
constexpr int kUnder = 1;
constexpr int kOrderBy = 2;
constexpr int kOrdered = 3;
constexpr int kPromised = 4;

std::vector<RecordColumn> goodsColumns() {
    return {{GoodsSheet::tr("Goods for"), 0, 0, false},
            {GoodsSheet::tr("Under"), 0, 130, false},
            {GoodsSheet::tr("Order by"), 0, 106, false},
            {GoodsSheet::tr("Ordered"), f::Delivery::orderedOn, 106, false},
            {GoodsSheet::tr("Promised"), f::Delivery::promisedOn, 106, false},
            {GoodsSheet::tr("Arrived"), f::Delivery::arrivedOn, 106, false},
            {GoodsSheet::tr("Wrong or missing"), f::Delivery::wrongOrMissing, 150, false}};
}

const model::Contract* contractOf(const JobNow& now, const Item& item) {
    for (const auto& contract : now.rows.contracts) {
        if (contract.id == item.contract) {
            return &contract;
        }
    }
    return nullptr;
}

}  // namespace

GoodsSheet::GoodsSheet(QObject* parent)
    : RecordSheet(model::Kind::Delivery, &goodsColumns, parent) {
    setHeadingColumns(1, -1);
    begin();
}

QString GoodsSheet::groupName(int group) const {
    return group == kToOrder  ? tr("To be ordered")
           : group == kToCome ? tr("Ordered, not there yet")
                              : tr("There");
}

RecordLine GoodsSheet::lineOf(const Item& item, const Delivery* delivery,
                              std::optional<Date> orderBy, bool isOrdered,
                              std::optional<Date> comesOn) const {
    const Date today = now()->today;
    RecordLine line;
    line.id = delivery != nullptr ? delivery->id.raw() : item.id.raw();
    line.cells = delivery != nullptr ? fieldCells(line.id) : fieldCells(model::RawId());
    line.cells[kItem] = Said::text(namesIn(now()).nameOf(item.id.raw()));
    const auto* contract = contractOf(*now(), item);
    line.cells[kUnder] = contract == nullptr ? QString() : Said::text(contract->name);
    const bool isThere = delivery != nullptr && delivery->arrivedOn;
    line.group = isThere ? kThere : isOrdered ? kToCome : kToOrder;
    line.isDim = isThere;
    if (orderBy) {
        line.cells[kOrderBy] = Said::day(*orderBy, today);
        line.strongCell = !isOrdered && *orderBy <= today ? kOrderBy : -1;
    }
    const bool isOrder =
        contract != nullptr && contract->type == model::ContractKind::Order && contract->signedOn;
    if (line.cells[kOrdered].isEmpty() && isOrder) {
        line.cells[kOrdered] = Said::day(*contract->signedOn, today);
    }
    if (line.group == kToCome && line.cells[kPromised].isEmpty() && comesOn) {
        line.cells[kPromised] = tr("about %1").arg(Said::dayMonth(*comesOn));
    }
    return line;
}

std::vector<RecordLine> GoodsSheet::linesOf() {
    const auto& rows = now()->rows;
    const auto plan = compute::planOf(rows, now()->figures, now()->today);
    const compute::Orders orders(rows);
    const auto due = compute::ordersDue(rows, now()->figures, plan, orders);
    std::vector<RecordLine> lines;
    std::vector<std::pair<std::optional<Date>, std::size_t>> order;
    for (std::size_t k = 0; k < rows.items.size(); ++k) {
        const Item& item = rows.items[k];
        if (now()->figures.scope.lines[k].counting != compute::Counting::Counts) {
            continue;
        }
        const auto orderBy = due[k] ? due[k] : compute::orderBy(item, plan.checkDays);
        bool hasDelivery = false;
        for (const Delivery& delivery : rows.deliveries) {
            if (delivery.item == item.id) {
                hasDelivery = true;
                lines.push_back(lineOf(item, &delivery, orderBy, true, orders.comesOn(item)));
                order.emplace_back(orderBy, lines.size());
            }
        }
        const bool isOrdered = orders.isOrdered(item);
        const bool isBegun = now()->figures.lines[k].shown != model::Percent{};
        if (!hasDelivery && (due[k] || (isOrdered && !isBegun))) {
            lines.push_back(lineOf(item, nullptr, orderBy, isOrdered, orders.comesOn(item)));
            order.emplace_back(orderBy, lines.size());
        }
    }
    std::vector<RecordLine> sorted;
    sorted.reserve(order.size());
    std::stable_sort(order.begin(), order.end(), [&](const auto& a, const auto& b) {
        const int first = lines[a.second - 1].group;
        const int second = lines[b.second - 1].group;
        return first != second ? first < second
                               : a.first.value_or(kNever) < b.first.value_or(kNever);
    });
    for (const auto& [day, at] : order) {
        sorted.push_back(std::move(lines[at - 1]));
    }
    return sorted;
}

const Item* GoodsSheet::itemOf(const model::RawId& id) const {
    model::Id<model::Kind::Item> wanted(id);
    for (const auto& delivery : now()->rows.deliveries) {
        if (delivery.id.raw() == id) {
            wanted = delivery.item;
        }
    }
    for (const auto& item : now()->rows.items) {
        if (item.id == wanted) {
            return &item;
        }
    }
    return nullptr;
}

QString GoodsSheet::itemText() const {
    const auto* item = onItem() ? itemOf(idInHand()) : nullptr;
    return item == nullptr ? QString() : Said::text(namesIn(now()).nameOf(item->id.raw()));
}

QStringList GoodsSheet::detailsOf(const model::RawId& id) const {
    const auto* item = itemOf(id);
    if (item == nullptr) {
        return {};
    }
    QStringList list;
    QStringList when;
    if (item->leadDays) {
        when << tr("%n day(s) from order to delivery.", nullptr, static_cast<int>(*item->leadDays));
    }
    if (item->plannedStartOn) {
        when << tr("Planned on site from %1.").arg(Said::day(*item->plannedStartOn, now()->today));
    }
    if (item->quote) {
        when << tr("Quoted at %1.").arg(Said::cents(*item->quote));
    }
    list << when.join(QLatin1Char(' ')) << Said::text(item->selection);
    list.removeAll(QString());
    return list;
}

bool GoodsSheet::write(model::FieldCode field, const model::Value& value, const QString& said) {
    const auto id = idInHand();
    const auto* item = itemOf(id);
    if (item == nullptr) {
        return false;
    }
    if (item->id.raw() != id) {
        return RecordSheet::write(field, value, said);
    }
    Desk& desk = *Desk::here();
    const model::RawId fresh = desk.book().newId(desk.instant());
    const auto action = newRecord(*now(), model::Kind::Delivery, fresh,
                                  {{f::Delivery::item, item->id.raw()}, {field, value}});
    if (!desk.keep(action, said)) {
        return false;
    }
    want(fresh, column());
    return true;
}

}  // namespace ledgerboard::desk
