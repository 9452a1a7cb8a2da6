// How is a book kept in one file? In SQLite.
//
// Threads: as Backend; any number of backends, in any number of processes, for one file.
#pragma once

#include <memory>
#include <unordered_map>

#include "core/store/backend.h"

struct sqlite3;

namespace ledgerboard::store {

class SqliteBackend final : public Backend {
  public:
    // Opens or creates. Errors: DatabaseFailure.
    explicit SqliteBackend(const std::string& path);
    ~SqliteBackend() override;

    [[nodiscard]] PreparedStatement& prepare(const std::string& sql) override;
    void run(const std::string& sql) override;
    void beginWrite(Durable durable) override;
    void beginRead() override;
    void commit() override;
    void rollback() noexcept override;
    [[nodiscard]] std::int64_t changes() override;
    [[nodiscard]] const Dialect& dialect() const override;
    [[nodiscard]] bool hasBook() override;
    void mark() override;
    [[nodiscard]] std::vector<std::string> damage() override;
    void overwriteDeleted() override;
    void waitAtMost(int ms) override;

    [[nodiscard]] bool wasInTheWay() const override { return inTheWay_; }

    // Writes a copy of the whole file into `target`, while in use.
    void copyInto(SqliteBackend& target);

  private:
    class Prepared;

    void setDurable(Durable durable);
    [[noreturn]] void fail(int code);

    sqlite3* handle_ = nullptr;
    Durable durable_ = Durable::Yes;
    bool inTheWay_ = false;
    std::unordered_map<std::string, std::unique_ptr<Prepared>> prepared_;
};

// In the file's header: 'LdgB'; beside it the version of the layout.
inline constexpr std::int32_t kApplicationId = 0x4C646742;

// The words of SQLite, by which a catalog's tables are told apart as well.
[[nodiscard]] const Dialect& sqliteDialect();

}  // namespace ledgerboard::store
