// Protects the scope sheet: cells edited in place, filtered, grouped, filled down and pasted by
// real keys, each thing undone; how far work is, by the way it is measured; the baseline, asked for
// once; what is refused says why and changes nothing.
#include <QClipboard>
#include <QGuiApplication>
#include <QTest>

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

    // The mark of an item that was made last.
    model::Mark lastMark(const std::string& object) {
        const auto id = item(object).id;
        model::Mark last;
        for (const auto& mark : rows().marks) {
            if (mark.item == id && last.id.raw() < mark.id.raw()) {
                last = mark;
            }
        }
        return last;
    }

    // A minute after the demo house was made: a mark of the same day is then the later one.
    static Laid later() {
        constexpr std::int64_t kMinuteMs = 60'000;
        Laid laid;
        laid.now = model::Instant::fromMilliseconds(noonOnThatFriday().milliseconds() + kMinuteMs);
        return laid;
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

TEST_F(ScopeTest, InSpanishARefusalAndACautionAreSpanish) {
    Hand& hand = openSheet();
    hand.preferences().setLanguage(QStringLiteral("es"));
    goTo("gutters", "Quantity");
    hand.key(Qt::Key_Return);
    hand.type("lots");
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.says("no es un número: escríbalo como 1250"));
    EXPECT_FALSE(hand.says("en inglés"));
    hand.key(Qt::Key_Escape);
    hand.key(Qt::Key_Escape);
    // A fence is dug: the caution is raised by the table, with its words and its source.
    hand.key(Qt::Key_N, Qt::ControlModifier);
    hand.type(QStringLiteral("Outside: add fence"));
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_K, Qt::ControlModifier);
    const QString text = hand.said("cautionText").value(0);
    EXPECT_TRUE(text.contains("antes de cavar", Qt::CaseInsensitive)) << text.toStdString();
    EXPECT_FALSE(text.contains("one-call service")) << text.toStdString();
    EXPECT_TRUE(hand.says("La motiva: poner fence"));
    EXPECT_TRUE(hand.says("práctica común, sin fuente"));
    EXPECT_FALSE(hand.says("common practice"));
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

// marks.csv: baseboards stand at 75 % on 22 May, by judged percent.
TEST_F(ScopeTest, APercentIsMarkedAndUndone) {
    Hand& hand = openSheet(later());
    goTo("baseboards", "Object");
    EXPECT_TRUE(hand.says("Done 75\u00a0%."));
    hand.key(Qt::Key_M, Qt::ControlModifier);
    EXPECT_EQ(hand.said("markTitle"), QStringList{"Whole house/baseboards"});
    EXPECT_EQ(hand.focus(), "markFigure");
    hand.type("85");
    EXPECT_EQ(hand.said("markPercent"), QStringList{"85\u00a0%"});
    hand.key(Qt::Key_Return);
    const auto made = lastMark("baseboards");
    EXPECT_EQ(made.percent, model::Percent::of(85));
    EXPECT_EQ(made.markedOn, model::Date::fromYmd(2026, 5, 22).value());
    EXPECT_FALSE(made.by.isNil());
    EXPECT_TRUE(hand.says("Done 85\u00a0%."));
    EXPECT_TRUE(hand.all("markTitle").empty());
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("Done 75\u00a0%."));
}

// The rule stops at every 5 %: pressed at 0.6 of its length it says 60.
TEST_F(ScopeTest, TheRuleIsPulledByTheMouse) {
    Hand& hand = openSheet(later());
    goTo("baseboards", "Object");
    hand.click("markLink");
    auto* rule = hand.find("markRule");
    ASSERT_NE(rule, nullptr);
    const QPoint at =
        rule->mapToScene(QPointF(rule->width() * 0.5, rule->height() * 0.6)).toPoint();
    QTest::mousePress(&hand.view(), Qt::LeftButton, {}, at);
    QTest::mouseMove(&hand.view(), at + QPoint(static_cast<int>(rule->width() * 0.1), 0));
    QTest::mouseRelease(&hand.view(), Qt::LeftButton, {},
                        at + QPoint(static_cast<int>(rule->width() * 0.1), 0));
    hand.settle();
    EXPECT_EQ(hand.said("markFigure"), QStringList{"60"});
    hand.click("markKeep");
    EXPECT_EQ(lastMark("baseboards").percent, model::Percent::of(60));
}

// 3 of 14 treads on 22 May; 7 of 14 is 50 %.
TEST_F(ScopeTest, CountedUnitsAreMarkedByTheirCount) {
    Hand& hand = openSheet(later());
    goTo("stair treads", "Object");
    hand.key(Qt::Key_M, Qt::ControlModifier);
    EXPECT_EQ(hand.said("markFigure"), QStringList{"3"});
    EXPECT_TRUE(hand.said("markMethod").value(0).contains("how many of 14"));
    hand.type("15");
    hand.key(Qt::Key_Return);
    EXPECT_FALSE(hand.desk().notKeptText().isEmpty()) << "more than there are";
    EXPECT_EQ(hand.focus(), "markFigure") << "and the typing stays";
    hand.key(Qt::Key_Backspace);
    hand.key(Qt::Key_Backspace);
    hand.type("7");
    EXPECT_EQ(hand.said("markPercent"), QStringList{"50\u00a0%"});
    hand.key(Qt::Key_Return);
    EXPECT_EQ(lastMark("stair treads").count, model::Quantity::of(7));
    EXPECT_TRUE(hand.says("Done 50\u00a0%."));
}

