// Protects the verb risk from end to end: what the page says of a job with and without what it
// needs, that it fits 80 columns, that one seed gives one page, and every wrong turn.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sstream>

#include <nlohmann/json.hpp>

#include "core/report/plain_text.h"

#include "tests/unit/cli/command_line.h"

namespace ledgerboard::cli {
namespace {

using nlohmann::json;
using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

class RiskTest : public testing::Test {
  protected:
    tests::TestFolder folder_{"risk"};
    CommandLine line_{folder_.file("house.book")};

    void SetUp() override {
        ok({"start", "Test house", "--built", "1996", "--finish", "2026-06-12"});
    }

    void addScope() {
        ok({"add", "space", "Space=Hall"});
        ok({"add", "scope", "Space=Hall", "Treatment=add", "Object=shelves", "Lump sum=4000",
            "Cost low=3500", "Cost high=6000", "Days=5", "Days low=4", "Days high=9"});
    }

    void addDeal() {
        ok({"set", "job", "Purchase price", "200000"});
        ok({"set", "job", "Purchased", "2026-04-01"});
        ok({"set", "job", "Resale", "250000"});
        ok({"set", "job", "Resale low", "240000"});
        ok({"set", "job", "Resale high", "255000"});
        ok({"set", "job", "Wanted profit", "30000"});
    }

    std::string ok(const std::vector<std::string>& arguments) {
        const Answer answer = line_(arguments);
        EXPECT_EQ(answer.status, kDone) << answer.err;
        EXPECT_EQ(answer.err, "");
        return answer.out;
    }

    std::string page() { return ok({"risk", "--as-of", "2026-05-15", "--trials", "500"}); }

    json asJson(std::vector<std::string> more = {}) {
        std::vector<std::string> arguments{"--json",     "risk",     "--as-of",
                                           "2026-05-15", "--trials", "500"};
        arguments.insert(arguments.end(), more.begin(), more.end());
        return json::parse(ok(arguments));
    }
};

TEST_F(RiskTest, WithoutScopeItSaysWhatToEnter) {
    EXPECT_THAT(page(), AllOf(HasSubstr("no scope yet"), HasSubstr("ledgerboard add scope")));
    EXPECT_TRUE(asJson().at("will_earn").is_null());
}

TEST_F(RiskTest, WithoutADealItTellsCostAndFinish) {
    addScope();
    EXPECT_THAT(page(),
                AllOf(HasSubstr("Will cost"), HasSubstr("Will finish"),
                      HasSubstr("No earnings can be told without: Purchase price, Resale"),
                      HasSubstr("ledgerboard set job \"Purchase price\""),
                      HasSubstr("ledgerboard add unknown"),
                      HasSubstr("to finish by Friday 12 June 2026"), Not(HasSubstr("Will earn"))));
}

TEST_F(RiskTest, TheWholePageFitsItsColumns) {
    addScope();
    addDeal();
    ok({"add", "unknown", "Unknown=rot under the floor, as far as nobody knows how far it goes",
        "Chance=30", "Cost=900", "Days=2", "Item=Hall/shelves"});
    const std::string out = page();
    EXPECT_THAT(out, AllOf(HasSubstr("Will earn"), HasSubstr("30,000 you want"),
                           HasSubstr("Contingency:"), HasSubstr("What drives the spread of"),
                           HasSubstr("Resale value"), HasSubstr("rot under the floor"),
                           HasSubstr("500 trials"), HasSubstr("1 unknown, each by its chance")));
    std::istringstream lines(out);
    for (std::string line; std::getline(lines, line);) {
        if (line.find("ledgerboard ") == std::string::npos) {
            EXPECT_LE(report::columnsOf(line), 80U) << line;
        }
        EXPECT_EQ(line.find("nan"), std::string::npos) << line;
    }
}

TEST_F(RiskTest, WhatIsFinishedIsCertain) {
    addScope();
    ok({"mark", "hall/shelves", "100", "--at", "2026-05-14"});
    EXPECT_THAT(page(), HasSubstr("Everything is finished"));
    EXPECT_EQ(asJson().at("will_cost").at("deviation"), "0.00");
}

TEST_F(RiskTest, JsonHasItsKeysAndMoneyAsText) {
    addScope();
    addDeal();
    const json out = asJson();
    for (const char* key :
         {"will_cost", "will_finish", "will_earn", "forecast", "contingency_for_80",
          "contingency_left", "chances", "drivers", "rests_on", "trials", "seed", "correlation"}) {
        EXPECT_TRUE(out.contains(key)) << key;
    }
    EXPECT_EQ(out.at("forecast").at("cost"), "4000.00");
    EXPECT_EQ(out.at("trials"), 500);
    EXPECT_TRUE(out.at("will_cost").at("p80").is_string());
    EXPECT_EQ(out.at("will_finish").at("p80").get<std::string>().size(), 10U);
    EXPECT_TRUE(out.at("chances").at("within_ceiling").is_null());
    EXPECT_TRUE(out.at("chances").at("by_target").is_number());
}

TEST_F(RiskTest, OneSeedOnePage) {
    addScope();
    EXPECT_EQ(asJson(), asJson());
    EXPECT_NE(asJson().at("will_cost"), asJson({"--seed", "2"}).at("will_cost"));
}

TEST_F(RiskTest, WrongUse) {
    const auto says = [&](const std::vector<std::string>& arguments) {
        const Answer answer = line_(arguments);
        EXPECT_EQ(answer.status, kWrongUse);
        EXPECT_EQ(answer.out, "");
        return answer.err;
    };
    EXPECT_THAT(says({"risk", "--trials", "0"}), HasSubstr("--trials is 0"));
    EXPECT_THAT(says({"risk", "--trials", "1000001"}), HasSubstr("--trials is 1000001"));
    EXPECT_THAT(says({"risk", "--trials", "many"}), HasSubstr("--trials"));
    EXPECT_THAT(says({"risk", "--seed", "-4"}), HasSubstr("--seed is -4"));
    EXPECT_THAT(says({"risk", "--seed", "1.5"}), HasSubstr("--seed"));
    EXPECT_THAT(says({"risk", "kitchen"}), HasSubstr("--help"));
}

}  // namespace
}  // namespace ledgerboard::cli
