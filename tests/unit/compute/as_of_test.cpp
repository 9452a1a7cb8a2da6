// Protects "as of": a row counts from its own date on, dates not reached are not known yet, and of
// a row and its corrections only the last counts. Each kind with a date gets a row before and a row
// after the day asked about.
#include "core/compute/as_of.h"

#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::tests;
using ledgerboard::compute::asOf;
using ledgerboard::compute::withoutVoided;

TEST(AsOf, KeepsWhatIsDatedOnTheDayItself) {
    SampleJob job;
    job.item("tub", "100");
    job.mark(1, "2026-05-15", "40");
    job.mark(1, "2026-05-16", "50");
    job.spend(SpendKind::Receipt, "2026-05-15", "10");
    job.spend(SpendKind::Receipt, "2026-05-16", "20");
    const JobRows rows = asOf(job.rows, day("2026-05-15"));
    ASSERT_EQ(rows.marks.size(), 1U);
    EXPECT_EQ(rows.marks[0].percent, percent("40"));
    ASSERT_EQ(rows.spends.size(), 1U);
    EXPECT_EQ(rows.spends[0].amount, money("10"));
}

TEST(AsOf, KeepsRowsWithoutADate) {
    SampleJob job;
    job.add(job.rows.marks);
    job.add(job.rows.spends);
    job.add(job.rows.changes);
    job.add(job.rows.punches);
    const JobRows rows = asOf(job.rows, day("2026-05-15"));
    EXPECT_EQ(rows.marks.size(), 1U);
    EXPECT_EQ(rows.spends.size(), 1U);
    EXPECT_EQ(rows.changes.size(), 1U);
    EXPECT_EQ(rows.punches.size(), 1U);
}

TEST(AsOf, UnsignsWhatWasSignedLater) {
    SampleJob job;
    job.contract("Tile", "500", "2026-05-20");
    job.contract("Paint", "500", "2026-05-10").acceptedOn = day("2026-05-20");
    Change& asked = job.change("Asked before", "10", "2026-05-20");
    asked.askedOn = day("2026-05-10");
    job.change("Asked after", "10", "2026-05-20");
    const JobRows rows = asOf(job.rows, day("2026-05-15"));
    ASSERT_EQ(rows.contracts.size(), 2U);
    EXPECT_FALSE(rows.contracts[0].signedOn);
    EXPECT_TRUE(rows.contracts[1].signedOn);
    EXPECT_FALSE(rows.contracts[1].acceptedOn);
    ASSERT_EQ(rows.changes.size(), 1U);
    EXPECT_EQ(rows.changes[0].name, "Asked before");
    EXPECT_FALSE(rows.changes[0].signedOn);
}

TEST(AsOf, TakesTheMoneyOutOfADrawNotYetFunded) {
    SampleJob job;
    Draw& draw = job.add(job.rows.draws);
    draw.askedOn = day("2026-05-10");
    draw.inspectedOn = day("2026-05-16");
    draw.fundedOn = day("2026-05-20");
    draw.amount = money("900");
    draw.fee = money("100");
    DrawLine& line = job.add(job.rows.draw_lines);
    line.draw = draw.id;
    line.asked = percent("50");
    line.allowed = percent("40");
    Draw& later = job.add(job.rows.draws);
    later.askedOn = day("2026-05-18");
    const Id<Kind::Draw> laterId = later.id;
    job.add(job.rows.draw_lines).draw = laterId;

    const JobRows rows = asOf(job.rows, day("2026-05-15"));
    ASSERT_EQ(rows.draws.size(), 1U);
    EXPECT_FALSE(rows.draws[0].fundedOn);
    EXPECT_FALSE(rows.draws[0].amount);
    EXPECT_FALSE(rows.draws[0].fee);
    ASSERT_EQ(rows.draw_lines.size(), 1U);
    EXPECT_EQ(rows.draw_lines[0].asked, percent("50"));
    EXPECT_FALSE(rows.draw_lines[0].allowed);
}

