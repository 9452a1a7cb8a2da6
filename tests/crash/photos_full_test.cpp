// Protects photos from a disk that is full: keeping one fails with a plain word, leaves nothing
// half written, and works once there is room. How: a process of its own mounts a disk of 256 KiB
// for itself alone; where that is not allowed the same is asked with a limit on the size of files.
#include <csignal>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <sched.h>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include "core/store/photos.h"

#include "tests/support/fixed_chance.h"

namespace ledgerboard::tests {
namespace {

namespace fs = std::filesystem;

std::size_t filesIn(const fs::path& folder) {
    std::size_t count = 0;
    for (const auto& one : fs::recursive_directory_iterator(folder)) {
        count += one.is_regular_file() ? 1 : 0;
    }
    return count;
}

// Empty where all is as it must be. `fill` takes the room away, `free` gives it back.
template <class Fill, class Free>
std::string keptWhereFull(const fs::path& folder, const std::string& word, Fill fill, Free free) {
    const store::Photos photos((folder / "house.book").string());
    const std::string small(20'000, 's');
    const std::string large(120'000, 'l');
    if (!photos.keep(small).ok()) {
        return "a photo is not kept while there is room";
    }
    fill();
    const auto before = filesIn(photos.folder());
    const auto kept = photos.keep(large);
    if (kept.ok() || kept.error().message.find(word) == std::string::npos) {
        return "no plain word: " + (kept.ok() ? "kept" : kept.error().message);
    }
    if (filesIn(photos.folder()) != before ||
        photos.check(store::Photos::digestOf(large)) != store::PhotoState::Missing ||
        photos.check(store::Photos::digestOf(small)) != store::PhotoState::Right) {
        return "something half written is left";
    }
    free();
    return photos.keep(large).ok() ? "" : "it is not kept after there is room again";
}

constexpr int kNotAllowed = 77;

bool ownDisk(const fs::path& at) {
    const int apart = ::geteuid() == 0 ? CLONE_NEWNS : CLONE_NEWNS | CLONE_NEWUSER;
    return ::unshare(apart) == 0 &&
           ::mount("none", "/", nullptr, MS_REC | MS_PRIVATE, nullptr) == 0 &&
           ::mount("tmpfs", at.c_str(), "tmpfs", 0, "size=256k") == 0;
}

TEST(PhotosWhereTheDiskIsFull, NothingHalfWrittenAndThenItWorks) {
    const TestFolder folder("full");
    const pid_t child = ::fork();
    if (child == 0) {
        if (!ownDisk(folder.path())) {
            ::_exit(kNotAllowed);
        }
        const fs::path filler = folder.path() / "filler";
        const std::string wrong = keptWhereFull(
            folder.path(), "No space left",
            [&] { std::ofstream(filler) << std::string(150'000, 'f'); },
            [&] { fs::remove(filler); });
        std::cerr << wrong << "\n";
        ::_exit(wrong.empty() ? 0 : 1);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    ASSERT_TRUE(WIFEXITED(status));
    if (WEXITSTATUS(status) == kNotAllowed) {
        GTEST_SKIP() << "no disk of one's own may be mounted here";
    }
    EXPECT_EQ(WEXITSTATUS(status), 0);
}

TEST(PhotosWhereFilesMayNotGrow, NothingHalfWrittenAndThenItWorks) {
    const TestFolder folder("limit");
    ::signal(SIGXFSZ, SIG_IGN);
    rlimit usual{};
    ASSERT_EQ(::getrlimit(RLIMIT_FSIZE, &usual), 0);
    const auto limitTo = [&](rlim_t bytes) {
        const rlimit limit{bytes, usual.rlim_max};
        ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &limit), 0);
    };
    EXPECT_EQ(
        keptWhereFull(
            folder.path(), "too large", [&] { limitTo(60'000); }, [&] { limitTo(usual.rlim_cur); }),
        "");
    limitTo(usual.rlim_cur);
}

}  // namespace
}  // namespace ledgerboard::tests
