// Protects what is listed as due in the next 14 days, what is left out, and in which order.
// Order-by dates are worked out beside each check.
#include "core/compute/waits.h"

#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;

const Date kToday = day("2026-05-22");

std::vector<std::string> waits(const SampleJob& job) {
    std::vector<std::string> out;
    const JobFigures figures = figuresOf(job.rows, kToday);
    const Plan plan = planOf(job.rows, figures, kToday);
    for (const Wait& wait : waitsOf(job.rows, figures, plan, kToday)) {
        out.push_back((wait.on ? wait.on->toString() : std::string("no day")) + " " +
                      std::string(wordsFor(wait.kind)) + " " + wait.what +
                      (wait.late ? " late" : "") +
                      (wait.money ? " " + wait.money->toString() : ""));
    }
    return out;
}

using Lines = std::vector<std::string>;

TEST(Waits, OrdersUntilTheyAreOrdered) {
    SampleJob job;
    Item& near = job.item("windows", "3000");
    near.leadDays = 30;
    near.plannedStartOn = day("2026-06-25");  // - 30 - 3 = 23 May
    Item& late = job.item("cabinets", "7000");
    late.orderOn = day("2026-05-20");
    job.item("far", "1").orderOn = day("2026-06-06");
    EXPECT_EQ(waits(job), (Lines{"2026-05-20 order cabinets late 7000.00",
                                 "2026-05-23 order windows 3000.00"}));
    Contract& order = job.contract("Cabinets", "7000", "2026-05-19");
    order.type = ContractKind::Order;
    job.rows.items[1].contract = id<Kind::Contract>(1);
    EXPECT_EQ(waits(job), (Lines{"2026-05-23 order windows 3000.00"}));
}

TEST(Waits, NothingIsOrderedForWorkUnderWay) {
    SampleJob job;
    job.item("cabinets", "7000").orderOn = day("2026-05-20");
    job.mark(1, "2026-05-21", "40");
    EXPECT_EQ(waits(job), Lines{});
}

TEST(Waits, DeliveriesDecisionsAndInspections) {
    SampleJob job;
    job.item("windows", "3000");
    Delivery& delivery = job.add(job.rows.deliveries);
    delivery.item = id<Kind::Item>(1);
    delivery.promisedOn = day("2026-05-25");
    Alternate& alternate = job.add(job.rows.alternates);
    alternate.question = "which floor";
    alternate.decideBy = day("2026-05-24");
    job.add(job.rows.alternates).decideBy = day("2026-06-30");
    Inspection& asked = job.add(job.rows.inspections);
    asked.what = "rough plumbing";
    asked.askedOn = day("2026-05-20");
    Inspection& failed = job.add(job.rows.inspections);
    failed.what = "panel";
    failed.heldOn = day("2026-05-18");
    failed.outcome = Outcome::Corrections;
    EXPECT_EQ(waits(job), (Lines{"2026-05-24 decide which floor", "2026-05-25 delivery windows",
                                 "no day inspection rough plumbing",
                                 "no day inspection panel, again after corrections"}));
    Inspection& passed = job.add(job.rows.inspections);
    passed.what = "Panel";
    passed.heldOn = day("2026-05-21");
    passed.outcome = Outcome::Passed;
    job.rows.alternates[0].chosen = id<Kind::Option>(1);
    job.rows.deliveries[0].arrivedOn = day("2026-05-22");
    EXPECT_EQ(waits(job), (Lines{"no day inspection rough plumbing"}));
}

TEST(Waits, PaymentsForWhatIsStillOpen) {
    SampleJob job;
    Spend& bill = job.spend(SpendKind::Invoice, "2026-05-15", "1000");
    bill.payee = "Tile crew";
    bill.held = money("100");
    bill.dueOn = day("2026-05-29");
    EXPECT_EQ(waits(job), (Lines{"2026-05-29 pay Tile crew 900.00"}));
    job.spend(SpendKind::Payment, "2026-05-20", "400").pays = id<Kind::Spend>(1);
    EXPECT_EQ(waits(job), (Lines{"2026-05-29 pay Tile crew 500.00"}));
    job.spend(SpendKind::Payment, "2026-05-21", "500").pays = id<Kind::Spend>(1);
    EXPECT_TRUE(waits(job).empty());
}

TEST(Waits, DrawsByTheLendersOwnDays) {
    SampleJob job;
    job.rows.job.visitDays = 2;
    job.rows.job.fundDays = 4;
    Draw& draw = job.add(job.rows.draws);
    draw.number = 3;
    draw.askedOn = day("2026-05-20");
    EXPECT_EQ(waits(job), (Lines{"2026-05-26 draw Draw 3"}));
    draw.inspectedOn = day("2026-05-21");
    EXPECT_EQ(waits(job), (Lines{"2026-05-25 draw Draw 3"}));
    draw.fundedOn = day("2026-05-22");
    EXPECT_TRUE(waits(job).empty());
}

TEST(Waits, TheFourteenthDayIsInAndTheFifteenthOut) {
    SampleJob job;
    job.item("a", "1").orderOn = day("2026-06-05");
    job.item("b", "1").orderOn = day("2026-06-06");
    EXPECT_EQ(waits(job), (Lines{"2026-06-05 order a 1.00"}));
}

}  // namespace
