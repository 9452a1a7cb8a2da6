// Protects: a folder of pictures comes in whole or not at all, each picture once, filed as its list
// says, as site photos; everything wrong is told at once and leaves the book and its photo folder
// as they were.
#include "core/intake/photos/bring_photos.h"

#include <gmock/gmock.h>

#include "core/store/book_photos.h"
#include "core/store/photos.h"

#include "tests/support/pictures.h"
#include "tests/unit/intake/files/bring_house.h"

namespace ledgerboard::intake {
namespace {

namespace fs = std::filesystem;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

constexpr const char* kHeadings = "File,Space,Item,Stage,Taken at,Spot,Caption,For the lender\n";
constexpr const char* kTwo =
    "tub.jpg,Bath,Bath/tub,after,2026-03-20T15:04:00Z,door,\"Tub in, tile to come\",yes\n"
    "kitchen.jpg,Kitchen,,before,2026-03-01T09:00:00-05:00,,,no\n";

class BringPhotos : public BringHouse {
  protected:
    void SetUp() override {
        BringHouse::SetUp();
        buildHouse();
        fs::create_directories(pictures_);
        tub_ = tests::paintedJpeg(64, 48, tests::kUpright, 1);
        kitchen_ = tests::paintedJpeg(48, 64, tests::kUpright, 2);
        write("tub.jpg", tub_);
        write("kitchen.jpg", kitchen_);
        list(kTwo);
    }

    void write(const std::string& name, const std::string& bytes) {
        std::ofstream(pictures_ / name, std::ios::binary | std::ios::trunc) << bytes;
    }

    void list(const std::string& rows) { write("photos.csv", kHeadings + rows); }

    model::Result<BringReport> tryBring(const BringOptions& options = {}) {
        return bringPhotos(*book_, job_, pictures_.string(), options, now_());
    }

    BringReport bringGood(const BringOptions& options = {}) {
        auto done = tryBring(options);
        EXPECT_TRUE(done.ok()) << done.error().message;
        return done.ok() ? std::move(done).value() : BringReport{};
    }

    // What is said, having seen that nothing was changed by it.
    std::string refused(const BringOptions& options = {}) {
        const std::string before = dump();
        const bool hadPhotos = fs::exists(photos_.folder());
        auto done = tryBring(options);
        EXPECT_FALSE(done.ok());
        EXPECT_EQ(dump(), before);
        EXPECT_EQ(fs::exists(photos_.folder()), hadPhotos);
        return done.ok() ? "" : done.error().message;
    }

