// What can be requested from the lender now, line by line, and why not more?
//
// A line of the lender's schedule of values is seen as far as its items are: their seen percents,
// weighed by budget now. Its draw is as draws.h says. Paid before on a line: what each draw so far
// was allowed on it, adding up to what that draw came to; a draw that does not say its lines is
// spread over them by what each may have been paid by now. Draws asked and not yet funded count as
// asked for, so that nothing is asked twice.
// Where there are no lender lines, the whole work loan stands as one line, seen as the job is.
// The final draw, which releases the holdback, comes once everything is seen finished and every
// signed contract is accepted with its final waiver (common practice, no source).
// Source: project decision; lenders differ.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/compute/budget.h"
#include "core/compute/deal.h"
#include "core/compute/draws.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

// Less was allowed on a line than was asked for.
struct RefusedBefore {
    std::optional<std::int64_t> number;  // of the draw
    model::Percent asked;
    model::Percent allowed;
    std::string why;
};

struct LenderLineFigures {
    std::optional<std::size_t> line;  // in rows.lender_lines; empty: the whole work loan
    std::string name;
    std::vector<std::size_t> items;  // that count under it, in rows.items
    LineInPlace inPlace;             // amount, seen, share, paid or asked for before
    model::Money askedOpen;          // the part of `paidBefore` asked for and not yet funded
    model::Money heldBack;
    model::Money draw;
    std::string whyNot;  // where draw is nothing
    std::optional<RefusedBefore> refused;
};

struct DrawsNow {
    std::vector<LenderLineFigures> lines;
    model::Money total;       // before the lender's fee
    model::Money fee;         // of the visit
    model::Money heldBack;    // in all, this draw with it
    model::Money paidBefore;  // in all, what is asked for with it
    model::Money cutByLimit;
    std::optional<model::Money> limit;
    bool isFinal = false;
    bool byLines = false;              // false: the whole loan as one line, or no loan at all
    std::size_t itemsWithoutLine = 0;  // counting, where there are lines
    std::vector<AbsentInput> leftOut;  // counted as nothing
};

// No lines where no work loan is entered. Requires: rows as of a day. Errors: OverflowError.
[[nodiscard]] DrawsNow drawsNowOf(const model::JobRows& rows, const JobFigures& figures);

// The most that can be drawn in all: the draw limit or the work loan, the smaller where both are
// entered. Empty: neither.
[[nodiscard]] std::optional<model::Money> drawLimitOf(const model::Job& job);

// Asked for and not yet funded.
[[nodiscard]] bool isOpen(const model::Draw& draw);

}  // namespace ledgerboard::compute
