// Protects: what is let go of the log changes nothing that can be asked for still, its name too.
// How: a book with values written over before and after a horizon; what it holds, and what it knew
// at and after the horizon, is the same before and after.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/store/sync_book.h"

#include "tests/support/books.h"
#include "tests/support/fixed_chance.h"

namespace ledgerboard::store {
namespace {

namespace field = model::field;
using model::Instant;
using testing::HasSubstr;

Instant day(int number) {
    return Instant::fromMilliseconds(1'775'476'800'000 + std::int64_t{number} * 86'400'000);
}

class CompactTest : public testing::Test {
  protected:
    CompactTest()
        : book_(tests::createBook(folder_.file("house.book"), "Ann", day(0), tests::fixedChance(1))
                    .value()),
          sync_(book_),
          space_(book_.newId(day(0))),
          item_(book_.newId(day(0))) {
        for (int k = 1; k <= 6; ++k) {
            Action action("name " + std::to_string(k));
            action.set(space_, field::Space::name, "Room " + std::to_string(k));
            action.set(item_, field::Item::lumpSum, std::int64_t{100} * k);
            action.set(item_, field::Item::object, "object " + std::to_string(k));
            EXPECT_TRUE(book_.commit(action, day(k)).ok());
        }
    }

    // The horizon lies at the end of day 4: rooms 1 to 3 were written over before it.
    std::size_t compact(std::int64_t upTo = 1'000, LaneNumbers own = {1'000, 1'000}) {
        return sync_.compact({model::HybridClock::endOf(day(4)), upTo, own}).value();
    }

    std::string known(int number) { return book_.knownAt(day(number)).value().dump().value(); }

    tests::TestFolder folder_{"compact"};
    Book book_;
    SyncBook sync_;
    model::RawId space_;
    model::RawId item_;
};

TEST_F(CompactTest, WhatIsKnownFromTheHorizonOnStaysAsItWas) {
    const std::string now = book_.dump().value();
    const std::string atFour = known(4);
    const std::string atFive = known(5);
    const auto before = book_.entries().value().size();
    EXPECT_EQ(compact(), 3u);  // the name alone: money and checked fields stay
    EXPECT_EQ(book_.entries().value().size(), before - 3);
    EXPECT_EQ(compact(), 0u);
    EXPECT_EQ(book_.dump().value(), now);
    EXPECT_EQ(known(4), atFour);
    EXPECT_EQ(known(5), atFive);
    EXPECT_TRUE(book_.verify(false).value().findings.empty());
    EXPECT_TRUE(book_.verify(true).value().findings.empty());
    EXPECT_EQ(book_.dump().value(), now);
    const auto early = book_.knownAt(day(3));
    ASSERT_FALSE(early.ok());
    EXPECT_THAT(early.error().message, HasSubstr("is not kept any more"));
}

TEST_F(CompactTest, UndoGoesBackToTheHorizonAndNoFurther) {
    EXPECT_EQ(compact(), 3u);
    EXPECT_TRUE(book_.undo(day(7)).ok());
    EXPECT_TRUE(book_.undo(day(7)).ok());
    EXPECT_THAT(book_.dump().value(), HasSubstr("Room 4"));
    const auto third = book_.undo(day(7));
    ASSERT_FALSE(third.ok());
    EXPECT_THAT(third.error().message, HasSubstr("too long ago"));
}

TEST_F(CompactTest, WhatWentDoesNotComeBackAndItsNumberIsNotUsedAgain) {
    const auto all = book_.entries().value();
    const auto last = sync_.lastNumbers(book_.thisDevice().raw()).value();
    const auto whole = sync_.unbroken().value();
    EXPECT_EQ(compact(), 3u);
    EXPECT_EQ(book_.apply(all).value(), 0u);
    EXPECT_EQ(sync_.lastNumbers(book_.thisDevice().raw()).value(), last);
    EXPECT_EQ(sync_.unbroken().value(), whole);
    std::size_t gone = 0;
    for (const auto& entry : all) {
        const auto known = sync_.entryNamed(entry.name).value();
        ASSERT_TRUE(known);
        gone += known->compacted ? 1 : 0;
    }
    EXPECT_EQ(gone, 3u);
}

TEST_F(CompactTest, AHoleEndsWhatIsUnbroken) {
    const model::RawId device = book_.thisDevice().raw();
    const auto whole = sync_.unbroken().value();
    EXPECT_EQ(whole.at(device), sync_.lastNumbers(device).value());
    EXPECT_EQ(compact(), 3u);
    Taking taking;
    taking.forgetEntries = {{device, Lane::Shared, whole.at(device)[1] - 2}};
    ASSERT_TRUE(sync_.take(taking).ok());
    const LaneNumbers holed = sync_.unbroken().value().at(device);
    EXPECT_EQ(holed[0], whole.at(device)[0]);
    EXPECT_EQ(holed[1], whole.at(device)[1] - 3);
}

TEST_F(CompactTest, AreFoundByNameWhetherThereGoneOrSetAside) {
    const auto all = book_.entries().value();
    EXPECT_EQ(compact(), 3u);
    const EntryName near{book_.newId(day(7)), Lane::Shared, 3};
    const EntryName between{near.device, Lane::Shared, 5};
    const EntryName far{near.device, Lane::Shared, 5'000'000'000};
    Taking taking;
    for (const auto& name : {near, between, far}) {
        Aside aside{0, all.front(), day(7), "not yours " + std::to_string(name.number)};
        aside.entry.name = name;
        taking.asides.push_back(aside);
    }
    ASSERT_TRUE(sync_.take(taking).ok());
    // Asked for out of order, one of them twice, with names that nobody used.
    std::vector<EntryName> names = {
        far, near, {near.device, Lane::Shared, 7}, near, {near.device, Lane::OwnerOnly, 3}};
    for (const auto& entry : all) {
        names.push_back(entry.name);
    }
    const auto found = sync_.entriesNamed(names).value();
    EXPECT_EQ(found.size(), all.size() + 2);
    EXPECT_EQ(found.count(between), 0u);  // known, and not asked for
    EXPECT_EQ(found.at(near).why, "not yours 3");
    EXPECT_TRUE(found.at(far).aside);
    std::size_t gone = 0;
    for (const auto& entry : all) {
        const auto& known = found.at(entry.name);
        EXPECT_FALSE(known.aside);
        EXPECT_TRUE(known.compacted || known.entry.value == entry.value);
        gone += known.compacted ? 1 : 0;
    }
    EXPECT_EQ(gone, 3u);
    EXPECT_TRUE(sync_.entriesNamed({}).value().empty());
}

TEST_F(CompactTest, WhatOthersMayLackStays) {
    EXPECT_EQ(compact(0), 0u);              // nobody has taken anything
    EXPECT_EQ(compact(1'000, {0, 0}), 0u);  // nothing of its own was acknowledged
    EXPECT_TRUE(book_.knownAt(day(1)).ok());
}

}  // namespace
}  // namespace ledgerboard::store
