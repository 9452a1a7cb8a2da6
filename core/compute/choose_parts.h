// How are options, limits and needs laid out for the search of the best set and of the frontier?
// Inside core/compute.
//
// Units: worth (gain, outgo, net) in ten-thousandths of a minor unit, in which a percent of money
// and money x thousandths of a day are both whole; cost in minor units; days in thousandths.
#pragma once

#include <cmath>
#include <cstdint>
#include <limits>
#include <vector>

#include "core/compute/choose.h"

namespace ledgerboard::compute {

inline constexpr std::int64_t kWorthPerMinor = 10'000;
// Sums stay below a quarter of what fits, so that none of the search's own sums can overflow.
inline constexpr std::int64_t kNoLimit = std::numeric_limits<std::int64_t>::max() / 4;

// What part of a set adds up to.
struct Sums {
    std::int64_t cost = 0;
    std::int64_t days = 0;
    std::int64_t gain = 0;   // kept share of the values
    std::int64_t outgo = 0;  // cost + days x what a day costs
    double variance = 0;     // of the values, in minor units squared

    friend Sums operator+(const Sums& a, const Sums& b) {
        return {a.cost + b.cost, a.days + b.days, a.gain + b.gain, a.outgo + b.outgo,
                a.variance + b.variance};
    }

    [[nodiscard]] std::int64_t net() const { return gain - outgo; }
};

struct Weight : Sums {
    std::uint32_t option = 0;  // as listed
    std::uint32_t flat = 0;    // number among the options of all alternates
};

struct Weighing {
    std::vector<std::vector<Weight>> alternates;        // without options that can never be chosen
    std::vector<std::vector<std::uint32_t>> conflicts;  // by flat number, both ways, sorted
    std::int64_t cash = kNoLimit;
    std::int64_t days = kNoLimit;
    std::int64_t beyond = 0;       // worth by which the resale itself passes the ceiling
    std::int64_t room = kNoLimit;  // worth that can be added under the ceiling
    double deviations = 0;         // x kept share, in worth for each minor unit

    // What `deviations` of the sum of values take away.
    [[nodiscard]] std::int64_t risk(double variance) const {
        return deviations == 0 ? 0 : std::llround(deviations * std::sqrt(variance));
    }

    [[nodiscard]] std::int64_t added(const Sums& sums) const {
        const std::int64_t sum = sums.gain + beyond - risk(sums.variance);
        return sum < room ? sum : room;
    }

    [[nodiscard]] std::int64_t net(const Sums& sums) const { return added(sums) - sums.outgo; }

    [[nodiscard]] bool hasCeiling() const { return room != kNoLimit; }
};

// Errors: as bestSetOf.
[[nodiscard]] model::Result<Weighing> weigh(const ChooseInput& input);

// Takes out of each alternate what another of its options makes needless: one that costs no more,
// takes no longer, is worth no less, spreads no worse and is in the way of nothing more, and is
// better, or listed earlier, where that decides between equals.
void dropNeedless(Weighing& weighing);

// As figuresOfSet, of an input weighed already.
[[nodiscard]] OptionSet setFigures(const ChooseInput& input, const Weighing& weighing,
                                   const std::vector<std::size_t>& options);

}  // namespace ledgerboard::compute
