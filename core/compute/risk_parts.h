// The steps that simulateRisk (risk.h) is made of. Inside core/compute only.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "core/compute/risk.h"

namespace ledgerboard::compute {

// What may drive a total: one column of the grades below.
struct Cause {
    DriverKind kind = DriverKind::ItemCost;
    std::size_t index = 0;
};

// Where each cause stood in each of the first trials: the share of its outcomes that are lower, as
// a 16-bit fraction. One row a trial, one column a cause.
struct Grades {
    std::vector<Cause> causes;
    std::vector<std::uint16_t> places;
    std::vector<std::uint16_t> shared;  // the house's own place, one a trial
    double correlation = 0;
    std::size_t trials = 0;

    [[nodiscard]] std::span<const std::uint16_t> row(std::size_t trial) const {
        return std::span(places).subspan(trial * causes.size(), causes.size());
    }
};

enum class Total { Cost, Finish, Profit };

// Rank correlation with a total of each cause that can move it, largest share first. A cause's
// place is its rank but for the chance of the sample, so it is taken as it is; totals are ranked,
// equal ones sharing the middle of their ranks. Empty where nothing varies.
// Requires: `totals` of the same first trials, at least.
[[nodiscard]] std::vector<Driver> driversOf(const Grades& grades, Total total,
                                            std::span<const std::int64_t> totals);

}  // namespace ledgerboard::compute
