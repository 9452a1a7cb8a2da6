#include "core/store/sqlite_backend.h"

#include <algorithm>
#include <array>

#include <sqlite3.h>

#include "core/model/saying.h"

namespace ledgerboard::store {

namespace {

constexpr int kBusyTimeoutMs = 30'000;

// A screen knows a sentence without a place by its English.
std::string wordsFor(int code, const char* detail) {
    switch (code & 0xff) {
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
            return model::saying("another program is writing to this book: try again in a moment")
                .text();
        case SQLITE_CORRUPT:
        case SQLITE_NOTADB:
            return model::saying(
                       "the book is damaged: run 'ledgerboard verify --mend', or restore a backup")
                .text();
        case SQLITE_FULL:
            return model::saying(
                       "the disk is full: nothing was written; free some space and do it again")
                .text();
        case SQLITE_READONLY:
        case SQLITE_PERM:
            return model::saying(
                       "the book cannot be written: make the file and its folder writable")
                .text();
        case SQLITE_CANTOPEN:
            return model::saying(
                       "the book cannot be opened: check that its folder exists and can be written")
                .text();
        case SQLITE_IOERR:
            return model::saying("the disk failed while reading or writing the book (%1)", detail)
                .text();
        default:
            return model::saying("the book cannot be used (%1)", detail).text();
    }
}

bool waitsFor(int code) {
    return (code & 0xff) == SQLITE_BUSY || (code & 0xff) == SQLITE_LOCKED;
}

}  // namespace

const Dialect& sqliteDialect() {
    static const Dialect kDialect = {
        "INTEGER",
        "BLOB",
        "BLOB",
        "ANY",
        "INTEGER PRIMARY KEY AUTOINCREMENT",
        "STRICT",
        "STRICT, WITHOUT ROWID",
    };
    return kDialect;
}

class SqliteBackend::Prepared final : public PreparedStatement {
  public:
    Prepared(SqliteBackend& backend, sqlite3_stmt* statement)
        : backend_(backend), statement_(statement) {}

    ~Prepared() override { sqlite3_finalize(statement_); }

    void bindInteger(int at, std::int64_t value) override {
        sqlite3_bind_int64(statement_, at, value);
    }

    void bindText(int at, std::string_view value) override {
        sqlite3_bind_text(statement_, at, value.data(), static_cast<int>(value.size()),
                          SQLITE_STATIC);
    }

    void bindId(int at, const model::RawId& value) override {
        sqlite3_bind_blob(statement_, at, value.bytes().data(), model::RawId::kBytes,
                          SQLITE_STATIC);
    }

    void bindBytes(int at, std::string_view value) override {
        sqlite3_bind_blob(statement_, at, value.data(), static_cast<int>(value.size()),
                          SQLITE_STATIC);
    }

    void bindNothing(int at) override { sqlite3_bind_null(statement_, at); }

    bool step() override {
        const int code = sqlite3_step(statement_);
        if (code != SQLITE_ROW && code != SQLITE_DONE) {
            backend_.fail(code);
        }
        return code == SQLITE_ROW;
    }

    void run() override {
        while (step()) {
        }
        sqlite3_reset(statement_);
    }

    void reset() noexcept override {
        sqlite3_reset(statement_);
        sqlite3_clear_bindings(statement_);
    }

    [[nodiscard]] bool isNull(int at) const override {
        return sqlite3_column_type(statement_, at) == SQLITE_NULL;
    }

    [[nodiscard]] std::int64_t integer(int at) const override {
        return sqlite3_column_int64(statement_, at);
    }

    [[nodiscard]] std::string text(int at) const override {
        const auto* bytes = sqlite3_column_text(statement_, at);
        const auto count = static_cast<std::size_t>(sqlite3_column_bytes(statement_, at));
        return bytes == nullptr ? std::string()
                                : std::string(reinterpret_cast<const char*>(bytes), count);
    }

    [[nodiscard]] std::string bytes(int at) const override {
        const auto* bytes = static_cast<const char*>(sqlite3_column_blob(statement_, at));
        const auto count = static_cast<std::size_t>(sqlite3_column_bytes(statement_, at));
        return bytes == nullptr ? std::string() : std::string(bytes, count);
    }

    [[nodiscard]] model::RawId id(int at) const override {
        std::array<std::uint8_t, model::RawId::kBytes> bytes{};
        const auto* stored = static_cast<const std::uint8_t*>(sqlite3_column_blob(statement_, at));
        if (stored != nullptr && sqlite3_column_bytes(statement_, at) == model::RawId::kBytes) {
            std::copy_n(stored, bytes.size(), bytes.begin());
        }
        return model::RawId{bytes};
    }

    [[nodiscard]] model::Value value(int at) const override {
        switch (sqlite3_column_type(statement_, at)) {
            case SQLITE_INTEGER:
                return integer(at);
            case SQLITE_TEXT:
                return text(at);
            case SQLITE_BLOB:
                return id(at);
            default:
                return {};
        }
    }

