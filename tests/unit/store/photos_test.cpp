// Protects: pictures are kept under the digest of their bytes, once; what is missing or differs is
// told apart from what is right; nothing but a digest becomes part of a path; and a book's photos
// are checked and copied with it. Digests are those of FIPS 180-2, appendix B.
#include "core/store/photos.h"

#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/store/action.h"
#include "core/store/book_photos.h"

#include "tests/support/fixed_chance.h"

namespace ledgerboard::store {
namespace {

namespace fs = std::filesystem;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using tests::TestFolder;

// FIPS 180-2, B.1: SHA-256 of "abc".
constexpr const char* kAbc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
// FIPS 180-2, B.2: SHA-256 of this text of 448 bits.
constexpr const char* kLongText = "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq";
constexpr const char* kLong = "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1";

std::vector<std::string> filesIn(const fs::path& folder) {
    std::vector<std::string> names;
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
        if (entry.is_regular_file()) {
            names.push_back(fs::relative(entry.path(), folder).string());
        }
    }
    return names;
}

void write(const fs::path& path, const std::string& bytes) {
    std::ofstream(path, std::ios::binary | std::ios::trunc) << bytes;
}

TEST(Photos, DigestsAsPublished) {
    EXPECT_EQ(Photos::digestOf("abc"), kAbc);
    EXPECT_EQ(Photos::digestOf(kLongText), kLong);
}

TEST(Photos, KeepsTheSameBytesOnce) {
    const TestFolder folder("photos");
    const Photos photos(folder.file("house.book"));
    EXPECT_FALSE(fs::exists(photos.folder()));  // nothing is made before it is needed
    for (int time = 0; time < 2; ++time) {
        auto kept = photos.keep("abc");
        ASSERT_TRUE(kept.ok()) << kept.error().message;
        EXPECT_EQ(kept.value(), kAbc);
    }
    EXPECT_THAT(filesIn(folder.path()),
                ElementsAre("house.book.photos/ba/" + std::string(kAbc)));  // nothing set aside
    EXPECT_EQ(photos.read(kAbc).value(), "abc");
    EXPECT_EQ(photos.check(kAbc), PhotoState::Right);
}

TEST(Photos, TellsMissingFromDiffering) {
    const TestFolder folder("photos");
    const Photos photos(folder.file("house.book"));
    EXPECT_EQ(photos.check(kAbc), PhotoState::Missing);
    EXPECT_THAT(photos.read(kAbc).error().message, HasSubstr("is missing"));
    ASSERT_TRUE(photos.keep("abc").ok());
    for (const std::string bytes : {"abd", "ab", "abcd", ""}) {
        write(photos.pathOf(kAbc), bytes);
        EXPECT_EQ(photos.check(kAbc), PhotoState::Differs) << bytes;
        EXPECT_THAT(photos.read(kAbc).error().message, HasSubstr("differ")) << bytes;
    }
    ASSERT_TRUE(photos.keep("abc").ok());  // kept anew: put right
    EXPECT_EQ(photos.check(kAbc), PhotoState::Right);
    EXPECT_EQ(filesIn(folder.path()).size(), 1U);
}

TEST(Photos, TakesNothingButADigestForAName) {
    const TestFolder folder("photos");
    const Photos photos(folder.file("house.book"));
    std::string upper = kAbc;
    upper[0] = 'B';
    for (const std::string& name :
         {std::string(), std::string("../../etc/passwd"), std::string(64, '/'), upper,
          std::string(kAbc) + "0", std::string(63, 'a'), std::string(62, 'a') + ".."}) {
        EXPECT_FALSE(Photos::isDigest(name)) << name;
        EXPECT_EQ(photos.check(name), PhotoState::Missing) << name;
        EXPECT_FALSE(photos.read(name).ok()) << name;
    }
    EXPECT_TRUE(Photos::isDigest(kAbc));
}

TEST(Photos, RefusesWhatIsTooLarge) {
    const TestFolder folder("photos");
    const Photos photos(folder.file("house.book"));
    const auto kept = photos.keep(std::string(kLargestPhoto + 1, 'x'));
    ASSERT_FALSE(kept.ok());
    EXPECT_THAT(kept.error().message, HasSubstr("larger than 64 MB"));
    EXPECT_FALSE(fs::exists(photos.folder()));
}

TEST(Photos, SaysWhereItCannotWrite) {
    const TestFolder folder("photos");
    const Photos photos(folder.file("house.book"));
    write(photos.folder(), "a file where the folder should be");
    const auto kept = photos.keep("abc");
    ASSERT_FALSE(kept.ok());
    EXPECT_EQ(kept.error().code, model::ErrorCode::Damaged);
    EXPECT_THAT(kept.error().message, HasSubstr("house.book.photos"));
}

// A book of three photos: "abc", "long" and one that was dropped.
class BookPhotos : public testing::Test {
  protected:
    void SetUp() override {
        auto made =
            Book::create(folder_.file("house.book"), "Owner", now_(), tests::fixedChance(3));
        ASSERT_TRUE(made.ok()) << made.error().message;
        book_.emplace(std::move(made).value());
        for (const char* bytes : {"abc", kLongText, "dropped"}) {
            auto kept = photos_.keep(bytes);
            ASSERT_TRUE(kept.ok()) << kept.error().message;
            model::Photo photo;
            photo.id = book_->newId<model::Kind::Photo>(now_());
            photo.digest = kept.value();
            ids_.push_back(photo.id.raw());
            Action action("a photo");
            action.add(photo);
            ASSERT_TRUE(book_->commit(action, now_()).ok());
        }
        Action drop("drop one");
        drop.drop(model::Kind::Photo, ids_[2]);
        ASSERT_TRUE(book_->commit(drop, now_()).ok());
    }

