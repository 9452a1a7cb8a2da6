#include "core/store/schema.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <fstream>
#include <string_view>
#include <sys/stat.h>
#include <unistd.h>
#include <utility>

#include "core/model/saying.h"
#include "core/store/sqlite_backend.h"

namespace ledgerboard::store {

namespace {

using model::damaged;
using model::FieldType;

// As the database calls it: INTEGER, ID, BYTES, VALUE and RISING are its words for what they say,
// STRICT and KEYED stand behind a table; KEYED is kept in the order of its key.
constexpr const char* kLogTables = R"sql(
CREATE TABLE meta(
    name TEXT PRIMARY KEY,
    value VALUE
) KEYED;

-- Devices get a small number each in this book; it is never sent.
CREATE TABLE writers(
    writer INTEGER PRIMARY KEY,
    device ID NOT NULL UNIQUE
) STRICT;

CREATE TABLE entries(
    arrival INTEGER PRIMARY KEY,
    writer INTEGER NOT NULL,
    lane INTEGER NOT NULL,
    number INTEGER NOT NULL,
    clock INTEGER NOT NULL,
    record ID NOT NULL,
    field INTEGER NOT NULL,
    value VALUE,
    replaces BYTES,
    UNIQUE(writer, lane, number)
) STRICT;

-- The entry that a field of a record holds now. What it beat stands in superseded.
CREATE TABLE cells(
    record ID NOT NULL,
    field INTEGER NOT NULL,
    arrival INTEGER NOT NULL,
    clock INTEGER NOT NULL,
    writer INTEGER NOT NULL,
    PRIMARY KEY(record, field)
) KEYED;

CREATE TABLE superseded(
    record ID NOT NULL,
    arrival INTEGER NOT NULL,
    PRIMARY KEY(record, arrival)
) KEYED;

-- What this device did, for undo and for the words in history. Not sent.
CREATE TABLE actions(
    clock INTEGER PRIMARY KEY,
    what TEXT NOT NULL,
    role INTEGER NOT NULL,   -- 0 done, 1 undo, 2 redo
    target INTEGER,          -- the action undone or done again
    first INTEGER NOT NULL,  -- arrival of its first entry
    undone INTEGER NOT NULL DEFAULT 0
) STRICT;
)sql";

// What the exchange with other books needs; a book from before it gets them when it is opened.
constexpr const char* kSyncTables = R"sql(
-- The highest number of a device's lane that was forgotten here, so that it is not used again.
CREATE TABLE IF NOT EXISTS forgotten(
    writer INTEGER NOT NULL,
    lane INTEGER NOT NULL,
    number INTEGER NOT NULL,
    PRIMARY KEY(writer, lane)
) KEYED;

-- Entries that were written over long ago and are gone, but for their names and digests.
CREATE TABLE IF NOT EXISTS compacted(
    writer INTEGER NOT NULL,
    lane INTEGER NOT NULL,
    number INTEGER NOT NULL,
    digest INTEGER NOT NULL, -- of what it said, to tell it from another of the same name
    PRIMARY KEY(writer, lane, number)
) KEYED;

-- What a device sent and may not write: never applied, for the owner to see.
CREATE TABLE IF NOT EXISTS asides(
    place RISING,
    device ID NOT NULL,
    lane INTEGER NOT NULL,
    number INTEGER NOT NULL,
    clock INTEGER NOT NULL,
    record ID NOT NULL,
    field INTEGER NOT NULL,
    value VALUE,
    replaces BYTES,
    at_ms INTEGER NOT NULL,
    why TEXT NOT NULL,
    UNIQUE(device, lane, number)
) STRICT;

-- At the peer: which entry of a cell a device of another role than owner has; with a round, which
-- one was sent in that round and is not confirmed yet (arrival 0: was told to drop it).
CREATE TABLE IF NOT EXISTS sent(
    device ID NOT NULL,
    record ID NOT NULL,
    field INTEGER NOT NULL,
    arrival INTEGER NOT NULL,
    PRIMARY KEY(device, record, field)
) KEYED;
CREATE TABLE IF NOT EXISTS sending(
    device ID NOT NULL,
    record ID NOT NULL,
    field INTEGER NOT NULL,
    arrival INTEGER NOT NULL,
    PRIMARY KEY(device, record, field)
) KEYED;

-- At a device: cells that were there when a fresh start began and were not sent again yet.
CREATE TABLE IF NOT EXISTS stale(
    record ID NOT NULL,
    field INTEGER NOT NULL,
    PRIMARY KEY(record, field)
) KEYED;
)sql";

bool isWord(char c) {
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_';
}

// The word a database has for one of ours.
std::string_view translated(std::string_view word, const Dialect& dialect) {
    const std::pair<std::string_view, const char*> words[] = {
        {"INTEGER", dialect.integer}, {"ID", dialect.id},         {"BYTES", dialect.bytes},
        {"VALUE", dialect.value},     {"RISING", dialect.rising}, {"STRICT", dialect.strict},
        {"KEYED", dialect.clustered},
    };
    for (const auto& [ours, theirs] : words) {
        if (word == ours) {
            return theirs;
        }
    }
    return word;
}

const char* sqlType(FieldType type, const Dialect& dialect) {
    switch (type) {
        case FieldType::Flag:
        case FieldType::Count:
        case FieldType::Money:
        case FieldType::Quantity:
        case FieldType::Percent:
        case FieldType::Date:
        case FieldType::Instant:
        case FieldType::Weekdays:
            return dialect.integer;
        case FieldType::Ref:
            return dialect.id;
        default:
            return "TEXT";
    }
}

