// How sure are "will cost", "will finish" and "will earn" of this job, and what drives their
// spread?
//
// What goes into the simulation (risk.h), of the rows as of a day:
//   billed          certain; so is everything of finished items and of the whole job's own line
//   to go           of an open item: certain under a signed contract or order, and where the owner
//                   has entered an estimate, as those set low and high aside in the forecast too;
//                   else spread by the item's low and high (its own, or its price row's) as shares
//                   of its price, and, where it has its own, so that billed + to go stays within
//                   them. Without any: kUsualCost of it, counted in `basis`
//   days            likely left as in the plan; low and high the same way: (days + those of signed
//                   changes) x (1 - shown) x pace of its crew. Without any: kUsualDays of it
//   goods awaited   never sooner than planned; at the latest half their lead time later, at least
//                   kLateGoodsDays
//   crews' turns    an item waits for the crew's item before it where the plan has them one after
//                   the other (places at once as the crew's capacity); so do different crews in a
//                   space of one crew at a time. So one late item makes the crew's next one late
//   unknowns        those open with a chance; what is missing of low, likely and high is what is
//                   there. Of a finished or uncounted item: left out
//   unsigned        changes asked, neither signed nor refused: an even chance each (nobody says how
//                   sure), in full; their days on the first open item named, else on the whole
//   profit          deal.h worked out for each day of finishing, the work at what it costs then,
//                   the resale value spread from low to high
// Units: Money and days of the calendar; chances 0 to 100.
// Source: project decisions, kUsualCost and the others common sense rather than measured.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/compute/deal.h"
#include "core/compute/job_network.h"
#include "core/compute/risk.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

// Low and high where nobody said, in percent of likely.
struct UsualRange {
    std::int64_t low;
    std::int64_t high;
};

inline constexpr UsualRange kUsualCost{90, 125};
inline constexpr UsualRange kUsualDays{90, 150};
inline constexpr int kLateGoodsDays = 7;  // calendar days
inline constexpr double kUnsignedChance = 0.5;
inline constexpr std::size_t kRiskBins = 40;

// What the spreads rest on: to be said wherever they are shown.
struct RiskBasis {
    std::size_t finished = 0;  // items and options that count
    std::size_t open = 0;      // the same, unfinished; the next five add up to it
    std::size_t byContract = 0;
    std::size_t byEstimate = 0;
    std::size_t costRanged = 0;  // low or high, or nothing to go (a look costs nothing)
    std::size_t costUsual = 0;   // kUsualCost was taken
    std::size_t unpriced = 0;    // work that nothing prices and no budget holds: counts as nothing
    std::size_t daysRanged = 0;
    std::size_t daysUsual = 0;  // kUsualDays was taken
    std::size_t withoutDays = 0;
    std::size_t goodsAwaited = 0;
    std::size_t unknowns = 0;
    std::size_t unknownsWithoutChance = 0;  // left out
    std::size_t unknownsPast = 0;           // left out: their item is finished or does not count
    std::size_t unsignedChanges = 0;
    std::size_t turns = 0;  // links for the turns of crews
    bool resaleRanged = false;
};

struct MoneySpread {
    model::Money mean;
    model::Money deviation;
    model::Money least;
    model::Money p10;
    model::Money p50;
    model::Money p80;
    model::Money p90;
    model::Money most;
    std::vector<std::size_t> counts;  // of trials, in kRiskBins equal parts of least to most
};

struct FinishSpread {
    model::Date mean;
    double deviationDays = 0;  // working days
    model::Date least;
    model::Date p10;
    model::Date p50;
    model::Date p80;
    model::Date p90;
    model::Date most;
    std::vector<std::size_t> counts;  // in kRiskBins equal parts of working time, least to most
};

// What may come out differently, and its share of each spread (0 where it does not drive it).
struct JobDriver {
    DriverKind kind = DriverKind::ItemCost;
    std::string what;  // item, unknown or change by name, or "Resale value"
    double costPercent = 0;
    double finishPercent = 0;
    double profitPercent = 0;
    double costCorrelation = 0;
    double finishCorrelation = 0;
    double profitCorrelation = 0;
};

struct JobRisk {
    std::size_t trials = 0;
    std::uint64_t seed = 0;
    double correlation = 0;
    RiskBasis basis;
    bool anySpread = false;

    MoneySpread cost;
    std::optional<FinishSpread> finish;  // empty where nothing unfinished has days
    std::optional<MoneySpread> profit;   // empty where the deal tells none
    std::vector<AbsentInput> profitMissing;
    std::string profitProblem;  // what keeps the deal from being worked out; "" where nothing does

    model::Money forecast;               // of the cost
    std::optional<model::Date> planned;  // the finish with every duration as likely
    std::optional<model::Money> dealProfit;
    model::Money dayCosts;

    // What must stand on top of budget now (BAC) so that the cost stays within it in 80 trials of
    // 100: p80 of the cost - BAC; below 0 where p80 stays under it. Contingency lies outside BAC
    // and overruns do not lower what is left of it, so that is what it must cover.
    model::Money contingency80;
    model::Money contingencyLeft;

    double withinBudget = 0;              // cost <= BAC + contingency left
    std::optional<double> withinCeiling;  // cost <= the owner's budget
    std::optional<double> byTarget;       // finish no later than the job's
    std::optional<double> earnsWanted;    // profit no less than wanted
    std::optional<double> losesMoney;     // profit below 0
    std::vector<JobDriver> drivers;       // by the largest of the three shares
};

struct RiskManner {
    std::size_t trials = 10'000;
    std::uint64_t seed = 1;
    double correlation = kUsualCorrelation;
};

// `deal` as for today's forecast: its work and finish are taken from the trials.
// Requires: rows as of a day, figures and network of them; manner as risk.h has it.
// Errors (CannotBeMet): links that wait for each other in a loop, named. OverflowError.
[[nodiscard]] model::Result<JobRisk> jobRiskOf(const model::JobRows& rows,
                                               const JobFigures& figures, const JobNetwork& network,
                                               const DealFigures& deal, const RiskManner& manner);

}  // namespace ledgerboard::compute
