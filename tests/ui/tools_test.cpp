// Protects the belt's tools that bring something in: photos, punch items, receipts. The taps that
// were promised, what stands in the book afterwards, and that the bytes are there before the row.
#include <QFile>
#include <QImageReader>

#include "core/store/photos.h"

#include "mobile/site_photos.h"
#include "mobile/sound_desk.h"
#include "tests/support/heif_pictures.h"
#include "tests/ui/phone_test.h"

namespace ledgerboard::ui {
namespace {

class ToolsTest : public PhoneTest {
  protected:
    void SetUp() override {
        PhoneTest::SetUp();
        takePictures(4);
    }

    void expectKept(const model::Photo& photo) {
        EXPECT_EQ(store::Photos(house_.path).check(photo.digest), store::PhotoState::Right);
        EXPECT_EQ(photo.width, 64);
        EXPECT_EQ(photo.height, 48);
    }
};

TEST_P(ToolsTest, APhotoOfThisSpaceTakesTwoTaps) {
    Thumb& thumb = hold();
    thumb.tap("tool-photo");
    thumb.tap("picture");
    EXPECT_EQ(thumb.taps(), 2);
    auto rows = rowsOf(house_);
    ASSERT_EQ(rows.photos.size(), 1u);
    expectKept(rows.photos[0]);
    EXPECT_EQ(rows.photos[0].space, rows.spaces[0].id);
    // The kitchen is begun and not finished.
    EXPECT_EQ(rows.photos[0].stage, model::Stage::During);
    EXPECT_EQ(rows.photos[0].purpose, model::Purpose::Site);
    // Several in a row, without leaving.
    thumb.tap("picture", 1);
    EXPECT_EQ(rowsOf(house_).photos.size(), 2u);
}

TEST_P(ToolsTest, TheStageIsGuessedAndCanBeChanged) {
    Thumb& thumb = hold();
    thumb.tap("chipDR");  // everything is finished there
    thumb.tap("tool-photo");
    thumb.tap("picture");
    EXPECT_EQ(rowsOf(house_).photos.back().stage, model::Stage::After);
    thumb.tap("stage", 0);
    thumb.tap("picture", 1);
    EXPECT_EQ(rowsOf(house_).photos.back().stage, model::Stage::Before);
}

TEST_P(ToolsTest, AnAfterPictureIsPairedWithTheOneBefore) {
    Thumb& thumb = hold();
    thumb.tap("tool-photo");
    thumb.tap("stage", 0);
    thumb.tap("picture");
    thumb.tap("stage", 2);
    thumb.scrollTo("picture");
    thumb.tap("picture");
    const auto rows = rowsOf(house_);
    ASSERT_EQ(rows.photos.size(), 2u);
    EXPECT_EQ(rows.photos[1].pairsWith, rows.photos[0].id);
}

TEST_P(ToolsTest, APunchItemWithAPhotoTakesFourTaps) {
    Thumb& thumb = hold();
    thumb.tap("tool-punch");
    thumb.type("punchWhat", "door rubs");
    thumb.tap("crew");
    thumb.tap("picture");
    thumb.tap("keepTool");
    EXPECT_EQ(thumb.taps(), 4);
    const auto rows = rowsOf(house_);
    ASSERT_EQ(rows.punches.size(), 1u);
    EXPECT_EQ(rows.punches[0].what, "door rubs");
    EXPECT_EQ(rows.punches[0].crew, house_.tileCrew);
    EXPECT_EQ(rows.punches[0].dueOn->toString(), "2026-05-18");  // three days on
    ASSERT_EQ(rows.photos.size(), 1u);
    EXPECT_EQ(rows.photos[0].punch, rows.punches[0].id);
    thumb.scrollTo("punchItem");
    EXPECT_TRUE(thumb.says("Tile crew, by Monday: door rubs"));
}

TEST_P(ToolsTest, AnOwnerAcceptsAPunchItemOrSendsItBack) {
    Thumb& thumb = hold();
    thumb.tap("tool-punch");
    thumb.type("punchWhat", "door rubs");
    thumb.tap("keepTool");
    thumb.scrollTo("punchItem");
    thumb.tap("punchItem");
    thumb.scrollTo("notRight");
    thumb.tap("notRight");
    EXPECT_EQ(rowsOf(house_).looks.back().said, model::Verdict::NotRight);
    thumb.scrollTo("punchItem");
    thumb.tap("punchItem");
    thumb.tap("keepTool");
    EXPECT_EQ(rowsOf(house_).looks.back().said, model::Verdict::Accepted);
    EXPECT_TRUE(thumb.wait([&] { return thumb.all("punchItem").empty(); }));
}

TEST_P(ToolsTest, AReceiptTakesFourTapsAndDigits) {
    Thumb& thumb = hold();
    thumb.tap("tool-receipt");
    thumb.tap("picture");
    thumb.tap("payFor");
    EXPECT_EQ(thumb.taps(), 3);
    for (const char* key : {"key2", "key1", "key4", "key6", "key0"}) {
        thumb.scrollTo(key);
        thumb.tap(key);
    }
    EXPECT_TRUE(thumb.says("214.60"));
    thumb.tap("keepTool");
    const auto rows = rowsOf(house_);
    ASSERT_EQ(rows.spends.size(), 1u);
    EXPECT_EQ(rows.spends[0].amount, model::Money::fromMinor(21'460));
    EXPECT_EQ(rows.spends[0].type, model::SpendKind::Receipt);
    EXPECT_FALSE(rows.spends[0].item.isNil());
    ASSERT_EQ(rows.photos.size(), 1u);
    EXPECT_EQ(rows.spends[0].photo, rows.photos[0].id);
    EXPECT_EQ(rows.photos[0].purpose, model::Purpose::Receipt);
    expectKept(rows.photos[0]);
}

TEST_P(ToolsTest, TheTaxInAReceiptIsTypedBesideItsSum) {
    Thumb& thumb = hold();
    thumb.tap("tool-receipt");
    const auto type = [&](const std::vector<const char*>& keys) {
        for (const char* key : keys) {
            thumb.scrollTo(key);
            thumb.tap(key);
        }
    };
    type({"key1", "key0", "key00"});
    thumb.scrollTo("typed");
    thumb.tap("typed", 1);
    type({"key8", "key00", "key00"});
    thumb.tap("keepTool");
    EXPECT_TRUE(thumb.says("The tax is more than the whole sum."));
    EXPECT_TRUE(rowsOf(house_).spends.empty());
    thumb.tap("closeNote");
    type({"key", "key"});  // rubs out the last two digits
    thumb.tap("keepTool");
    const auto rows = rowsOf(house_);
    ASSERT_EQ(rows.spends.size(), 1u);
    EXPECT_EQ(rows.spends[0].amount, model::Money::of(10));
    EXPECT_EQ(rows.spends[0].tax, model::Money::of(8));
}

// Exif 2.32, 4.6.5: DateTimeOriginal is the camera's own clock, OffsetTimeOriginal its zone.
TEST_P(ToolsTest, AKeptPhotoIsOfTheDayTheCameraSays) {
    const QString path = QString::fromStdString(folder_.file("pictures/0.jpg"));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const std::string plain = file.readAll().toStdString();
    file.close();
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(QByteArray::fromStdString(
        ledgerboard::tests::withCameraTime(plain, "2026:05:08 14:05:00")));
    file.close();
    Thumb& thumb = hold();
    phone::SitePhotos photos;
    photos.setSpaceId(thumb.preferences().lastSpace());
    ASSERT_TRUE(photos.keepPicture(path, 0));
    // 14:05 in Chicago in May is 19:05 UTC.
    EXPECT_EQ(rowsOf(house_).photos.at(0).takenAt->toString(), "2026-05-08T19:05:00.000Z");
}

TEST_P(ToolsTest, ATelephonesHeicIsKeptAndShown) {
    const QString path = QString::fromStdString(folder_.file("pictures/9.heic"));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(QByteArray::fromStdString(ledgerboard::tests::paintedHeif(64, 48)));
    file.close();
    Thumb& thumb = hold();
    phone::SitePhotos photos;
    photos.setSpaceId(thumb.preferences().lastSpace());
    ASSERT_TRUE(photos.keepPicture(path, 0));
    expectKept(rowsOf(house_).photos.at(0));
    // As every Image of the screens reads it, whose file has no ending.
    QImageReader reader(QString::fromStdString(
        store::Photos(house_.path).pathOf(rowsOf(house_).photos[0].digest).string()));
    reader.setDecideFormatFromContent(true);
    EXPECT_EQ(reader.size(), QSize(64, 48));
    const QImage shown = reader.read();
    EXPECT_GT(shown.pixelColor(8, 8).red(), 200);
    EXPECT_GT(shown.pixelColor(56, 8).green(), 200);
    EXPECT_GT(shown.pixelColor(8, 40).blue(), 200);
}

TEST_P(ToolsTest, WithoutAMicrophoneANoteIsTyped) {
    Thumb& thumb = hold();
    thumb.hold("tool-punch");
    EXPECT_TRUE(thumb.says("No microphone is found on this device."));
    thumb.tap("keepTool");
    thumb.type("noteText", "two outlets short");
    thumb.tap("keepNote");
    EXPECT_EQ(rowsOf(house_).notes.at(0).text, "two outlets short");
}

TEST_P(ToolsTest, ASpokenNoteIsKeptAsSoundAndTypedOutLater) {
    Thumb& thumb = hold();
    const QString path = QString::fromStdString(folder_.file("spoken.ogg"));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("OggS and what was said");
    file.close();
    phone::SoundDesk sound;
    const auto kitchen = rowsOf(house_).spaces[0].id;
    ASSERT_TRUE(sound.keepSound(path, QString::fromStdString(kitchen.raw().toString())));
    thumb.settle();
    auto rows = rowsOf(house_);
    ASSERT_EQ(rows.notes.size(), 1u);
    EXPECT_EQ(store::Photos(house_.path).read(rows.notes[0].sound).value(),
              "OggS and what was said");
    thumb.scrollTo("typeOut");
    EXPECT_TRUE(thumb.says("Spoken note, not typed yet"));
    thumb.tap("typeOut");
    thumb.type("noteText", "vent is loose");
    thumb.tap("keepNote");
    rows = rowsOf(house_);
    EXPECT_EQ(rows.notes.at(0).text, "vent is loose");
    EXPECT_EQ(rows.notes[0].typedOn->toString(), "2026-05-15");
    EXPECT_FALSE(rows.notes[0].sound.empty());
}

TEST_P(ToolsTest, SomethingFoundIsAnAskedChangeThatAnOwnerSigns) {
    Thumb& thumb = hold();
    thumb.hold("tool-photo");
    thumb.type("foundWords", "joists are rotten");
    EXPECT_TRUE(thumb.says("This space"));
    EXPECT_TRUE(thumb.says("Replace closet shelves"));
    thumb.tap("picture");
    thumb.tap("keepTool");
    EXPECT_EQ(thumb.taps(), 3);
    auto rows = rowsOf(house_);
    ASSERT_EQ(rows.changes.size(), 1u);
    EXPECT_EQ(rows.changes[0].askedOn->toString(), "2026-05-15");
    EXPECT_EQ(rows.changes[0].photo, rows.photos.at(0).id);
    EXPECT_FALSE(rows.changes[0].amount.has_value());
    EXPECT_EQ(rows.photos[0].caption, "joists are rotten");
    thumb.tap("wholeHouse");
    thumb.tapText("need", "Say yes or no to joists are rotten");
    EXPECT_TRUE(thumb.says("Asked today by Owner"));
    thumb.tap("signNewMoney");
    rows = rowsOf(house_);
    EXPECT_EQ(rows.changes[0].signedOn->toString(), "2026-05-15");
    EXPECT_EQ(rows.changes[0].paidFrom, model::PaidFrom::NewMoney);
}

TEST_P(ToolsTest, AReceiptMayWaitForItsAmount) {
    Thumb& thumb = hold();
    thumb.tap("tool-receipt");
    thumb.tap("keepTool");
    EXPECT_TRUE(thumb.says("A receipt needs its picture or its amount."));
    EXPECT_TRUE(rowsOf(house_).spends.empty());
    thumb.tap("picture");
    thumb.tap("keepTool");
    const auto rows = rowsOf(house_);
    ASSERT_EQ(rows.spends.size(), 1u);
    EXPECT_FALSE(rows.spends[0].amount.has_value());
}

TEST_P(ToolsTest, WhatIsNoPictureIsRefusedAndTheBookIsAsItWas) {
    QFile broken(QString::fromStdString(folder_.file("pictures/9.jpg")));
    ASSERT_TRUE(broken.open(QIODevice::WriteOnly));
    broken.write("not a picture");
    broken.close();
    Thumb& thumb = hold();
    EXPECT_FALSE(thumb.book().now() == nullptr);
    phone::SitePhotos photos;
    photos.setSpaceId(thumb.preferences().lastSpace());
    EXPECT_FALSE(photos.keepPicture(broken.fileName(), 0));
    EXPECT_TRUE(rowsOf(house_).photos.empty());
    EXPECT_FALSE(thumb.book().notKeptText().isEmpty());
}

TEST_P(ToolsTest, HoldingMarkAsksWhoIsHere) {
    Thumb& thumb = hold();
    thumb.hold("tool-mark");
    thumb.tap("presentCrew");
    EXPECT_EQ(thumb.taps(), 2);
    auto rows = rowsOf(house_);
    ASSERT_EQ(rows.presences.size(), 1u);
    EXPECT_EQ(rows.presences[0].crew, house_.tileCrew);
    EXPECT_EQ(rows.presences[0].presentOn->toString(), "2026-05-15");
    EXPECT_TRUE(thumb.says("here today"));
    // Once a day is enough.
    thumb.tap("presentCrew");
    EXPECT_EQ(rowsOf(house_).presences.size(), 1u);
    thumb.tap("undo");
    EXPECT_TRUE(rowsOf(house_).presences.empty());
}

TEST_P(ToolsTest, HoldingReceiptAsksWhatCame) {
    {
        auto book = store::Book::open(house_.path, ledgerboard::tests::fixedChance(8));
        ASSERT_TRUE(book.ok());
        model::Delivery delivery;
        delivery.id = book.value().newId<model::Kind::Delivery>(noonOnFriday());
        delivery.job = house_.job;
        delivery.item = rowsOf(house_).items[0].id;
        delivery.promisedOn = model::Date::parse("2026-05-15").value();
        store::Action action("order");
        action.add(delivery);
        ASSERT_TRUE(book.value().commit(action, noonOnFriday()).ok());
    }
    Thumb& thumb = hold();
    thumb.hold("tool-receipt");
    EXPECT_TRUE(thumb.says("Cabinets, promised for today (Kitchen)"));
    thumb.type("wrongOrMissing", "one door scratched");
    thumb.tap("keepTool");
    const auto rows = rowsOf(house_);
    EXPECT_EQ(rows.deliveries[0].arrivedOn->toString(), "2026-05-15");
    EXPECT_EQ(rows.deliveries[0].wrongOrMissing, "one door scratched");
}

TEST_P(ToolsTest, ACrewLeadSaysThatItIsFixed) {
    AlderStreet lead = buildLeadsCopy(folder_.file("lead.book"));
    {
        auto book = store::Book::open(lead.path, ledgerboard::tests::fixedChance(8));
        ASSERT_TRUE(book.ok());
        const auto rows = rowsOf(lead);
        model::Punch punch;
        punch.id = book.value().newId<model::Kind::Punch>(noonOnFriday());
        punch.job = lead.job;
        punch.space = rows.spaces[0].id;
        punch.crew = lead.tileCrew;
        punch.what = "grout open at the sink";
        store::Action action("punch");
        action.add(punch);
        ASSERT_TRUE(book.value().commit(action, noonOnFriday()).ok());
    }
    Thumb& thumb = hold(lead.path);
    thumb.scrollTo("punchItem");
    thumb.tap("punchItem");
    EXPECT_TRUE(thumb.all("notRight").empty());
    thumb.tap("keepTool");
    EXPECT_EQ(rowsOf(lead).looks.back().said, model::Verdict::SaidFixed);
    thumb.tap("tool-photo");
    thumb.tap("picture");
    EXPECT_EQ(rowsOf(lead).photos.size(), 1u);
}

INSTANTIATE_TEST_SUITE_P(Sizes, ToolsTest, everySize());

}  // namespace
}  // namespace ledgerboard::ui
