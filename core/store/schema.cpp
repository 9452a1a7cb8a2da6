#include "core/store/schema.h"

#include <array>
#include <cstdio>
#include <fstream>
#include <sys/stat.h>
#include <unistd.h>

namespace ledgerboard::store {

namespace {

using model::damaged;
using model::FieldType;

constexpr const char* kLogTables = R"sql(
CREATE TABLE meta(
    name TEXT PRIMARY KEY,
    value ANY
) STRICT, WITHOUT ROWID;

-- Devices get a small number each in this file; it is never sent.
CREATE TABLE writers(
    writer INTEGER PRIMARY KEY,
    device BLOB NOT NULL UNIQUE
) STRICT;

CREATE TABLE entries(
    arrival INTEGER PRIMARY KEY,
    writer INTEGER NOT NULL,
    lane INTEGER NOT NULL,
    number INTEGER NOT NULL,
    clock INTEGER NOT NULL,
    record BLOB NOT NULL,
    field INTEGER NOT NULL,
    value ANY,
    replaces BLOB,
    UNIQUE(writer, lane, number)
) STRICT;

-- The entry that a field of a record holds now. What it beat stands in superseded.
CREATE TABLE cells(
    record BLOB NOT NULL,
    field INTEGER NOT NULL,
    arrival INTEGER NOT NULL,
    clock INTEGER NOT NULL,
    writer INTEGER NOT NULL,
    PRIMARY KEY(record, field)
) STRICT, WITHOUT ROWID;

CREATE TABLE superseded(
    record BLOB NOT NULL,
    arrival INTEGER NOT NULL,
    PRIMARY KEY(record, arrival)
) STRICT, WITHOUT ROWID;

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
) STRICT, WITHOUT ROWID;

-- Entries that were written over long ago and are gone, but for their names and digests.
CREATE TABLE IF NOT EXISTS compacted(
    writer INTEGER NOT NULL,
    lane INTEGER NOT NULL,
    number INTEGER NOT NULL,
    digest INTEGER NOT NULL, -- of what it said, to tell it from another of the same name
    PRIMARY KEY(writer, lane, number)
) STRICT, WITHOUT ROWID;

-- What a device sent and may not write: never applied, for the owner to see.
CREATE TABLE IF NOT EXISTS asides(
    place INTEGER PRIMARY KEY AUTOINCREMENT,
    device BLOB NOT NULL,
    lane INTEGER NOT NULL,
    number INTEGER NOT NULL,
    clock INTEGER NOT NULL,
    record BLOB NOT NULL,
    field INTEGER NOT NULL,
    value ANY,
    replaces BLOB,
    at_ms INTEGER NOT NULL,
    why TEXT NOT NULL,
    UNIQUE(device, lane, number)
) STRICT;

-- At the peer: which entry of a cell a device of another role than owner has; with a round, which
-- one was sent in that round and is not confirmed yet (arrival 0: was told to drop it).
CREATE TABLE IF NOT EXISTS sent(
    device BLOB NOT NULL,
    record BLOB NOT NULL,
    field INTEGER NOT NULL,
    arrival INTEGER NOT NULL,
    PRIMARY KEY(device, record, field)
) STRICT, WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS sending(
    device BLOB NOT NULL,
    record BLOB NOT NULL,
    field INTEGER NOT NULL,
    arrival INTEGER NOT NULL,
    PRIMARY KEY(device, record, field)
) STRICT, WITHOUT ROWID;

-- At a device: cells that were there when a fresh start began and were not sent again yet.
CREATE TABLE IF NOT EXISTS stale(
    record BLOB NOT NULL,
    field INTEGER NOT NULL,
    PRIMARY KEY(record, field)
) STRICT, WITHOUT ROWID;
)sql";

const char* sqlType(FieldType type) {
    switch (type) {
        case FieldType::Flag:
        case FieldType::Count:
        case FieldType::Money:
        case FieldType::Quantity:
        case FieldType::Percent:
        case FieldType::Date:
        case FieldType::Instant:
        case FieldType::Weekdays:
            return "INTEGER";
        case FieldType::Ref:
            return "BLOB";
        default:
            return "TEXT";
    }
}

