// Protects: a date that can be two days is read as its column is, or refused; never guessed.
#include "core/intake/files/dates.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace ledgerboard::intake {
namespace {

using testing::HasSubstr;

std::string shown(std::string_view text, DateOrder order) {
    const auto date = parseDateIn(text, order);
    return date.ok() ? date.value().toString() : "refused: " + date.error().message;
}

TEST(DatesTest, AColumnProvesItsOrder) {
    EXPECT_EQ(dateOrderOf({}), DateOrder::Unknown);
    EXPECT_EQ(dateOrderOf({"5/6/2026", "7/7/2026", "", "soon"}), DateOrder::Unknown);
    EXPECT_EQ(dateOrderOf({"5/6/2026", "25/6/2026"}), DateOrder::DayFirst);
    EXPECT_EQ(dateOrderOf({"5-25-2026", "5-6-2026"}), DateOrder::MonthFirst);
    EXPECT_EQ(dateOrderOf({"5/25/2026", "25/5/2026"}), DateOrder::Mixed);
    // Other forms speak for themselves and not for the column.
    EXPECT_EQ(dateOrderOf({"2026-05-25", "25.5.2026", "25 May 2026"}), DateOrder::Unknown);
}

TEST(DatesTest, AmbiguousFollowsTheColumn) {
    EXPECT_EQ(shown("5/6/2026", DateOrder::DayFirst), "2026-06-05");
    EXPECT_EQ(shown("5/6/2026", DateOrder::MonthFirst), "2026-05-06");
    EXPECT_EQ(shown("5-6-2026", DateOrder::MonthFirst), "2026-05-06");
    EXPECT_THAT(shown("5/6/2026", DateOrder::Unknown), HasSubstr("two different days"));
    EXPECT_THAT(shown("5/6/2026", DateOrder::Mixed), HasSubstr("some dates day first"));
}

TEST(DatesTest, OtherFormsDoNotDependOnTheColumn) {
    for (const auto order : {DateOrder::Unknown, DateOrder::DayFirst, DateOrder::MonthFirst}) {
        EXPECT_EQ(shown("2026-05-15", order), "2026-05-15");
        EXPECT_EQ(shown(" 15 May 2026 ", order), "2026-05-15");
        EXPECT_EQ(shown("May 15, 2026", order), "2026-05-15");
        EXPECT_EQ(shown("15.5.2026", order), "2026-05-15");
        EXPECT_EQ(shown("5/15/2026", order), "2026-05-15");
        EXPECT_EQ(shown("5/5/2026", order), "2026-05-05");
        EXPECT_EQ(shown("2026-05-15 00:00:00", order), "2026-05-15");
        EXPECT_EQ(shown("2026-05-15T14:30Z", order), "2026-05-15");
        EXPECT_THAT(shown("31/2/2026", order), HasSubstr("refused"));
        EXPECT_THAT(shown("5/6/26", order), HasSubstr("two-digit year"));
        EXPECT_THAT(shown("46157", order), HasSubstr("not a date"));
        EXPECT_THAT(shown("2026-05-15 soon", order), HasSubstr("refused"));
    }
}

}  // namespace
}  // namespace ledgerboard::intake
