// Protects the working time between days: week, holidays and half days off, counted by hand on the
// calendar of May and June 2026 (Friday is 22 May, Monday 25 May).
#include "core/compute/work_time.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "core/model/overflow.h"

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::compute;
using namespace ledgerboard::tests;
using ledgerboard::model::Date;
using ledgerboard::model::Job;

// Monday 25 May is a holiday, Friday 29 May ends at noon; so does Sunday 31 May, where nobody
// works, and the holiday, which changes nothing.
Job withDaysOff() {
    Job job;
    job.holidays = {day("2026-05-25")};
    job.halfDays = {day("2026-05-29"), day("2026-05-29"), day("2026-05-31"), day("2026-05-25")};
    return job;
}

TEST(WorkTime, CountsDaysHalvesAndWhatLiesBefore) {
    const WorkTime time(withDaysOff(), day("2026-05-23"));  // a Saturday
    EXPECT_EQ(time.before(day("2026-05-23")), 0);
    EXPECT_EQ(time.before(day("2026-05-26")), 0);
    EXPECT_EQ(time.before(day("2026-05-27")), 1000);
    EXPECT_EQ(time.before(day("2026-05-29")), 3000);
    EXPECT_EQ(time.through(day("2026-05-29")), 3500);
    EXPECT_EQ(time.before(day("2026-06-02")), 4500);
    // Thursday and Friday before.
    EXPECT_EQ(time.before(day("2026-05-21")), -2000);
    EXPECT_EQ(time.through(day("2026-05-21")), -1000);
}

TEST(WorkTime, HalfDaysBeforeTheFirstDayCountToo) {
    Job job;
    job.halfDays = {day("2026-05-22")};
    const WorkTime time(job, day("2026-05-23"));
    EXPECT_EQ(time.before(day("2026-05-22")), -500);
    EXPECT_EQ(time.before(day("2026-05-21")), -1500);
}

TEST(WorkTime, WorkBeginsOnTheNextDayAndEndsOnTheSame) {
    const WorkTime time(withDaysOff(), day("2026-05-23"));
    EXPECT_EQ(time.startDay(0), day("2026-05-26"));
    EXPECT_EQ(time.finishDay(0), day("2026-05-26"));
    EXPECT_EQ(time.finishDay(1), day("2026-05-26"));
    EXPECT_EQ(time.startDay(999), day("2026-05-26"));
    EXPECT_EQ(time.finishDay(1000), day("2026-05-26"));
    EXPECT_EQ(time.startDay(1000), day("2026-05-27"));
    // Three days, then the half one: 3.5 ends on the 29th, and Monday is next.
    EXPECT_EQ(time.finishDay(3500), day("2026-05-29"));
    EXPECT_EQ(time.startDay(3500), day("2026-06-01"));
    EXPECT_EQ(time.finishDay(3501), day("2026-06-01"));
}

TEST(WorkTime, AWeekOfOneDayAndFarAwayDays) {
    Job job;
    job.workWeek = ledgerboard::model::Weekdays::fromBits(0b0000100);  // Wednesdays
    const WorkTime time(job, day("2026-05-23"));
    EXPECT_EQ(time.startDay(0), day("2026-05-27"));
    EXPECT_EQ(time.startDay(1000), day("2026-06-03"));
    EXPECT_THROW((void)time.startDay(1'000'000'000'000), ledgerboard::model::OverflowError);
}

RC_GTEST_PROP(WorkTimeProperty, DaysAndTimesAgree, ()) {
    Job job;
    job.workWeek = ledgerboard::model::Weekdays::fromBits(*rc::gen::inRange(1, 128));
    const Date first = day("2026-05-23");
    for (int k = 0; k < 6; ++k) {
        job.holidays.push_back(first + *rc::gen::inRange(-5, 30));
        job.halfDays.push_back(first + *rc::gen::inRange(-5, 30));
    }
    const WorkTime time(job, first);
    const std::int64_t at = *rc::gen::inRange(1, 20'000);
    const Date start = time.startDay(at);
    const Date finish = time.finishDay(at);
    RC_ASSERT(time.before(start) <= at && at < time.through(start));
    RC_ASSERT(time.before(finish) < at && at <= time.through(finish));
    RC_ASSERT(time.calendar().isWorkDay(start) && time.calendar().isWorkDay(finish));
}

}  // namespace
