#include "core/compute/deal_return.h"

#include "core/compute/returns.h"

namespace ledgerboard::compute {

using model::Money;

DealReturn dealReturnOf(const CashLine& line) {
    DealReturn out;
    if (!line.reachesSale || !line.deal.profit) {
        out.notes.emplace_back(
            "No return can be told before the cash line reaches the sale: 'ledgerboard cash' says "
            "what is missing.");
        return out;
    }
    out.peakCashIn = line.peakCashIn;
    if (line.peakCashIn <= Money{}) {
        out.notes.emplace_back(
            "The owner's own cash was never in it: there is no return on cash to show.");
    } else {
        out.onCashPercent = 100 * static_cast<double>(line.deal.profit->minor()) /
                            static_cast<double>(line.peakCashIn.minor());
        if (line.deal.daysHeld.value_or(0) > 0) {
            constexpr double kDaysPerYear = 365;
            out.yearlySimplePercent = *out.onCashPercent * kDaysPerYear / *line.deal.daysHeld;
        }
    }
    std::vector<DatedFlow> flows;
    for (const CashMove& move : line.moves) {
        flows.push_back({move.on, move.amount});
    }
    auto dated = returnOf(timed(flows));
    if (!dated.ok()) {
        out.notes.push_back("Yearly return of dated flows: " + dated.error().message + ".");
        return out;
    }
    out.yearlyDatedPercent = 100 * dated.value().rate;
    for (const std::string& warning : dated.value().warnings) {
        out.notes.push_back("Yearly return of dated flows: " + warning + ".");
    }
    return out;
}

}  // namespace ledgerboard::compute
