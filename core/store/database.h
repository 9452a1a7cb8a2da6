// How does the store speak to SQLite? Prepared statements only, errors as one exception type that
// never leaves core/store (see guardStore in book_parts.h).
//
// Threads: one Database per thread.
#pragma once

#include <cstdint>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <unordered_map>

#include <sqlite3.h>

#include "core/model/id.h"
#include "core/model/result.h"
#include "core/model/value.h"

namespace ledgerboard::store {

// What SQLite could not do, in words for the person who must act.
class DatabaseFailure : public std::runtime_error {
  public:
    DatabaseFailure(model::ErrorCode code, const std::string& message)
        : std::runtime_error(message), code_(code) {}

    [[nodiscard]] model::ErrorCode code() const { return code_; }

  private:
    model::ErrorCode code_;
};

class Database;

// A prepared statement in use; resets itself when it goes out of scope.
class Statement {
  public:
    Statement(sqlite3* handle, sqlite3_stmt* statement) : handle_(handle), statement_(statement) {}

    Statement(const Statement&) = delete;
    Statement& operator=(const Statement&) = delete;

    Statement(Statement&& other) noexcept : handle_(other.handle_), statement_(other.statement_) {
        other.statement_ = nullptr;
    }

    Statement& operator=(Statement&&) = delete;

    ~Statement() {
        if (statement_ != nullptr) {
            sqlite3_reset(statement_);
            sqlite3_clear_bindings(statement_);
        }
    }

    // Parameters count from 1. Text and ids must outlive the statement's use.
    Statement& bind(int at, std::int64_t value);
    Statement& bind(int at, std::string_view value);
    Statement& bind(int at, const model::RawId& value);
    Statement& bind(int at, const model::Value& value);
    Statement& bindBlob(int at, const std::string& bytes);
    // True while there is a row. Errors: DatabaseFailure.
    bool step();
    // Runs to the end and makes ready for the next run.
    void run();

    // Columns count from 0.
    [[nodiscard]] bool isNull(int at) const {
        return sqlite3_column_type(statement_, at) == SQLITE_NULL;
    }

    [[nodiscard]] std::int64_t integer(int at) const {
        return sqlite3_column_int64(statement_, at);
    }

    [[nodiscard]] std::string text(int at) const;
    [[nodiscard]] std::string blob(int at) const;
    [[nodiscard]] model::RawId id(int at) const;
    [[nodiscard]] model::Value value(int at) const;

    [[nodiscard]] int columns() const { return sqlite3_column_count(statement_); }

  private:
    sqlite3* handle_;
    sqlite3_stmt* statement_;
};

class Database {
  public:
    // Opens or creates. Errors: DatabaseFailure.
    explicit Database(const std::string& path);
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;
    ~Database();

    // Prepared once, kept for the life of the connection. Not for use twice at the same time.
    [[nodiscard]] Statement prepare(const std::string& sql);

    // The same for a literal, found by its address: for statements run once an entry.
    template <std::size_t N>
    [[nodiscard]] Statement prepare(const char (&literal)[N]) {
        sqlite3_stmt*& statement = literals_[literal];
        if (statement == nullptr) {
            statement = kept(literal);
        }
        return Statement(handle_, statement);
    }

    void run(const std::string& sql);

    [[nodiscard]] std::int64_t changes() const { return sqlite3_changes64(handle_); }

    [[nodiscard]] std::int64_t lastRow() const { return sqlite3_last_insert_rowid(handle_); }

    [[nodiscard]] sqlite3* handle() const { return handle_; }

  private:
    sqlite3_stmt* kept(const std::string& sql);

    sqlite3* handle_ = nullptr;
    std::unordered_map<std::string, sqlite3_stmt*> prepared_;
    std::unordered_map<const char*, sqlite3_stmt*> literals_;  // into prepared_
};

// A write transaction, begun at once so that two writers wait rather than clash. Rolled back unless
// committed.
class Transaction {
  public:
    explicit Transaction(Database& database) : database_(database) {
        database_.run("BEGIN IMMEDIATE");
    }

    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;
    ~Transaction();
    void commit();

  private:
    Database& database_;
    bool open_ = true;
};

// A read transaction: from its first read on, everything read is of one moment, whatever other
// processes write meanwhile.
class Snapshot {
  public:
    explicit Snapshot(Database& database) : database_(database) { database_.run("BEGIN"); }

    Snapshot(const Snapshot&) = delete;
    Snapshot& operator=(const Snapshot&) = delete;

    ~Snapshot() { end(); }

    // From here on the book is read as it is.
    void end();

  private:
    Database& database_;
    bool open_ = true;
};

[[noreturn]] void fail(sqlite3* handle, int code);

}  // namespace ledgerboard::store
