// Protects the scope sheet: cells edited in place, filtered, grouped, filled down and pasted by
// real keys, each thing undone; what is refused says why and changes nothing.
#include <QClipboard>
#include <QGuiApplication>

#include "tests/desk/desk_test.h"

namespace ledgerboard::ui {
namespace {

class ScopeTest : public DeskTest {
  protected:
    std::string book_;

    Hand& openSheet(Laid laid = {}) {
        book_ = demo();
        open(book_, laid).key(Qt::Key_3, Qt::ControlModifier);
        return *hand_;
    }

    // The job as a book opened anew holds it.
    model::JobRows rows() { return jobIn(book_); }

    model::Item item(const std::string& object, const std::string& treatment = "") {
        for (const auto& one : rows().items) {
            if (one.object == object &&
                (treatment.empty() || model::wordOf(one.treatment) == treatment)) {
                return one;
            }
        }
        ADD_FAILURE() << "no item " << object;
        return {};
    }

    // Filters down to one item and goes to one of its cells.
    void goTo(const QString& words, const QString& title) {
        hand_->type(words);
        hand_->key(Qt::Key_Home);
        hand_->keys(Qt::Key_Left, 12);
        const QStringList titles{"Space",    "Treatment", "Object",   "Trade", "Quantity", "Unit",
                                 "Material", "Labour",    "Lump sum", "Line",  "Crew",     "Days"};
        hand_->keys(Qt::Key_Right, static_cast<int>(titles.indexOf(title)));
    }
};

TEST_F(ScopeTest, ACellIsEditedInPlaceAndUndone) {
    Hand& hand = openSheet();
    goTo("gutters", "Quantity");
    EXPECT_EQ(hand.said("cell2"), QStringList{"gutters"});
    hand.key(Qt::Key_Return);
    EXPECT_EQ(hand.focus(), "cellEditor");
    hand.type("100");
    hand.key(Qt::Key_Return);
    EXPECT_EQ(item("gutters").quantity, model::Quantity::of(100));
    EXPECT_EQ(hand.said("cell4"), QStringList{"100"});
    // 100 x 7.60 + 100 x 1.05 x 5.40 = 760 + 567 = 1,327.
    EXPECT_EQ(hand.said("cell9"), QStringList{"1,327"});
    EXPECT_TRUE(hand.says("Outside/gutters, Quantity: 100"));
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(item("gutters").quantity, model::Quantity::of(130));
    EXPECT_EQ(hand.said("cell4"), QStringList{"130"});
    EXPECT_TRUE(hand.says("Undone: set Outside/gutters, Quantity"));
}

TEST_F(ScopeTest, EscapeLeavesACellAsItWas) {
    Hand& hand = openSheet();
    goTo("gutters", "Quantity");
    hand.key(Qt::Key_F2);
    hand.type("999");
    hand.key(Qt::Key_Escape);
    EXPECT_EQ(hand.said("cell4"), QStringList{"130"});
    EXPECT_EQ(hand.focus(), "sheetRows");
}

TEST_F(ScopeTest, WhatIsNoNumberIsRefusedAndTheTypingStays) {
    Hand& hand = openSheet();
    goTo("gutters", "Quantity");
    hand.key(Qt::Key_Return);
    hand.type("lots");
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.says("is not a number"));
    EXPECT_EQ(hand.focus(), "cellEditor");
    EXPECT_EQ(item("gutters").quantity, model::Quantity::of(130));
    hand.key(Qt::Key_Escape);
}

TEST_F(ScopeTest, ATreatmentAndACrewAreKnownByTheirBeginning) {
    Hand& hand = openSheet();
    goTo("gutters", "Treatment");
    hand.key(Qt::Key_Return);
    hand.type("repai");
    hand.key(Qt::Key_Return);
    EXPECT_EQ(item("gutters").treatment, model::Treatment::Repair);
    hand.key(Qt::Key_Escape);
    goTo("gutters", "Crew");
    hand.key(Qt::Key_Return);
    hand.type("yar");
    EXPECT_EQ(hand.said("cellChoice"), QStringList{"Yard crew"});
    hand.key(Qt::Key_Down);
    hand.key(Qt::Key_Return);
    EXPECT_EQ(hand.said("cell10"), QStringList{"Yard crew"});
    hand.key(Qt::Key_Return);
    hand.type("Rope crew");
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.says("there is no crew \"Rope crew\""));
    hand.key(Qt::Key_Escape);
}

