// How is a line of the bank filed? Inside core/intake/bank: what bringing and settling share.
#pragma once

#include "core/intake/bank/match_line.h"
#include "core/model/result.h"
#include "core/store/action.h"
#include "core/store/book.h"

namespace ledgerboard::intake {

// Everything of a job but voided rows. Errors: as Book::jobRows.
[[nodiscard]] model::Result<model::JobRows> bankRows(const store::Book& book,
                                                     model::Id<model::Kind::Job> job);

// Adds to `action` what is written because of `match`. Nothing for Unknown.
void fileLine(store::Action& action, store::Book& book, const model::BankLine& line,
              const LineMatch& match, model::Instant now);

}  // namespace ledgerboard::intake
