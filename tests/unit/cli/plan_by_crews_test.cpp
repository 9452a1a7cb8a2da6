// Protects `plan --crews`: what it tells an owner, as text and as JSON, and how it refuses. The
// days are counted by hand: work begins on Monday 1 June 2026.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sstream>

#include <nlohmann/json.hpp>

#include "tests/unit/cli/command_line.h"

namespace ledgerboard::cli {
namespace {

using testing::HasSubstr;
using tests::TestFolder;

class PlanByCrews : public testing::Test {
  protected:
    TestFolder folder_{"plan-by-crews"};
    std::string book_ = folder_.file("house.book");
    CommandLine line_{book_};

    void SetUp() override {
        ok({"start", "Test house", "--begin", "2026-06-01"});
        ok({"add", "space", "Space=Hall bath"});
        ok({"add", "space", "Space=Kitchen"});
        ok({"add", "crew", "Crew=Tile crew"});
        ok({"add", "crew", "Crew=Paint crew"});
    }

    std::string ok(const std::vector<std::string>& arguments) {
        const Answer answer = line_(arguments);
        EXPECT_EQ(answer.status, kDone) << answer.err;
        return answer.out;
    }

    void item(const std::string& space, const std::string& object, const std::string& days,
              const std::string& crew) {
        ok({"add", "scope", "Space=" + space, "Treatment=replace", "Object=" + object,
            "Lump sum=100", "Days=" + days, "Crew=" + crew});
    }

    // What is printed, each run of spaces and line breaks as one space.
    std::string plan() {
        std::istringstream words(ok({"--as-of", "2026-05-15", "plan", "--crews"}));
        std::string text;
        for (std::string word; words >> word;) {
            text += (text.empty() ? "" : " ") + word;
        }
        return text;
    }

    void refuses(const std::vector<std::string>& arguments, int status, const char* says) {
        const Answer answer = line_(arguments);
        EXPECT_EQ(answer.status, status);
        EXPECT_EQ(answer.out, "");
        EXPECT_THAT(answer.err, HasSubstr(says));
    }
};

TEST_F(PlanByCrews, SaysWhatToEnterWhereNothingHasDays) {
    EXPECT_THAT(plan(), HasSubstr("'ledgerboard set ITEM Days 3' enters them"));
}

// 4 + 2 days of one crew: Monday the 1st to Monday the 8th; without looking at crews, the 4th.
TEST_F(PlanByCrews, OneCrewInTwoPlaces) {
    item("Hall bath", "tile", "4", "Tile crew");
    item("Kitchen", "backsplash", "2", "Tile crew");
    const std::string text = plan();
    EXPECT_THAT(text, HasSubstr("Will finish Monday 8 June 2026"));
    EXPECT_THAT(text, HasSubstr("2 working days later than"));
    EXPECT_THAT(text, HasSubstr("proven the shortest, 6 working days"));
    EXPECT_THAT(text, HasSubstr("Tile crew in 2 places at once, and can be in 1, Mon 1 Jun to"));
    EXPECT_THAT(text, HasSubstr("1 crew without a capacity"));  // only those with work
    const auto json = nlohmann::json::parse(
        ok({"--json", "--as-of", "2026-05-15", "plan", "--crews", "--seed", "7"}));
    EXPECT_EQ(json.at("will_finish_on"), "2026-06-08");
    EXPECT_EQ(json.at("without_crews_on"), "2026-06-04");
    EXPECT_EQ(json.at("working_days_later"), 2);
    EXPECT_EQ(json.at("days"), 6);
    EXPECT_EQ(json.at("lower_bound"), 6);
    EXPECT_EQ(json.at("proven_shortest"), true);
    EXPECT_EQ(json.at("items").size(), 2U);
    EXPECT_EQ(json.at("stacked").at(0).at("crew"), "Tile crew");
    EXPECT_EQ(json.at("stacked").at(0).at("from"), "2026-06-01");
    EXPECT_EQ(json.at("stacked").at(0).at("to"), "2026-06-02");
}

TEST_F(PlanByCrews, ASpaceOfOneCrew) {
    ok({"set", "Hall bath", "One crew at a time", "yes"});
    item("Hall bath", "tile", "4", "Tile crew");
    item("Hall bath", "walls", "1", "Paint crew");
    const std::string text = plan();
    EXPECT_THAT(text, HasSubstr("Will finish Friday 5 June 2026"));
    EXPECT_THAT(text, HasSubstr("Hall bath by 2 crews at once, and takes one, Mon 1 Jun: Hall"));
    EXPECT_THAT(text, HasSubstr("1 space takes one crew at a time"));
}

TEST_F(PlanByCrews, NothingWantedTwice) {
    item("Hall bath", "tile", "4", "Tile crew");
    item("Hall bath", "walls", "1", "Paint crew");
    const std::string text = plan();
    EXPECT_THAT(text, HasSubstr("no later than a plan that does not look at crews"));
    EXPECT_THAT(text, HasSubstr("No crew or space would be wanted twice"));
}

// 4 + 2 days of one crew from Monday the 1st: the other may begin on the 3rd or on the 5th.
TEST_F(PlanByCrews, KeepsItsDatesAsOneAction) {
    item("Hall bath", "tile", "4", "Tile crew");
    item("Kitchen", "tile", "2", "Tile crew");
    const std::vector<std::string> keep = {"--as-of", "2026-05-15", "plan", "--crews", "--keep"};
    EXPECT_THAT(ok(keep), HasSubstr("Kept as the planned dates of 2 items"));
    EXPECT_THAT(ok(keep), HasSubstr("are these already"));
    const auto items = nlohmann::json::parse(ok({"--json", "list", "scope"})).at("items");
    std::vector<std::string> finishes;
    for (const auto& item : items) {
        finishes.push_back(item.at("planned_finish_on"));
    }
    EXPECT_THAT(finishes, testing::Contains("2026-06-08"));  // one of them after the other
    EXPECT_THAT(ok({"undo"}), HasSubstr("keep the plan of 2026-05-15"));
}

TEST_F(PlanByCrews, Refusals) {
    item("Hall bath", "tile", "4", "Tile crew");
    refuses({"plan", "--tries", "5"}, kWrongUse, "say --crews as well");
    refuses({"plan", "--crews", "--tries", "0"}, kWrongUse, "--tries is 0");
    refuses({"plan", "--crews", "--tries", "many"}, kWrongUse, "--tries");
    refuses({"plan", "--crews", "--seconds", "-1"}, kWrongUse, "--seconds must be more than 0");
    refuses({"plan", "--crews", "--seconds", "nan"}, kWrongUse, "--seconds");
    refuses({"plan", "--crews", "--seed", "-4"}, kWrongUse, "--seed is -4");
    refuses({"plan", "--crews", "--seconds", "1", "--tries", "5"}, kWrongUse, "one of them");
    refuses({"plan", "--crews", "--link"}, kWrongUse, "say --link without it");
    refuses({"--as-of", "2026-05-15", "--known-at", "2026-05-01", "plan", "--crews", "--keep"},
            kWrongUse, "plan --keep");
    ok({"set", "Tile crew", "Capacity", "0"});
    refuses({"plan", "--crews"}, kCannotBeMet, "\"Tile crew\" has work left and a capacity of 0");
}

}  // namespace
}  // namespace ledgerboard::cli
