// Protects: any paper becomes a whole PDF, whatever was typed and however much of it there is; the
// same paper is the same bytes. What is read off the pages is held against --json from outside, by
// tests/try/papers.py. How: papers by hand.
#include "core/paper/pdf.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace ledgerboard::paper {
namespace {

using testing::HasSubstr;
using testing::StartsWith;

Paper paperWith(std::vector<Block> blocks) {
    return {"A paper", "14 Quince Row", model::Date::fromYmd(2026, 5, 22).value(), false,
            std::move(blocks)};
}

std::string made(const Paper& paper, Size size = Size::Letter) {
    auto bytes = pdfBytes(paper, size);
    EXPECT_TRUE(bytes.ok());
    return bytes.ok() ? bytes.value() : "";
}

std::size_t pagesOf(const std::string& pdf) {
    // ISO 32000-1, 7.7.3.3: a page is a dictionary of type Page; cairo writes its number behind.
    std::size_t count = 0;
    for (std::size_t at = pdf.find("/Type /Page %"); at != std::string::npos;
         at = pdf.find("/Type /Page %", at + 1)) {
        ++count;
    }
    return count;
}

Table tableOf(std::size_t rows, const std::string& text) {
    Table table{{{"What", Fit::Words, 1}, {"How much", Fit::Figure, 1}}, {}, true, false};
    for (std::size_t k = 0; k < rows; ++k) {
        Cell what;
        what.text = text;
        Cell much;
        much.text = "1,250.00";
        table.rows.push_back({what, much});
    }
    return table;
}

TEST(Pdf, IsOneFromItsFirstBytesToItsLast) {
    const std::string pdf = made(paperWith({{Title{"Scope of work", "14 Quince Row", ""}}}));
    EXPECT_THAT(pdf, StartsWith("%PDF-1.5"));
    EXPECT_THAT(pdf.substr(pdf.size() - 8), HasSubstr("%%EOF"));
    EXPECT_EQ(pagesOf(pdf), 1U);
}

TEST(Pdf, AnEmptyPaperIsAPage) {
    EXPECT_EQ(pagesOf(made(paperWith({}))), 1U);
    EXPECT_EQ(pagesOf(made(paperWith(
                  {{NewPage{}}, {Table{}}, {Fields{}}, {Pictures{}}, {Figures{}}, {Curve{}}}))),
              1U);
}

TEST(Pdf, SamePaperSameBytes) {
    const Paper paper = paperWith(
        {{Heading{"Kitchen"}}, {tableOf(80, "cabinets")}, {Notice{"Check with local law."}}});
    EXPECT_EQ(made(paper), made(paper));
    EXPECT_NE(made(paper), made(paper, Size::A4));
}

TEST(Pdf, SaysTheDayOfThePaperAndAsksNoClock) {
    EXPECT_THAT(made(paperWith({})), HasSubstr("/CreationDate (20260522000000"));
}

// 612 x 792 points: US Letter, 8.5 x 11 inches of 72 points. A4, ISO 216: 210 x 297 mm.
TEST(Pdf, HasTheSizeAskedFor) {
    EXPECT_THAT(made(paperWith({})), HasSubstr("/MediaBox [ 0 0 612 792 ]"));
    EXPECT_THAT(made(paperWith({}), Size::A4), HasSubstr("/MediaBox [ 0 0 595.28"));
}

TEST(Pdf, ALongTableGoesOnToOtherPages) {
    // A sheet has 792 - 2 x 45 - 26 = 676 points of room, a row 9.5 x 1.28 + 5.2 = 17.4: 38 rows
    // below the headings, so 100 rows are 3 pages.
    EXPECT_EQ(pagesOf(made(paperWith({{tableOf(100, "cabinets")}}))), 3U);
}

TEST(Pdf, TextLongerThanASheetIsBrokenAndNothingHangs) {
    std::string text;
    for (int k = 0; k < 1'500; ++k) {
        text += "measure twice ";
    }
    Table table = tableOf(1, "short");
    table.rows[0][0].under = text;
    EXPECT_GT(pagesOf(made(paperWith({{Heading{"Kitchen"}}, {table}}))), 2U);
    EXPECT_GT(pagesOf(made(paperWith({{Paragraph{text, false, false}}}))), 2U);
    EXPECT_GT(
        pagesOf(made(paperWith({{Beside{{{Paragraph{text, false, false}}}, {{table}}, 0.5}}}))),
        4U);
    EXPECT_GE(pagesOf(made(paperWith({{Notice{text}}, {Title{text, text, text}}}))), 2U);
}

TEST(Pdf, WhatIsNoTextOrNoPictureDoesNoHarm) {
    const std::string odd("\xff\xfe\0\x01 \xd8\xa7\xd9\x84 \xe4\xb8\xad <b>&", 19);
    Pictures pictures;
    pictures.pictures = {{"no JPEG", "caption"}, {"", ""}, {"\xff\xd8\xff\xe0", odd}};
    EXPECT_EQ(
        pagesOf(made(paperWith(
            {{Title{odd, odd, odd}}, {tableOf(2, odd)}, {pictures}, {Fields{{odd, odd, odd}}}}))),
        1U);
}

}  // namespace
}  // namespace ledgerboard::paper
