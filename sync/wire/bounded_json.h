// What does a JSON text from outside say, where it is one and is not too deep?
#pragma once

#include <optional>
#include <string_view>

#include <nlohmann/json.hpp>

#include "sync/wire/limits.h"

namespace ledgerboard::sync {

// The document, or nothing where `text` is no JSON or nests deeper than `mostDepth`. Never throws.
// The caller bounds the length.
[[nodiscard]] std::optional<nlohmann::json> readJson(std::string_view text,
                                                     int mostDepth = kMostJsonDepth);

// The text of one member that is a string, or nothing.
[[nodiscard]] std::optional<std::string> textAt(const nlohmann::json& object, const char* name);

}  // namespace ledgerboard::sync
