// How does a file of rows come into the book?
//
// A CSV file of scope, prices, crews, spend, contracts, changes, marks, draws or punch items comes
// in whole or not at all, as one action. Everything wrong with it is reported at once, by line and
// column. Bringing the same file twice adds nothing (see pairing.h). An empty cell says nothing and
// clears nothing.
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "core/intake/files/bring_kinds.h"
#include "core/intake/files/problems.h"
#include "core/model/id.h"
#include "core/model/result.h"
#include "core/store/book.h"

namespace ledgerboard::intake {

struct BringOptions {
    std::string match;     // "theirs=ours,...", as --match takes it
    bool tryOnly = false;  // everything but writing it
    // Rows that stay out, by line; rising.
    std::vector<std::int64_t> leaveOut = {};
    // Of photos: the instant at which clocks at the house show `local` ("2026-05-08T14:05:00"), for
    // cameras that do not say how far theirs is from UTC. Empty: they are taken to show UTC.
    std::function<model::Result<model::Instant>(const std::string& local)> atHouse = {};
};

enum class BringOutcome { Added, Changed, Unchanged };

// What one row of the file does.
struct BringLine {
    std::int64_t line = 0;
    BringOutcome outcome = BringOutcome::Unchanged;
    std::string name;    // "Kitchen/replace cabinets"
    std::string detail;  // what comes in, or what changes: "Quantity 10, was 8"
};

struct BringReport {
    std::string file;
    model::Kind kind = model::Kind::None;
    bool written = false;  // false with tryOnly, and where nothing changes
    std::size_t added = 0;
    std::size_t changed = 0;
    std::size_t unchanged = 0;
    std::vector<std::string> newSpaces;  // made because the scope names them, in walking order
    std::vector<BringLine> lines;        // one a row, in the file's order
    std::vector<std::string> remarks;    // sentences on what the owner should look at
};

// Brings the bytes of a CSV file; `file` is what messages call it. `kind` is a word of
// bringKinds(). A nil job will do for prices and crews. Ids and clocks are made with `now`.
// Errors (WrongUse): an unknown kind, a --match that can't be read, no job. (CannotBeMet): a file
// that can't be taken: one line for the whole and one for each thing to mend. The book is then as
// it was. (Damaged): from the book.
[[nodiscard]] model::Result<BringReport> bring(store::Book& book, model::Id<model::Kind::Job> job,
                                               std::string_view kind, const std::string& file,
                                               std::string_view bytes, const BringOptions& options,
                                               model::Instant now);

// What is wrong with a file, and what would come in without the rows that are wrong.
struct BringTrial {
    std::vector<Problem> problems;         // in order of line
    std::vector<std::int64_t> wrongLines;  // rows with a problem, rising: to be left out
    std::size_t rows = 0;                  // in the file
    BringReport rest;                      // of the other rows; nothing is written
};

// Tries a file. A row that leans on one left out, by its column After, is wrong too.
// Errors: those of bring() that concern the file as a whole: it is no table, or a heading is
// unknown.
[[nodiscard]] model::Result<BringTrial> tryBring(store::Book& book, model::Id<model::Kind::Job> job,
                                                 std::string_view kind, const std::string& file,
                                                 std::string_view bytes, model::Instant now);

// bring() from the file at `path`. Errors: also those of readWholeFile.
[[nodiscard]] model::Result<BringReport> bringFile(store::Book& book,
                                                   model::Id<model::Kind::Job> job,
                                                   std::string_view kind, const std::string& path,
                                                   const BringOptions& options, model::Instant now);

}  // namespace ledgerboard::intake
