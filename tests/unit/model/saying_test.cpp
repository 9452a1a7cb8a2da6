// What core says, with its places: the English comes out as it stood before there were places, what
// stands in a place is never read again, and an error has it.
#include "core/model/saying.h"

#include <gtest/gtest.h>

#include "core/model/date.h"
#include "core/model/money.h"
#include "core/model/percent.h"

namespace ledgerboard::model {
namespace {

TEST(Saying, PutsEachThingInItsPlace) {
    const Saying said = saying("%2 of %1", 3, "two");
    EXPECT_EQ(said.text(), "two of 3");
    EXPECT_EQ(said.pattern(), "%2 of %1");
    ASSERT_EQ(said.places().size(), 2U);
    EXPECT_EQ(said.places()[0].is, Place::Is::Count);
    EXPECT_EQ(said.places()[0].number, 3);
    EXPECT_EQ(said.places()[1].is, Place::Is::Words);
}

// Whoever names a thing "%2" or "100 %1" is shown it so.
TEST(Saying, DoesNotReadAgainWhatStandsInAPlace) {
    EXPECT_EQ(saying("%1, %2", "%2 and 100 %1", "b").text(), "%2 and 100 %1, b");
    EXPECT_EQ(asWritten("half %1 done").text(), "half %1 done");
    EXPECT_EQ(Saying("half %1 done").text(), "half %1 done");
}

TEST(Saying, APercentSignAloneIsItself) {
    EXPECT_EQ(saying("%1 % shown", Percent::of(25)).text(), "25 % shown");
    EXPECT_EQ(saying("%0 %1 %3 %", "a").text(), "%0 a %3 %");
}

// 15 May 2026 is a Friday: so says the calendar.
TEST(Saying, FiguresReadInEnglishAsTheyAlwaysDid) {
    EXPECT_EQ(saying("%1", Money::fromMinor(-125050)).text(), "-1250.50");
    EXPECT_EQ(saying("%1", Date::parse("2026-05-15").value()).text(), "Fri 15 May");
    EXPECT_EQ(saying("%1", Percent::fromBasisPoints(3333)).text(), "33.33");
    EXPECT_EQ(saying("%1", std::size_t{1500}).text(), "1500");
    EXPECT_EQ(saying("%1", Money::fromMinor(-125050)).places()[0].number, -125050);
}

TEST(Saying, HoldsAnother) {
    const Saying state = saying("%1 open", 2);
    const Saying all = saying("%1; next: %2", state, saying("paid"));
    EXPECT_EQ(all.text(), "2 open; next: paid");
    ASSERT_EQ(all.places()[0].saying.size(), 1U);
    EXPECT_EQ(all.places()[0].saying.front(), state);
}

TEST(Saying, NothingSaidIsEmpty) {
    EXPECT_TRUE(Saying().isEmpty());
    EXPECT_TRUE(asWritten("").isEmpty());
    EXPECT_EQ(Saying().text(), "");
}

TEST(SayingOfAnError, IsItsMessage) {
    const Error refused = wrongUse(saying("%1 is too large", "\"9\""));
    EXPECT_EQ(refused.code, ErrorCode::WrongUse);
    EXPECT_EQ(refused.message, "\"9\" is too large");
    EXPECT_EQ(damaged(saying("the disk is full")).code, ErrorCode::Damaged);
    EXPECT_EQ(cannotBeMet(saying("%1", 2)).code, ErrorCode::CannotBeMet);
}

TEST(SayingOfAnError, HasThePlaceNamedBeforeIt) {
    const Error there = inPlace(Saying("Quantity"), wrongUse(saying("it can't be below %1", 0)));
    EXPECT_EQ(there.code, ErrorCode::WrongUse);
    EXPECT_EQ(there.message, "Quantity: it can't be below 0");
}

}  // namespace
}  // namespace ledgerboard::model
