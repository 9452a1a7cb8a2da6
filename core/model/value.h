// What is in one field of one record, before code with types of its own looks at it?
//
// A Value is what a cell holds. It can be read from what a person or a file says, printed for
// people, and checked against its field.
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <variant>

#include "core/model/catalog.h"
#include "core/model/id.h"
#include "core/model/rows.h"

namespace ledgerboard::model {

// Nothing, an integer, a text, or an id, as FieldType says.
using Value = std::variant<std::monostate, std::int64_t, std::string, RawId>;

[[nodiscard]] inline bool isEmpty(const Value& value) {
    return std::holds_alternative<std::monostate>(value);
}

// Finds the record of `kind` that a person means by `text` (an id, the start or end of one, a name,
// SPACE/OBJECT). Given by whoever knows the book.
using FindRecord = std::function<Result<RawId>(Kind kind, std::string_view text)>;

// Names a record for a person: "Kitchen/cabinets", "Tile crew".
using NameRecord = std::function<std::string(RawId id)>;

// Reads what a person or a CSV file wrote for `field`. Empty text is no value.
// Errors (WrongUse): what is wrong with the text and how to write it; the caller names the place.
[[nodiscard]] Result<Value> parseValue(const Field& field, std::string_view text,
                                       const FindRecord& find);

// For people and CSV: "1250.00", "72.5", "2026-05-15", "yes", "Kitchen/cabinets".
[[nodiscard]] std::string printValue(const Field& field, const Value& value,
                                     const NameRecord& name);

// Whether `value` may stand in `field`: its form, its words, its range. Used on everything that
// enters the log, from whatever source. Errors (WrongUse) name the field.
[[nodiscard]] Result<void> checkValue(const Field& field, const Value& value);

// A typed member from a cell's value and back. A value of the wrong form reads as empty: what
// enters the log was checked, and what a newer version wrote must not stop an older one.
void readMember(const Value& value, std::string& member);
void readMember(const Value& value, bool& member);
void readMember(const Value& value, std::optional<std::int64_t>& member);
void readMember(const Value& value, std::optional<Money>& member);
void readMember(const Value& value, std::optional<Quantity>& member);
void readMember(const Value& value, std::optional<Percent>& member);
void readMember(const Value& value, std::optional<Date>& member);
void readMember(const Value& value, std::optional<Instant>& member);
void readMember(const Value& value, std::optional<Weekdays>& member);
void readMember(const Value& value, std::vector<NamedAmount>& member);
void readMember(const Value& value, std::vector<NamedShare>& member);
void readMember(const Value& value, std::vector<ItemAmount>& member);
void readMember(const Value& value, std::vector<Date>& member);
void readRefs(const Value& value, std::vector<RawId>& ids);

template <Kind K>
void readMember(const Value& value, Id<K>& member) {
    const auto* raw = std::get_if<RawId>(&value);
    member = raw != nullptr ? Id<K>(*raw) : Id<K>();
}

template <Kind K>
void readMember(const Value& value, std::vector<Id<K>>& member) {
    std::vector<RawId> ids;
    readRefs(value, ids);
    member.clear();
    for (const auto& id : ids) {
        member.emplace_back(id);
    }
}

template <class E>
requires std::is_enum_v<E>

void readMember(const Value& value, E& member) {
    const auto* word = std::get_if<std::string>(&value);
    member = word != nullptr ? fromWord<E>(*word).value_or(E{}) : E{};
}

[[nodiscard]] Value valueOf(const std::string& member);
[[nodiscard]] Value valueOf(const char* member);
[[nodiscard]] Value valueOf(bool member);  // false: no value, as never said
[[nodiscard]] Value valueOf(std::int64_t member);
[[nodiscard]] Value valueOf(Money member);
[[nodiscard]] Value valueOf(Quantity member);
[[nodiscard]] Value valueOf(Percent member);
[[nodiscard]] Value valueOf(Date member);
[[nodiscard]] Value valueOf(Instant member);
[[nodiscard]] Value valueOf(Weekdays member);
[[nodiscard]] Value valueOf(const std::vector<NamedAmount>& member);
[[nodiscard]] Value valueOf(const std::vector<NamedShare>& member);
[[nodiscard]] Value valueOf(const std::vector<ItemAmount>& member);
[[nodiscard]] Value valueOf(const std::vector<Date>& member);
[[nodiscard]] Value valueOf(const std::vector<RawId>& member);

template <Kind K>
[[nodiscard]] Value valueOf(const Id<K>& member) {
    return member.isNil() ? Value{} : Value{member.raw()};
}

template <Kind K>
[[nodiscard]] Value valueOf(const std::vector<Id<K>>& member) {
    std::vector<RawId> ids;
    ids.reserve(member.size());
    for (const auto& id : member) {
        ids.push_back(id.raw());
    }
    return valueOf(ids);
}

template <class E>
requires std::is_enum_v<E>

[[nodiscard]] Value valueOf(E member) {
    return member == E{} ? Value{} : Value{std::string(wordOf(member))};
}

template <class T>
[[nodiscard]] Value valueOf(const std::optional<T>& member) {
    return member ? valueOf(*member) : Value{};
}

}  // namespace ledgerboard::model
