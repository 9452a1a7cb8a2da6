// What is earned at other resale values and later finishes?
//
// Each cell is the whole deal worked anew with the finish and the resale value of its row and
// column: later means more interest, more holding, the extension fee once the term end is crossed
// and the season drop once a season is missed. The work costs the same.
#pragma once

#include <string>
#include <vector>

#include "core/compute/deal.h"

namespace ledgerboard::compute {

struct ProfitTable {
    struct Row {
        int weeksLater = 0;
        model::Date finishOn;
        model::Date saleOn;
        std::vector<model::Money> profits;  // one for each of values
    };

    std::vector<model::Money> values;  // resale low, likely, high, as far as entered; rising
    std::vector<Row> rows;             // 0, 1, 2, 4 and 8 weeks later than forecast
};

// Empty where the deal has no profit or no finish is known. Requires: deal(job, figures) is ok.
// Errors: as deal, where a later finish is at odds with something.
[[nodiscard]] model::Result<ProfitTable> profitTableOf(const model::Job& job,
                                                       const DealFigures& figures);

}  // namespace ledgerboard::compute
