// What was it to cost, what has it cost, and what will it cost: each line, and rolled up.
//
// baseline, signed changes, budget now   scope_lines.h
// BAC          sum of budget now, without contingency
// billed, paid, held, owed               spending.h
// earned (EV)  budget now x shown percent, rounded once a line
// planned (PV) planned_value.h, on the day asked about
// committed    signed contracts and orders + their signed changes, over their items by budget now;
//              on a line of its own where no item counts under it
// to go        the first of these that applies: the owner's own estimate; contract now - billed on
//              it; bought goods: quote - billed, else budget left; past 20 % shown: (budget now -
//              earned) / CPI of its trade; else budget left. Never below 0. Kept so that billed +
//              to go lies within the item's own low to high (moved by its signed changes), unless
//              estimated or committed
// forecast     billed + to go; unsigned changes and unknowns are never in it
// over         forecast beyond budget now; early: billed beyond planned while forecast is not
// Source: project decisions; earned value terms as in earned_value.h.
// Sums by space, trade and crew each add up to the job, to the cent: what belongs to no space,
// trade or crew, the whole job's own line among it, stands in a group with an empty name.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/compute/progress.h"
#include "core/compute/scope_lines.h"
#include "core/compute/spending.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

enum class ToGoRule {
    NotCounted,       // a kept item, or one of an option that does not count: nothing to go
    OwnEstimate,      // the owner's own estimate
    Commitment,       // contract now - billed on it
    Quote,            // bought goods: quote - billed
    Finished,         // shown finished, without estimate, contract or quote: nothing
    GoodsBudgetLeft,  // bought goods without a quote: budget left
    TradeCpi,         // past 20 %: (budget now - earned) / CPI of its trade
    BudgetLeft,       // budget now - billed
};
// "the owner's own estimate", "contract now less billed", ...: for the sentence beside a figure.
[[nodiscard]] std::string_view wordsFor(ToGoRule rule);

enum class Kept { AsComputed, RaisedToLow, LoweredToHigh };
[[nodiscard]] std::string_view wordsFor(Kept kept);

enum class Standing { Within, Early, Over };
[[nodiscard]] std::string_view wordsFor(Standing standing);  // "", "early", "over"

// The figures of a line or of a sum of lines.
struct Figures {
    model::Money baseline;
    model::Money signedChanges;
    model::Money budgetNow;  // BAC, where summed
    model::Money committed;
    model::Money billed;
    model::Money paid;
    model::Money held;
    model::Money owed;
    model::Money earned;
    model::Money planned;
    model::Money billedUnplanned;  // the part of billed on lines left out of planned
    model::Money toGo;
    model::Money forecast;
    model::Percent shown;
    model::Percent seen;
    std::size_t items = 0;  // that count

    [[nodiscard]] model::Money budgetLeft() const { return budgetNow - billed; }

    [[nodiscard]] model::Money beyondBudget() const { return forecast - budgetNow; }

    [[nodiscard]] Standing standing() const;

    friend bool operator==(const Figures&, const Figures&) = default;
};

struct LineFigures : Figures {
    ToGoRule rule = ToGoRule::BudgetLeft;
    Kept kept = Kept::AsComputed;
    model::Money toGoAsComputed;          // before it was kept within low to high
    model::Money billedOnCommitment;      // the part of billed that counts on its signed contract
    std::optional<model::Date> markedOn;  // latest mark
};

struct GroupFigures : Figures {
    std::string name;  // "" for what belongs to none
    model::RawId id;   // of the space or crew; nil for a trade and for what belongs to none
};

// A contract or order, by what was booked on it (not by its items).
struct ContractFigures {
    std::size_t contract = 0;  // in rows.contracts
    bool isSigned = false;
    model::Money sum;            // 0 until signed
    model::Money signedChanges;  // 0 until signed
    model::Money now;            // sum + signed changes
    model::Money billed;
    model::Money paid;
    model::Money held;
    model::Money owed;
    model::Money beyond;  // billed beyond `now`, 0 where within
    model::Percent shown;
    model::Percent seen;
    model::Money seenValue;  // now x seen
    // min(owed, now x seen - retainage on what was seen until its percent - paid), not below 0;
    // nothing while it is barred.
    model::Money payableToday;
    model::Money payableOnceCleared;    // the same as if nothing barred it
    std::vector<std::string> barredBy;  // contract_terms.h; empty: nothing bars it
    model::Money depositBeyondLimit;    // the part of its deposit beyond the job's deposit limit
    // paid - now x seen, deposit and goods on site excepted, not below 0; orders have none. The
    // deposit is excepted as far as work is still unseen.
    model::Money paidAhead;
    model::Percent paidAheadPoints;  // of `now`; 100 where `now` is 0 and something was paid
};

struct Contingency {
    model::Money total;  // of the latest baseline; before there is one, percent x baseline total
    model::Money used;   // signed changes paid from contingency
    model::Money left;   // may fall below 0
};

struct JobFigures {
    ScopeLines scope;
    std::vector<LineFigures> lines;    // one for each of scope.lines
    std::vector<GroupFigures> spaces;  // in walking order, then as in rows; what has none last
    std::vector<GroupFigures> trades;  // by name; what has none last
    std::vector<GroupFigures> crews;   // as in rows; what has none last
    std::vector<ContractFigures> contracts;  // as in rows.contracts
    Figures job;
    Contingency contingency;
    std::vector<SpendRead> spending;
    model::Money ifAllSigned;  // sum of changes asked, neither signed nor refused
    std::size_t unsignedChanges = 0;
    // Sum of chance x expected cost of unknowns that have not come true; expected = (low + 4 likely
    // + high) / 6, where only some are known the likely, else the mean of what is.
    model::Money unknownsExpected;
    // The owner's ceiling less (forecast + contingency left); empty where no budget was entered.
    std::optional<model::Money> underCeiling;
    std::size_t undated = 0;     // counting items left out of planned value
    model::Money undatedBudget;  // their budget now
    std::size_t unpriced = 0;    // counting items that nothing prices and no budget holds
    std::size_t spendsWithoutAmount = 0;
};

// Requires: rows = asOf(rows, today). Errors: OverflowError.
[[nodiscard]] JobFigures figuresOf(const model::JobRows& rows, model::Date today);

}  // namespace ledgerboard::compute
