// Protects the money of an item and of a job: earned, to go by the first rule that applies, kept
// within its range, forecast, contracts, contingency, and what stands below the line. Every
// expected sum is worked out by hand beside its check.
#include "core/compute/budget.h"

#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;

const Date kToday = day("2026-05-22");

JobFigures figures(const SampleJob& job) {
    return figuresOf(job.rows, kToday);
}

TEST(Figures, OfNothingAreNothing) {
    const JobFigures out = figuresOf(JobRows{}, kToday);
    EXPECT_EQ(out.job, Figures{});
    EXPECT_TRUE(out.spaces.empty());
    EXPECT_TRUE(out.trades.empty());
    EXPECT_FALSE(out.underCeiling);
}

TEST(Figures, EarnedIsBudgetNowTimesShown) {
    SampleJob job;
    job.item("tile", "1000");
    job.change("warm floor", "200", "2026-05-05").items = {id<Kind::Item>(1)};
    job.mark(1, "2026-05-10", "33.33");
    // 1,200 x 33.33 % = 399.96.
    EXPECT_EQ(figures(job).job.earned, money("399.96"));
}

TEST(Figures, BilledPaidHeldAndOwed) {
    SampleJob job;
    job.item("tile", "1000");
    job.spend(SpendKind::Invoice, "2026-05-05", "500", 1).held = money("50");
    job.spend(SpendKind::Payment, "2026-05-06", "300", 1).pays = id<Kind::Spend>(1);
    job.spend(SpendKind::Receipt, "2026-05-06", "80", 1);
    job.spend(SpendKind::Fee, "2026-05-06", "20");
    job.spend(SpendKind::Refund, "2026-05-06", "30", 1);
    const JobFigures out = figures(job);
    // Billed 500 + 80 + 20 - 30; paid 300 + 80 + 20 - 30; owed 570 - 50 - 370.
    EXPECT_EQ(out.job.billed, money("570"));
    EXPECT_EQ(out.job.paid, money("370"));
    EXPECT_EQ(out.job.held, money("50"));
    EXPECT_EQ(out.job.owed, money("150"));
    EXPECT_EQ(out.lines.back().billed, money("20"));
}

// One item at 1,000 of one trade; each test bends it.
struct OneItem : SampleJob {
    OneItem() { item("tile", "1000").trade = "tile"; }

    Item& it() { return rows.items[0]; }

    [[nodiscard]] LineFigures line() const { return figuresOf(rows, kToday).lines[0]; }
};

TEST(ToGo, TheOwnersOwnEstimateComesFirst) {
    OneItem job;
    job.it().estimateToFinish = money("1");
    job.it().costLow = money("900");
    job.it().contract = id<Kind::Contract>(1);
    job.contract("Tile", "950", "2026-05-01");
    EXPECT_EQ(job.line().rule, ToGoRule::OwnEstimate);
    EXPECT_EQ(job.line().forecast, money("1"));
}

TEST(ToGo, ASignedContractCountsWhatIsNotYetBilledOnIt) {
    OneItem job;
    job.it().contract = id<Kind::Contract>(1);
    job.contract("Tile", "950", "2026-05-01");
    Change& change = job.change("niche", "50", "2026-05-06");
    change.contract = id<Kind::Contract>(1);
    job.spend(SpendKind::Invoice, "2026-05-08", "300", 1).contract = id<Kind::Contract>(1);
    // Contract now 950 + 50; 1,000 - 300.
    EXPECT_EQ(job.line().rule, ToGoRule::Commitment);
    EXPECT_EQ(job.line().committed, money("1000"));
    EXPECT_EQ(job.line().toGo, money("700"));
    // The owner's own goods for it come on top.
    job.spend(SpendKind::Receipt, "2026-05-08", "80", 1);
    EXPECT_EQ(job.line().toGo, money("700"));
    EXPECT_EQ(job.line().forecast, money("1080"));
}

TEST(ToGo, AnUnsignedContractCountsNothing) {
    OneItem job;
    job.it().contract = id<Kind::Contract>(1);
    job.contract("Tile", "950", "");
    EXPECT_EQ(job.line().rule, ToGoRule::BudgetLeft);
    EXPECT_EQ(job.line().committed, Money{});
}

