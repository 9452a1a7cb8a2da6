// Protects the deal: every figure against a calculation by hand written beside it, and that
// whatever was not entered is named rather than guessed.
#include "core/compute/deal.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <string>
#include <vector>

#include "core/model/catalog.h"

namespace {

using namespace ledgerboard::compute;
using ledgerboard::model::ChargedOn;
using ledgerboard::model::Date;
using ledgerboard::model::InterestBasis;
using ledgerboard::model::Job;
using ledgerboard::model::Kind;
using ledgerboard::model::Money;
using ledgerboard::model::Percent;

Date day(const char* text) {
    return Date::parse(text).value();
}

Money cents(std::int64_t minor) {
    return Money::fromMinor(minor);
}

// Everything entered. Bought 1 January, finished 1 April, sold 30 days later: 1 May, 120 days.
Job wholeJob() {
    Job job;
    job.purchasePrice = Money::of(200'000);
    job.purchasedOn = day("2026-01-01");
    job.resaleLow = Money::of(300'000);
    job.resaleLikely = Money::of(320'000);
    job.resaleHigh = Money::of(340'000);
    job.buyingCosts = Percent::of(2);
    job.sellingCosts = Percent::of(2);
    job.commission = Percent::of(5);
    job.purchaseLoan = Money::of(160'000);
    job.workLoan = Money::of(50'000);
    job.loanRate = Percent::of(10);
    job.purchasePoints = Percent::of(2);
    job.workPoints = Percent::of(1);
    job.lenderFees = Money::of(1'300);
    job.interestBasis = InterestBasis::Actual360;
    job.interestOn = ChargedOn::Whole;
    job.targetFinishOn = day("2026-04-01");
    job.resaleDays = 30;
    job.termEndOn = day("2026-06-30");
    job.extensionFee = Percent::of(1);
    job.holdingCosts = {{"taxes", Money::of(210)}, {"insurance", Money::of(95)}};
    return job;
}

DealFigures sixtyThousand() {
    DealFigures figures;
    figures.work = Money::of(60'000);
    return figures;
}

Deal worked(const Job& job, const DealFigures& figures) {
    auto out = deal(job, figures);
    if (!out.ok()) {
        ADD_FAILURE() << out.error().message;
        return {};
    }
    return out.value();
}

std::vector<std::string> headings(const std::vector<AbsentInput>& inputs) {
    std::vector<std::string> all;
    for (const AbsentInput& input : inputs) {
        all.emplace_back(input.heading);
    }
    return all;
}

TEST(Deal, AtClosing) {
    const Deal out = worked(wholeJob(), sixtyThousand());
    EXPECT_EQ(out.buyingCosts, Money::of(4'000));  // 2 % of 200,000
    EXPECT_EQ(out.points, Money::of(3'700));       // 2 % of 160,000 + 1 % of 50,000
    // 200,000 - 160,000 + 4,000 + 3,700 + 1,300
    EXPECT_EQ(out.cashAtClosing, Money::of(49'000));
    EXPECT_EQ(out.day91On, day("2026-04-02"));  // 1 January + 91 days
}

TEST(Deal, CostOfTime) {
    const Deal out = worked(wholeJob(), sixtyThousand());
    EXPECT_EQ(out.saleOn, day("2026-05-01"));
    EXPECT_EQ(out.daysHeld, 120);                 // 31 + 28 + 31 + 30
    EXPECT_EQ(out.daysToTermEnd, 60);             // 1 May to 30 June
    EXPECT_EQ(out.interest, Money::of(7'000));    // 210,000 x 10 % x 120/360
    EXPECT_EQ(out.holding, cents(1'203'29));      // 305 x 12 x 120/365 = 1,203.2877
    EXPECT_EQ(out.interestPerDay, cents(58'33));  // 210,000 x 10 % / 360 = 58.3333
    EXPECT_EQ(out.holdingPerDay, cents(10'03));   // 305 x 12/365 = 10.0274
    EXPECT_EQ(out.dayCosts, cents(68'36));
    EXPECT_EQ(out.extensionFee, Money{});
}

TEST(Deal, Profit) {
    const Deal out = worked(wholeJob(), sixtyThousand());
    EXPECT_TRUE(out.missing.empty());
    EXPECT_TRUE(out.leftOut.empty());
    EXPECT_EQ(out.selling, Money::of(22'400));  // 7 % of 320,000
    // 200,000 + 4,000 + 3,700 + 1,300 + 7,000 + 1,203.29 + 60,000 + 22,400
    EXPECT_EQ(out.allIn, cents(299'603'29));
    EXPECT_EQ(out.profit, cents(20'396'71));
    EXPECT_EQ(out.profitLow, cents(1'796'71));                  // 300,000 x .93 - 277,203.29
    EXPECT_EQ(out.profitHigh, cents(38'996'71));                // 340,000 x .93 - 277,203.29
    EXPECT_NEAR(out.marginPercent.value(), 6.373971875, 1e-9);  // 20,396.71 / 320,000
    // 277,203.29 / .93 = 298,068.0538
    EXPECT_EQ(out.breakEvenResale, cents(298'068'05));
    EXPECT_NEAR(out.resaleDropPercent.value(), 100 * 20'396.71 / 297'600, 1e-9);
}

// 70 % of 320,000 - 60,000: common practice, no source.
TEST(Deal, RuleOfThumbBesideTheWorkedOffer) {
    Job job = wholeJob();
    EXPECT_FALSE(worked(job, sixtyThousand()).topOffer);
    job.wantedProfit = Money::of(25'000);
    DealFigures figures = sixtyThousand();
    figures.contingencyLeft = Money::of(5'000);
    const Deal out = worked(job, figures);
    EXPECT_EQ(out.ruleOfThumbOffer, Money::of(164'000));
    // 320,000 - 22,400 - 4,000 - 3,700 - 1,300 - 7,000 - 1,203.29 - 60,000 - 5,000 - 25,000
    EXPECT_EQ(out.topOffer, cents(190'396'71));
}

// At the break-even resale value the profit is nothing, to the cent that a resale value has.
TEST(Deal, BreakEvenEarnsNothing) {
    Job job = wholeJob();
    job.resaleLikely = worked(job, sixtyThousand()).breakEvenResale;
    const Money profit = worked(job, sixtyThousand()).profit.value();
    EXPECT_LE(profit, cents(1));
    EXPECT_GE(profit, cents(-1));
}

TEST(Deal, CrossingTheTermEnd) {
    Job job = wholeJob();
    job.termEndOn = day("2026-04-21");  // ten days before the sale
    const Deal late = worked(job, sixtyThousand());
    EXPECT_EQ(late.daysToTermEnd, -10);
    EXPECT_EQ(late.extensionFee, Money::of(2'100));  // 1 % of 210,000
    EXPECT_EQ(late.extensionPerDay, Money::of(70));  // over 30 days at least
    EXPECT_EQ(late.profit, cents(18'296'71));        // 20,396.71 - 2,100
    job.termEndOn = day("2026-05-01");               // the very day of the sale
    EXPECT_EQ(worked(job, sixtyThousand()).extensionFee, Money{});
    job.termEndOn = day("2026-03-02");  // 60 days before it: 2,100 / 60
    EXPECT_EQ(worked(job, sixtyThousand()).extensionPerDay, Money::of(35));
}

// Regulation Z, 12 CFR 1026 App. D: dates of draws unknown, half the commitment is charged: 50,000
// at 10.5 % for 5 months, 1,093.75.
TEST(Deal, HalfOfTheCommitmentWhileDrawsAreUnknown) {
    Job job;
    job.purchasedOn = day("2026-01-01");
    job.workLoan = Money::of(50'000);
    job.loanRate = Percent::fromBasisPoints(1050);
    job.interestBasis = InterestBasis::Thirty360;
    DealFigures figures;
    figures.saleOn = day("2026-06-01");
    EXPECT_EQ(worked(job, figures).interest, cents(1'093'75));
    job.interestOn = ChargedOn::Whole;
    EXPECT_EQ(worked(job, figures).interest, cents(2'187'50));
}

// By hand at 7.3 % on actual/365, so that 10,000 cost 2.00 a day: 10,000 for 89 days 178, 20,000
// for 61 days 244, half of the 10,000 left for 51 days from the day of looking 51.
TEST(Deal, DrawsChargedFromTheirDays) {
    Job job;
    job.purchasedOn = day("2026-01-01");
    job.workLoan = Money::of(40'000);
    job.loanRate = Percent::fromBasisPoints(730);
    DealFigures figures;
    figures.saleOn = day("2026-05-01");
    figures.workDraws = {{day("2026-03-01"), Money::of(20'000)},
                         {day("2026-02-01"), Money::of(10'000)}};
    figures.asOf = day("2026-03-11");
    EXPECT_EQ(worked(job, figures).interest, Money::of(473));
    figures.asOf.reset();  // from the last draw then: 61 days of half of 10,000
    EXPECT_EQ(worked(job, figures).interest, Money::of(483));
    figures.workDraws.push_back({day("2026-04-01"), Money::of(10'000)});  // 30 days: 60
    EXPECT_EQ(worked(job, figures).interest, Money::of(482));
}

TEST(Deal, TheForecastFinishWinsOverTheTarget) {
    DealFigures figures = sixtyThousand();
    figures.willFinishOn = day("2026-04-11");
    EXPECT_EQ(worked(wholeJob(), figures).saleOn, day("2026-05-11"));
    figures.saleOn = day("2026-06-01");
    EXPECT_EQ(worked(wholeJob(), figures).saleOn, day("2026-06-01"));
}

TEST(Deal, AnEmptyJobNamesWhatItNeeds) {
    const Deal out = worked(Job{}, DealFigures{});
    EXPECT_EQ(headings(out.missing),
              (std::vector<std::string>{"Purchase price", "Resale", "Forecast of the work"}));
    EXPECT_EQ(headings(out.leftOut),
              (std::vector<std::string>{"Buying costs", "Selling costs", "Commission",
                                        "Holding costs", "Purchased", "Finish"}));
    EXPECT_FALSE(out.profit || out.allIn || out.breakEvenResale || out.cashAtClosing ||
                 out.marginPercent || out.saleOn);
}

// A cash purchase needs nothing of a loan; a loan needs its terms.
TEST(Deal, LoanTermsAreAskedForOnlyWithALoan) {
    Job job = wholeJob();
    job.loanRate.reset();
    job.purchasePoints.reset();
    job.workPoints.reset();
    job.lenderFees.reset();
    job.termEndOn.reset();
    EXPECT_EQ(headings(worked(job, sixtyThousand()).leftOut),
              (std::vector<std::string>{"Loan rate", "Points on the purchase loan",
                                        "Points on the work loan", "Lender fees", "Term end"}));
    job.purchaseLoan.reset();
    job.workLoan.reset();
    const Deal cash = worked(job, sixtyThousand());
    EXPECT_TRUE(cash.leftOut.empty());
    EXPECT_EQ(cash.interest, Money{});
    EXPECT_EQ(cash.cashAtClosing, Money::of(204'000));
}

// Every field that is named to be set is one that can be set, under its own heading.
TEST(Deal, NamedFieldsAreInTheCatalog) {
    Job loanOnly;
    loanOnly.purchaseLoan = Money::of(1);
    loanOnly.workLoan = Money::of(1);
    Job late = wholeJob();
    late.extensionFee.reset();
    late.resaleDays.reset();
    late.termEndOn = day("2026-02-01");
    int named = 0;
    for (const Job& job : {loanOnly, late}) {
        const Deal out = worked(job, DealFigures{});
        for (const auto* list : {&out.missing, &out.leftOut}) {
            for (const AbsentInput& input : *list) {
                if (input.field.empty()) {
                    continue;
                }
                const auto* field = ledgerboard::model::fieldNamed(Kind::Job, input.field);
                ASSERT_NE(field, nullptr) << input.field;
                EXPECT_EQ(field->name, input.field);
                EXPECT_EQ(field->heading, input.heading);
                ++named;
            }
        }
    }
    EXPECT_EQ(named, 15);  // 2 + 6 + 5, and days to resale and extension fee
}

TEST(Deal, ContradictionsNameTheirField) {
    const auto message = [](auto change) {
        Job job = wholeJob();
        DealFigures figures = sixtyThousand();
        change(job, figures);
        const auto out = deal(job, figures);
        return out.ok() ? std::string("accepted") : out.error().message;
    };
    using J = Job&;
    using F = DealFigures&;
    const auto has = [](const std::string& text, const char* part) {
        return text.find(part) != std::string::npos;
    };
    EXPECT_TRUE(has(message([](J j, F) { j.purchasePrice = cents(-1); }), "Purchase price"));
    EXPECT_TRUE(has(message([](J j, F) { j.resaleLikely = cents(-1); }), "Resale"));
    EXPECT_TRUE(has(message([](J j, F) { j.purchaseLoan = cents(-1); }), "Purchase loan"));
    EXPECT_TRUE(has(message([](J j, F) { j.workLoan = cents(-1); }), "Work loan"));
    EXPECT_TRUE(has(message([](J j, F) { j.loanRate = Percent::of(-1); }), "Loan rate"));
    EXPECT_TRUE(has(message([](J j, F) { j.commission = Percent::of(-1); }), "Commission"));
    EXPECT_TRUE(has(message([](J j, F) { j.commission = Percent::of(98); }), "Commission"));
    EXPECT_TRUE(has(message([](J j, F) { j.holdingCosts[0].amount = cents(-1); }), "taxes"));
    EXPECT_TRUE(has(message([](J, F f) { f.work = cents(-1); }), "Forecast of the work"));
    EXPECT_TRUE(has(message([](J, F f) { f.saleOn = day("2025-12-31"); }), "Purchased"));
}

}  // namespace
