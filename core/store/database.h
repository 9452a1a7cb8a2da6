// How does the store speak to its database? Prepared statements and transactions over a Backend;
// errors as one exception type that never leaves core/store (see guardStore in book_parts.h).
//
// Threads: one Database per thread.
#pragma once

#include <memory>
#include <unordered_map>

#include "core/store/backend.h"

namespace ledgerboard::store {

// A prepared statement in use; made ready for the next when it goes out of scope.
class Statement {
  public:
    explicit Statement(PreparedStatement& prepared) : prepared_(&prepared) {}

    Statement(const Statement&) = delete;
    Statement& operator=(const Statement&) = delete;

    Statement(Statement&& other) noexcept : prepared_(other.prepared_) {
        other.prepared_ = nullptr;
    }

    Statement& operator=(Statement&&) = delete;

    ~Statement() {
        if (prepared_ != nullptr) {
            prepared_->reset();
        }
    }

    // Parameters count from 1. Text and ids must outlive the statement's use.
    Statement& bind(int at, std::int64_t value) {
        prepared_->bindInteger(at, value);
        return *this;
    }

    Statement& bind(int at, std::string_view value) {
        prepared_->bindText(at, value);
        return *this;
    }

    Statement& bind(int at, const model::RawId& value) {
        prepared_->bindId(at, value);
        return *this;
    }

    Statement& bind(int at, const model::Value& value);
    // Nothing where there are no bytes.
    Statement& bindBlob(int at, const std::string& bytes);

    // True while there is a row. Errors: DatabaseFailure.
    bool step() { return prepared_->step(); }

    // Runs to the end and makes ready for the next run. Not for what gives rows.
    void run() { prepared_->run(); }

    // Columns count from 0.
    [[nodiscard]] bool isNull(int at) const { return prepared_->isNull(at); }

    [[nodiscard]] std::int64_t integer(int at) const { return prepared_->integer(at); }

    [[nodiscard]] std::string text(int at) const { return prepared_->text(at); }

    [[nodiscard]] std::string blob(int at) const { return prepared_->bytes(at); }

    [[nodiscard]] model::RawId id(int at) const { return prepared_->id(at); }

    [[nodiscard]] model::Value value(int at) const { return prepared_->value(at); }

    [[nodiscard]] int columns() const { return prepared_->columns(); }

  private:
    PreparedStatement* prepared_;
};

class Database {
  public:
    // A file of SQLite, opened or created. Errors: DatabaseFailure.
    explicit Database(const std::string& path);

    explicit Database(std::unique_ptr<Backend> backend) : backend_(std::move(backend)) {}

    // Prepared once, kept for the life of the connection. Not for use twice at the same time.
    [[nodiscard]] Statement prepare(const std::string& sql) {
        return Statement(backend_->prepare(sql));
    }

    // The same for a literal, found by its address: for statements run once an entry.
    template <std::size_t N>
    [[nodiscard]] Statement prepare(const char (&literal)[N]) {
        PreparedStatement*& statement = literals_[literal];
        if (statement == nullptr) {
            statement = &backend_->prepare(literal);
        }
        return Statement(*statement);
    }

    void run(const std::string& sql) { backend_->run(sql); }

    [[nodiscard]] std::int64_t changes() { return backend_->changes(); }

    [[nodiscard]] Backend& backend() { return *backend_; }

    [[nodiscard]] const Dialect& dialect() const { return backend_->dialect(); }

  private:
    friend class Snapshot;
    friend class Transaction;

    std::unique_ptr<Backend> backend_;
    std::unordered_map<const char*, PreparedStatement*> literals_;  // kept by the backend
    int open_ = 0;  // transactions within one another
};

// A write transaction, begun at once so that two writers wait rather than clash. Rolled back unless
// committed. One within another is a part of it: undone by itself, kept only with the whole.
class Transaction {
  public:
    explicit Transaction(Database& database, Durable durable = Durable::Yes);
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
    // Within a transaction everything is of one moment anyway.
    explicit Snapshot(Database& database) : database_(database), open_(database.open_ == 0) {
        if (open_) {
            database_.backend().beginRead();
        }
    }

    Snapshot(const Snapshot&) = delete;
    Snapshot& operator=(const Snapshot&) = delete;

    ~Snapshot() { end(); }

    // From here on the book is read as it is.
    void end();

  private:
    Database& database_;
    bool open_;
};

}  // namespace ledgerboard::store
