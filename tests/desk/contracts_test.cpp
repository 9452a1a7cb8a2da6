// Protects the page Contracts and orders: contracts, changes and goods are entered and edited in
// place by real keys, a change is signed and refused, each thing is undone; what bars a payment is
// said with its reason, and what is refused says why and changes nothing.
#include "tests/desk/desk_test.h"

namespace ledgerboard::ui {
namespace {

class ContractsTest : public DeskTest {
  protected:
    std::string book_;

    Hand& openPage() {
        book_ = demo();
        open(book_).key(Qt::Key_6, Qt::ControlModifier);
        return *hand_;
    }

    // The job as a book opened anew holds it.
    model::JobRows rows() { return jobIn(book_); }

    template <class Row>
    Row named(const std::vector<Row>& all, const std::string& name) {
        for (const auto& one : all) {
            if (one.name == name) {
                return one;
            }
        }
        ADD_FAILURE() << "no " << name;
        return {};
    }

    void undo() { hand_->key(Qt::Key_Z, Qt::ControlModifier); }
};

TEST_F(ContractsTest, ACellIsEditedInPlaceAndUndone) {
    Hand& hand = openPage();
    EXPECT_EQ(hand.focus(), "sheetRows");
    hand.type("tile work");
    EXPECT_EQ(hand.said("cell0"), QStringList{"Tile work"});
    hand.keys(Qt::Key_Right, 2);
    hand.key(Qt::Key_Return);
    hand.type("7,100");
    hand.key(Qt::Key_Return);
    EXPECT_EQ(named(rows().contracts, "Tile work").sum, model::Money::fromMinor(710'000));
    EXPECT_EQ(hand.said("cell2"), QStringList{"7,100"});
    undo();
    EXPECT_EQ(named(rows().contracts, "Tile work").sum, model::Money::fromMinor(695'000));
    EXPECT_EQ(hand.said("cell2"), QStringList{"6,950"});
}

TEST_F(ContractsTest, WhatIsNoSumIsRefusedAndTheTypingStays) {
    Hand& hand = openPage();
    hand.type("tile work");
    hand.keys(Qt::Key_Right, 2);
    hand.key(Qt::Key_Return);
    hand.type("much");
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.says("Sum: "));
    EXPECT_EQ(hand.focus(), "cellEditor");
    EXPECT_EQ(named(rows().contracts, "Tile work").sum, model::Money::fromMinor(695'000));
    hand.key(Qt::Key_Escape);
    // A figure that is worked out opens all of the row.
    hand.keys(Qt::Key_Right, 2);
    hand.key(Qt::Key_Return);
    EXPECT_EQ(hand.said("formTitle"), QStringList{"Tile work"});
    hand.key(Qt::Key_Escape);
    EXPECT_EQ(hand.focus(), "sheetRows");
}

TEST_F(ContractsTest, AContractIsFilledInAndKeptAsOne) {
    Hand& hand = openPage();
    hand.key(Qt::Key_N, Qt::ControlModifier);
    EXPECT_EQ(hand.said("formTitle"), QStringList{"New: Contract or order"});
    hand.type("Fence");  // letters begin to fill in the field
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_Down);  // it is a subcontract already
    hand.type("yar");
    EXPECT_EQ(hand.said("cellChoice"), QStringList{"Yard crew"});
    hand.key(Qt::Key_Return);
    hand.type("1840");
    hand.key(Qt::Key_Return);
    hand.type("-5");
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.says("Deposit: "));
    hand.key(Qt::Key_Escape);
    EXPECT_EQ(rows().contracts.size(), 12u) << "nothing is written before it is kept";
    hand.key(Qt::Key_Return, Qt::ControlModifier);
    const auto fence = named(rows().contracts, "Fence");
    EXPECT_EQ(fence.sum, model::Money::fromMinor(184'000));
    EXPECT_EQ(fence.type, model::ContractKind::Subcontract);
    EXPECT_FALSE(fence.signedOn);
    EXPECT_EQ(hand.said("inHandText"), QStringList{"Fence"});
    EXPECT_TRUE(hand.said("cell10").contains("not signed"));
    // Signed today, in the cell and by the key.
    hand.key(Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(named(rows().contracts, "Fence").signedOn, model::Date::fromYmd(2026, 5, 22).value());
    undo();
    undo();
    EXPECT_EQ(rows().contracts.size(), 12u);
}

TEST_F(ContractsTest, NothingFilledInIsNothingKept) {
    Hand& hand = openPage();
    hand.key(Qt::Key_E, Qt::ControlModifier);
    hand.key(Qt::Key_E, Qt::ControlModifier);
    hand.key(Qt::Key_N, Qt::ControlModifier);
    hand.key(Qt::Key_Escape);
    EXPECT_TRUE(hand.said("formTitle").value(0).isEmpty());
    EXPECT_EQ(hand.focus(), "sheetRows");
    EXPECT_TRUE(rows().deliveries.empty());
}

TEST_F(ContractsTest, AChangeIsSignedRefusedAndTakenBack) {
    Hand& hand = openPage();
    EXPECT_TRUE(hand.says("1 change asked and not decided; if signed +860."));
    const QString committed = hand.said("moneyFigure").value(0);
    hand.key(Qt::Key_E, Qt::ControlModifier);
    EXPECT_EQ(hand.said("inHandText"), QStringList{"Rotten trim boards on the north side"});
    hand.key(Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(named(rows().changes, "Rotten trim boards on the north side").signedOn,
              model::Date::fromYmd(2026, 5, 22).value());
    // 860 more on a signed contract is committed.
    EXPECT_NE(hand.said("moneyFigure").value(0), committed);
    EXPECT_FALSE(hand.says("asked and not decided"));
    hand.key(Qt::Key_R, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("That change is signed"));
    undo();
    EXPECT_EQ(hand.said("moneyFigure").value(0), committed);
    hand.key(Qt::Key_R, Qt::ControlModifier);
    EXPECT_TRUE(named(rows().changes, "Rotten trim boards on the north side").refusedOn);
    undo();
    EXPECT_FALSE(named(rows().changes, "Rotten trim boards on the north side").refusedOn);
}

TEST_F(ContractsTest, AChangeWithoutASumIsNotSigned) {
    Hand& hand = openPage();
    hand.type("tile work");
    hand.key(Qt::Key_E, Qt::ControlModifier);
    hand.key(Qt::Key_N, Qt::ControlModifier);
    hand.type("Niche in the shower");
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_Return, Qt::ControlModifier);
    const auto niche = named(rows().changes, "Niche in the shower");
    EXPECT_EQ(niche.contract, named(rows().contracts, "Tile work").id) << "of the one in hand";
    EXPECT_EQ(niche.askedOn, model::Date::fromYmd(2026, 5, 22).value());
    hand.key(Qt::Key_S, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("Enter what the change adds"));
    EXPECT_FALSE(named(rows().changes, "Niche in the shower").signedOn);
}

TEST_F(ContractsTest, GoodsArriveAndThatIsTakenBack) {
    Hand& hand = openPage();
    hand.key(Qt::Key_E, Qt::ControlModifier);
    hand.key(Qt::Key_E, Qt::ControlModifier);
    EXPECT_EQ(hand.said("headingText"), QStringList{"Ordered, not there yet"});
    hand.type("dishwasher");
    EXPECT_EQ(hand.said("cell0"), QStringList{"Kitchen/dishwasher"});
    hand.keys(Qt::Key_Right, 4);
    hand.key(Qt::Key_Return);
    hand.type("2026-05-27");
    hand.key(Qt::Key_Return);
    ASSERT_EQ(rows().deliveries.size(), 1u) << "writing in the row makes the delivery";
    EXPECT_EQ(rows().deliveries[0].promisedOn, model::Date::fromYmd(2026, 5, 27).value());
    EXPECT_EQ(hand.said("cell4"), QStringList{"Wed 27 May"});
    hand.key(Qt::Key_S, Qt::ControlModifier);
    ASSERT_EQ(rows().deliveries.size(), 1u);
    EXPECT_EQ(rows().deliveries[0].arrivedOn, model::Date::fromYmd(2026, 5, 22).value());
    EXPECT_EQ(hand.said("headingText"), QStringList{"There"});
    undo();
    undo();
    EXPECT_TRUE(rows().deliveries.empty());
}

// The paint crew's insurance ends on 27 May (crews.csv): from the day after nothing may be paid.
TEST_F(ContractsTest, WhatBarsAPaymentIsSaidWithItsReason) {
    Hand& hand = openPage();
    hand.type("painting");
    EXPECT_FALSE(hand.said("cell10").contains("barred"));
    ASSERT_TRUE(hand.desk().lookAt(QStringLiteral("2026-05-28")));
    hand.settle();
    EXPECT_EQ(hand.said("cell10"), QStringList{"barred"});
    EXPECT_TRUE(
        hand.said("barredText")
            .value(0)
            .startsWith("Nothing may be paid: the insurance of Paint crew lapsed on Wed 27 May."))
        << hand.said("barredText").value(0).toStdString();
    EXPECT_TRUE(hand.said("barredOwed").value(0).startsWith("Owed and barred: Painting, "));
}

TEST_F(ContractsTest, AnEmptyPageSaysHowToBegin) {
    Hand& hand = lay("");
    hand.type("9 Birch Lane");
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_6, Qt::ControlModifier);
    EXPECT_EQ(hand.said("nothingHead"), QStringList{"Nothing is signed yet"});
    hand.click("nothingBegin");
    EXPECT_EQ(hand.said("formTitle"), QStringList{"New: Contract or order"});
    hand.key(Qt::Key_Return, Qt::ControlModifier);  // its kind alone is something
    EXPECT_TRUE(hand.said("nothingHead").isEmpty());
    undo();
    EXPECT_EQ(hand.said("nothingHead"), QStringList{"Nothing is signed yet"});
}

TEST_F(ContractsTest, ARowIsDroppedAndComesBack) {
    Hand& hand = openPage();
    hand.type("appliances");
    hand.key(Qt::Key_Delete, Qt::ControlModifier);
    EXPECT_EQ(rows().contracts.size(), 11u);
    undo();
    EXPECT_EQ(rows().contracts.size(), 12u);
}

}  // namespace
}  // namespace ledgerboard::ui
