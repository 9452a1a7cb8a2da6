// Protects the pace of a crew: actual over planned days, read from marks. Days are counted by hand
// on the calendar of May 2026 (the 22nd is a Friday).
#include "core/compute/pace.h"

#include <gtest/gtest.h>

#include "core/compute/budget.h"

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;

// Of the first crew.
Pace pace(const SampleJob& job) {
    const Marks marks(job.rows);
    return pacesOf(job.rows, scopeLinesOf(job.rows), marks, WorkCalendar(job.rows.job)).at(0);
}

struct Crewed : SampleJob {
    Crewed() {
        add(rows.crews);
        for (const auto* name : {"first", "second"}) {
            Item& added = item(name, "1000");
            added.crew = id<Kind::Crew>(1);
            added.daysLikely = amountOf("4");
        }
    }
};

TEST(Pace, IsActualOverPlannedDaysBetweenMarks) {
    Crewed job;
    job.mark(1, "2026-05-11", "0");
    job.mark(1, "2026-05-14", "50");
    // Tue to Thu: 3 days for 50 % of 4 planned, so 1.5.
    EXPECT_EQ(pace(job).thousandths, 1500);
    EXPECT_TRUE(pace(job).measured);
}

TEST(Pace, StaysWithinItsBounds) {
    Crewed fast;
    fast.mark(1, "2026-05-11", "0");
    fast.mark(1, "2026-05-12", "100");
    EXPECT_EQ(pace(fast).thousandths, 800);
    Crewed slow;
    slow.mark(1, "2026-05-04", "0");
    slow.mark(1, "2026-05-20", "10");
    EXPECT_EQ(pace(slow).thousandths, 2000);
}

TEST(Pace, OneMarkTellsNothingUnlessTheStartIsKnown) {
    Crewed job;
    job.mark(1, "2026-05-14", "100");
    EXPECT_FALSE(pace(job).measured);
    EXPECT_EQ(pace(job).thousandths, 1000);
    job.rows.items[0].actualStartOn = day("2026-05-11");
    EXPECT_EQ(pace(job).thousandths, 1000);  // four days for four
    EXPECT_TRUE(pace(job).measured);
}

TEST(Pace, StandingStillDoesNotCountAndACorrectionTakesBackTheWork) {
    Crewed job;
    job.mark(1, "2026-05-04", "0");
    job.mark(1, "2026-05-06", "50");  // Tue, Wed: 2 days
    job.mark(1, "2026-05-12", "50");  // nothing done
    job.mark(1, "2026-05-13", "75");  // 1 day
    job.mark(1, "2026-05-14", "50");  // a correction: 50 % in 3 days, planned 2
    EXPECT_EQ(pace(job).thousandths, 1500);
}

}  // namespace
