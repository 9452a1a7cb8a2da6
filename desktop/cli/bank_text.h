// How are lines of the bank said to the owner?
#pragma once

#include <string>

#include <nlohmann/json_fwd.hpp>

#include "core/intake/bank/match_line.h"
#include "core/intake/files/find.h"

namespace ledgerboard::cli {

// "Kitchen/cabinets", "the Tile crew's contract", "receipt of 2026-05-03", "draw 2", "not ours".
// Empty: unknown.
[[nodiscard]] std::string matchText(const intake::LineMatch& match, const intake::Finder& finder);

[[nodiscard]] nlohmann::json lineJson(const model::BankLine& line, const intake::LineMatch& match,
                                      const intake::Finder& finder);

}  // namespace ledgerboard::cli
