// Which items still wait for somebody to order their goods, and by when?
//
// The earlier of two days: that of the planned start (orders.h), which is what the owner promised,
// and that of the plan of what is left (plan.h), which moves as the work does. Source: common
// practice, no source. Threads: any number may ask.
#pragma once

#include <optional>
#include <vector>

#include "core/compute/orders.h"
#include "core/compute/plan.h"

namespace ledgerboard::compute {

// One for each of rows.items, in their order. Empty for an item that does not count, is begun (work
// under way has what it needs, whether or not an order was entered), is ordered, or waits for no
// goods. Requires: rows as of today, figures and plan of them, orders of `rows`.
[[nodiscard]] std::vector<std::optional<model::Date>> ordersDue(const model::JobRows& rows,
                                                                const JobFigures& figures,
                                                                const Plan& plan,
                                                                const Orders& orders);

}  // namespace ledgerboard::compute
