// Protects the verb plan: what it shows and writes agree with days counted by hand, kept dates and
// links come and go as one action each, and links that would close a loop are refused.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "core/report/plain_text.h"

#include "tests/unit/cli/command_line.h"

namespace ledgerboard::cli {
namespace {

using nlohmann::json;
using testing::HasSubstr;
using testing::Not;
using tests::TestFolder;

// Tile 2 days, vanity 1 after a day's wait, cabinets 3; as of Friday 22 May 2026, so that Monday 25
// May is the first day. Tile Mon and Tue; vanity Thu; cabinets Mon to Wed, with a day of float.
class PlanVerb : public testing::Test {
  protected:
    void SetUp() override {
        text({"start", "Test house", "--finish", "2026-05-27"});
        text({"add", "space", "Space=Bath"});
        text({"add", "space", "Space=Kitchen"});
    }

    void addItems() {
        text({"add", "scope", "Space=Bath", "Treatment=replace", "Object=tile", "Days=2"});
        text({"add", "scope", "Space=Bath", "Treatment=replace", "Object=vanity", "Days=1"});
        text({"add", "scope", "Space=Kitchen", "Treatment=replace", "Object=cabinets", "Days=3"});
    }

    void link() { text({"add", "link", "From=bath/tile", "To=bath/vanity", "Lag=1"}); }

    std::string text(const std::vector<std::string>& arguments) {
        const Answer answer = line_(arguments);
        EXPECT_EQ(answer.status, kDone) << answer.err;
        return answer.out;
    }

    std::string plan() { return text({"plan", "--as-of", "2026-05-22"}); }

    json document() {
        return json::parse(text({"--json", "plan", "--as-of", "2026-05-22"}), nullptr, false);
    }

    TestFolder folder_{"plan"};
    CommandLine line_{folder_.file("house.book")};
};

TEST_F(PlanVerb, SaysWhatToEnterWhereThereIsNothingToPlan) {
    EXPECT_THAT(plan(), HasSubstr("No items yet: 'ledgerboard bring scope FILE'"));
    text({"add", "scope", "Space=Bath", "Treatment=replace", "Object=tile"});
    EXPECT_THAT(plan(), HasSubstr("no item has days: 'ledgerboard set ITEM Days 3'"));
    EXPECT_TRUE(document()["will_finish_on"].is_null());
}

TEST_F(PlanVerb, ShowsDaysFloatsAndWhatDrives) {
    addItems();
    link();
    const std::string said = plan();
    EXPECT_THAT(said,
                HasSubstr("Will finish Thursday 28 May 2026, 1 working day after the target"));
    EXPECT_THAT(said, HasSubstr("What drives the finish\n  Bath/tile, Mon 25 May to Tue 26 May\n"
                                "  then Bath/vanity, Thu 28 May\n"));
    EXPECT_THAT(said, HasSubstr("Near critical, 2 days of float or less: Kitchen/cabinets (1)."));
    const json out = document();
    EXPECT_EQ(out["will_finish_on"], "2026-05-28");
    EXPECT_EQ(out["working_days_late"], 1);
    EXPECT_EQ(out["driving"], (json{"Bath/tile", "Bath/vanity"}));
    EXPECT_EQ(out["items"][2]["float"], 1.0);
    EXPECT_EQ(out["items"][2]["near_critical"], true);
    EXPECT_EQ(out["items"][1]["held_by_item"], "Bath/tile");
    EXPECT_TRUE(out["kept"].is_null());
}

TEST_F(PlanVerb, LinesAreNoWiderThanTheTerminal) {
    addItems();
    link();
    std::istringstream lines(plan());
    for (std::string line; std::getline(lines, line);) {
        EXPECT_LE(report::columnsOf(line), 80U) << line;
    }
}

TEST_F(PlanVerb, HalfDaysAreWorkedHalf) {
    addItems();
    link();
    text({"set", "job", "Half days", "2026-05-25"});
    // Tile: half of Monday, Tuesday, half of Wednesday; the wait to Thursday noon; vanity to
    // Friday noon.
    EXPECT_EQ(document()["will_finish_on"], "2026-05-29");
}

TEST_F(PlanVerb, KeepWritesThePlannedDatesAsOneAction) {
    addItems();
    link();
    EXPECT_THAT(text({"plan", "--keep", "--as-of", "2026-05-22"}),
                HasSubstr("Kept as the planned dates of 3 items"));
    const auto planned = [&] {
        return json::parse(text({"--json", "list", "scope"}))["items"][1]["planned_start_on"];
    };
    EXPECT_EQ(planned(), "2026-05-28");
    EXPECT_THAT(text({"plan", "--keep", "--as-of", "2026-05-22"}), HasSubstr("these already"));
    text({"undo"});
    EXPECT_NE(planned(), "2026-05-28");
}

TEST_F(PlanVerb, LinkPutsInTheUsualOrderAsOneAction) {
    addItems();
    EXPECT_THAT(plan(), HasSubstr("'ledgerboard plan --link'"));
    EXPECT_THAT(text({"plan", "--link"}), HasSubstr("  Bath/vanity after Bath/tile\n1 link"));
    EXPECT_THAT(text({"plan", "--link"}), HasSubstr("Nothing to link"));
    EXPECT_EQ(document()["links"], 1);
    text({"undo"});
    EXPECT_EQ(document()["links"], 0);
}

TEST_F(PlanVerb, ALinkThatClosesALoopIsRefused) {
    addItems();
    link();
    const Answer answer = line_({"add", "link", "From=bath/vanity", "To=bath/tile"});
    EXPECT_EQ(answer.status, kCannotBeMet);
    EXPECT_THAT(answer.err, HasSubstr("Bath/tile > Bath/vanity > Bath/tile"));
    EXPECT_EQ(document()["links"], 1);
}

TEST_F(PlanVerb, OrdersAreNamedWithTheirDays) {
    addItems();
    link();
    text({"set", "kitchen/cabinets", "Lead days", "14"});
    // Saturday 23 May + 14 + 3 = Tuesday 9 June.
    const std::string said = plan();
    EXPECT_THAT(said, HasSubstr("To order, each with 3 days to look the goods over"));
    EXPECT_THAT(said, HasSubstr("by Sat 23 May: Kitchen/cabinets, 14 days from order to delivery"));
    EXPECT_EQ(document()["items"][2]["start_on"], "2026-06-09");
    EXPECT_THAT(said, HasSubstr("Kitchen/cabinets, Tue 9 Jun to Thu 11 Jun: its goods are not "));
}

}  // namespace
}  // namespace ledgerboard::cli
