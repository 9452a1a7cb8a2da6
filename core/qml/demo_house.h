// How does somebody look at a whole job without having one? The invented house of demo-data, made
// into a book of its own.
//
// Its files are within the program. The house stands in its seventh week, on Friday 22 May 2026 or
// so many whole weeks from it.
#pragma once

#include <string>

#include "core/model/date.h"
#include "core/model/id.h"
#include "core/model/result.h"

namespace ledgerboard::qml {

inline constexpr const char* kDemoDay = "2026-05-22";

// Weeks from kDemoDay after which the seventh week of the house is the one that `today` is in,
// counted from Friday to Thursday.
[[nodiscard]] int demoWeeksUntil(model::Date today);

// Every day of the house `weeks` later, or earlier where that is less than 0. Errors: something is
// at `path` already; the folder cannot be written. What was begun of the book is then removed.
[[nodiscard]] model::Result<void> makeDemo(const std::string& path, model::Instant now,
                                           const model::FillRandom& random, int weeks = 0);

}  // namespace ledgerboard::qml
