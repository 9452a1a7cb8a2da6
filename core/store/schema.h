// What tables does a book have? The log's, written out here, and one per kind, made from the
// catalog.
//
// The layout is described in docs/book-format.md.
#pragma once

#include <string>

#include "core/model/catalog.h"
#include "core/model/result.h"
#include "core/store/database.h"

namespace ledgerboard::store {

// In the file's header: 'LdgB', and the version of the log's layout.
inline constexpr std::int32_t kApplicationId = 0x4C646742;
inline constexpr std::int32_t kLayoutVersion = 1;

// Looks at the file's first bytes without opening it as a database, so that nothing is touched.
// Errors (Damaged): missing, empty, not SQLite, another program's, newer, cut short, read-only.
[[nodiscard]] model::Result<void> checkFile(const std::string& path);

// The log's tables, then one table per kind. Requires: an empty database, in a transaction.
void createTables(Database& database);

// The tables of the exchange, in a book that was made before there were any. Requires: in a
// transaction, and hasSyncTables says no.
[[nodiscard]] bool hasSyncTables(Database& database);
void createSyncTables(Database& database);

// One table per kind, empty. Requires: in a transaction.
void createRowTables(Database& database);
void dropRowTables(Database& database);

// Changes whenever the tables made from the catalog would.
[[nodiscard]] std::string catalogFingerprint();

// "SELECT id, first, second ... FROM table", the columns in the catalog's order.
[[nodiscard]] std::string selectRows(model::Kind kind);

}  // namespace ledgerboard::store