TEST(ToGo, BilledBeyondTheContractLeavesNothing) {
    OneItem job;
    job.it().contract = id<Kind::Contract>(1);
    job.contract("Tile", "950", "2026-05-01");
    job.spend(SpendKind::Invoice, "2026-05-08", "1200", 1).contract = id<Kind::Contract>(1);
    EXPECT_EQ(job.line().toGo, Money{});
    EXPECT_EQ(job.line().forecast, money("1200"));
    EXPECT_EQ(figures(job).contracts[0].beyond, money("250"));
}

TEST(ToGo, BoughtGoodsGoByTheirQuoteElseTheirBudget) {
    OneItem job;
    job.it().boughtGoods = true;
    job.spend(SpendKind::Receipt, "2026-05-08", "200", 1);
    EXPECT_EQ(job.line().rule, ToGoRule::GoodsBudgetLeft);
    EXPECT_EQ(job.line().toGo, money("800"));
    job.it().quote = money("1150");
    EXPECT_EQ(job.line().rule, ToGoRule::Quote);
    EXPECT_EQ(job.line().forecast, money("1150"));
}

TEST(ToGo, PastTwentyPercentTheTradesCpiDecides) {
    OneItem job;
    job.item("backsplash", "500").trade = "Tile";
    job.mark(1, "2026-05-10", "40");
    job.mark(2, "2026-05-10", "100");
    job.spend(SpendKind::Receipt, "2026-05-11", "500", 1);
    job.spend(SpendKind::Receipt, "2026-05-11", "700", 2);
    // EV 400 + 500 = 900; billed 1,200; CPI 0.75. (1,000 - 400) / 0.75 = 800.
    EXPECT_EQ(job.line().rule, ToGoRule::TradeCpi);
    EXPECT_EQ(job.line().toGo, money("800"));
    EXPECT_EQ(job.line().forecast, money("1300"));
}

TEST(ToGo, WithoutATradeTheBudgetDecides) {
    OneItem job;
    job.it().trade = "";
    job.item("gutters", "500");
    job.mark(1, "2026-05-10", "50");
    job.mark(2, "2026-05-10", "100");
    job.spend(SpendKind::Receipt, "2026-05-11", "100", 2);
    // By the cost of the gutters, 500 earned for 100, half the tile would go for 100 more.
    EXPECT_EQ(job.line().rule, ToGoRule::BudgetLeft);
    EXPECT_EQ(job.line().toGo, money("1000"));
}

TEST(ToGo, AtTwentyPercentTheBudgetStillDecides) {
    OneItem job;
    job.mark(1, "2026-05-10", "20");
    job.spend(SpendKind::Receipt, "2026-05-11", "500", 1);
    EXPECT_EQ(job.line().rule, ToGoRule::BudgetLeft);
    EXPECT_EQ(job.line().toGo, money("500"));
    job.mark(1, "2026-05-12", "20.01");
    EXPECT_EQ(job.line().rule, ToGoRule::TradeCpi);
}

TEST(ToGo, WithoutAnythingBilledThereIsNoCpi) {
    OneItem job;
    job.mark(1, "2026-05-10", "60");
    EXPECT_EQ(job.line().rule, ToGoRule::BudgetLeft);
    EXPECT_EQ(job.line().toGo, money("1000"));
}

TEST(ToGo, IsKeptWithinLowToHigh) {
    OneItem job;
    job.it().costLow = money("1100");
    job.it().costHigh = money("1300");
    job.spend(SpendKind::Receipt, "2026-05-11", "200", 1);
    // Budget left 800 would make 1,000: raised to the 1,100 it costs at least.
    EXPECT_EQ(job.line().kept, Kept::RaisedToLow);
    EXPECT_EQ(job.line().toGo, money("900"));
    EXPECT_EQ(job.line().toGoAsComputed, money("800"));
    // At 30 % for 600: 700 x 600/300 = 1,400 would make 2,000: lowered to 1,300.
    job.mark(1, "2026-05-12", "30");
    job.spend(SpendKind::Receipt, "2026-05-12", "400", 1);
    EXPECT_EQ(job.line().kept, Kept::LoweredToHigh);
    EXPECT_EQ(job.line().forecast, money("1300"));
    // A signed change moves the range: 1,300 + 100; 1,100 - 330 earned = 770 x 600/330 = 1,400.
    job.change("more", "100", "2026-05-13").items = {id<Kind::Item>(1)};
    EXPECT_EQ(job.line().forecast, money("1400"));
    EXPECT_EQ(job.line().toGoAsComputed, money("1400"));
}

