// Protects the spread of cost, days and profit, through `work risk`: closed forms within three
// standard errors, and a published network that simulation must not finish sooner than.
#include <cmath>
#include <gtest/gtest.h>
#include <string>

#include "tests/outside/worked.h"

namespace {

using ledgerboard::outside::expectExact;
using ledgerboard::outside::figure;
using ledgerboard::outside::worked;
using nlohmann::json;

constexpr int kTrials = 20'000;

json risk(const std::string& rest) {
    return worked("risk", R"({"trials":20000,"seed":20260406,"correlation":0,)" + rest + "}");
}

// `kurtosis`, the fourth moment over the variance squared, is at most 4.2 for the shapes here
// (beta 1, 5) and 3 for a normal one.
void expectMoments(const json& out, const std::string& of, double mean, double variance,
                   double kurtosis = 4.2) {
    EXPECT_NEAR(figure(out, of + "/mean"), mean, 3 * std::sqrt(variance / kTrials)) << of;
    const double deviation = figure(out, of + "/deviation");
    EXPECT_NEAR(deviation * deviation / variance, 1, 3 * std::sqrt((kurtosis - 1) / kTrials)) << of;
}

// Mean (4 + 4 x 5 + 12) / 6 = 6. The mode stands at 1/8: alpha 1.5, beta 4.5; variance
// 1.5 x 4.5 / (36 x 7) x 64 = 12/7. (The PERT rule of thumb for it would be ((12 - 4)/6)^2 = 16/9.)
// Triangular: mean 21/3 = 7, variance (16 + 25 + 144 - 20 - 48 - 60) / 18 = 57/18.
TEST(RiskOutside, MeanAndVarianceOfOneItem) {
    const std::string item = R"("items":[{"id":"a","cost":{"low":4,"likely":5,"high":12},)"
                             R"("days":{"low":40,"likely":50,"high":120}}])";
    const json beta = risk(item);
    expectMoments(beta, "/cost", 6, 12.0 / 7);
    expectMoments(beta, "/days", 60, 1200.0 / 7);
    const json triangular = risk(item + R"(,"shape":"triangular")");
    expectMoments(triangular, "/cost", 7, 57.0 / 18);
}

// Forty items of 100, 100, 200 (alpha 1, beta 5): mean 40 x 700/6, variance
// 40 x 5/252 x 10,000; near normal, so the tenth and ninetieth percentiles lie 1.2816 deviations
// off and the eightieth .8416 above. Three standard errors of a percentile, sqrt(p (1 - p) / n)
// over the normal density there: .0363 deviations at 10 and 90, .0303 at 80; the skew of the sum,
// 1.18 / sqrt(40), moves them by up to skew x (z^2 - 1) / 6 = .02.
TEST(RiskOutside, ManyItemsAreNearNormal) {
    std::string items;
    for (int k = 0; k < 40; ++k) {
        items += std::string(k == 0 ? "" : ",") + R"({"id":")" + std::to_string(k) +
                 R"(","cost":{"low":100,"likely":100,"high":200}})";
    }
    const json out = risk(R"("items":[)" + items + "]");
    const double mean = 40 * 700.0 / 6;
    const double variance = 40 * 5.0 / 252 * 10'000;
    expectMoments(out, "/cost", mean, variance, 3.1);
    const double deviation = std::sqrt(variance);
    EXPECT_NEAR((figure(out, "/cost/p10") - mean) / deviation, -1.2816, 0.06);
    EXPECT_NEAR((figure(out, "/cost/p90") - mean) / deviation, 1.2816, 0.06);
    EXPECT_NEAR((figure(out, "/cost/p80") - mean) / deviation, 0.8416, 0.06);
    EXPECT_EQ(figure(out, "/likely/cost"), 4000);
    expectExact(out, "/contingency_80", figure(out, "/cost/p80") - 4000);
}

// 30 % of 2,000 and 10 % of 500 (mean 600/1 + 50): mean 650, variance .3 x .7 x 2,000^2 +
// .1 x .9 x 500^2. Days: 10 + .3 x 4 + .1 x 2 = 11.4, variance .21 x 16 + .09 x 4. Kurtosis of the
// larger one, .3: (1 - 3 x .21) / .21 = 1.76.
TEST(RiskOutside, UnknownsByChanceTimesCost) {
    const json out =
        risk(R"("items":[{"id":"a","cost":0,"days":10}],"unknowns":[)"
             R"({"chance":30,"cost":2000,"days":4,"item":"a"},{"chance":10,"cost":500,"days":2}])");
    expectMoments(out, "/cost", 650, 0.21 * 4e6 + 0.09 * 25e4);
    expectMoments(out, "/days", 11.4, 0.21 * 16 + 0.09 * 4);
}

// resale - fixed - cost - day_costs x days, all means known: 90 - 20 - 6 - 2 x 6 = 52; the cost and
// the days of an item err independently here: 12/7 + 4 x 12/7.
TEST(RiskOutside, Profit) {
    const json out =
        risk(R"("items":[{"id":"a","cost":{"low":4,"likely":5,"high":12},)"
             R"("days":{"low":4,"likely":5,"high":12}}],"resale":90,"fixed":20,"day_costs":2)");
    expectMoments(out, "/profit", 52, 5 * 12.0 / 7);
}

// Porta-Vac, An Introduction to Management Science, ch. 9, pp. 383-387 [S]: 17 weeks from the
// expected durations. The later of several paths is longer on average than the path of averages, so
// the mean of many trials is no less (and below the 20 weeks that the book finds 96.6 % likely).
TEST(RiskOutside, ANetworkTakesLongerThanItsExpectedPath) {
    const json out =
        risk(R"("items":[{"id":"A","days":{"low":4,"likely":5,"high":12}},)"
             R"({"id":"B","days":{"low":1,"likely":1.5,"high":5}},)"
             R"({"id":"C","days":{"low":2,"likely":3,"high":4},"after":["A"]},)"
             R"({"id":"D","days":{"low":3,"likely":4,"high":11},"after":["A"]},)"
             R"({"id":"E","days":{"low":2,"likely":3,"high":4},"after":["A"]},)"
             R"({"id":"F","days":{"low":1.5,"likely":2,"high":2.5},"after":["C"]},)"
             R"({"id":"G","days":{"low":1.5,"likely":3,"high":4.5},"after":["D"]},)"
             R"({"id":"H","days":{"low":2.5,"likely":3.5,"high":7.5},"after":["B","E"]},)"
             R"({"id":"I","days":{"low":1.5,"likely":2,"high":2.5},"after":["H"]},)"
             R"({"id":"J","days":{"low":1,"likely":2,"high":3},"after":["F","G","I"]}])");
    EXPECT_GE(figure(out, "/days/mean"), 17);
    EXPECT_LT(figure(out, "/days/mean"), 18);
    EXPECT_LT(figure(out, "/days/p90"), 20);
    // As likely: A 5, E 3, H 3.5, I 2, J 2.
    EXPECT_EQ(figure(out, "/likely/days"), 15.5);
    // A has by far the widest range and lies on every path.
    EXPECT_EQ(out.at("drivers").at("days").at(0).at("what"), "A");
}

}  // namespace
