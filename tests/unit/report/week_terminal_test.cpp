// Protects the page on a terminal: it fits, it survives a terminal that can draw nothing, and it
// says the same as the HTML page. Lines are written out by hand from the figures of pages.cpp.
#include "core/report/week_terminal.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sstream>

#include "tests/unit/report/pages.h"

namespace ledgerboard::report {

namespace {

using ::testing::HasSubstr;
using ::testing::Not;

std::vector<std::string> linesOf(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream in(text);
    std::string line;
    while (std::getline(in, line)) {
        lines.push_back(line);
    }
    return lines;
}

std::vector<WeekPage> allPages() {
    return {test::fullPage(), test::emptyPage(), test::oneItemPage(), test::hostilePage()};
}

TEST(WeekText, NeverIsWiderThanTheTerminal) {
    for (const auto& page : allPages()) {
        for (const std::size_t width : {48U, 60U, 79U, 80U, 100U}) {
            for (const Script script : {Script::Unicode, Script::Ascii}) {
                for (const auto& line : linesOf(weekText(page, {width, script, false}))) {
                    EXPECT_LE(columnsOf(line), width) << line;
                }
            }
        }
    }
}

TEST(WeekText, IsPlainAsciiWhereAsked) {
    for (const auto& page : allPages()) {
        for (const char c : weekText(page, {80, Script::Ascii, false})) {
            EXPECT_TRUE(c == '\n' || (c >= 0x20 && c < 0x7F)) << static_cast<int>(c);
        }
    }
}

TEST(WeekText, IsBoldOnATerminalOnly) {
    EXPECT_EQ(weekText(test::hostilePage(), {80, Script::Unicode, false}).find('\x1b'),
              std::string::npos);
    EXPECT_THAT(weekText(test::fullPage(), {80, Script::Unicode, true}),
                HasSubstr("\x1b[1mMoney by trade\x1b[0m\n"));
}

TEST(WeekText, ReadsAsWritten) {
    const auto lines = linesOf(weekText(test::fullPage(), {80, Script::Ascii, false}));
    for (const char* line :
         {"14 Alder Street", "This week, to Friday 15 May 2026",
          "Week 6 of 8. Last review Fri 8 May.",
          "Will cost    123,320    2,140 over budget, was 900 over",
          "Will finish  Tue 2 Jun  2 working days late, was on time",
          "Will earn    50,100     15.0 % of resale, was 51,300; a day costs 68",
          "-3,350 less                                                          +3,350 more",
          ". planned 121,180 in all; o earned 91,420; + spent 94,860 so far",
          "Done 75 %, planned 79 %, spent 78 %, paid 72 % of budget.",
          "Porch/joists                                                              +1,180",
          "  change signed Wed 13 May, from contingency",
          "Since Fri 8 May                                                           +1,240",
          "Carpentry         24,180     21,000  22,300  1,410  20,890    25,460  over 1,280",
          "All              121,180    102,230  94,860  7,214  87,646   123,320  over 2,140",
          "HB Hall bath     =============------|------------   41 %    61 %    +1,280",
          "Tue 12 May  Order Hall bath/shower door (late)",
          "Fri 22 May  Pay Tile crew                                                  2,410",
          "no day yet  Inspection: final electrical",
          "Receipt, Corner hardware, 2026-05-03                             214.60, 12 days"}) {
        EXPECT_THAT(lines, ::testing::Contains(line));
    }
}

TEST(WeekText, SaysOnlyWhatIsKnown) {
    const std::string text = weekText(test::oneItemPage(), {80, Script::Ascii, false});
    EXPECT_THAT(text, HasSubstr("No baseline yet, so nothing to compare with."));
    EXPECT_THAT(text, HasSubstr("Will cost    0          no item is priced yet"));
    EXPECT_THAT(text, HasSubstr("Will finish  not known  no item has days"));
    EXPECT_THAT(text, HasSubstr("1 of 1 item has no planned dates"));
    EXPECT_THAT(text, Not(HasSubstr(", was")));
    EXPECT_THAT(text, Not(HasSubstr("Cash")));
    EXPECT_THAT(text, Not(HasSubstr("less than budget")));  // no budget, no level
}

TEST(WeekText, SaysWhatToDoWithAnEmptyJob) {
    EXPECT_EQ(weekText(test::emptyPage(), {80, Script::Ascii, false}),
              "New house\n"
              "This week, to Friday 15 May 2026\n"
              "No baseline yet, so nothing to compare with.\n"
              "\n"
              "Nothing is in the scope of work yet. Read walk notes into it with: ledgerboard\n"
              "read FILE --keep\n");
}

}  // namespace

}  // namespace ledgerboard::report
