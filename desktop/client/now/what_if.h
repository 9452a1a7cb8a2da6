// What would the deal be, if the resale, the work, the finish or the loan's rate were other than
// they are entered and forecast?
//
// Every figure is compute::deal's, with the inputs moved; nothing moved is the deal as it stands.
// Weeks later move finish and sale together, as in the profit table. Draws ahead stay on their
// days. Source: project decision. Threads: any.
#pragma once

#include <string>
#include <vector>

#include "core/compute/cash_plan.h"
#include "core/compute/deal_return.h"
#include "core/compute/profit_table.h"
#include "core/model/rows.h"

namespace ledgerboard::desk {

// How far each input is moved.
struct Wish {
    int resaleTenths = 0;  // tenths of a percent of the resale values
    int workTenths = 0;    // tenths of a percent of the forecast of the work
    int weeksLater = 0;
    int rateHundredths = 0;  // hundredths of a percent a year, added to the rate

    [[nodiscard]] bool isNothing() const {
        return resaleTenths == 0 && workTenths == 0 && weeksLater == 0 && rateHundredths == 0;
    }
};

// What the deal leans on, read once.
struct DealNow {
    model::Job job;
    compute::CashPlan plan;
    compute::DealReturn earned;
};

struct Supposed {
    compute::Deal deal;
    compute::ProfitTable table;
    model::Job job;  // with the wish in it
    std::optional<model::Money> work;
};

// Errors: as compute::deal and cashPlanFor. OverflowError.
[[nodiscard]] model::Result<DealNow> dealNowOf(const model::JobRows& rows,
                                               const compute::JobFigures& figures,
                                               model::Date today);
[[nodiscard]] model::Result<Supposed> supposed(const DealNow& now, const Wish& wish);

}  // namespace ledgerboard::desk