TEST_F(ScopeTest, ASpaceThatIsNotThereIsMade) {
    Hand& hand = openSheet();
    goTo("gutters", "Space");
    hand.key(Qt::Key_Return);
    hand.type("Garage");
    hand.key(Qt::Key_Return);
    const auto all = rows();
    EXPECT_TRUE(std::any_of(all.spaces.begin(), all.spaces.end(),
                            [](const auto& space) { return space.name == "Garage"; }));
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    const auto after = rows();
    EXPECT_FALSE(std::any_of(after.spaces.begin(), after.spaces.end(),
                             [](const auto& space) { return space.name == "Garage"; }));
}

TEST_F(ScopeTest, LettersFilterAndEscapeShowsAll) {
    Hand& hand = openSheet();
    hand.type("wood floor");
    EXPECT_EQ(hand.said("filterText"), QStringList{"wood floor"});
    for (const auto& object : hand.said("cell2")) {
        EXPECT_EQ(object, "wood floor");
    }
    hand.type(" zzz");
    EXPECT_TRUE(hand.says("No row has all of"));
    for (int k = 0; k < 4; ++k) {
        hand.key(Qt::Key_Backspace);
    }
    EXPECT_EQ(hand.said("filterText"), QStringList{"wood floor"});
    hand.key(Qt::Key_Escape);
    EXPECT_TRUE(hand.said("filterText").isEmpty());
}

TEST_F(ScopeTest, RowsGroupBySpaceTradeAndCrew) {
    Hand& hand = openSheet();
    EXPECT_EQ(hand.said("headingText").value(0), "Outside");
    hand.key(Qt::Key_G, Qt::ControlModifier);
    hand.key(Qt::Key_Home);
    EXPECT_TRUE(hand.said("headingText").contains("carpentry"));
    hand.key(Qt::Key_G, Qt::ControlModifier);
    hand.key(Qt::Key_Home);
    EXPECT_TRUE(hand.said("headingText").contains("Carpentry crew"));
    hand.key(Qt::Key_G, Qt::ControlModifier);
    EXPECT_TRUE(hand.all("sheetHeading").empty());
}

TEST_F(ScopeTest, AColumnIsFilledDownAndUndoneWhole) {
    Hand& hand = openSheet();
    goTo("wood floor", "Days");
    hand.key(Qt::Key_Down, Qt::ShiftModifier);
    hand.key(Qt::Key_Down, Qt::ShiftModifier);
    const QStringList before = hand.said("cell11");
    hand.key(Qt::Key_D, Qt::ControlModifier);
    QStringList after = before;
    after[1] = after[2] = before[0];
    EXPECT_EQ(hand.said("cell11"), after);
    EXPECT_NE(before, after);
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(hand.said("cell11"), before);
}

TEST_F(ScopeTest, AnItemIsAddedDroppedAndBroughtBack) {
    Hand& hand = openSheet();
    const std::size_t before = rows().items.size();
    hand.key(Qt::Key_N, Qt::ControlModifier);
    hand.type("Kitchen: replace faucet");
    hand.key(Qt::Key_Return);
    EXPECT_EQ(rows().items.size(), before + 1);
    EXPECT_EQ(item("faucet").treatment, model::Treatment::Replace);
    EXPECT_EQ(hand.said("itemText"), QStringList{"Kitchen: Replace faucet"});
    hand.key(Qt::Key_Delete, Qt::ControlModifier);
    EXPECT_EQ(rows().items.size(), before);
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(rows().items.size(), before + 1);
}

TEST_F(ScopeTest, ThePriceAndItsSourceAreTold) {
    Hand& hand = openSheet();
    goTo("chimney", "Object");
    EXPECT_TRUE(hand.says("Priced from the price book"));
    EXPECT_TRUE(hand.says("source:"));
    hand.key(Qt::Key_Escape);
    goTo("gutters", "Object");
    EXPECT_TRUE(hand.says("Priced by its own costs a unit."));
    hand.key(Qt::Key_B, Qt::ControlModifier);
    EXPECT_FALSE(hand.says("Priced by its own costs a unit."));
    EXPECT_FALSE(item("gutters").unitCostLabour.has_value());
}

TEST_F(ScopeTest, SizesBecomeTheQuantity) {
    Hand& hand = openSheet();
    goTo("shower tile", "Quantity");
    hand.key(Qt::Key_T, Qt::ControlModifier);
    ASSERT_TRUE(hand.tabTo("size-area_sqft"));
    hand.type("40 + 46");
    EXPECT_EQ(hand.said("takenFigure").value(0), "86 sq ft");
    hand.click("putQuantity");
    EXPECT_EQ(item("shower tile").quantity, model::Quantity::of(86));
    EXPECT_EQ(hand.focus(), "sheetRows");
}

