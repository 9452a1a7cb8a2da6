#include "core/report/theme.h"

#include <array>
#include <cmath>

#include "core/model/check.h"

namespace ledgerboard::report {

namespace {

constexpr std::array<std::string_view, 8> kChips = {"#8A5545", "#4A6E8A", "#7A6A12", "#7A6488",
                                                    "#566B45", "#8A5A22", "#3F7069", "#6B6258"};

int hexDigit(char c) {
    if (c >= '0' && c <= '9') {
        return c - '0';
    }
    return c >= 'a' && c <= 'f' ? c - 'a' + 10 : c >= 'A' && c <= 'F' ? c - 'A' + 10 : -1;
}

double luminance(std::string_view colour) {
    auto channel = [colour](std::size_t at) {
        const double share = (hexDigit(colour[at]) * 16 + hexDigit(colour[at + 1])) / 255.0;
        return share <= 0.04045 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
}

}  // namespace

bool isColour(std::string_view text) {
    if (text.size() != 7 || text[0] != '#') {
        return false;
    }
    for (const char c : text.substr(1)) {
        if (hexDigit(c) < 0) {
            return false;
        }
    }
    return true;
}

double contrast(std::string_view one, std::string_view other) {
    model::require(isColour(one) && isColour(other), "contrast is taken of #RRGGBB colours");
    const double a = luminance(one);
    const double b = luminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

Chip chipFor(std::string_view swatch, std::size_t place) {
    const std::string ground(isColour(swatch) ? swatch : kChips.at(place % kChips.size()));
    const bool lightReads = contrast(ground, "#FFFFFF") >= contrast(ground, "#000000");
    return {ground, lightReads ? "#FFFFFF" : "#000000"};
}

}  // namespace ledgerboard::report
