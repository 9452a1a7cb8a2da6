// Protects the verb choose from end to end: what it prints of open alternates, that a decision is
// one action that undo takes back whole, the change order it offers after a baseline, and every
// wrong turn, with the book left as it was.
#include <fstream>
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

class ChooseTest : public testing::Test {
  protected:
    tests::TestFolder folder_{"choose"};
    std::string path_ = folder_.file("house.book");
    CommandLine line_{path_};

    void SetUp() override {
        ok({"start", "Test house", "--purchase", "200000", "--resale", "300000", "--finish",
            "2026-05-29"});
        ok({"set", "job", "Ceiling of the street", "310000"});
        ok({"set", "job", "Selling costs", "2"});
        ok({"set", "job", "Commission", "4"});
        ok({"set", "job", "Holding costs", "taxes 365"});  // 12 a day
    }

    void addAlternates() {
        ok({"add", "space", "Space=Hall"});
        ok({"add", "alternate", "Space=Hall", "Question=second bath", "Decide by=2026-04-20"});
        ok({"add", "option", "Alternate=second bath", "Option=leave as is"});
        ok({"add", "option", "Alternate=second bath", "Option=half bath", "Cost=6000", "Days=4",
            "Value low=8000", "Value=10000", "Value high=12000"});
        ok({"set", "second bath", "Carried", "leave as is"});
    }

    std::string ok(const std::vector<std::string>& arguments) {
        const Answer answer = line_(arguments);
        EXPECT_EQ(answer.status, kDone) << answer.err;
        EXPECT_EQ(answer.err, "");
        return answer.out;
    }

    json asJson(std::vector<std::string> arguments) {
        arguments.insert(arguments.begin(), "--json");
        return json::parse(ok(arguments));
    }

    void refuses(const std::vector<std::string>& arguments, int status, const char* says) {
        const auto bytes = [&] {
            std::ifstream file(path_, std::ios::binary);
            std::stringstream all;
            all << file.rdbuf();
            return all.str();
        };
        const std::string before = bytes();
        const Answer answer = line_(arguments);
        EXPECT_EQ(answer.status, status) << answer.err;
        EXPECT_THAT(answer.err, HasSubstr(says));
        EXPECT_EQ(answer.out, "");
        EXPECT_TRUE(bytes() == before) << says << ": the book was changed";
    }
};

TEST_F(ChooseTest, WithoutAlternatesItSaysHowToBegin) {
    EXPECT_THAT(ok({"choose"}), AllOf(HasSubstr("There are no alternates"),
                                      HasSubstr("ledgerboard add alternate Question=")));
    EXPECT_EQ(asJson({"choose"}).at("alternates"), json::array());
    ok({"add", "alternate", "Question=porch"});
    EXPECT_THAT(ok({"choose"}), AllOf(HasSubstr("It has no options yet"),
                                      HasSubstr("ledgerboard add option Alternate=porch")));
}

// Six calendar days at 12 are 72: 10,000 x 94 % - 6,000 - 72 = 3,328.
TEST_F(ChooseTest, ComparesAndSaysWhatIsBest) {
    addAlternates();
    const std::string page = ok({"choose"});
    EXPECT_THAT(page, HasSubstr("Hall: second bath"));
    EXPECT_THAT(page, HasSubstr("leave as is (carried)"));
    EXPECT_THAT(page, HasSubstr("3,328"));
    EXPECT_THAT(page, HasSubstr("Decide by Mon 20 Apr (as entered)"));
    EXPECT_THAT(page, HasSubstr("Best together"));
    EXPECT_THAT(page, HasSubstr("Selling takes 6.0 %"));
    std::istringstream lines(page);
    for (std::string text; std::getline(lines, text);) {
        EXPECT_LE(report::columnsOf(text), 80U) << text;
    }
    const json all = asJson({"choose", "--chance", "80"});
    EXPECT_EQ(all.at("best").at("net"), "3328.00");
    EXPECT_EQ(all.at("best").at("cost"), "6000.00");
    EXPECT_EQ(all.at("best").at("finish_on"), "2026-06-04");
    EXPECT_EQ(all.at("now").at("net"), "0.00");
    EXPECT_EQ(all.at("frontier").size(), 2U);
    const json& bath = all.at("alternates")[0].at("options")[1];
    EXPECT_EQ(bath.at("net_likely"), "3328.00");
    EXPECT_EQ(bath.at("net_low"), "1448.00");
    EXPECT_EQ(bath.at("break_even_value"), "6459.57");  // 6,072 / 94 %
    // A deviation of 4,000 / 6 at 0.8416: 10,000 - 561.08 = 9,438.92; x 94 % - 6,072 = 2,800.58.
    EXPECT_NEAR(std::stod(all.at("best").at("net_at_chance").get<std::string>()), 2800.58, 0.05);
}

TEST_F(ChooseTest, AnswersAsTheBookWasThen) {
    addAlternates();
    EXPECT_THAT(ok({"choose", "--as-of", "2026-04-25"}), HasSubstr("That was 5 days ago"));
}

