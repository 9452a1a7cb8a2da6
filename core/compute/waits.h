// What falls due in the next 14 days: orders, deliveries, decisions, inspections, payments, draws?
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/compute/budget.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

enum class WaitKind { Order, Delivery, Decision, Inspection, Payment, Draw };
[[nodiscard]] std::string_view wordsFor(WaitKind kind);

struct Wait {
    WaitKind kind = WaitKind::Order;
    std::optional<model::Date> on;  // empty where no day is known yet (an inspection asked for)
    bool late = false;              // before today
    std::string what;
    std::optional<model::Money> money;
    model::Kind recordKind = model::Kind::None;
    model::RawId record;
};

// The last day to order an item's goods: planned start - lead days - days to look them over, or the
// day it is to be ordered on, whichever is earlier. Empty where neither is known.
[[nodiscard]] std::optional<model::Date> orderBy(const model::Item& item, int checkDays);

// Was it ordered? A delivery of it was ordered or arrived, or it is under a signed order.
[[nodiscard]] bool isOrdered(const model::JobRows& rows, const model::Item& item);

// From `today` for `days` days, and what is already late; in order of date, late first, those
// without a day last. A draw is expected when the lender's own days say (asked + days to visit +
// days to money). Requires: rows as of today. Errors: OverflowError.
[[nodiscard]] std::vector<Wait> waitsOf(const model::JobRows& rows, const JobFigures& figures,
                                        model::Date today, int days = 14);

}  // namespace ledgerboard::compute
