#include "core/store/database.h"

#include "core/store/sqlite_backend.h"

namespace ledgerboard::store {

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
    prepared_->bindNothing(at);
    return *this;
}

Statement& Statement::bindBlob(int at, const std::string& bytes) {
    if (bytes.empty()) {
        prepared_->bindNothing(at);
    } else {
        prepared_->bindBytes(at, bytes);
    }
    return *this;
}

Database::Database(const std::string& path) : backend_(std::make_unique<SqliteBackend>(path)) {}

Transaction::Transaction(Database& database, Durable durable) : database_(database) {
    if (database_.open_ == 0) {
        database_.backend().beginWrite(durable);
    } else {
        database_.run("SAVEPOINT part" + std::to_string(database_.open_));
    }
    ++database_.open_;
}

Transaction::~Transaction() {
    if (!open_) {
        return;
    }
    --database_.open_;
    if (database_.open_ == 0) {
        database_.backend().rollback();
        return;
    }
    const std::string part = "part" + std::to_string(database_.open_);
    try {
        database_.run("ROLLBACK TO " + part + "; RELEASE " + part);
    } catch (const DatabaseFailure&) {
        // The whole cannot be committed then, and says so.
    }
}

void Transaction::commit() {
    if (database_.open_ == 1) {
        database_.backend().commit();
    } else {
        database_.run("RELEASE part" + std::to_string(database_.open_ - 1));
    }
    --database_.open_;
    open_ = false;
}

void Snapshot::end() {
    if (open_) {
        // Nothing was written, so nothing can be lost whatever this says.
        database_.backend().rollback();
        open_ = false;
    }
}

}  // namespace ledgerboard::store
