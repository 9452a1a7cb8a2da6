// What tables does a book have? The log's, written out here, and one per kind, made from the
// catalog.
//
// The layout is described in docs/book-format.md.
#pragma once

#include <string>
#include <string_view>

#include "core/model/catalog.h"
#include "core/model/result.h"
#include "core/store/database.h"

namespace ledgerboard::store {

// Looks at the file's first bytes without opening it as a database, so that nothing is touched.
// Errors (Damaged): missing, empty, not SQLite, another program's, newer, cut short, read-only.
[[nodiscard]] model::Result<void> checkFile(const std::string& path);

// Statements that make tables, in the words of a database: those of Dialect in place of INTEGER,
// ID, BYTES, VALUE, RISING, STRICT and KEYED; without comments.
[[nodiscard]] std::string inWordsOf(const Dialect& dialect, std::string_view sql);

// The log's tables, then one table per kind. Requires: an empty database, in a transaction.
void createTables(Database& database);

// The tables of the exchange, in a file that was made before there were any. Requires: in a
// transaction, and hasSyncTables says no.
[[nodiscard]] bool hasSyncTables(Database& database);
void createSyncTables(Database& database);

// One table per kind, empty. Requires: in a transaction.
void createRowTables(Database& database);
void dropRowTables(Database& database);

// Changes whenever the tables made from the catalog would.
[[nodiscard]] const std::string& catalogFingerprint();

// "SELECT id, first, second ... FROM table", the columns in the catalog's order.
[[nodiscard]] std::string selectRows(model::Kind kind);

}  // namespace ledgerboard::store
