// Which colours does a page have, on light paper and in the dark?
//
// Every text colour meets a contrast of 4.5:1 on both grounds (WCAG 2.2, success criterion 1.4.3);
// a test computes it from these tokens. Nothing on a page is told by colour alone.
#pragma once

#include <string>
#include <string_view>

namespace ledgerboard::report {

// Colours as "#RRGGBB".
struct Theme {
    std::string_view paper;    // ground
    std::string_view plaster;  // raised areas
    std::string_view ink;      // text
    std::string_view pencil;   // secondary text
    std::string_view rule;     // hairlines
    std::string_view slate;    // what is planned; links
    std::string_view moss;     // earned and finished work
    std::string_view ochre;    // wood and paper accents
    std::string_view brick;    // hazards and barred payments, nothing else
};

inline constexpr Theme kLight = {"#FBF8F2", "#EFE8DC", "#20262B", "#5B5F60", "#D8D0C2",
                                 "#2F5673", "#47673A", "#8A5F00", "#9C3D2A"};
inline constexpr Theme kDark = {"#1B1E20", "#262A2D", "#ECE7DD", "#A9A59B", "#3A3E41",
                                "#8FB6D3", "#9CC08B", "#E0B24A", "#E08B76"};

// True for "#" and six hex digits. What a person entered as a colour is used only then.
[[nodiscard]] bool isColour(std::string_view text);

// Contrast of two colours, 1 to 21. Source: WCAG 2.2, "contrast ratio" and "relative luminance".
// Requires: both isColour.
[[nodiscard]] double contrast(std::string_view one, std::string_view other);

// The chip of a space: its own colour where it has one, else one of a few by its place on the page,
// and the text colour (light or dark) that is the easier to read on it.
struct Chip {
    std::string ground;
    std::string text;
};

[[nodiscard]] Chip chipFor(std::string_view swatch, std::size_t place);

}  // namespace ledgerboard::report
