// Protects what of a job goes into the simulation: what is certain (finished, contracted, the
// owner's estimate), what spreads and by how much, and that the figures told of it agree with the
// budget and the deal. Means are by hand, within three standard errors.
#include "core/compute/job_risk.h"

#include <cmath>
#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard;
using namespace ledgerboard::compute;
using tests::amountOf;
using tests::day;
using tests::money;
using tests::percent;
using tests::SampleJob;

constexpr const char* kToday = "2026-05-15";  // a Friday
constexpr std::size_t kTrials = 4000;

struct JobRiskTest : testing::Test {
    SampleJob job;

    model::Result<JobRisk> told(double correlation = 0) const {
        const auto figures = figuresOf(job.rows, day(kToday));
        const auto network = jobNetworkOf(job.rows, figures, day(kToday));
        DealFigures deal;
        deal.asOf = day(kToday);
        return jobRiskOf(job.rows, figures, network, deal, {kTrials, 3, correlation});
    }

    JobRisk risk(double correlation = 0) const {
        auto out = told(correlation);
        EXPECT_TRUE(out.ok()) << out.error().message;
        return out.ok() ? out.value() : JobRisk{};
    }

    // A price of 200,000, sold for 300,000, nothing else but 365 a month: 12 a day.
    void addDeal() {
        job.rows.job.purchasePrice = money("200000");
        job.rows.job.purchasedOn = day("2026-04-01");
        job.rows.job.resaleLikely = money("300000");
        job.rows.job.resaleDays = 30;
        job.rows.job.holdingCosts = {{"taxes", money("365")}};
    }
};

double dollars(model::Money amount) {
    return static_cast<double>(amount.minor()) / 100;
}

// The mean of a PERT estimate, and three standard errors of it at most: no such distribution has a
// deviation of more than a quarter of its width.
void expectMean(model::Money mean, double low, double likely, double high) {
    EXPECT_NEAR(dollars(mean), (low + 4 * likely + high) / 6,
                3 * (high - low) / 4 / std::sqrt(static_cast<double>(kTrials)));
}

TEST_F(JobRiskTest, FinishedItemsHaveNoSpread) {
    job.item("roof", "1000").costLow = money("500");
    job.rows.items[0].costHigh = money("3000");
    job.rows.items[0].daysLikely = amountOf("3");
    job.mark(1, "2026-05-01", "100");
    job.spend(model::SpendKind::Receipt, "2026-05-01", "900", 1);
    const JobRisk out = risk();
    EXPECT_FALSE(out.anySpread);
    EXPECT_EQ(out.cost.least, money("900"));
    EXPECT_EQ(out.cost.most, money("900"));
    EXPECT_EQ(out.basis.finished, 1U);
    EXPECT_EQ(out.basis.open, 0U);
    EXPECT_FALSE(out.finish.has_value());
    EXPECT_TRUE(out.drivers.empty());
}

TEST_F(JobRiskTest, NothingYet) {
    const JobRisk out = risk();
    EXPECT_FALSE(out.anySpread);
    EXPECT_EQ(out.cost.p80, model::Money{});
    EXPECT_FALSE(out.profit.has_value());
    EXPECT_FALSE(out.profitMissing.empty());
}

// Low and high are shares of the price; half billed and half done leaves half of each: 500 to go at
// the trade's own pace of cost (earned 500, billed 500), from 400 to 800.
TEST_F(JobRiskTest, ToGoSpreadsByLowAndHighOfWhatIsLeft) {
    job.item("roof", "1000").costLow = money("800");
    job.rows.items[0].costHigh = money("1600");
    const JobRisk whole = risk();
    EXPECT_EQ(whole.forecast, money("1000"));
    expectMean(whole.cost.mean, 800, 1000, 1600);
    EXPECT_GE(whole.cost.least, money("800"));
    EXPECT_LE(whole.cost.most, money("1600"));
    job.baseline("2026-04-01", {"1000"});
    job.mark(1, "2026-05-01", "50");
    job.spend(model::SpendKind::Receipt, "2026-05-01", "500", 1);
    const JobRisk half = risk();
    EXPECT_EQ(half.forecast, money("1000"));
    expectMean(half.cost.mean, 500 + 400, 500 + 500, 500 + 800);
    EXPECT_EQ(half.basis.costRanged, 1U);
    EXPECT_EQ(half.basis.costUsual, 0U);
}

