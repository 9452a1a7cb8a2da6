// Values as people write and read them, and the check on whatever enters the log.
#include <cstdint>
#include <optional>

#include <nlohmann/json.hpp>

#include "core/model/decimal.h"
#include "core/model/saying.h"
#include "core/model/utf8.h"
#include "core/model/value.h"

namespace ledgerboard::model {

namespace {

constexpr std::size_t kLongestText = 100'000;  // bytes; a note may be long, a book must stay a book
constexpr std::int64_t kLargestUnits = 1'000'000'000'000'000;
constexpr std::int64_t kFirstDay = -135'140;  // 1600-01-01
constexpr std::int64_t kLastDay = 376'199;    // 2999-12-31
constexpr std::int64_t kDayMs = 86'400'000;

std::string lower(std::string_view text) {
    std::string out(text);
    for (char& c : out) {
        c = static_cast<char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
    }
    return out;
}

template <class T>
Result<Value> asValue(Result<T> read) {
    if (!read.ok()) {
        return read.error();
    }
    return valueOf(std::move(read).value());
}

std::vector<std::string_view> partsOf(std::string_view text, char separator) {
    std::vector<std::string_view> parts;
    while (!text.empty()) {
        const auto at = text.find(separator);
        if (const auto part = trimmed(text.substr(0, at)); !part.empty()) {
            parts.push_back(part);
        }
        text = at == std::string_view::npos ? std::string_view{} : text.substr(at + 1);
    }
    return parts;
}

Result<Value> parseFlag(std::string_view text) {
    const std::string word = lower(text);
    for (const auto* yes : {"yes", "y", "true", "1", "x", "si", "s\xC3\xAD"}) {
        if (word == yes) {
            return Value{std::int64_t{1}};
        }
    }
    for (const auto* no : {"no", "n", "false", "0"}) {
        if (word == no) {
            return Value{std::int64_t{0}};  // said, so it can take back a yes
        }
    }
    return wrongUse(saying("\"%1\" is neither yes nor no", text.substr(0, 40)));
}

Result<Value> parseCount(std::string_view text) {
    auto units = parseDecimal(text, 0);
    if (!units.ok()) {
        return units.error();
    }
    return valueOf(units.value());
}

// A house has no other; one that is too late would take its cautions away.
Result<Value> parseYear(std::string_view text) {
    constexpr std::int64_t kFirstYear = 1600;
    constexpr std::int64_t kLastYear = 2999;
    auto year = parseDecimal(text, 0);
    if (!year.ok() || year.value() < kFirstYear || year.value() > kLastYear) {
        return wrongUse(
            saying("\"%1\" is not a year: write four digits, such as 1936", text.substr(0, 40)));
    }
    return valueOf(year.value());
}

Result<Value> parseWord(const Field& field, std::string_view text) {
    const std::string wanted = folded(text);
    std::string known;
    for (std::size_t k = 1; k < field.words.size(); ++k) {
        if (folded(field.words[k]) == wanted) {
            return Value{std::string(field.words[k])};
        }
        known += (k == 1 ? "" : ", ") + std::string(field.words[k]);
    }
    return wrongUse(saying("\"%1\" is not one of: %2", text.substr(0, 40), known));
}

// "name value; name value": calls take(name, value text) for each part.
template <class Take>
Result<void> eachPair(std::string_view text, Take&& take) {
    for (const auto part : partsOf(text, ';')) {
        auto at = part.find('=');
        if (at == std::string_view::npos) {
            at = part.find_last_of(" \t");
        }
        if (at == std::string_view::npos || trimmed(part.substr(0, at)).empty()) {
            return wrongUse(
                saying("\"%1\" needs a name and a figure: write it like taxes 210; insurance 95",
                       part.substr(0, 40)));
        }
        if (auto taken = take(trimmed(part.substr(0, at)), trimmed(part.substr(at + 1)));
            !taken.ok()) {
            return taken.error();
        }
    }
    return {};
}

template <class Entry, class Amount>
Result<Value> parseNamed(std::string_view text) {
    std::vector<Entry> list;
    auto done = eachPair(text, [&](std::string_view name, std::string_view figure) -> Result<void> {
        auto amount = Amount::parse(figure);
        if (!amount.ok()) {
            return amount.error();
        }
        list.push_back({std::string(name), amount.value()});
        return {};
    });
    if (!done.ok()) {
        return done.error();
    }
    return valueOf(list);
}

Result<Value> parseItemAmounts(std::string_view text, const FindRecord& find) {
    std::vector<ItemAmount> list;
    auto done = eachPair(text, [&](std::string_view name, std::string_view figure) -> Result<void> {
        auto id = find(Kind::Item, name);
        if (!id.ok()) {
            return id.error();
        }
        auto amount = Money::parse(figure);
        if (!amount.ok()) {
            return amount.error();
        }
        list.push_back({Id<Kind::Item>(id.value()), amount.value()});
        return {};
    });
    if (!done.ok()) {
        return done.error();
    }
    return valueOf(list);
}

Result<Value> parseDates(std::string_view text) {
    std::vector<Date> list;
    for (const auto part : partsOf(text, ';')) {
        auto date = Date::parseLoose(part);
        if (!date.ok()) {
            return date.error();
        }
        list.push_back(date.value());
    }
    return valueOf(list);
}

Result<Value> parseRefs(const Field& field, std::string_view text, const FindRecord& find) {
    std::vector<RawId> list;
    for (const auto part : partsOf(text, ';')) {
        auto id = find(field.meant, part);
        if (!id.ok()) {
            return id.error();
        }
        list.push_back(id.value());
    }
    return valueOf(list);
}

template <class List, class Print>
std::string joined(const Value& value, Print&& print) {
    List list;
    readMember(value, list);
    std::string out;
    for (const auto& one : list) {
        out += (out.empty() ? "" : "; ") + print(one);
    }
    return out;
}

// What is wrong with a field, named before it.
Error wrongIn(const Field& field, const Saying& what) {
    return inPlace(Saying(std::string(field.heading)), wrongUse(what));
}

// Whether a field of this type may hold an integer of this size.
Result<void> checkInteger(const Field& field, std::int64_t units) {
    switch (field.type) {
        case FieldType::Flag:
            return units == 0 || units == 1 ? Result<void>{}
                                            : wrongIn(field, saying("neither yes nor no"));
        case FieldType::Date:
            if (units < kFirstDay || units > kLastDay) {
                return wrongIn(field, saying("a date outside the years 1600 to 2999"));
            }
            return {};
        case FieldType::Weekdays:
            return units > 0 && units < 128 ? Result<void>{}
                                            : wrongIn(field, saying("not a work week"));
        case FieldType::Instant:
            return units >= kFirstDay * kDayMs && units < (kLastDay + 1) * kDayMs
                       ? Result<void>{}
                       : wrongIn(field, saying("an instant outside the years 1600 to 2999"));
        case FieldType::Percent:
            if (units < 0 || units > Percent::whole().basisPoints()) {
                return wrongIn(field, saying("%1 is not within 0 to 100 percent",
                                             Percent::fromBasisPoints(units)));
            }
            return {};
        case FieldType::Count:
        case FieldType::Quantity:
        case FieldType::Money:
            if (units > kLargestUnits || units < -kLargestUnits) {
                return wrongIn(field, saying("too large to be kept"));
            }
            if (units < 0 && !field.maySubtract) {
                return wrongIn(field, saying("it can't be below 0"));
            }
            return {};
        default:
            return wrongIn(field, saying("a number where none belongs"));
    }
}

// The whole number that `one` is, where it fits; empty where it is none.
std::optional<std::int64_t> wholeOf(const nlohmann::json& one) {
    if (!one.is_number_integer() ||
        (one.is_number_unsigned() && one.get<std::uint64_t>() > std::uint64_t{INT64_MAX})) {
        return std::nullopt;
    }
    return one.get<std::int64_t>();
}

// [name, units]
bool isNamedUnits(const nlohmann::json& pair) {
    if (!pair.is_array() || pair.size() != 2 || !pair[0].is_string() ||
        pair[0].get_ref<const std::string&>().empty()) {
        return false;
    }
    const auto units = wholeOf(pair[1]);
    return units && *units <= kLargestUnits && *units >= -kLargestUnits;
}

bool isIdText(const nlohmann::json& one) {
    return one.is_string() && RawId::parse(one.get_ref<const std::string&>()).ok();
}

bool isDay(const nlohmann::json& one) {
    const auto day = wholeOf(one);
    return day && *day >= kFirstDay && *day <= kLastDay;
}

// Whether one element of a list field has the form that readMember expects.
bool isElementOf(FieldType type, const nlohmann::json& one) {
    switch (type) {
        case FieldType::Refs:
            return isIdText(one);
        case FieldType::ItemAmounts:
            return isNamedUnits(one) && isIdText(one[0]);
        case FieldType::Dates:
            return isDay(one);
        default:
            return isNamedUnits(one);
    }
}

Result<void> checkList(const Field& field, const std::string& text) {
    const auto list = nlohmann::json::parse(text, nullptr, false);
    bool good = list.is_array() && !list.empty();
    for (std::size_t k = 0; good && k < list.size(); ++k) {
        good = isElementOf(field.type, list[k]);
    }
    return good ? Result<void>{} : wrongIn(field, saying("not a list of what belongs there"));
}

Result<void> checkText(const Field& field, const std::string& text) {
    if (text.empty() || text.size() > kLongestText) {
        return wrongIn(field, text.empty() ? saying("an empty text is kept as no value")
                                           : saying("a text longer than 100,000 bytes"));
    }
    if (text.find('\0') != std::string::npos || !isUtf8(text)) {
        return wrongIn(field, saying("a text with bytes in it that are not UTF-8 text"));
    }
    switch (field.type) {
        case FieldType::Text:
            return {};
        case FieldType::Words:
            for (const auto word : field.words) {
                if (word == text) {
                    return {};
                }
            }
            return wrongIn(field, saying("\"%1\" is not one of its words", text.substr(0, 40)));
        case FieldType::Refs:
        case FieldType::Amounts:
        case FieldType::Steps:
        case FieldType::ItemAmounts:
        case FieldType::Dates:
            return checkList(field, text);
        default:
            return wrongIn(field, saying("a text where none belongs"));
    }
}

}  // namespace

Result<Value> parseValue(const Field& field, std::string_view text, const FindRecord& find) {
    text = trimmed(text);
    if (text.empty()) {
        return Value{};
    }
    if (!isUtf8(text)) {
        return wrongUse("a text with bytes in it that are not UTF-8: save the file as UTF-8");
    }
    switch (field.type) {
        case FieldType::Text:
            return Value{std::string(text)};
        case FieldType::Flag:
            return parseFlag(text);
        case FieldType::Count:
            return field.unit == "year" ? parseYear(text) : parseCount(text);
        case FieldType::Money:
            return asValue(Money::parse(text));
        case FieldType::Quantity:
            return asValue(Quantity::parse(text));
        case FieldType::Percent:
            return asValue(Percent::parse(text));
        case FieldType::Date:
            return asValue(Date::parseLoose(text));
        case FieldType::Instant:
            return asValue(Instant::parse(text));
        case FieldType::Weekdays:
            return asValue(Weekdays::parse(text));
        case FieldType::Words:
            return parseWord(field, text);
        case FieldType::Ref: {
            auto id = find(field.meant, text);
            return id.ok() ? Result<Value>(Value{id.value()}) : Result<Value>(id.error());
        }
        case FieldType::Refs:
            return parseRefs(field, text, find);
        case FieldType::Amounts:
            return parseNamed<NamedAmount, Money>(text);
        case FieldType::Steps:
            return parseNamed<NamedShare, Percent>(text);
        case FieldType::ItemAmounts:
            return parseItemAmounts(text, find);
        case FieldType::Dates:
            return parseDates(text);
    }
    return Value{};
}

std::string printValue(const Field& field, const Value& value, const NameRecord& name) {
    if (isEmpty(value)) {
        return "";
    }
    const auto* integer = std::get_if<std::int64_t>(&value);
    const std::int64_t units = integer != nullptr ? *integer : 0;
    switch (field.type) {
        case FieldType::Flag:
            return units != 0 ? "yes" : "no";
        case FieldType::Count:
            return std::to_string(units);
        case FieldType::Money:
            return Money::fromMinor(units).toString();
        case FieldType::Quantity:
            return Quantity::fromThousandths(units).toString();
        case FieldType::Percent:
            return Percent::fromBasisPoints(units).toString();
        case FieldType::Date:
            return Date::fromDays(static_cast<std::int32_t>(units)).toString();
        case FieldType::Instant:
            return Instant::fromMilliseconds(units).toString();
        case FieldType::Weekdays:
            return Weekdays::fromBits(units).toString();
        case FieldType::Ref:
            return std::holds_alternative<RawId>(value) ? name(std::get<RawId>(value)) : "";
        case FieldType::Refs: {
            std::vector<RawId> ids;
            readRefs(value, ids);
            std::string out;
            for (const auto& id : ids) {
                out += (out.empty() ? "" : "; ") + name(id);
            }
            return out;
        }
        case FieldType::Amounts:
            return joined<std::vector<NamedAmount>>(
                value, [](const auto& one) { return one.name + " " + one.amount.toString(); });
        case FieldType::Steps:
            return joined<std::vector<NamedShare>>(
                value, [](const auto& one) { return one.name + " " + one.percent.toString(); });
        case FieldType::ItemAmounts:
            return joined<std::vector<ItemAmount>>(value, [&](const auto& one) {
                return name(one.item.raw()) + "=" + one.amount.toString();
            });
        case FieldType::Dates:
            return joined<std::vector<Date>>(value, [](Date day) { return day.toString(); });
        case FieldType::Text:
        case FieldType::Words:
            break;
    }
    return std::holds_alternative<std::string>(value) ? std::get<std::string>(value) : "";
}

Result<void> checkValue(const Field& field, const Value& value) {
    if (isEmpty(value)) {
        return {};
    }
    if (const auto* integer = std::get_if<std::int64_t>(&value)) {
        return checkInteger(field, *integer);
    }
    if (const auto* text = std::get_if<std::string>(&value)) {
        return checkText(field, *text);
    }
    if (field.type != FieldType::Ref) {
        return wrongIn(field, saying("an id where none belongs"));
    }
    return {};
}

}  // namespace ledgerboard::model