    fs::path pictures_ = folder_.path() / "visit";
    store::Photos photos_{folder_.file("house.book")};
    std::string tub_;
    std::string kitchen_;
};

TEST_F(BringPhotos, ComeInAsTheirListSays) {
    const auto report = bringGood();
    EXPECT_EQ(report.added, 2U);
    EXPECT_TRUE(report.written);
    EXPECT_THAT(report.remarks, IsEmpty());
    const auto photos = rows<model::Photo>();
    ASSERT_EQ(photos.size(), 2U);
    const auto& tub = photos[0];
    EXPECT_EQ(tub.digest, store::Photos::digestOf(tub_));
    EXPECT_EQ(tub.space, rows<model::Space>()[1].id);
    EXPECT_EQ(tub.item, rows<model::Item>()[3].id);
    EXPECT_EQ(tub.stage, model::Stage::After);
    EXPECT_EQ(tub.purpose, model::Purpose::Site);
    EXPECT_EQ(tub.takenAt->toString(), "2026-03-20T15:04:00.000Z");
    EXPECT_EQ(tub.spot, "door");
    EXPECT_EQ(tub.caption, "Tub in, tile to come");
    EXPECT_TRUE(tub.forLender);
    EXPECT_EQ(tub.width, 64);
    EXPECT_EQ(tub.height, 48);
    EXPECT_EQ(tub.bytes, static_cast<std::int64_t>(tub_.size()));
    EXPECT_EQ(photos[1].takenAt->toString(), "2026-03-01T14:00:00.000Z");
    EXPECT_FALSE(photos[1].forLender);
    EXPECT_TRUE(photos[1].item.isNil());
    EXPECT_EQ(photos_.read(tub.digest).value(), tub_);
    EXPECT_THAT(store::checkPhotos(*book_, photos_).value().wrong, IsEmpty());
}

TEST_F(BringPhotos, TwiceAddsNothing) {
    bringGood();
    const auto entries = entryCount();
    const auto report = bringGood();
    EXPECT_EQ(report.added, 0U);
    EXPECT_EQ(report.unchanged, 2U);
    EXPECT_FALSE(report.written);
    EXPECT_EQ(entryCount(), entries);
    write("renamed.jpg", tub_);  // the same bytes under another name are the same picture
    list(
        "renamed.jpg,Bath,Bath/tub,after,2026-03-20T15:04:00Z,door,\"Tub in, tile to come\",yes\n");
    EXPECT_EQ(bringGood().unchanged, 1U);
    EXPECT_EQ(entryCount(), entries);
}

TEST_F(BringPhotos, TryingWritesNothing) {
    const std::string before = dump();
    const auto report = bringGood({"", true});
    EXPECT_EQ(report.added, 2U);
    EXPECT_FALSE(report.written);
    ASSERT_EQ(report.lines.size(), 2U);
    EXPECT_EQ(report.lines[0].name, "tub.jpg");
    EXPECT_THAT(report.lines[0].detail, HasSubstr("Caption Tub in, tile to come"));
    EXPECT_EQ(dump(), before);
    EXPECT_FALSE(fs::exists(photos_.folder()));
}

TEST_F(BringPhotos, UndoTakesThemOutWhole) {
    bringGood();
    ASSERT_TRUE(book_->undo(now_()).ok());
    EXPECT_THAT(rows<model::Photo>(), IsEmpty());
    ASSERT_TRUE(book_->redo(now_()).ok());
    EXPECT_EQ(rows<model::Photo>().size(), 2U);
    EXPECT_THAT(store::checkPhotos(*book_, photos_).value().wrong, IsEmpty());
}

TEST_F(BringPhotos, EverythingWrongIsToldAtOnce) {
    write("words.jpg", "not a picture");
    write("copy.jpg", tub_);
    list(
        "tub.jpg,Bath,Bath/tub,after,2026-03-20T15:04:00Z,,,\n"       // line 2: good
        "gone.jpg,Bath,,after,2026-03-20T15:04:00Z,,,\n"              // 3: no such file
        "words.jpg,Bath,,after,2026-03-20T15:04:00Z,,,\n"             // 4: not a JPEG
        "../house.book,Bath,,after,2026-03-20T15:04:00Z,,,\n"         // 5: outside
        "/etc/hostname,Bath,,after,2026-03-20T15:04:00Z,,,\n"         // 6: outside
        "kitchen.jpg,Ballroom,,after,2026-03-20T15:04:00Z,,,\n"       // 7: no such space
        "copy.jpg,Bath,Bath/chandelier,after,2026-03-20T15:04Z,,,\n"  // 8: the same picture; no
                                                                      // item
        ",Bath,,finished,2026-03-20T15:04:00Z,,,perhaps\n"            // 9: no file, stage, flag
        "kitchen.jpg,,,,2026-03-20 15:04,,,\n"                        // 10: no space, stage, zone
        "kitchen.jpg,Bath,,after,1926-03-20T15:04:00Z,,,\n");         // 11: the year
    const std::string says = refused();
    for (const char* part :
         {"photos.csv:3: column \"File\": \"gone.jpg\" there is no such file",
          "photos.csv:4: column \"File\": \"words.jpg\" is not a JPEG or HEIC picture",
          "photos.csv:5: column \"File\": \"../house.book\" leads out of the folder",
          "photos.csv:6: column \"File\": \"/etc/hostname\" leads out of the folder",
          "photos.csv:7: column \"Space\": ", "photos.csv:8: column \"Item\": ",
          "photos.csv:8: column \"File\": \"copy.jpg\" is the same picture as that of line 2",
          "photos.csv:9: column \"File\": is empty", "photos.csv:9: column \"Stage\": ",
          "photos.csv:9: column \"For the lender\": ", "photos.csv:10: column \"Space\": is empty",
          "photos.csv:10: column \"Stage\": is empty", "photos.csv:10: column \"Taken at\": ",
          "photos.csv:11: column \"Taken at\": 1926-03-20 is"}) {
        EXPECT_THAT(says, HasSubstr(part));
    }
    EXPECT_EQ(says.find("photos.csv:2:"), std::string::npos) << says;
}

TEST_F(BringPhotos, AFolderWithoutAListAndWithoutACamerasNoteSaysWhatToListThere) {
    fs::remove(pictures_ / "photos.csv");
    const std::string says = refused();
    EXPECT_THAT(says, HasSubstr("\"tub.jpg\" does not say when it was taken"));
    EXPECT_THAT(says, HasSubstr("File, Space, Stage and Taken at"));
}

// Times by hand: 14:05 five hours west of UTC is 19:05Z; at the house, said to be at UTC-6 here,
// 20:05Z.
TEST_F(BringPhotos, WhatTheCameraSaysIsTakenWhereTheListSaysNothing) {
    write("tub.jpg", tests::withCameraTime(tub_, "2026:03:20 14:05:00", "-05:00", true));
    write("kitchen.jpg", tests::withCameraTime(kitchen_, "2026:03:21 14:05:00"));
    write("photos.csv", "File,Space,Stage\ntub.jpg,Bath,after\nkitchen.jpg,Kitchen,before\n");
    BringOptions options;
    options.atHouse = [](const std::string& local) {
        const auto shown = model::Instant::parse(local + "Z").value();
        return model::Result<model::Instant>(
            model::Instant::fromMilliseconds(shown.milliseconds() + 6 * 3'600'000));
    };
    const auto report = bringGood(options);
    EXPECT_THAT(report.remarks, ElementsAre(HasSubstr("1 picture says where it was taken")));
    const auto photos = rows<model::Photo>();
    ASSERT_EQ(photos.size(), 2U);
    EXPECT_EQ(photos[0].takenAt->toString(), "2026-03-20T19:05:00.000Z");
    EXPECT_EQ(photos[1].takenAt->toString(), "2026-03-21T20:05:00.000Z");
    // The original is kept as it came, place and all.
    EXPECT_EQ(photos_.read(photos[0].digest).value(),
              tests::withCameraTime(tub_, "2026:03:20 14:05:00", "-05:00", true));
    EXPECT_EQ(bringGood(options).unchanged, 2U);
}

TEST_F(BringPhotos, AFolderWithoutAListAndASinglePictureComeInToBeFiledLater) {
    fs::remove(pictures_ / "photos.csv");
    write("tub.jpg", tests::withCameraTime(tub_, "2026:03:20 14:05:00"));
    fs::remove(pictures_ / "kitchen.jpg");
    const auto report = bringGood();
    EXPECT_EQ(report.added, 1U);
    EXPECT_THAT(report.remarks, ElementsAre(HasSubstr("file them by room and stage")));
    auto photos = rows<model::Photo>();
    ASSERT_EQ(photos.size(), 1U);
    EXPECT_TRUE(photos[0].space.isNil());
    EXPECT_EQ(photos[0].takenAt->toString(), "2026-03-20T14:05:00.000Z");
    write("kitchen.jpg", tests::withCameraTime(kitchen_, "2026:03:21 14:05:00"));
    auto one = bringPhotos(*book_, job_, (pictures_ / "kitchen.jpg").string(), {}, now_());
    ASSERT_TRUE(one.ok()) << one.error().message;
    EXPECT_EQ(one.value().added, 1U);
    write("later.jpg", tests::withCameraTime(tests::paintedJpeg(48, 64, tests::kUpright, 7),
                                             "0000:00:00 00:00:00"));
    auto unset = bringPhotos(*book_, job_, (pictures_ / "later.jpg").string(), {}, now_());
    ASSERT_FALSE(unset.ok());  // a clock that was never set
    EXPECT_THAT(unset.error().message, HasSubstr("does not say when"));
}

TEST_F(BringPhotos, WhatIsNoFolderIsSaid) {
    auto none = bringPhotos(*book_, job_, (pictures_ / "june").string(), {}, now_());
    ASSERT_FALSE(none.ok());
    EXPECT_THAT(none.error().message, HasSubstr("there is no such folder"));
    auto noJob = bringPhotos(*book_, model::Id<model::Kind::Job>(), pictures_.string(), {}, now_());
    ASSERT_FALSE(noJob.ok());
    EXPECT_EQ(noJob.error().code, model::ErrorCode::WrongUse);
}

TEST_F(BringPhotos, HeadingsAreForgivenOrMatched) {
    write("photos.csv",
          "PICTURE;Room;stage;when;Wetter\n"
          "tub.jpg;bath;After;2026-03-20T15:04:00Z;sunny\n");
    EXPECT_THAT(refused(), HasSubstr("column \"Wetter\""));
    EXPECT_EQ(bringGood({"Wetter=-", false}).added, 1U);
    write("photos.csv",
          "Bild,Space,Stage,Taken at\n"
          "kitchen.jpg,Kitchen,before,2026-03-20T15:04:00Z\n");
    EXPECT_THAT(refused(), HasSubstr("column \"File\": is missing"));
    EXPECT_EQ(bringGood({"Bild=File", false}).added, 1U);
}

TEST_F(BringPhotos, WhatTheListSaysAnewOfFilingIsWritten) {
    bringGood();
    list("tub.jpg,Bath,Bath/tile,during,2026-03-20T15:04:00Z,door,Tile begun,yes\n");
    const auto report = bringGood();
    EXPECT_EQ(report.changed, 1U);
    EXPECT_THAT(report.lines[0].detail, HasSubstr("Caption Tile begun, was Tub in, tile to come"));
    const auto tub = rows<model::Photo>()[0];
    EXPECT_EQ(tub.caption, "Tile begun");
    EXPECT_EQ(tub.stage, model::Stage::During);
    EXPECT_EQ(rows<model::Photo>().size(), 2U);
}

TEST_F(BringPhotos, WhenItWasTakenIsAFact) {
    bringGood();
    list("tub.jpg,Bath,,after,2026-03-21T15:04:00Z,,,\n");
    const std::string says = refused();
    EXPECT_THAT(says, HasSubstr("photos.csv:2: column \"Taken at\": is 2026-03-21T15:04:00.000Z"));
    EXPECT_THAT(says, HasSubstr("2026-03-20T15:04:00.000Z, which is not edited"));
}

TEST_F(BringPhotos, AReceiptStaysAReceipt) {
    bringGood();
    store::Action action("file it as a receipt");
    action.set(rows<model::Photo>()[0].id.raw(), model::field::Photo::purpose,
               model::valueOf(model::Purpose::Receipt));
    commit(action);
    EXPECT_EQ(bringGood().unchanged, 2U);
    EXPECT_EQ(rows<model::Photo>()[0].purpose, model::Purpose::Receipt);
}

TEST_F(BringPhotos, ADroppedPhotoStaysDropped) {
    bringGood();
    store::Action action("drop it");
    action.drop(model::Kind::Photo, rows<model::Photo>()[0].id.raw());
    commit(action);
    const auto report = bringGood();
    EXPECT_EQ(report.unchanged, 2U);
    EXPECT_THAT(report.remarks, ElementsAre(HasSubstr("was dropped from the book and stays so")));
    EXPECT_EQ(rows<model::Photo>().size(), 1U);
}

TEST_F(BringPhotos, ALostFileIsBroughtBack) {
    bringGood();
    const auto photo = rows<model::Photo>()[0];
    fs::remove(photos_.pathOf(photo.digest));
    EXPECT_EQ(store::checkPhotos(*book_, photos_).value().wrong.size(), 1U);
    const auto report = bringGood();
    EXPECT_THAT(report.remarks, ElementsAre(HasSubstr("was missing or damaged and is back")));
    EXPECT_THAT(store::checkPhotos(*book_, photos_).value().wrong, IsEmpty());
}

TEST_F(BringPhotos, PicturesThatAreNotListedAreSaid) {
    write("more.jpg", tests::paintedJpeg(16, 16));
    EXPECT_THAT(bringGood().remarks, ElementsAre(HasSubstr("1 picture, more.jpg")));
}

TEST_F(BringPhotos, AnEmptyListIsSaid) {
    list("");
    fs::remove(pictures_ / "tub.jpg");
    fs::remove(pictures_ / "kitchen.jpg");
    const auto report = bringGood();
    EXPECT_EQ(report.added, 0U);
    EXPECT_THAT(report.remarks, ElementsAre(HasSubstr("has headings and no rows")));
}

}  // namespace
}  // namespace ledgerboard::intake
