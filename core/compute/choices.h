// Which options of the open alternates of a job are worth it, alone and together; by when must each
// be decided, and what does waiting cost?
//
// Units: Money; days by which the finish of the work moves, in calendar days.
// Source: project decisions, in the words of the trade.
//
// Exactly what is meant, of an option by itself, against having nothing for its alternate:
//   cost         its items as priced today; where it has none, the cost entered for it. Where a
//                part is not priced the option is not offered in a set, for it would look better
//                than it is. The one option of an alternate with neither items nor cost, days or
//                value leaves things as they are; where there are several such, none is priced
//   finish days  how far the finish of the plan moves with its items counted, all other open
//                alternates left out. Where no plan tells: its days (its items' likely days one
//                after the other, else the days entered), as if the finish waited for them
//   value        low, likely and high as entered; where only some are, the likely one, else the
//                mean of what is, stands for those that are not; nothing entered adds nothing.
//                Expected: (low + 4 likely + high) / 6
//   added        what it adds to the sale under the ceiling of the street (choose.h). The house
//                without it is the job's resale + the likely values of the options decided on
//   net          added x (1 - selling costs - commission) - cost - finish days x what a day costs
//   break-even   the added resale at which net is 0
// Several together: costs, finish days and values add up, and the ceiling cuts their sum; the best
// set is the one with the highest expected net (choose.h). At a chance: with the values spread as
// three-point estimates (three_point.h) that are independent of each other. The finish of a whole
// set is asked of the plan once more, for options at work side by side move it less than their sum.
//
// Decide by: as entered; else the earliest day over its options' items: order by where goods are
// waited for (orders.h), else the start; starts are those of the plan with that option counted,
// else those entered. Float is that of the tightest of them.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/compute/budget.h"
#include "core/compute/choose.h"
#include "core/compute/deal.h"
#include "core/model/result.h"
#include "core/model/rows.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

// What a plan says, as far as choices lean on it.
struct PlannedItem {
    std::optional<model::Date> startOn;            // empty where not planned
    std::optional<std::int64_t> floatThousandths;  // of a working day; 0 or less is critical
};

struct PlannedJob {
    std::optional<model::Date> finishOn;
    std::vector<PlannedItem> items;    // as in rows.items; may be shorter
    std::vector<PlannedItem> options;  // as in rows.options, those without items; may be shorter
};

// Plans a job with the options counted that its rows say. Empty function: there is no plan.
using PlanJob = std::function<PlannedJob(const model::JobRows&)>;

struct ChoicesAsk {
    std::optional<model::Money> cash;      // most that the options together may cost
    std::optional<model::Date> finishOn;   // the work is to end by then
    std::optional<model::Percent> chance;  // more than 0, less than 100
};

enum class DaysFrom { Nothing, Plan, ItemDays, OwnDays };

struct OptionChoice {
    std::size_t option = 0;  // in rows.options
    bool isCarried = false;
    std::size_t items = 0;
    std::size_t unpricedItems = 0;
    bool isPriced = true;
    bool hasValue = false;
    bool leavesAsIs = false;      // nothing was entered for it, and for it alone
    model::Saying whyNotOffered;  // a clause; empty where it may be chosen
    model::Money cost;
    int finishDays = 0;
    DaysFrom daysFrom = DaysFrom::Nothing;
    model::Money valueLow;
    model::Money valueLikely;
    model::Money valueHigh;
    model::Money valueExpected;
    double valueDeviation = 0;  // minor units
    model::Money netLow;
    model::Money netLikely;
    model::Money netHigh;
    model::Money breakEvenValue;
    std::optional<model::Money> resaleAfter;  // at the likely value; empty: no resale entered
    model::Money cutByCeiling;                // of the likely value
};

struct Waiting {
    std::optional<model::Date> decideBy;
    bool isEntered = false;
    bool isLate = false;
    // Where it was worked out: the item that sets it (empty: an option without items), and what it
    // waits for.
    std::optional<std::size_t> item;    // in rows.items
    std::optional<std::size_t> option;  // in rows.options: the option whose start it is
    std::optional<model::Date> itemStartsOn;
    std::int64_t leadDays = 0;  // calendar days, with those to look goods over
    // Where a plan tells: the option whose items have the least float, and how much that is.
    std::optional<std::size_t> tightestOption;  // in rows.options
    std::optional<std::int64_t> floatThousandths;
    // What each day after decide by costs. Empty where nothing of it is known to hold up the
    // finish.
    std::optional<model::Money> perDay;
};

struct AlternateChoice {
    std::size_t alternate = 0;           // in rows.alternates
    std::string name;                    // "Dining room: walls"
    std::vector<OptionChoice> options;   // the carried one first, then as in rows
    std::optional<std::size_t> carried;  // in `options`
    Waiting waiting;
    // Of the best set: its option here, and what the best set without that option earns less.
    std::optional<std::size_t> best;  // in `options`
    std::optional<std::size_t> otherwise;
    std::optional<model::Money> worth;
};

struct SetChoice {
    std::vector<std::optional<std::size_t>> options;  // by alternate, in its `options`
    model::Money cost;
    int finishDays = 0;                   // summed
    std::optional<model::Date> finishOn;  // of the whole set, by the plan; else by the sum
    model::Money added;
    model::Money net;                         // expected
    std::optional<model::Money> netAtChance;  // where a chance was asked for
};

struct Choices {
    std::vector<AlternateChoice> alternates;  // undecided, in the order of rows
    std::size_t decided = 0;
    bool hasPlan = false;
    // With nothing for the open alternates; never in the past, for nothing more can be done there.
    std::optional<model::Date> finishWithout;
    std::optional<model::Money> resale;  // as entered
    model::Money decidedValue;           // likely values of the options decided on
    std::optional<model::Money> ceiling;
    model::Percent keptShare;
    model::Money dayCosts;
    double deviations = 0;  // of the chance asked for
    std::vector<AbsentInput> leftOut;

    SetChoice now;                  // what is carried
    std::optional<SetChoice> best;  // by expected net; empty where none can be had
    std::optional<SetChoice> bestAtChance;
    bool proven = true;
    model::Saying whyNone;  // where there is no best set: what stands in the way
    std::vector<SetChoice> frontier;
    bool frontierCut = false;
};

// Requires: rows = asOf(rows, today), figures and deal of them.
// Errors (CannotBeMet): value low, likely and high of an option that contradict each other; a
// chance that is not between 0 and 100; a finish asked for while nothing tells when the work ends;
// as choose.h. OverflowError.
[[nodiscard]] model::Result<Choices> choicesOf(const model::JobRows& rows,
                                               const JobFigures& figures, const Deal& deal,
                                               model::Date today, const ChoicesAsk& ask,
                                               const PlanJob& plan);

// What an option costs: its items as priced today, else the cost entered.
struct OptionCost {
    model::Money cost;
    std::size_t items = 0;
    std::size_t unpriced = 0;  // of them
    bool isEntered = false;    // the option's own cost, which counts where it has no items
};

[[nodiscard]] OptionCost optionCostOf(const model::JobRows& rows, const model::Option& option);

// Why `option` cannot be taken beside the options decided on: what it needs was decided otherwise,
// or what was decided rules it out, or the other way about. A clause; "" where it can be.
[[nodiscard]] model::Saying whyNotBesideDecided(const model::JobRows& rows,
                                                const model::Option& option);

// How many standard deviations below its mean a normally distributed value is at least with that
// chance: 0.8416 at 80 %. Requires: 0 < chance < 100 %.
[[nodiscard]] double deviationsFor(model::Percent chance);

}  // namespace ledgerboard::compute
