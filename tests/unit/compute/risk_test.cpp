// Protects the simulation of cost, finish and profit: against closed forms within three standard
// errors, and by what must hold exactly (no spread where there is none, one seed one result).
#include "core/compute/risk.h"

#include <cmath>
#include <functional>
#include <gtest/gtest.h>

#include "core/model/overflow.h"

namespace {

using namespace ledgerboard;
using namespace ledgerboard::compute;

constexpr Spread kRoof{90'000, 100'000, 160'000};
constexpr Spread kTile{20'000, 50'000, 60'000};
constexpr Spread kNone{};

struct Moments {
    double mean = 0;
    double variance = 0;
};

// alpha = 1 + 4 m, beta = 5 - 4 m: mean (low + 4 likely + high) / 6, variance alpha beta / (36 x 7)
// of the squared width.
Moments betaOf(const Spread& spread) {
    const auto width = static_cast<double>(spread.high - spread.low);
    const double m = static_cast<double>(spread.likely - spread.low) / width;
    return {static_cast<double>(spread.low + 4 * spread.likely + spread.high) / 6,
            (1 + 4 * m) * (5 - 4 * m) / 252 * width * width};
}

Moments triangularOf(const Spread& spread) {
    const auto a = static_cast<double>(spread.low);
    const auto m = static_cast<double>(spread.likely);
    const auto b = static_cast<double>(spread.high);
    return {(a + m + b) / 3, (a * a + m * m + b * b - a * m - a * b - m * b) / 18};
}

// Three standard errors: of the mean by the variance expected, of the variance by the fourth moment
// of the samples.
void expectMoments(const std::vector<std::int64_t>& samples, const Moments& expected) {
    const auto n = static_cast<double>(samples.size());
    const Summary out = summaryOf(samples);
    EXPECT_NEAR(out.mean, expected.mean, 3 * std::sqrt(expected.variance / n));
    double fourth = 0;
    for (const std::int64_t sample : samples) {
        fourth += std::pow(static_cast<double>(sample) - out.mean, 4) / n;
    }
    const double variance = out.deviation * out.deviation;
    EXPECT_NEAR(variance, expected.variance, 3 * std::sqrt((fourth - variance * variance) / n));
}

RiskInput inputOf(std::vector<RiskItem> items, double correlation = 0) {
    RiskInput input;
    input.items = std::move(items);
    input.correlation = correlation;
    input.trials = 40'000;
    input.seed = 20'260'406;
    return input;
}

// The integral over chances 0 to 1, by midpoints.
double overChances(const std::function<double(double)>& of) {
    constexpr int kSteps = 20'000;
    double sum = 0;
    for (int k = 0; k < kSteps; ++k) {
        sum += of((k + 0.5) / kSteps);
    }
    return sum / kSteps;
}

double triangularAt(const Spread& spread, double chance) {
    const auto a = static_cast<double>(spread.low);
    const auto m = static_cast<double>(spread.likely);
    const auto b = static_cast<double>(spread.high);
    return chance < (m - a) / (b - a) ? a + std::sqrt(chance * (b - a) * (m - a))
                                      : b - std::sqrt((1 - chance) * (b - a) * (b - m));
}

TEST(Risk, OneItemHasTheMomentsOfItsShape) {
    for (const Spread& spread : {kRoof, kTile, Spread{0, 0, 5000}, Spread{0, 5000, 5000}}) {
        RiskInput input = inputOf({{spread, kNone, kNone}});
        expectMoments(simulateRisk(input).costs, betaOf(spread));
        input.shape = SpreadShape::Triangular;
        expectMoments(simulateRisk(input).costs, triangularOf(spread));
    }
}

TEST(Risk, SamplesStayWithinLowAndHigh) {
    const RiskResult out = simulateRisk(inputOf({{kTile, kRoof, kNone}}, 0.5));
    EXPECT_GE(out.cost.least, kTile.low);
    EXPECT_LE(out.cost.most, kTile.high);
    EXPECT_GE(out.finish.least, kRoof.low);
    EXPECT_LE(out.finish.most, kRoof.high);
}

TEST(Risk, IndependentItemsAddTheirMeansAndVariances) {
    std::vector<RiskItem> items(30, {kTile, kNone, kNone});
    items.push_back({kRoof, kNone, kNone});
    RiskInput input = inputOf(std::move(items));
    input.certainCost = 777;
    expectMoments(simulateRisk(input).costs,
                  {777 + 30 * betaOf(kTile).mean + betaOf(kRoof).mean,
                   30 * betaOf(kTile).variance + betaOf(kRoof).variance});
}

// Places of two items agree with chance correlation and are independent else, so the covariance is
// correlation x that of the two at one place; for one shape that is the variance itself.
TEST(Risk, CorrelationMakesExactlyItsShareOfCovariance) {
    const Moments one = betaOf(kTile);
    for (const double correlation : {0.0, 0.2, 0.5, 1.0}) {
        const RiskInput input =
            inputOf({{kTile, kNone, kNone}, {kTile, kNone, kNone}}, correlation);
        expectMoments(simulateRisk(input).costs,
                      {2 * one.mean, 2 * one.variance * (1 + correlation)});
    }
    RiskInput input = inputOf({{kTile, kNone, kNone}, {kRoof, kNone, kNone}}, 0.4);
    input.shape = SpreadShape::Triangular;
    const Moments tile = triangularOf(kTile);
    const Moments roof = triangularOf(kRoof);
    const double atOnePlace =
        overChances([](double u) { return triangularAt(kTile, u) * triangularAt(kRoof, u); }) -
        tile.mean * roof.mean;
    expectMoments(simulateRisk(input).costs,
                  {tile.mean + roof.mean, tile.variance + roof.variance + 2 * 0.4 * atOnePlace});
}

// chance x mean, and chance x mean square less that squared.
TEST(Risk, UnknownsCostTheirChance) {
    RiskInput input = inputOf({});
    input.unknowns.push_back({0.3, kRoof, kNone, std::nullopt});
    const Moments struck = betaOf(kRoof);
    const double mean = 0.3 * struck.mean;
    expectMoments(simulateRisk(input).costs,
                  {mean, 0.3 * (struck.variance + struck.mean * struck.mean) - mean * mean});
}

TEST(Risk, SureAndImpossibleUnknowns) {
    RiskInput input = inputOf({{kNone, Spread::certain(1000), kNone}});
    input.unknowns.push_back({1, Spread::certain(50), Spread::certain(300), 0});
    input.unknowns.push_back({1, Spread::certain(-20), Spread::certain(70), std::nullopt});
    input.unknowns.push_back({0, Spread::certain(9999), Spread::certain(9999), 0});
    const RiskResult out = simulateRisk(input);
    EXPECT_EQ(out.cost.least, 30);
    EXPECT_EQ(out.cost.most, 30);
    EXPECT_EQ(out.finish.least, 1370);
    EXPECT_EQ(out.finish.most, 1370);
}

// What an unknown adds in one trial is gone in the next: half of the trials take 1,000, half 1,300.
TEST(Risk, AnUnknownLengthensItsTrialAlone) {
    RiskInput input = inputOf({{kNone, Spread::certain(1000), kNone}});
    input.unknowns.push_back({0.5, kNone, Spread::certain(300), 0});
    const RiskResult out = simulateRisk(input);
    EXPECT_EQ(out.finish.least, 1000);
    EXPECT_EQ(out.finish.most, 1300);
    EXPECT_NEAR(out.finish.mean, 1150, 3 * 150 / std::sqrt(40'000.0));
}

TEST(Risk, AChainTakesTheSumOfItsItems) {
    RiskInput input =
        inputOf({{kNone, kTile, kNone}, {kNone, kRoof, kNone}, {kNone, kTile, kNone}});
    input.precedences = {{0, 1, model::LinkKind::FinishToStart, 500},
                         {1, 2, model::LinkKind::FinishToStart, 0}};
    expectMoments(simulateRisk(input).finishes,
                  {500 + 2 * betaOf(kTile).mean + betaOf(kRoof).mean,
                   2 * betaOf(kTile).variance + betaOf(kRoof).variance});
}

// The later of two independent ones stands at place max(u, v), whose density is 2 u.
TEST(Risk, TwoAtOnceFinishWithTheLater) {
    RiskInput input = inputOf({{kNone, kTile, kNone}, {kNone, kTile, kNone}});
    input.shape = SpreadShape::Triangular;
    const double mean = overChances([](double u) { return 2 * u * triangularAt(kTile, u); });
    const double square = overChances(
        [](double u) { return 2 * u * triangularAt(kTile, u) * triangularAt(kTile, u); });
    const RiskResult out = simulateRisk(input);
    expectMoments(out.finishes, {mean, square - mean * mean});
    EXPECT_GT(out.finish.mean, triangularOf(kTile).mean);
}

TEST(Risk, NothingStartsBeforeItIsReady) {
    RiskInput input = inputOf({{kNone, Spread::certain(2000), kTile}});
    expectMoments(simulateRisk(input).finishes,
                  {betaOf(kTile).mean + 2000, betaOf(kTile).variance});
}

TEST(Risk, WithoutSpreadEveryTrialIsTheSame) {
    RiskInput input = inputOf({{Spread::certain(1250), Spread::certain(3000), kNone},
                               {Spread::certain(750), Spread::certain(1000), kNone}},
                              0.5);
    input.precedences = {{0, 1, model::LinkKind::FinishToStart, 0}};
    input.profit = RiskProfit{Spread::certain(10'000), {}};
    const RiskResult out = simulateRisk(input);
    for (const Summary& one : {out.cost, out.finish, out.profit}) {
        EXPECT_EQ(one.deviation, 0);
        EXPECT_EQ(one.least, one.most);
    }
    EXPECT_EQ(out.cost.p80, 2000);
    EXPECT_EQ(out.finish.p80, 4000);
    EXPECT_EQ(out.profit.p80, 8000);
    EXPECT_TRUE(out.costDrivers.empty());
    EXPECT_TRUE(out.finishDrivers.empty());
    EXPECT_TRUE(out.profitDrivers.empty());
}

TEST(Risk, NothingAtAll) {
    const RiskResult out = simulateRisk(inputOf({}));
    EXPECT_EQ(out.cost.most, 0);
    EXPECT_EQ(out.finish.most, 0);
    EXPECT_TRUE(out.profits.empty());
}

// Income less cost less 3 a unit of time.
TEST(Risk, ProfitFollowsCostFinishAndIncome) {
    RiskInput input = inputOf({{kTile, kRoof, kNone}});
    input.profit = RiskProfit{kRoof, [](std::int64_t finish) { return 3 * finish; }};
    const RiskResult out = simulateRisk(input);
    ASSERT_EQ(out.profits.size(), out.costs.size());
    expectMoments(out.profits,
                  {betaOf(kRoof).mean - betaOf(kTile).mean - 3 * betaOf(kRoof).mean,
                   betaOf(kRoof).variance + betaOf(kTile).variance + 9 * betaOf(kRoof).variance});
}

TEST(Risk, OneSeedOneResult) {
    RiskInput input = inputOf({{kTile, kRoof, kNone}, {kRoof, kTile, kNone}}, 0.3);
    input.unknowns.push_back({0.2, kRoof, kTile, 1});
    input.trials = 500;
    const RiskResult first = simulateRisk(input);
    const RiskResult again = simulateRisk(input);
    EXPECT_EQ(first.costs, again.costs);
    EXPECT_EQ(first.finishes, again.finishes);
    input.seed += 1;
    EXPECT_NE(simulateRisk(input).costs, first.costs);
    // More trials begin with the same ones.
    input.seed -= 1;
    input.trials = 600;
    const RiskResult longer = simulateRisk(input);
    EXPECT_TRUE(std::equal(first.costs.begin(), first.costs.end(), longer.costs.begin()));
}

// The error of the mean stays within three standard errors while those shrink by ten each time.
TEST(Risk, MoreTrialsComeCloser) {
    for (const std::size_t trials : {100U, 10'000U, 400'000U}) {
        RiskInput input = inputOf({{kRoof, kNone, kNone}});
        input.trials = trials;
        const Moments exact = betaOf(kRoof);
        EXPECT_NEAR(simulateRisk(input).cost.mean, exact.mean,
                    3 * std::sqrt(exact.variance / static_cast<double>(trials)))
            << trials;
    }
}

// Of two independent near-normal items, one twice as wide: correlations with the sum 2/sqrt(5) and
// 1/sqrt(5); as ranks (6 / pi) asin(r / 2), for normal ones .885 and .431. Shares by their squares.
TEST(Risk, DriversByRankCorrelation) {
    const Spread wide{0, 2000, 4000};
    const Spread narrow{0, 1000, 2000};
    const RiskResult out = simulateRisk(
        inputOf({{narrow, kNone, kNone}, {Spread::certain(5), kNone, kNone}, {wide, wide, kNone}}));
    ASSERT_EQ(out.costDrivers.size(), 2U);
    EXPECT_EQ(out.costDrivers[0].index, 2U);
    EXPECT_EQ(out.costDrivers[1].index, 0U);
    EXPECT_NEAR(out.costDrivers[0].rankCorrelation, 0.885, 0.03);
    EXPECT_NEAR(out.costDrivers[1].rankCorrelation, 0.431, 0.05);
    EXPECT_NEAR(out.costDrivers[0].sharePercent,
                100 * 0.885 * 0.885 / (0.885 * 0.885 + 0.431 * 0.431), 4);
    ASSERT_EQ(out.finishDrivers.size(), 1U);
    EXPECT_EQ(out.finishDrivers[0].kind, DriverKind::ItemDuration);
    EXPECT_GT(out.finishDrivers[0].rankCorrelation, 0.999);
    EXPECT_DOUBLE_EQ(out.finishDrivers[0].sharePercent, 100);
}

// Whatever the common factor, what each does by itself stays 4 : 1 in squares; and what is never
// last drives no finish, though it goes along with it.
TEST(Risk, SharesAreWithoutTheCommonFactor) {
    const Spread wide{0, 2000, 4000};
    const Spread narrow{0, 1000, 2000};
    for (const double correlation : {0.0, 0.2, 0.5}) {
        const RiskResult out = simulateRisk(inputOf(
            {{narrow, {0, 50, 100}, kNone}, {wide, {900, 1000, 1900}, kNone}}, correlation));
        ASSERT_EQ(out.costDrivers.size(), 2U);
        EXPECT_EQ(out.costDrivers[0].index, 1U);
        EXPECT_NEAR(out.costDrivers[0].sharePercent, 80, 6) << correlation;
        ASSERT_EQ(out.finishDrivers.size(), 1U) << correlation;
        EXPECT_EQ(out.finishDrivers[0].index, 1U);
    }
}

// Costs take from a profit, income adds to it.
TEST(Risk, DriversOfProfitHaveTheirSign) {
    RiskInput input = inputOf({{kRoof, kNone, kNone}});
    input.profit = RiskProfit{kRoof, {}};
    const RiskResult out = simulateRisk(input);
    ASSERT_EQ(out.profitDrivers.size(), 2U);
    for (const Driver& driver : out.profitDrivers) {
        EXPECT_EQ(driver.kind == DriverKind::Income, driver.rankCorrelation > 0);
    }
}

TEST(Risk, AnUnknownDrivesWhatItStrikes) {
    RiskInput input = inputOf({{{9990, 10'000, 10'010}, {100, 110, 120}, kNone}});
    input.unknowns.push_back({0.5, Spread::certain(9000), Spread::certain(80), 0});
    const RiskResult out = simulateRisk(input);
    ASSERT_FALSE(out.costDrivers.empty());
    EXPECT_EQ(out.costDrivers[0].kind, DriverKind::Unknown);
    ASSERT_FALSE(out.finishDrivers.empty());
    EXPECT_EQ(out.finishDrivers[0].kind, DriverKind::Unknown);
}

TEST(Risk, TotalsThatDoNotFitAreAnError) {
    constexpr std::int64_t kHuge = std::numeric_limits<std::int64_t>::max() / 2;
    const RiskInput input = inputOf({{{0, 1, kHuge}, kNone, kNone},
                                     {{0, 1, kHuge}, kNone, kNone},
                                     {{0, 1, kHuge}, kNone, kNone}});
    EXPECT_THROW((void)simulateRisk(input), model::OverflowError);
}

}  // namespace
