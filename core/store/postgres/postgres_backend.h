// How do several peers keep one book? In a PostgreSQL database, by libpq. Only the peer links this:
// the phone and the command line know files alone.
//
// The book's tables stand in a schema of their own, "ledgerboard". An id is a uuid, a field's value
// in the log a bytea: 'i' and 8 bytes, most significant first; 't' and a text; 'r' and an id.
// A transaction that writes takes one lock first (pg_advisory_xact_lock), whoever writes on
// whatever machine, so that `arrival` rises in the order of committing: a device's cursor is an
// arrival. Statements that give no rows are sent together (pipeline mode), so that a batch costs
// few round trips. Where the connection was lost, what was under way fails and the next transaction
// connects anew. Source: project decision; PostgreSQL 15's documentation, chapters 13.3 and 34.
//
// Threads: as Backend.
#pragma once

#include <chrono>
#include <memory>
#include <unordered_map>
#include <vector>

#include "core/model/result.h"
#include "core/store/backend.h"
#include "core/store/postgres/postgres_address.h"

struct pg_conn;
struct pg_result;

namespace ledgerboard::store {

inline constexpr const char* kPostgresSchema = "ledgerboard";
inline constexpr int kOldestPostgres = 130'000;  // as libpq counts versions: 13.0

// What is wrong with a server of this version (as libpq counts) and encoding; empty for nothing.
[[nodiscard]] std::string whyNotServer(int version, const std::string& encoding);

class PostgresBackend final : public Backend {
  public:
    // Connects. `schema` differs in tests alone; those who give the same `lock` wait for one
    // another to write. Errors (CannotBeMet): the server cannot be reached, does not let us in, is
    // too old; the password is in none of them.
    [[nodiscard]] static model::Result<std::unique_ptr<Backend>> open(
        const PostgresAddress& address, const std::string& schema = kPostgresSchema,
        const std::string& lock = "book");

    ~PostgresBackend() override;

    [[nodiscard]] PreparedStatement& prepare(const std::string& sql) override;
    void run(const std::string& sql) override;
    void beginWrite(Durable durable) override;
    void beginRead() override;
    void commit() override;
    void rollback() noexcept override;
    [[nodiscard]] std::int64_t changes() override;
    [[nodiscard]] const Dialect& dialect() const override;
    [[nodiscard]] bool hasBook() override;
    void makeRoom() override;
    void mark() override;
    void riseAbove(const std::string& table, const std::string& key) override;

    [[nodiscard]] bool isThere() const override;

    [[nodiscard]] std::int64_t connections() const override { return connections_; }

  private:
    class Prepared;

    struct ResultDeleter {
        void operator()(pg_result* result) const;
    };

    using ResultPtr = std::unique_ptr<pg_result, ResultDeleter>;
    using Parameter = std::pair<bool, std::string>;  // whether it is something, and its bytes

    // What waits to be sent: a prepared statement, or (where the name is empty) words.
    struct Waiting {
        std::string name;
        std::string sql;
        std::vector<Parameter> parameters;
    };

    PostgresBackend(PostgresAddress address, std::string schema, const std::string& lock);

    void connect();
    void beConnected();
    void disconnect() noexcept;
    // Sends what waits; the last one's result comes back, null where nothing waited.
    ResultPtr flush();
    void send(const Waiting& one);
    void add(Waiting one);
    ResultPtr execute(Waiting one);
    ResultPtr words(const std::string& sql);
    [[nodiscard]] std::int64_t number(const std::string& sql);
    void noteChanges(const pg_result* result);
    [[noreturn]] void fail(const pg_result* result);

    PostgresAddress address_;
    std::string schema_;
    std::int64_t lock_;
    pg_conn* connection_ = nullptr;
    std::int64_t connections_ = 0;
    // After one that failed the next is not tried before as long has passed again.
    std::chrono::steady_clock::time_point notBefore_{};
    std::int64_t prepares_ = 0;  // rises when what was prepared holds no more
    bool open_ = false;          // a transaction is
    std::vector<Waiting> waiting_;
    std::int64_t changes_ = 0;
    std::unordered_map<std::string, std::unique_ptr<Prepared>> prepared_;
};

}  // namespace ledgerboard::store
