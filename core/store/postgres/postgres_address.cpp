#include "core/store/postgres/postgres_address.h"

#include <algorithm>
#include <array>
#include <libpq-fe.h>
#include <memory>

#include "core/store/without_passwords.h"

namespace ledgerboard::store {

namespace {

constexpr std::array<std::string_view, 2> kSchemes = {"postgresql://", "postgres://"};

// A server that is out of reach is told of soon rather than waited for.
constexpr std::array<std::pair<const char*, const char*>, 5> kUnlessSaid = {{
    {"connect_timeout", "5"},       // seconds
    {"tcp_user_timeout", "15000"},  // ms
    {"keepalives_idle", "15"},      // seconds
    {"application_name", "ledgerboard-peer"},
    {"client_encoding", "UTF8"},
}};

}  // namespace

bool isPostgresAddress(std::string_view text) {
    return std::any_of(kSchemes.begin(), kSchemes.end(), [&](std::string_view scheme) {
        return text.substr(0, scheme.size()) == scheme;
    });
}

model::Result<PostgresAddress> PostgresAddress::parse(const std::string& text) {
    char* problem = nullptr;
    const std::unique_ptr<PQconninfoOption, decltype(&PQconninfoFree)> options(
        PQconninfoParse(text.c_str(), &problem), PQconninfoFree);
    PQfreemem(problem);  // it may repeat the password
    if (options == nullptr || !isPostgresAddress(text)) {
        return model::wrongUse(
            "--store: the address does not read: it is written "
            "postgresql://USER@HOST:PORT/DATABASE, with the password in the file that PGPASSFILE "
            "names");
    }
    PostgresAddress address;
    std::string host;
    std::string database;
    for (const PQconninfoOption* each = options.get(); each->keyword != nullptr; ++each) {
        if (each->val == nullptr) {
            continue;
        }
        const std::string name = each->keyword;
        const std::string value = each->val;
        address.settings_.emplace_back(name, value);
        address.password_ = name == "password" ? value : address.password_;
        host = name == "host" || (name == "hostaddr" && host.empty()) ? value : host;
        database = name == "dbname" ? value : database;
    }
    for (const auto& [name, value] : kUnlessSaid) {
        if (!address.has(name)) {
            address.settings_.emplace_back(name, value);
        }
    }
    address.spoken_ = "the database" + (database.empty() ? "" : " " + database) + " at " +
                      (host.empty() ? "this machine" : host);
    return address;
}

bool PostgresAddress::has(std::string_view name) const {
    return std::any_of(settings_.begin(), settings_.end(),
                       [&](const auto& setting) { return setting.first == name; });
}

std::string PostgresAddress::cleaned(std::string text) const {
    while (!text.empty() && (text.back() == '\n' || text.back() == ' ')) {
        text.pop_back();
    }
    std::replace(text.begin(), text.end(), '\n', ' ');
    std::replace(text.begin(), text.end(), '\t', ' ');
    for (std::size_t at = password_.empty() ? std::string::npos : text.find(password_);
         at != std::string::npos; at = text.find(password_, at)) {
        text.replace(at, password_.size(), "...");
        at += 3;
    }
    return withoutPasswords(text);
}

}  // namespace ledgerboard::store