// 90 to 125 % of 1,000, said aloud; the place of budget now is with the forecast.
TEST_F(JobRiskTest, WithoutLowAndHighTheUsualRange) {
    job.item("roof", "1000");
    job.rows.job.budget = money("1100");
    const JobRisk out = risk();
    expectMean(out.cost.mean, 900, 1000, 1250);
    EXPECT_GE(out.cost.least, money("900"));
    EXPECT_LE(out.cost.most, money("1250"));
    EXPECT_EQ(out.basis.costUsual, 1U);
    ASSERT_TRUE(out.withinCeiling.has_value());
    EXPECT_GT(*out.withinCeiling, 50);
    EXPECT_LT(*out.withinCeiling, 100);
}

// No baseline, no contingency: what 80 in 100 takes is p80 less budget now, and the chance to stay
// within budget now alone is that of low to likely.
TEST_F(JobRiskTest, ContingencyStandsOnTopOfBudgetNow) {
    job.item("roof", "1000");
    job.rows.job.contingency = percent("10");
    job.baseline("2026-04-01", {"1000"});
    job.rows.baselines[0].contingency = money("100");
    const JobRisk out = risk();
    EXPECT_EQ(out.contingency80, out.cost.p80 - money("1000"));
    EXPECT_EQ(out.contingencyLeft, money("100"));
    // 1,100 lies above p80 where 100 is more than what 80 in 100 takes, and below it where less.
    EXPECT_EQ(out.withinBudget >= 80, out.contingency80 <= money("100"));
}

TEST_F(JobRiskTest, ContractsSpreadByUnsignedChangesAlone) {
    model::Contract& contract = job.contract("Roof", "5000", "2026-04-01");
    model::Item& item = job.item("roof", "5000");
    item.contract = contract.id;
    item.costLow = money("1000");
    item.costHigh = money("9000");
    const JobRisk certain = risk();
    EXPECT_EQ(certain.cost.least, money("5000"));
    EXPECT_EQ(certain.cost.most, money("5000"));
    EXPECT_EQ(certain.basis.byContract, 1U);

    job.change("flashing", "400", "").items = {item.id};
    const JobRisk open = risk();
    EXPECT_EQ(open.forecast, money("5000"));
    EXPECT_EQ(open.cost.least, money("5000"));
    EXPECT_EQ(open.cost.most, money("5400"));
    // An even chance: 3 x 200 / sqrt(4,000) = 9.5.
    EXPECT_NEAR(dollars(open.cost.mean), 5200, 9.5);
    EXPECT_EQ(open.basis.unsignedChanges, 1U);
    ASSERT_EQ(open.drivers.size(), 1U);
    EXPECT_EQ(open.drivers[0].what, "flashing");

    job.rows.changes[0].refusedOn = day("2026-05-10");
    EXPECT_FALSE(risk().anySpread);
}

// It is no estimate of nothing, and the page must not pass it off as one.
TEST_F(JobRiskTest, WhatNothingPricesIsCountedApart) {
    job.item("roof", "1000");
    job.item("porch", "0").lumpSum.reset();
    const JobRisk out = risk();
    EXPECT_EQ(out.basis.open, 2U);
    EXPECT_EQ(out.basis.unpriced, 1U);
    EXPECT_EQ(out.basis.costRanged, 0U);
    EXPECT_EQ(out.basis.costUsual, 1U);
}

TEST_F(JobRiskTest, TheOwnersEstimateIsTakenAsCertain) {
    model::Item& item = job.item("roof", "1000");
    item.costHigh = money("9000");
    item.estimateToFinish = money("1234.50");
    const JobRisk out = risk();
    EXPECT_FALSE(out.anySpread);
    EXPECT_EQ(out.cost.p50, money("1234.50"));
    EXPECT_EQ(out.basis.byEstimate, 1U);
}

// Half done: 4, 5 and 8 days are left from Monday 18 May: finished between Thursday 21 May and
// Wednesday 27 May; as likely, on Friday 22 May.
TEST_F(JobRiskTest, DaysShrinkWithProgress) {
    model::Item& item = job.item("roof", "1000");
    item.daysLow = amountOf("8");
    item.daysLikely = amountOf("10");
    item.daysHigh = amountOf("16");
    job.mark(1, kToday, "50");
    job.rows.job.targetFinishOn = day("2026-05-27");
    const JobRisk out = risk();
    ASSERT_TRUE(out.finish.has_value());
    EXPECT_EQ(out.planned, day("2026-05-22"));
    // A sample of exactly the least has no chance, so the first day is the one after 4 days.
    EXPECT_GE(out.finish->least, day("2026-05-21"));
    EXPECT_LE(out.finish->most, day("2026-05-27"));
    EXPECT_EQ(out.basis.daysRanged, 1U);
    EXPECT_EQ(out.byTarget, 100);
    // The deviation of beta (1 + 4 x 1/4 = 2, 4) over 4 days: 4 sqrt(8 / 252).
    EXPECT_NEAR(out.finish->deviationDays, 4 * std::sqrt(8.0 / 252), 0.05);
}

