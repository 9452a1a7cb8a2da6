// Protects: two processes that write one book at the same time both succeed, and nothing of either
// is lost or numbered twice; one that reads meanwhile sees a book that adds up.
#include <gtest/gtest.h>
#include <set>
#include <sys/wait.h>
#include <unistd.h>

#include "core/store/book.h"

#include "tests/support/books.h"
#include "tests/support/fixed_chance.h"

namespace ledgerboard::store {
namespace {

using tests::fixedChance;
using tests::TestFolder;

constexpr int kActions = 40;

// Adds crews named after the process; 0 where all went in.
int writeCrews(const std::string& path, const std::string& who, std::uint64_t seed) {
    auto opened = tests::openBook(path, fixedChance(seed));
    if (!opened.ok()) {
        return 1;
    }
    Book book = std::move(opened).value();
    for (int k = 0; k < kActions; ++k) {
        const auto now = model::Instant::fromMilliseconds(1'775'476'800'000 + k);
        model::Crew crew;
        crew.id = book.newId<model::Kind::Crew>(now);
        crew.name = who + std::to_string(k);
        Action action("add");
        action.add(crew);
        if (!book.commit(action, now).ok()) {
            return 2;
        }
    }
    return 0;
}

TEST(TwoProcessesTest, BothWriteAndNothingIsLost) {
    TestFolder folder("two");
    const std::string path = folder.file("book");
    ASSERT_TRUE(
        tests::createBook(path, "Owner", model::Instant::fromMilliseconds(1), fixedChance(1)).ok());
    const pid_t child = ::fork();
    ASSERT_GE(child, 0);
    if (child == 0) {
        ::_exit(writeCrews(path, "child", 11));
    }
    EXPECT_EQ(writeCrews(path, "parent", 22), 0);
    int status = 0;
    ASSERT_EQ(::waitpid(child, &status, 0), child);
    ASSERT_TRUE(WIFEXITED(status));
    EXPECT_EQ(WEXITSTATUS(status), 0);

    auto book = tests::openBook(path, fixedChance(3));
    ASSERT_TRUE(book.ok());
    std::set<std::string> names;
    const auto crews = book.value().rows<model::Crew>();
    ASSERT_TRUE(crews.ok());
    for (const auto& crew : crews.value()) {
        names.insert(crew.name);
    }
    EXPECT_EQ(names.size(), 2U * kActions);
    EXPECT_TRUE(book.value().verify(false).value().findings.empty());
}

TEST(TwoProcessesTest, OneOfTwoMakesTheBook) {
    for (int round = 0; round < (tests::bookPlace().isFile ? 10 : 3); ++round) {
        TestFolder folder("make");
        const std::string path = folder.file("book");
        const auto make = [&](std::uint64_t seed) {
            return tests::createBook(path, "Owner", model::Instant::fromMilliseconds(1),
                                     fixedChance(seed))
                           .ok()
                       ? 1
                       : 0;
        };
        const pid_t child = ::fork();
        ASSERT_GE(child, 0);
        if (child == 0) {
            ::_exit(make(11));
        }
        const int here = make(22);
        int status = 0;
        ASSERT_EQ(::waitpid(child, &status, 0), child);
        EXPECT_EQ(here + WEXITSTATUS(status), 1);
    }
}

TEST(TwoProcessesTest, VerifyFindsNothingWrongWhileAnotherWrites) {
    TestFolder folder("verify");
    const std::string path = folder.file("book");
    ASSERT_TRUE(
        tests::createBook(path, "Owner", model::Instant::fromMilliseconds(1), fixedChance(1)).ok());
    const pid_t child = ::fork();
    ASSERT_GE(child, 0);
    if (child == 0) {
        ::_exit(writeCrews(path, "child", 11));
    }
    auto book = tests::openBook(path, fixedChance(3));
    ASSERT_TRUE(book.ok());
    int status = 0;
    do {
        const auto report = book.value().verify(false);
        ASSERT_TRUE(report.ok());
        for (const auto& finding : report.value().findings) {
            ADD_FAILURE() << finding.what;
        }
    } while (::waitpid(child, &status, WNOHANG) == 0);
    EXPECT_EQ(WEXITSTATUS(status), 0);
}

}  // namespace
}  // namespace ledgerboard::store
