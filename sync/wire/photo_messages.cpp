#include "sync/wire/photo_messages.h"

#include "core/store/photos.h"
#include "sync/wire/exchange_limits.h"
#include "sync/wire/json.h"

namespace ledgerboard::sync {

using model::Result;

namespace {

model::Error notRead(const char* what) {
    return model::wrongUse(std::string("the message can't be read: ") + what);
}

std::optional<std::string> digestOf(const Json* json) {
    auto text = stringOf(json);
    return text && store::Photos::isDigest(*text) ? text : std::nullopt;
}

bool isSize(const std::optional<std::int64_t>& number) {
    return number && *number >= 0 && *number <= static_cast<std::int64_t>(kMostPhotoBytes);
}

}  // namespace

std::string write(const PhotosAsk& message) {
    return compact({{"digests", message.digests}});
}

Result<PhotosAsk> readPhotosAsk(std::string_view body) {
    auto json = readObject(body);
    if (!json.ok()) {
        return json.error();
    }
    const Json* digests = member(json.value(), "digests");
    if (digests == nullptr || !digests->is_array() || digests->size() > kMostDigests) {
        return notRead("photos");
    }
    PhotosAsk ask;
    for (const auto& one : *digests) {
        auto digest = digestOf(&one);
        if (!digest) {
            return notRead("photos");
        }
        ask.digests.push_back(std::move(*digest));
    }
    return ask;
}

std::string write(const PhotosAnswer& message) {
    Json answer{{"held", message.held}};
    if (!message.previews.empty()) {
        answer["previews"] = message.previews;
    }
    return compact(answer);
}

Result<PhotosAnswer> readPhotosAnswer(std::string_view body) {
    auto json = readObject(body);
    if (!json.ok()) {
        return json.error();
    }
    const Json* held = member(json.value(), "held");
    if (held == nullptr || !held->is_array() || held->size() > kMostDigests) {
        return notRead("answer about photos");
    }
    PhotosAnswer answer;
    for (const auto& one : *held) {
        const auto number = integerOf(&one);
        if (!number || *number < -1) {
            return notRead("answer about photos");
        }
        answer.held.push_back(*number);
    }
    const Json* previews = member(json.value(), "previews");
    if (previews != nullptr && (!previews->is_array() || previews->size() > kMostDigests)) {
        return notRead("answer about photos");
    }
    for (const auto& one : previews != nullptr ? *previews : Json::array()) {
        const auto place = integerOf(&one);
        if (!place || *place < 0 || static_cast<std::size_t>(*place) >= answer.held.size()) {
            return notRead("answer about photos");
        }
        answer.previews.push_back(*place);
    }
    return answer;
}

std::string write(const PhotoPart& message) {
    Json head{{"digest", message.digest}, {"size", message.size}, {"offset", message.offset}};
    if (message.preview) {
        head["preview"] = 1;
    }
    return compact(head) + "\n" + message.bytes;
}

Result<PhotoPart> readPhotoPart(std::string_view body) {
    constexpr std::size_t kMaxHead = 512;
    const auto end = body.substr(0, kMaxHead).find('\n');
    if (end == std::string_view::npos) {
        return notRead("photo part");
    }
    auto json = readObject(body.substr(0, end));
    if (!json.ok()) {
        return json.error();
    }
    auto digest = digestOf(member(json.value(), "digest"));
    const auto size = integerOf(member(json.value(), "size"));
    const auto offset = integerOf(member(json.value(), "offset"));
    const auto bytes = body.substr(end + 1);
    if (!digest || !isSize(size) || !isSize(offset) || bytes.size() > kPhotoPartBytes ||
        static_cast<std::size_t>(*offset) + bytes.size() > static_cast<std::size_t>(*size)) {
        return notRead("photo part");
    }
    return PhotoPart{std::move(*digest), *size, *offset, std::string(bytes),
                     integerOf(member(json.value(), "preview")) == 1};
}

std::string write(const GetPhotoAsk& message) {
    Json ask{{"get", message.digest}, {"photo", message.photo.hex()}, {"offset", message.offset}};
    if (message.preview) {
        ask["preview"] = 1;
    }
    return compact(ask);
}

Result<GetPhotoAsk> readGetPhotoAsk(std::string_view body) {
    auto json = readObject(body);
    if (!json.ok()) {
        return json.error();
    }
    auto digest = stringOf(member(json.value(), "get"));
    const auto photo = idOf(member(json.value(), "photo"));
    const auto offset = integerOf(member(json.value(), "offset"));
    if (!digest || !photo || !isSize(offset) ||
        (digest->empty() ? photo->isNil() : !store::Photos::isDigest(*digest))) {
        return notRead("photo asked for");
    }
    return GetPhotoAsk{std::move(*digest), *photo, *offset,
                       integerOf(member(json.value(), "preview")) == 1};
}

}  // namespace ledgerboard::sync
