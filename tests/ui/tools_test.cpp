// Protects the belt's tools that bring something in: photos, punch items, receipts. The taps that
// were promised, what stands in the book afterwards, and that the bytes are there before the row.
#include <cmath>
#include <numbers>

#include <QFile>
#include <QImageReader>
#include <QTest>

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

// A tone of 440 Hz (ISO 16) goes into the file and comes out of it: as long, and as high.
TEST(SoundFileTest, WhatIsHeardIsWrittenAsOggOpusAndComesBack) {
    const tests::TestFolder folder("sound-file");
    const std::string path = folder.file("tone.ogg");
    constexpr std::size_t kSeconds = 2;
    std::vector<std::int16_t> tone(kSeconds * phone::kSoundRate);
    for (std::size_t k = 0; k < tone.size(); ++k) {
        const double at = static_cast<double>(k) / phone::kSoundRate;
        tone[k] = static_cast<std::int16_t>(9'000 * std::sin(2 * std::numbers::pi * 440 * at));
    }
    {
        auto file = phone::SoundFile::create(path);
        ASSERT_TRUE(file.ok()) << file.error().message;
        for (std::size_t from = 0; from < tone.size(); from += 1'600) {  // as a microphone gives it
            ASSERT_TRUE(file.value().add(std::span(tone).subspan(from, 1'600)).ok());
        }
        EXPECT_EQ(file.value().samples(), static_cast<std::int64_t>(tone.size()));
    }
    QFile written(QString::fromStdString(path));
    ASSERT_TRUE(written.open(QIODevice::ReadOnly));
    const QByteArray bytes = written.readAll();
    EXPECT_TRUE(bytes.startsWith("OggS"));    // RFC 3533, section 6
    EXPECT_EQ(bytes.mid(28, 8), "OpusHead");  // RFC 7845, section 5.1
    EXPECT_LT(bytes.size(), kSeconds * 12'000);
    const auto back = phone::soundIn(path);
    ASSERT_TRUE(back.ok()) << back.error().message;
    const auto& samples = back.value().samples;
    EXPECT_EQ(back.value().channels, 1);
    EXPECT_NEAR(static_cast<double>(samples.size()) / back.value().rate, kSeconds, 0.05);
    int rises = 0;
    for (std::size_t k = 1; k < samples.size(); ++k) {
        rises += samples[k - 1] < 0 && samples[k] >= 0 ? 1 : 0;
    }
    EXPECT_NEAR(rises, 440 * static_cast<int>(kSeconds), 10);
}

// Only where LEDGERBOARD_MICROPHONE is set: a sound server whose microphone hums at 440 Hz, such as
// `pulseaudio -n --exit-idle-time=-1 -L module-native-protocol-unix -L module-null-sink` and then
// `pactl load-module module-sine-source frequency=440`.
TEST_P(ToolsTest, AMicrophoneIsHeard) {
    if (qEnvironmentVariableIsEmpty("LEDGERBOARD_MICROPHONE")) {
        GTEST_SKIP() << "there is no microphone";
    }
    hold();
    const QString path = QString::fromStdString(folder_.file("heard.ogg"));
    phone::SoundDesk desk;
    QString recorded;
    QString why;
    QObject::connect(&desk, &phone::SoundDesk::recorded,
                     [&](const QString& file) { recorded = file; });
    QObject::connect(&desk, &phone::SoundDesk::failed, [&](const QString& said) { why = said; });
    desk.start(path);
    EXPECT_TRUE(QTest::qWaitFor([&] { return desk.lengthText() >= "0:02"; }, 20'000));
    desk.stop();
    ASSERT_EQ(recorded, path) << why.toStdString();
    const auto heard = phone::soundIn(path.toStdString());
    ASSERT_TRUE(heard.ok()) << heard.error().message;
    const auto& samples = heard.value().samples;
    int rises = 0;
    for (std::size_t k = 1; k < samples.size(); ++k) {
        rises += samples[k - 1] < 0 && samples[k] >= 0 ? 1 : 0;
    }
    const double seconds = static_cast<double>(samples.size()) / heard.value().rate;
    EXPECT_GT(seconds, 1.9);
    EXPECT_NEAR(rises / seconds, 440, 12);
    ASSERT_TRUE(
        desk.keepSound(path, QString::fromStdString(rowsOf(house_).spaces[0].id.raw().toString())));
    desk.play(QString::fromStdString(rowsOf(house_).notes.at(0).id.raw().toString()));
    EXPECT_EQ(why, "");
}

TEST(SoundFileTest, WhatIsNoSoundIsRefusedByName) {
    const tests::TestFolder folder("sound-file");
    const std::string path = folder.file("letter.ogg");
    QFile file(QString::fromStdString(path));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("Dear neighbour");
    file.close();
    for (const auto& one : {path, folder.file("none.ogg")}) {
        const auto read = phone::soundIn(one);
        ASSERT_FALSE(read.ok());
        EXPECT_NE(read.error().message.find(one), std::string::npos);
    }
    EXPECT_FALSE(phone::SoundFile::create(folder.file("nowhere/tone.ogg")).ok());
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