TEST(ToGo, ARangeUpsideDownIsNone) {
    OneItem job;
    job.it().costLow = money("2000");
    job.it().costHigh = money("1500");
    EXPECT_EQ(job.line().forecast, money("1000"));
}

TEST(ToGo, AFinishedItemCostsWhatWasBilled) {
    OneItem job;
    job.it().costLow = money("900");
    job.mark(1, "2026-05-10", "100");
    job.spend(SpendKind::Receipt, "2026-05-11", "700", 1);
    EXPECT_EQ(job.line().rule, ToGoRule::Finished);
    EXPECT_EQ(job.line().forecast, money("700"));
}

TEST(ToGo, UnsignedChangesAndUnknownsAreBelowTheLine) {
    OneItem job;
    job.change("asked", "860", "").items = {id<Kind::Item>(1)};
    job.change("refused", "500", "").refusedOn = day("2026-05-10");
    Unknown& sewer = job.add(job.rows.unknowns);
    sewer.chance = percent("30");
    sewer.costLow = money("1000");
    sewer.costLikely = money("2000");
    sewer.costHigh = money("6000");
    Unknown& found = job.add(job.rows.unknowns);
    found.chance = percent("50");
    found.costLikely = money("900");
    found.cameTrueOn = day("2026-05-10");
    const JobFigures out = figures(job);
    EXPECT_EQ(out.job.forecast, money("1000"));
    EXPECT_EQ(out.ifAllSigned, money("860"));
    EXPECT_EQ(out.unsignedChanges, 1U);
    // (1,000 + 4 x 2,000 + 6,000) / 6 = 2,500; 30 % of it.
    EXPECT_EQ(out.unknownsExpected, money("750"));
}

TEST(Figures, KeptAndUncountedItemsHaveNothingToGo) {
    SampleJob job;
    job.item("mantel", "300").treatment = Treatment::Keep;
    job.mark(1, "2026-05-10", "50");
    job.spend(SpendKind::Receipt, "2026-05-11", "12", 1);
    const JobFigures out = figures(job);
    EXPECT_EQ(out.lines[0].rule, ToGoRule::NotCounted);
    EXPECT_EQ(out.lines[0].shown, Percent{});
    EXPECT_EQ(out.job.items, 0U);
    EXPECT_EQ(out.job.forecast, money("12"));  // what was spent is spent all the same
}

TEST(Figures, PercentOfAJobIsWeighedByBudget) {
    SampleJob job;
    job.item("a", "3000");
    job.item("b", "1000");
    job.mark(1, "2026-05-10", "50");
    job.mark(2, "2026-05-10", "10", 2);
    const JobFigures out = figures(job);
    // Shown (3,000 x 50 + 1,000 x 10) / 4,000 = 40; seen 3,000 x 50 / 4,000 = 37.5.
    EXPECT_EQ(out.job.shown, percent("40"));
    EXPECT_EQ(out.job.seen, percent("37.5"));
}

TEST(Figures, WholeJobMoneyIsEarnedAsTheItemsAre) {
    SampleJob job;
    job.item("a", "1000");
    job.change("permit fees", "200", "2026-05-05");
    job.mark(1, "2026-05-10", "50");
    const JobFigures out = figures(job);
    EXPECT_EQ(out.job.budgetNow, money("1200"));
    EXPECT_EQ(out.job.earned, money("600"));
    EXPECT_EQ(out.job.shown, percent("50"));
}

