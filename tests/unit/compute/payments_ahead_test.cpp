// Protects on which days what is still to be paid leaves: bills, to go by the Friday, payment
// steps, orders, retainage, and what was paid ahead. Days and sums are worked by hand beside them.
// Today is Friday 22 May 2026; the item's ten working days run from Monday 25 May to Friday 5 June.
#include "core/compute/payments_ahead.h"

#include <gtest/gtest.h>
#include <map>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;

const Date kToday = day("2026-05-22");

using Paid = std::vector<std::pair<std::string, std::string>>;

// Each day's sum that leaves ahead, in order.
Paid aheadOf(const SampleJob& job) {
    const JobFigures figures = figuresOf(job.rows, kToday);
    std::map<Date, Money> byDay;
    for (const CashMove& move : workPaymentsOf(
             job.rows, figures, workAheadOf(job.rows, figures, planOf(job.rows, figures, kToday)),
             std::nullopt, kToday)) {
        if (move.isAhead) {
            byDay[move.on] -= move.amount;
        }
    }
    Paid out;
    for (const auto& [on, amount] : byDay) {
        out.emplace_back(on.toString(), amount.toString());
    }
    return out;
}

struct Floor : SampleJob {
    Floor() {
        Item& floor = item("floor", "1000");
        floor.plannedStartOn = day("2026-05-25");
        floor.plannedFinishOn = day("2026-06-05");
    }

    Contract& signedContract() {
        rows.items[0].contract = id<Kind::Contract>(1);
        return contract("Floors", "1000", "2026-05-01");
    }
};

TEST(PaymentsAhead, ToGoLeavesByTheFriday) {
    EXPECT_EQ(aheadOf(Floor()), (Paid{{"2026-05-29", "500.00"}, {"2026-06-05", "500.00"}}));
}

TEST(PaymentsAhead, ADayOffWeighsNothing) {
    Floor job;
    job.rows.job.holidays = {day("2026-05-25")};
    // Four days and five: 1,000 x 4/9 = 444.44.
    EXPECT_EQ(aheadOf(job), (Paid{{"2026-05-29", "444.44"}, {"2026-06-05", "555.56"}}));
}

TEST(PaymentsAhead, RetainageLeavesInOneSumAfterTheLastItem) {
    Floor job;
    job.signedContract().retainage = percent("10");
    // The fifth working day after Friday 5 June is Friday 12 June.
    EXPECT_EQ(aheadOf(job),
              (Paid{{"2026-05-29", "450.00"}, {"2026-06-05", "450.00"}, {"2026-06-12", "100.00"}}));
}

// 10 % is there on Monday 25 May, 50 % by Friday 29 May, all of it on 5 June.
TEST(PaymentsAhead, StepsLeaveOnTheFridayAfterTheirWork) {
    Floor job;
    job.signedContract().paymentSteps = {
        {"begun", percent("10")}, {"half", percent("40")}, {"done", percent("50")}};
    EXPECT_EQ(aheadOf(job), (Paid{{"2026-05-29", "500.00"}, {"2026-06-05", "500.00"}}));
    job.spend(SpendKind::Invoice, "2026-05-20", "300").contract = id<Kind::Contract>(1);
    job.rows.spends[0].dueOn = day("2026-05-27");
    // The bill on its day, 200 of the second step, the last step.
    EXPECT_EQ(aheadOf(job),
              (Paid{{"2026-05-27", "300.00"}, {"2026-05-29", "200.00"}, {"2026-06-05", "500.00"}}));
}

TEST(PaymentsAhead, ADepositNotYetBilledLeavesNext) {
    Floor job;
    job.signedContract().deposit = money("100");
    EXPECT_EQ(aheadOf(job),
              (Paid{{"2026-05-23", "100.00"}, {"2026-05-29", "450.00"}, {"2026-06-05", "450.00"}}));
}

TEST(PaymentsAhead, AnOrderLeavesOnItsAgreedFinish) {
    Floor job;
    Contract& order = job.signedContract();
    order.type = ContractKind::Order;
    order.finishOn = day("2026-06-03");
    EXPECT_EQ(aheadOf(job), (Paid{{"2026-06-03", "1000.00"}}));
}

TEST(PaymentsAhead, BillsLeaveOnTheirDueDateOverdueOnesNext) {
    SampleJob job;
    job.spend(SpendKind::Invoice, "2026-05-05", "80").dueOn = day("2026-05-20");
    job.spend(SpendKind::Invoice, "2026-05-15", "70").dueOn = day("2026-06-01");
    job.spend(SpendKind::Invoice, "2026-05-15", "60");  // without a day: the next Friday
    EXPECT_EQ(aheadOf(job),
              (Paid{{"2026-05-23", "80.00"}, {"2026-05-29", "60.00"}, {"2026-06-01", "70.00"}}));
}

TEST(PaymentsAhead, WhatWasPaidAheadIsTakenOffTheNext) {
    Floor job;
    job.signedContract();
    job.spend(SpendKind::Payment, "2026-05-20", "600").contract = id<Kind::Contract>(1);
    EXPECT_EQ(aheadOf(job), (Paid{{"2026-06-05", "400.00"}}));
}

}  // namespace
