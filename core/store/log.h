// How does an entry change the book? The log's tables, its cells, and the rows, kept in step.
//
// Inside core/store only. Every function here runs in the caller's transaction and throws
// DatabaseFailure.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

#include "core/store/database.h"
#include "core/store/entry.h"
#include "core/store/schema.h"

namespace ledgerboard::store {

class Log {
  public:
    explicit Log(Database& database) : database_(database) {}

    // This book's small number for a device, made where new.
    [[nodiscard]] std::int64_t writerOf(const model::RawId& device);
    // The same, 0 where it has none: for reading.
    [[nodiscard]] std::int64_t knownWriterOf(const model::RawId& device);
    [[nodiscard]] model::RawId deviceOf(std::int64_t writer);

    // What came of the entries taken since the last flush.
    struct Settled {
        std::size_t added = 0;      // those that were not there
        model::HybridClock latest;  // of those
    };

    // Puts one entry in, unless it is there already or was there once. Cells and rows change when
    // flush() is called.
    void take(const Entry& entry);
    // Lets what was taken since the last flush win or lose its cell, and writes the rows of every
    // record whose cells changed.
    Settled flush();

    // What the cell holds: empty where there is none.
    [[nodiscard]] model::Value current(const model::RawId& record, model::FieldCode field);
    // The same, and the entry it came from; false where there is no cell.
    bool currentEntry(const model::RawId& record, model::FieldCode field, Entry& entry);

    // The latest reading of the hybrid clock, kept in the book.
    [[nodiscard]] model::HybridClock clock();
    void setClock(model::HybridClock clock);
    // The highest number a device's lane ever had here, forgotten ones included; 0 where none.
    [[nodiscard]] std::int64_t lastNumber(const model::RawId& device, Lane lane);

    // Makes the cells and the row of one record again from those of its entries that are still
    // there, whatever was changed in them. Requires: nothing waits for flush().
    void remake(const model::RawId& record);
    // Takes entries of one record out of the log for good, by arrival, and remakes the record.
    void forgetEntries(const model::RawId& record, const std::vector<std::int64_t>& arrivals);
    // The arrivals of every entry of a record, those that hold and those that were beaten, rising.
    [[nodiscard]] std::vector<std::int64_t> arrivalsOf(const model::RawId& record);

    // Clears cells and rows and makes them again from the entries.
    void rebuild();
    // Makes the rows again from the cells: after the catalog has changed.
    void rebuildRows();

    // Forgets what was read ahead: after a rollback, or when another process may have written.
    void forget();

  private:
    struct Change {
        model::FieldCode field;
        model::Value value;
    };

    // An entry with its place in the log, whose cell is not settled yet.
    struct Fresh {
        std::int64_t arrival;
        std::int64_t writer;
        Entry entry;
    };

    // What a cell holds.
    struct Holder {
        std::int64_t arrival;
        std::int64_t writer;
        model::HybridClock clock;
        EntryName name;
        bool isNew;  // to be written
    };

    using Cell = std::pair<model::RawId, model::FieldCode>;

    Settled leaveOutKnown();
    void settle();
    void change(const Entry& entry);  // its field's value, for the rows
    std::map<Cell, Holder> holdersOf(std::int64_t first, std::int64_t last);
    void resolve(std::map<Cell, Holder>& holders);
    void writeRow(model::Kind kind, const model::RawId& record, std::vector<Change>& changes);

    Database& database_;
    std::unordered_map<model::RawId, std::int64_t, model::RawIdHash> writers_;
    std::unordered_map<std::int64_t, model::RawId> devices_;
    std::unordered_map<model::RawId, std::vector<Change>, model::RawIdHash> pending_;
    std::vector<model::RawId> pendingOrder_;
    std::vector<Fresh> taken_;          // in order of arrival; some may be there already
    std::vector<Fresh> fresh_;          // in order of arrival, and in the log
    std::int64_t next_ = 0;             // the next arrival; 0: not read yet
    std::optional<bool> anyCompacted_;  // whether anything ever was; empty: not read yet
    std::unordered_map<std::string, std::string> rowSql_;  // by the fields set, as bytes
};

// The entries a checked entry replaces, as bytes of the log: per entry 16 of device, 1 of lane, 8
// of number, most significant first.
[[nodiscard]] std::string packReplaces(const std::vector<EntryName>& names);
[[nodiscard]] std::vector<EntryName> unpackReplaces(const std::string& bytes);

// Columns from `at`: device blob, lane, number, clock, record, field, value, replaces.
[[nodiscard]] Entry entryFrom(const Statement& statement, int at);
inline constexpr const char* kEntryColumns =
    "w.device, e.lane, e.number, e.clock, e.record, e.field, e.value, e.replaces "
    "FROM entries e JOIN writers w ON w.writer = e.writer ";

}  // namespace ledgerboard::store
