#include "core/model/id.h"

#include "core/model/saying.h"

namespace ledgerboard::model {

namespace {

constexpr std::string_view kHex = "0123456789abcdef";

int hexValue(char c) {
    if (c >= '0' && c <= '9') {
        return c - '0';
    }
    if (c >= 'a' && c <= 'f') {
        return c - 'a' + 10;
    }
    if (c >= 'A' && c <= 'F') {
        return c - 'A' + 10;
    }
    return -1;
}

}  // namespace

Result<RawId> RawId::parse(std::string_view text) {
    std::array<std::uint8_t, kBytes> bytes{};
    std::size_t digits = 0;
    for (std::size_t k = 0; k < text.size(); ++k) {
        const bool dashPlace = text.size() == 36 && (k == 8 || k == 13 || k == 18 || k == 23);
        if (dashPlace && text[k] == '-') {
            continue;
        }
        const int value = hexValue(text[k]);
        if (value < 0 || digits >= 2 * kBytes) {
            digits = 0;
            break;
        }
        bytes[digits / 2] = static_cast<std::uint8_t>(bytes[digits / 2] << 4 | value);
        ++digits;
    }
    if (digits != 2 * kBytes) {
        return wrongUse(saying("\"%1\" is not an id", std::string(text.substr(0, 40))));
    }
    return RawId{bytes};
}

std::string RawId::hex() const {
    std::string out;
    out.reserve(2 * kBytes);
    for (const auto byte : bytes_) {
        out += kHex[byte >> 4];
        out += kHex[byte & 15];
    }
    return out;
}

std::string RawId::toString() const {
    const std::string all = hex();
    return all.substr(0, 8) + "-" + all.substr(8, 4) + "-" + all.substr(12, 4) + "-" +
           all.substr(16, 4) + "-" + all.substr(20);
}

RawId IdMaker::next(Instant now) {
    if (now.milliseconds() > lastMilliseconds_) {
        lastMilliseconds_ = now.milliseconds();
        counter_ = 0;
    } else if (++counter_ == 0x1000) {  // 4,096 in one millisecond: borrow the next one
        ++lastMilliseconds_;
        counter_ = 0;
    }
    std::array<std::uint8_t, RawId::kBytes> bytes{};
    random_(bytes.data() + 8, 8);
    for (std::size_t k = 0; k < 6; ++k) {
        bytes[k] = static_cast<std::uint8_t>(lastMilliseconds_ >> (8 * (5 - k)));
    }
    bytes[6] = static_cast<std::uint8_t>(0x70 | (counter_ >> 8));
    bytes[7] = static_cast<std::uint8_t>(counter_ & 0xff);
    bytes[8] = static_cast<std::uint8_t>((bytes[8] & 0x3f) | 0x80);
    return RawId{bytes};
}

}  // namespace ledgerboard::model
