#include "core/store/database.h"

#include <algorithm>
#include <array>

namespace ledgerboard::store {

namespace {

constexpr int kBusyTimeoutMs = 30'000;

std::string wordsFor(int code, const char* detail) {
    switch (code & 0xff) {
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
            return "another program is writing to this book: try again in a moment";
        case SQLITE_CORRUPT:
        case SQLITE_NOTADB:
            return "the book is damaged: run 'ledgerboard verify --mend', or restore a backup";
        case SQLITE_FULL:
            return "the disk is full: nothing was written; free some space and do it again";
        case SQLITE_READONLY:
        case SQLITE_PERM:
            return "the book cannot be written: make the file and its folder writable";
        case SQLITE_CANTOPEN:
            return "the book cannot be opened: check that its folder exists and can be written";
        case SQLITE_IOERR:
            return std::string("the disk failed while reading or writing the book (") + detail +
                   ")";
        default:
            return std::string("the book cannot be used (") + detail + ")";
    }
}

}  // namespace

void fail(sqlite3* handle, int code) {
    const bool waits = (code & 0xff) == SQLITE_BUSY || (code & 0xff) == SQLITE_LOCKED;
    throw DatabaseFailure(waits ? model::ErrorCode::CannotBeMet : model::ErrorCode::Damaged,
                          wordsFor(code, handle != nullptr ? sqlite3_errmsg(handle) : "no memory"));
}

Statement& Statement::bind(int at, std::int64_t value) {
    sqlite3_bind_int64(statement_, at, value);
    return *this;
}

Statement& Statement::bind(int at, std::string_view value) {
    sqlite3_bind_text(statement_, at, value.data(), static_cast<int>(value.size()), SQLITE_STATIC);
    return *this;
}

Statement& Statement::bind(int at, const model::RawId& value) {
    sqlite3_bind_blob(statement_, at, value.bytes().data(), model::RawId::kBytes, SQLITE_STATIC);
    return *this;
}

Statement& Statement::bind(int at, const model::Value& value) {
    if (const auto* integer = std::get_if<std::int64_t>(&value)) {
        return bind(at, *integer);
    }
    if (const auto* text = std::get_if<std::string>(&value)) {
        return bind(at, std::string_view(*text));
    }
    if (const auto* id = std::get_if<model::RawId>(&value)) {
        return bind(at, *id);
    }
    sqlite3_bind_null(statement_, at);
    return *this;
}

Statement& Statement::bindBlob(int at, const std::string& bytes) {
    if (bytes.empty()) {
        sqlite3_bind_null(statement_, at);
    } else {
        sqlite3_bind_blob(statement_, at, bytes.data(), static_cast<int>(bytes.size()),
                          SQLITE_STATIC);
    }
    return *this;
}

bool Statement::step() {
    const int code = sqlite3_step(statement_);
    if (code == SQLITE_ROW) {
        return true;
    }
    if (code != SQLITE_DONE) {
        fail(handle_, code);
    }
    return false;
}

void Statement::run() {
    while (step()) {
    }
    sqlite3_reset(statement_);
}

std::string Statement::text(int at) const {
    const auto* bytes = sqlite3_column_text(statement_, at);
    const auto count = static_cast<std::size_t>(sqlite3_column_bytes(statement_, at));
    return bytes == nullptr ? std::string()
                            : std::string(reinterpret_cast<const char*>(bytes), count);
}

std::string Statement::blob(int at) const {
    const auto* bytes = static_cast<const char*>(sqlite3_column_blob(statement_, at));
    const auto count = static_cast<std::size_t>(sqlite3_column_bytes(statement_, at));
    return bytes == nullptr ? std::string() : std::string(bytes, count);
}

model::RawId Statement::id(int at) const {
    std::array<std::uint8_t, model::RawId::kBytes> bytes{};
    const auto* stored = static_cast<const std::uint8_t*>(sqlite3_column_blob(statement_, at));
    if (stored != nullptr && sqlite3_column_bytes(statement_, at) == model::RawId::kBytes) {
        std::copy_n(stored, bytes.size(), bytes.begin());
    }
    return model::RawId{bytes};
}

model::Value Statement::value(int at) const {
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

Database::Database(const std::string& path) {
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
        run("PRAGMA cache_size = -16384");
    } catch (...) {
        sqlite3_close(handle_);  // no destructor runs for what was not made whole
        throw;
    }
}

Database::~Database() {
    for (auto& [sql, statement] : prepared_) {
        sqlite3_finalize(statement);
    }
    sqlite3_close(handle_);
}

Statement Database::prepare(const std::string& sql) {
    return Statement(handle_, kept(sql));
}

sqlite3_stmt* Database::kept(const std::string& sql) {
    auto found = prepared_.find(sql);
    if (found == prepared_.end()) {
        sqlite3_stmt* statement = nullptr;
        const int code = sqlite3_prepare_v3(handle_, sql.c_str(), static_cast<int>(sql.size()),
                                            SQLITE_PREPARE_PERSISTENT, &statement, nullptr);
        if (code != SQLITE_OK) {
            fail(handle_, code);
        }
        found = prepared_.emplace(sql, statement).first;
    }
    return found->second;
}

void Database::run(const std::string& sql) {
    const int code = sqlite3_exec(handle_, sql.c_str(), nullptr, nullptr, nullptr);
    if (code != SQLITE_OK) {
        fail(handle_, code);
    }
}

Transaction::~Transaction() {
    if (open_) {
        // What can be done on the way out is done; the file itself rolls back at the next opening.
        sqlite3_exec(database_.handle(), "ROLLBACK", nullptr, nullptr, nullptr);
    }
}

void Snapshot::end() {
    if (open_) {
        // Nothing was written, so nothing can be lost whatever this says.
        sqlite3_exec(database_.handle(), "ROLLBACK", nullptr, nullptr, nullptr);
        open_ = false;
    }
}

void Transaction::commit() {
    database_.run("COMMIT");
    open_ = false;
}

}  // namespace ledgerboard::store
