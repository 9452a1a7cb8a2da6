// Inside core/store only: what the sources of SyncBook share. Everything here runs in the caller's
// transaction and throws DatabaseFailure.
#pragma once

#include <vector>

#include "core/store/log.h"
#include "core/store/sync_book.h"

namespace ledgerboard::store {

// About how many bytes an entry takes in a message.
[[nodiscard]] std::size_t roughBytes(const Entry& entry);

void forgetCells(Database& database, Log& log, const std::vector<CellName>& cells);
void forgetNamed(Database& database, Log& log, const std::vector<EntryName>& names);
[[nodiscard]] std::vector<CellName> staleCells(Database& database);

}  // namespace ledgerboard::store