// 500 rows, every other one wrong in some way.
TEST_F(ScopeTest, FiveHundredRowsHalfOfThemWrong) {
    Hand& hand = openSheet();
    const std::size_t before = rows().items.size();
    QString text = QStringLiteral("Room\tDo\tItem\tQty\tUnit\tLump sum\tCrew\tDays\n");
    for (int k = 0; k < 500; ++k) {
        const QString item = QStringLiteral("shelf %1").arg(k);
        switch (k % 10) {
            case 1:
                text += "Kitchen\tpolish\t" + item + "\t1\teach\t20\t\t1\n";
                break;
            case 3:
                text += "Kitchen\tadd\t" + item + "\tmany\teach\t20\t\t1\n";
                break;
            case 5:
                text += "Kitchen\tadd\t" + item + "\t1\teach\t-20\t\t1\n";
                break;
            case 7:
                text += "Kitchen\tadd\t" + item + "\t1\teach\t20\tRope crew\t1\n";
                break;
            case 9:
                text += "Kitchen\tadd\t\t1\teach\t20\t\t1\n";
                break;
            default:
                text += "Kitchen\tadd\t" + item + "\t1\teach\t20\t\t1\n";
        }
    }
    QGuiApplication::clipboard()->setText(text);
    hand.key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(hand.said("pasteTitle"), QStringList{"500 rows from a spreadsheet"});
    EXPECT_TRUE(hand.says("Can come in: 250 new items."));
    EXPECT_TRUE(hand.says("250 rows with something wrong:"));
    EXPECT_TRUE(hand.says("\"polish\" is not one of"));
    EXPECT_EQ(rows().items.size(), before);
    // Return is on "bring in nothing": nobody brings them in by mistake.
    EXPECT_EQ(hand.focus(), "bringNothing");
    hand.key(Qt::Key_Return);
    EXPECT_EQ(rows().items.size(), before);
    hand.key(Qt::Key_V, Qt::ControlModifier);
    ASSERT_TRUE(hand.tabTo("bringGood"));
    hand.key(Qt::Key_Return);
    EXPECT_EQ(rows().items.size(), before + 250);
    EXPECT_TRUE(hand.says("250 rows brought in"));
    // The same once more adds nothing.
    hand.key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("250 already there as they are"));
    EXPECT_TRUE(hand.all("bringGood").empty());
    hand.key(Qt::Key_Escape);
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(rows().items.size(), before);
}

TEST_F(ScopeTest, RowsWithoutHeadingsAreTakenAsTheSheetsColumns) {
    Hand& hand = openSheet();
    QGuiApplication::clipboard()->setText(
        QStringLiteral("Kitchen\treplace\tfaucet\tplumbing\t1\teach\n"));
    hand.key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("No row of headings was copied"));
    ASSERT_TRUE(hand.tabTo("bringGood"));
    hand.key(Qt::Key_Return);
    EXPECT_EQ(item("faucet").trade, "plumbing");
}

TEST_F(ScopeTest, AnEmptyClipboardSaysWhatToDo) {
    Hand& hand = openSheet();
    QGuiApplication::clipboard()->setText(QString());
    hand.key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("copy rows in a spreadsheet first"));
    hand.key(Qt::Key_Escape);
    EXPECT_TRUE(hand.all("pasteTitle").empty());
}

// What is copied can be pasted again, and is then there already.
TEST_F(ScopeTest, CopiedRowsComeBackAsTheyAre) {
    Hand& hand = openSheet();
    hand.type("wood floor");
    hand.key(Qt::Key_Home);
    hand.key(Qt::Key_Down, Qt::ShiftModifier);
    hand.key(Qt::Key_C, Qt::ControlModifier);
    EXPECT_EQ(QGuiApplication::clipboard()->text().count(QLatin1Char('\n')), 2);
    hand.key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("2 already there as they are"));
    hand.key(Qt::Key_Escape);
}

TEST_F(ScopeTest, ALineOfTheWeekLeadsHere) {
    book_ = demo();
    Hand& hand = open(book_);
    ASSERT_TRUE(hand.tabTo("roomsPart"));
    hand.key(Qt::Key_Down);
    hand.key(Qt::Key_Return);
    EXPECT_EQ(hand.desk().page(), "scope");
    EXPECT_EQ(hand.said("filterText"), QStringList{"Entry"});
}

}  // namespace
}  // namespace ledgerboard::ui
