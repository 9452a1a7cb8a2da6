// Protects: a table stays within its column whatever is in it, and takes the height of its rows.
// How: tables measured with the pen lifted, heights worked out here from sizes and gaps.
#include "core/paper/table_flow.h"

#include <gtest/gtest.h>

namespace ledgerboard::paper {
namespace {

class TableFlowTest : public testing::Test {
  protected:
    double heightOf(const Table& table, double width = 522) {
        return flow_.measured(width, [&] { placeTable(flow_, table); });
    }

    static Table tableOf(const std::string& text, const std::string& figure, bool hasHead = false) {
        Table table{{{"What", Fit::Words, 1}, {"How much", Fit::Figure, 1}}, {}, hasHead, false};
        Cell what;
        what.text = text;
        Cell much;
        much.text = figure;
        table.rows = {{what, much}};
        return table;
    }

    Sheet sheet_{612, 792};
    Pen pen_{612, 792, "A table", model::Date::fromYmd(2026, 5, 22).value()};
    Flow flow_{pen_, sheet_, "foot", 1};
};

// A line is 9.5 points x 1.28 = 12.16; above and below it 2.6 each; 4 below the table.
constexpr double kRow = 9.5 * 1.28 + 2 * 2.6;

TEST_F(TableFlowTest, ARowIsALineAndItsGaps) {
    EXPECT_NEAR(heightOf(tableOf("cabinets", "1,250")), kRow + 4, 0.01);
}

TEST_F(TableFlowTest, HeadingsTakeALineOfTheirOwn) {
    // 0.85 of the size, and one gap.
    EXPECT_NEAR(heightOf(tableOf("cabinets", "1,250", true)), kRow + 9.5 * 0.85 * 1.28 + 2.6 + 4,
                0.01);
}

TEST_F(TableFlowTest, NoColumnsTakeNothingAndNoRowsAlmostNothing) {
    EXPECT_EQ(heightOf(Table{}), 0);
    Table table = tableOf("", "");
    table.rows.clear();
    EXPECT_NEAR(heightOf(table), 4, 0.01);
}

TEST_F(TableFlowTest, ALongWordIsBrokenIntoLines) {
    // 400 letters of more than 4 points each do not fit in 522: four lines at least.
    EXPECT_GT(heightOf(tableOf(std::string(400, 'o'), "1,250")), kRow + 3 * 9.5 * 1.28);
}

TEST_F(TableFlowTest, AFigureStaysInOneLineAsLongAsItCanBeRead) {
    EXPECT_NEAR(heightOf(tableOf("cabinets", "92,233,720,368,547,758.07")), kRow + 4, 0.01);
    // A hundred digits in 100 points can't be, even in the smallest letters.
    EXPECT_GT(heightOf(tableOf("cabinets", std::string(100, '8')), 100), kRow + 4);
}

TEST_F(TableFlowTest, ALineToWriteOnHasRoomForAHand) {
    Table table = tableOf("cabinets", "");
    table.rows[0][1].isBlank = true;
    EXPECT_NEAR(heightOf(table), 15 + 2 * 2.6 + 4, 0.01);
}

TEST_F(TableFlowTest, MeasuringMovesNothing) {
    const double before = flow_.y();
    (void)heightOf(tableOf("cabinets", "1,250"));
    EXPECT_EQ(flow_.y(), before);
    EXPECT_FALSE(pen_.isUp());
    EXPECT_EQ(flow_.page(), 1U);
}

}  // namespace
}  // namespace ledgerboard::paper
