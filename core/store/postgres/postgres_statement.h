// What is one statement at a PostgreSQL server? Prepared there once a connection, its parameters
// and rows in binary.
//
// Inside core/store/postgres. Threads: as its connection's.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/store/postgres/postgres_connection.h"
#include "core/store/postgres/postgres_values.h"

namespace ledgerboard::store {

class PostgresStatement final : public PreparedStatement {
  public:
    // Requires: `connection` outlives it; `name` is no other statement's there.
    PostgresStatement(PostgresConnection& connection, std::string sql, std::string name)
        : connection_(connection), sql_(std::move(sql)), name_(std::move(name)) {}

    void bindInteger(int at, std::int64_t value) override { boundAt(at) = value; }

    void bindText(int at, std::string_view value) override { boundAt(at) = value; }

    void bindId(int at, const model::RawId& value) override { boundAt(at) = value; }

    void bindBytes(int at, std::string_view value) override { boundAt(at) = RawBytes{value}; }

    void bindNothing(int at) override { boundAt(at) = std::monostate{}; }

    bool step() override;
    void run() override;
    void reset() noexcept override;

    [[nodiscard]] bool isNull(int at) const override;
    [[nodiscard]] std::int64_t integer(int at) const override;
    [[nodiscard]] std::string text(int at) const override;
    [[nodiscard]] std::string bytes(int at) const override;
    [[nodiscard]] model::RawId id(int at) const override;
    [[nodiscard]] model::Value value(int at) const override;
    [[nodiscard]] int columns() const override;

  private:
    Bound& boundAt(int at);
    [[nodiscard]] std::string_view bytesAt(int at) const;
    [[nodiscard]] unsigned typeOf(int at) const;
    PostgresConnection::Waiting call();

    PostgresConnection& connection_;
    const std::string sql_;
    const std::string name_;
    std::int64_t prepared_ = 0;  // when, as the connection counts; 0: not yet
    std::vector<unsigned> types_;
    std::vector<Bound> bound_;
    PostgresResult result_;
    int row_ = -1;
};

}  // namespace ledgerboard::store
