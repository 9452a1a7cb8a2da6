// What does the scope's column "After" say, and how does it become links?
//
// A cell lists the items that its row's item waits for, with semicolons between: "Kitchen/cabinets;
// Hall bath/tile SS+2". After the name may stand a kind (FS finish to start, where not said; SS,
// FF, SF) and a lag in working days, +2 or -1. Source: project decision; the four kinds are the
// critical path method's own.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/intake/files/find.h"
#include "core/intake/files/problems.h"
#include "core/model/result.h"
#include "core/store/action.h"
#include "core/store/book.h"

namespace ledgerboard::intake {

struct AfterEntry {
    std::string item;  // as written
    model::LinkKind kind = model::LinkKind::FinishToStart;
    std::int64_t lag = 0;  // thousandths of a working day
};

// Reads a cell; empty parts are passed over. Errors (WrongUse): a kind or lag without an item, a
// lag that can't be read or is beyond 3650 days.
[[nodiscard]] model::Result<std::vector<AfterEntry>> parseAfter(std::string_view text);

// "Kitchen/cabinets SS+2": as parseAfter reads it.
[[nodiscard]] std::string printAfter(const AfterEntry& entry);

// A filled cell, and the item of its row.
struct AfterCell {
    std::int64_t line = 0;
    model::RawId item;
    std::string text;
};

// Writes the links that the cells say into `action`, and says for each cell what comes in ("after
// Kitchen/cabinets"; empty where nothing does). A link that is there already stays; one between the
// same items takes the cell's kind and lag, unless it had them once and was changed since; a
// dropped one stays dropped. Links that no cell names stay. Adds to `problems`: cells that can't be
// read, names nobody has, an item after itself or named twice, items that would wait for each other
// in a loop. `heading` is what the file calls the column. Errors: those of reading the book.
[[nodiscard]] model::Result<std::vector<std::string>> bringAfter(
    const std::vector<AfterCell>& cells, const std::string& heading, const Finder& finder,
    store::Book& book, model::Id<model::Kind::Job> job, model::Instant now, store::Action& action,
    Problems& problems);

}  // namespace ledgerboard::intake
