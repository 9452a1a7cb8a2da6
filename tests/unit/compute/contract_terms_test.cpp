// Protects what contracts say about paying: retainage taken where a bill does not say, until a
// percent, never from a deposit; what bars a payment; deposits beyond the limit; who is paid ahead;
// and a signed contract without items on a line of its own. Sums are worked by hand beside them.
#include "core/compute/contract_terms.h"

#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;

const Date kToday = day("2026-05-22");

// Tile work, 1,000, 10 % held, one item at 1,000.
struct Tile : SampleJob {
    Tile() {
        Crew& crew = add(rows.crews);
        crew.name = "Tile crew";
        crew.trade = "tile";
        contract("Tile work", "1000", "2026-05-01").crew = crew.id;
        rows.contracts[0].retainage = percent("10");
        item("tile", "1000").contract = id<Kind::Contract>(1);
    }

    Contract& terms() { return rows.contracts[0]; }

    Spend& bill(std::string_view on, std::string_view sum) {
        Spend& spend = this->spend(SpendKind::Invoice, on, sum);
        spend.contract = id<Kind::Contract>(1);
        return spend;
    }

    [[nodiscard]] ContractFigures figures() const { return figuresOf(rows, kToday).contracts[0]; }
};

TEST(Retainage, IsTakenWhereTheBillDoesNotSay) {
    Tile job;
    job.bill("2026-05-05", "300");
    job.bill("2026-05-12", "200").held = money("5");
    job.bill("2026-05-15", "100").held = Money{};
    EXPECT_EQ(job.figures().held, money("35"));  // 30 + 5 + 0
    job.terms().type = ContractKind::Order;
    EXPECT_EQ(job.figures().held, money("5"));
}

TEST(Retainage, IsNotTakenOfTheDeposit) {
    Tile job;
    job.terms().deposit = money("100");
    job.bill("2026-05-05", "80");   // all of it deposit
    job.bill("2026-05-12", "120");  // 20 deposit, a tenth of 100
    EXPECT_EQ(job.figures().held, money("10"));
}

TEST(Retainage, UntilAPercentSeen) {
    Tile job;
    job.terms().retainageUntil = percent("50");
    job.mark(1, "2026-05-10", "40");
    job.mark(1, "2026-05-14", "60");
    job.bill("2026-05-12", "400");  // 40 % seen by then: 40 held
    job.bill("2026-05-15", "200");  // 60 % seen: nothing
    EXPECT_EQ(job.figures().held, money("40"));
    // 600 seen, 10 % of the first 500 held: 550 may have been paid; owed 560.
    EXPECT_EQ(job.figures().payableToday, money("550"));
}

TEST(Retainage, IsReleasedByAcceptanceAndTheFinalWaiver) {
    Tile job;
    job.bill("2026-05-05", "300");
    job.terms().acceptedOn = day("2026-05-20");
    EXPECT_EQ(job.figures().held, money("30"));
    job.terms().waiverReceivedOn = day("2026-05-21");
    EXPECT_EQ(job.figures().held, Money{});
    EXPECT_EQ(job.figures().owed, money("300"));
}

TEST(Barred, ByLapsedInsurance) {
    Tile job;
    job.mark(1, "2026-05-10", "100");
    job.bill("2026-05-05", "300");
    job.rows.crews[0].insuredUntil = kToday;  // its last day still covers
    EXPECT_EQ(job.figures().payableToday, money("270"));
    job.rows.crews[0].insuredUntil = day("2026-05-21");
    const ContractFigures barred = job.figures();
    EXPECT_EQ(barred.payableToday, Money{});
    EXPECT_EQ(barred.payableOnceCleared, money("270"));
    ASSERT_EQ(barred.barredBy.size(), 1U);
    EXPECT_EQ(barred.barredBy[0], "the insurance of Tile crew lapsed on 2026-05-21");
    const auto listed = barredPayments(job.rows, figuresOf(job.rows, kToday));
    ASSERT_EQ(listed.size(), 1U);
    EXPECT_EQ(listed[0].name, "Tile work");
    EXPECT_EQ(listed[0].amount, money("270"));
    // A newer paper that came covers it.
    Paper& paper = job.add(job.rows.papers);
    paper.type = PaperKind::Insurance;
    paper.crew = id<Kind::Crew>(1);
    paper.receivedOn = kToday;
    paper.validUntil = day("2027-05-21");
    EXPECT_TRUE(job.figures().barredBy.empty());
}

