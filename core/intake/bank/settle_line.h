// Which lines of the bank wait, and what does the owner say they are?
//
// What the owner decides is kept as a payee rule, and other lines that wait and fit the rule are
// filed with it: one action, taken back by one undo. No rule is made where told so, where the line
// pays an invoice, or where the payee has been paid for other things before.
#pragma once

#include <string>
#include <vector>

#include "core/intake/bank/match_line.h"
#include "core/model/result.h"
#include "core/store/book.h"

namespace ledgerboard::intake {

// A line that waits, and the best guess for it.
struct WaitingLine {
    model::BankLine line;
    LineMatch match;
};

// In order of day. A line waits until it is filed or not ours; again where the row it was filed as
// is dropped. Requires: `rows` holds no voided rows.
[[nodiscard]] std::vector<WaitingLine> waitingLines(const model::JobRows& rows);

// What the owner says a line is.
struct LineDecision {
    bool takeGuess = false;
    bool notOurs = false;
    // An item, a contract, a crew, an invoice it pays, another row of spend it is the payment of,
    // or a draw it brought; None for a row of spend of the whole job.
    model::Kind kind = model::Kind::None;
    model::RawId target;
    bool learn = true;
};

struct Decided {
    LineMatch match;                // of the line itself
    std::string rule;               // the words of the rule made or changed; empty: none
    std::vector<WaitingLine> also;  // others that the rule filed
};

// Errors (CannotBeMet): the line does not wait; nothing to guess; the sums differ from that of the
// row of spend named; a draw for money that left. (WrongUse): a kind that a line can't be for.
[[nodiscard]] model::Result<Decided> settleLine(store::Book& book, model::Id<model::Kind::Job> job,
                                                model::Id<model::Kind::BankLine> line,
                                                const LineDecision& decision, model::Instant now);

}  // namespace ledgerboard::intake
