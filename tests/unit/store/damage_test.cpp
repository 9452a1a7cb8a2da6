// Protects: a file that is no sound book is refused with a message that says what it is and what to
// do, and neither it nor its folder is touched.
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sstream>
#include <sys/stat.h>

#include <sqlite3.h>

#include "core/store/book.h"

#include "tests/support/fixed_chance.h"

namespace ledgerboard::store {
namespace {

using testing::HasSubstr;
using tests::fixedChance;
using tests::TestFolder;

std::string bytesOf(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    std::stringstream bytes;
    bytes << file.rdbuf();
    return bytes.str();
}

void write(const std::string& path, const std::string& bytes) {
    std::ofstream(path, std::ios::binary) << bytes;
}

std::size_t filesIn(const TestFolder& folder) {
    return static_cast<std::size_t>(
        std::distance(std::filesystem::directory_iterator(folder.path()), {}));
}

std::string soundBook(const TestFolder& folder) {
    const std::string path = folder.file("sound");
    auto book = Book::create(path, "Owner", model::Instant::fromMilliseconds(1), fixedChance(1));
    EXPECT_TRUE(book.ok());
    return path;
}

// Opening must fail, say `says`, and leave the file and the folder as they were.
void refuses(const TestFolder& folder, const std::string& path, const std::string& says) {
    const std::string before = bytesOf(path);
    const auto files = filesIn(folder);
    const auto opened = Book::open(path, fixedChance(2));
    ASSERT_FALSE(opened.ok()) << path;
    EXPECT_EQ(opened.error().code, model::ErrorCode::Damaged);
    EXPECT_THAT(opened.error().message, HasSubstr(says));
    EXPECT_TRUE(bytesOf(path) == before) << "the file was changed";
    EXPECT_EQ(filesIn(folder), files);
}

TEST(DamageTest, RefusesWhatIsNoBook) {
    TestFolder folder("damage");
    refuses(folder, folder.file("missing"), "there is no book");
    write(folder.file("empty"), "");
    refuses(folder, folder.file("empty"), "not a Ledgerboard book");
    write(folder.file("text"), std::string(5000, 'x'));
    refuses(folder, folder.file("text"), "not a Ledgerboard book");
    std::filesystem::create_directory(folder.path() / "folder");
    refuses(folder, folder.file("folder"), "is not a file");
}

TEST(DamageTest, RefusesAnotherProgramsDatabase) {
    TestFolder folder("foreign");
    const std::string path = folder.file("foreign");
    sqlite3* handle = nullptr;
    ASSERT_EQ(sqlite3_open(path.c_str(), &handle), SQLITE_OK);
    sqlite3_exec(handle, "CREATE TABLE t(a)", nullptr, nullptr, nullptr);
    sqlite3_close(handle);
    refuses(folder, path, "another program");
}

TEST(DamageTest, RefusesANewerBook) {
    TestFolder folder("newer");
    const std::string path = soundBook(folder);
    std::string bytes = bytesOf(path);
    bytes[63] = 2;  // user_version, the last of its four bytes
    const std::string newer = folder.file("newer");
    write(newer, bytes);
    refuses(folder, newer, "newer Ledgerboard");
}

TEST(DamageTest, RefusesABookCutShort) {
    TestFolder folder("short");
    const std::string bytes = bytesOf(soundBook(folder));
    const std::string cut = folder.file("cut");
    write(cut, bytes.substr(0, bytes.size() / 2));
    refuses(folder, cut, "cut short");
}

TEST(DamageTest, RefusesAReadOnlyBook) {
    TestFolder folder("readonly");
    const std::string path = soundBook(folder);
    ::chmod(path.c_str(), S_IRUSR);
    refuses(folder, path, "read-only");
}

TEST(DamageTest, APageOverwrittenIsFoundByVerifyOrRefused) {
    TestFolder folder("page");
    const std::string sound = bytesOf(soundBook(folder));
    // Each page in turn, but the first, which carries the header, filled with noise.
    for (std::size_t page = 1; page * 4096 < sound.size(); ++page) {
        std::string bytes = sound;
        for (std::size_t k = 0; k < 4096; ++k) {
            bytes[page * 4096 + k] = static_cast<char>(k * 31 + page);
        }
        const std::string path = folder.file("page" + std::to_string(page));
        write(path, bytes);
        auto opened = Book::open(path, fixedChance(3));
        if (!opened.ok()) {
            EXPECT_EQ(opened.error().code, model::ErrorCode::Damaged);
            continue;
        }
        const auto report = opened.value().verify(false);
        EXPECT_TRUE(!report.ok() || !report.value().findings.empty()) << "page " << page;
    }
}

TEST(DamageTest, CreateRefusesToOverwrite) {
    TestFolder folder("overwrite");
    const std::string path = folder.file("precious");
    write(path, "precious");
    const auto made =
        Book::create(path, "Owner", model::Instant::fromMilliseconds(1), fixedChance(1));
    ASSERT_FALSE(made.ok());
    EXPECT_EQ(bytesOf(path), "precious");
    EXPECT_FALSE(
        Book::create(folder.file("no/such/folder"), "Owner", model::Instant{}, fixedChance(1))
            .ok());
    EXPECT_EQ(filesIn(folder), 1U);
}

}  // namespace
}  // namespace ledgerboard::store
