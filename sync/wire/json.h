// Reading JSON that came from outside: bounded in depth, without exceptions. Inside sync/wire only.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include <nlohmann/json.hpp>

#include "core/model/id.h"
#include "core/model/result.h"
#include "core/store/sync_book.h"

namespace ledgerboard::sync {

using Json = nlohmann::json;

// An object of at most kMostReplyBytes and kMostDepth. Errors: anything else.
[[nodiscard]] model::Result<Json> readObject(std::string_view body);
// Without spaces; what is no UTF-8 is replaced rather than failed on.
[[nodiscard]] std::string compact(const Json& json);

// Members of an object; empty where missing or of another form.
[[nodiscard]] const Json* member(const Json& object, const char* name);
[[nodiscard]] std::optional<std::int64_t> integerOf(const Json* json);
[[nodiscard]] std::optional<std::string> stringOf(const Json* json);
[[nodiscard]] std::optional<model::RawId> idOf(const Json* json);
[[nodiscard]] std::optional<store::LaneNumbers> numbersOf(const Json* json);
[[nodiscard]] bool flagOf(const Json* json);

}  // namespace ledgerboard::sync
