// Protects tables as `list` prints them and the CSV that `give` writes. Expected lines are written
// out by hand; CSV rules are those of RFC 4180, section 2.
#include "core/report/table.h"

#include <gtest/gtest.h>
#include <sstream>

namespace ledgerboard::report {

namespace {

Table scope() {
    Table table;
    table.columns = {{"Space", false}, {"Object", false}, {"Cost", true}};
    table.rows = {{"Kitchen", "cabinets", "8,400"}, {"Baño", "wall tile", "950"}};
    return table;
}

void expectNoWiderThan(const std::string& text, std::size_t width) {
    std::istringstream in(text);
    std::string line;
    while (std::getline(in, line)) {
        EXPECT_LE(columnsOf(line), width) << line;
    }
}

TEST(PrintTable, LinesUpByColumnsWithFiguresAtTheRight) {
    EXPECT_EQ(printTable(scope(), {}),
              "Space    Object      Cost\n"
              "─────────────────────────\n"
              "Kitchen  cabinets   8,400\n"
              "Baño     wall tile    950\n");
}

TEST(PrintTable, IsPlainWhereAsked) {
    EXPECT_EQ(printTable(scope(), {80, Script::Ascii, false}),
              "Space    Object      Cost\n"
              "-------------------------\n"
              "Kitchen  cabinets   8,400\n"
              "Bano     wall tile    950\n");
}

TEST(PrintTable, BoldsTheHeadingsOnATerminalOnly) {
    EXPECT_EQ(printTable(scope(), {80, Script::Unicode, true}).substr(0, 4), "\x1b[1m");
    EXPECT_EQ(printTable(scope(), {}).find('\x1b'), std::string::npos);
}

TEST(PrintTable, WrapsTheWidestTextFirst) {
    Table table = scope();
    table.rows[0][1] = "wall cabinets with doors";
    EXPECT_EQ(printTable(table, {30, Script::Ascii, false}),
              "Space    Object           Cost\n"
              "------------------------------\n"
              "Kitchen  wall cabinets   8,400\n"
              "         with doors\n"
              "Bano     wall tile         950\n");
}

TEST(PrintTable, ClosesUpBeforeItBreaksWords) {
    // Words of 7, 10 and figures of 5 need 22 columns, and one space between each two: 24.
    Table table = scope();
    table.rows[0][1] = "wall appliances";
    table.rows[1][1] = "tile";
    EXPECT_EQ(printTable(table, {24, Script::Ascii, false}),
              "Space   Object      Cost\n"
              "------------------------\n"
              "Kitchen wall       8,400\n"
              "        appliances\n"
              "Bano    tile         950\n");
    EXPECT_EQ(printTable(table, {23, Script::Ascii, false}),
              "Space   Object     Cost\n"
              "-----------------------\n"
              "Kitchen wall      8,400\n"
              "        appliance\n"
              "        s\n"
              "Bano    tile        950\n");
}

TEST(PrintTable, BreaksHeadingsOfFiguresAtSpaces) {
    Table table;
    table.columns = {{"Trade", false}, {"Budget now", true}};
    table.rows = {{"Tile", "12,600"}};
    EXPECT_EQ(printTable(table, {80, Script::Ascii, false}),
              "       Budget\n"
              "Trade     now\n"
              "-------------\n"
              "Tile   12,600\n");
}

TEST(PrintTable, SetsATotalOff) {
    Table table = scope();
    table.endsWithTotal = true;
    table.rows.push_back({"All", "", "9,350"});
    EXPECT_EQ(printTable(table, {80, Script::Ascii, false}),
              "Space    Object      Cost\n"
              "-------------------------\n"
              "Kitchen  cabinets   8,400\n"
              "Bano     wall tile    950\n"
              "-------------------------\n"
              "All                 9,350\n");
}

TEST(PrintTable, TurnsToListsWhereNothingElseFits) {
    Table table;
    for (int k = 0; k < 12; ++k) {
        table.columns.push_back({"Heading " + std::to_string(k), false});
    }
    table.rows = {std::vector<std::string>(12, "a cell"), std::vector<std::string>(12, "another")};
    const std::string text = printTable(table, {40, Script::Ascii, false});
    expectNoWiderThan(text, 40);
    EXPECT_EQ(text.substr(0, 38), "Heading 0: a cell\nHeading 1: a cell\nHe");
    EXPECT_NE(text.find("\n\nHeading 0: another\n"), std::string::npos);
}

TEST(PrintTable, NeverGrowsWiderThanAsked) {
    Table table = scope();
    table.columns.push_back({"Note", false});
    table.rows[0].push_back(std::string(400, 'x') + " " + std::string(300, 'y'));
    table.rows[1].push_back(
        "漢字漢字漢字漢字漢字漢字漢字漢字漢字漢字漢字漢字漢字漢字漢字漢字漢字漢字漢字");
    for (const std::size_t width : {20U, 33U, 47U, 80U, 200U}) {
        expectNoWiderThan(printTable(table, {width, Script::Unicode, false}), width);
        expectNoWiderThan(printTable(table, {width, Script::Ascii, false}), width);
    }
}

TEST(PrintTable, LeavesOutColumnsThatAreEmptyThroughout) {
    Table table = scope();
    table.rows[0][1].clear();
    table.rows[1][1].clear();
    EXPECT_EQ(printTable(table, {80, Script::Ascii, false}),
              "Space     Cost\n"
              "--------------\n"
              "Kitchen  8,400\n"
              "Bano       950\n");
}

TEST(PrintTable, ShowsHeadingsOfAnEmptyTable) {
    Table table = scope();
    table.rows.clear();
    EXPECT_EQ(printTable(table, {80, Script::Ascii, false}),
              "Space  Object  Cost\n"
              "-------------------\n");
    EXPECT_EQ(printTable(Table{}, {}), "");
}

TEST(PrintTable, CannotBeMadeToWriteControls) {
    Table table = scope();
    table.rows[0][0] = "\x1b[2JKitchen\r\n";
    EXPECT_EQ(printTable(table, {}).find('\x1b'), std::string::npos);
    EXPECT_EQ(printTable(table, {}).find('\r'), std::string::npos);
}

TEST(PrintCsv, QuotesWhatNeedsIt) {
    Table table = scope();
    table.rows = {{"Kitchen, front", "\"old\" cabinets", "8400.00"}, {"Bath", "two\nlines", "-5"}};
    EXPECT_EQ(printCsv(table),
              "Space,Object,Cost\r\n"
              "\"Kitchen, front\",\"\"\"old\"\" cabinets\",8400.00\r\n"
              "Bath,\"two\nlines\",-5\r\n");
}

TEST(PrintCsv, KeepsTextFromBecomingAFormula) {
    Table table = scope();
    table.rows = {{"=1+2", "@sum", "-420.00"}, {"+x", "-y", "=3"}};
    EXPECT_EQ(printCsv(table),
              "Space,Object,Cost\r\n"
              "'=1+2,'@sum,-420.00\r\n"
              "'+x,'-y,=3\r\n");
}

TEST(PrintCsv, HoldsEveryColumnEvenEmptyOnes) {
    Table table = scope();
    table.rows = {{"", "", ""}};
    EXPECT_EQ(printCsv(table), "Space,Object,Cost\r\n,,\r\n");
}

}  // namespace

}  // namespace ledgerboard::report
