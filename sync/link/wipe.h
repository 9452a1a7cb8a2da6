// How does a device that was shut out lose its copy? The photos, the book, then its key and what it
// knew of the peer.
//
// Files are written over once before they are removed. Flash memory and file systems that copy on
// write may still hold what was there: a device that leaves for good wants its whole disk erased.
#pragma once

#include <string>

#include "core/model/result.h"

namespace ledgerboard::sync {

// Wipes the copy at `bookPath`. Cut short, it goes on where it is called again. Requires: no Book
// of it is open. Errors (Damaged): something could not be removed; the rest is.
[[nodiscard]] model::Result<void> wipeCopy(const std::string& bookPath);

}  // namespace ledgerboard::sync
