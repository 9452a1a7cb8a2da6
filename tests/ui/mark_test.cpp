// Protects marking as a thumb does it: the number of taps that was promised, what stands in the
// book afterwards (read through a book opened anew), undo, and cautions that come first.
#include "tests/ui/phone_test.h"

namespace ledgerboard::ui {
namespace {

using model::Percent;

class MarkTest : public PhoneTest {};

TEST_P(MarkTest, AnItemIsFinishedInTwoTaps) {
    Thumb& thumb = hold();
    thumb.tapText("item", "cabinets");
    thumb.tap("finished");
    EXPECT_EQ(thumb.taps(), 2);
    const auto marks = marksOf(house_, "cabinets");
    ASSERT_EQ(marks.size(), 2u);
    EXPECT_EQ(marks.back().percent, Percent::whole());
    EXPECT_EQ(marks.back().markedOn->toString(), "2026-05-15");
    EXPECT_TRUE(thumb.says("Cabinets: done"));
}

TEST_P(MarkTest, TheBeltFinishesAnItemInTwoTaps) {
    Thumb& thumb = hold();
    thumb.tap("tool-mark");
    thumb.tap("finish");
    EXPECT_EQ(thumb.taps(), 2);
    EXPECT_EQ(marksOf(house_, "cabinets").back().percent, Percent::whole());
}

TEST_P(MarkTest, SomePercentTakesTwoTapsAndADrag) {
    Thumb& thumb = hold();
    thumb.tapText("item", "cabinets");
    thumb.drag("pull", 0.25, 0.58);
    thumb.tap("keep");
    EXPECT_EQ(thumb.taps(), 2);
    EXPECT_EQ(thumb.drags(), 1);
    // 58 % snaps to 60.
    EXPECT_EQ(marksOf(house_, "cabinets").back().percent, Percent::of(60));
}

TEST_P(MarkTest, AStepIsFivePercent) {
    Thumb& thumb = hold();
    thumb.tapText("item", "cabinets");
    thumb.tap("more");
    thumb.tap("more");
    thumb.tap("less");
    thumb.tap("keep");
    EXPECT_EQ(marksOf(house_, "cabinets").back().percent, Percent::of(30));
}

TEST_P(MarkTest, WhatIsCountedIsKeptAsACount) {
    Thumb& thumb = hold();
    thumb.tapText("item", "closet shelves");
    thumb.tap("more");
    thumb.tap("more");
    thumb.tap("more");
    EXPECT_TRUE(thumb.says("3 of 14"));
    thumb.preferences().setLanguage(QStringLiteral("es"));
    thumb.settle();
    EXPECT_TRUE(thumb.says("3 de 14"));
    EXPECT_FALSE(thumb.says("3 of 14"));
    thumb.preferences().setLanguage(QStringLiteral("en"));
    thumb.settle();
    thumb.tap("keep");
    EXPECT_EQ(marksOf(house_, "closet shelves").back().count, model::Quantity::of(3));
}

TEST_P(MarkTest, StepsAreTickedByName) {
    Thumb& thumb = hold();
    thumb.swipe(true);
    thumb.tapText("item", "curtain rods");
    thumb.tapText("choice", "prep");
    thumb.tapText("choice", "set");
    thumb.tap("keep");
    EXPECT_EQ(marksOf(house_, "curtain rods").back().stepsDone, "prep; set");
}

TEST_P(MarkTest, UndoTakesItBack) {
    Thumb& thumb = hold();
    thumb.tapText("item", "cabinets");
    thumb.tap("finished");
    ASSERT_EQ(marksOf(house_, "cabinets").size(), 2u);
    thumb.tap("undo");
    EXPECT_EQ(marksOf(house_, "cabinets").size(), 1u);
    EXPECT_TRUE(thumb.wait([&] { return thumb.says("25"); }));
    EXPECT_TRUE(thumb.says("Undone: Cabinets: done"));
}

// A gas range raises a caution (cautions.def). Nothing of it is marked begun before it is read.
TEST_P(MarkTest, ACautionComesBeforeTheRule) {
    Thumb& thumb = hold();
    thumb.swipe(true);
    thumb.tapText("item", "gas range");
    EXPECT_TRUE(thumb.all("finished").empty());
    EXPECT_TRUE(thumb.says("Caution: gas"));
    EXPECT_TRUE(marksOf(house_, "gas range").empty());
    thumb.scrollTo("acknowledge");
    thumb.tap("acknowledge");
    thumb.tap("finished");
    EXPECT_EQ(marksOf(house_, "gas range").size(), 1u);
    const auto rows = rowsOf(house_);
    ASSERT_EQ(rows.cautions.size(), 1u);
    EXPECT_EQ(rows.cautions[0].acknowledgedOn->toString(), "2026-05-15");
    EXPECT_FALSE(rows.marks.back().inSpiteOfCaution);
}

// Its name, its text, what raised it and where it is from: nothing of it is left in English but the
// name that the owner gave the thing.
TEST_P(MarkTest, InSpanishTheCautionIsSpanish) {
    Thumb& thumb = hold();
    thumb.preferences().setLanguage(QStringLiteral("es"));
    thumb.settle();
    thumb.swipe(true);
    thumb.tapText("item", "gas range");
    EXPECT_TRUE(thumb.says("Precaución: gas"));
    EXPECT_TRUE(thumb.says("Motivo: cambiar gas range")) << thumb.texts().join(" | ").toStdString();
    EXPECT_TRUE(thumb.says("práctica común, sin fuente"));
    for (const auto& text : thumb.texts()) {
        EXPECT_FALSE(text.contains("licensed") || text.contains("common practice"))
            << text.toStdString();
    }
}

TEST_P(MarkTest, TheBeltLeadsToTheCautionToo) {
    Thumb& thumb = hold();
    thumb.swipe(true);
    thumb.tap("tool-mark");
    thumb.tap("finish", 1);
    EXPECT_TRUE(thumb.says("Caution: gas"));
    EXPECT_TRUE(marksOf(house_, "gas range").empty());
}

TEST_P(MarkTest, AWordGoesWithTheMark) {
    Thumb& thumb = hold();
    thumb.tapText("item", "cabinets");
    thumb.type("markNote", "end panel missing");
    thumb.scrollTo("finished");
    thumb.tap("finished");
    EXPECT_EQ(marksOf(house_, "cabinets").back().note, "end panel missing");
}

INSTANTIATE_TEST_SUITE_P(Sizes, MarkTest, everySize());

}  // namespace
}  // namespace ledgerboard::ui
