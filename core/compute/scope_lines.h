// What makes up the job's budget? One line per scope item, one per option that counts and has a
// cost but no items of its own, one per signed contract or order that no counting item points at,
// and one for whatever belongs to the whole job.
//
// Budget now of a line = baseline + signed changes. Baseline = its budget in the latest baseline;
// before there is one, its price today (pricing.h). An item that is not in the latest baseline has
// a baseline of 0: scope added afterwards counts once a change for it is signed.
//
// Signed changes, in order of signing (then id): their split per item; what is not split goes over
// the change's items, else its contract's items, else its contract's own line, else the whole job,
// by budget now just before it, largest remainder. All of them count, also those signed before the
// baseline was frozen: a baseline freezes prices and dates, changes stay changes.
//
// Frozen money goes only by a signed change. Baseline and changes of an item whose option is no
// longer the one that counts go to the lines of the option that does, by price; where there are
// none, and for an item now kept, they stay on the item; those of an item no longer in the job stay
// with the whole job. So baselines always add up to what was frozen, and budget now to baseline +
// signed changes. An option without items can't be frozen: its cost stands as its baseline, unless
// money frozen for another option of its alternate has come to it.
// Source: project decisions, made so that no choice or re-baselining loses or doubles a sum.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/compute/pricing.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

enum class LineKind { Item, Option, Contract, WholeJob };

// The part of one signed change that falls on one line.
struct ChangePart {
    std::size_t change = 0;  // in rows.changes
    model::Date signedOn;
    model::Money amount;
};

struct ScopeLine {
    LineKind kind = LineKind::Item;
    Counting counting = Counting::Counts;
    model::Id<model::Kind::Item> item;      // nil unless kind is Item
    model::Id<model::Kind::Option> option;  // the option it belongs to, nil where none
    model::Id<model::Kind::Space> space;
    model::Id<model::Kind::Crew> crew;  // the item's, else its contract's
    model::Id<model::Kind::Contract> contract;
    std::string trade;  // the item's, else its crew's, else the price row's; "" where none
    std::string name;   // "Hall bath/tile"; an option or contract by its name; "Whole-job spend"
    Pricing pricing;
    model::Money baseline;
    std::vector<ChangePart> changes;  // in order of signing
    bool inBaseline = false;          // false also while there is no baseline
    // Planned dates that progress is measured against: those of the latest baseline where the item
    // is in it, else today's plan.
    std::optional<model::Date> startOn;
    std::optional<model::Date> finishOn;

    [[nodiscard]] model::Money signedChanges() const;
    [[nodiscard]] model::Money budgetNow() const;
    // With the changes signed on or before `day`.
    [[nodiscard]] model::Money budgetOn(model::Date day) const;
    // Whether it is work with a percent of its own: an item or an option.
    [[nodiscard]] bool isWork() const;
    // Whether it has a place in the budget: it counts, is the whole job's, or money frozen for it
    // has not been signed away.
    [[nodiscard]] bool isBudgeted() const;
};

struct ScopeLines {
    // rows.items in their order, then options, then contracts without items, and last the whole job
    // (always there).
    std::vector<ScopeLine> lines;
    // For each of rows.contracts: its own line where it has one, else the whole job's.
    std::vector<std::size_t> contractLines;
    std::optional<std::size_t> baseline;  // the latest one in rows.baselines, if any
    model::Money baselineTotal;           // sum of lines[].baseline
};

// The latest baseline by date (then id), in rows.baselines. Empty where there is none.
[[nodiscard]] std::optional<std::size_t> latestBaseline(const model::JobRows& rows);

// What a change adds: its amount, else the sum of its split.
[[nodiscard]] model::Money changeAmount(const model::Change& change);

// Requires: no voided rows; what is not known yet taken out (as_of.h). Errors: OverflowError.
[[nodiscard]] ScopeLines scopeLinesOf(const model::JobRows& rows);

// What `baseline` freezes today: each counting item's price and planned dates.
struct FrozenItem {
    model::Id<model::Kind::Item> item;
    model::Money budget;
    std::optional<model::Date> plannedStartOn;
    std::optional<model::Date> plannedFinishOn;
};

struct Frozen {
    std::vector<FrozenItem> items;
    model::Money contingency;             // the job's percent of the sum
    std::optional<model::Date> finishOn;  // the latest planned finish
    std::size_t unpriced = 0;             // counting items with no price: frozen at 0
    std::size_t undated = 0;              // counting items without both planned dates
};

// Errors: OverflowError.
[[nodiscard]] Frozen freeze(const model::JobRows& rows);

// Splits `total` by the budgets `weights` (below 0 weighs nothing) so that the parts add up to the
// cent. All 0: evenly. Empty: empty. Errors: OverflowError.
[[nodiscard]] std::vector<model::Money> splitByBudget(model::Money total,
                                                      const std::vector<model::Money>& weights);

}  // namespace ledgerboard::compute
