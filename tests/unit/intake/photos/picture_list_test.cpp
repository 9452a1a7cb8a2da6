// Protects: a list of pictures can name nothing outside its folder, whatever the name; each picture
// that can't be taken is told by its line; and the column of files is found under the names people
// give it.
#include "core/intake/photos/picture_list.h"

#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/store/photos.h"

#include "tests/support/fixed_chance.h"
#include "tests/support/pictures.h"

namespace ledgerboard::intake {
namespace {

namespace fs = std::filesystem;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

CsvTable table(const std::string& text) {
    auto read = readCsv(text, "photos.csv");
    EXPECT_TRUE(read.ok()) << read.error().message;
    return read.ok() ? std::move(read).value() : CsvTable{};
}

class PictureList : public testing::Test {
  protected:
    PictureList() {
        fs::create_directories(home_ / "may");
        write(home_ / "a.jpg", tests::paintedJpeg(64, 48));
        write(home_ / "may" / "b.jpg", tests::paintedJpeg(48, 64));
        write(folder_.path() / "outside.jpg", tests::paintedJpeg(32, 32));
    }

    static void write(const fs::path& path, const std::string& bytes) {
        std::ofstream(path, std::ios::binary) << bytes;
    }

    // What is said of one file name.
    std::string wrongWith(const std::string& file) {
        Problems problems("photos.csv");
        CsvTable one;
        one.rows.push_back({7, {}});
        const auto looked = lookAtPictures(home_, one, {file}, problems);
        EXPECT_EQ(looked.size(), 1U);
        if (problems.none()) {
            EXPECT_FALSE(looked[0].path.empty());
            return "";
        }
        EXPECT_TRUE(looked[0].path.empty()) << file;
        EXPECT_EQ(problems.list()[0].line, 7);
        EXPECT_EQ(problems.list()[0].column, "File");
        return problems.list()[0].message;
    }

