// Protects: the table of weights can be used whole, what is less sure than asked for is not made,
// and an item's signs are of the tables and the form of its sentence, never its words.
// How: the embedded table; small notes read with floors of 0 and 100. How well the weights hold is
// no matter for a unit test: score-notes prints it on notes left out.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/intake/notes/read_notes.h"
#include "core/intake/notes/sureness.h"

namespace ledgerboard::intake {
namespace {

using model::Treatment;

TEST(NotesSureness, EveryRowCanBeUsed) {
    EXPECT_THAT(surenessFaults(), testing::IsEmpty());
    EXPECT_GT(leastSure(), 0);
    EXPECT_LT(leastSure(), 50);
}

TEST(NotesSureness, SignsAreNamedAndFoundAgain) {
    for (std::uint32_t i = 0; i < static_cast<std::uint32_t>(SignFlag::Count); ++i) {
        const Sign sign = signOf(static_cast<SignFlag>(i));
        EXPECT_THAT(signsNamed("is", valueName(sign)), testing::ElementsAre(sign)) << i;
    }
    const Sign gap{SignKind::Gap, 2};
    EXPECT_EQ(kindName(gap.kind), "gap");
    EXPECT_THAT(signsNamed("gap", "2"), testing::ElementsAre(gap));
    EXPECT_THAT(signsNamed("gap", "two"), testing::IsEmpty());
    EXPECT_THAT(signsNamed("weather", "2"), testing::IsEmpty());
    const std::uint32_t sink = tables().objectNamed("sink");
    EXPECT_THAT(signsNamed("object", "sink"), testing::ElementsAre(Sign{SignKind::Object, sink}));
    // Every object of the trade has the weight of the trade.
    EXPECT_GT(signsNamed("trade", tables().objects[sink].trade).size(), 5U);
}

TEST(NotesSureness, StaysWithinPercent) {
    EXPECT_EQ(sureness({}, Treatment::Replace), 50);  // odds of one to one: no weight at all
    std::vector<Sign> many;
    for (std::uint32_t i = 0; i < static_cast<std::uint32_t>(SignFlag::Count); ++i) {
        many.push_back(signOf(static_cast<SignFlag>(i)));
    }
    EXPECT_GE(sureness(many, Treatment::Inspect), 1);
    EXPECT_LE(sureness(many, Treatment::Inspect), 99);
}

TEST(NotesSureness, WhatIsLessSureThanAskedForIsNotMade) {
    constexpr std::string_view kNotes =
        "Kitchen. Replace the sink. I guess somebody might have painted over the old tile, who "
        "knows, the neighbor had it done.\n";
    ReadOptions all;
    all.leastSure = 0;
    ReadOptions none;
    none.leastSure = 100;
    const auto whole = readNotes(kNotes, all);
    const auto plain = readNotes(kNotes);
    const auto empty = readNotes(kNotes, none);
    ASSERT_TRUE(whole.ok() && plain.ok() && empty.ok());
    EXPECT_GE(whole.value().items.size(), plain.value().items.size());
    EXPECT_THAT(empty.value().items, testing::IsEmpty());
    EXPECT_EQ(whole.value().leftOut, 0);
    EXPECT_EQ(static_cast<std::size_t>(empty.value().leftOut), whole.value().items.size());
    ASSERT_FALSE(plain.value().items.empty());
    EXPECT_EQ(plain.value().items.front().object, "sink");
    for (const DraftItem& item : plain.value().items) {
        EXPECT_GE(item.source.sure, leastSure());
    }
}

TEST(NotesSureness, SignsHoldNoWordOfTheNotes) {
    const auto reading = explainNotes("Kitchen. Zebulon says the sink quivers, so swap the sink.\n",
                                      {.explain = true});
    ASSERT_TRUE(reading.ok());
    ASSERT_EQ(reading.value().signs.size(), reading.value().draft.items.size());
    ASSERT_FALSE(reading.value().signs.empty());
    for (const NamedSign& sign : reading.value().signs.front()) {
        EXPECT_THAT(signsNamed(sign.name, sign.value), testing::Not(testing::IsEmpty()))
            << sign.name << " " << sign.value;
        EXPECT_THAT(sign.value, testing::Not(testing::HasSubstr("ebulon")));
    }
}

}  // namespace
}  // namespace ledgerboard::intake
