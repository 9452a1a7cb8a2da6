// How does the work done compare with what was planned and what it cost, and what will the whole
// cost if it goes on like this?
//
// Units: money in the currency's main unit (dollars), as double, since these are indices and
// forecasts that are shown rounded, never booked; indices are ratios (1 is "as planned"), percents
// are 0 to 100.
// Source: Defense Acquisition University, Earned Value Management Gold Card, 2013 (CV, SV, CPI,
// SPI, VAC, TCPI, EAC at CPI and at CPI x SPI); the further EAC factors (1, 0.8 CPI + 0.2 SPI,
// SPI(t)): M. Vanhoucke, PM Knowledge Center, forecasting articles. A figure is empty, never
// infinite or NaN, where its divisor is not above 0.
#pragma once

#include <optional>
#include <span>

#include "core/model/money.h"

namespace ledgerboard::compute {

// What earned value is computed from. Requires: every number finite.
struct EarnedValueInput {
    double bac = 0;  // budget at completion, without contingency
    double pv = 0;   // budget of the work that was planned to be done by now
    double ev = 0;   // budget of the work that is done
    double ac = 0;   // what that work cost: billed, before retainage

    // An estimate at completion of the caller's own; ETC, VAC and TCPI to estimate use it where
    // given, else the one at CPI.
    std::optional<double> eac;
    // The schedule index in units of time, from earned schedule; only one of the estimates needs
    // it.
    std::optional<double> spiT;
};

// Estimates at completion: AC + (BAC - EV) / factor, each with its own factor.
struct EstimatesAtCompletion {
    double remainingAtBudget = 0;               // factor 1
    std::optional<double> remainingAtCpi;       // CPI
    std::optional<double> remainingAtCpiSpi;    // CPI x SPI
    std::optional<double> remainingAtWeighted;  // 0.8 CPI + 0.2 SPI
    std::optional<double> remainingAtSpiT;      // SPI(t), where given
};

struct EarnedValue {
    double bac = 0;
    double pv = 0;
    double ev = 0;
    double ac = 0;
    double cv = 0;              // EV - AC: below 0 costs more than planned
    double sv = 0;              // EV - PV: below 0 is behind the plan
    std::optional<double> cpi;  // EV / AC
    std::optional<double> spi;  // EV / PV
    EstimatesAtCompletion eac;
    std::optional<double> etc;  // EAC - AC
    std::optional<double> vac;  // BAC - EAC
    // (BAC - EV) / (target - AC): how well each dollar left must work. Empty once AC has reached
    // the target: say that it can no longer be reached.
    std::optional<double> tcpiToBudget;
    std::optional<double> tcpiToEstimate;
    std::optional<double> percentComplete;  // 100 EV / BAC
    std::optional<double> percentSpent;     // 100 AC / BAC
};

// One piece of work, for adding up. Percents are 0 to 100.
struct EarnedValueItem {
    double budget = 0;
    double plannedPercent = 0;
    double percent = 0;
    double actual = 0;
};

// All figures. The cost left at CPI is empty while AC or EV is 0: there is no pace to go by.
[[nodiscard]] EarnedValue earnedValue(const EarnedValueInput& in);

// The same from money as the book keeps it; `spiT` as in EarnedValueInput.
[[nodiscard]] EarnedValue earnedValue(model::Money bac, model::Money pv, model::Money ev,
                                      model::Money ac, std::optional<double> spiT = std::nullopt);

// BAC, PV, EV and AC of all `items` together. Empty: all 0.
[[nodiscard]] EarnedValueInput addUp(std::span<const EarnedValueItem> items);

// Money as the dollars that indices and forecasts are computed in.
[[nodiscard]] double toDollars(model::Money money);

}  // namespace ledgerboard::compute