    tests::TestFolder folder_{"picture-list"};
    fs::path home_ = folder_.path() / "photos";
};

TEST_F(PictureList, TakesPicturesOfTheFolderAndOfFoldersInIt) {
    Problems problems("photos.csv");
    const auto list = table("File\na.jpg\nmay/b.jpg\n");
    const auto looked = lookAtPictures(home_, list, {"a.jpg", "may/b.jpg"}, problems);
    ASSERT_TRUE(problems.none()) << problems.asError().message;
    ASSERT_EQ(looked.size(), 2U);
    EXPECT_EQ(looked[0].line, 2);
    EXPECT_EQ(looked[0].size.width, 64);
    EXPECT_EQ(looked[0].bytes, static_cast<std::int64_t>(fs::file_size(home_ / "a.jpg")));
    EXPECT_EQ(looked[0].digest, store::Photos::digestOf(tests::paintedJpeg(64, 48)));
    EXPECT_EQ(looked[1].size.height, 64);
}

TEST_F(PictureList, NothingLeadsOut) {
    for (const std::string file : {"../outside.jpg", "may/../../outside.jpg", "./../outside.jpg"}) {
        EXPECT_THAT(wrongWith(file), HasSubstr("leads out of the folder")) << file;
    }
    EXPECT_THAT(wrongWith((folder_.path() / "outside.jpg").string()),
                HasSubstr("leads out of the folder"));
    fs::create_symlink(folder_.path() / "outside.jpg", home_ / "link.jpg");
    EXPECT_THAT(wrongWith("link.jpg"), HasSubstr("is a link that leads out"));
    fs::create_symlink(home_ / "a.jpg", home_ / "inside.jpg");
    EXPECT_EQ(wrongWith("inside.jpg"), "");
    // A folder whose name begins alike is another folder.
    fs::create_directories(folder_.path() / "photos-of-others");
    write(folder_.path() / "photos-of-others" / "c.jpg", tests::paintedJpeg(16, 16));
    fs::create_symlink(folder_.path() / "photos-of-others" / "c.jpg", home_ / "c.jpg");
    EXPECT_THAT(wrongWith("c.jpg"), HasSubstr("is a link that leads out"));
}

TEST_F(PictureList, SaysWhatIsWrongWithAFile) {
    write(home_ / "words.jpg", "not a picture");
    write(home_ / "nothing.jpg", "");
    EXPECT_THAT(wrongWith(""), HasSubstr("is empty"));
    EXPECT_THAT(wrongWith("b.jpg"), HasSubstr("there is no such file"));
    EXPECT_THAT(wrongWith("words.jpeg"), HasSubstr("is it \"words.jpg\"?"));
    EXPECT_THAT(wrongWith("may"), HasSubstr("is not a file"));
    EXPECT_THAT(wrongWith("words.jpg"), HasSubstr("is not a JPEG or HEIC picture"));
    EXPECT_THAT(wrongWith("nothing.jpg"), HasSubstr("is empty"));
    fs::resize_file(home_ / "words.jpg", store::kLargestPhoto + 1);  // a file with a hole
    EXPECT_THAT(wrongWith("words.jpg"), HasSubstr("larger than 64 MB"));
}

TEST_F(PictureList, OnePictureUnderTwoNamesIsSaid) {
    fs::copy_file(home_ / "a.jpg", home_ / "copy.jpg");
    Problems problems("photos.csv");
    const auto list = table("File\na.jpg\nmay/b.jpg\ncopy.jpg\n");
    const auto looked = lookAtPictures(home_, list, {"a.jpg", "may/b.jpg", "copy.jpg"}, problems);
    ASSERT_EQ(problems.list().size(), 1U);
    EXPECT_EQ(problems.list()[0].line, 4);
    EXPECT_THAT(problems.list()[0].message, HasSubstr("same picture as that of line 2"));
}

TEST_F(PictureList, TellsPicturesThatAreNotListed) {
    write(home_ / "d.JPG", tests::paintedJpeg(16, 16));
    write(home_ / "notes.txt", "no picture");
    ListedPicture listed;
    listed.file = "./a.jpg";
    EXPECT_THAT(notListed(home_, {listed}), ElementsAre("d.JPG"));
}

TEST_F(PictureList, FindsTheColumnOfFiles) {
    for (const std::string heading : {"File", "FILE NAME", "picture", "Photo"}) {
        CsvTable list = table("Space," + heading + ",Stage\nKitchen, a.jpg ,after\n");
        std::vector<HeadingMatch> matches;
        Problems problems("photos.csv");
        EXPECT_THAT(takeFileColumn(list, matches, problems), ElementsAre("a.jpg")) << heading;
        EXPECT_TRUE(problems.none());
        EXPECT_THAT(list.headings.cells, ElementsAre("Space", "Stage"));
        EXPECT_THAT(list.rows[0].cells, ElementsAre("Kitchen", "after"));
    }
}

TEST_F(PictureList, AMatchNamesTheColumnOfFiles) {
    CsvTable list = table("Space,Foto\nKitchen,a.jpg\n");
    std::vector<HeadingMatch> matches = {{"foto", "file"}, {"Space", "-"}};
    Problems problems("photos.csv");
    EXPECT_THAT(takeFileColumn(list, matches, problems), ElementsAre("a.jpg"));
    EXPECT_TRUE(problems.none());
    ASSERT_EQ(matches.size(), 1U);  // the other is for whoever reads the rest
    EXPECT_EQ(matches[0].theirs, "Space");
}

TEST_F(PictureList, SaysWhereTheColumnOfFilesIsMissingOrTwice) {
    std::vector<HeadingMatch> matches;
    CsvTable without = table("Space,Stage\nKitchen,after\n");
    Problems problems("photos.csv");
    EXPECT_THAT(takeFileColumn(without, matches, problems), IsEmpty());
    EXPECT_THAT(problems.asError().message, HasSubstr("column \"File\": is missing"));
    CsvTable twice = table("File,Picture\na.jpg,b.jpg\n");
    Problems more("photos.csv");
    EXPECT_THAT(takeFileColumn(twice, matches, more), IsEmpty());
    EXPECT_THAT(more.asError().message, HasSubstr("means the same as column \"File\""));
}

}  // namespace
}  // namespace ledgerboard::intake
