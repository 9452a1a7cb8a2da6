// What does the owner's own cash earn in the deal?
//
// Return on cash = profit / peak cash in: the most of the owner's own money that was in the house
// on any day before the sale (cash.h), not only the cash at closing. Yearly, simple = that x 365 /
// days held; of dated flows = the yearly rate at which each day's cash in and out is worth nothing
// (returns.h). Before income tax.
// Source: words of the trade; project decision to show the simple rate first.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/compute/cash.h"

namespace ledgerboard::compute {

struct DealReturn {
    std::optional<model::Money> peakCashIn;
    std::optional<double> onCashPercent;
    std::optional<double> yearlySimplePercent;
    std::optional<double> yearlyDatedPercent;
    std::vector<std::string> notes;  // why one of them cannot be told, or is not the only one
};

// All empty, with a note, where the line does not reach the sale.
[[nodiscard]] DealReturn dealReturnOf(const CashLine& line);

}  // namespace ledgerboard::compute
