// What is a book made of? Inside core/store only: shared by the sources that make up Book.
#pragma once

#include <memory>
#include <string>

#include "core/model/overflow.h"
#include "core/store/book.h"
#include "core/store/database.h"
#include "core/store/log.h"
#include "core/store/schema.h"

namespace ledgerboard::store {

struct Book::Parts {
    std::string path;
    std::unique_ptr<Database> database;
    std::unique_ptr<Log> log;
    std::unique_ptr<model::IdMaker> ids;
    model::Id<model::Kind::Device> device;
    model::Id<model::Kind::Person> person;
};

// Reads again which device and person the book writes for.
void readSelf(Book::Parts& parts);

// All that is in one book's tables into those of another, which were just made. Requires: in a
// transaction of `to`.
void copyBook(Database& from, Database& to);

// From where on the log is whole: values that were written over before it may be gone.
[[nodiscard]] model::HybridClock horizonOf(Database& database);

// What the book remembers under a name; empty where nothing. Setting requires: in a transaction.
[[nodiscard]] model::Value meta(Database& database, std::string_view name);
void setMeta(Database& database, std::string_view name, const model::Value& value);

// Role of an action, stored in the actions table: do not renumber.
enum class ActionRole : std::int64_t { Done = 0, Undo = 1, Redo = 2 };

// An edit with what the writer had before it, on its way into the log.
struct PlannedEdit {
    const model::Field* field = nullptr;  // null for the gone cell
    Edit edit;
    std::vector<EntryName> replaces;
};

// Writes entries for `edits`, all with one new reading of the clock, and a line in actions.
// Requires: in a transaction. Returns the reading.
model::HybridClock writeAction(Database& database, Log& log, const model::RawId& device,
                               const std::vector<PlannedEdit>& edits, const std::string& what,
                               ActionRole role, std::int64_t target, model::Instant now);

// Puts every entry that `wanted` accepts from one book's log into another's.
template <class Wanted>
void copyEntries(Database& from, Log& to, Wanted&& wanted) {
    auto select = from.prepare(std::string("SELECT ") + kEntryColumns + "ORDER BY e.arrival");
    std::size_t sinceFlush = 0;
    while (select.step()) {
        const Entry entry = entryFrom(select, 0);
        if (wanted(entry)) {
            to.take(entry);
        }
        if (++sinceFlush == 10'000) {  // bounds the memory of a long log
            to.flush();
            sinceFlush = 0;
        }
    }
    to.flush();
}

// Runs `work`, turning what the database and the arithmetic throw into an Error.
template <class Work>
auto guardStore(Work&& work) -> decltype(work()) {
    try {
        return model::guarded(std::forward<Work>(work));
    } catch (const DatabaseFailure& failure) {
        return model::Error{failure.code(), failure.what()};
    }
}

}  // namespace ledgerboard::store
