// Protects: the work week means the days its owner wrote. How: each way of writing one against bits
// set by hand, Monday being bit 0.
#include "core/model/lists.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "tests/unit/model/test_text.h"

namespace ledgerboard::model {
namespace {

TEST(Weekdays, ReadsListsAndRanges) {
    EXPECT_EQ(Weekdays::parse("Mon Tue Wed Thu Fri").value(), Weekdays::mondayToFriday());
    EXPECT_EQ(Weekdays::parse("Mon-Fri").value(), Weekdays::mondayToFriday());
    EXPECT_EQ(Weekdays::parse("mon - fri").value(), Weekdays::mondayToFriday());
    EXPECT_EQ(Weekdays::parse("Monday, Wednesday; sat").value().bits(), 0b0100101);
    EXPECT_EQ(Weekdays::parse("Mon-Wed, Fri").value().bits(), 0b0010111);
    EXPECT_EQ(Weekdays::parse("Fri-Mon").value().bits(), 0b1110001);
    EXPECT_EQ(Weekdays::parse("Tues Thurs").value().bits(), 0b0001010);
}

TEST(Weekdays, RefusesWhatIsNoWorkWeek) {
    for (const auto* text :
         {"", "Mo", "Mon-", "-Fri", "Mon/Tue", "Funday", "Monkey", "5", "Mon 5"}) {
        const auto read = Weekdays::parse(text);
        ASSERT_FALSE(read.ok()) << text;
        EXPECT_THAT(read.error().message, testing::HasSubstr("Mon-Sat"));
    }
}

TEST(Weekdays, PrintsDayByDay) {
    EXPECT_EQ(Weekdays::mondayToFriday().toString(), "Mon Tue Wed Thu Fri");
    EXPECT_EQ(Weekdays().toString(), "");
    EXPECT_TRUE(Weekdays::mondayToFriday().has(4));
    EXPECT_FALSE(Weekdays::mondayToFriday().has(5));
}

TEST(Weekdays, EverySetReadsBack) {
    for (std::int64_t bits = 1; bits < 128; ++bits) {
        EXPECT_EQ(Weekdays::parse(Weekdays::fromBits(bits).toString()).value().bits(), bits);
    }
}

}  // namespace
}  // namespace ledgerboard::model
