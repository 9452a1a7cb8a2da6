// Protects the states that nobody hopes for, each designed: names as long as a sentence and names
// that are missing, 60 spaces, 400 punch items, a disk that is full, a peer that answers nonsense,
// a clock that is a year off. The screen says what is the case and offers the next step.
#include <QTcpServer>
#include <QTcpSocket>

#include "core/store/sync_book.h"

#include "tests/support/faulty_disk.h"
#include "tests/ui/hard_house.h"
#include "tests/ui/phone_test.h"

namespace ledgerboard::ui {
namespace {

// Whatever calls is answered with words that mean nothing.
class Babbler : public QTcpServer {
  public:
    Babbler() {
        listen(QHostAddress::LocalHost);
        connect(this, &QTcpServer::newConnection, this, [this] {
            QTcpSocket* caller = nextPendingConnection();
            caller->write("colorless green ideas 1234\n\n");
            caller->flush();
            caller->disconnectFromHost();
            ++calls;
        });
    }

    int calls = 0;
};

class StatesTest : public PhoneTest {
  protected:
    Thumb& holdHard() { return hold(buildHardHouse(folder_.file("hard.book")).path); }

    // Every visible text lies within the screen's width.
    void expectWithin() {
        for (QQuickItem* text : thumb_->textItems()) {
            const double left = text->mapToScene(QPointF()).x();
            EXPECT_GE(left, -1) << text->property("text").toString().toStdString();
            EXPECT_LE(left + text->width(), thumb_->view().width() + 1)
                << text->property("text").toString().toStdString();
        }
    }
};

TEST_P(StatesTest, LongNamesAreWholeAndMissingOnesAreSaid) {
    Thumb& thumb = holdHard();
    EXPECT_TRUE(thumb.says("the stair up to the old sleeping porch"));
    EXPECT_TRUE(thumb.says("north wall to the chimney breast"));
    expectWithin();
    thumb.tap("item");
    EXPECT_TRUE(thumb.says("north wall to the chimney breast"));
    expectWithin();
    thumb.tap("back");
    thumb.swipe(true);
    EXPECT_TRUE(thumb.says("No name"));
    EXPECT_TRUE(thumb.says("something without a name"));
}

TEST_P(StatesTest, SixtySpacesAreAListAndAStrip) {
    Thumb& thumb = holdHard();
    thumb.tap("wholeHouse");
    EXPECT_TRUE(thumb.says("The former boarding house"));
    expectWithin();
    thumb.tapText("space", "Guest room 12");
    const QQuickItem* title = thumb.find("title");
    ASSERT_NE(title, nullptr);
    EXPECT_EQ(title->property("text").toString(), "Guest room 12");
    EXPECT_LT(thumb.all("space").size(), 60u);
}

TEST_P(StatesTest, FourHundredPunchItemsAreAFewAndTheWayToAll) {
    Thumb& thumb = holdHard();
    thumb.swipe(true);
    thumb.swipe(true);
    EXPECT_TRUE(thumb.says("400 punch items open."));
    thumb.scrollTo("allPunches");
    EXPECT_LE(thumb.all("punchItem").size(), 6u);
    thumb.tap("allPunches");
    EXPECT_TRUE(thumb.says("400 punch items open."));
    thumb.scrollDown();
    thumb.tap("punchItem");
    thumb.tap("keepTool");
    EXPECT_TRUE(thumb.says("Punch item accepted"));
    EXPECT_TRUE(thumb.wait([&] { return thumb.says("399 punch items open."); }));
}

TEST_P(StatesTest, AFullDiskIsSaidAndNothingIsLost) {
    ledgerboard::tests::FaultyDisk disk;
    Thumb& thumb = hold();
    thumb.tapText("item", "cabinets");
    disk.arm(ledgerboard::tests::Fault::Full, 1, true);
    thumb.tap("finished");
    EXPECT_TRUE(thumb.says("Not kept. the disk is full"))
        << thumb.texts().join(" | ").toStdString();
    thumb.preferences().setLanguage("es");
    disk.arm(ledgerboard::tests::Fault::Full, 1, true);
    thumb.tap("finished");
    EXPECT_TRUE(thumb.says("el disco está lleno")) << thumb.texts().join(" | ").toStdString();
    thumb.preferences().setLanguage("en");
    disk.mend();
    EXPECT_EQ(thumb.find("title")->property("text").toString(), "Replace cabinets");
    EXPECT_EQ(marksOf(house_, "cabinets").size(), 1u);
    thumb.tap("finished");
    EXPECT_TRUE(thumb.says("Cabinets: done"));
    EXPECT_EQ(marksOf(house_, "cabinets").size(), 2u);
    thumb_.reset();
}

TEST_P(StatesTest, APeerThatAnswersNonsenseIsSaid) {
    Babbler babbler;
    Thumb& thumb = hold("");
    thumb.tap("joinPeer");
    thumb.type("peerAddress", QStringLiteral("127.0.0.1:%1").arg(babbler.serverPort()));
    thumb.type("peerCode", "AAAAA-AAAAA-AAAAA-AAAAA-AAAAA");
    thumb.tap("keepTool");
    EXPECT_TRUE(thumb.wait([&] {
        QQuickItem* said = thumb.find("peerSaid");
        return said != nullptr && !said->property("text").toString().isEmpty();
    }));
    EXPECT_EQ(thumb.book().state(), phone::JobBook::NoBook);
    EXPECT_TRUE(thumb.find("keepTool")->isEnabled());
}

TEST_P(StatesTest, AClockAYearOffIsSetRightByThePeers) {
    constexpr std::int64_t kYearMs = std::int64_t{365} * 24 * 3600 * 1000;
    {
        // As a meeting leaves it (docs/sync.md tells of the clock).
        auto book = store::Book::open(house_.path, ledgerboard::tests::fixedChance(8));
        ASSERT_TRUE(book.ok());
        store::Taking taking;
        taking.remember = {{"sync.clock_offset", -kYearMs}};
        ASSERT_TRUE(store::SyncBook(book.value()).take(taking).ok());
    }
    Held held;
    held.size = GetParam();
    held.now = model::Instant::fromMilliseconds(noonOnFriday().milliseconds() + kYearMs);
    held.book = QString::fromStdString(house_.path);
    thumb_ = std::make_unique<Thumb>(held);
    Thumb& thumb = *thumb_;
    thumb.tapText("item", "cabinets");
    thumb.tap("finished");
    EXPECT_EQ(marksOf(house_, "cabinets").back().markedOn->toString(), "2026-05-15");
    thumb.tap("wholeHouse");
    EXPECT_TRUE(thumb.says("Fri 15 May, week 6"));
    thumb.scrollTo("devices");
    thumb.tap("devices");
    EXPECT_TRUE(thumb.says("This phone's clock is ahead by 365 days."));
}

INSTANTIATE_TEST_SUITE_P(Sizes, StatesTest,
                         testing::Values(QSize(360, 780), QSize(390, 844), QSize(820, 1180)));

}  // namespace
}  // namespace ledgerboard::ui
