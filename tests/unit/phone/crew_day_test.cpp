// Protects the crew lead's day: own unfinished items late, today, ahead and undated in that order,
// and whose work comes before and after an item in its space. Days are worked out by hand around
// Friday 15 May 2026.
#include "mobile/now/crew_day.h"

#include <gtest/gtest.h>

#include "tests/unit/phone/made_job.h"

namespace ledgerboard::phone {
namespace {

using tests::day;
using tests::idOf;
using tests::MadeJob;

const auto kMine = idOf<model::Kind::Crew>(1);

struct LeadsJob : MadeJob {
    LeadsJob() {
        rows.crews.emplace_back().id = kMine;
        bath = space("Hall bath", 1).id;
    }

    // On own: of the lead's crew; others' rows name no crew on a lead's phone.
    void work(const std::string& object, bool own, std::optional<model::Date> from,
              std::optional<model::Date> to) {
        auto& row = item(object, bath, 0);
        row.lumpSum.reset();
        row.crew = own ? kMine : model::Id<model::Kind::Crew>();
        row.plannedStartOn = from;
        row.plannedFinishOn = to;
    }

    [[nodiscard]] std::shared_ptr<const JobNow> now() const {
        return jobNowOf(rows, day(5, 15), false);
    }

    model::Id<model::Kind::Space> bath;
};

TEST(CrewDay, LateThenTodayThenAheadThenUndated) {
    LeadsJob job;
    job.work("undated", true, std::nullopt, std::nullopt);
    job.work("tuesday", true, day(5, 19), day(5, 20));
    job.work("monday", true, day(5, 18), day(5, 18));
    job.work("now", true, day(5, 14), day(5, 15));
    job.work("late", true, day(5, 11), day(5, 14));
    job.work("done", true, day(5, 11), day(5, 12));
    job.work("another's", false, day(5, 15), day(5, 15));
    job.mark(job.rows.items[5].id, 100, day(5, 12));
    const auto now = job.now();
    const auto days = crewDays(*now);
    std::vector<std::string> order;
    for (const auto& one : days) {
        order.push_back(now->rows.items[one.item->row].object);
    }
    EXPECT_EQ(order, (std::vector<std::string>{"late", "now", "monday", "tuesday", "undated"}));
    EXPECT_EQ(days[0].part, DayPart::Late);
    EXPECT_EQ(days[0].on, day(5, 14));
    EXPECT_EQ(days[1].part, DayPart::Today);
    EXPECT_EQ(days[2].part, DayPart::Ahead);
    EXPECT_EQ(days[2].on, day(5, 18));
    EXPECT_EQ(days[4].part, DayPart::Undated);
}

TEST(CrewDay, BegunWorkWithoutADateIsTodays) {
    LeadsJob job;
    job.work("begun", true, std::nullopt, std::nullopt);
    job.mark(job.rows.items[0].id, 40, day(5, 12));
    EXPECT_EQ(crewDays(*job.now()).at(0).part, DayPart::Today);
}

TEST(CrewDay, NobodyHasWorkWhereThereIsNone) {
    EXPECT_TRUE(crewDays(*LeadsJob().now()).empty());
}

TEST(CrewDay, NeighboursStandBeforeAndAfter) {
    LeadsJob job;
    job.work("tile", true, day(5, 15), day(5, 19));
    job.work("paint", false, day(5, 21), day(5, 22));
    job.work("subfloor", false, day(5, 13), day(5, 14));
    job.work("trim", false, day(5, 20), day(5, 20));
    job.work("own other", true, day(5, 11), day(5, 11));
    const auto now = job.now();
    const auto found = findItem(*now, job.rows.items[0].id);
    const auto near = neighboursOf(*now, found);
    EXPECT_EQ(near.before, (std::vector<std::size_t>{2}));
    EXPECT_EQ(near.after, (std::vector<std::size_t>{3, 1}));
}

}  // namespace
}  // namespace ledgerboard::phone