// The roof takes 2 days and up to 10; the gutters, one day, are planned for the day after, by the
// same crew. At chance u the roof takes 2 + 8 (1 - (1 - u)^(1/5)) days (beta 1, 5): 4.95 at 90 %.
// With a crew of one place the gutters are over on the sixth day, Monday 25 May; with places for
// two, on the fifth, Friday 22 May.
TEST_F(JobRiskTest, ALateCrewIsLateOnItsNextItem) {
    model::Crew& crew = job.add(job.rows.crews);
    for (const char* object : {"roof", "gutters"}) {
        model::Item& item = job.item(object, "1000");
        item.crew = crew.id;
    }
    job.rows.items[0].daysLow = job.rows.items[0].daysLikely = amountOf("2");
    job.rows.items[0].daysHigh = amountOf("10");
    job.rows.items[1].daysLow = job.rows.items[1].daysLikely = job.rows.items[1].daysHigh =
        amountOf("1");
    job.rows.items[0].plannedStartOn = day("2026-05-18");
    job.rows.items[1].plannedStartOn = day("2026-05-20");
    const JobRisk one = risk();
    EXPECT_EQ(one.basis.turns, 1U);
    EXPECT_EQ(one.planned, day("2026-05-20"));
    EXPECT_EQ(one.finish->p90, day("2026-05-25"));
    job.rows.crews[0].capacity = 2;
    const JobRisk two = risk();
    EXPECT_EQ(two.basis.turns, 0U);
    EXPECT_EQ(two.finish->p90, day("2026-05-22"));
}

TEST_F(JobRiskTest, UnknownsByTheirChance) {
    job.item("roof", "1000").estimateToFinish = money("1000");
    job.item("porch", "1000").estimateToFinish = money("0");
    job.mark(2, "2026-05-01", "100");
    model::Unknown& rot = job.add(job.rows.unknowns);
    rot.what = "rot";
    rot.chance = percent("25");
    rot.costLikely = money("800");
    rot.item = tests::id<model::Kind::Item>(1);
    job.add(job.rows.unknowns).costLikely = money("5000");  // nobody says how likely
    model::Unknown& past = job.add(job.rows.unknowns);      // of a finished item
    past.chance = percent("50");
    past.costLikely = money("5000");
    past.item = tests::id<model::Kind::Item>(2);
    model::Unknown& found = job.add(job.rows.unknowns);
    found.chance = percent("50");
    found.costLikely = money("5000");
    found.cameTrueOn = day("2026-05-01");
    const JobRisk out = risk();
    EXPECT_EQ(out.cost.least, money("1000"));
    EXPECT_EQ(out.cost.most, money("1800"));
    // 25 % of 800: deviation 800 sqrt(.25 x .75) = 346.4; 3 x 346.4 / sqrt(4,000) = 16.4.
    EXPECT_NEAR(dollars(out.cost.mean), 1200, 16.4);
    EXPECT_EQ(out.basis.unknowns, 1U);
    EXPECT_EQ(out.basis.unknownsWithoutChance, 1U);
    EXPECT_EQ(out.basis.unknownsPast, 1U);
}

// Nothing spreads but the days; a day of the calendar costs 12, so what a trial earns is what the
// deal says of its day: the least of the latest day, the most of the soonest.
TEST_F(JobRiskTest, EarningsFollowTheDealDayByDay) {
    addDeal();
    model::Item& item = job.item("roof", "1000");
    item.estimateToFinish = money("1000");
    item.daysLow = amountOf("4");
    item.daysLikely = amountOf("5");
    item.daysHigh = amountOf("12");
    job.rows.job.wantedProfit = money("1");
    const JobRisk out = risk();
    ASSERT_TRUE(out.profit.has_value());
    DealFigures figures;
    figures.work = money("1000");
    figures.asOf = day(kToday);
    const auto earnedAt = [&](model::Date finish) {
        figures.willFinishOn = finish;
        return *deal(job.rows.job, figures).value().profit;
    };
    EXPECT_EQ(out.dealProfit, earnedAt(*out.planned));
    EXPECT_EQ(out.profit->least, earnedAt(out.finish->most));
    EXPECT_EQ(out.profit->most, earnedAt(out.finish->least));
    EXPECT_EQ(out.dayCosts, money("12"));
    EXPECT_EQ(out.earnsWanted, 100);
    EXPECT_EQ(out.losesMoney, 0);
    EXPECT_FALSE(out.basis.resaleRanged);
}

