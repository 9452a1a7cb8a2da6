// How do several peers keep one book? In a PostgreSQL database, by libpq. Only the peer links this:
// the phone and the command line know files alone.
//
// The book's tables stand in a schema of their own, "ledgerboard". An id is a uuid, a field's value
// in the log a bytea: 'i' and 8 bytes, most significant first; 't' and a text; 'r' and an id.
// A transaction that writes takes one lock first (pg_advisory_xact_lock), whoever writes on
// whatever machine, so that `arrival` rises in the order of committing: a device's cursor is an
// arrival. Source: project decision; PostgreSQL 15's documentation, chapter 13.3.
//
// Threads: as Backend.
#pragma once

#include <memory>
#include <string>
#include <unordered_map>

#include "core/model/result.h"
#include "core/store/postgres/postgres_address.h"
#include "core/store/postgres/postgres_connection.h"
#include "core/store/postgres/postgres_statement.h"

namespace ledgerboard::store {

inline constexpr const char* kPostgresSchema = "ledgerboard";

class PostgresBackend final : public Backend {
  public:
    // Connects. `schema` differs in tests alone; those who give the same `lock` wait for one
    // another to write. Errors (CannotBeMet): the server cannot be reached, does not let us in, is
    // too old; the password is in none of them.
    [[nodiscard]] static model::Result<std::unique_ptr<Backend>> open(
        const PostgresAddress& address, const std::string& schema = kPostgresSchema,
        const std::string& lock = "book");

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

    void waitAtMost(int ms) override { waitMs_ = ms; }

    [[nodiscard]] bool wasInTheWay() const override { return connection_.wasInTheWay(); }

    [[nodiscard]] bool isThere() const override { return connection_.isThere(); }

    [[nodiscard]] std::int64_t connections() const override { return connection_.connections(); }

  private:
    PostgresBackend(const PostgresAddress& address, const std::string& schema,
                    const std::string& lock);

    [[nodiscard]] std::int64_t number(const std::string& sql);

    PostgresConnection connection_;
    std::int64_t lock_;
    int waitMs_ = 0;  // 0: as the connection has it
    std::unordered_map<std::string, std::unique_ptr<PostgresStatement>> prepared_;
};

}  // namespace ledgerboard::store
