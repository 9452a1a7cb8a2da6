#include "core/model/utf8.h"

#include <cstddef>

namespace ledgerboard::model {

namespace {

// How long the sequence beginning with `lead` is, and between which bounds its second byte lies.
struct Sequence {
    std::size_t length;  // 0: no sequence begins so
    unsigned char low = 0x80;
    unsigned char high = 0xBF;
};

Sequence sequenceOf(unsigned char lead) {
    if (lead < 0x80) {
        return {1};
    }
    if (lead >= 0xC2 && lead <= 0xDF) {
        return {2};
    }
    if (lead >= 0xE0 && lead <= 0xEF) {
        return {3, static_cast<unsigned char>(lead == 0xE0 ? 0xA0 : 0x80),
                static_cast<unsigned char>(lead == 0xED ? 0x9F : 0xBF)};
    }
    if (lead >= 0xF0 && lead <= 0xF4) {
        return {4, static_cast<unsigned char>(lead == 0xF0 ? 0x90 : 0x80),
                static_cast<unsigned char>(lead == 0xF4 ? 0x8F : 0xBF)};
    }
    return {0};
}

}  // namespace

bool isUtf8(std::string_view text) {
    std::size_t at = 0;
    while (at < text.size()) {
        const Sequence sequence = sequenceOf(static_cast<unsigned char>(text[at]));
        if (sequence.length == 0 || at + sequence.length > text.size()) {
            return false;
        }
        for (std::size_t k = 1; k < sequence.length; ++k) {
            const auto byte = static_cast<unsigned char>(text[at + k]);
            const unsigned char low = k == 1 ? sequence.low : 0x80;
            const unsigned char high = k == 1 ? sequence.high : 0xBF;
            if (byte < low || byte > high) {
                return false;
            }
        }
        at += sequence.length;
    }
    return true;
}

}  // namespace ledgerboard::model
