// Protects the walk: notes read while they are typed, each row tied to its sentence both ways, rows
// corrected, dropped and kept by keys, and nothing in the book before that.
#include <QClipboard>
#include <QFile>
#include <QGuiApplication>

#include "tests/desk/desk_test.h"

namespace ledgerboard::ui {
namespace {

class WalkTest : public DeskTest {
  protected:
    // A job begun from nothing, at its walk.
    Hand& walk(const QString& notes) {
        Hand& hand = lay("");
        hand.type("9 Birch Lane");
        hand.key(Qt::Key_Return);
        hand.key(Qt::Key_Return);
        hand.key(Qt::Key_2, Qt::ControlModifier);
        EXPECT_EQ(hand.focus(), "walkNotes");
        hand.type(notes);
        EXPECT_TRUE(hand.wait([&] { return hand.all("draftRow").size() > 1; }));
        hand.settle();
        return hand;
    }

    model::JobRows rows() {
        const auto& desk = hand_->desk();
        return hand_->desk().book().jobRows(desk.job()).value();
    }

    QString selected() { return hand_->find("walkNotes")->property("selectedText").toString(); }
};

constexpr const char* kNotes =
    "Kitchen. Replace the sink. Repair the ceiling, forty square feet. Hall bath. Replace the tub.";

TEST_F(WalkTest, RowsAreTiedToTheirSentences) {
    Hand& hand = walk(QLatin1String(kNotes));
    EXPECT_TRUE(rows().items.empty());
    ASSERT_TRUE(hand.tabTo("draft"));
    EXPECT_EQ(selected(), "Replace the sink.");
    hand.key(Qt::Key_Down);
    EXPECT_EQ(selected(), "Repair the ceiling, forty square feet.");
    hand.key(Qt::Key_Down);
    EXPECT_EQ(selected(), "Replace the tub.");
    // Pointing at a row does the same.
    hand.hover("draftRow", 0.2, 0.5);
    EXPECT_EQ(selected(), "Replace the sink.");
}

TEST_F(WalkTest, RowsAreDroppedCorrectedAndKept) {
    Hand& hand = walk(QLatin1String(kNotes));
    ASSERT_TRUE(hand.tabTo("draft"));
    hand.key(Qt::Key_Space);  // no new sink
    hand.key(Qt::Key_Down);
    hand.key(Qt::Key_Return);
    EXPECT_EQ(hand.focus(), "part2");
    hand.type("plaster");
    hand.key(Qt::Key_Tab);
    hand.key(Qt::Key_A, Qt::ControlModifier);
    hand.type("many");
    hand.key(Qt::Key_Return);
    EXPECT_FALSE(hand.desk().notKeptText().isEmpty());
    hand.key(Qt::Key_A, Qt::ControlModifier);
    hand.type("55");
    hand.key(Qt::Key_Return);
    EXPECT_EQ(hand.focus(), "draft");
    EXPECT_TRUE(rows().items.empty());
    hand.key(Qt::Key_Return, Qt::ControlModifier);
    const auto kept = rows();
    ASSERT_EQ(kept.items.size(), 2u);
    EXPECT_EQ(kept.items[0].object, "plaster");
    EXPECT_EQ(kept.items[0].quantity, model::Quantity::of(55));
    EXPECT_EQ(kept.items[1].object, "bathtub");
    EXPECT_TRUE(hand.says("Kept from the notes: 2 items"));
    // Once more adds nothing; undo takes all of it back.
    hand.key(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("All of it was there already"));
    EXPECT_EQ(rows().items.size(), 2u);
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(rows().items.empty());
}

TEST_F(WalkTest, ACorrectionIsLearnedShownAndForgotten) {
    Hand& hand = walk(QLatin1String("Kitchen. Replace the tap. Replace the sink."));
    EXPECT_TRUE(hand.all("ownWord").empty());
    ASSERT_TRUE(hand.tabTo("draft"));
    hand.key(Qt::Key_Return);
    hand.type("pot filler");
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("1 word learned"));
    ASSERT_TRUE(hand.wait([&] { return hand.all("ownWord").size() == 1; }));
    EXPECT_TRUE(hand.says("“tap” means pot filler"));
    // Undone, it is not known any more; done again, it is.
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(hand.wait([&] { return hand.all("ownWord").empty(); }));
    hand.key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_TRUE(hand.wait([&] { return hand.all("ownWord").size() == 1; }));
    ASSERT_TRUE(hand.tabTo("ownWords"));
    hand.key(Qt::Key_Delete);
    EXPECT_TRUE(hand.wait([&] { return hand.all("ownWord").empty(); }));
    EXPECT_TRUE(hand.says("Forgotten"));
    EXPECT_EQ(hand.focus(), "draft");  // the list is gone: the keys go on working
}

TEST_F(WalkTest, NotesStayWhileAnotherPageIsLookedAt) {
    Hand& hand = walk(QLatin1String(kNotes));
    hand.key(Qt::Key_1, Qt::ControlModifier);
    EXPECT_EQ(hand.desk().page(), "week");
    hand.key(Qt::Key_2, Qt::ControlModifier);
    EXPECT_EQ(hand.find("walkNotes")->property("text").toString(), QLatin1String(kNotes));
    EXPECT_TRUE(hand.wait([&] { return hand.all("draftRow").size() == 3; }));
    hand.click("wipeNotes");
    EXPECT_TRUE(hand.wait([&] { return hand.all("draftRow").empty(); }));
}

TEST_F(WalkTest, NotesOfAnotherLanguageSayWhy) {
    Hand& hand = walk(QLatin1String(kNotes));
    hand.click("wipeNotes");
    QGuiApplication::clipboard()->setText(
        QStringLiteral("La cocina necesita muchas cosas nuevas porque los gabinetes no sirven. ")
            .repeated(12));
    hand.key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_TRUE(hand.wait([&] { return hand.said("walkSum").value(0).contains("English"); }))
        << hand.said("walkSum").value(0).toStdString();
}

// Whatever is on a page is translated: no message of the files is unfinished.
TEST(Translations, NoneIsUnfinished) {
    for (const char* name : {"desk_es.ts", "desk_en.ts"}) {
        QFile file(QStringLiteral(LEDGERBOARD_CLIENT "/") + QLatin1String(name));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << name;
        const QByteArray all = file.readAll();
        EXPECT_TRUE(all.contains("<translation>")) << name;
        EXPECT_FALSE(all.contains("type=\"unfinished\"")) << name;
    }
}

}  // namespace
}  // namespace ledgerboard::ui
