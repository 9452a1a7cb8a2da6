// Which hazards and legal duties does this job bring with it, who has taken note of each, and what
// may not be begun before somebody has?
//
// Cautions are computed from the table (cautions.def) for every item that counts and for the house,
// and met with the rows that are kept: those read from walk notes, those acknowledged, those an
// owner added. An item with an open caution isn't marked begun before somebody acknowledges it or
// records a test result. Cautions of the house hold nothing up, nor does work on old paint that is
// minor (caution_sizes.h); both are still told.
// An acknowledgement covers what it names: one of an item its item, one of the house the house.
// Source: each caution names its own; what is open and what holds up are project decisions.
// Threads: any number may ask.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/compute/caution_rules.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

// Stands under every list of cautions.
inline constexpr std::string_view kCautionReminder =
    "Reminder only. Rules change by place. Ask your building office and a licensed trade.";

enum class CautionState {
    Open,          // nobody has acknowledged it
    Minor,         // work on old paint within the sizes that are minor: told, holds nothing up
    Acknowledged,  // by somebody, or a test result is recorded
};

struct CautionRead {
    const CautionRow* row = nullptr;    // null for one that an owner wrote in their own words
    model::Id<model::Kind::Item> item;  // nil: about the house
    std::string what;                   // "Outside/trim"; "" for the house
    std::string about;                  // "lead paint"; with a crew's name where it is about one
    std::string why;                    // what raised it
    std::string readFrom;               // sentence of the walk notes, where it came from there
    CautionState state = CautionState::Open;
    bool isBegun = false;                    // its item is marked begun
    model::Id<model::Kind::Caution> record;  // what is kept of it; nil where it is computed alone
    std::string acknowledgedBy;              // a person's name, "" where unknown
    std::optional<model::Date> acknowledgedOn;
    std::string testResult;

    // What it is and where it is from; empty where an owner wrote it.
    [[nodiscard]] std::string_view text() const { return row == nullptr ? "" : row->text; }

    [[nodiscard]] std::string_view source() const { return row == nullptr ? "" : row->source; }

    [[nodiscard]] std::string_view consequence() const {
        return row == nullptr ? "" : row->consequence;
    }

    // Whether its item may not be marked begun.
    [[nodiscard]] bool holdsUp() const { return state == CautionState::Open && !item.isNil(); }
};

// A mark that says work was begun while a caution of its item was open.
struct MarkInSpite {
    model::Id<model::Kind::Mark> mark;
    model::Id<model::Kind::Item> item;
    std::string what;
    std::optional<model::Date> on;
};

struct Cautions {
    // By item in walking order, then the house; each by the table, then what an owner wrote.
    std::vector<CautionRead> all;
    std::vector<MarkInSpite> inSpite;  // marks flagged so, in the order of rows.marks

    // Open ones that hold up this item, in order.
    [[nodiscard]] std::vector<const CautionRead*> holdingUp(
        model::Id<model::Kind::Item> item) const;
    // Open ones of items that hold something up.
    [[nodiscard]] std::size_t openCount() const;
};

// Requires: rows without voided marks (as of `today` where that is asked for). `today`: insurance
// that has lapsed by then counts as none. Errors: OverflowError.
[[nodiscard]] Cautions cautionsOf(const model::JobRows& rows, model::Date today);

// Whether a mark of this item on `on` says work was begun in spite of a caution: one is open, or
// was acknowledged only after that day. `saysBegun`: the mark says more than 0.
[[nodiscard]] bool isInSpite(const Cautions& cautions, model::Id<model::Kind::Item> item,
                             const std::optional<model::Date>& on, bool saysBegun);

// How a caution is written to the book once it is acknowledged: as it stands, with its item, about
// and why, and without who, when and what was found.
[[nodiscard]] model::Caution keptCaution(const CautionRead& caution,
                                         model::Id<model::Kind::Job> job);

}  // namespace ledgerboard::compute