TEST(AsOf, LeavesOutLooksReviewsBaselinesAndTheirRows) {
    SampleJob job;
    job.item("tub", "100");
    Punch& punch = job.add(job.rows.punches);
    punch.foundOn = day("2026-05-10");
    const Id<Kind::Punch> first = punch.id;
    Punch& second = job.add(job.rows.punches);
    second.foundOn = day("2026-05-18");
    const Id<Kind::Punch> secondId = second.id;
    for (const auto& [on, of] :
         {std::pair{"2026-05-12", first}, {"2026-05-17", first}, {"2026-05-12", secondId}}) {
        Look& look = job.add(job.rows.looks);
        look.lookedOn = day(on);
        look.punch = of;
    }
    job.add(job.rows.reviews).reviewedOn = day("2026-05-15");
    job.add(job.rows.reviews).reviewedOn = day("2026-05-22");
    job.baseline("2026-05-01", {"100"});
    job.baseline("2026-05-20", {"120"});
    const JobRows rows = asOf(job.rows, day("2026-05-15"));
    EXPECT_EQ(rows.punches.size(), 1U);
    ASSERT_EQ(rows.looks.size(), 1U);
    EXPECT_EQ(rows.looks[0].lookedOn, day("2026-05-12"));
    EXPECT_EQ(rows.reviews.size(), 1U);
    EXPECT_EQ(rows.baselines.size(), 1U);
    ASSERT_EQ(rows.baseline_items.size(), 1U);
    EXPECT_EQ(rows.baseline_items[0].budget, money("100"));
}

TEST(AsOf, ForgetsOutcomesAndArrivalsNotReached) {
    SampleJob job;
    Inspection& inspection = job.add(job.rows.inspections);
    inspection.askedOn = day("2026-05-10");
    inspection.heldOn = day("2026-05-18");
    inspection.outcome = Outcome::Passed;
    Delivery& delivery = job.add(job.rows.deliveries);
    delivery.orderedOn = day("2026-05-01");
    delivery.promisedOn = day("2026-05-25");
    delivery.arrivedOn = day("2026-05-24");
    Caution& caution = job.add(job.rows.cautions);
    caution.acknowledgedOn = day("2026-05-18");
    caution.acknowledgedBy = id<Kind::Person>(1);
    job.add(job.rows.papers).receivedOn = day("2026-05-18");
    job.add(job.rows.prices).asOf = day("2026-05-18");
    const JobRows rows = asOf(job.rows, day("2026-05-15"));
    EXPECT_FALSE(rows.inspections.at(0).heldOn);
    EXPECT_EQ(rows.inspections.at(0).outcome, Outcome::Unset);
    EXPECT_FALSE(rows.deliveries.at(0).arrivedOn);
    EXPECT_EQ(rows.deliveries.at(0).promisedOn, day("2026-05-25"));
    EXPECT_FALSE(rows.cautions.at(0).acknowledgedOn);
    EXPECT_TRUE(rows.cautions.at(0).acknowledgedBy.isNil());
    EXPECT_FALSE(rows.papers.at(0).receivedOn);
    EXPECT_TRUE(rows.prices.empty());
}

TEST(Voided, OfACorrectionOfACorrectionOnlyTheLastCounts) {
    SampleJob job;
    job.spend(SpendKind::Receipt, "2026-05-10", "100");
    job.spend(SpendKind::Receipt, "2026-05-10", "120").voids = id<Kind::Spend>(1);
    job.spend(SpendKind::Receipt, "2026-05-10", "130").voids = id<Kind::Spend>(2);
    const JobRows rows = withoutVoided(job.rows);
    ASSERT_EQ(rows.spends.size(), 1U);
    EXPECT_EQ(rows.spends[0].amount, money("130"));
}

TEST(Voided, IsAsKnownNowWhateverTheDay) {
    // The receipt was of the 20th, not of the 10th: as of the 15th neither row is there.
    SampleJob job;
    job.spend(SpendKind::Receipt, "2026-05-10", "100");
    job.spend(SpendKind::Receipt, "2026-05-20", "100").voids = id<Kind::Spend>(1);
    EXPECT_TRUE(asOf(job.rows, day("2026-05-15")).spends.empty());
    EXPECT_EQ(asOf(job.rows, day("2026-05-20")).spends.size(), 1U);
}

TEST(Voided, ARowThatNamesItselfStays) {
    SampleJob job;
    job.item("tub", "100");
    job.mark(1, "2026-05-10", "40").voids = id<Kind::Mark>(1);
    EXPECT_EQ(withoutVoided(job.rows).marks.size(), 1U);
}

}  // namespace
