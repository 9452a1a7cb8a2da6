// What moved since the last review? Each line's forecast now less then, the five largest and all
// others, adding up to the change in what it will cost.
//
// Lines that are no items (options' costs, the whole job) and items no longer in the job are kept
// with the total alone, so what they moved stands among the others.
//
// Then = the forecasts kept with the latest review before today; where there is none, the latest
// baseline's budgets; where there is none either, nothing is said.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/compute/budget.h"
#include "core/model/rows.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

// Names of the figures a review keeps (Review::figures).
inline constexpr std::string_view kWillCost = "will cost";
inline constexpr std::string_view kBudgetNow = "budget now";
inline constexpr std::string_view kBilled = "billed";
inline constexpr std::string_view kPaid = "paid";
inline constexpr std::string_view kEarned = "earned";
inline constexpr std::string_view kPlanned = "planned";
inline constexpr std::string_view kContingencyLeft = "contingency left";

// What a review made today keeps of these figures: the sums above and the forecast of each item.
// Callers may add figures of their own (profit, lowest cash). id, job and willFinishOn stay empty.
[[nodiscard]] model::Review reviewOf(const JobFigures& figures, model::Date today);

// A figure kept with a review. Empty where it was not kept.
[[nodiscard]] std::optional<model::Money> keptFigure(const model::Review& review,
                                                     std::string_view name);

// The latest review dated before `today` (then id), in rows.reviews.
[[nodiscard]] std::optional<std::size_t> lastReview(const model::JobRows& rows, model::Date today);

enum class Since { Nothing, Baseline, Review };

enum class MoveReason {
    Unknown,
    NewItem,               // it was not there then
    NoLongerCounted,       // it counted then and does not now
    SignedChange,          // a change signed since
    OwnEstimate,           // the owner's own estimate
    BilledBeyondBudget,    // more was billed than its budget now
    BilledBeyondContract,  // more was billed than its contract now
    Contract,              // it goes by its contract now
    Finished,              // finished, at what was billed
    TradeCpi,              // what its trade costs for what it earns
};

struct Mover {
    std::size_t line = 0;  // in JobFigures::lines
    model::Money then;
    model::Money now;
    model::Money moved;  // now - then
    MoveReason reason = MoveReason::Unknown;
    model::Saying why;  // the reason as a clause, empty where unknown
};

struct Movers {
    Since since = Since::Nothing;
    std::optional<model::Date> sinceOn;
    model::Money willCostThen;
    model::Money willCostNow;
    model::Money moved;  // now - then = sum of largest + others
    std::vector<Mover>
        largest;          // at most five, by size of the move, then as in the lines; none of 0
    model::Money others;  // everything else
    std::size_t othersCount = 0;  // items in it that moved
};

// Requires: rows as of today. Errors: OverflowError.
[[nodiscard]] Movers moversOf(const model::JobRows& rows, const JobFigures& figures,
                              model::Date today);

}  // namespace ledgerboard::compute