// Resale from 290,000 to 320,000 with 6 % for selling: 94 % of each comes in.
TEST_F(JobRiskTest, ResaleSpreadsFromLowToHigh) {
    addDeal();
    job.rows.job.resaleLow = money("290000");
    job.rows.job.resaleHigh = money("320000");
    job.rows.job.sellingCosts = percent("2");
    job.rows.job.commission = percent("4");
    job.item("roof", "1000").estimateToFinish = money("1000");
    const JobRisk out = risk();
    ASSERT_TRUE(out.profit.has_value());
    const double likely = dollars(*out.dealProfit);
    expectMean(out.profit->mean, likely - 9400, likely, likely + 18800);
    EXPECT_GE(out.profit->least, *out.dealProfit - money("9400"));
    EXPECT_LE(out.profit->most, *out.dealProfit + money("18800"));
    ASSERT_EQ(out.drivers.size(), 1U);
    EXPECT_EQ(out.drivers[0].kind, DriverKind::Income);
}

TEST_F(JobRiskTest, ADealThatCannotBeWorkedOutSaysWhy) {
    addDeal();
    job.rows.job.sellingCosts = percent("60");
    job.rows.job.commission = percent("50");
    job.item("roof", "1000");
    const JobRisk out = risk();
    EXPECT_FALSE(out.profit.has_value());
    EXPECT_NE(out.profitProblem, "");
    EXPECT_TRUE(out.anySpread);
}

// Ordered goods promised for Wednesday 20 May, looked over for 3 days: one day of work on Monday
// 25 May as planned, and at the latest a week after that.
TEST_F(JobRiskTest, GoodsComeAsPlannedOrLater) {
    model::Item& item = job.item("windows", "1000");
    item.daysLow = item.daysLikely = item.daysHigh = amountOf("1");
    model::Delivery& delivery = job.add(job.rows.deliveries);
    delivery.item = item.id;
    delivery.orderedOn = day("2026-05-01");
    delivery.promisedOn = day("2026-05-20");
    const JobRisk out = risk();
    EXPECT_EQ(out.basis.goodsAwaited, 1U);
    EXPECT_EQ(out.planned, day("2026-05-25"));
    EXPECT_GE(out.finish->least, day("2026-05-25"));
    EXPECT_GT(out.finish->p80, day("2026-05-25"));
    EXPECT_LE(out.finish->most, day("2026-06-01"));
}

TEST_F(JobRiskTest, ALoopIsNamed) {
    for (const char* object : {"roof", "gutters"}) {
        job.item(object, "1000").daysLikely = amountOf("2");
    }
    for (const auto& [from, to] : {std::pair(1U, 2U), std::pair(2U, 1U)}) {
        model::Link& link = job.add(job.rows.links);
        link.fromItem = tests::id<model::Kind::Item>(from);
        link.toItem = tests::id<model::Kind::Item>(to);
    }
    const auto out = told();
    ASSERT_FALSE(out.ok());
    EXPECT_NE(out.error().message.find("roof > gutters > roof"), std::string::npos)
        << out.error().message;
}

TEST_F(JobRiskTest, AContractWithoutItemsCostsAndTakesNoTime) {
    job.item("roof", "1000").daysLikely = amountOf("4");
    const auto before = risk(0.2).finish->counts;
    job.contract("Dumpster", "900", "2026-05-01");
    EXPECT_EQ(risk(0.2).finish->counts, before);
}

TEST_F(JobRiskTest, OneSeedOneResult) {
    job.item("roof", "1000").daysLikely = amountOf("4");
    const JobRisk first = risk(0.2);
    const JobRisk again = risk(0.2);
    EXPECT_EQ(first.cost.p80, again.cost.p80);
    EXPECT_EQ(first.cost.mean, again.cost.mean);
    EXPECT_EQ(first.finish->counts, again.finish->counts);
}

}  // namespace
