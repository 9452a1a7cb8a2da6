// Protects a page from what people typed: nothing of it becomes markup. Base64 examples are those
// of RFC 4648, section 10.
#include "core/report/html_text.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>

namespace ledgerboard::report {

namespace {

TEST(HtmlText, EscapesEverythingThatCouldBeMarkup) {
    EXPECT_EQ(htmlText("<b a=\"1\" c='2'>&amp;"),
              "&lt;b a=&quot;1&quot; c=&#39;2&#39;&gt;&amp;amp;");
    EXPECT_EQ(htmlText("two\nlines \x1b"), "two lines  ");
    EXPECT_EQ(htmlText("Peña \xFF"), "Peña \uFFFD");
}

TEST(HtmlClipped, CutsBeforeItEscapes) {
    // An entity is never cut in two.
    EXPECT_EQ(htmlClipped("&&&&&", 3), "&amp;&amp;…");
    EXPECT_EQ(htmlClipped("abc", 3), "abc");
}

TEST(SvgNumber, IsShortAndAlwaysANumber) {
    EXPECT_EQ(svgNumber(12.5), "12.5");
    EXPECT_EQ(svgNumber(12.0), "12");
    EXPECT_EQ(svgNumber(1.0 / 3), "0.33");
    EXPECT_EQ(svgNumber(-0.001), "0");
    EXPECT_EQ(svgNumber(100), "100");
    EXPECT_EQ(svgNumber(std::nan("")), "0");
    EXPECT_EQ(svgNumber(std::numeric_limits<double>::infinity()), "0");
    EXPECT_EQ(svgNumber(1e300), "0");
}

TEST(Base64, IsThatOfTheStandard) {
    EXPECT_EQ(base64(""), "");
    EXPECT_EQ(base64("f"), "Zg==");
    EXPECT_EQ(base64("fo"), "Zm8=");
    EXPECT_EQ(base64("foo"), "Zm9v");
    EXPECT_EQ(base64("foob"), "Zm9vYg==");
    EXPECT_EQ(base64("fooba"), "Zm9vYmE=");
    EXPECT_EQ(base64("foobar"), "Zm9vYmFy");
    EXPECT_EQ(base64(std::string("\xFF\x00\xFE", 3)), "/wD+");
}

}  // namespace

}  // namespace ledgerboard::report