TEST(Figures, OverAndEarly) {
    OneItem job;
    job.it().plannedStartOn = day("2026-05-25");
    job.it().plannedFinishOn = day("2026-05-29");
    job.spend(SpendKind::Receipt, "2026-05-11", "200", 1);
    EXPECT_EQ(job.line().standing(), Standing::Early);  // nothing planned yet, forecast 1,000
    job.spend(SpendKind::Receipt, "2026-05-11", "900", 1);
    EXPECT_EQ(job.line().standing(), Standing::Over);
    OneItem undated;
    undated.spend(SpendKind::Receipt, "2026-05-11", "200", 1);
    EXPECT_EQ(undated.line().standing(), Standing::Within);  // no plan to be early by
}

TEST(Contingency, IsAPercentOfTheBaselineUsedUpBySignedChanges) {
    SampleJob job;
    job.item("a", "1000");
    job.rows.job.contingency = percent("10");
    job.rows.job.budget = money("1200");
    job.change("rot", "60", "2026-05-05").paidFrom = PaidFrom::Contingency;
    job.change("extra", "30", "2026-05-05").paidFrom = PaidFrom::NewMoney;
    job.change("asked", "500", "").paidFrom = PaidFrom::Contingency;
    JobFigures out = figures(job);
    EXPECT_EQ(out.contingency.total, money("100"));
    EXPECT_EQ(out.contingency.used, money("60"));
    EXPECT_EQ(out.contingency.left, money("40"));
    // Forecast 1,000 + 90; 1,200 - 1,090 - 40.
    EXPECT_EQ(out.underCeiling, money("70"));
    job.baseline("2026-05-01", {"1000"});
    job.rows.baselines[0].contingency = money("150");
    out = figures(job);
    EXPECT_EQ(out.contingency.left, money("90"));
}

TEST(Committed, GoesOverItsItemsByBudgetNow) {
    SampleJob job;
    job.contract("Tile", "1000", "2026-05-01");
    job.contract("Not signed", "900", "");
    job.contract("Of no item", "70", "2026-05-01");
    job.item("floor", "400").contract = id<Kind::Contract>(1);
    job.item("shower", "400").contract = id<Kind::Contract>(1);
    job.item("paint", "900").contract = id<Kind::Contract>(2);
    Change& change = job.change("niche", "400", "2026-05-05");
    change.contract = id<Kind::Contract>(1);
    change.items = {id<Kind::Item>(2)};
    const JobFigures out = figures(job);
    // Contract now 1,400 by 400 to 800: 466.67 and 933.33.
    EXPECT_EQ(out.lines[0].committed, money("466.67"));
    EXPECT_EQ(out.lines[1].committed, money("933.33"));
    EXPECT_EQ(out.lines[2].committed, Money{});
    // A contract without items stands on a line of its own, before the whole job's.
    EXPECT_EQ(out.lines[3].committed, money("70"));
    EXPECT_EQ(out.lines.back().committed, Money{});
    EXPECT_EQ(out.job.committed, money("1470"));
}

// A tile contract of 6,950 over two items, seen for the share the test marks.
struct Paid : SampleJob {
    Paid() {
        Contract& tile = contract("Tile", "6950", "2026-05-01");
        tile.retainage = percent("10");
        item("floor", "3000").contract = id<Kind::Contract>(1);
        item("shower", "1000").contract = id<Kind::Contract>(1);
    }

    void pay(std::string_view sum) {
        spend(SpendKind::Payment, "2026-05-15", sum).contract = id<Kind::Contract>(1);
    }

    void bill(std::string_view sum, std::string_view held) {
        Spend& invoice = spend(SpendKind::Invoice, "2026-05-15", sum);
        invoice.contract = id<Kind::Contract>(1);
        invoice.held = money(held);
    }

    [[nodiscard]] ContractFigures tile() const { return figuresOf(rows, kToday).contracts[0]; }
};

TEST(Contracts, PaidAheadIsPaidLessWhatWasSeen) {
    Paid job;
    job.mark(1, "2026-05-14", "60");
    job.mark(2, "2026-05-14", "90", 2);  // the crew's word does not count for paying
    job.pay("4000");
    // Seen (3,000 x 60) / 4,000 = 45 %; 6,950 x 45 % = 3,127.50; 4,000 - 3,127.50 = 872.50, which
    // is 12.554 % of 6,950.
    EXPECT_EQ(job.tile().seen, percent("45"));
    EXPECT_EQ(job.tile().seenValue, money("3127.50"));
    EXPECT_EQ(job.tile().paidAhead, money("872.50"));
    EXPECT_EQ(job.tile().paidAheadPoints, percent("12.55"));
    EXPECT_EQ(job.tile().payableToday, Money{});
}

