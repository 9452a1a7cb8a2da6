// Protects what becomes an activity of the plan: what is left of each item, what holds it back, and
// which links still hold. Days are counted by hand on the calendar of May 2026 (the 22nd, today, is
// a Friday; time 0 is the start of Monday the 25th).
#include "core/compute/job_network.h"

#include <gtest/gtest.h>

#include "core/compute/plan.h"

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;

const Date kToday = day("2026-05-22");

struct LinkedJob : SampleJob {
    Item& of(std::string_view object, std::string_view days) {
        Item& added = item(object, "1000");
        added.daysLikely = amountOf(days);
        return added;
    }

    Link& link(std::uint32_t from, std::uint32_t to, LinkKind type = LinkKind::FinishToStart,
               std::string_view lag = "0") {
        Link& link = add(rows.links);
        link.fromItem = id<Kind::Item>(from);
        link.toItem = id<Kind::Item>(to);
        link.type = type;
        link.lag = amountOf(lag);
        return link;
    }

    [[nodiscard]] JobNetwork network() const {
        return jobNetworkOf(rows, figuresOf(rows, kToday), kToday);
    }
};

TEST(JobNetwork, OfNothingIsEmpty) {
    const JobNetwork network = LinkedJob().network();
    EXPECT_TRUE(network.activities.empty());
    EXPECT_TRUE(network.loop.empty());
    EXPECT_EQ(network.time.first(), day("2026-05-23"));
    EXPECT_EQ(network.checkDays, 3);
}

TEST(JobNetwork, RemainingDaysAreLikelyTimesWhatIsNotShown) {
    LinkedJob job;
    job.of("walls", "10");
    job.of("floor", "2");
    job.of("done", "3");
    job.item("unknown", "1000");
    job.mark(1, "2026-05-21", "65");
    job.mark(3, "2026-05-21", "100");
    const JobNetwork network = job.network();
    ASSERT_EQ(network.activities.size(), 3U);  // the finished one is not in it
    EXPECT_EQ(network.activities[0].left, 3500);
    EXPECT_TRUE(network.activities[0].isBegun);
    EXPECT_EQ(network.activities[1].left, 2000);
    EXPECT_FALSE(network.activities[1].isBegun);
    EXPECT_EQ(network.activities[2].line, 3U);
    EXPECT_FALSE(network.activities[2].hasDays);
    EXPECT_EQ(network.activities[2].left, 0);
}

TEST(JobNetwork, LeftIsRoundedUpAndGoesByPace) {
    EXPECT_EQ(leftOf(4000, percent("50"), 1500), 3000);
    EXPECT_EQ(leftOf(1, percent("99.99"), 1000), 1);
    EXPECT_EQ(leftOf(0, Percent{}, 2000), 0);
    EXPECT_EQ(leftOf(4000, Percent::whole(), 2000), 0);
}

TEST(JobNetwork, KeptItemsAndOptionsNotCarriedAreNotInIt) {
    LinkedJob job;
    job.of("mantel", "1").treatment = Treatment::Keep;
    job.add(job.rows.alternates).carried = id<Kind::Option>(2);
    for (const auto* cost : {"500", "700"}) {
        Option& option = job.add(job.rows.options);
        option.alternate = id<Kind::Alternate>(1);
        option.cost = money(cost);
        option.days = amountOf("2.5");
    }
    const JobNetwork network = job.network();
    ASSERT_EQ(network.activities.size(), 1U);
    EXPECT_TRUE(network.activities[0].isOption);
    EXPECT_EQ(network.activities[0].left, 2500);
}

TEST(JobNetwork, SignedChangesAddTheirDaysToWhatIsUnfinished) {
    LinkedJob job;
    job.of("walls", "4");
    job.of("floor", "4");
    job.of("done", "4");
    job.mark(3, "2026-05-20", "100");
    Change& change = job.change("more", "100", "2026-05-12");
    change.items = {id<Kind::Item>(1), id<Kind::Item>(2), id<Kind::Item>(3)};
    change.days = amountOf("3");
    job.change("unsigned", "100", "").days = amountOf("9");
    job.rows.changes.back().items = {id<Kind::Item>(1)};
    job.change("nowhere", "100", "2026-05-12").days = amountOf("2");
    const JobNetwork network = job.network();
    // Three days over the two that are not done: 1.5 each.
    EXPECT_EQ(network.activities[0].left, 5500);
    EXPECT_EQ(network.activities[1].left, 5500);
    EXPECT_EQ(network.activities[1].changeDays, 1500);
    EXPECT_EQ(network.unplacedChangeDays, amountOf("2"));
}

