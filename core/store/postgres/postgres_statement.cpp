#include "core/store/postgres/postgres_statement.h"

#include <libpq-fe.h>

namespace ledgerboard::store {

bool PostgresStatement::step() {
    if (result_ == nullptr) {
        result_ = connection_.execute(call());
        row_ = -1;
    }
    return ++row_ < PQntuples(result_.get());
}

void PostgresStatement::run() {
    result_.reset();
    if (connection_.isOpen()) {
        connection_.add(call());
    } else {
        connection_.execute(call());
    }
}

void PostgresStatement::reset() noexcept {
    result_.reset();
    bound_.clear();
}

bool PostgresStatement::isNull(int at) const {
    return PQgetisnull(result_.get(), row_, at) != 0;
}

std::int64_t PostgresStatement::integer(int at) const {
    return integerIn(typeOf(at), bytesAt(at));
}

std::string PostgresStatement::text(int at) const {
    return std::string(bytesAt(at));
}

std::string PostgresStatement::bytes(int at) const {
    return std::string(bytesAt(at));
}

model::RawId PostgresStatement::id(int at) const {
    return idIn(bytesAt(at));
}

model::Value PostgresStatement::value(int at) const {
    return isNull(at) ? model::Value{} : valueIn(typeOf(at), bytesAt(at));
}

int PostgresStatement::columns() const {
    return PQnfields(result_.get());
}

Bound& PostgresStatement::boundAt(int at) {
    const auto place = static_cast<std::size_t>(at);
    if (bound_.size() < place) {
        bound_.resize(place);
    }
    return bound_[place - 1];
}

std::string_view PostgresStatement::bytesAt(int at) const {
    return {PQgetvalue(result_.get(), row_, at),
            static_cast<std::size_t>(PQgetlength(result_.get(), row_, at))};
}

unsigned PostgresStatement::typeOf(int at) const {
    return PQftype(result_.get(), at);
}

// As it is sent; the server prepares it first, where this connection has not had it yet.
PostgresConnection::Waiting PostgresStatement::call() {
    static const Bound kNothingBound{};
    connection_.beConnected();
    if (prepared_ != connection_.prepares() || prepared_ == 0) {
        types_ = connection_.prepare(name_, sql_);
        prepared_ = connection_.prepares();
    }
    PostgresConnection::Waiting waiting{name_, "", {}};
    for (std::size_t k = 0; k < types_.size(); ++k) {
        const Bound& bound = k < bound_.size() ? bound_[k] : kNothingBound;
        waiting.parameters.emplace_back(!std::holds_alternative<std::monostate>(bound),
                                        bytesOf(bound, types_[k]));
    }
    return waiting;
}

}  // namespace ledgerboard::store
