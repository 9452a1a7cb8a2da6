// Where is everything kept? The book: one SQLite file with the log, its cells, and the rows people
// see; or the same tables in another database (backend.h).
//
// Every change is one Action, committed whole or not at all, and on disk (synchronous FULL) before
// commit() returns. Several processes may hold one book: each writer waits for the other.
// Units: as the catalog says. Source: project decision; the file's layout is docs/book-format.md.
// Threads: one Book per thread; any number of Books per file.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/model/id.h"
#include "core/model/result.h"
#include "core/model/rows.h"
#include "core/store/action.h"
#include "core/store/entry.h"

namespace ledgerboard::store {

class Backend;
class Database;
class SyncBook;

// A record as the catalog sees it: values in the order of its kind's fields.
struct Record {
    model::Kind kind = model::Kind::None;
    model::RawId id;
    std::vector<model::Value> values;
    bool gone = false;

    // Requires: `field` belongs to `kind`.
    [[nodiscard]] const model::Value& at(model::FieldCode field) const;
};

// A row of one kind as a Record.
template <class Row>
[[nodiscard]] Record recordOf(const Row& row) {
    Record record{Row::kKind, row.id.raw(), {}, false};
    model::visitFields(
        row, [&](const auto& member) { record.values.push_back(model::valueOf(member)); });
    return record;
}

// One line of history: a field of a record got a value.
struct HistoryLine {
    model::HybridClock clock;
    model::RawId device;
    model::FieldCode field = 0;
    model::Value value;
    std::string what;      // the action's words, where made on this device
    bool current = false;  // whether it is what the field holds now
};

// What undo or redo did.
struct UndoReport {
    std::string what;  // the words of the action undone or done again
    std::size_t edits = 0;
};

// What verify found. Empty findings: everything holds.
struct VerifyReport {
    struct Finding {
        std::string what;     // a sentence naming table, record and field
        bool mended = false;  // set where --mend put it right
    };

    std::vector<Finding> findings;
    std::int64_t entries = 0;
    std::int64_t records = 0;
};

class Book {
  public:
    // Makes a new book with an owner and this device in it.
    // Errors: something is already there; the folder cannot be written.
    [[nodiscard]] static model::Result<Book> create(const std::string& path,
                                                    const std::string& ownerName,
                                                    model::Instant now, model::FillRandom random);
    // Makes a book for a device that joins another book: nothing in it until it has met a peer.
    // Errors: as of create.
    [[nodiscard]] static model::Result<Book> createJoined(const std::string& path,
                                                          model::Id<model::Kind::Device> device,
                                                          model::Id<model::Kind::Person> person,
                                                          model::FillRandom random);
    // Opens an existing book. Errors (Damaged): missing, foreign, newer, damaged or read-only; the
    // file and its folder are as they were.
    [[nodiscard]] static model::Result<Book> open(const std::string& path,
                                                  model::FillRandom random);

    // The same in another database than a file; `path` names what its photos stand beside.
    // Where there is no book yet openIn makes one for `device`, which may be nil where there is
    // one. createCopyIn brings another book whole.
    // Errors: the database; what is in it; a book is there already, or none.
    [[nodiscard]] static model::Result<Book> createIn(std::unique_ptr<Backend> backend,
                                                      const std::string& path,
                                                      const std::string& ownerName,
                                                      model::Instant now, model::FillRandom random);
    [[nodiscard]] static model::Result<Book> createCopyIn(std::unique_ptr<Backend> backend,
                                                          const std::string& path, const Book& from,
                                                          model::FillRandom random);
    [[nodiscard]] static model::Result<Book> openIn(std::unique_ptr<Backend> backend,
                                                    const std::string& path,
                                                    model::Id<model::Kind::Device> device,
                                                    model::FillRandom random);

    Book(Book&&) noexcept;
    Book& operator=(Book&&) noexcept;
    ~Book();

    // A new id, rising with time. It names nothing until an action uses it.
    [[nodiscard]] model::RawId newId(model::Instant now);

    template <model::Kind K>
    [[nodiscard]] model::Id<K> newId(model::Instant now) {
        return model::Id<K>(newId(now));
    }

