// Protects that everything on a screen can be read: each pair of text and ground that the screens
// use has the contrast of WCAG 2.2, success criterion 1.4.3 (4.5:1), and in the sun that of 1.4.6
// (7:1). The contrast itself is checked against the standard by tests/unit/report.
#include "core/qml/look_tokens.h"

#include <gtest/gtest.h>

namespace ledgerboard::qml {
namespace {

struct Pair {
    const char* what;
    std::string_view text;
    std::string_view ground;
};

std::vector<Pair> pairsOf(const LookTokens& look) {
    const report::Theme& page = look.page;
    std::vector<Pair> pairs;
    for (const auto ground : {page.paper, page.plaster}) {
        pairs.push_back({"ink", page.ink, ground});
        pairs.push_back({"pencil", page.pencil, ground});
        pairs.push_back({"slate", page.slate, ground});
        pairs.push_back({"moss", page.moss, ground});
        pairs.push_back({"ochre", page.ochre, ground});
        pairs.push_back({"brick", page.brick, ground});
    }
    pairs.push_back({"a filled button", page.paper, page.ink});
    pairs.push_back({"finished", page.paper, page.moss});
    pairs.push_back({"text selected", page.paper, page.slate});
    pairs.push_back({"the tool in use", look.belt, look.beltInk});
    pairs.push_back({"the belt", look.beltInk, look.belt});
    pairs.push_back({"a tool of the belt", look.beltInk, look.beltTool});
    return pairs;
}

void expectContrast(const LookTokens& look, double least) {
    for (const auto& pair : pairsOf(look)) {
        EXPECT_GE(report::contrast(pair.text, pair.ground), least)
            << pair.what << ": " << pair.text << " on " << pair.ground;
    }
}

TEST(LookTokens, EveryTextIsReadableInTheLight) {
    expectContrast(kLightLook, 4.5);
}

TEST(LookTokens, EveryTextIsReadableInTheDark) {
    expectContrast(kDarkLook, 4.5);
}

TEST(LookTokens, InTheSunItIsBlackOnWhite) {
    expectContrast(kSunLook, 7.0);
    EXPECT_EQ(kSunLook.page.ink, "#000000");
    EXPECT_EQ(kSunLook.page.paper, "#FFFFFF");
    EXPECT_GT(kSunLook.stroke, kLightLook.stroke);
    EXPECT_GT(kSunLook.hairline, kLightLook.hairline);
}

TEST(LookTokens, TheThumbHasRoom) {
    EXPECT_GE(kTarget, 48);
    EXPECT_GE(kBeltTarget, 56);
    EXPECT_LT(kMotionMs, 200);
}

}  // namespace
}  // namespace ledgerboard::qml