    [[nodiscard]] int columns() const override { return sqlite3_column_count(statement_); }

  private:
    SqliteBackend& backend_;
    sqlite3_stmt* statement_;
};

SqliteBackend::SqliteBackend(const std::string& path) {
    const int code =
        sqlite3_open_v2(path.c_str(), &handle_,
                        SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE | SQLITE_OPEN_NOMUTEX, nullptr);
    if (code != SQLITE_OK) {
        const std::string words = wordsFor(code, handle_ != nullptr ? sqlite3_errmsg(handle_) : "");
        sqlite3_close(handle_);
        throw DatabaseFailure(model::ErrorCode::Damaged, words);
    }
    sqlite3_extended_result_codes(handle_, 1);
    sqlite3_busy_timeout(handle_, kBusyTimeoutMs);
    sqlite3_db_config(handle_, SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
    sqlite3_db_config(handle_, SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0, nullptr);
    try {
        run("PRAGMA synchronous = FULL");
        run("PRAGMA foreign_keys = ON");
        run("PRAGMA cache_size = -1024");
    } catch (...) {
        sqlite3_close(handle_);  // no destructor runs for what was not made whole
        throw;
    }
}

void SqliteBackend::fail(int code) {
    inTheWay_ = waitsFor(code);
    throw DatabaseFailure(inTheWay_ ? model::ErrorCode::CannotBeMet : model::ErrorCode::Damaged,
                          wordsFor(code, sqlite3_errmsg(handle_)));
}

void SqliteBackend::waitAtMost(int ms) {
    sqlite3_busy_timeout(handle_, ms);
}

SqliteBackend::~SqliteBackend() {
    prepared_.clear();
    sqlite3_close(handle_);
}

PreparedStatement& SqliteBackend::prepare(const std::string& sql) {
    auto& kept = prepared_[sql];
    if (kept == nullptr) {
        sqlite3_stmt* statement = nullptr;
        const int code = sqlite3_prepare_v3(handle_, sql.c_str(), static_cast<int>(sql.size()),
                                            SQLITE_PREPARE_PERSISTENT, &statement, nullptr);
        if (code != SQLITE_OK) {
            prepared_.erase(sql);
            fail(code);
        }
        kept = std::make_unique<Prepared>(*this, statement);
    }
    return *kept;
}

void SqliteBackend::run(const std::string& sql) {
    const int code = sqlite3_exec(handle_, sql.c_str(), nullptr, nullptr, nullptr);
    if (code != SQLITE_OK) {
        fail(code);
    }
}

// In WAL mode NORMAL leaves out the synchronising of a commit alone: the next one that is FULL, and
// every checkpoint, synchronises all that came before.
void SqliteBackend::setDurable(Durable durable) {
    if (durable != durable_) {
        run(durable == Durable::Yes ? "PRAGMA synchronous = FULL" : "PRAGMA synchronous = NORMAL");
        durable_ = durable;
    }
}

void SqliteBackend::beginWrite(Durable durable) {
    inTheWay_ = false;
    setDurable(durable);
    run("BEGIN IMMEDIATE");
}

void SqliteBackend::beginRead() {
    run("BEGIN");
}

void SqliteBackend::commit() {
    run("COMMIT");
}

void SqliteBackend::rollback() noexcept {
    // What can be done on the way out is done; the file itself rolls back at the next opening.
    sqlite3_exec(handle_, "ROLLBACK", nullptr, nullptr, nullptr);
}

std::int64_t SqliteBackend::changes() {
    return sqlite3_changes64(handle_);
}

const Dialect& SqliteBackend::dialect() const {
    return sqliteDialect();
}

bool SqliteBackend::hasBook() {
    auto& select = prepare("SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = 'meta'");
    const bool has = select.step();
    select.reset();
    return has;
}

void SqliteBackend::mark() {
    run("PRAGMA application_id = " + std::to_string(kApplicationId));
    run("PRAGMA user_version = " + std::to_string(kLayoutVersion));
}

std::vector<std::string> SqliteBackend::damage() {
    auto& select = prepare("PRAGMA integrity_check(20)");
    std::vector<std::string> found;
    while (select.step()) {
        if (select.text(0) != "ok") {
            found.push_back(select.text(0));
        }
    }
    select.reset();
    return found;
}

void SqliteBackend::overwriteDeleted() {
    run("PRAGMA secure_delete = ON");
}

void SqliteBackend::copyInto(SqliteBackend& target) {
    sqlite3_backup* backup = sqlite3_backup_init(target.handle_, "main", handle_, "main");
    if (backup == nullptr) {
        target.fail(sqlite3_errcode(target.handle_));
    }
    const int stepped = sqlite3_backup_step(backup, -1);
    const int finished = sqlite3_backup_finish(backup);
    if (stepped != SQLITE_DONE || finished != SQLITE_OK) {
        target.fail(stepped != SQLITE_DONE ? stepped : finished);
    }
}

}  // namespace ledgerboard::store
