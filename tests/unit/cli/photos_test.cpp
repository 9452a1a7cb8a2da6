// Protects: photos go with their book on the command line: brought from a folder, read by verify,
// carried by backup and restore, and the week's page shows three of them. What is missing is said
// and never silently left behind.
#include "core/store/photos.h"

#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/support/pictures.h"
#include "tests/unit/cli/command_line.h"

namespace ledgerboard::cli {
namespace {

namespace fs = std::filesystem;
using nlohmann::json;
using testing::AllOf;
using testing::HasSubstr;
using testing::Not;
using tests::TestFolder;

class PhotosTest : public testing::Test {
  protected:
    void SetUp() override {
        good({"start", "Test house", "--begin", "2026-04-06"});
        for (const char* room : {"Kitchen", "Bath", "Hall", "Attic"}) {
            good({"add", "space", std::string("Space=") + room});
        }
        fs::create_directories(visit_);
        std::string list = "File,Space,Item,Stage,Taken at,Spot,Caption,For the lender\n";
        int shade = 0;
        for (const char* room : {"Kitchen", "Bath", "Hall", "Attic"}) {
            const std::string file = std::string(room) + ".jpg";
            bytes_.push_back(tests::paintedJpeg(640, 480, tests::kUpright, ++shade));
            write(visit_ / file, bytes_.back());
            list += file + "," + room + ",,after,2026-05-0" + std::to_string(shade) +
                    "T15:00:00Z,,Seen from the door,no\n";
        }
        write(visit_ / "photos.csv", list);
    }

    Answer good(const std::vector<std::string>& arguments) {
        Answer answer = line_(arguments);
        EXPECT_EQ(answer.status, kDone) << answer.err;
        return answer;
    }

    json document(std::vector<std::string> arguments) {
        arguments.insert(arguments.begin(), "--json");
        return json::parse(good(arguments).out);
    }

    void bring() { good({"bring", "photos", visit_.string()}); }

    // Where the book keeps the k-th picture.
    fs::path kept(std::size_t k) const {
        return store::Photos(book_).pathOf(store::Photos::digestOf(bytes_[k]));
    }

    static void write(const fs::path& path, const std::string& bytes) {
        std::ofstream(path, std::ios::binary | std::ios::trunc) << bytes;
    }

    static std::string read(const std::string& path) {
        std::ifstream file(path, std::ios::binary);
        return std::string(std::istreambuf_iterator<char>(file), {});
    }

    static std::size_t countOf(const std::string& text, const std::string& part) {
        std::size_t count = 0;
        for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) {
            ++count;
        }
        return count;
    }

