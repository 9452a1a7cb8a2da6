// What does saying how far work is, or that a caution was read, write into the book?
//
// A mark for each item, as the command line's `mark` makes it. Nothing is marked begun while a
// caution of one of the items is open.
// Threads: the UI's.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/compute/cautions.h"
#include "core/compute/mark_wish.h"
#include "core/model/result.h"
#include "core/store/action.h"
#include "core/store/book.h"

#include "desktop/client/now/job_now.h"

namespace ledgerboard::desk {

struct MarkedWork {
    store::Action action{"mark"};
    int marked = 0;                            // 0: all of it is finished already
    model::Percent shown;                      // what the last of the marks says
    std::vector<compute::CautionRead> heldUp;  // cautions that are open; then nothing is marked
};

// What is said of each item on a day. `items` by their place in now.rows.items; of several, those
// in no sum (kept, not carried) are left out, and of finished ones said to be so once more each.
// Requires: items not empty. Errors: as compute::checkMark (CannotBeMet for what is kept as it is);
// OverflowError's message.
[[nodiscard]] model::Result<MarkedWork> markWork(store::Book& book, const JobNow& now,
                                                 const std::vector<std::size_t>& items,
                                                 const compute::MarkWish& wish, model::Date on,
                                                 model::Instant at);

// Who reads it, that they have, and what was found ("" where nothing was tested).
[[nodiscard]] store::Action acknowledgement(store::Book& book, const JobNow& now,
                                            const compute::CautionRead& caution,
                                            const std::string& found, model::Instant at);

}  // namespace ledgerboard::desk
