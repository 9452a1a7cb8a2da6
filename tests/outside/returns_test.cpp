// Protects returns of dated and of even flows against published examples, through `work return`,
// and that what has no single return says so.
// [S]: the number stands in the source; [C]: worked out by hand.
#include <gtest/gtest.h>
#include <string>

#include "tests/outside/worked.h"

namespace {

using ledgerboard::outside::asPrinted;
using ledgerboard::outside::expectExact;
using ledgerboard::outside::figure;
using ledgerboard::outside::worked;

constexpr const char* kDated =
    R"({"flows":[{"date":"2008-01-01","amount":-10000},{"date":"2008-03-01","amount":2750},)"
    R"({"date":"2008-10-30","amount":4250},{"date":"2009-02-15","amount":3250},)"
    R"({"date":"2009-04-01","amount":2750}],"value_at":9})";

// Spreadsheet function references for dated flows [S]: .373362535, and 2,086.6476 at 9 %.
TEST(ReturnsOutside, DatedFlows) {
    const auto out = worked("return", kDated);
    EXPECT_EQ(asPrinted(figure(out, "/annual_percent") / 100, 7), "0.3733625");
    EXPECT_EQ(asPrinted(figure(out, "/value"), 4), "2086.6476");
    EXPECT_TRUE(out.at("warnings").empty());
}

// A published example of even periods [S]: .2809484211599611.
TEST(ReturnsOutside, EvenPeriods) {
    expectExact(worked("return", R"({"periods":[-100,39,59,55,20]})"), "/annual_percent",
                28.09484211599611);
}

// By hand [C]: 100 x - 230 + 132 / x = 0 with x = 1 + r is 100 x^2 - 230 x + 132 =
// 100 (x - 1.1)(x - 1.2): 10 % and 20 %.
TEST(ReturnsOutside, TwoRootsAreBothNamed) {
    const auto out = worked("return", R"({"periods":[100,-230,132]})");
    expectExact(out, "/annual_percent", 10);
    ASSERT_EQ(out.at("warnings").size(), 1U);
    const auto text = out.at("warnings")[0].get<std::string>();
    EXPECT_NE(text.find("10 %"), std::string::npos) << text;
    EXPECT_NE(text.find("20 %"), std::string::npos) << text;
}

// By hand [C]: (x - 1.1)(x - 1.2)(x - 1.5) = x^3 - 3.8 x^2 + 4.77 x - 1.98, and one that only
// touches nothing: 100 (x - 1.25)^2 = 100 x^2 - 250 x + 156.25.
TEST(ReturnsOutside, ThreeRootsAndADoubleOne) {
    const auto three = worked("return", R"({"periods":[-1000,3800,-4770,1980]})");
    const auto text = three.at("warnings")[0].get<std::string>();
    EXPECT_NE(text.find("10 %, 20 % and 50 %"), std::string::npos) << text;
    const auto touching = worked("return", R"({"periods":[100,-250,156.25]})");
    EXPECT_NEAR(figure(touching, "/annual_percent"), 25, 1e-6);
    EXPECT_TRUE(touching.at("warnings").empty());
}

// Nothing that came back in full: a loss is a return below 0. By hand [C]: -100 and 81 two years
// later: (81/100)^(1/2) - 1 = -10 %.
TEST(ReturnsOutside, ALossIsAReturnBelowNothing) {
    expectExact(worked("return", R"({"periods":[-100,0,81]})"), "/annual_percent", -10);
}

std::string refused(const char* input) {
    const auto out = ledgerboard::work::runWork("return", nlohmann::json::parse(input));
    return out.ok() ? "accepted: " + out.value().dump() : out.error().message;
}

TEST(ReturnsOutside, WhatHasNoReturnIsAnError) {
    EXPECT_NE(refused(R"({"periods":[-100,-20]})").find("no sign change"), std::string::npos);
    EXPECT_NE(refused(R"({"periods":[0,0]})").find("no sign change"), std::string::npos);
    EXPECT_NE(refused(R"({"flows":[{"date":"2026-01-01","amount":-5},)"
                      R"({"date":"2026-01-01","amount":7}]})")
                  .find("no sign change"),
              std::string::npos);
    // x^2 - x + 1 has no real root.
    EXPECT_NE(refused(R"({"periods":[100,-100,100]})").find("no yearly rate"), std::string::npos);
}

}  // namespace
