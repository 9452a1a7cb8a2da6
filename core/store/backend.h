// What must a database be able to do to hold a book? This, and no more: everything the store says
// goes through it, so that whatever keeps the tables can be another.
//
// There are two: SQLite (sqlite_backend.h), one file on one machine, and PostgreSQL
// (postgres/postgres_backend.h), which only the peer links. The SQL is the same for both; where
// their words for a type differ, Dialect has them. Parameters are ?1, ?2 ... in both.
//
// Threads: one backend per thread. What goes wrong is thrown as DatabaseFailure.
#pragma once

#include <cstdint>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include "core/model/id.h"
#include "core/model/result.h"
#include "core/model/value.h"

namespace ledgerboard::store {

// Of the log's tables.
inline constexpr std::int32_t kLayoutVersion = 1;

// What the database could not do, in words for the person who must act.
class DatabaseFailure : public std::runtime_error {
  public:
    DatabaseFailure(model::ErrorCode code, const std::string& message)
        : std::runtime_error(message), code_(code) {}

    [[nodiscard]] model::ErrorCode code() const { return code_; }

  private:
    model::ErrorCode code_;
};

// A statement that was prepared once. Parameters count from 1, columns from 0. Text, bytes and ids
// given to bind must outlive the next step or run.
class PreparedStatement {
  public:
    PreparedStatement() = default;
    PreparedStatement(const PreparedStatement&) = delete;
    PreparedStatement& operator=(const PreparedStatement&) = delete;
    virtual ~PreparedStatement() = default;

    virtual void bindInteger(int at, std::int64_t value) = 0;
    virtual void bindText(int at, std::string_view value) = 0;
    virtual void bindId(int at, const model::RawId& value) = 0;
    virtual void bindBytes(int at, std::string_view value) = 0;
    virtual void bindNothing(int at) = 0;

    // True while there is a row.
    virtual bool step() = 0;
    // To the end, for what gives no rows. Within a transaction it may be put off until something
    // is read or the transaction ends; what goes wrong is then thrown there.
    virtual void run() = 0;
    // Ready for the next use, with nothing bound.
    virtual void reset() noexcept = 0;

    [[nodiscard]] virtual bool isNull(int at) const = 0;
    [[nodiscard]] virtual std::int64_t integer(int at) const = 0;
    [[nodiscard]] virtual std::string text(int at) const = 0;
    [[nodiscard]] virtual std::string bytes(int at) const = 0;
    [[nodiscard]] virtual model::RawId id(int at) const = 0;
    [[nodiscard]] virtual model::Value value(int at) const = 0;
    [[nodiscard]] virtual int columns() const = 0;
};

// How a database calls what tables are made of.
struct Dialect {
    const char* integer;    // 64 bits
    const char* id;         // 16 bytes, compared byte by byte
    const char* bytes;      // any bytes
    const char* value;      // a model::Value: nothing, an integer, a text or an id
    const char* rising;     // a primary key that the database gives out, never one twice
    const char* strict;     // behind a table
    const char* clustered;  // behind a table that is kept in the order of its key
};

// How durable is a transaction?
enum class Durable {
    Yes,    // on disk before commit() returns
    Later,  // may be lost with the power, whole, and nothing after it is kept then
};

class Backend {
  public:
    Backend() = default;
    Backend(const Backend&) = delete;
    Backend& operator=(const Backend&) = delete;
    virtual ~Backend() = default;

    // Kept for the life of the backend. Not for use twice at the same time.
    [[nodiscard]] virtual PreparedStatement& prepare(const std::string& sql) = 0;
    // One or more statements without parameters.
    virtual void run(const std::string& sql) = 0;

    // A transaction that writes waits here for whoever writes, in any process or on any machine, so
    // that what is written is in order of being committed.
    virtual void beginWrite(Durable durable) = 0;
    // From its first read on, everything read is of one moment.
    virtual void beginRead() = 0;
    virtual void commit() = 0;
    virtual void rollback() noexcept = 0;

    // Rows that the last statement changed.
    [[nodiscard]] virtual std::int64_t changes() = 0;

    [[nodiscard]] virtual const Dialect& dialect() const = 0;

    // Whether there are a book's tables already. Errors: what is there is none of ours.
    [[nodiscard]] virtual bool hasBook() = 0;

    // Before the tables are made, and behind it: whatever else marks a book. In a transaction.
    virtual void makeRoom() {}

    virtual void mark() {}

    // Damage below the tables, a sentence each.
    [[nodiscard]] virtual std::vector<std::string> damage() { return {}; }

    // From here on what is deleted is overwritten, where the database can.
    virtual void overwriteDeleted() {}

    // Behind rows that were put in with keys of their own into a table with a rising key.
    virtual void riseAbove(const std::string& /*table*/, const std::string& /*key*/) {}

    // How long a transaction that writes waits for another one, before it fails (CannotBeMet).
    virtual void waitAtMost(int ms) = 0;

    // Whether that is what failed last. Asked after a failure.
    [[nodiscard]] virtual bool wasInTheWay() const = 0;

    // False after the connection was lost, until it is there again. Asked after a failure.
    [[nodiscard]] virtual bool isThere() const { return true; }

    // How often the connection was made: what another one was told may be lost.
    [[nodiscard]] virtual std::int64_t connections() const { return 1; }
};

}  // namespace ledgerboard::store