TEST(Barred, ByWaiversThatHaveNotCome) {
    Tile job;
    Paper& paper = job.add(job.rows.papers);
    paper.type = PaperKind::LienWaiver;
    paper.crew = id<Kind::Crew>(1);
    EXPECT_EQ(job.figures().barredBy.size(), 1U);
    job.rows.papers[0].receivedOn = kToday;
    EXPECT_TRUE(job.figures().barredBy.empty());
    job.terms().acceptedOn = kToday;
    ASSERT_EQ(job.figures().barredBy.size(), 1U);
    EXPECT_NE(job.figures().barredBy[0].find("final lien waiver"), std::string::npos);
    job.terms().type = ContractKind::Order;
    EXPECT_TRUE(job.figures().barredBy.empty());
}

TEST(Deposit, BeyondTheLimitThatIsSet) {
    Tile job;
    job.terms().deposit = money("250");
    EXPECT_EQ(job.figures().depositBeyondLimit, Money{});  // none is set
    job.rows.job.depositLimit = percent("10");
    EXPECT_EQ(job.figures().depositBeyondLimit, money("150"));  // 250 - 10 % of 1,000
    job.change("niche", "500", "2026-05-10").contract = id<Kind::Contract>(1);
    EXPECT_EQ(job.figures().depositBeyondLimit, money("100"));  // 10 % of 1,500
}

TEST(PaidAhead, AddsUpByCrew) {
    Tile job;
    job.contract("Backsplash", "500", "2026-05-02").crew = id<Kind::Crew>(1);
    job.spend(SpendKind::Payment, "2026-05-06", "300").contract = id<Kind::Contract>(1);
    job.spend(SpendKind::Payment, "2026-05-06", "50").contract = id<Kind::Contract>(2);
    job.mark(1, "2026-05-05", "20");
    const auto ahead = paidAheadByCrew(job.rows, figuresOf(job.rows, kToday));
    // 300 - 200 seen, and 50 on a contract of which nothing can be seen.
    ASSERT_EQ(ahead.size(), 1U);
    EXPECT_EQ(ahead[0].name, "Tile crew");
    EXPECT_EQ(ahead[0].amount, money("150"));
}

// What is promised counts in the forecast though no item points at it.
TEST(ContractLine, HoldsWhatIsStillToBeBilled) {
    SampleJob job;
    Crew& crew = job.add(job.rows.crews);
    crew.name = "Yard crew";
    crew.trade = "yard";
    job.contract("Fence", "800", "2026-05-01").crew = crew.id;
    job.contract("Not signed", "900", "");
    job.item("floor", "400");
    job.change("gate", "120", "2026-05-10").contract = id<Kind::Contract>(1);
    job.spend(SpendKind::Invoice, "2026-05-12", "300").contract = id<Kind::Contract>(1);
    const JobFigures out = figuresOf(job.rows, kToday);
    ASSERT_EQ(out.lines.size(), 3U);
    const LineFigures& fence = out.lines[1];
    EXPECT_EQ(out.scope.lines[1].kind, LineKind::Contract);
    EXPECT_EQ(out.scope.lines[1].name, "Fence");
    EXPECT_EQ(out.scope.lines[1].trade, "yard");
    EXPECT_EQ(fence.committed, money("920"));
    EXPECT_EQ(fence.budgetNow, money("120"));  // the signed change; the contract was never budgeted
    EXPECT_EQ(fence.billed, money("300"));
    EXPECT_EQ(fence.rule, ToGoRule::Commitment);
    EXPECT_EQ(fence.toGo, money("620"));         // 800 + 120 - 300
    EXPECT_EQ(out.job.forecast, money("1320"));  // 920 + 400
    EXPECT_EQ(out.job.items, 1U);
    Money byTrade;
    for (const GroupFigures& group : out.trades) {
        byTrade += group.forecast;
    }
    EXPECT_EQ(byTrade, out.job.forecast);
    // Once an item points at it, it has no line of its own.
    job.rows.items[0].contract = id<Kind::Contract>(1);
    EXPECT_EQ(figuresOf(job.rows, kToday).lines.size(), 2U);
}

}  // namespace
