// Which option of each alternate, taken together, is worth most within the cash and the days there
// are? And which sets are worth a look beside it?
//
// Units: Money; working days; percents 0 to 100.
// Source: project decision. A multiple-choice knapsack with two limits and pairs that rule each
// other out, solved exactly: depth-first branch and bound. No branch is left out unless a bound
// proves that nothing in it is better; the bounds are the best of what is left, option by option,
// and the Lagrangian relaxation of the two limits and of the ceiling (the value of its linear
// relaxation, Sinha and Zoltners, "The Multiple-Choice Knapsack Problem", 1979: from memory).
//
// Exactly what is meant, for a set of one option from each alternate:
//   cost, days   the sums over its options
//   added        min(resale + sum of values, ceiling) - min(resale, ceiling): the ceiling of the
//                street cuts what several options add together. Without a ceiling the sum.
//                Where `deviations` is not 0, the sum of values less that many standard deviations
//                of it: values stand for themselves (independent), their sum near enough normal.
//   net          kept share of added - cost - days x what a day costs, rounded once
//   goes together  it holds all that its options need and none of what they exclude (either way)
//   within       cost no more than the cash, days no more than the days
// Best is the set within the limits with the highest net; of equal ones the cheapest, then the one
// with the fewest days, then the one whose options are listed first. Nets are compared before they
// are rounded.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/model/money.h"
#include "core/model/percent.h"
#include "core/model/quantity.h"
#include "core/model/result.h"

namespace ledgerboard::compute {

// Position of an option: its alternate, and it among that one's options.
struct OptionPlace {
    std::size_t alternate = 0;
    std::size_t option = 0;

    friend bool operator==(const OptionPlace&, const OptionPlace&) = default;
};

struct WeighedOption {
    model::Money cost;
    model::Quantity days;
    model::Money value;         // what it adds to the sale; may be below 0
    double valueDeviation = 0;  // standard deviation of the value, in minor units
    std::vector<OptionPlace> needs;
    std::vector<OptionPlace> excludes;
};

// At most this many alternates, and as many options in each.
inline constexpr std::size_t kMostAlternates = 200;

struct ChooseInput {
    std::vector<std::vector<WeighedOption>> alternates;
    std::optional<model::Money> cash;     // no limit where empty
    std::optional<model::Quantity> days;  // no limit where empty
    model::Money resale;  // before any option is added; matters to the ceiling alone
    std::optional<model::Money> ceiling;
    model::Percent keptShare = model::Percent::whole();  // of what is added, after selling
    model::Money dayCosts;                               // what a day costs
    double deviations = 0;
};

struct OptionSet {
    std::vector<std::size_t> options;  // one for each alternate
    model::Money cost;
    model::Quantity days;
    model::Money value;  // sum of values
    model::Money added;  // to the sale, under the ceiling and less the deviations
    model::Money net;
};

struct BestSet {
    std::optional<OptionSet> set;  // empty where no set goes together within the limits
    bool proven = true;            // false where the search was stopped: a better set may exist
    std::uint64_t branches = 0;    // looked into
};

// Why there is no set: what the least would take.
struct LeastSets {
    std::optional<OptionSet> cheapest;  // that goes together, whatever its days; empty: none does
    std::optional<OptionSet> fastest;   // whatever its cost
    std::optional<OptionSet> cheapestInTime;  // within the days; empty: none is
};

struct Frontier {
    // Within the limits, and no other set has at most its cost and days and at least its net, and
    // is better in one of them. Of sets equal in all three one stands for all. By cost, then days.
    std::vector<OptionSet> sets;
    bool cut = false;  // too many to be kept: sets that are missing may beat some that are here
};

// Requires for each: dayCosts, ceiling, keptShare and deviations of values not below 0 and finite;
// needs and excludes name options that are there. Costs and days may be below 0, as they are where
// options are compared with one of them.
// Errors (CannotBeMet): an alternate without options, more than kMostAlternates, amounts that
// together are beyond what can be counted. No alternates at all: the empty set.

// `mostBranches`: where the search stops unproven.
[[nodiscard]] model::Result<BestSet> bestSetOf(const ChooseInput& input,
                                               std::uint64_t mostBranches = 20'000'000);

// `mostKept`: partial sets kept at a time before the frontier is cut. Requires: at least 1.
[[nodiscard]] model::Result<Frontier> frontierOf(const ChooseInput& input,
                                                 std::size_t mostKept = 50'000);

[[nodiscard]] model::Result<LeastSets> leastSetsOf(const ChooseInput& input);

// The figures of a given set, whether or not it goes together or is within the limits.
// Requires: options as OptionSet::options, each there. Errors: as above.
[[nodiscard]] model::Result<OptionSet> figuresOfSet(const ChooseInput& input,
                                                    const std::vector<std::size_t>& options);

// Whether the options of a set go together. Requires: as figuresOfSet.
[[nodiscard]] bool goesTogether(const ChooseInput& input, const std::vector<std::size_t>& options);

}  // namespace ledgerboard::compute
