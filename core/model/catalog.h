// What is kept, who may read and write it, and how do two edits of it merge? The catalog as data.
//
// The lines themselves stand in catalog.def; here they can be looked up. Everything generic
// (tables, CSV, JSON, validation, who gets what) goes through these functions.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/model/kind.h"
#include "core/model/words.h"

namespace ledgerboard::model {

// What a field holds, and so how its value is stored in a cell.
enum class FieldType : std::uint8_t {
    Text,         // text
    Flag,         // integer 0 or 1
    Count,        // integer
    Money,        // integer, minor units
    Quantity,     // integer, thousandths
    Percent,      // integer, basis points
    Date,         // integer, days since 1970-01-01
    Instant,      // integer, milliseconds since 1970-01-01T00:00Z
    Weekdays,     // integer, bits from Monday
    Words,        // text, one of `words`
    Ref,          // blob, 16 bytes
    Refs,         // text, JSON list of ids
    Amounts,      // text, JSON list of [name, minor units]
    Steps,        // text, JSON list of [name, basis points]
    ItemAmounts,  // text, JSON list of [item id, minor units]
    Dates,        // text, JSON list of days
};

enum class Reads : std::uint8_t { Owner, Lead, Viewer, All };
enum class Writes : std::uint8_t { Owner, Lead };
enum class Merge : std::uint8_t { Last, Kept, Checked };

// A field's number in the log: kind * 1000 + its number in catalog.def. The number 0 of each kind
// is the "gone" cell that says whether the record is dropped.
using FieldCode = std::int32_t;

struct Field {
    Kind kind;
    FieldCode code;
    std::string_view name;    // snake_case: JSON
    std::string_view column;  // SQL: the name with its unit
    FieldType type;
    bool maySubtract;  // whether a figure may be below 0
    std::string_view unit;
    Kind meant;                               // of a Ref or Refs
    std::span<const std::string_view> words;  // of Words; element 0 is empty
    Reads reads;
    Writes writes;
    Merge merge;
    std::string_view heading;  // CSV and screens
    std::string_view says;
};

struct KindInfo {
    Kind kind;
    std::string_view name;     // snake_case: JSON
    std::string_view table;    // SQL
    std::string_view title;    // as people say it
    std::string_view aliases;  // other names, with commas between
    std::span<const Field> fields;
};

// Every kind, by number.
[[nodiscard]] std::span<const KindInfo> kinds();

// Requires: kind is not None.
[[nodiscard]] const KindInfo& infoOf(Kind kind);

// By JSON name, table, title or alias, forgiving case, hyphens and underscores. Empty where
// unknown.
[[nodiscard]] std::optional<Kind> kindNamed(std::string_view name);

// By number; null where this version does not know it.
[[nodiscard]] const Field* fieldOf(FieldCode code);

// By JSON name or heading, forgiving case, spaces, hyphens and underscores; null where unknown.
[[nodiscard]] const Field* fieldNamed(Kind kind, std::string_view name);

// The field whose records belong to a job; null for kinds that are the whole book's (crew, price).
[[nodiscard]] const Field* jobFieldOf(Kind kind);

// True where rows of the kind are facts: only ever added, and voided rather than edited.
[[nodiscard]] bool isKept(Kind kind);

[[nodiscard]] constexpr Kind kindOf(FieldCode code) {
    return static_cast<Kind>(code / 1000);
}

[[nodiscard]] constexpr FieldCode goneCode(Kind kind) {
    return static_cast<int>(kind) * 1000;
}

// The code of each field, for code that writes one: field::Item::quantity.
namespace field {
#define KIND(kind, number, plural, title, aliases) namespace kind {
#define FIELD(kind, number, member, type, unit, reads, writes, merge, heading, says) \
    inline constexpr FieldCode member = static_cast<int>(model::Kind::kind) * 1000 + (number);
#define WORDS(kind, number, member, type, reads, writes, merge, heading, says) \
    inline constexpr FieldCode member = static_cast<int>(model::Kind::kind) * 1000 + (number);
#define REF(kind, number, member, meant, reads, writes, merge, heading, says) \
    inline constexpr FieldCode member = static_cast<int>(model::Kind::kind) * 1000 + (number);
#define REFS(kind, number, member, meant, reads, writes, merge, heading, says) \
    inline constexpr FieldCode member = static_cast<int>(model::Kind::kind) * 1000 + (number);
#define END(kind) }
#include "core/model/catalog.def"
}  // namespace field

// Lower case with spaces, hyphens and underscores taken out: how names are compared.
[[nodiscard]] std::string folded(std::string_view name);

}  // namespace ledgerboard::model
