// Which colours, sizes and gaps do the screens have, in the light, in the dark and out in the sun?
//
// The page's own colours (core/report/theme.h) and what only a screen needs: a third theme for
// noon, and the belt of tools along the bottom. Every text and ground pair meets 4.5:1 (WCAG 2.2,
// success criterion 1.4.3), in the sun 7:1 (1.4.6); a test computes it from these tokens.
// Units: pixels at 100 %.
// Source: project decision.
#pragma once

#include <array>
#include <string_view>

#include "core/report/theme.h"

namespace ledgerboard::qml {

struct LookTokens {
    report::Theme page;
    std::string_view belt;      // ground under the tools
    std::string_view beltTool;  // a tool
    std::string_view beltInk;   // its name and glyph
    int hairline;
    int stroke;  // of outlines and glyphs
};

// Black on white and nothing else: at noon a hue is not seen.
inline constexpr report::Theme kSun = {"#FFFFFF", "#FFFFFF", "#000000", "#000000", "#000000",
                                       "#000000", "#000000", "#000000", "#000000"};

inline constexpr LookTokens kLightLook = {report::kLight, "#20262B", "#31393F", "#FBF8F2", 1, 2};
inline constexpr LookTokens kDarkLook = {report::kDark, "#121415", "#2C3134", "#ECE7DD", 1, 2};
inline constexpr LookTokens kSunLook = {kSun, "#000000", "#000000", "#FFFFFF", 2, 3};

// The only sizes of type: small, body, large, title, figure.
inline constexpr std::array<int, 5> kTypeSizes = {13, 16, 20, 28, 40};
// All gaps are multiples of it.
inline constexpr int kGap = 4;
// The least that a thumb is given, and the height of the belt's tools.
inline constexpr int kTarget = 48;
inline constexpr int kBeltTarget = 64;
// Longest movement on a screen, in milliseconds.
inline constexpr int kMotionMs = 160;

}  // namespace ledgerboard::qml
