// Protects the drawings on a terminal: the bubble stays in its vial, the notch on its tape, and a
// terminal that shows ASCII alone gets nothing else. Expected drawings are counted out by hand.
#include "core/report/letter_art.h"

#include <gtest/gtest.h>

#include "core/report/plain_text.h"

#include "tests/unit/report/pages.h"

namespace ledgerboard::report {

namespace {

using model::Money;
using model::Percent;

bool isAscii(const std::string& text) {
    for (const char c : text) {
        if (static_cast<unsigned char>(c) > 0x7E || static_cast<unsigned char>(c) < 0x20) {
            return false;
        }
    }
    return true;
}

TEST(LevelLines, CentresTheBubbleWhereForecastIsBudget) {
    // 40 places inside; the hairlines at a quarter and three quarters of the way.
    const Level level{Money{}, Money::of(50), Money::of(100), true};
    EXPECT_EQ(levelLines(level, 42, Script::Ascii),
              (std::vector<std::string>{"[          |       (__)       |          ]"}));
}

TEST(LevelLines, DriftsTowardTheHeavierSide) {
    auto bubbleAt = [](std::int64_t over) {
        return levelLines({Money::of(over), Money::of(20), Money::of(100), true}, 80,
                          Script::Ascii)[0]
            .find('(');
    };
    EXPECT_LT(bubbleAt(-50), bubbleAt(0));
    EXPECT_LT(bubbleAt(0), bubbleAt(50));
    // beyond an end it stays there, whole
    EXPECT_EQ(bubbleAt(100'000), bubbleAt(100));
    EXPECT_EQ(bubbleAt(-100'000), 1U);
}

TEST(LevelLines, AreAllAsWideAsAsked) {
    for (const std::size_t columns : {12U, 13U, 48U, 80U, 100U}) {
        for (const std::int64_t over : {-1'000'000, -1, 0, 7, 1'000'000}) {
            const Level level{Money::of(over), Money::of(5), Money::of(10), true};
            for (const Script script : {Script::Unicode, Script::Ascii}) {
                for (const auto& line : levelLines(level, columns, script)) {
                    EXPECT_EQ(columnsOf(line), columns);
                    EXPECT_TRUE(script == Script::Unicode || isAscii(line));
                }
            }
        }
    }
}

TEST(TapeLine, DrawsTheBladeAndTheNotch) {
    EXPECT_EQ(tapeLine(Percent::of(50), Percent::of(75), 8, Script::Ascii), "====-|--");
    EXPECT_EQ(tapeLine(Percent::of(0), {}, 8, Script::Ascii), "--------");
    EXPECT_EQ(tapeLine(Percent::whole(), Percent::whole(), 8, Script::Ascii), "=======|");
    EXPECT_EQ(tapeLine(Percent::of(50), Percent{}, 8, Script::Unicode), "┃━━━────");
}

TEST(TapeLine, StaysOnTheRuleWhateverTheFigures) {
    for (const std::int64_t done : {-500, 0, 1, 99, 100, 900}) {
        for (const std::int64_t planned : {-500, 0, 100, 900}) {
            EXPECT_EQ(
                columnsOf(tapeLine(Percent::of(done), Percent::of(planned), 10, Script::Unicode)),
                10U);
        }
    }
}

TEST(CurveLines, ReachTheFiguresAtTheEnds) {
    const auto lines = curveLines(test::fullPage(), 80, 11, Script::Ascii);
    ASSERT_EQ(lines.size(), 13U);
    // 125,000 at the top and 121,180 planned at the end: nearest row the top one, last column
    EXPECT_EQ(lines[0].substr(0, 6), "125k +");
    EXPECT_EQ(lines[0].back(), '.');
    EXPECT_EQ(lines[10].substr(0, 6), "   0 +");
    EXPECT_EQ(lines[12].substr(6, 5), "3 Apr");
    // today's line stands where nothing else does
    EXPECT_NE(lines[0].find('|'), std::string::npos);
}

TEST(CurveLines, AreNoWiderThanAskedAndPlainWhereAsked) {
    for (const auto& page : {test::fullPage(), test::hostilePage()}) {
        for (const std::size_t columns : {40U, 48U, 80U, 100U}) {
            for (const auto& line : curveLines(page, columns, 11, Script::Ascii)) {
                EXPECT_LE(line.size(), columns);
                EXPECT_TRUE(isAscii(line));
            }
        }
    }
}

TEST(CurveLines, AreNoneWhereThereIsNothing) {
    EXPECT_TRUE(curveLines(test::emptyPage(), 80, 11, Script::Unicode).empty());
    EXPECT_TRUE(curveLines(test::oneItemPage(), 80, 11, Script::Unicode).empty());
}

}  // namespace

}  // namespace ledgerboard::report