// Whole house/walls: patch 15; prime 20; first coat 35; last coat 30, and the first three are done:
// 70 %. Without the first coat 35 %; with all of them it is finished.
TEST_F(ScopeTest, StepsAreTurnedOneByOne) {
    Hand& hand = openSheet(later());
    goTo("refinish walls", "Object");
    hand.key(Qt::Key_M, Qt::ControlModifier);
    EXPECT_EQ(hand.said("markStepState"), (QStringList{"done", "done", "done", "not yet"}));
    EXPECT_EQ(hand.said("markStepsPercent"), QStringList{"70\u00a0%"});
    hand.keys(Qt::Key_Down, 2);
    hand.key(Qt::Key_Space);
    EXPECT_EQ(hand.said("markStepsPercent"), QStringList{"35\u00a0%"});
    hand.key(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(lastMark("walls").stepsDone, "patch; prime");
    EXPECT_TRUE(hand.says("Done 35\u00a0%."));
    hand.key(Qt::Key_M, Qt::ControlModifier);
    hand.click("markStep", 2);
    hand.click("markStep", 3);
    EXPECT_EQ(hand.said("markStepsPercent"), QStringList{"done"});
    hand.key(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(lastMark("walls").percent, model::Percent::whole());
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("Done 70\u00a0%."));
}

TEST_F(ScopeTest, AMarkThatCannotBeIsRefused) {
    Hand& hand = openSheet(later());
    const auto count = rows().marks.size();
    goTo("baseboards", "Object");
    hand.key(Qt::Key_M, Qt::ControlModifier);
    for (const char* wrong : {"most", "120", "-5"}) {
        hand.key(Qt::Key_A, Qt::ControlModifier);
        hand.type(wrong);
        EXPECT_EQ(hand.said("markPercent").join(""), "") << wrong;
        hand.key(Qt::Key_Return);
        EXPECT_FALSE(hand.desk().notKeptText().isEmpty()) << wrong;
    }
    hand.key(Qt::Key_A, Qt::ControlModifier);
    hand.type("80");
    ASSERT_TRUE(hand.tabTo("markDay"));
    hand.key(Qt::Key_A, Qt::ControlModifier);
    hand.type("someday");
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.desk().notKeptText().startsWith("Seen on: "));
    hand.key(Qt::Key_Escape);
    EXPECT_EQ(rows().marks.size(), count);
    // What is kept as it is, and what a caution holds up.
    hand.key(Qt::Key_Escape);
    goTo("mantel", "Object");
    hand.key(Qt::Key_M, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("there is nothing to mark"));
    EXPECT_TRUE(hand.all("markTitle").empty());
    hand.key(Qt::Key_Escape);
    goTo("replace range", "Object");
    hand.key(Qt::Key_M, Qt::ControlModifier);
    hand.type("100");
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.says("is not marked while a caution of it is open"));
    EXPECT_EQ(rows().marks.size(), count);
}

// On an earlier day: the mark of 22 May goes on standing.
TEST_F(ScopeTest, AMarkOfAnotherDayIsOfThatDay) {
    Hand& hand = openSheet(later());
    goTo("baseboards", "Object");
    hand.key(Qt::Key_M, Qt::ControlModifier);
    hand.type("65");
    ASSERT_TRUE(hand.tabTo("markDay"));
    hand.key(Qt::Key_A, Qt::ControlModifier);
    hand.type("2026-05-21");
    ASSERT_TRUE(hand.tabTo("markNote"));
    hand.type("as told");
    hand.key(Qt::Key_Return);
    const auto made = lastMark("baseboards");
    EXPECT_EQ(made.markedOn, model::Date::fromYmd(2026, 5, 21).value());
    EXPECT_EQ(made.note, "as told");
    EXPECT_TRUE(hand.says("Done 75\u00a0%."));
}

TEST_F(ScopeTest, TheBaselineIsAskedForOnceFixedAndUndone) {
    Hand& hand = openSheet(later());
    const auto before = rows().baselines.size();
    ASSERT_EQ(before, 1u);
    hand.key(Qt::Key_F, Qt::ControlModifier);
    EXPECT_EQ(hand.focus(), "fixBaseline");
    EXPECT_TRUE(hand.says("The baseline of Friday 3 April 2026 stays in the book."));
    hand.key(Qt::Key_Escape);
    EXPECT_EQ(rows().baselines.size(), before) << "asked only";
    hand.click("baselineLink");
    hand.click("fixBaseline");
    const auto after = rows();
    ASSERT_EQ(after.baselines.size(), before + 1);
    const auto& fresh = after.baselines[0].frozenOn == model::Date::fromYmd(2026, 5, 22).value()
                            ? after.baselines[0]
                            : after.baselines[1];
    EXPECT_EQ(fresh.frozenOn, model::Date::fromYmd(2026, 5, 22).value());
    std::size_t items = 0;
    for (const auto& one : after.baseline_items) {
        items += one.baseline == fresh.id ? 1 : 0;
    }
    EXPECT_GT(items, 50u);
    hand.key(Qt::Key_F, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("The baseline of today is fixed already."));
    EXPECT_TRUE(hand.all("fixBaseline").empty());
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(rows().baselines.size(), before);
    EXPECT_EQ(rows().baseline_items.size(), after.baseline_items.size() - items);
}

TEST_F(ScopeTest, WithoutScopeThereIsNoBaseline) {
    Hand& hand = lay("");
    hand.type("9 Birch Lane");
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_3, Qt::ControlModifier);
    hand.key(Qt::Key_F, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("There is no scope to fix yet"));
}

}  // namespace
}  // namespace ledgerboard::ui