    TestFolder folder_{"cli-photos"};
    std::string book_ = folder_.file("house.book");
    fs::path visit_ = folder_.path() / "visit";
    CommandLine line_{book_};
    std::vector<std::string> bytes_;
};

TEST_F(PhotosTest, AFolderComesInOnce) {
    const json tried = document({"bring", "photos", visit_.string(), "--try"});
    EXPECT_EQ(tried["added"], 4);
    EXPECT_EQ(tried["written"], false);
    EXPECT_EQ(document({"list", "photos"})["photos"].size(), 0U);
    EXPECT_EQ(document({"bring", "pictures", visit_.string()})["added"], 4);
    EXPECT_EQ(document({"bring", "photo", visit_.string()})["unchanged"], 4);
    const json photos = document({"list", "photos"})["photos"];
    ASSERT_EQ(photos.size(), 4U);
    EXPECT_EQ(photos[0]["digest"], store::Photos::digestOf(bytes_[0]));
    EXPECT_EQ(photos[0]["width"], 640);
    EXPECT_EQ(photos[0]["purpose"], "site");
    EXPECT_TRUE(fs::exists(kept(0)));
    EXPECT_THAT(good({"bring", "--help"}).out, HasSubstr("photos.csv"));
}

TEST_F(PhotosTest, AFolderThatCannotBeTakenIsRefused) {
    fs::remove(visit_ / "photos.csv");
    const Answer answer = line_({"bring", "photos", visit_.string()});
    EXPECT_EQ(answer.status, kCannotBeMet);
    EXPECT_THAT(answer.err, HasSubstr("does not say when it was taken"));
    EXPECT_FALSE(fs::exists(book_ + ".photos"));
}

TEST_F(PhotosTest, VerifyReadsThem) {
    bring();
    EXPECT_THAT(good({"verify"}).out, AllOf(HasSubstr("4 photos"), HasSubstr("all of it holds")));
    fs::remove(kept(0));
    write(kept(1), "another picture");
    const Answer answer = line_({"verify", "--mend"});  // nothing in the log can make a picture
    EXPECT_EQ(answer.status, kDamaged);
    EXPECT_THAT(answer.out,
                AllOf(HasSubstr("is missing"), HasSubstr("is not the one that was kept")));
    EXPECT_THAT(answer.err, HasSubstr("photos are missing or damaged"));
    const Answer asJson = line_({"--json", "verify"});
    EXPECT_EQ(asJson.status, kDamaged);
    const json report = json::parse(asJson.out);
    EXPECT_EQ(report["photos"], 4);
    EXPECT_EQ(report["findings"].size(), 2U);
    bring();  // the folder still has them
    EXPECT_THAT(good({"verify"}).out, HasSubstr("all of it holds"));
}

TEST_F(PhotosTest, BackupAndRestoreCarryThem) {
    bring();
    const std::string backup = folder_.file("backup.book");
    EXPECT_THAT(good({"backup", backup}).out, HasSubstr("with 4 photos"));
    fs::remove_all(book_ + ".photos");
    fs::remove(book_);
    const json restored = document({"restore", backup});
    EXPECT_EQ(restored["photos"], 4);
    EXPECT_EQ(restored["without"].size(), 0U);
    EXPECT_THAT(good({"verify"}).out, HasSubstr("all of it holds"));
    EXPECT_EQ(read(kept(2).string()), bytes_[2]);
    EXPECT_FALSE(fs::exists(book_ + ".restoring.photos"));
}

TEST_F(PhotosTest, ABackupOfABookWithoutPhotosMakesNoFolder) {
    const std::string backup = folder_.file("backup.book");
    EXPECT_THAT(good({"backup", backup}).out, Not(HasSubstr(" photo")));
    EXPECT_FALSE(fs::exists(backup + ".photos"));
}

TEST_F(PhotosTest, BackupSaysWhichAreMissing) {
    bring();
    fs::remove(kept(3));
    const std::string backup = folder_.file("backup.book");
    const std::string out = good({"backup", backup}).out;
    EXPECT_THAT(out,
                AllOf(HasSubstr("is missing"), HasSubstr("with 3 photos"), HasSubstr("without 1")));
    EXPECT_FALSE(fs::exists(store::Photos(backup).pathOf(store::Photos::digestOf(bytes_[3]))));
}

TEST_F(PhotosTest, BackupWritesOverNobodysPhotos) {
    bring();
    const std::string backup = folder_.file("backup.book");
    fs::create_directories(backup + ".photos");
    write(backup + ".photos/mine.txt", "somebody's");
    const Answer answer = line_({"backup", backup});
    EXPECT_EQ(answer.status, kCannotBeMet);
    EXPECT_THAT(answer.err, HasSubstr("backup.book.photos"));
    EXPECT_FALSE(fs::exists(backup));
    EXPECT_EQ(read(backup + ".photos/mine.txt"), "somebody's");
}

TEST_F(PhotosTest, RestoreTakesFromTheBookThereWhatTheBackupLost) {
    bring();
    const std::string backup = folder_.file("backup.book");
    good({"backup", backup});
    fs::remove(store::Photos(backup).pathOf(store::Photos::digestOf(bytes_[0])));
    fs::remove(kept(1));
    const json restored = document({"restore", backup, "--replace"});
    EXPECT_EQ(restored["photos"], 4);  // one from each place that another lacks
    EXPECT_EQ(restored["without"].size(), 0U);
    EXPECT_THAT(good({"verify"}).out, HasSubstr("all of it holds"));
    const std::string aside = restored["set_aside"];
    EXPECT_TRUE(fs::exists(aside + ".photos"));  // the book that was there keeps its own
}

TEST_F(PhotosTest, ARestoredBookMayLackPhotosAndSaysSo) {
    bring();
    const std::string backup = folder_.file("backup.book");
    good({"backup", backup});
    fs::remove_all(backup + ".photos");
    fs::remove_all(book_ + ".photos");
    const Answer answer = line_({"restore", backup, "--replace"});
    EXPECT_EQ(answer.status, kDone) << answer.err;
    EXPECT_EQ(countOf(answer.out, "without  photo"), 4U);
    EXPECT_EQ(line_({"verify"}).status, kDamaged);
}

TEST_F(PhotosTest, TheWeeksPageShowsThree) {
    bring();
    good(
        {"add", "scope", "Space=Kitchen", "Treatment=replace", "Object=cabinets", "Lump sum=1000"});
    // The captions under the pictures, without all else that stands on the page.
    const auto captions = [&] {
        const std::string page = folder_.file("week.html");
        good({"give", "week", "html", page, "--as-of", "2026-05-08"});
        const std::string html = read(page);
        EXPECT_EQ(countOf(html, "src=\"data:image/jpeg;base64,"), 3U);
        std::string out;
        const std::string mark = "<figcaption>";
        for (auto at = html.find(mark); at != std::string::npos; at = html.find(mark, at + 1)) {
            out += html.substr(at + mark.size(), html.find(',', at) - at - mark.size()) + "\n";
        }
        return out;
    };
    EXPECT_EQ(captions(),
              "Attic: Seen from the door\nHall: Seen from the door\nBath: Seen from the door\n");
    // The latest is no picture any more: the next takes its place.
    write(kept(3), "damaged");
    EXPECT_EQ(captions(),
              "Hall: Seen from the door\nBath: Seen from the door\nKitchen: Seen from the door\n");
    // As of an earlier day there was one.
    const json week = document({"week", "--as-of", "2026-05-01"});
    ASSERT_EQ(week["photos"].size(), 1U);
    EXPECT_EQ(week["photos"][0]["taken_on"], "2026-05-01");
}

}  // namespace
}  // namespace ledgerboard::cli
