#include "core/model/value.h"

#include <nlohmann/json.hpp>

#include "core/model/decimal.h"

namespace ledgerboard::model {

namespace {

using Json = nlohmann::json;

const std::int64_t* integerOf(const Value& value) {
    return std::get_if<std::int64_t>(&value);
}

// The list that a text value holds; a discarded value where it is none.
Json listOf(const Value& value) {
    const auto* text = std::get_if<std::string>(&value);
    if (text == nullptr) {
        return Json(Json::value_t::discarded);
    }
    Json list = Json::parse(*text, nullptr, false);
    return list.is_array() ? list : Json(Json::value_t::discarded);
}

Value textOf(const Json& list) {
    return list.empty() ? Value{}
                        : Value{list.dump(-1, ' ', false, Json::error_handler_t::replace)};
}

template <class T, class Make>
void readPairs(const Value& value, std::vector<T>& member, Make&& make) {
    member.clear();
    const Json list = listOf(value);
    if (list.is_discarded()) {
        return;
    }
    for (const auto& pair : list) {
        if (pair.is_array() && pair.size() == 2 && pair[0].is_string() &&
            pair[1].is_number_integer()) {
            make(pair[0].get_ref<const std::string&>(), pair[1].get<std::int64_t>());
        }
    }
}

}  // namespace

void readMember(const Value& value, std::string& member) {
    const auto* text = std::get_if<std::string>(&value);
    member = text != nullptr ? *text : std::string();
}

void readMember(const Value& value, bool& member) {
    const auto* integer = integerOf(value);
    member = integer != nullptr && *integer != 0;
}

void readMember(const Value& value, std::optional<std::int64_t>& member) {
    const auto* integer = integerOf(value);
    member = integer != nullptr ? std::optional(*integer) : std::nullopt;
}

void readMember(const Value& value, std::optional<Money>& member) {
    const auto* integer = integerOf(value);
    member = integer != nullptr ? std::optional(Money::fromMinor(*integer)) : std::nullopt;
}

void readMember(const Value& value, std::optional<Quantity>& member) {
    const auto* integer = integerOf(value);
    member = integer != nullptr ? std::optional(Quantity::fromThousandths(*integer)) : std::nullopt;
}

void readMember(const Value& value, std::optional<Percent>& member) {
    const auto* integer = integerOf(value);
    member = integer != nullptr ? std::optional(Percent::fromBasisPoints(*integer)) : std::nullopt;
}

void readMember(const Value& value, std::optional<Date>& member) {
    const auto* integer = integerOf(value);
    member = integer != nullptr ? std::optional(Date::fromDays(static_cast<std::int32_t>(*integer)))
                                : std::nullopt;
}

void readMember(const Value& value, std::optional<Instant>& member) {
    const auto* integer = integerOf(value);
    member = integer != nullptr ? std::optional(Instant::fromMilliseconds(*integer)) : std::nullopt;
}

void readMember(const Value& value, std::optional<Weekdays>& member) {
    const auto* integer = integerOf(value);
    member = integer != nullptr ? std::optional(Weekdays::fromBits(*integer)) : std::nullopt;
}

void readMember(const Value& value, std::vector<NamedAmount>& member) {
    readPairs(value, member, [&](const std::string& name, std::int64_t minor) {
        member.push_back({name, Money::fromMinor(minor)});
    });
}

void readMember(const Value& value, std::vector<NamedShare>& member) {
    readPairs(value, member, [&](const std::string& name, std::int64_t basisPoints) {
        member.push_back({name, Percent::fromBasisPoints(basisPoints)});
    });
}

void readMember(const Value& value, std::vector<ItemAmount>& member) {
    readPairs(value, member, [&](const std::string& id, std::int64_t minor) {
        if (auto raw = RawId::parse(id); raw.ok()) {
            member.push_back({Id<Kind::Item>(raw.value()), Money::fromMinor(minor)});
        }
    });
}

void readMember(const Value& value, std::vector<Date>& member) {
    member.clear();
    const Json list = listOf(value);
    if (!list.is_discarded()) {
        for (const auto& day : list) {
            if (day.is_number_integer()) {
                member.push_back(Date::fromDays(day.get<std::int32_t>()));
            }
        }
    }
}

void readRefs(const Value& value, std::vector<RawId>& ids) {
    ids.clear();
    const Json list = listOf(value);
    if (!list.is_discarded()) {
        for (const auto& id : list) {
            if (!id.is_string()) {
                continue;
            }
            if (auto raw = RawId::parse(id.get_ref<const std::string&>()); raw.ok()) {
                ids.push_back(raw.value());
            }
        }
    }
}

Value valueOf(const std::string& member) {
    return member.empty() ? Value{} : Value{member};
}

Value valueOf(const char* member) {
    return valueOf(std::string(member));
}

Value valueOf(bool member) {
    return member ? Value{std::int64_t{1}} : Value{};
}

Value valueOf(std::int64_t member) {
    return Value{member};
}

Value valueOf(Money member) {
    return Value{member.minor()};
}

Value valueOf(Quantity member) {
    return Value{member.thousandths()};
}

Value valueOf(Percent member) {
    return Value{member.basisPoints()};
}

Value valueOf(Date member) {
    return Value{std::int64_t{member.days()}};
}

Value valueOf(Instant member) {
    return Value{member.milliseconds()};
}

Value valueOf(Weekdays member) {
    return Value{member.bits()};
}

Value valueOf(const std::vector<NamedAmount>& member) {
    Json list = Json::array();
    for (const auto& one : member) {
        list.push_back({one.name, one.amount.minor()});
    }
    return textOf(list);
}

Value valueOf(const std::vector<NamedShare>& member) {
    Json list = Json::array();
    for (const auto& one : member) {
        list.push_back({one.name, one.percent.basisPoints()});
    }
    return textOf(list);
}

Value valueOf(const std::vector<ItemAmount>& member) {
    Json list = Json::array();
    for (const auto& one : member) {
        list.push_back({one.item.raw().toString(), one.amount.minor()});
    }
    return textOf(list);
}

Value valueOf(const std::vector<Date>& member) {
    Json list = Json::array();
    for (const auto& day : member) {
        list.push_back(day.days());
    }
    return textOf(list);
}

Value valueOf(const std::vector<RawId>& member) {
    Json list = Json::array();
    for (const auto& id : member) {
        list.push_back(id.toString());
    }
    return textOf(list);
}

}  // namespace ledgerboard::model
