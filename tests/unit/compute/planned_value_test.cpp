// Protects which days are worked and how planned value runs over them. Days are counted by hand on
// the calendar of May 2026, whose first is a Friday.
#include "core/compute/planned_value.h"

#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;

Job mondayToFriday() {
    Job job;
    job.holidays = {day("2026-05-25"), day("2026-05-25"), day("2026-05-23")};  // Mon twice, Sat
    return job;
}

TEST(WorkCalendar, CountsBothEnds) {
    const WorkCalendar calendar(mondayToFriday());
    EXPECT_EQ(calendar.workDays(day("2026-05-04"), day("2026-05-08")), 5);
    EXPECT_EQ(calendar.workDays(day("2026-05-04"), day("2026-05-04")), 1);
    EXPECT_EQ(calendar.workDays(day("2026-05-02"), day("2026-05-03")), 0);
    EXPECT_EQ(calendar.workDays(day("2026-05-08"), day("2026-05-04")), 0);
    // 1, 4-8, 11-15, 18-22, 26-29: the 25th is a holiday.
    EXPECT_EQ(calendar.workDays(day("2026-05-01"), day("2026-05-31")), 20);
}

TEST(WorkCalendar, AgreesWithCountingDayByDay) {
    Job job = mondayToFriday();
    job.workWeek = Weekdays::parse("Tue-Sat").value();
    const WorkCalendar calendar(job);
    for (int first = 0; first < 20; ++first) {
        int counted = 0;
        for (int length = 0; length < 40; ++length) {
            const Date last = day("2026-05-11") + first + length;
            counted += calendar.isWorkDay(last) ? 1 : 0;
            ASSERT_EQ(calendar.workDays(day("2026-05-11") + first, last), counted)
                << first << " " << length;
        }
    }
}

TEST(WorkCalendar, FindsTheNextDayAndTheLast) {
    const WorkCalendar calendar(mondayToFriday());
    EXPECT_EQ(calendar.onOrAfter(day("2026-05-22")), day("2026-05-22"));
    EXPECT_EQ(calendar.onOrAfter(day("2026-05-23")), day("2026-05-26"));
    EXPECT_EQ(calendar.finishOf(day("2026-05-21"), 1), day("2026-05-21"));
    EXPECT_EQ(calendar.finishOf(day("2026-05-21"), 3), day("2026-05-26"));
}

TEST(WorkCalendar, AWorkWeekOfNoDaysIsTheUsualOne) {
    Job job;
    job.workWeek = Weekdays::fromBits(0);
    EXPECT_TRUE(WorkCalendar(job).isWorkDay(day("2026-05-04")));
}

// One item of 1,000, planned Monday 4 to Friday 8 May.
struct Planned : SampleJob {
    explicit Planned(Measure measure) {
        Item& item = this->item("tile", "1000");
        item.measure = measure;
        item.plannedStartOn = day("2026-05-04");
        item.plannedFinishOn = day("2026-05-08");
    }

    [[nodiscard]] Money by(std::string_view on) const {
        return plannedValueOf(rows, scopeLinesOf(rows)).by(day(on));
    }
};

TEST(PlannedValue, RunsEvenlyOverWorkingDays) {
    Planned job(Measure::JudgedPercent);
    EXPECT_EQ(job.by("2026-05-03"), Money{});
    EXPECT_EQ(job.by("2026-05-04"), money("200"));
    EXPECT_EQ(job.by("2026-05-07"), money("800"));
    EXPECT_EQ(job.by("2026-05-08"), money("1000"));
    EXPECT_EQ(job.by("2027-01-01"), money("1000"));
    // Over a weekend it stands still: planned to Tuesday 12 May, 7 days; 5/7 of 1,000 = 714.29.
    job.rows.items[0].plannedFinishOn = day("2026-05-12");
    EXPECT_EQ(job.by("2026-05-08"), money("714.29"));
    EXPECT_EQ(job.by("2026-05-10"), money("714.29"));
}

TEST(PlannedValue, NoneOrDoneAndStepsComeAtTheFinish) {
    for (const Measure measure : {Measure::NoneOrDone, Measure::WeightedSteps}) {
        Planned job(measure);
        EXPECT_EQ(job.by("2026-05-07"), Money{});
        EXPECT_EQ(job.by("2026-05-08"), money("1000"));
    }
}

TEST(PlannedValue, HalfAndHalfComesAtBothEnds) {
    const Planned job(Measure::HalfAndHalf);
    EXPECT_EQ(job.by("2026-05-03"), Money{});
    EXPECT_EQ(job.by("2026-05-04"), money("500"));
    EXPECT_EQ(job.by("2026-05-07"), money("500"));
    EXPECT_EQ(job.by("2026-05-08"), money("1000"));
}

TEST(PlannedValue, ASignedChangeEntersOnItsSigningDay) {
    Planned job(Measure::CountedUnits);
    job.change("more", "500", "2026-05-06").items = {id<Kind::Item>(1)};
    EXPECT_EQ(job.by("2026-05-05"), money("400"));  // 1,000 x 2/5
    EXPECT_EQ(job.by("2026-05-06"), money("900"));  // 1,500 x 3/5
    EXPECT_EQ(job.by("2026-05-08"), money("1500"));
    job.rows.changes[0].signedOn = day("2026-05-20");
    EXPECT_EQ(job.by("2026-05-19"), money("1000"));
    EXPECT_EQ(job.by("2026-05-20"), money("1500"));
}

TEST(PlannedValue, UndatedItemsAreLeftOutAndCounted) {
    Planned job(Measure::JudgedPercent);
    job.item("undated", "300");
    Item& backwards = job.item("backwards", "200");
    backwards.plannedStartOn = day("2026-05-08");
    backwards.plannedFinishOn = day("2026-05-04");
    Item& finishOnly = job.item("finish only, none or done", "100");
    finishOnly.plannedFinishOn = day("2026-05-08");
    finishOnly.measure = Measure::NoneOrDone;
    job.item("kept", "50").treatment = Treatment::Keep;
    const PlannedValue planned = plannedValueOf(job.rows, scopeLinesOf(job.rows));
    EXPECT_EQ(planned.undated, 2U);
    EXPECT_EQ(planned.undatedBudget, money("500"));
    EXPECT_EQ(planned.by(day("2026-06-01")), money("1100"));
}

TEST(PlannedValue, PlannedOnDaysNobodyWorksComesAtTheFinish) {
    Planned job(Measure::JudgedPercent);
    job.rows.items[0].plannedStartOn = day("2026-05-09");
    job.rows.items[0].plannedFinishOn = day("2026-05-10");
    EXPECT_EQ(job.by("2026-05-09"), Money{});
    EXPECT_EQ(job.by("2026-05-10"), money("1000"));
}

}  // namespace
