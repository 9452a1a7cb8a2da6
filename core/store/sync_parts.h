// Inside core/store only: what the sources of SyncBook share. Everything here runs in the caller's
// transaction and throws DatabaseFailure.
#pragma once

#include <vector>

#include "core/store/log.h"
#include "core/store/sync_book.h"

namespace ledgerboard::store {

// About how many bytes an entry takes in a message.
[[nodiscard]] std::size_t roughBytes(const Entry& entry);

// What was set aside: columns of which asideFrom() makes one.
inline constexpr const char* kAsideColumns =
    "SELECT place, at_ms, why, device, lane, number, clock, record, field, value, replaces "
    "FROM asides ";
[[nodiscard]] Aside asideFrom(const Statement& select);

void forgetCells(Database& database, Log& log, const std::vector<CellName>& cells);
void forgetNamed(Database& database, Log& log, const std::vector<EntryName>& names);
[[nodiscard]] std::vector<CellName> staleCells(Database& database);

}  // namespace ledgerboard::store