TEST(JobNetwork, AChangeWithoutItemsIsItsContracts) {
    LinkedJob job;
    job.contract("wiring", "1000", "2026-05-01");
    job.of("wiring", "4").contract = id<Kind::Contract>(1);
    job.of("walls", "4");
    Change& change = job.change("circuits", "100", "2026-05-12");
    change.contract = id<Kind::Contract>(1);
    change.days = amountOf("-1");  // it saves a day
    const JobNetwork network = job.network();
    EXPECT_EQ(network.activities[0].left, 3000);
    EXPECT_EQ(network.activities[1].left, 4000);
}

TEST(JobNetwork, GoodsThatAreOnTheirWayHoldTheirItem) {
    LinkedJob job;
    job.of("windows", "2");
    Delivery& delivery = job.add(job.rows.deliveries);
    delivery.item = id<Kind::Item>(1);
    delivery.orderedOn = day("2026-05-01");
    delivery.promisedOn = day("2026-05-26");
    // Tuesday, and three days to look them over: Friday 29 May, the fifth working day.
    JobNetwork network = job.network();
    EXPECT_EQ(network.activities[0].release, 4000);
    EXPECT_EQ(network.activities[0].hold, Hold::Goods);
    EXPECT_EQ(network.activities[0].goodsOn, day("2026-05-26"));
    job.rows.deliveries[0].promisedOn = day("2026-05-10");  // overdue: tomorrow at the earliest
    network = job.network();
    EXPECT_EQ(network.activities[0].goodsOn, day("2026-05-23"));
    EXPECT_EQ(network.activities[0].release, 1000);  // Saturday + 3 is Tuesday
    job.rows.deliveries[0].arrivedOn = day("2026-05-20");
    EXPECT_EQ(job.network().activities[0].release, 0);
    job.rows.deliveries[0].arrivedOn.reset();
    job.rows.deliveries[0].promisedOn.reset();
    EXPECT_EQ(job.network().goodsWithoutDay, 1U);
}

TEST(JobNetwork, GoodsNotOrderedComeNoSoonerThanOrderedTomorrow) {
    LinkedJob job;
    job.of("cabinets", "2").leadDays = 10;
    // Saturday 23 May + 10 = 2 June, + 3 = Friday 5 June: ten working days after 22 May, so 9
    // before it.
    JobNetwork network = job.network();
    EXPECT_EQ(network.activities[0].release, 9000);
    EXPECT_EQ(network.activities[0].hold, Hold::Order);
    EXPECT_FALSE(network.activities[0].isOrdered);
    job.rows.items[0].orderOn = day("2026-05-30");  // a week later
    EXPECT_EQ(job.network().activities[0].release, 14000);
    job.mark(1, "2026-05-20", "10");  // under way: it has what it needs
    EXPECT_EQ(job.network().activities[0].release, 0);
}

TEST(JobNetwork, AnAgreedStartHolds) {
    LinkedJob job;
    job.contract("tile", "1000", "2026-05-01").startOn = day("2026-05-27");
    job.of("tile", "2").contract = id<Kind::Contract>(1);
    EXPECT_EQ(job.network().activities[0].release, 2000);
    EXPECT_EQ(job.network().activities[0].hold, Hold::ContractStart);
    job.mark(1, "2026-05-21", "10");
    EXPECT_EQ(job.network().activities[0].hold, Hold::Nothing);
}

TEST(JobNetwork, APlannedStartHoldsOnlyWhatNoLinkStarts) {
    LinkedJob job;
    job.of("yard", "2").plannedStartOn = day("2026-06-01");
    job.of("trim", "2").plannedStartOn = day("2026-06-01");
    job.of("paint", "2").plannedStartOn = day("2026-06-01");
    job.link(1, 2);
    job.link(1, 3, LinkKind::FinishToFinish);
    const JobNetwork network = job.network();
    EXPECT_EQ(network.activities[0].hold, Hold::PlannedStart);
    EXPECT_EQ(network.activities[0].release, 5000);
    EXPECT_EQ(network.activities[1].release, 0);
    EXPECT_EQ(network.activities[2].hold, Hold::PlannedStart);
    ASSERT_EQ(network.precedences.size(), 2U);
}

