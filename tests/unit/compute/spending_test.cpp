// Protects what each kind of spend adds, to which line and contract it goes, and what is still open
// on an invoice.
#include "core/compute/spending.h"

#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;

std::vector<SpendRead> read(const SampleJob& job) {
    return spendingOf(job.rows, scopeLinesOf(job.rows));
}

TEST(Spending, EachKindAddsItsOwn) {
    SampleJob job;
    job.item("tub", "100");
    for (const auto kind : {SpendKind::Invoice, SpendKind::Payment, SpendKind::Receipt,
                            SpendKind::Fee, SpendKind::Refund}) {
        job.spend(kind, "2026-05-05", "10", 1);
    }
    const auto spending = read(job);
    ASSERT_EQ(spending.size(), 5U);
    const std::vector<const char*> billed = {"10", "0", "10", "10", "-10"};
    const std::vector<const char*> paid = {"0", "10", "10", "10", "-10"};
    for (std::size_t k = 0; k < spending.size(); ++k) {
        EXPECT_EQ(spending[k].effect.billed, money(billed[k])) << k;
        EXPECT_EQ(spending[k].effect.paid, money(paid[k])) << k;
    }
}

TEST(Spending, WithoutAnAmountOrAKindItCountsNowhere) {
    SampleJob job;
    job.spend(SpendKind::Receipt, "2026-05-05", "10").amount.reset();
    job.spend(SpendKind::Unset, "2026-05-05", "10");
    EXPECT_TRUE(read(job).empty());
}

TEST(Spending, GoesByItsSplitThenItsItemElseToTheWholeJob) {
    SampleJob job;
    job.item("a", "100");
    job.item("b", "100");
    Spend& split = job.spend(SpendKind::Invoice, "2026-05-05", "100", 1);
    split.split = {{id<Kind::Item>(2), money("30")}};
    job.spend(SpendKind::Fee, "2026-05-05", "25");
    job.spend(SpendKind::Fee, "2026-05-05", "5", 99);
    const auto spending = read(job);
    ASSERT_EQ(spending[0].parts.size(), 2U);
    EXPECT_EQ(spending[0].parts[0].line, 1U);
    EXPECT_EQ(spending[0].parts[0].amount, money("30"));
    EXPECT_EQ(spending[0].parts[1].line, 0U);
    EXPECT_EQ(spending[0].parts[1].amount, money("70"));
    EXPECT_EQ(spending[1].parts.at(0).line, 2U);
    EXPECT_EQ(spending[2].parts.at(0).line, 2U);
}

struct Contracted : SampleJob {
    Contracted() {
        Crew& crew = add(rows.crews);
        crew.name = "Tile crew";
        contract("Tile", "600", "2026-05-01").crew = id<Kind::Crew>(1);
        item("floor", "400").contract = id<Kind::Contract>(1);
        item("shower", "200").contract = id<Kind::Contract>(1);
    }
};

TEST(Spending, OnAContractItGoesByBudgetNow) {
    Contracted job;
    job.spend(SpendKind::Invoice, "2026-05-05", "100").contract = id<Kind::Contract>(1);
    const auto spending = read(job);
    // 100 by 400 to 200: 66.67 and 33.33.
    EXPECT_EQ(spending[0].parts.at(0).amount, money("66.67"));
    EXPECT_EQ(spending[0].parts.at(1).amount, money("33.33"));
}

TEST(Spending, APaymentGoesWhereItsInvoiceWent) {
    Contracted job;
    // The payment stands before the invoice it pays.
    job.spend(SpendKind::Payment, "2026-05-08", "50").pays = id<Kind::Spend>(2);
    Spend& invoice = job.spend(SpendKind::Invoice, "2026-05-05", "100");
    invoice.contract = id<Kind::Contract>(1);
    invoice.split = {{id<Kind::Item>(1), money("20")}, {id<Kind::Item>(2), money("80")}};
    const auto spending = read(job);
    EXPECT_EQ(spending[0].contract, 0U);
    EXPECT_EQ(spending[0].parts.at(0).amount, money("10"));
    EXPECT_EQ(spending[0].parts.at(1).amount, money("40"));
}

TEST(Spending, FindsTheContractItCountsOn) {
    Contracted job;
    job.spend(SpendKind::Invoice, "2026-05-05", "1", 1);                           // of its item
    job.spend(SpendKind::Receipt, "2026-05-05", "1", 1);                           // own goods
    job.spend(SpendKind::Receipt, "2026-05-05", "1", 1).crew = id<Kind::Crew>(1);  // its crew
    job.spend(SpendKind::Invoice, "2026-05-05", "1", 1).crew = id<Kind::Crew>(2);  // another
    job.spend(SpendKind::Invoice, "2026-05-05", "1").crew = id<Kind::Crew>(1);     // its only one
    const auto spending = read(job);
    EXPECT_EQ(spending[0].contract, 0U);
    EXPECT_FALSE(spending[1].contract);
    EXPECT_EQ(spending[2].contract, 0U);
    EXPECT_FALSE(spending[3].contract);
    EXPECT_EQ(spending[4].contract, 0U);
}

TEST(Spending, HeldIsReleasedByAcceptanceAndTheFinalWaiver) {
    Contracted job;
    Spend& invoice = job.spend(SpendKind::Invoice, "2026-05-05", "100");
    invoice.contract = id<Kind::Contract>(1);
    invoice.held = money("10");
    EXPECT_EQ(read(job)[0].effect.held, money("10"));
    EXPECT_EQ(read(job)[0].openAmount, money("90"));
    job.rows.contracts[0].acceptedOn = day("2026-05-20");
    EXPECT_EQ(read(job)[0].effect.held, money("10"));
    job.rows.contracts[0].waiverReceivedOn = day("2026-05-21");
    EXPECT_EQ(read(job)[0].effect.held, Money{});
    EXPECT_EQ(read(job)[0].openAmount, money("100"));
}

TEST(Spending, PaymentsThatNameNoInvoiceSettleTheOldestFirst) {
    SampleJob job;
    for (const auto* on : {"2026-05-10", "2026-05-01", "2026-05-05"}) {
        job.spend(SpendKind::Invoice, on, "100").payee = "Window shop";
    }
    job.spend(SpendKind::Payment, "2026-05-12", "150").payee = "window  shop";
    job.spend(SpendKind::Payment, "2026-05-12", "30").pays = id<Kind::Spend>(3);
    job.spend(SpendKind::Payment, "2026-05-12", "70").payee = "Stone shop";
    const auto spending = read(job);
    // 30 of the third is paid by name. 150: the second (1 May) whole, 50 of the third (70 left).
    EXPECT_EQ(spending[0].openAmount, money("100"));
    EXPECT_EQ(spending[1].openAmount, Money{});
    EXPECT_EQ(spending[2].openAmount, money("20"));
}

TEST(Spending, RowsThatPayEachOtherDoNoHarm) {
    SampleJob job;
    job.spend(SpendKind::Payment, "2026-05-12", "10").pays = id<Kind::Spend>(2);
    job.spend(SpendKind::Payment, "2026-05-12", "20").pays = id<Kind::Spend>(1);
    EXPECT_EQ(read(job).size(), 2U);
}

}  // namespace
