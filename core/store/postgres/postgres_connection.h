// How do words reach a PostgreSQL server, and what it says come back? Over one connection of libpq,
// made anew where it was lost.
//
// Statements that give no rows wait and are sent together (pipeline mode), so that a batch costs
// few round trips. Where the connection was lost, what was under way fails and the next transaction
// connects anew. Inside core/store/postgres. Source: PostgreSQL 15's documentation, chapter 34.
//
// Threads: one at a time. What goes wrong is thrown as DatabaseFailure, without the password.
#pragma once

#include <chrono>
#include <cstdint>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "core/store/backend.h"
#include "core/store/postgres/postgres_address.h"

struct pg_conn;
struct pg_result;

namespace ledgerboard::store {

inline constexpr int kOldestPostgres = 130'000;  // as libpq counts versions: 13.0

// What is wrong with a server of this version (as libpq counts) and encoding; empty for nothing.
[[nodiscard]] std::string whyNotServer(int version, const std::string& encoding);

struct PostgresResultDeleter {
    void operator()(pg_result* result) const;
};

using PostgresResult = std::unique_ptr<pg_result, PostgresResultDeleter>;

class PostgresConnection {
  public:
    using Parameter = std::pair<bool, std::string>;  // whether it is something, and its bytes

    // What waits to be sent: a prepared statement, or (where the name is empty) words.
    struct Waiting {
        std::string name;
        std::string sql;
        std::vector<Parameter> parameters;
    };

    PostgresConnection(PostgresAddress address, std::string schema)
        : address_(std::move(address)), schema_(std::move(schema)) {}

    PostgresConnection(const PostgresConnection&) = delete;
    PostgresConnection& operator=(const PostgresConnection&) = delete;

    ~PostgresConnection() { disconnect(); }

    void connect();
    // Before a transaction, or a statement outside one. Within one a lost connection has lost it.
    void beConnected();
    [[nodiscard]] bool isThere() const;

    // A transaction begins with these words, and is over.
    void begin(std::string sql);

    void end() { open_ = false; }

    [[nodiscard]] bool isOpen() const { return open_; }

    // Sends what waits; the last one's result comes back, null where nothing waited.
    PostgresResult flush();
    void add(Waiting one);
    PostgresResult execute(Waiting one);
    // At once, as they are: nothing may wait.
    PostgresResult words(const std::string& sql);
    // Forgets what waits, and what the open transaction did, as well as it can.
    void abandon() noexcept;

    // Has the server prepare a statement under this name, and says which types it takes.
    [[nodiscard]] std::vector<unsigned> prepare(const std::string& name, const std::string& sql);

    // Rises when what was prepared holds no more.
    [[nodiscard]] std::int64_t prepares() const { return prepares_; }

    // What was prepared may have lost its tables.
    void forgetPrepared();

    [[nodiscard]] std::int64_t changes() const { return changes_; }

    void noteChanges(const pg_result* result);

    // How often the connection was made.
    [[nodiscard]] std::int64_t connections() const { return connections_; }

    // Whether waiting for a lock is what failed last.
    [[nodiscard]] bool wasInTheWay() const { return inTheWay_; }

    [[nodiscard]] const PostgresAddress& address() const { return address_; }

    [[nodiscard]] const std::string& schema() const { return schema_; }

  private:
    void disconnect() noexcept;
    void send(const Waiting& one);
    [[noreturn]] void fail(const pg_result* result);

    PostgresAddress address_;
    std::string schema_;
    pg_conn* connection_ = nullptr;
    std::int64_t connections_ = 0;
    // After one that failed the next is not tried before as long has passed again.
    std::chrono::steady_clock::time_point notBefore_{};
    std::int64_t prepares_ = 0;
    bool open_ = false;  // a transaction is
    bool inTheWay_ = false;
    std::vector<Waiting> waiting_;
    std::int64_t changes_ = 0;
};

}  // namespace ledgerboard::store