TEST(JobNetwork, LinksFromWhatIsPastBecomeADay) {
    LinkedJob job;
    job.of("slab", "1");
    job.of("walls", "4");
    job.of("frame", "3");
    job.of("trim", "2");
    job.mark(1, "2026-05-21", "100");              // poured Thursday
    job.link(1, 2, LinkKind::FinishToStart, "4");  // cures Fri, Mon, Tue, Wed: Thursday 28
    job.mark(3, "2026-05-20", "50");               // begun Wednesday
    job.link(3, 4, LinkKind::StartToStart, "5");   // Wed to Tue are five: Wednesday 27
    const JobNetwork network = job.network();
    EXPECT_EQ(network.activities[0].release, 3000);
    EXPECT_EQ(network.activities[0].hold, Hold::Link);
    EXPECT_EQ(network.activities[0].heldByLine, 0U);
    EXPECT_EQ(network.activities[2].release, 2000);
    EXPECT_TRUE(network.precedences.empty());
}

TEST(JobNetwork, AFinishLinkFromWhatIsPastHoldsTheFinish) {
    LinkedJob job;
    job.of("slab", "1");
    job.of("walls", "2");
    job.mark(1, "2026-05-22", "100");
    job.link(1, 2, LinkKind::FinishToFinish, "6");
    // Six days from Friday's end: 6 from time 0; two days of work before that begin at 4.
    EXPECT_EQ(job.network().activities[0].release, 4000);
}

TEST(JobNetwork, WhatIsUnderWayGoesOn) {
    LinkedJob job;
    job.of("rough", "4");
    job.of("board", "4");
    job.mark(2, "2026-05-21", "25");
    job.link(1, 2);
    EXPECT_TRUE(job.network().precedences.empty());
    job.link(1, 2, LinkKind::FinishToFinish, "1");
    ASSERT_EQ(job.network().precedences.size(), 1U);
    EXPECT_EQ(job.network().precedences[0].lag, 1000);
}

TEST(JobNetwork, LinksToWhatDoesNotCountAreLeftOut) {
    LinkedJob job;
    job.of("walls", "4");
    job.of("mantel", "4").treatment = Treatment::Keep;
    job.link(2, 1);
    job.link(9, 1);
    EXPECT_TRUE(job.network().precedences.empty());
}

TEST(JobNetwork, NothingBeginsBeforeTheJobDoes) {
    LinkedJob job;
    job.rows.job.beginOn = day("2026-06-01");
    job.of("walls", "4");
    EXPECT_EQ(job.network().time.first(), day("2026-06-01"));
}

TEST(JobNetwork, CountsWhatWaitsForAnInspection) {
    LinkedJob job;
    job.of("board", "4");
    Inspection& inspection = job.add(job.rows.inspections);
    inspection.holdsUp = {id<Kind::Item>(1), id<Kind::Item>(1)};
    EXPECT_EQ(job.network().waitingForInspection, 1U);
    inspection.heldOn = day("2026-05-21");
    EXPECT_EQ(job.network().waitingForInspection, 0U);
}

TEST(JobNetwork, ALoopIsFound) {
    LinkedJob job;
    job.of("a", "1");
    job.of("b", "1");
    job.link(1, 2);
    job.link(2, 1);
    EXPECT_EQ(job.network().loop, (std::vector<std::size_t>{0, 1}));
}

TEST(JobNetwork, AContractWithoutItemsIsMoneyAndNoWork) {
    LinkedJob job;
    job.of("walls", "4");
    const std::size_t before = job.network().activities.size();
    job.contract("Dumpster", "900", "2026-05-01");
    const JobFigures figures = figuresOf(job.rows, kToday);
    ASSERT_EQ(figures.scope.lines.at(1).kind, LineKind::Contract);
    EXPECT_EQ(job.network().activities.size(), before);
    EXPECT_EQ(planOf(job.rows, figures, kToday).items.size(), 1U);
}

TEST(ActualDays, ComeFromTheRowElseFromMarks) {
    LinkedJob job;
    job.of("walls", "4");
    job.mark(1, "2026-05-11", "0");
    job.mark(1, "2026-05-12", "40");
    job.mark(1, "2026-05-14", "100");
    job.mark(1, "2026-05-15", "90");
    job.mark(1, "2026-05-18", "100");
    job.mark(1, "2026-05-20", "100");
    const Marks marks(job.rows);
    const ActualDays read = actualDaysOf(job.rows.items[0], marks.of(0));
    EXPECT_EQ(read.startOn, day("2026-05-12"));
    EXPECT_EQ(read.finishOn, day("2026-05-18"));
    job.rows.items[0].actualStartOn = day("2026-05-08");
    job.rows.items[0].actualFinishOn = day("2026-05-19");
    const ActualDays entered = actualDaysOf(job.rows.items[0], marks.of(0));
    EXPECT_EQ(entered.startOn, day("2026-05-08"));
    EXPECT_EQ(entered.finishOn, day("2026-05-19"));
    EXPECT_FALSE(actualDaysOf(job.rows.items[0], {}).finishOn);
}

}  // namespace
