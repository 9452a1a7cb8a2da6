// By when must an item's goods be ordered, were they, and when do they come?
//
// Order by = planned start - lead days - days to look them over (common practice, no source).
#pragma once

#include <optional>
#include <unordered_map>
#include <vector>

#include "core/model/rows.h"

namespace ledgerboard::compute {

// The last day to order an item's goods: planned start - lead days - `checkDays`, or the day it is
// to be ordered on, whichever is earlier. Empty where neither is known, and for items without goods
// to wait for (no lead days and no day to order on).
[[nodiscard]] std::optional<model::Date> orderBy(const model::Item& item, int checkDays);

// The deliveries and signed orders of a job by item. Keeps pointers into the rows, which must
// outlive it. Threads: any number may ask.
class Orders {
  public:
    explicit Orders(const model::JobRows& rows);

    // A delivery of it was ordered, is promised (nobody promises what was not ordered) or has
    // arrived, or it is under a signed order.
    [[nodiscard]] bool isOrdered(const model::Item& item) const;
    // All of its deliveries that are known of have arrived, and there is at least one.
    [[nodiscard]] bool hasArrived(const model::Item& item) const;
    // The latest day a delivery that has not arrived is promised for; where none is promised, the
    // day it was ordered (by delivery or signed order) + lead days. Empty where nothing is awaited
    // or nothing tells.
    [[nodiscard]] std::optional<model::Date> comesOn(const model::Item& item) const;

  private:
    std::unordered_map<model::Id<model::Kind::Item>, std::vector<const model::Delivery*>>
        deliveries_;
    std::unordered_map<model::Id<model::Kind::Contract>, model::Date> signedOrders_;
};

}  // namespace ledgerboard::compute
