// What is written when today's budget and plan are frozen as what progress is measured against?
//
// One row for the baseline and one for each item that counts, with its price and planned dates as
// they stand (compute::freeze), as one action. An earlier baseline stays. Threads: any.
#pragma once

#include "core/compute/scope_lines.h"
#include "core/model/result.h"
#include "core/store/book.h"

namespace ledgerboard::intake {

struct KeptBaseline {
    model::Id<model::Kind::Baseline> id;
    compute::Frozen frozen;
    model::Money total;  // of the budgets frozen
    store::Action action{"baseline"};
};

// `rows` are a job's as read at `readAt`: the action is refused where anything was written since.
// Errors (CannotBeMet): nothing in scope; there is a baseline of that day already. OverflowError's
// message.
[[nodiscard]] model::Result<KeptBaseline> keepBaseline(store::Book& book,
                                                       const model::JobRows& rows, model::Date on,
                                                       const store::LogPosition& readAt,
                                                       model::Instant at);

}  // namespace ledgerboard::intake
