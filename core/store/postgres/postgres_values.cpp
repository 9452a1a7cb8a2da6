#include "core/store/postgres/postgres_values.h"

#include <algorithm>
#include <array>

#include "core/store/backend.h"

namespace ledgerboard::store {

namespace {

// Numbers of types in pg_type.dat: fixed for good.
constexpr unsigned kBool = 16;
constexpr unsigned kBytea = 17;
constexpr unsigned kInt8 = 20;
constexpr unsigned kInt2 = 21;
constexpr unsigned kInt4 = 23;
constexpr unsigned kText = 25;
constexpr unsigned kUuid = 2950;

std::string bigEndian(std::int64_t value, int size) {
    std::string bytes;
    for (int shift = (size - 1) * 8; shift >= 0; shift -= 8) {
        bytes += static_cast<char>(static_cast<std::uint64_t>(value) >> shift & 0xff);
    }
    return bytes;
}

std::int64_t fromBigEndian(std::string_view bytes) {
    std::uint64_t number = !bytes.empty() && (bytes[0] & 0x80) != 0 ? ~std::uint64_t{0} : 0;
    for (const char c : bytes) {
        number = number << 8 | static_cast<unsigned char>(c);
    }
    return static_cast<std::int64_t>(number);
}

std::string_view bytesIn(const model::RawId& id) {
    return {reinterpret_cast<const char*>(id.bytes().data()), model::RawId::kBytes};
}

[[noreturn]] void notOfThatType(unsigned type) {
    throw DatabaseFailure(model::ErrorCode::Damaged,
                          "the database has a column of another type than the book has there (" +
                              std::to_string(type) + ")");
}

std::string textWithoutZero(std::string_view text) {
    std::string out;
    for (const char c : text) {
        out += c == '\0' ? std::string("\xEF\xBF\xBD") : std::string(1, c);
    }
    return out;
}

}  // namespace

std::string bytesOf(const Bound& bound, unsigned type) {
    if (std::holds_alternative<std::monostate>(bound)) {
        return "";
    }
    if (const auto* integer = std::get_if<std::int64_t>(&bound)) {
        const int size = type == kInt8 ? 8 : type == kInt4 ? 4 : type == kInt2 ? 2 : 0;
        if (type == kBytea) {
            return "i" + bigEndian(*integer, 8);
        }
        if (size == 0 || fromBigEndian(bigEndian(*integer, size)) != *integer) {
            notOfThatType(type);
        }
        return bigEndian(*integer, size);
    }
    if (const auto* text = std::get_if<std::string_view>(&bound)) {
        if (type == kBytea) {
            return "t" + std::string(*text);
        }
        if (type != kText) {
            notOfThatType(type);
        }
        return text->find('\0') == std::string_view::npos ? std::string(*text)
                                                          : textWithoutZero(*text);
    }
    if (const auto* id = std::get_if<model::RawId>(&bound)) {
        if (type != kUuid && type != kBytea) {
            notOfThatType(type);
        }
        return (type == kBytea ? "r" : "") + std::string(bytesIn(*id));
    }
    if (type != kBytea) {
        notOfThatType(type);
    }
    return std::string(std::get<RawBytes>(bound).bytes);
}

std::int64_t integerIn(unsigned type, std::string_view bytes) {
    if (type == kBool) {
        return !bytes.empty() && bytes[0] != 0 ? 1 : 0;
    }
    if (type == kBytea) {
        const model::Value value = valueIn(type, bytes);
        const auto* integer = std::get_if<std::int64_t>(&value);
        return integer != nullptr ? *integer : 0;
    }
    return fromBigEndian(bytes);
}

model::RawId idIn(std::string_view bytes) {
    std::array<std::uint8_t, model::RawId::kBytes> id{};
    if (bytes.size() == id.size()) {
        std::copy(bytes.begin(), bytes.end(), id.begin());
    }
    return model::RawId{id};
}

model::Value valueIn(unsigned type, std::string_view bytes) {
    switch (type) {
        case kBytea:
            break;
        case kUuid:
            return idIn(bytes);
        case kText:
            return std::string(bytes);
        default:
            return integerIn(type, bytes);
    }
    if (bytes.empty()) {
        return {};
    }
    const std::string_view said = bytes.substr(1);
    switch (bytes[0]) {
        case 'i':
            return fromBigEndian(said);
        case 't':
            return std::string(said);
        case 'r':
            return idIn(said);
        default:
            return {};
    }
}

}  // namespace ledgerboard::store
