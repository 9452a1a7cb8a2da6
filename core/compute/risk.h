// How far may cost, finish and profit be off, and what drives that? Many trials of the same job,
// each with other costs and durations, through the network of its items.
//
// Units: whole numbers, the caller's: money in one unit for all of it, times in one unit for all of
// it (Network counts thousandths of a day); chances and the correlation are 0 to 1.
//
// Exactly what is meant:
//   a trial      each cost, duration and day of being ready takes a value between its low and high,
//                by a PERT-beta or a triangular distribution with its likely as mode
//                (quantile_table.h); low = high is no spread
//   cost         the items' costs + the unknowns that strike + what is certain
//   finish       the forward pass of network.h over that trial's durations; an item starts no
//                earlier than it is ready; an unknown that strikes makes its item longer, or, where
//                it names none, the whole
//   unknowns     strike with their chance, each by itself; what they then cost and delay spreads
//                like all else
//   correlation  one factor that all share, in each trial: every spread takes the place (the share
//                of outcomes below it) of the house as a whole with a chance of sqrt(correlation),
//                else a place of its own. So two spreads' places, their ranks, have exactly that
//                correlation, and two of one shape their values too. 0: all independent. It is a
//                mixture of the comonotone and the independent copula, taken instead of a Gaussian
//                one because its correlation of ranks is exact and it says in words what it does.
//                Chances of unknowns and the income take no part in it.
//   profit       income - cost - what else the time until the finish costs
//   drivers      Spearman's rank correlation of each spread with the total, over the first
//                kDriverTrials trials. Its share is told of what it does by itself: the common
//                factor makes even what lies off the critical path go along with the finish. With
//                f the factor's own rank correlation with the total, a spread that takes part in
//                it by itself has (r - f sqrt(correlation)) / (1 - correlation), since r is that
//                times (1 - correlation) + f sqrt(correlation) where effects add up. Share = its
//                square over the sum of all squares. What is no more than chance shows, 2 /
//                sqrt(trials), is left out.
// Source: simulation of a network with three-point estimates, as in texts on project risk; the
// factor and the default of its strength are project decisions.
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

#include "core/compute/network.h"
#include "core/compute/quantile_table.h"
#include "core/compute/samples.h"

namespace ledgerboard::compute {

// Without any, the errors of 80 items would cancel out almost wholly, which they do in no house.
inline constexpr double kUsualCorrelation = 0.2;
inline constexpr std::size_t kDriverTrials = 2048;
inline constexpr std::size_t kMostTrials = 1'000'000;

// Requires, of every use: low <= likely <= high.
struct Spread {
    std::int64_t low = 0;
    std::int64_t likely = 0;
    std::int64_t high = 0;

    [[nodiscard]] static Spread certain(std::int64_t value) { return {value, value, value}; }

    [[nodiscard]] bool isCertain() const { return low == high; }

    friend bool operator==(const Spread&, const Spread&) = default;
};

struct RiskItem {
    Spread cost;
    Spread duration;             // not below 0
    Spread ready;                // earliest start: when its goods come
    std::int64_t notBefore = 0;  // earliest start for certain: a day before which nobody works
};

struct RiskUnknown {
    double chance = 0;
    Spread cost;
    Spread delay;  // not below 0
    std::optional<std::size_t> item;
};

struct RiskProfit {
    Spread income;  // from the sale, less what selling takes
    // Everything else that is paid, as a function of the finish.
    std::function<std::int64_t(std::int64_t finish)> otherCosts;
};

struct RiskInput {
    std::vector<RiskItem> items;
    std::vector<Precedence> precedences;  // between positions of items
    std::vector<RiskUnknown> unknowns;
    std::int64_t certainCost = 0;  // billed already, or fixed
    std::optional<RiskProfit> profit;
    SpreadShape shape = SpreadShape::PertBeta;
    double correlation = kUsualCorrelation;
    std::size_t trials = 10'000;
    std::uint64_t seed = 1;
};

enum class DriverKind { ItemCost, ItemDuration, ItemReady, Unknown, Income };

struct Driver {
    DriverKind kind = DriverKind::ItemCost;
    std::size_t index = 0;  // of the item or unknown
    double rankCorrelation = 0;
    double sharePercent = 0;
};

struct RiskResult {
    std::vector<std::int64_t> costs;  // one a trial, in the order of the trials
    std::vector<std::int64_t> finishes;
    std::vector<std::int64_t> profits;  // empty where no profit was asked for
    Summary cost;
    Summary finish;
    Summary profit;
    // Largest share first, then as given: durations, days ready, unknowns, costs, income.
    std::vector<Driver> costDrivers;
    std::vector<Driver> finishDrivers;
    std::vector<Driver> profitDrivers;
};

// Every item as likely, and no unknown strikes.
struct LikelyOutcome {
    std::int64_t cost = 0;
    std::int64_t finish = 0;
};

// Requires and Errors: as simulateRisk.
[[nodiscard]] LikelyOutcome likelyOutcome(const RiskInput& input);

// The same input gives the same result on every machine.
// Requires: estimates in order, durations and delays not below 0; chances and correlation 0 to 1;
// 1 <= trials <= kMostTrials; positions in range and no loop (findLoop).
// Errors: OverflowError where a total may not fit.
[[nodiscard]] RiskResult simulateRisk(const RiskInput& input);

}  // namespace ledgerboard::compute
