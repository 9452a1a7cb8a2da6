#include "core/report/html_text.h"

#include <array>
#include <charconv>
#include <cmath>
#include <cstdint>

#include "core/report/plain_text.h"

namespace ledgerboard::report {

namespace {

std::string escaped(std::string_view shown) {
    std::string out;
    out.reserve(shown.size());
    for (const char c : shown) {
        switch (c) {
            case '&':
                out += "&amp;";
                break;
            case '<':
                out += "&lt;";
                break;
            case '>':
                out += "&gt;";
                break;
            case '"':
                out += "&quot;";
                break;
            case '\'':
                out += "&#39;";
                break;
            default:
                out += c;
        }
    }
    return out;
}

}  // namespace

std::string htmlText(std::string_view text) {
    return escaped(shownText(text, Script::Unicode));
}

std::string htmlClipped(std::string_view text, std::size_t letters) {
    return escaped(clipped(shownText(text, Script::Unicode), letters, Script::Unicode));
}

std::string svgNumber(double value) {
    if (!std::isfinite(value)) {
        return "0";
    }
    std::array<char, 64> text{};
    const double rounded = std::round(value * 100) / 100;
    const auto end =
        std::to_chars(text.data(), text.data() + text.size(), rounded, std::chars_format::fixed, 2);
    if (end.ec != std::errc{}) {
        return "0";
    }
    std::string out(text.data(), end.ptr);
    while (out.back() == '0') {
        out.pop_back();
    }
    if (out.back() == '.') {
        out.pop_back();
    }
    return out == "-0" ? "0" : out;
}

std::string base64(std::string_view bytes) {
    constexpr std::string_view kLetters =
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    std::string out;
    out.reserve((bytes.size() + 2) / 3 * 4);
    for (std::size_t at = 0; at < bytes.size(); at += 3) {
        std::uint32_t group = 0;
        for (std::size_t k = 0; k < 3; ++k) {
            const bool isThere = at + k < bytes.size();
            group = (group << 8) | (isThere ? static_cast<unsigned char>(bytes[at + k]) : 0U);
        }
        for (std::size_t k = 0; k < 4; ++k) {
            const bool isPadding = at + k > bytes.size();
            out += isPadding ? '=' : kLetters[(group >> (18 - 6 * k)) & 63U];
        }
    }
    return out;
}

}  // namespace ledgerboard::report
