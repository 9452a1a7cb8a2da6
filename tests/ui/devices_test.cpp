// Protects a phone that meets others, through the real peer program on loopback: it joins by a
// typed code with nothing in hand, gets the house, marks and photographs it, and the laptop's book
// has all of that after two meetings; out of reach, nothing is lost and it says so; a crew lead's
// phone holds no money; one that was shut out loses its copy.
#include <nlohmann/json.hpp>

#include <QFile>
#include <QPainter>

#include "core/store/photos.h"
#include "sync/identity/qr_picture.h"

#include "tests/support/peer_process.h"
#include "tests/ui/phone_test.h"
#include "tests/unit/cli/command_line.h"

namespace ledgerboard::ui {
namespace {

class DevicesTest : public PhoneTest {
  protected:
    void SetUp() override {
        PhoneTest::SetUp();
        takePictures(1);
        say({"start", "14 Quince Row", "--owner", "Wren", "--budget", "105000"});
        say({"add", "space", "Space=Kitchen"});
        say({"add", "crew", "Crew=Trim crew", "Trade=carpentry"});
        say({"add", "scope", "Space=Kitchen", "Treatment=repair", "Object=shelf", "Lump sum=4200",
             "Crew=Trim crew"});
        say({"join", sync::toText(peer_.place()), peer_.code().toText(), "--called", "laptop"});
    }

    std::string say(const std::vector<std::string>& arguments) {
        const auto answer = laptop_(arguments);
        EXPECT_EQ(answer.status, 0) << arguments.front() << ": " << answer.out << answer.err;
        return answer.out;
    }

    // Joins on the phone by the code of an invitation.
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

    void meetOnPhone(const char* expected) {
        Thumb& thumb = *thumb_;
        thumb.tap("wholeHouse");
        thumb.scrollTo("devices");
        thumb.tap("devices");
        thumb.tap("keepTool");
        EXPECT_TRUE(thumb.wait([&] { return thumb.says(expected); }))
            << thumb.texts().join(" | ").toStdString();
    }

    QString phoneBook() const { return thumb_->folder() + "/books/joined.book"; }