    // The person and the device this book writes for.
    [[nodiscard]] model::Id<model::Kind::Person> me() const;
    [[nodiscard]] model::Id<model::Kind::Device> thisDevice() const;
    // The same, for a record to name: nil where the book holds no row of it, as a crew lead's does
    // not of its own device.
    [[nodiscard]] model::Id<model::Kind::Person> meAsKept() const;
    [[nodiscard]] model::Id<model::Kind::Device> thisDeviceAsKept() const;

    // How far the log has come: for an Action that is worked out from what the book holds now. Zero
    // where it cannot be read; the commit then says why.
    [[nodiscard]] LogPosition position() const;

    // Writes one action: checks every edit against the catalog, then entries, cells and rows in one
    // transaction. Edits that change nothing write nothing; an action without effect is no action.
    // Errors (CannotBeMet, WrongUse): an unknown field or kind, a value that does not fit, a fact
    // of a kept row edited, a reference to nothing, a book written to since the action was planned.
    // (Damaged): the disk. The book is then as it was.
    [[nodiscard]] model::Result<void> commit(const Action& action, model::Instant now);

    // Takes entries made elsewhere, in any order, any number of times. Returns how many were new.
    [[nodiscard]] model::Result<std::size_t> apply(std::span<const Entry> entries);

    // Undoes this device's latest action that is not undone; redo brings back what was undone last.
    // Both write new entries. Errors: nothing to undo; a field was changed since by another device.
    [[nodiscard]] model::Result<UndoReport> undo(model::Instant now);
    [[nodiscard]] model::Result<UndoReport> redo(model::Instant now);

    // All rows of a kind, of one job or (nil) of the book, dropped ones left out, in order of id.
    template <class Row>
    [[nodiscard]] model::Result<std::vector<Row>> rows(
        model::Id<model::Kind::Job> job = model::Id<model::Kind::Job>()) const;

    // Everything of one job. Errors: no such job.
    [[nodiscard]] model::Result<model::JobRows> jobRows(model::Id<model::Kind::Job> job) const;

    // One record, dropped or not; empty where there is none.
    [[nodiscard]] model::Result<std::optional<Record>> record(model::Kind kind,
                                                              model::RawId id) const;
    // Every record of a kind, dropped ones too where asked, in order of id.
    [[nodiscard]] model::Result<std::vector<Record>> records(model::Kind kind,
                                                             model::Id<model::Kind::Job> job,
                                                             bool withGone = false) const;
    // Records of any kind whose id starts or ends with `hex` (four digits or more, no hyphens).
    [[nodiscard]] model::Result<std::vector<Record>> recordsByIdPart(const std::string& hex) const;

    // Who changed what, when, on which device: oldest first.
    [[nodiscard]] model::Result<std::vector<HistoryLine>> history(model::RawId record) const;

    // The book as it was known at `instant`: the log up to that clock, in memory, for reading.
    [[nodiscard]] model::Result<Book> knownAt(model::Instant instant) const;

    // The whole log, in order of arrival.
    [[nodiscard]] model::Result<std::vector<Entry>> entries() const;

    // Reads the whole book and checks that it adds up; with `mend` rebuilds cells and rows from the
    // log.
    [[nodiscard]] model::Result<VerifyReport> verify(bool mend);

    // A copy of the whole book at `path`, made while in use. Errors: something is already there.
    [[nodiscard]] model::Result<void> backup(const std::string& path) const;

    // Every record of every kind as text, for comparing two books: same text, same cells.
    [[nodiscard]] model::Result<std::string> dump() const;

    [[nodiscard]] const std::string& path() const;

    // False after the database was lost from sight, until it is there again: what failed meanwhile
    // may be tried again.
    [[nodiscard]] bool isThere() const;

    struct Parts;  // of core/store alone

  private:
    friend class SyncBook;  // what the exchange with other books needs: sync_book.h
    static model::Result<Book> over(std::unique_ptr<Database> database, const std::string& path,
                                    model::FillRandom random);
    explicit Book(std::unique_ptr<Parts> parts);
    std::unique_ptr<Parts> parts_;
};

}  // namespace ledgerboard::store
