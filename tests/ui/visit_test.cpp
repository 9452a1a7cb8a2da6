// Protects a whole visit through the real peer program, on a phone that is cut off meanwhile: it
// joins, walks five rooms with swipes, marks, photographs, writes down what is to be put right,
// keeps a receipt and a note; back online it meets, and the owner's other book has all of it, to
// the byte of the pictures. And the crew lead's day: own work by day, marks, a picture, ready to
// look, something found with what it may cost, which the owner then signs on a phone.
#include <nlohmann/json.hpp>

#include "core/store/photos.h"

#include "tests/support/peer_process.h"
#include "tests/ui/phone_test.h"
#include "tests/unit/cli/command_line.h"

namespace ledgerboard::ui {
namespace {

const std::vector<std::string>& rooms() {
    static const std::vector<std::string> kRooms = {"Entry", "Kitchen", "Hall bath", "Dining room",
                                                    "Porch"};
    return kRooms;
}

// The peer program has the machine's clock, so days are far from any that it may be.
class VisitTest : public PhoneTest {
  protected:
    void SetUp() override {
        PhoneTest::SetUp();
        takePictures(6);
        clockRuns_ = true;
        say({"start", "14 Quince Row", "--owner", "Wren", "--budget", "105000"});
        say({"set", "job", "Access", "key box at the side door"});
        say({"add", "crew", "Crew=Trim crew", "Trade=carpentry"});
        say({"add", "crew", "Crew=Paint crew", "Trade=paint"});
        for (const auto& room : rooms()) {
            say({"add", "space", "Space=" + room});
            say({"add", "scope", "Space=" + room, "Treatment=add", "Object=shelf", "Lump sum=4200",
                 "Crew=Trim crew", "Planned start=2020-01-01", "Planned finish=2099-12-31"});
        }
        say({"add", "scope", "Space=Kitchen", "Treatment=add", "Object=curtain rod", "Lump sum=150",
             "Crew=Paint crew", "Planned start=2099-12-01", "Planned finish=2099-12-08"});
        say({"join", sync::toText(peer_.place()), peer_.code().toText(), "--called", "laptop"});
    }

    std::string say(const std::vector<std::string>& arguments) {
        const auto answer = laptop_(arguments);
        EXPECT_EQ(answer.status, 0) << arguments.front() << ": " << answer.out << answer.err;
        return answer.out;
    }

    void join(std::vector<std::string> invite) {
        invite.insert(invite.begin(), "--json");
        const auto said = nlohmann::json::parse(say(invite));
        Thumb& thumb = hold("");
        thumb.tap("joinPeer");
        thumb.type("peerAddress", QString::fromStdString(sync::toText(peer_.place())));
        thumb.type("peerCode", QString::fromStdString(said["code"].get<std::string>()));
        thumb.tap("keepTool");
        EXPECT_TRUE(thumb.wait([&] { return thumb.book().state() == phone::JobBook::Open; }));
        thumb.settle();
    }

    QString here() { return thumb_->find(QStringLiteral("title"))->property("text").toString(); }

    void meetOnPhone() {
        if (!thumb_->all("wholeHouse").empty()) {
            thumb_->tap("wholeHouse");
        }
        thumb_->scrollTo("devices");
        thumb_->tap("devices");
        thumb_->tap("keepTool");
        EXPECT_TRUE(thumb_->wait([&] { return thumb_->says("nothing waits"); }))
            << thumb_->texts().join(" | ").toStdString();
        thumb_->tap("back");
    }

    // The rows of the laptop's book after it met.
    model::JobRows laptopRows() {
        say({"sync"});
        auto book = store::Book::open(peer_.folder().file("laptop.book"),
                                      ledgerboard::tests::fixedChance(3));
        const auto jobs = book.value().rows<model::Job>().value();
        return book.value().jobRows(jobs.front().id).value();
    }

    void expectBytes(const model::JobRows& rows) {
        const store::Photos files(peer_.folder().file("laptop.book"));
        for (const auto& photo : rows.photos) {
            EXPECT_EQ(files.check(photo.digest), store::PhotoState::Right);
        }
    }

    void typeDigits(const std::vector<const char*>& keys) {
        for (const char* key : keys) {
            thumb_->scrollTo(key);
            thumb_->tap(key);
        }
    }

