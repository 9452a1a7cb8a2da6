#include "sync/wire/json.h"

#include "sync/wire/bounded_json.h"
#include "sync/wire/exchange_limits.h"

namespace ledgerboard::sync {

model::Result<Json> readObject(std::string_view body) {
    if (body.size() > kMostReplyBytes) {
        return model::wrongUse("the message is larger than it may be");
    }
    auto json = readJson(body, kMostDepth);
    if (!json || !json->is_object()) {
        return model::wrongUse("the message is no JSON object, or nests too deep");
    }
    return std::move(*json);
}

std::string compact(const Json& json) {
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

const Json* member(const Json& object, const char* name) {
    const auto found = object.find(name);
    return found == object.end() ? nullptr : &*found;
}

std::optional<std::int64_t> integerOf(const Json* json) {
    if (json == nullptr || !json->is_number_integer()) {
        return std::nullopt;
    }
    if (json->is_number_unsigned() &&
        json->get<std::uint64_t>() > static_cast<std::uint64_t>(INT64_MAX)) {
        return std::nullopt;
    }
    return json->get<std::int64_t>();
}

std::optional<std::string> stringOf(const Json* json) {
    return json != nullptr && json->is_string() ? std::optional(json->get<std::string>())
                                                : std::nullopt;
}

std::optional<model::RawId> idOf(const Json* json) {
    if (json == nullptr || !json->is_string()) {
        return std::nullopt;
    }
    auto id = model::RawId::parse(json->get_ref<const std::string&>());
    return id.ok() ? std::optional(id.value()) : std::nullopt;
}

std::optional<store::LaneNumbers> numbersOf(const Json* json) {
    if (json == nullptr || !json->is_array() || json->size() != 2) {
        return std::nullopt;
    }
    const auto ownerOnly = integerOf(&(*json)[0]);
    const auto shared = integerOf(&(*json)[1]);
    if (!ownerOnly || !shared || *ownerOnly < 0 || *shared < 0) {
        return std::nullopt;
    }
    return store::LaneNumbers{*ownerOnly, *shared};
}

bool flagOf(const Json* json) {
    return json != nullptr && json->is_boolean() && json->get<bool>();
}

}  // namespace ledgerboard::sync
