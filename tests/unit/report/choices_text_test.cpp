// Protects the page of open alternates: what it says of waiting, of what is not offered and why,
// that it fits its width and its letters, and that the commands it gives can be typed as they are.
#include "core/report/choices_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sstream>

#include "tests/unit/compute/sample_job.h"

namespace ledgerboard::report {
namespace {

using model::Kind;
using model::Money;
using testing::AllOf;
using testing::HasSubstr;
using testing::Not;
using tests::day;
using tests::money;

// One alternate of two options; the figures are set by hand, for only their words are looked at.
class ChoicesTextTest : public testing::Test {
  protected:
    tests::SampleJob job_;
    compute::Choices choices_;
    compute::ChoicesAsk ask_;
    std::size_t width_ = 80;
    Script script_ = Script::Unicode;

    void SetUp() override {
        job_.rows.job.name = "14 Quince Row";
        job_.add(job_.rows.alternates).question = "second bath";
        job_.add(job_.rows.options).name = "leave as is";
        job_.add(job_.rows.options).name = "half bath";
        compute::AlternateChoice alternate;
        alternate.name = "Hall: second bath";
        compute::OptionChoice leave;
        leave.isCarried = true;
        leave.leavesAsIs = true;
        compute::OptionChoice bath;
        bath.option = 1;
        bath.cost = money("6000");
        bath.finishDays = 6;
        bath.hasValue = true;
        bath.valueLikely = money("10000");
        bath.netLikely = money("3328");
        alternate.options = {leave, bath};
        alternate.carried = 0;
        alternate.best = 1;
        alternate.otherwise = 0;
        alternate.worth = money("3328");
        choices_.alternates = {alternate};
        choices_.resale = money("300000");
        choices_.ceiling = money("310000");
        choices_.keptShare = tests::percent("94");
        choices_.dayCosts = money("12");
        choices_.finishWithout = day("2026-05-29");
        choices_.now.options = {0};
        compute::SetChoice best;
        best.options = {1};
        best.cost = money("6000");
        best.net = money("3328");
        best.finishOn = day("2026-06-04");
        choices_.best = best;
        choices_.frontier = {choices_.now, best};
    }

    compute::Waiting& waiting() { return choices_.alternates[0].waiting; }

    compute::OptionChoice& bath() { return choices_.alternates[0].options[1]; }

    std::string page() const {
        return choicesText({job_.rows, choices_, ask_, day("2026-05-08"),
                            [](model::RawId) { return std::string("half bath"); }, width_, script_,
                            false});
    }

