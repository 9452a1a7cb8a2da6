// Protects: a date is the day the writer meant, or refused. How: the calendar against dates whose
// weekday and distance are published or counted by hand, every day of 1,400 years counted on by
// the leap rule alone, and each form people write in files.
#include "core/model/date.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/model/test_text.h"

namespace ledgerboard::model {
namespace {

Date day(int year, int month, int dayOfMonth) {
    return Date::fromYmd(year, month, dayOfMonth).value();
}

TEST(Date, CountsDaysFromTheEpoch) {
    EXPECT_EQ(day(1970, 1, 1).days(), 0);
    EXPECT_EQ(day(1969, 12, 31).days(), -1);
    // 30 years of 365 days and the leap days of 72, 76, 80, 84, 88, 92 and 96: 10,957.
    EXPECT_EQ(day(2000, 1, 1).days(), 10'957);
}

TEST(Date, LeapYearsFollowTheGregorianRule) {
    // Source: ISO 8601-1:2019, 4.2.1: a year divisible by 4 is leap, but a centurial year only
    // where it is divisible by 400.
    EXPECT_TRUE(Date::fromYmd(2024, 2, 29).ok());
    EXPECT_TRUE(Date::fromYmd(2000, 2, 29).ok());
    EXPECT_FALSE(Date::fromYmd(1900, 2, 29).ok());
    EXPECT_FALSE(Date::fromYmd(2100, 2, 29).ok());
    EXPECT_FALSE(Date::fromYmd(2026, 2, 29).ok());
}

TEST(Date, EveryDayOfTheRangeFollowsTheOneBefore) {
    // An independent count: months by their lengths, leap years by the rule above.
    Date date = day(1600, 1, 1);
    for (int year = 1600; year <= 2999; ++year) {
        const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
        const int lengths[] = {31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
        for (int month = 1; month <= 12; ++month) {
            for (int k = 1; k <= lengths[month - 1]; ++k, date = date + 1) {
                ASSERT_EQ(date, day(year, month, k));
                ASSERT_EQ(date.year(), year);
                ASSERT_EQ(date.month(), month);
                ASSERT_EQ(date.dayOfMonth(), k);
            }
            ASSERT_FALSE(Date::fromYmd(year, month, lengths[month - 1] + 1).ok());
        }
    }
    // 1,400 years of 365 days, and a leap day in each of the 350 years divisible by four, less the
    // 14 centurial years, plus 1600, 2000, 2400 and 2800: 511,000 + 340.
    EXPECT_EQ(date - day(1600, 1, 1), 511'340);
}

TEST(Date, KnowsItsWeekday) {
    EXPECT_EQ(day(1970, 1, 1).weekday(), 3);  // a Thursday (POSIX.1, the Epoch, from memory)
    EXPECT_EQ(day(2000, 1, 1).weekday(), 5);  // 10,957 days are 1,565 weeks and 2 days: a Saturday
    EXPECT_EQ(day(1969, 12, 31).weekday(), 2);
    EXPECT_EQ(day(1600, 1, 1).weekday(), 5);  // 400 years are 20,871 whole weeks, so as in 2000
}

TEST(Date, RefusesDaysThatAreNot) {
    for (const auto* text : {"2026-13-01", "2026-00-10", "2026-04-31", "2026-05-00", "1599-12-31",
                             "3000-01-01", "2026-5-1", "20260501", "2026/05/01", "", "tomorrow",
                             "2026-05-1x", "-026-05-01", "2026-+5-01"}) {
        EXPECT_FALSE(Date::parse(text).ok()) << text;
    }
    EXPECT_THAT(Date::parse("2026-02-30").error().message,
                testing::HasSubstr("no day 2026-2-30 in the calendar"));
    // Numbers beyond a byte must not come round again as a month or a day.
    EXPECT_FALSE(Date::fromYmd(2026, 256 + 5, 15).ok());
    EXPECT_FALSE(Date::fromYmd(2026, 5, 256 + 15).ok());
    EXPECT_FALSE(Date::fromYmd(65'536 + 2026, 5, 15).ok());
    EXPECT_FALSE(Date::fromYmd(2026, -5, 15).ok());
}

TEST(Date, PrintsIsoAndShort) {
    EXPECT_EQ(day(2026, 5, 5).toString(), "2026-05-05");
    // 2026-05-15: 2000-01-01 was a Saturday; 26 years and 134 days later are 9,631 days, 1,375
    // weeks and 6 days on: a Friday.
    EXPECT_EQ(day(2026, 5, 15).toShortText(), "Fri 15 May");
}

TEST(Date, ReadsWhatPeopleWriteInFiles) {
    for (const auto* text :
         {"2026-05-15", " 2026-05-15 ", "5/15/2026", "05/15/2026", "15/5/2026", "15.5.2026",
          "15.05.2026", "2026/05/15", "2026-5-15", "2026.05.15", "15 May 2026", "May 15, 2026",
          "may 15 2026", "MAY 15, 2026", "15-May-2026"}) {
        EXPECT_EQ(shown(Date::parseLoose(text)), "2026-05-15") << text;
    }
    EXPECT_EQ(shown(Date::parseLoose("5.6.2026")), "2026-06-05");  // points: day first
    EXPECT_EQ(shown(Date::parseLoose("6/6/2026")), "2026-06-06");  // the same either way
    EXPECT_EQ(shown(Date::parseLoose("3 Sept 2026")), "2026-09-03");
    EXPECT_EQ(shown(Date::parseLoose("September 3, 2026")), "2026-09-03");
}

TEST(Date, RefusesWhatCouldBeTwoDays) {
    for (const auto* text : {"5/6/2026", "05/06/2026", "5-6-2026", "12/1/2026"}) {
        const auto read = Date::parseLoose(text);
        ASSERT_FALSE(read.ok()) << text;
        EXPECT_THAT(read.error().message, testing::HasSubstr("two different days")) << text;
        EXPECT_THAT(read.error().message, testing::HasSubstr(text));
    }
}

TEST(Date, RefusesTwoDigitYears) {
    for (const auto* text : {"5/15/26", "15.5.26", "15 May 26", "May 15, 26"}) {
        const auto read = Date::parseLoose(text);
        ASSERT_FALSE(read.ok()) << text;
        EXPECT_THAT(read.error().message, testing::HasSubstr("two-digit year")) << text;
    }
}

TEST(Date, RefusesWhatIsNoDate) {
    for (const auto* text : {"", "soon", "May 2026", "15 May", "Maybe 15, 2026", "15 Marble 2026",
                             "1/2/3/2026", "13/14/2026", "5/271/2026", "15.261.2026", "2026-02-30",
                             "99999999999/1/2026", "15/5/20266"}) {
        EXPECT_FALSE(Date::parseLoose(text).ok()) << text;
    }
    EXPECT_THAT(Date::parseLoose("2026-02-30").error().message,
                testing::HasSubstr("no day 2026-2-30"));
}

TEST(Date, MovesByDays) {
    EXPECT_EQ(day(2026, 2, 28) + 1, day(2026, 3, 1));
    EXPECT_EQ(day(2024, 2, 28) + 1, day(2024, 2, 29));
    EXPECT_EQ(day(2026, 1, 1) - 1, day(2025, 12, 31));
    EXPECT_EQ(day(2026, 6, 5) - day(2026, 4, 6), 60);  // 24 of April, 31 of May, 5 of June
    EXPECT_LT(day(2026, 4, 6), day(2026, 4, 7));
}

}  // namespace
}  // namespace ledgerboard::model
