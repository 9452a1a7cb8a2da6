// How does a value look to PostgreSQL? Its binary formats, of the few types a book is made of.
//
// Inside core/store/postgres. Source: PostgreSQL 15's documentation, chapter 55.7, and the send and
// receive functions of each type: numbers most significant byte first, text as it is, a uuid as its
// 16 bytes.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <variant>

#include "core/model/id.h"
#include "core/model/value.h"

namespace ledgerboard::store {

// Bytes that are no value of a field.
struct RawBytes {
    std::string_view bytes;
};

// What was bound to a parameter.
using Bound = std::variant<std::monostate, std::int64_t, std::string_view, model::RawId, RawBytes>;

// As the server takes it for a parameter of `type` (its number in pg_type). A zero byte, which it
// takes in no text, becomes U+FFFD there; in the log it stays. Errors: DatabaseFailure where the
// type is another.
[[nodiscard]] std::string bytesOf(const Bound& bound, unsigned type);

// What the server gave for a column of `type`. Of a bytea: the value of a field.
[[nodiscard]] std::int64_t integerIn(unsigned type, std::string_view bytes);
[[nodiscard]] model::RawId idIn(std::string_view bytes);
[[nodiscard]] model::Value valueIn(unsigned type, std::string_view bytes);

}  // namespace ledgerboard::store