    std::vector<std::string> found(const Photos& photos) {
        auto checked = checkPhotos(*book_, photos);
        EXPECT_TRUE(checked.ok());
        return checked.ok() ? checked.value().wrong : std::vector<std::string>{"no answer"};
    }

    TestFolder folder_{"book-photos"};
    tests::SteppingClock now_;
    Photos photos_{folder_.file("house.book")};
    std::optional<Book> book_;
    std::vector<model::RawId> ids_;
};

TEST_F(BookPhotos, AreCheckedAgainstTheirFiles) {
    EXPECT_THAT(found(photos_), IsEmpty());
    write(photos_.pathOf(kAbc), "abd");
    fs::remove(photos_.pathOf(kLong));
    fs::remove(photos_.pathOf(Photos::digestOf("dropped")));
    EXPECT_THAT(found(photos_),
                ElementsAre(testing::AllOf(HasSubstr(ids_[0].toString()), HasSubstr(kAbc),
                                           HasSubstr("is not the one")),
                            testing::AllOf(HasSubstr(ids_[1].toString()), HasSubstr(kLong),
                                           HasSubstr("is missing"))));
}

TEST_F(BookPhotos, ADigestThatIsNoneIsSaid) {
    Action action("a photo typed by hand");
    model::Photo photo;
    photo.id = book_->newId<model::Kind::Photo>(now_());
    photo.digest = "../../etc/passwd";
    action.add(photo);
    ASSERT_TRUE(book_->commit(action, now_()).ok());
    EXPECT_THAT(found(photos_), ElementsAre(HasSubstr("not of the form")));
}

TEST_F(BookPhotos, AreCopiedFromWhereTheyAreRight) {
    const Photos second(folder_.file("other"));
    const Photos goal(folder_.file("goal"));
    ASSERT_TRUE(second.keep(kLongText).ok());
    write(photos_.pathOf(kLong), "damaged");  // right in the second place alone
    auto copied = copyPhotos(*book_, {photos_, second}, goal);
    ASSERT_TRUE(copied.ok()) << copied.error().message;
    EXPECT_EQ(copied.value().copied, 3U);
    EXPECT_THAT(copied.value().missing, IsEmpty());
    EXPECT_THAT(found(goal), IsEmpty());
    EXPECT_EQ(goal.check(Photos::digestOf("dropped")), PhotoState::Right);  // it may come back
}

// A sound that is lost in a backup is a note that nobody will ever type.
TEST_F(BookPhotos, SoundsOfSpokenNotesAreCheckedAndCopiedLikeThem) {
    const std::string spoken = photos_.keep("a spoken note").value();
    model::Note note;
    note.id = book_->newId<model::Kind::Note>(now_());
    note.sound = spoken;
    Action action("spoken note");
    action.add(note);
    ASSERT_TRUE(book_->commit(action, now_()).ok());
    EXPECT_EQ(checkPhotos(*book_, photos_).value().checked, 3U);
    const Photos goal(folder_.file("goal"));
    EXPECT_EQ(copyPhotos(*book_, {photos_}, goal).value().copied, 4U);
    EXPECT_EQ(goal.read(spoken).value(), "a spoken note");
    fs::remove(photos_.pathOf(spoken));
    EXPECT_THAT(found(photos_),
                ElementsAre(testing::AllOf(HasSubstr("note " + note.id.raw().toString()),
                                           HasSubstr("is missing"))));
}

TEST_F(BookPhotos, WhatNoSourceHasIsSaidAndStopsNothing) {
    const Photos goal(folder_.file("goal"));
    fs::remove(photos_.pathOf(kAbc));
    auto copied = copyPhotos(*book_, {photos_}, goal);
    ASSERT_TRUE(copied.ok());
    EXPECT_EQ(copied.value().copied, 2U);
    EXPECT_THAT(copied.value().missing, ElementsAre(HasSubstr(ids_[0].toString())));
    EXPECT_EQ(goal.read(kLong).value(), kLongText);
}

}  // namespace
}  // namespace ledgerboard::store
