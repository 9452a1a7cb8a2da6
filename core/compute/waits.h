// What falls due in the next 14 days: orders, deliveries, decisions, inspections, payments, draws?
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/compute/budget.h"
#include "core/compute/plan.h"
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

// From `today` for `days` days, and what is already late; in order of date, late first, those
// without a day last. A draw is expected when the lender's own days say (asked + days to visit +
// days to money). Requires: rows as of today, figures and plan of them. Errors: OverflowError.
[[nodiscard]] std::vector<Wait> waitsOf(const model::JobRows& rows, const JobFigures& figures,
                                        const Plan& plan, model::Date today, int days = 14);

}  // namespace ledgerboard::compute
