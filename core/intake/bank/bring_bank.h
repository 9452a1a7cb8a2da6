// How do the lines of a bank's download come into the book?
//
// Every line is kept as a bank line, known again by account and bank id, so that downloads may
// overlap. A line whose match is sure enough (match_line.h) is filed in the same action: as the
// payment of a row of spend that is there, as a new row of spend, as a lender's draw that came, or
// as not ours. The others wait, each with its best guess, and count nowhere until the owner decides
// (settle_line.h). Everything is one action, so one undo takes all of it back.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "core/intake/bank/match_line.h"
#include "core/intake/bank/statement.h"
#include "core/model/result.h"
#include "core/store/book.h"

namespace ledgerboard::intake {

enum class LineOutcome { Filed, Waiting, Known };

struct BroughtLine {
    model::BankLine line;
    LineOutcome outcome = LineOutcome::Known;
    LineMatch match;  // of one that was not known
};

struct BankReport {
    bool written = false;  // false with `tryOnly`, and where every line was known
    std::vector<BroughtLine> lines;
};

// Told how many lines were matched, of how many; false stops. Empty: goes on to the end.
using BankGoesOn = std::function<bool(std::size_t done, std::size_t all)>;

// Errors (CannotBeMet): the statement's currency is not the job's; it was stopped, and nothing was
// written; as Book::commit.
[[nodiscard]] model::Result<BankReport> bringBank(store::Book& book,
                                                  model::Id<model::Kind::Job> job,
                                                  const Statement& statement,
                                                  const std::string& file, bool tryOnly,
                                                  model::Instant now, const BankGoesOn& goOn = {});

}  // namespace ledgerboard::intake
