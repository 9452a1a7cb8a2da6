// Protects what a workbook refuses and that it is a whole file; what stands in its cells is read by
// another program in tests/try.
#include "core/give/workbook.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace ledgerboard;
using give::Form;
using give::Sheet;
using testing::HasSubstr;

Sheet oneCell(std::string text) {
    return {"Sheet", "Title", {{"Text", Form::Text, false, ""}}, {{give::Cell(std::move(text))}}};
}

TEST(Workbook, IsAZipArchiveWithItsSheets) {
    const auto bytes = give::workbookBytes({oneCell("a"), {"Two", "", {{"B", {}, {}, {}}}, {}}});
    ASSERT_TRUE(bytes.ok());
    EXPECT_TRUE(bytes.value().starts_with("PK"));
    EXPECT_THAT(bytes.value(), HasSubstr("xl/worksheets/sheet2.xml"));
}

TEST(Workbook, RefusesWhatACellCannotHold) {
    EXPECT_TRUE(give::workbookBytes({oneCell(std::string(32'767, 'x'))}).ok());
    const auto tooLong = give::workbookBytes({oneCell(std::string(32'768, 'x'))});
    ASSERT_FALSE(tooLong.ok());
    EXPECT_THAT(tooLong.error().message, HasSubstr("row 2, \"Text\""));
}

TEST(Workbook, LettersOfColumns) {
    EXPECT_EQ(give::columnLetters(0), "A");
    EXPECT_EQ(give::columnLetters(25), "Z");
    EXPECT_EQ(give::columnLetters(26), "AA");
    EXPECT_EQ(give::columnLetters(701), "ZZ");
    EXPECT_EQ(give::columnLetters(702), "AAA");
    EXPECT_EQ(give::columnLetters(16'383), "XFD");  // ISO/IEC 29500: the last column
}

}  // namespace
