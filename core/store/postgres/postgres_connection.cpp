#include "core/store/postgres/postgres_connection.h"

#include <algorithm>
#include <cstdlib>
#include <libpq-fe.h>
#include <string_view>

namespace ledgerboard::store {

namespace {

// So few that the server's answers to them fit what a socket holds while nobody reads.
constexpr std::size_t kMostWaiting = 256;
constexpr std::string_view kLockTimeout = "55P03";  // as below: appendix A

bool isGood(const PGresult* result) {
    const auto status = PQresultStatus(result);
    return status == PGRES_COMMAND_OK || status == PGRES_TUPLES_OK;
}

std::string codeOf(const PGresult* result) {
    const char* code = result != nullptr ? PQresultErrorField(result, PG_DIAG_SQLSTATE) : nullptr;
    return code != nullptr ? code : "";
}

bool begins(const std::string& text, std::string_view with) {
    return text.compare(0, with.size(), with) == 0;
}

// Codes of appendix A of PostgreSQL's documentation: it goes away, or is going.
bool isGoing(const std::string& code) {
    return code.empty() || begins(code, "08") || begins(code, "57P") || code == "25P03";
}

// Somebody else was in the way, or a limit of the server: it may go well a little later.
bool isPassing(const std::string& code) {
    return isGoing(code) || begins(code, "40") || begins(code, "53") || code == kLockTimeout ||
           code == "57014" || code == "25006";
}

}  // namespace

std::string whyNotServer(int version, const std::string& encoding) {
    if (version < kOldestPostgres) {
        const int major = version / 10'000;
        return "is PostgreSQL " + std::to_string(major) +
               (major < 10 ? "." + std::to_string(version / 100 % 100) : std::string()) +
               ": the peer needs 13 or newer";
    }
    if (encoding != "UTF8") {
        return "keeps text as " + encoding + ": make the database with ENCODING 'UTF8'";
    }
    return "";
}

void PostgresResultDeleter::operator()(pg_result* result) const {
    PQclear(result);
}

void PostgresConnection::disconnect() noexcept {
    PQfinish(connection_);
    connection_ = nullptr;
    waiting_.clear();
}

void PostgresConnection::connect() {
    disconnect();
    std::vector<const char*> names;
    std::vector<const char*> values;
    for (const auto& [name, value] : address_.settings()) {
        names.push_back(name.c_str());
        values.push_back(value.c_str());
    }
    names.push_back(nullptr);
    values.push_back(nullptr);
    connection_ = PQconnectdbParams(names.data(), values.data(), 0);
    if (PQstatus(connection_) != CONNECTION_OK) {
        const std::string said = address_.cleaned(PQerrorMessage(connection_));
        disconnect();
        throw DatabaseFailure(model::ErrorCode::CannotBeMet,
                              address_.spoken() + " cannot be used (" + said +
                                  "): check the address, the user and the server");
    }
    PQsetNoticeProcessor(
        connection_, [](void*, const char*) {}, nullptr);
    const char* encoding = PQparameterStatus(connection_, "server_encoding");
    const std::string why =
        whyNotServer(PQserverVersion(connection_), encoding != nullptr ? encoding : "");
    if (!why.empty()) {
        disconnect();
        throw DatabaseFailure(model::ErrorCode::CannotBeMet, address_.spoken() + " " + why);
    }
    ++connections_;
    ++prepares_;
    open_ = false;
    words("SET search_path = \"" + schema_ +
          "\"; SET lock_timeout = '30s'; SET idle_in_transaction_session_timeout = '60s'; "
          "SELECT set_config('synchronous_commit', 'on', false) "
          "WHERE current_setting('synchronous_commit') = 'off'");
}

void PostgresConnection::beConnected() {
    if (open_) {
        return;
    }
    // What the server said on its way out is read here rather than met by the next statement.
    if (connection_ == nullptr || PQconsumeInput(connection_) == 0 ||
        PQstatus(connection_) != CONNECTION_OK) {
        const auto begun = std::chrono::steady_clock::now();
        if (begun < notBefore_) {
            disconnect();
            throw DatabaseFailure(model::ErrorCode::CannotBeMet,
                                  address_.spoken() + " cannot be reached");
        }
        try {
            connect();
        } catch (const DatabaseFailure&) {
            const auto failed = std::chrono::steady_clock::now();
            notBefore_ = failed + (failed - begun);
            throw;
        }
    }
}

bool PostgresConnection::isThere() const {
    return connection_ != nullptr && PQstatus(connection_) == CONNECTION_OK;
}

void PostgresConnection::fail(const pg_result* result) {
    const std::string code = codeOf(result);
    inTheWay_ = code == kLockTimeout;
    const char* said =
        result != nullptr ? PQresultErrorField(result, PG_DIAG_MESSAGE_PRIMARY) : nullptr;
    const std::string words =
        address_.cleaned(said != nullptr          ? said
                         : connection_ != nullptr ? PQerrorMessage(connection_)
                                                  : "no connection");
    if (isGoing(code) || PQstatus(connection_) != CONNECTION_OK) {
        disconnect();
    }
    if (inTheWay_) {
        throw DatabaseFailure(model::ErrorCode::CannotBeMet,
                              "another program is writing to this book: try again in a moment");
    }
    if (code == "42501") {
        throw DatabaseFailure(model::ErrorCode::CannotBeMet,
                              address_.spoken() + " does not let this user do it (" + words +
                                  "): make the user the owner of the database, or grant it CREATE");
    }
    throw DatabaseFailure(
        isPassing(code) ? model::ErrorCode::CannotBeMet : model::ErrorCode::Damaged,
        address_.spoken() + (isPassing(code) ? " cannot be used now (" : " cannot be used (") +
            words + ")");
}

void PostgresConnection::send(const Waiting& one) {
    std::vector<const char*> values;
    std::vector<int> lengths;
    std::vector<int> formats(one.parameters.size(), 1);
    for (const auto& [isSomething, bytes] : one.parameters) {
        values.push_back(isSomething ? bytes.data() : nullptr);
        lengths.push_back(static_cast<int>(bytes.size()));
    }
    const auto count = static_cast<int>(values.size());
    const int sent = one.name.empty()
                         ? PQsendQueryParams(connection_, one.sql.c_str(), 0, nullptr, nullptr,
                                             nullptr, nullptr, 1)
                         : PQsendQueryPrepared(connection_, one.name.c_str(), count, values.data(),
                                               lengths.data(), formats.data(), 1);
    if (sent == 0) {
        fail(nullptr);
    }
}

void PostgresConnection::add(Waiting one) {
    waiting_.push_back(std::move(one));
    if (waiting_.size() >= kMostWaiting) {
        flush();
    }
}

void PostgresConnection::noteChanges(const pg_result* result) {
    const char* count = PQcmdTuples(const_cast<PGresult*>(result));
    changes_ = *count != '\0' ? std::strtoll(count, nullptr, 10) : 0;
}

PostgresResult PostgresConnection::flush() {
    std::vector<Waiting> batch;
    batch.swap(waiting_);
    if (batch.empty()) {
        return nullptr;
    }
    if (connection_ == nullptr || PQenterPipelineMode(connection_) != 1) {
        fail(nullptr);
    }
    for (const auto& one : batch) {
        send(one);
    }
    if (PQpipelineSync(connection_) != 1) {
        fail(nullptr);
    }
    PostgresResult last;
    PostgresResult wrong;
    for (std::size_t k = 0; k < batch.size(); ++k) {
        PostgresResult result(PQgetResult(connection_));
        if (result == nullptr || PQstatus(connection_) != CONNECTION_OK) {
            fail(result.get());
        }
        if (isGood(result.get())) {
            noteChanges(result.get());
            last = std::move(result);
        } else if (wrong == nullptr) {
            wrong = std::move(result);
        }
        while (const PostgresResult rest{PQgetResult(connection_)}) {
        }
    }
    const PostgresResult end(PQgetResult(connection_));
    if (PQresultStatus(end.get()) != PGRES_PIPELINE_SYNC || PQexitPipelineMode(connection_) != 1) {
        disconnect();
        fail(nullptr);
    }
    if (wrong != nullptr) {
        fail(wrong.get());
    }
    return last;
}

PostgresResult PostgresConnection::execute(Waiting one) {
    waiting_.push_back(std::move(one));
    return flush();
}

PostgresResult PostgresConnection::words(const std::string& sql) {
    if (connection_ == nullptr) {
        fail(nullptr);
    }
    PostgresResult result(PQexec(connection_, sql.c_str()));
    if (!isGood(result.get())) {
        fail(result.get());
    }
    return result;
}

void PostgresConnection::begin(std::string sql) {
    beConnected();
    open_ = true;
    inTheWay_ = false;
    add({"", std::move(sql), {}});
}

void PostgresConnection::abandon() noexcept {
    const bool begun = std::none_of(waiting_.begin(), waiting_.end(), [](const Waiting& one) {
        return one.sql.compare(0, 5, "BEGIN") == 0;
    });
    waiting_.clear();
    open_ = false;
    if (begun && connection_ != nullptr) {
        // Where this fails the connection is gone, and with it what was not committed.
        const PostgresResult result(PQexec(connection_, "ROLLBACK"));
    }
}

std::vector<unsigned> PostgresConnection::prepare(const std::string& name, const std::string& sql) {
    flush();
    const PostgresResult made(PQprepare(connection_, name.c_str(), sql.c_str(), 0, nullptr));
    if (!isGood(made.get())) {
        fail(made.get());
    }
    const PostgresResult said(PQdescribePrepared(connection_, name.c_str()));
    if (!isGood(said.get())) {
        fail(said.get());
    }
    std::vector<unsigned> types(static_cast<std::size_t>(PQnparams(said.get())));
    for (std::size_t k = 0; k < types.size(); ++k) {
        types[k] = PQparamtype(said.get(), static_cast<int>(k));
    }
    return types;
}

void PostgresConnection::forgetPrepared() {
    words("DEALLOCATE ALL");
    ++prepares_;
}

}  // namespace ledgerboard::store