TEST(Contracts, ADepositIsExceptedWhileWorkIsUnseen) {
    Paid job;
    job.rows.contracts[0].deposit = money("695");
    job.pay("695");
    EXPECT_EQ(job.tile().paidAhead, Money{});
    job.pay("100");
    EXPECT_EQ(job.tile().paidAhead, money("100"));
    job.mark(1, "2026-05-14", "100");
    job.mark(2, "2026-05-14", "100");
    job.pay("6355");
    // All seen, 7,150 paid on 6,950: the deposit no longer hides it.
    EXPECT_EQ(job.tile().paidAhead, money("200"));
}

TEST(Contracts, GoodsOnSiteAndOrdersAreExcepted) {
    Paid job;
    job.rows.items[0].boughtGoods = true;
    job.pay("5000");
    EXPECT_EQ(job.tile().paidAhead, money("5000"));
    Delivery& delivery = job.add(job.rows.deliveries);
    delivery.item = id<Kind::Item>(1);
    delivery.arrivedOn = day("2026-05-12");
    // Goods on site are three quarters: 6,950 x 75 % = 5,212.50.
    EXPECT_EQ(job.tile().paidAhead, Money{});
    job.rows.deliveries.clear();
    job.rows.contracts[0].type = ContractKind::Order;
    EXPECT_EQ(job.tile().paidAhead, Money{});
}

TEST(Contracts, PayableTodayIsNoMoreThanOwedOrSeen) {
    Paid job;
    job.bill("3000", "300");
    job.mark(1, "2026-05-14", "60");
    // Owed 2,700; seen 45 %: 6,950 x 0.45 x 0.9 = 2,814.75.
    EXPECT_EQ(job.tile().owed, money("2700"));
    EXPECT_EQ(job.tile().payableToday, money("2700"));
    job.pay("1000");
    // Owed 1,700; 2,814.75 - 1,000 = 1,814.75.
    EXPECT_EQ(job.tile().payableToday, money("1700"));
    job.bill("1000", "100");
    // Owed 2,600; still 1,814.75.
    EXPECT_EQ(job.tile().payableToday, money("1814.75"));
}

TEST(Rollups, BySpaceTradeAndCrewAddUpToTheJob) {
    SampleJob job;
    Space& bath = job.add(job.rows.spaces);
    bath.name = "Bath";
    bath.walkOrder = 2;
    Space& hall = job.add(job.rows.spaces);
    hall.name = "Hall";
    hall.walkOrder = 1;
    job.add(job.rows.crews).trade = "tile";
    job.item("tub", "1000").space = id<Kind::Space>(1);
    Item& floor = job.item("floor", "500");
    floor.space = id<Kind::Space>(2);
    floor.crew = id<Kind::Crew>(1);
    job.item("anywhere", "70");
    job.spend(SpendKind::Fee, "2026-05-05", "25");
    const JobFigures out = figures(job);
    ASSERT_EQ(out.spaces.size(), 3U);
    EXPECT_EQ(out.spaces[0].name, "Hall");
    EXPECT_EQ(out.spaces[0].budgetNow, money("500"));
    EXPECT_EQ(out.spaces[1].budgetNow, money("1000"));
    EXPECT_EQ(out.spaces[2].name, "");
    EXPECT_EQ(out.spaces[2].budgetNow, money("70"));
    EXPECT_EQ(out.spaces[2].billed, money("25"));
    ASSERT_EQ(out.trades.size(), 2U);
    EXPECT_EQ(out.trades[0].name, "tile");
    EXPECT_EQ(out.trades[0].budgetNow, money("500"));
    EXPECT_EQ(out.trades[1].budgetNow, money("1070"));
    ASSERT_EQ(out.crews.size(), 2U);
    EXPECT_EQ(out.crews[1].forecast, money("1095"));
}

}  // namespace
