// Protects: the forecast says by which rules it was made, and the other methods stand beside it.
// The estimates are those of the five-period example of P. Govan, Project Risk Analysis, ch. 5
// (BAC 500,000, EV 200,000, AC 290,000, PV 250,000: EAC 725,000 at CPI, 590,000 at budget; exact at
// CPI x SPI 290,000 + 300,000 / (200/290 x 0.8) = 833,750), built as a job.
#include "core/compute/forecasts.h"

#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;

// Ten weeks of even plan from Mon 4 May to Fri 10 July 2026: after five weeks half of it is
// planned, 250,000 of 500,000; 40 % is done for 290,000.
SampleJob fivePeriods() {
    SampleJob job;
    Item& item = job.item("whole", "500000");
    item.plannedStartOn = day("2026-05-04");
    item.plannedFinishOn = day("2026-07-10");
    job.mark(1, "2026-06-05", "40");
    Spend& spend = job.add(job.rows.spends);
    spend.type = SpendKind::Invoice;
    spend.spentOn = day("2026-06-05");
    spend.amount = money("290000");
    spend.item = id<Kind::Item>(1);
    return job;
}

Money estimateOf(const Forecasts& forecasts, Method method) {
    for (const auto& figure : forecasts.methods) {
        if (figure.method == method) {
            return figure.estimate;
        }
    }
    ADD_FAILURE() << "no estimate " << wordsFor(method);
    return Money{};
}

TEST(Forecasts, EveryMethodBesideTheOwn) {
    const SampleJob job = fivePeriods();
    const Date today = day("2026-06-07");  // the Sunday that ends the fifth week
    const Forecasts out = forecastsOf(job.rows, figuresOf(job.rows, today), today);
    EXPECT_EQ(out.earned.pv, 250'000);
    EXPECT_EQ(estimateOf(out, Method::RemainingAtBudget), money("590000"));
    EXPECT_EQ(estimateOf(out, Method::RemainingAtCpi), money("725000"));
    EXPECT_EQ(estimateOf(out, Method::RemainingAtCpiSpi), money("833750"));
    // 0.8 x 200/290 + 0.2 x 0.8 = 0.711724...; 290,000 + 300,000 / 0.711724 = 711,511.63.
    EXPECT_EQ(estimateOf(out, Method::RemainingAtWeighted), money("711511.63"));
    // 200,000 was planned by the end of week 4 of 5: SPI(t) 0.8; 290,000 + 300,000 / 0.8.
    EXPECT_EQ(estimateOf(out, Method::RemainingAtSpiT), money("665000"));
    for (std::size_t k = 1; k < out.methods.size(); ++k) {
        EXPECT_LE(out.methods[k - 1].estimate, out.methods[k].estimate);
    }
}

TEST(Forecasts, SaysByWhichRules) {
    SampleJob job = fivePeriods();
    job.rows.items[0].trade = "carpentry";
    job.item("untouched", "1000");
    job.item("estimated", "1000").estimateToFinish = money("4000");
    const Date today = day("2026-06-07");
    const JobFigures figures = figuresOf(job.rows, today);
    const Forecasts out = forecastsOf(job.rows, figures, today);
    Money sum;
    for (const auto& rule : out.rules) {
        sum += rule.toGo;
    }
    EXPECT_EQ(sum, figures.job.toGo);
    ASSERT_EQ(out.rules.size(), 3U);
    EXPECT_EQ(out.rules[0].rule, ToGoRule::TradeCpi);
    EXPECT_EQ(out.rules[1].rule, ToGoRule::OwnEstimate);
    EXPECT_EQ(out.rules[1].toGo, money("4000"));
    EXPECT_EQ(out.rules[2].rule, ToGoRule::BudgetLeft);
    EXPECT_EQ(out.rules[2].lines, 1U);
}

TEST(Forecasts, NothingEarnedNothingToGoBy) {
    SampleJob job;
    const Date today = day("2026-06-07");
    EXPECT_TRUE(forecastsOf(job.rows, figuresOf(job.rows, today), today).methods.empty());
    job.item("whole", "500");
    const Forecasts out = forecastsOf(job.rows, figuresOf(job.rows, today), today);
    EXPECT_TRUE(out.methods.empty());
    ASSERT_EQ(out.rules.size(), 1U);
    EXPECT_EQ(out.rules[0].toGo, money("500"));
}

}  // namespace
