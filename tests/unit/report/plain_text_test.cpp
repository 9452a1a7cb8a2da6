// Protects columns on a terminal: names of any script line up, nothing in a name can move the
// cursor, and a terminal without Unicode still shows something to read. Expected texts are written
// out by hand; widths follow Unicode's East Asian Width (UAX #11).
#include "core/report/plain_text.h"

#include <gtest/gtest.h>

namespace ledgerboard::report {

namespace {

TEST(ShownText, LeavesOrdinaryTextAlone) {
    EXPECT_EQ(shownText("Peña's bath, 3 × 4", Script::Unicode), "Peña's bath, 3 × 4");
    EXPECT_EQ(shownText("", Script::Unicode), "");
}

TEST(ShownText, TakesAccentsOffForAscii) {
    EXPECT_EQ(shownText("Peña, Łódź, crème brûlée", Script::Ascii), "Pena, Lodz, creme brulee");
    EXPECT_EQ(shownText("−420 “as is” – ½ … 漢", Script::Ascii), "-420 \"as is\" - 1/2 ... ?");
}

TEST(ShownText, SpellsALetterMadeOfTwoSigns) {
    // n followed by U+0303, the combining tilde
    EXPECT_EQ(shownText("Pen\xCC\x83"
                        "a",
                        Script::Ascii),
              "Pena");
}

TEST(ShownText, TurnsControlsIntoSpaces) {
    EXPECT_EQ(shownText("a\x1b[31mb\nc\td\x7f", Script::Unicode), "a [31mb c d ");
    // U+009B, a control sequence introducer in one letter; U+202E, right to left override
    EXPECT_EQ(shownText("a\xC2\x9B"
                        "b\xE2\x80\xAE"
                        "c",
                        Script::Unicode),
              "a b c");
}

TEST(ShownText, ReplacesWhatIsNotUtf8) {
    EXPECT_EQ(shownText("a\xFF"
                        "b",
                        Script::Unicode),
              "a\uFFFDb");
    EXPECT_EQ(shownText("caf\xC3", Script::Unicode), "caf\uFFFD");
    // an overlong slash and half of a surrogate pair: each byte on its own
    EXPECT_EQ(shownText("\xC0\xAF", Script::Ascii), "??");
    EXPECT_EQ(shownText("\xED\xA0\x80", Script::Ascii), "???");
}

TEST(ColumnsOf, CountsWideAndCombiningLetters) {
    EXPECT_EQ(columnsOf("Peña"), 4U);
    EXPECT_EQ(columnsOf("Pen\xCC\x83"
                        "a"),
              4U);
    EXPECT_EQ(columnsOf("漢字"), 4U);
    EXPECT_EQ(columnsOf("─│"), 2U);
}

TEST(Clipped, EndsWithAnEllipsisOnlyWhereItWasCut) {
    EXPECT_EQ(clipped("Kitchen", 7, Script::Unicode), "Kitchen");
    EXPECT_EQ(clipped("Kitchen", 6, Script::Unicode), "Kitch…");
    EXPECT_EQ(clipped("Kitchen", 6, Script::Ascii), "Kitch~");
    EXPECT_EQ(clipped("Hall bath", 6, Script::Unicode), "Hall…");
    EXPECT_EQ(clipped("漢字漢字", 4, Script::Unicode), "漢…");
    EXPECT_EQ(clipped("Kitchen", 0, Script::Unicode), "");
}

TEST(Padded, FillsByColumnsNotBytes) {
    EXPECT_EQ(padded("Peña", 6), "Peña  ");
    EXPECT_EQ(paddedLeft("−5", 4), "  −5");
    EXPECT_EQ(padded("Kitchen", 3), "Kitchen");
}

TEST(Wrapped, BreaksAtSpacesAndWithinWordsTooLong) {
    EXPECT_EQ(wrapped("one two three", 7), (std::vector<std::string>{"one two", "three"}));
    EXPECT_EQ(wrapped("abcdefghij k", 4), (std::vector<std::string>{"abcd", "efgh", "ij k"}));
    EXPECT_EQ(wrapped("", 4), (std::vector<std::string>{""}));
    EXPECT_EQ(wrapped("  a   b ", 9), (std::vector<std::string>{"a b"}));
    for (const auto& line : wrapped("漢字漢字漢字", 3)) {
        EXPECT_LE(columnsOf(line), 3U);
    }
}

}  // namespace

}  // namespace ledgerboard::report
