#include "core/compute/orders.h"

#include <algorithm>

namespace ledgerboard::compute {

using model::Date;

std::optional<Date> orderBy(const model::Item& item, int checkDays) {
    std::optional<Date> by = item.orderOn;
    if (item.leadDays && *item.leadDays > 0 && *item.leadDays < 10'000 && item.plannedStartOn) {
        const Date latest = *item.plannedStartOn - static_cast<int>(*item.leadDays) - checkDays;
        by = by ? std::min(*by, latest) : latest;
    }
    return by;
}

Orders::Orders(const model::JobRows& rows) {
    for (const model::Delivery& delivery : rows.deliveries) {
        deliveries_[delivery.item].push_back(&delivery);
    }
    for (const model::Contract& contract : rows.contracts) {
        if (contract.type == model::ContractKind::Order && contract.signedOn) {
            signedOrders_.emplace(contract.id, *contract.signedOn);
        }
    }
}

bool Orders::isOrdered(const model::Item& item) const {
    if (signedOrders_.contains(item.contract)) {
        return true;
    }
    const auto found = deliveries_.find(item.id);
    return found != deliveries_.end() &&
           std::any_of(
               found->second.begin(), found->second.end(), [](const model::Delivery* delivery) {
                   return delivery->orderedOn || delivery->promisedOn || delivery->arrivedOn;
               });
}

bool Orders::hasArrived(const model::Item& item) const {
    const auto found = deliveries_.find(item.id);
    return found != deliveries_.end() && std::all_of(found->second.begin(), found->second.end(),
                                                     [](const model::Delivery* delivery) {
                                                         return delivery->arrivedOn.has_value();
                                                     });
}

std::optional<Date> Orders::comesOn(const model::Item& item) const {
    if (hasArrived(item)) {
        return std::nullopt;
    }
    std::optional<Date> promised;
    std::optional<Date> ordered;
    const auto found = deliveries_.find(item.id);
    if (found != deliveries_.end()) {
        for (const model::Delivery* delivery : found->second) {
            if (!delivery->arrivedOn) {
                promised = std::max(promised, delivery->promisedOn);
                ordered = std::max(ordered, delivery->orderedOn);
            }
        }
    }
    const auto order = signedOrders_.find(item.contract);
    if (!ordered && order != signedOrders_.end()) {
        ordered = order->second;
    }
    if (promised || !ordered || !item.leadDays) {
        return promised;
    }
    return *ordered + static_cast<int>(std::clamp<std::int64_t>(*item.leadDays, 0, 10'000));
}

}  // namespace ledgerboard::compute
