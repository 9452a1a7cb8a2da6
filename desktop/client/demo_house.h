// How does somebody look at a whole job without having one? The invented house of demo-data, made
// into a book of its own.
//
// Its files are within the program. The house stands in its seventh week on kDemoDay.
#pragma once

#include <string>

#include "core/model/id.h"
#include "core/model/result.h"

namespace ledgerboard::desk {

inline constexpr const char* kDemoDay = "2026-05-22";

// Errors: something is at `path` already; the folder cannot be written. What was begun of the book
// is then removed.
[[nodiscard]] model::Result<void> makeDemo(const std::string& path, model::Instant now,
                                           const model::FillRandom& random);

}  // namespace ledgerboard::desk
