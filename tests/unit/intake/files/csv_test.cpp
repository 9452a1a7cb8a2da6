// Protects: rows and cells come out of a CSV file as its writer meant them, each with the line it
// begins on, and what is no such file is refused with a way to mend it.
#include "core/intake/files/csv.h"

#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/fixed_chance.h"

namespace ledgerboard::intake {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

CsvTable good(std::string_view text) {
    auto read = readCsv(text, "rows.csv");
    EXPECT_TRUE(read.ok()) << read.error().message;
    return read.ok() ? std::move(read).value() : CsvTable{};
}

std::string refusal(std::string_view text) {
    const auto read = readCsv(text, "rows.csv");
    EXPECT_FALSE(read.ok()) << text.substr(0, 60);
    return read.ok() ? "" : read.error().message;
}

TEST(CsvTest, ReadsCellsAndTheLinesOfRows) {
    const auto table = good("A,B\n1,2\n\n  \n3, x y \n");
    EXPECT_THAT(table.headings.cells, ElementsAre("A", "B"));
    ASSERT_EQ(table.rows.size(), 2U);
    EXPECT_EQ(table.rows[0].line, 2);
    EXPECT_THAT(table.rows[0].cells, ElementsAre("1", "2"));
    EXPECT_EQ(table.rows[1].line, 5);
    EXPECT_THAT(table.rows[1].cells, ElementsAre("3", "x y"));
}

TEST(CsvTest, KnowsTheSeparator) {
    EXPECT_THAT(good("A;B\n1,5;2\n").rows[0].cells, ElementsAre("1,5", "2"));
    EXPECT_THAT(good("A\tB\n1\t2\n").rows[0].cells, ElementsAre("1", "2"));
    EXPECT_THAT(good("\"A;1;2\",B\n1,2\n").headings.cells, ElementsAre("A;1;2", "B"));
    EXPECT_THAT(good("A\n1;2\n").rows[0].cells, ElementsAre("1;2"));
    const auto said = good("sep=;\r\nA,x;B\r\n1;2\r\n");
    EXPECT_EQ(said.separator, ';');
    EXPECT_THAT(said.headings.cells, ElementsAre("A,x", "B"));
    EXPECT_EQ(said.rows[0].line, 3);
}

TEST(CsvTest, TakesEveryLineEnd) {
    for (const auto* text : {"A,B\r\n1,2\r\n3,4", "A,B\n1,2\n3,4\n", "A,B\r1,2\r3,4\r"}) {
        const auto table = good(text);
        ASSERT_EQ(table.rows.size(), 2U) << text;
        EXPECT_EQ(table.rows[1].line, 3) << text;
        EXPECT_THAT(table.rows[1].cells, ElementsAre("3", "4")) << text;
    }
}

TEST(CsvTest, TakesQuotedBreaksSeparatorsAndQuotes) {
    const auto table = good("A,B\r\n\"one\r\ntwo, three\",\"say \"\"so\"\"\"\r\n4,5\r\n");
    ASSERT_EQ(table.rows.size(), 2U);
    EXPECT_THAT(table.rows[0].cells, ElementsAre("one\r\ntwo, three", "say \"so\""));
    EXPECT_EQ(table.rows[0].line, 2);
    EXPECT_EQ(table.rows[1].line, 4);
}

TEST(CsvTest, AQuotationMarkInAnUnquotedCellMeansInches) {
    EXPECT_THAT(good("A,B\n3/4\" trim,2\" pipe\n").rows[0].cells,
                ElementsAre("3/4\" trim", "2\" pipe"));
}

TEST(CsvTest, TakesAByteOrderMark) {
    EXPECT_THAT(good("\xEF\xBB\xBF"
                     "A,B\n1,2\n")
                    .headings.cells,
                ElementsAre("A", "B"));
    EXPECT_THAT(good("\xEF\xBB\xBFsep=;\nA;B\n").headings.cells, ElementsAre("A", "B"));
}

TEST(CsvTest, FillsShortRowsAndDropsEmptyCellsBeyondTheHeadings) {
    const auto table = good("A,B,C\n1\n1,2,3,,\n,,\n");
    ASSERT_EQ(table.rows.size(), 2U);
    EXPECT_THAT(table.rows[0].cells, ElementsAre("1", "", ""));
    EXPECT_THAT(table.rows[1].cells, ElementsAre("1", "2", "3"));
}

TEST(CsvTest, RefusesRowsWithMoreCellsThanHeadings) {
    const auto message = refusal("A,B\n1,2\n1,2,3\n1,2\n1,2,3,4\n");
    EXPECT_THAT(message, HasSubstr("rows.csv:3: has 3 cells under 2 headings"));
    EXPECT_THAT(message, HasSubstr("rows.csv:5: has 4 cells under 2 headings"));
    EXPECT_THAT(message, HasSubstr("put quotation marks around"));
}

TEST(CsvTest, RefusesWhatIsNoText) {
    using std::string_view_literals::operator""sv;
    EXPECT_THAT(refusal("A,B\n1,\0002\n"sv), HasSubstr("rows.csv:2: holds bytes that no text has"));
    EXPECT_THAT(refusal("\xFF\xFE"
                        "A\0,\0"sv),
                HasSubstr("UTF-16"));
    EXPECT_THAT(refusal("\xFE\xFF\0A\0,"sv), HasSubstr("save it again as \"CSV UTF-8\""));
    EXPECT_THAT(refusal("PK\x03\x04 and so on"), HasSubstr("a spreadsheet or a zip"));
    EXPECT_THAT(refusal("A,B\nca\xF1on,2\n"), HasSubstr("rows.csv:2: is not UTF-8"));
    EXPECT_THAT(refusal("A,B\n\x1B[31m,2\n"), HasSubstr("rows.csv:2: holds bytes"));
}

TEST(CsvTest, RefusesQuotationMarksThatDoNotClose) {
    EXPECT_THAT(refusal("A,B\n1,2\n\"3,4\n5,6\n"),
                HasSubstr("rows.csv:3: a quotation mark opened in this row is never closed"));
    EXPECT_THAT(
        refusal("A,B\n1,2\n\"3/4\" trim\",4\n"),
        HasSubstr("rows.csv:3: a quotation mark inside a quoted cell must be written twice"));
}

TEST(CsvTest, RefusesNothingAndTooMuch) {
    EXPECT_THAT(refusal(""), HasSubstr("is empty"));
    EXPECT_THAT(refusal("\n\n  \n"), HasSubstr("is empty"));
    EXPECT_THAT(refusal(std::string(kLargestFile + 1, 'x')), HasSubstr("larger than 64 MiB"));
    EXPECT_THAT(refusal(std::string(300, ',') + "x\n"), HasSubstr("more than 256 columns"));
    std::string rows = "A\n";
    for (std::size_t k = 0; k < kMostRows; ++k) {
        rows += "1\n";
    }
    EXPECT_EQ(good(rows + "\n").rows.size(), kMostRows);
    EXPECT_THAT(refusal(rows + "1\n"), HasSubstr("more than 100,000 rows"));
}

TEST(CsvTest, ReadsWholeFilesAndSaysWhatIsNone) {
    const tests::TestFolder folder("csv");
    EXPECT_THAT(readWholeFile(folder.file("no.csv")).error().message,
                HasSubstr("there is no such file"));
    EXPECT_THAT(readWholeFile(folder.path().string()).error().message, HasSubstr("is a folder"));
    std::ofstream(folder.file("a.csv")) << "A\n1\n";
    EXPECT_EQ(readWholeFile(folder.file("a.csv")).value(), "A\n1\n");
}

}  // namespace
}  // namespace ledgerboard::intake
