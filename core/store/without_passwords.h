// What of a text may be shown where it may hold the address of a database with a password in it?
#pragma once

#include <string>

namespace ledgerboard::store {

// `text` with the password of every address in it left out, whether it reads or not.
[[nodiscard]] std::string withoutPasswords(const std::string& text);

}  // namespace ledgerboard::store
