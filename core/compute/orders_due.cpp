#include "core/compute/orders_due.h"

#include <algorithm>

#include "core/compute/concern_levels.h"

namespace ledgerboard::compute {

std::vector<std::optional<model::Date>> ordersDue(const model::JobRows& rows,
                                                  const JobFigures& figures, const Plan& plan,
                                                  const Orders& orders) {
    const int checkDays = concernLevelsOf(rows.job).orderCheckDays;
    std::vector<std::optional<model::Date>> due(rows.items.size());
    const auto waits = [&](std::size_t k) {
        return figures.scope.lines[k].counting == Counting::Counts &&
               figures.lines[k].shown == model::Percent{} && !orders.isOrdered(rows.items[k]);
    };
    for (std::size_t k = 0; k < rows.items.size(); ++k) {
        if (waits(k)) {
            due[k] = orderBy(rows.items[k], checkDays);
        }
    }
    for (const PlanItem& item : plan.items) {
        if (item.line < due.size() && item.orderBy && waits(item.line)) {
            auto& day = due[item.line];
            day = day ? std::min(*day, *item.orderBy) : *item.orderBy;
        }
    }
    return due;
}

}  // namespace ledgerboard::compute