std::string tableSql(const model::KindInfo& info, const Dialect& dialect) {
    std::string sql = "CREATE TABLE " + std::string(info.table) + "(\n    id " + dialect.id +
                      " PRIMARY KEY,\n    gone " + dialect.integer + " NOT NULL DEFAULT 0";
    for (const auto& field : info.fields) {
        sql += ",\n    \"" + std::string(field.column) + "\" " + sqlType(field.type, dialect);
    }
    sql += std::string("\n) ") + dialect.clustered + ";\n";
    if (model::jobFieldOf(info.kind) != nullptr) {
        sql += "CREATE INDEX " + std::string(info.table) + "_by_job ON " + std::string(info.table) +
               "(job_id);\n";
    }
    return sql;
}

std::uint32_t bigEndian(const std::array<unsigned char, 100>& header, std::size_t at) {
    return static_cast<std::uint32_t>(header[at]) << 24 |
           static_cast<std::uint32_t>(header[at + 1]) << 16 |
           static_cast<std::uint32_t>(header[at + 2]) << 8 | header[at + 3];
}

}  // namespace

std::string inWordsOf(const Dialect& dialect, std::string_view sql) {
    std::string text;
    for (std::size_t at = 0; at < sql.size();) {
        if (sql.substr(at, 2) == "--") {
            at = std::min(sql.find('\n', at), sql.size());
            continue;
        }
        std::size_t end = at;
        while (end < sql.size() && isWord(sql[end])) {
            ++end;
        }
        end = std::max(end, at + 1);
        text += translated(sql.substr(at, end - at), dialect);
        at = end;
    }
    return text;
}

model::Result<void> checkFile(const std::string& path) {
    struct stat info {};

    if (::stat(path.c_str(), &info) != 0) {
        return damaged(
            model::saying("there is no book at %1: make one with 'ledgerboard start NAME', or name "
                          "another with --book",
                          path));
    }
    if (!S_ISREG(info.st_mode)) {
        return damaged(model::saying("%1 is not a file: name the book's file with --book", path));
    }
    std::array<unsigned char, 100> header{};
    std::ifstream file(path, std::ios::binary);
    file.read(reinterpret_cast<char*>(header.data()), header.size());
    if (!file || std::string_view(reinterpret_cast<char*>(header.data()), 16) !=
                     std::string_view("SQLite format 3\0", 16)) {
        return damaged(
            model::saying("%1 is not a Ledgerboard book: name the book's file with --book", path));
    }
    if (bigEndian(header, 68) != static_cast<std::uint32_t>(kApplicationId)) {
        return damaged(
            model::saying("%1 is a database of another program, not a Ledgerboard book", path));
    }
    const auto version = static_cast<std::int32_t>(bigEndian(header, 60));
    if (version > kLayoutVersion) {
        return damaged(
            model::saying("%1 was written by a newer Ledgerboard (layout %2, this program knows "
                          "%3): use the newer program",
                          path, version, kLayoutVersion));
    }
    const std::uint32_t pageField = static_cast<std::uint32_t>(header[16]) << 8 | header[17];
    const std::uint64_t pageSize = pageField == 1 ? 65536 : pageField;
    const std::uint64_t pages = bigEndian(header, 28);
    if (bigEndian(header, 24) == bigEndian(header, 92) &&
        static_cast<std::uint64_t>(info.st_size) < pages * pageSize) {
        return damaged(model::saying("%1 is cut short (%2 of %3 bytes): restore a backup", path,
                                     info.st_size, pages * pageSize));
    }
    // The mode bits are asked too, because to the superuser every file is writable.
    if ((info.st_mode & (S_IWUSR | S_IWGRP | S_IWOTH)) == 0 || ::access(path.c_str(), W_OK) != 0) {
        return damaged(
            model::saying("%1 is read-only: make it writable, or copy it and use the copy", path));
    }
    return {};
}

void createTables(Database& database) {
    database.backend().makeRoom();
    database.run(inWordsOf(database.dialect(), kLogTables));
    database.run(inWordsOf(database.dialect(), kSyncTables));
    createRowTables(database);
    database.backend().mark();
}

bool hasSyncTables(Database& database) {
    auto select = database.prepare("SELECT 1 FROM sqlite_schema WHERE name = 'compacted'");
    return select.step();
}

void createSyncTables(Database& database) {
    database.run(inWordsOf(database.dialect(), kSyncTables));
}

void createRowTables(Database& database) {
    std::string sql;
    for (const auto& info : model::kinds()) {
        sql += tableSql(info, database.dialect());
    }
    database.run(sql);
    auto statement = database.prepare(
        "INSERT INTO meta(name, value) VALUES('catalog', ?1) "
        "ON CONFLICT(name) DO UPDATE SET value = excluded.value");
    const model::Value fingerprint = catalogFingerprint();
    statement.bind(1, fingerprint).run();
}

void dropRowTables(Database& database) {
    std::string sql;
    for (const auto& info : model::kinds()) {
        sql += "DROP TABLE IF EXISTS " + std::string(info.table) + ";";
    }
    database.run(sql);
}

const std::string& catalogFingerprint() {
    // FNV-1a over the tables' text: it must only tell one catalog from another, not resist anyone.
    static const std::string kFingerprint = [] {
        std::uint64_t hash = 1469598103934665603ULL;
        for (const auto& info : model::kinds()) {
            for (const char c : tableSql(info, sqliteDialect())) {
                hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211ULL;
            }
        }
        return std::to_string(hash);
    }();
    return kFingerprint;
}

std::string selectRows(model::Kind kind) {
    const auto& info = model::infoOf(kind);
    std::string sql = "SELECT id, gone";
    for (const auto& field : info.fields) {
        sql += ", \"" + std::string(field.column) + "\"";
    }
    return sql + " FROM " + std::string(info.table);
}

}  // namespace ledgerboard::store