    ledgerboard::tests::PeerProcess peer_;
    cli::CommandLine laptop_{peer_.folder().file("laptop.book")};
};

TEST_P(VisitTest, CutOffFiveRoomsThenTheOtherBookHasAllOfIt) {
    join({"invite", "owner"});
    Thumb& thumb = *thumb_;
    peer_.stop();
    for (std::size_t k = 0; k < rooms().size(); ++k) {
        EXPECT_EQ(here().toStdString(), rooms()[k]);
        thumb.resetCount();
        thumb.tap("tool-mark");
        thumb.tap("finish");
        EXPECT_EQ(thumb.taps(), 2);
        thumb.resetCount();
        thumb.tap("tool-photo");
        thumb.tap("picture", static_cast<int>(k));
        EXPECT_EQ(thumb.taps(), 2);
        thumb.tap("back");
        EXPECT_EQ(here().toStdString(), rooms()[k]);
        thumb.swipe(true);
    }
    // A swipe past the last room touches nothing.
    EXPECT_EQ(here().toStdString(), "Porch");
    thumb.resetCount();
    thumb.tap("tool-punch");
    thumb.type("punchWhat", "door rubs");
    thumb.tap("crew");
    thumb.tap("picture");
    thumb.tap("keepTool");
    EXPECT_EQ(thumb.taps(), 4);
    thumb.resetCount();
    thumb.tap("tool-receipt");
    thumb.tap("picture");
    thumb.tap("payFor");
    EXPECT_EQ(thumb.taps(), 3);
    typeDigits({"key2", "key1", "key4", "key6", "key0"});
    thumb.scrollTo("typed");
    thumb.tap("typed", 1);
    typeDigits({"key1", "key6", "key0", "key0"});
    thumb.tap("keepTool");
    thumb.scrollTo("addNote");
    thumb.tap("addNote");
    thumb.type("noteText", "soft spot at the step");
    thumb.tap("keepNote");
    EXPECT_TRUE(thumb.says("5 marks, 7 photos")) << thumb.texts().join(" | ").toStdString();

    peer_.start();
    meetOnPhone();
    const auto rows = laptopRows();
    EXPECT_EQ(rows.marks.size(), 5u);
    EXPECT_EQ(rows.photos.size(), 7u);
    expectBytes(rows);
    ASSERT_EQ(rows.punches.size(), 1u);
    EXPECT_EQ(rows.punches[0].what, "door rubs");
    ASSERT_EQ(rows.spends.size(), 1u);
    EXPECT_EQ(rows.spends[0].amount, model::Money::fromMinor(21'460));
    EXPECT_EQ(rows.spends[0].tax, model::Money::fromMinor(1'600));
    ASSERT_EQ(rows.notes.size(), 1u);
    EXPECT_EQ(rows.notes[0].text, "soft spot at the step");
}

TEST_P(VisitTest, TheCrewLeadsDay) {
    join({"invite", "crew-lead", "Trim crew"});
    Thumb& thumb = *thumb_;
    thumb.tap("wholeHouse");
    EXPECT_TRUE(thumb.says("key box at the side door"));
    EXPECT_TRUE(thumb.says("Today"));
    EXPECT_TRUE(thumb.says("Entry; to be finished Thu 31 Dec"))
        << thumb.texts().join(" | ").toStdString();
    EXPECT_TRUE(thumb.all("tool-receipt").empty());
    thumb.tapText("dayItem", "Kitchen");
    EXPECT_TRUE(thumb.says("After you: Add curtain rod, from Tue 1 Dec"))
        << thumb.texts().join(" | ").toStdString();
    thumb.tap("ready");
    EXPECT_TRUE(thumb.says("Shelf: ready to be looked at"));
    thumb.tap("finished");
    EXPECT_TRUE(thumb.says("Shelf: done"));
    thumb.tapText("dayItem", "Hall bath");
    thumb.scrollTo("problem");
    thumb.tap("problem");
    thumb.type("foundWords", "wall behind the shelf is wet");
    thumb.tap("picture");
    thumb.tap("askForMoney");
    typeDigits({"key4", "key5", "key0", "key00"});
    thumb.tap("keepTool");
    EXPECT_TRUE(thumb.says("the owner gets it at the next meeting"))
        << thumb.texts().join(" | ").toStdString();
    thumb.tap("back");
    meetOnPhone();
    auto book = store::Book::open((thumb.folder() + "/books/joined.book").toStdString(),
                                  ledgerboard::tests::fixedChance(3));
    EXPECT_TRUE(book.value().rows<model::Change>().value().empty());
    const auto rows = laptopRows();
    EXPECT_EQ(rows.marks.size(), 1u);
    ASSERT_EQ(rows.changes.size(), 1u);
    EXPECT_EQ(rows.changes[0].name, "wall behind the shelf is wet");
    EXPECT_EQ(rows.changes[0].amount, model::Money::of(450));
    EXPECT_FALSE(rows.changes[0].signedOn.has_value());
    EXPECT_EQ(rows.changes[0].photo, rows.photos.at(0).id);
    expectBytes(rows);
}

INSTANTIATE_TEST_SUITE_P(Sizes, VisitTest, testing::Values(QSize(390, 844)));

}  // namespace
}  // namespace ledgerboard::ui
