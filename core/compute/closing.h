// What still stands between this job and finished, what releases each crew's retainage, and what
// should be in the folder when the keys go?
//
// Release order of a crew: its work finished, its punch looked at, its final inspections passed,
// its debris gone, its work accepted, its last bill what contract + signed changes - charge-backs
// come to, its conditional final waiver in hand, then it is paid; the unconditional waiver once the
// money has cleared, warranty papers, done. Keep back 1.5 to 2 times the cost of what is left.
// Source: common practice, no source. A lawyer says what forms and terms the place asks for.
// What the book cannot know is asked ("have you ..."), never told as done.
// Threads: any number may ask.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/compute/budget.h"
#include "core/compute/cautions.h"
#include "core/compute/punch_list.h"
#include "core/model/rows.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

enum class ClosingPart {
    Items,        // not shown finished
    Decisions,    // alternates nobody has decided
    Changes,      // asked, neither signed nor refused
    Cautions,     // open on an item
    Punch,        // open punch items
    Inspections,  // not passed
    Papers,       // that should be there and are not
    Receipts,     // spend without an amount
    Retainage,    // still held or owed
    FinalDraw,    // asked and not funded, or held back by the lender
};
[[nodiscard]] std::string_view wordsFor(ClosingPart part);  // "scope items", "punch items", ...

struct StandsBetween {
    ClosingPart part = ClosingPart::Items;
    model::Saying what;                 // "Kitchen/range"
    model::Saying why;                  // "0 % shown"
    std::optional<model::Money> money;  // at stake
    model::Kind recordKind = model::Kind::None;
    model::RawId record;
};

// One step of the release order. `done` is empty where the book cannot know.
struct ReleaseStep {
    model::Saying what;  // "its final waiver, conditional"
    std::optional<bool> done;
    model::Saying says;  // what the book shows: "2 of 3 items finished"
    // Where it is about money: so much of so much.
    std::optional<model::Money> amount{};
    std::optional<model::Money> of{};
};

// A subcontract that isn't closed: what releases it.
struct Release {
    std::size_t contract = 0;  // in rows.contracts
    std::string name;
    model::Money held;
    model::Money leftToPay;            // contract now - charge-backs - paid, not below 0
    model::Money leftToDo;             // unfinished work + open punch items, at cost
    std::size_t punchWithoutCost = 0;  // not in leftToDo
    model::Money holdLow;              // 1.5 times leftToDo
    model::Money holdHigh;             // 2 times
    std::vector<ReleaseStep> steps;
    std::optional<std::size_t> next;  // the first step that isn't known to be done
};

// One line of the folder that goes with the house.
struct FinalPaper {
    model::Saying what;
    std::optional<bool> known;  // empty: have you ...?
    model::Saying says;
};

struct Closing {
    std::size_t items = 0;              // that count
    std::size_t finished = 0;           // of them
    std::vector<StandsBetween> stands;  // by part, in the order of ClosingPart
    std::vector<Release> releases;      // as in rows.contracts
    std::vector<FinalPaper> papers;

    // Whether nothing that the book knows of is left.
    [[nodiscard]] bool isFinished() const { return items > 0 && stands.empty(); }
};

// Requires: rows as of `today`; figures = figuresOf(rows, today). Errors: OverflowError.
[[nodiscard]] Closing closingOf(const model::JobRows& rows, const JobFigures& figures,
                                model::Date today);

}  // namespace ledgerboard::compute