std::string tableSql(const model::KindInfo& info) {
    std::string sql = "CREATE TABLE " + std::string(info.table) +
                      "(\n    id BLOB PRIMARY KEY,\n    gone INTEGER NOT NULL DEFAULT 0";
    for (const auto& field : info.fields) {
        sql += ",\n    \"" + std::string(field.column) + "\" " + sqlType(field.type);
    }
    sql += "\n) STRICT, WITHOUT ROWID;\n";
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

model::Result<void> checkFile(const std::string& path) {
    struct stat info {};

    if (::stat(path.c_str(), &info) != 0) {
        return damaged("there is no book at " + path +
                       ": make one with 'ledgerboard start NAME', or name another with --book");
    }
    if (!S_ISREG(info.st_mode)) {
        return damaged(path + " is not a file: name the book's file with --book");
    }
    std::array<unsigned char, 100> header{};
    std::ifstream file(path, std::ios::binary);
    file.read(reinterpret_cast<char*>(header.data()), header.size());
    if (!file || std::string_view(reinterpret_cast<char*>(header.data()), 16) !=
                     std::string_view("SQLite format 3\0", 16)) {
        return damaged(path + " is not a Ledgerboard book: name the book's file with --book");
    }
    if (bigEndian(header, 68) != static_cast<std::uint32_t>(kApplicationId)) {
        return damaged(path + " is a database of another program, not a Ledgerboard book");
    }
    const auto version = static_cast<std::int32_t>(bigEndian(header, 60));
    if (version > kLayoutVersion) {
        return damaged(path + " was written by a newer Ledgerboard (layout " +
                       std::to_string(version) + ", this program knows " +
                       std::to_string(kLayoutVersion) + "): use the newer program");
    }
    const std::uint32_t pageField = static_cast<std::uint32_t>(header[16]) << 8 | header[17];
    const std::uint64_t pageSize = pageField == 1 ? 65536 : pageField;
    const std::uint64_t pages = bigEndian(header, 28);
    if (bigEndian(header, 24) == bigEndian(header, 92) &&
        static_cast<std::uint64_t>(info.st_size) < pages * pageSize) {
        return damaged(path + " is cut short (" + std::to_string(info.st_size) + " of " +
                       std::to_string(pages * pageSize) + " bytes): restore a backup");
    }
    // The mode bits are asked too, because to the superuser every file is writable.
    if ((info.st_mode & (S_IWUSR | S_IWGRP | S_IWOTH)) == 0 || ::access(path.c_str(), W_OK) != 0) {
        return damaged(path + " is read-only: make it writable, or copy it and use the copy");
    }
    return {};
}

void createTables(Database& database) {
    database.run(kLogTables);
    database.run(kSyncTables);
    createRowTables(database);
    database.run("PRAGMA application_id = " + std::to_string(kApplicationId));
    database.run("PRAGMA user_version = " + std::to_string(kLayoutVersion));
}

bool hasSyncTables(Database& database) {
    auto select = database.prepare("SELECT 1 FROM sqlite_schema WHERE name = 'compacted'");
    return select.step();
}

void createSyncTables(Database& database) {
    database.run(kSyncTables);
}

void createRowTables(Database& database) {
    for (const auto& info : model::kinds()) {
        database.run(tableSql(info));
    }
    auto statement = database.prepare(
        "INSERT INTO meta(name, value) VALUES('catalog', ?1) "
        "ON CONFLICT(name) DO UPDATE SET value = excluded.value");
    const std::string fingerprint = catalogFingerprint();
    statement.bind(1, std::string_view(fingerprint)).run();
}

void dropRowTables(Database& database) {
    for (const auto& info : model::kinds()) {
        database.run("DROP TABLE IF EXISTS " + std::string(info.table));
    }
}

std::string catalogFingerprint() {
    // FNV-1a over the tables' text: it must only tell one catalog from another, not resist anyone.
    std::uint64_t hash = 1469598103934665603ULL;
    for (const auto& info : model::kinds()) {
        for (const char c : tableSql(info)) {
            hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211ULL;
        }
    }
    return std::to_string(hash);
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
