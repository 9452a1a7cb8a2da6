// Protects that everything on a page can be read: text against its ground, in the light and in the
// dark, and letters on the chip of a space whatever colour a person gave it. The measure is WCAG
// 2.2, success criterion 1.4.3: 4.5 to 1.
#include "core/report/theme.h"

#include <gtest/gtest.h>

#include "core/report/week_css.h"

namespace ledgerboard::report {

namespace {

constexpr double kLeast = 4.5;

TEST(Contrast, IsThatOfTheStandard) {
    // WCAG 2.2: black on white is 21 to 1, a colour on itself 1 to 1.
    EXPECT_NEAR(contrast("#000000", "#FFFFFF"), 21.0, 1e-9);
    EXPECT_NEAR(contrast("#2F5673", "#2F5673"), 1.0, 1e-9);
    // #777777 on white, a widely printed example of just failing: 4.48
    EXPECT_NEAR(contrast("#777777", "#FFFFFF"), 4.48, 0.005);
}

TEST(Theme, EveryTextCanBeReadOnEveryGround) {
    for (const Theme& theme : {kLight, kDark}) {
        for (const auto ground : {theme.paper, theme.plaster}) {
            for (const auto text :
                 {theme.ink, theme.pencil, theme.slate, theme.moss, theme.ochre, theme.brick}) {
                EXPECT_GE(contrast(text, ground), kLeast) << text << " on " << ground;
            }
        }
    }
}

TEST(Theme, PrintedTextCanBeReadOnWhitePaper) {
    for (const auto text :
         {kLight.ink, kLight.pencil, kLight.slate, kLight.moss, kLight.ochre, kLight.brick}) {
        EXPECT_GE(contrast(text, "#FFFFFF"), kLeast) << text;
    }
}

TEST(Theme, IsWhatTheStyleSheetUses) {
    const std::string css = weekCss();
    for (const Theme& theme : {kLight, kDark}) {
        for (const auto colour : {theme.paper, theme.ink, theme.brick}) {
            EXPECT_NE(css.find(colour), std::string::npos);
        }
    }
    EXPECT_EQ(css.find('<'), std::string::npos);
    EXPECT_EQ(css.find("url("), std::string::npos);
    EXPECT_EQ(css.find("@import"), std::string::npos);
}

TEST(IsColour, TakesSixHexDigitsOnly) {
    EXPECT_TRUE(isColour("#8a5F00"));
    for (const char* bad : {"", "#", "8a5f00", "#8a5f0", "#8a5f000", "#8a5f0g", "red", "#8a5f0;"}) {
        EXPECT_FALSE(isColour(bad)) << bad;
    }
}

TEST(ChipFor, CanBeReadWhateverTheColour) {
    for (const char* swatch : {"#FFFFFF", "#000000", "#777777", "#FF0000", "#808000", "none", ""}) {
        for (std::size_t place = 0; place < 20; ++place) {
            const Chip chip = chipFor(swatch, place);
            ASSERT_TRUE(isColour(chip.ground));
            EXPECT_GE(contrast(chip.text, chip.ground), kLeast) << swatch << " at " << place;
        }
    }
    EXPECT_EQ(chipFor("#123456", 0).ground, "#123456");
}

}  // namespace

}  // namespace ledgerboard::report
