// Where is the PostgreSQL server, and what of that may be said aloud? A postgresql:// address, as
// libpq reads it, with its password kept out of everything that is shown.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/model/result.h"

namespace ledgerboard::store {

// Whether `text` begins as such an address does.
[[nodiscard]] bool isPostgresAddress(std::string_view text);

class PostgresAddress {
  public:
    // Errors (WrongUse): it does not read, and how it is written; the password is not repeated.
    [[nodiscard]] static model::Result<PostgresAddress> parse(const std::string& text);

    // What libpq is given: names and values.
    [[nodiscard]] const std::vector<std::pair<std::string, std::string>>& settings() const {
        return settings_;
    }

    // "house at 192.0.2.7": the database and where it is, for messages.
    [[nodiscard]] const std::string& spoken() const { return spoken_; }

    // `text`, as libpq says it, on one line and without the password.
    [[nodiscard]] std::string cleaned(std::string text) const;

  private:
    [[nodiscard]] bool has(std::string_view name) const;

    std::vector<std::pair<std::string, std::string>> settings_;
    std::string password_;
    std::string spoken_;
};

}  // namespace ledgerboard::store
