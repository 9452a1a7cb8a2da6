// Protects: verify finds what does not add up, mend puts right what the log can rebuild, and a
// backup made while in use is the same book.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sqlite3.h>

#include "core/store/book.h"

#include "tests/support/fixed_chance.h"

namespace ledgerboard::store {
namespace {

using testing::HasSubstr;
using tests::fixedChance;
using tests::SteppingClock;
using tests::TestFolder;

class VerifyTest : public testing::Test {
  protected:
    TestFolder folder_{"verify"};
    SteppingClock now_;
    std::string path_ = folder_.file("book");

    void SetUp() override {
        auto made = Book::create(path_, "Owner", now_(), fixedChance(1));
        ASSERT_TRUE(made.ok());
        Book book = std::move(made).value();
        for (const int k : {1, 2, 3}) {
            model::Crew crew;
            crew.id = book.newId<model::Kind::Crew>(now_());
            crew.name = "Crew " + std::to_string(k);
            Action action("add crew");
            action.add(crew);
            ASSERT_TRUE(book.commit(action, now_()).ok());
            Action rename("rename");
            rename.set(crew.id.raw(), model::field::Crew::name, "Crew no. " + std::to_string(k));
            ASSERT_TRUE(book.commit(rename, now_()).ok());
        }
    }

    // Harms the file behind the book's back.
    void harm(const std::string& sql) {
        sqlite3* handle = nullptr;
        ASSERT_EQ(sqlite3_open(path_.c_str(), &handle), SQLITE_OK);
        ASSERT_EQ(sqlite3_exec(handle, sql.c_str(), nullptr, nullptr, nullptr), SQLITE_OK)
            << sqlite3_errmsg(handle);
        sqlite3_close(handle);
    }

    VerifyReport verify(bool mend) {
        auto book = Book::open(path_, fixedChance(2));
        EXPECT_TRUE(book.ok());
        auto report = book.value().verify(mend);
        EXPECT_TRUE(report.ok()) << (report.ok() ? "" : report.error().message);
        return report.ok() ? report.value() : VerifyReport{};
    }
};

TEST_F(VerifyTest, ASoundBookHasNoFindings) {
    const VerifyReport report = verify(false);
    EXPECT_THAT(report.findings, testing::IsEmpty());
    EXPECT_GT(report.entries, 8);
    EXPECT_EQ(report.records, 5);  // owner, device, three crews
}

TEST_F(VerifyTest, FindsAndMendsWhatTheLogCanRebuild) {
    for (const auto* sql :
         {"UPDATE crews SET name = 'Forged' WHERE name = 'Crew no. 2'",
          "DELETE FROM crews WHERE name = 'Crew no. 2'",
          "INSERT INTO crews(id, name) VALUES(x'00112233445566778899aabbccddeeff', 'From nowhere')",
          "DELETE FROM superseded",
          "UPDATE cells SET arrival = 1 WHERE arrival = (SELECT max(arrival) FROM cells)"}) {
        harm(sql);
        EXPECT_THAT(verify(false).findings, testing::Not(testing::IsEmpty())) << sql;
        for (const auto& finding : verify(true).findings) {
            EXPECT_TRUE(finding.mended) << sql << ": " << finding.what;
        }
        EXPECT_THAT(verify(false).findings, testing::IsEmpty()) << sql;
    }
}

TEST_F(VerifyTest, SaysSoWhereTheLogItselfWasHarmed) {
    harm("DELETE FROM superseded; DELETE FROM cells; DELETE FROM entries WHERE number = 3");
    const VerifyReport report = verify(false);
    ASSERT_FALSE(report.findings.empty());
    bool named = false;
    for (const auto& finding : report.findings) {
        named = named || finding.what.find("is numbered") != std::string::npos;
    }
    EXPECT_TRUE(named);
}

TEST_F(VerifyTest, FindsAReferenceToNothing) {
    harm("UPDATE people SET crew_id = x'00112233445566778899aabbccddeeff'");
    bool named = false;
    for (const auto& finding : verify(false).findings) {
        named =
            named || finding.what.find("names a crew that is not in the book") != std::string::npos;
    }
    EXPECT_TRUE(named);
}

TEST_F(VerifyTest, ABackupMadeInUseIsTheSameBook) {
    auto book = Book::open(path_, fixedChance(2));
    ASSERT_TRUE(book.ok());
    const std::string copy = folder_.file("copy");
    ASSERT_TRUE(book.value().backup(copy).ok());
    EXPECT_FALSE(book.value().backup(copy).ok());  // never overwrites
    auto restored = Book::open(copy, fixedChance(3));
    ASSERT_TRUE(restored.ok()) << restored.error().message;
    EXPECT_EQ(restored.value().dump().value(), book.value().dump().value());
    EXPECT_EQ(restored.value().entries().value().size(), book.value().entries().value().size());
}

TEST_F(VerifyTest, ABookOfAnotherCatalogIsFittedWhenOpened) {
    // As after an upgrade: the rows' tables were made by other lines of the catalog.
    harm(
        "UPDATE meta SET value = 'older' WHERE name = 'catalog';"
        "ALTER TABLE crews DROP COLUMN phone; UPDATE crews SET name = 'stale'");
    auto book = Book::open(path_, fixedChance(2));
    ASSERT_TRUE(book.ok()) << book.error().message;
    EXPECT_EQ(book.value().rows<model::Crew>().value()[0].name, "Crew no. 1");
    EXPECT_THAT(book.value().verify(false).value().findings, testing::IsEmpty());
}

}  // namespace
}  // namespace ledgerboard::store