TEST_F(ChooseTest, ADecisionIsOneActionAndUndoTakesItBack) {
    addAlternates();
    const std::string said =
        ok({"choose", "second bath", "half", "--why", "every sale nearby has two"});
    EXPECT_THAT(said, AllOf(HasSubstr("second bath: half bath, because every sale nearby has two"),
                            HasSubstr("It is now a scope item, Hall/half bath"),
                            Not(HasSubstr("change order"))));
    json alternate = asJson({"list", "alternates"}).at("alternates")[0];
    EXPECT_EQ(alternate.at("why"), "every sale nearby has two");
    EXPECT_TRUE(alternate.contains("chosen"));
    const json item = asJson({"list", "scope"}).at("items")[0];
    EXPECT_EQ(item.at("lump_sum"), "6000.00");
    EXPECT_EQ(item.at("days_likely"), 4);
    EXPECT_THAT(ok({"choose"}), HasSubstr("Every alternate is decided"));
    ok({"undo"});
    alternate = asJson({"list", "alternates"}).at("alternates")[0];
    EXPECT_FALSE(alternate.contains("chosen"));
    EXPECT_EQ(asJson({"list", "scope"}).at("items").size(), 0U);
    EXPECT_THAT(ok({"verify"}), HasSubstr("all of it holds"));
}

TEST_F(ChooseTest, AfterABaselineItOffersTheChangeOrder) {
    addAlternates();
    ok({"add", "scope", "Space=Hall", "Treatment=repair", "Object=floor", "Lump sum=700"});
    ok({"baseline", "--on", "2026-04-03"});
    const json said = asJson({"choose", "second bath", "2", "--why", "it sells"});
    EXPECT_EQ(said.at("change_amount"), "6000.00");
    EXPECT_EQ(said.at("change_command"),
              "ledgerboard add change \"Change=half bath\" \"Why=it sells\" Amount=6000.00 "
              "\"Items=Hall/half bath\" Asked=2026-04-06");
    ok({"add", "change", "Change=half bath", "Why=it sells", "Amount=6000.00",
        "Items=Hall/half bath", "Asked=2026-04-06", "Signed=2026-04-06"});
    // 700 as frozen and the signed 6,000.
    EXPECT_EQ(asJson({"deal"}).at("work"), "6700.00");
    // Back to leaving it: what was signed for it is to be given back.
    EXPECT_EQ(asJson({"choose", "second bath", "leave as is", "--why", "no"}).at("change_amount"),
              "-6000.00");
}

TEST_F(ChooseTest, SaysWhatADecisionNeeds) {
    addAlternates();
    ok({"add", "alternate", "Question=drain"});
    ok({"add", "option", "Alternate=drain", "Option=new drain", "Cost=900"});
    ok({"add", "option", "Alternate=drain", "Option=keep drain"});
    ok({"set", "half bath", "Needs", "new drain"});
    EXPECT_THAT(ok({"choose", "second bath", "half bath", "--why", "x"}),
                HasSubstr("It needs \"new drain\" of drain, which is not decided yet"));
    refuses({"choose", "drain", "keep drain", "--why", "cheap"}, kCannotBeMet,
            "\"half bath\", which was decided on, needs \"new drain\"");
}

TEST_F(ChooseTest, WrongTurns) {
    addAlternates();
    ok({"add", "option", "Alternate=second bath", "Option=half bath with shower"});
    ok({"choose"});
    refuses({"choose", "attic", "1", "--why", "x"}, kCannotBeMet, "attic");
    refuses({"choose", "second bath"}, kWrongUse, "say which OPTION of second bath");
    refuses({"choose", "second bath", "half bath"}, kWrongUse, "say why with --why");
    refuses({"choose", "second bath", "sauna", "--why", "x"}, kCannotBeMet,
            "no option of second bath is \"sauna\"; it has:\n  1  leave as is\n  2  half bath");
    refuses({"choose", "second bath", "bath", "--why", "x"}, kCannotBeMet,
            "several options of second bath are \"bath\"");
    refuses({"choose", "second bath", "4", "--why", "x"}, kCannotBeMet, "is \"4\"");
    refuses({"choose", "second bath", "1", "--why", "x", "--cash", "5"}, kWrongUse,
            "--cash, --finish and --chance compare");
    refuses({"choose", "second bath", "1", "--why", "x", "--as-of", "2026-04-01"}, kWrongUse,
            "--as-of looks back");
    refuses({"choose", "--why", "x"}, kWrongUse, "--why goes with what is decided");
    refuses({"choose", "--cash", "lots"}, kWrongUse, "--cash: \"lots\"");
    refuses({"choose", "--cash", "-5"}, kWrongUse, "--cash: it can't be below 0");
    refuses({"choose", "--finish", "soon"}, kWrongUse, "--finish: \"soon\"");
    refuses({"choose", "--chance", "0"}, kWrongUse, "--chance: it must be between 0 and 100");
    refuses({"choose", "--chance", "100"}, kWrongUse, "--chance: it must be between");
    refuses({"choose", "--chance", "likely"}, kWrongUse, "--chance: \"likely\"");
    ok({"set", "half bath", "Value low", "11000"});
    ok({"choose", "second bath", "1", "--why", "x"});
    ok({"undo"});
    refuses({"choose"}, kCannotBeMet, "its Value low is more than its Value");
}

}  // namespace
}  // namespace ledgerboard::cli