    ledgerboard::tests::PeerProcess peer_;
    cli::CommandLine laptop_{peer_.folder().file("laptop.book")};
};

TEST_P(DevicesTest, WhatThePhoneKeptIsOnTheLaptop) {
    join({"invite", "owner"});
    Thumb& thumb = *thumb_;
    thumb.tapText("item", "shelf");
    thumb.tap("finished");
    thumb.tap("tool-photo");
    thumb.tap("picture");
    thumb.tap("back");
    EXPECT_TRUE(thumb.says("1 mark, 1 photo wait")) << thumb.texts().join(" | ").toStdString();
    meetOnPhone("Up: ");
    EXPECT_TRUE(thumb.wait([&] { return thumb.says("nothing waits"); }));
    say({"sync"});
    const std::string marks = say({"list", "marks"});
    EXPECT_NE(marks.find("100"), std::string::npos) << marks;
    auto book =
        store::Book::open(peer_.folder().file("laptop.book"), ledgerboard::tests::fixedChance(3));
    ASSERT_TRUE(book.ok());
    const auto photos = book.value().rows<model::Photo>().value();
    ASSERT_EQ(photos.size(), 1u);
    EXPECT_EQ(store::Photos(peer_.folder().file("laptop.book")).check(photos[0].digest),
              store::PhotoState::Right);
}

TEST_P(DevicesTest, AnInvitationsPictureJoins) {
    const auto said = nlohmann::json::parse(say({"--json", "invite", "owner"}));
    const auto modules = sync::qrModules(said["picture"].get<std::string>());
    ASSERT_TRUE(modules.ok());
    // Photographed at a slant, on a ground that is not white.
    const int side = static_cast<int>(modules.value().size());
    QImage picture(1200, 1000, QImage::Format_RGB32);
    picture.fill(QColor(210, 205, 190));
    QPainter painter(&picture);
    painter.translate(300, 150);
    painter.rotate(7);
    const int step = 600 / side;
    painter.fillRect(-4 * step, -4 * step, (side + 8) * step, (side + 8) * step, Qt::white);
    for (int y = 0; y < side; ++y) {
        for (int x = 0; x < side; ++x) {
            if (modules.value()[static_cast<std::size_t>(y)][static_cast<std::size_t>(x)]) {
                painter.fillRect(x * step, y * step, step, step, QColor(30, 30, 40));
            }
        }
    }
    painter.end();
    const QString path = QString::fromStdString(folder_.file("invitation.jpg"));
    ASSERT_TRUE(picture.save(path));
    Thumb& thumb = hold("");
    thumb.tap("joinPeer");
    QQuickItem* page = thumb.find("joinPage");
    ASSERT_NE(page, nullptr);
    QMetaObject::invokeMethod(page, "readCode",
                              Q_ARG(QString, QString::fromStdString(folder_.file("none.jpg"))));
    EXPECT_TRUE(thumb.says("No invitation is read in that picture."));
    QMetaObject::invokeMethod(page, "readCode", Q_ARG(QString, path));
    EXPECT_TRUE(thumb.wait([&] { return thumb.book().state() == phone::JobBook::Open; }));
    EXPECT_TRUE(thumb.book().isOwner());
}

TEST_P(DevicesTest, OutOfReachNothingIsLost) {
    join({"invite", "owner"});
    peer_.stop();
    thumb_->tapText("item", "shelf");
    thumb_->tap("finished");
    EXPECT_TRUE(thumb_->says("Shelf: done"));
    EXPECT_TRUE(thumb_->says("1 mark wait"));
}

TEST_P(DevicesTest, ACrewLeadsPhoneHoldsNoMoney) {
    join({"invite", "crew-lead", "Trim crew"});
    EXPECT_FALSE(thumb_->book().isOwner());
    EXPECT_TRUE(thumb_->says("shelf"));
    EXPECT_TRUE(thumb_->all("tool-receipt").empty());
    auto book = store::Book::open(phoneBook().toStdString(), ledgerboard::tests::fixedChance(3));
    ASSERT_TRUE(book.ok());
    const std::string dump = book.value().dump().value();
    EXPECT_EQ(dump.find("420000"), std::string::npos);
    EXPECT_EQ(dump.find("10500000"), std::string::npos);
    thumb_->tapText("item", "shelf");
    thumb_->tap("finished");
    EXPECT_TRUE(thumb_->says("Shelf: done")) << thumb_->texts().join(" | ").toStdString();
    meetOnPhone("Up: ");
    say({"sync"});
    EXPECT_NE(say({"list", "marks"}).find("100"), std::string::npos);
}

TEST_P(DevicesTest, AWrongCodeSaysSo) {
    Thumb& thumb = hold("");
    thumb.tap("joinPeer");
    thumb.type("peerAddress", QString::fromStdString(sync::toText(peer_.place())));
    thumb.type("peerCode", "AAAAA-AAAAA");
    thumb.tap("keepTool");
    QQuickItem* said = thumb.find("peerSaid");
    ASSERT_NE(said, nullptr);
    EXPECT_FALSE(said->property("text").toString().isEmpty());
    EXPECT_EQ(thumb.book().state(), phone::JobBook::NoBook);
}

TEST_P(DevicesTest, OneThatWasShutOutLosesItsCopy) {
    join({"invite", "owner"});
    say({"sync"});
    say({"revoke", "phone"});
    ASSERT_TRUE(QFile::exists(phoneBook()));
    thumb_->tap("wholeHouse");
    thumb_->scrollTo("devices");
    thumb_->tap("devices");
    thumb_->tap("keepTool");
    EXPECT_TRUE(thumb_->wait([&] { return thumb_->book().state() == phone::JobBook::NoBook; }));
    EXPECT_FALSE(QFile::exists(phoneBook()));
}

INSTANTIATE_TEST_SUITE_P(OneSize, DevicesTest, testing::Values(QSize(390, 844)));

}  // namespace
}  // namespace ledgerboard::ui
