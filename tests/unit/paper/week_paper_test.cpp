// Protects: the week's paper has the parts of the page in their order, cuts long parts and says so,
// and an empty job says what to do next. How: pages by hand.
#include "core/paper/week_paper.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace ledgerboard::paper {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

void addHeadings(const std::vector<Block>& blocks, std::vector<std::string>& to) {
    for (const auto& block : blocks) {
        if (const auto* heading = std::get_if<Heading>(&block.part)) {
            to.push_back(heading->text);
        } else if (const auto* beside = std::get_if<Beside>(&block.part)) {
            addHeadings(beside->left, to);
            addHeadings(beside->right, to);
        }
    }
}

report::WeekPage pageOf(std::int64_t items) {
    report::WeekPage page;
    page.job = "14 Quince Row";
    page.today = model::Date::fromYmd(2026, 5, 22).value();
    page.items = items;
    return page;
}

TEST(WeekPaper, HasThePartsInTheirOrder) {
    std::vector<std::string> headings;
    addHeadings(weekPaper(pageOf(3)).blocks, headings);
    EXPECT_THAT(headings, ElementsAre(testing::_, "What moved it", "Money by trade", "By room",
                                      "Next 14 days", "Papers missing", "On Monday"));
}

TEST(WeekPaper, AnEmptyJobSaysWhatToDoNext) {
    const Paper paper = weekPaper(pageOf(0));
    ASSERT_EQ(paper.blocks.size(), 2U);
    EXPECT_EQ(std::get<Paragraph>(paper.blocks[1].part).text, report::emptyJobText());
}

TEST(WeekPaper, MoreThanTheSheetHasRoomForIsCutAloud) {
    report::WeekPage page = pageOf(3);
    page.monday.resize(11);  // 8 are printed
    const Paper paper = weekPaper(page);
    const auto at = std::find_if(paper.blocks.begin(), paper.blocks.end(), [](const Block& block) {
        const auto* paragraph = std::get_if<Paragraph>(&block.part);
        return paragraph != nullptr && paragraph->text == "and 3 more, on the screen";
    });
    ASSERT_NE(at, paper.blocks.end());
    EXPECT_EQ(std::get<Table>((at - 1)->part).rows.size(), 8U);
}

TEST(WeekPaper, APictureThatIsNoneIsLeftOutWithItsHeading) {
    report::WeekPage page = pageOf(3);
    page.photos = {{"Kitchen", {}, "image/jpeg", "no picture"}};
    std::vector<std::string> headings;
    addHeadings(weekPaper(page).blocks, headings);
    EXPECT_THAT(headings, testing::Not(testing::Contains("Photos")));
}

TEST(WeekPaper, ABarredPaymentIsInBrickAndReminded) {
    report::WeekPage page = pageOf(3);
    page.monday = {{"Pay nothing more", "ahead", "Contracts and orders", true, true}};
    const Paper paper = weekPaper(page);
    EXPECT_THAT(std::get<Paragraph>(paper.blocks.back().part).text,
                HasSubstr(report::reminderText()));
    for (const auto& block : paper.blocks) {
        const auto* table = std::get_if<Table>(&block.part);
        if (table != nullptr && table->columns.size() == 2 && !table->rows.empty()) {
            EXPECT_EQ(table->rows[0][0].tone, Tone::Brick);
        }
    }
}

}  // namespace
}  // namespace ledgerboard::paper
