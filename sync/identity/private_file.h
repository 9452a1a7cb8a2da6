// Where do secrets stand on disk? In small files that only their user may read (mode 0600).
//
// A file is there whole or not at all: written aside, synchronised, then given its name.
// Threads: any number, in any number of processes.
#pragma once

#include <optional>
#include <string>

#include "core/model/result.h"

namespace ledgerboard::sync {

inline constexpr std::size_t kLargestPrivateFile = std::size_t{16} << 20;  // bytes

// The whole file; empty where there is none. Errors (CannotBeMet): others may read or change it;
// (Damaged) no plain file, too large, cannot be read.
[[nodiscard]] model::Result<std::optional<std::string>> readPrivate(const std::string& path);

// Makes the file, unless one is there: then it stays as it is and false comes back.
// Errors (Damaged): the disk.
[[nodiscard]] model::Result<bool> makePrivate(const std::string& path, std::string_view text);

// Makes the file or puts `text` in place of what it held. Errors (Damaged): the disk; the file is
// then as it was.
[[nodiscard]] model::Result<void> replacePrivate(const std::string& path, std::string_view text);

}  // namespace ledgerboard::sync