    // As one line, so that where it breaks does not matter.
    std::string words() const {
        std::string text = page();
        std::string out;
        for (const char letter : text) {
            const bool isSpace = letter == '\n' || letter == ' ';
            if (!isSpace || (!out.empty() && out.back() != ' ')) {
                out += isSpace ? ' ' : letter;
            }
        }
        return out;
    }
};

TEST_F(ChoicesTextTest, TheBestSetAndWhatItBeats) {
    EXPECT_THAT(words(), AllOf(HasSubstr("It costs 6,000, ends the work on Thu 4 Jun and has an "
                                         "expected net of 3,328."),
                               HasSubstr("3,328 less than the best."),
                               HasSubstr("with \"leave as is\" instead, the best that can be had "
                                         "earns 3,328 less.")));
}

// Summed the set moves the finish by 8 days, planned together by 6: 2 days at 12 each.
TEST_F(ChoicesTextTest, WhatTheSumOfDaysMissed) {
    choices_.hasPlan = true;
    choices_.best->finishDays = 8;
    EXPECT_THAT(words(), HasSubstr("move the finish 2 days less than one by one: the net is 24 "
                                   "more than that."));
    choices_.best->finishDays = 5;
    EXPECT_THAT(words(), HasSubstr("move the finish 1 day more than one by one: the net is 12 "
                                   "less than that."));
    choices_.best->finishDays = 6;
    EXPECT_THAT(words(), Not(HasSubstr("than one by one")));
}

TEST_F(ChoicesTextTest, WithoutADayToDecideBy) {
    EXPECT_THAT(words(), HasSubstr("No day to decide by is known"));
}

TEST_F(ChoicesTextTest, WaitingOnTheCriticalPath) {
    waiting().decideBy = day("2026-05-05");
    waiting().isLate = true;
    waiting().item = 0;
    waiting().option = 1;
    waiting().itemStartsOn = day("2026-05-20");
    waiting().leadDays = 15;
    waiting().tightestOption = 1;
    waiting().floatThousandths = 0;
    waiting().perDay = money("12");
    job_.item("vanity", "900");
    EXPECT_THAT(words(),
                AllOf(HasSubstr("Decide by Tue 5 May (vanity starts Wed 20 May, ordered and looked "
                                "over in 15 days). That was 3 days ago."),
                      HasSubstr("it becomes \"leave as is\", as carried."),
                      HasSubstr("Each day of waiting now costs 12.00: \"half bath\" is on the "
                                "critical path.")));
}

TEST_F(ChoicesTextTest, WaitingWithFloatAndWithoutAPlan) {
    waiting().decideBy = day("2026-05-20");
    waiting().isEntered = true;
    EXPECT_THAT(words(), HasSubstr("Each day after that costs up to 12.00, if it holds up the "
                                   "finish: no plan tells whether it does."));
    waiting().tightestOption = 1;
    waiting().floatThousandths = 2999;
    EXPECT_THAT(words(), HasSubstr("With \"half bath\" it can wait 2 working days beyond that "
                                   "before the finish moves; from then a day costs 12.00."));
}

TEST_F(ChoicesTextTest, WhatIsNotOfferedHasNoFigures) {
    bath().isPriced = false;
    bath().whyNotOffered = model::Saying("it has no cost yet");
    bath().hasValue = false;
    EXPECT_THAT(words(), AllOf(HasSubstr("\"half bath\" has no cost yet, so it is in no set."),
                               HasSubstr("ledgerboard set \"half bath\" Cost AMOUNT"),
                               HasSubstr("nobody said what it adds to the sale"),
                               HasSubstr("2 half bath – +6 days – – – – –")));
    bath().items = 2;
    bath().whyNotOffered = model::Saying("1 of its 2 items have no price yet");
    EXPECT_THAT(words(), AllOf(HasSubstr("is in no set: 1 of its 2 items have no price yet."),
                               Not(HasSubstr("Cost AMOUNT"))));
}

TEST_F(ChoicesTextTest, NoSetNoneProvenAndCut) {
    choices_.proven = false;
    choices_.frontierCut = true;
    EXPECT_THAT(words(), AllOf(HasSubstr("The search was stopped before it was sure"),
                               HasSubstr("The list was cut")));
    choices_.best.reset();
    choices_.whyNone =
        model::Saying("the cheapest set that goes together costs 7.00, more than 5.00");
    ask_.cash = money("5");
    EXPECT_THAT(words(),
                AllOf(HasSubstr("Best together for 5 at most There is none: the cheapest set that "
                                "goes together costs 7.00, more than 5.00."),
                      Not(HasSubstr("Sets that no other beats"))));
}

TEST_F(ChoicesTextTest, FitsItsWidthAndItsLetters) {
    job_.rows.options[1].name = "b\xC3\xA9ton bath with a name that goes on and on and on \x1B[31m";
    bath().netLow = money("-2500");
    for (const Script script : {Script::Unicode, Script::Ascii}) {
        script_ = script;
        for (const std::size_t width : {48U, 60U, 80U, 140U}) {
            width_ = width;
            std::istringstream lines(page());
            for (std::string line; std::getline(lines, line);) {
                EXPECT_LE(columnsOf(line), width) << line;
                EXPECT_EQ(line.find('\x1B'), std::string::npos) << line;
                if (script == Script::Ascii) {
                    EXPECT_TRUE(std::all_of(line.begin(), line.end(), [](char c) {
                        return (c & 0x80) == 0;
                    })) << line;
                }
            }
        }
    }
}

TEST(CommandText, QuotesWhatAShellWouldTakeApart) {
    EXPECT_EQ(commandText({"set", "half bath", "Cost", "5"}),
              "ledgerboard set \"half bath\" Cost 5");
    EXPECT_EQ(commandText({"add", "Why=the \"best\" $5 `x` \\"}),
              "ledgerboard add \"Why=the \\\"best\\\" \\$5 \\`x\\` \\\\\"");
    EXPECT_EQ(commandText({"set", "x", "Why", ""}), "ledgerboard set x Why \"\"");
}

}  // namespace
}  // namespace ledgerboard::report
