// Protects clashes, settle and aside: both values are shown with when and on which device they were
// written, settling ends the clash, and what was set aside is listed with its reason. How: entries
// of another device are put into a book as an exchange puts them, and the verbs run by cli::run.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "core/store/sync_book.h"

#include "tests/unit/cli/command_line.h"

namespace ledgerboard::cli {
namespace {

using nlohmann::json;
using testing::HasSubstr;
using tests::TestFolder;

class ClashesTest : public testing::Test {
  protected:
    void SetUp() override {
        run({"start", "Test house"});
        run({"add", "space", "Space=Hall"});
        run({"add", "scope", "Space=Hall", "Treatment=replace", "Object=door", "Quantity=2"});
    }

    std::string run(const std::vector<std::string>& arguments, int status = kDone) {
        const Answer answer = line_(arguments);
        EXPECT_EQ(answer.status, status) << answer.err;
        return status == kDone ? answer.out : answer.err;
    }

    // What another device wrote about the door before it knew of this book's last change.
    store::Entry fromAnother(std::int64_t quantity) {
        auto book = store::Book::open(book_, tests::fixedChance(3)).value();
        const auto item = book.rows<model::Item>().value().front().id.raw();
        store::SyncBook sync(book);
        const auto held =
            sync.entriesOf({item, model::field::Item::quantity}).value().front().entry;
        store::Entry entry;
        entry.name = {model::RawId::parse("019d0000000070008000000000000001").value(),
                      store::Lane::Shared, 1};
        entry.clock = model::HybridClock::fromRaw(held.clock.raw() + (60'000LL << 16));
        entry.record = item;
        entry.field = model::field::Item::quantity;
        entry.value = quantity;
        entry.replaces = {held.name};
        return entry;
    }

    void take(const store::Taking& taking) {
        auto book = store::Book::open(book_, tests::fixedChance(3)).value();
        ASSERT_TRUE(store::SyncBook(book).take(taking).ok());
    }

    TestFolder folder_{"clashes"};
    std::string book_ = folder_.file("house.book");
    CommandLine line_{book_};
};

TEST_F(ClashesTest, NoneIsSaidAsSuch) {
    EXPECT_THAT(run({"clashes"}), HasSubstr("No clashes"));
    EXPECT_THAT(run({"aside"}), HasSubstr("Nothing was set aside"));
    EXPECT_EQ(json::parse(run({"--json", "clashes"}))["clashes"].size(), 0U);
    EXPECT_THAT(run({"settle", "hall/door", "Quantity", "4"}, kCannotBeMet),
                HasSubstr("there is no clash about Quantity"));
}

TEST_F(ClashesTest, BothValuesAreShownUntilOneIsSaidToBeRight) {
    store::Taking taking;
    taking.entries = {fromAnother(5'000)};
    run({"set", "hall/door", "Quantity", "3"});
    take(taking);
    const std::string shown = run({"clashes"});
    EXPECT_THAT(shown, HasSubstr("Hall/door"));
    EXPECT_THAT(shown, HasSubstr("ledgerboard settle Hall/door Quantity "));
    const json values = json::parse(run({"--json", "clashes"}))["clashes"][0]["values"];
    ASSERT_EQ(values.size(), 2U);
    EXPECT_NE(values[0]["value"], values[1]["value"]);
    EXPECT_THAT(run({"settle", "hall/door", "Quantity", "much"}, kWrongUse), HasSubstr("Quantity"));
    EXPECT_THAT(run({"settle", "hall/door", "Quantity", "3"}), HasSubstr("Quantity is 3"));
    EXPECT_THAT(run({"clashes"}), HasSubstr("No clashes"));
    EXPECT_THAT(run({"list", "scope"}), HasSubstr("3"));
}

TEST_F(ClashesTest, WhatWasSetAsideIsListedAndNotApplied) {
    store::Taking taking;
    store::Aside aside;
    aside.entry = fromAnother(9'000);
    aside.at = model::Instant::fromMilliseconds(1'775'500'000'000);
    aside.why = "it is not for this device to write";
    taking.asides = {aside};
    take(taking);
    const std::string shown = run({"aside"});
    EXPECT_THAT(shown, HasSubstr("Hall/door"));
    EXPECT_THAT(shown, HasSubstr("it is not for"));
    const json listed = json::parse(run({"--json", "aside"}))["aside"];
    ASSERT_EQ(listed.size(), 1U);
    EXPECT_EQ(listed[0]["field"], "quantity");
    EXPECT_THAT(run({"--json", "list", "scope"}), testing::Not(HasSubstr("\"quantity\": \"9")));
}

}  // namespace
}  // namespace ledgerboard::cli
