// Protects the verbs about money: deal, cash and draw say what they rest on, tell an empty job what
// to enter, print one JSON document, and asking for a draw is one action that undo takes back
// whole.
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
using testing::HasSubstr;
using testing::Not;
using tests::TestFolder;

class MoneyVerbs : public testing::Test {
  protected:
    TestFolder folder_{"money"};
    CommandLine line_{folder_.file("house.book")};

    std::string text(const std::vector<std::string>& arguments) {
        const Answer answer = line_(arguments);
        EXPECT_EQ(answer.status, kDone) << answer.err;
        return answer.out;
    }

    json document(std::vector<std::string> arguments) {
        arguments.insert(arguments.begin(), "--json");
        const std::string out = text(arguments);
        json parsed = json::parse(out, nullptr, false);
        EXPECT_FALSE(parsed.is_discarded()) << out;
        return parsed;
    }

    void set(const char* heading, const char* value) { text({"set", "job", heading, value}); }

    // A house bought with a loan, one item half seen under one lender line.
    void buyAHouse() {
        text({"start", "Test house", "--purchase", "200000", "--resale", "300000", "--begin",
              "2026-04-06", "--finish", "2026-05-29"});
        set("Purchased", "2026-03-20");
        set("Work loan", "12000");
        set("Purchase loan", "160000");
        set("Loan rate", "7.3");
        set("Holdback", "10");
        set("Fee per visit", "175");
        set("Days from ask to visit", "2");
        set("Days from visit to money", "4");
        text({"add", "lender-line", "Name=Plumbing", "Amount=12000", "Share lent=100"});
        text({"add", "space", "Space=Basement"});
        text({"add", "scope", "Space=Basement", "Treatment=replace", "Object=pipe",
              "Lump sum=10000", "Lender line=Plumbing", "Days=10", "Planned start=2026-05-11",
              "Planned finish=2026-05-29"});
        text({"mark", "basement/pipe", "50", "--at", "2026-05-15"});
    }

    static void expectNoLongLines(const std::string& out) {
        std::istringstream lines(out);
        for (std::string one; std::getline(lines, one);) {
            EXPECT_LE(report::columnsOf(one), 80U) << one;
        }
    }
};

TEST_F(MoneyVerbs, AnEmptyJobIsToldWhatToEnter) {
    text({"start", "Test house"});
    EXPECT_THAT(text({"deal"}), HasSubstr("ledgerboard set job \"Purchase price\" VALUE"));
    const std::string cash = text({"cash"});
    EXPECT_THAT(cash, HasSubstr("There is no cash line yet"));
    EXPECT_THAT(cash, HasSubstr("ledgerboard set job \"Purchased\" VALUE"));
    const std::string draw = text({"draw"});
    EXPECT_THAT(draw, HasSubstr("ledgerboard set job \"Work loan\" VALUE"));
    EXPECT_THAT(draw, HasSubstr("bring lender-lines"));
    for (const std::string& out : {cash, draw}) {
        expectNoLongLines(out);
    }
}

TEST_F(MoneyVerbs, CashIsToldAndPrintedDayByDay) {
    buyAHouse();
    const std::string out = text({"--as-of", "2026-05-15", "cash"});
    EXPECT_THAT(out, HasSubstr("The cash at the start was not entered"));
    EXPECT_THAT(out, HasSubstr("Week by week"));
    EXPECT_THAT(out, HasSubstr("Counted as nothing, for it was not entered:"));
    expectNoLongLines(out);
    set("Cash at start", "60000");
    const json cash = document({"--as-of", "2026-05-15", "cash"});
    // Closing: 200,000 - 160,000.
    EXPECT_EQ(cash["days"][0]["on"], "2026-03-20");
    EXPECT_EQ(cash["days"][0]["balance"], "20000.00");
    EXPECT_EQ(cash["reaches_sale"], true);
    const json deal = document({"--as-of", "2026-05-15", "deal"});
    EXPECT_EQ(cash["profit"], deal["profit"]);
    EXPECT_EQ(deal["profit_table"]["rows"].size(), 5U);
    EXPECT_TRUE(deal["return_on_cash"].is_number());
}

TEST_F(MoneyVerbs, DealNamesWhatItLeftOut) {
    buyAHouse();
    const std::string out = text({"--as-of", "2026-05-15", "deal"});
    EXPECT_THAT(out, HasSubstr("Return on cash"));
    EXPECT_THAT(out, HasSubstr("weeks later"));
    EXPECT_THAT(out, HasSubstr("Day 91"));
    EXPECT_THAT(out, HasSubstr("Counted as nothing"));
    EXPECT_THAT(out, HasSubstr("common practice, no source"));
    EXPECT_THAT(out, Not(HasSubstr("double the price")));
    expectNoLongLines(out);
}

TEST_F(MoneyVerbs, AskingForADrawIsOneAction) {
    buyAHouse();
    const json now = document({"--as-of", "2026-05-15", "draw"});
    EXPECT_EQ(now["total"], "5400.00");  // 12,000 x .5 x .9
    EXPECT_EQ(now["net"], "5225.00");
    EXPECT_THAT(text({"--as-of", "2026-05-15", "draw"}), HasSubstr("Plumbing"));
    const json asked = document({"--as-of", "2026-05-15", "draw", "--ask"});
    EXPECT_EQ(asked["number"], 1);
    EXPECT_EQ(asked["lines"][0]["asked"], 50);
    EXPECT_EQ(document({"list", "draw lines"})["draw_lines"].size(), 1U);
    const json after = document({"--as-of", "2026-05-15", "draw"});
    EXPECT_EQ(after["total"], "0.00");
    EXPECT_EQ(after["lines"][0]["why_not"], "asked for already");
    const Answer again = line_({"--as-of", "2026-05-15", "draw", "--ask"});
    EXPECT_EQ(again.status, kCannotBeMet);
    EXPECT_THAT(again.err, HasSubstr("nothing can be requested now"));
    text({"undo"});
    EXPECT_EQ(document({"list", "draws"})["draws"].size(), 0U);
    EXPECT_EQ(document({"list", "draw lines"})["draw_lines"].size(), 0U);
}

TEST_F(MoneyVerbs, DrawUsedWrongly) {
    buyAHouse();
    EXPECT_EQ(line_({"draw", "--at", "2026-05-15"}).status, kWrongUse);
    EXPECT_EQ(line_({"draw", "--ask", "--at", "5/6/2026"}).status, kWrongUse);
    EXPECT_EQ(line_({"--known-at", "2026-05-15T00:00Z", "draw", "--ask"}).status, kWrongUse);
    text({"drop", "Plumbing"});
    const Answer noLines = line_({"draw", "--ask"});
    EXPECT_EQ(noLines.status, kCannotBeMet);
    EXPECT_THAT(noLines.err, HasSubstr("lender's lines"));
    EXPECT_THAT(text({"draw"}), HasSubstr("the whole work loan stands as one"));
}

TEST_F(MoneyVerbs, LenderLinesAreBroughtFromAFile) {
    buyAHouse();
    const std::string file = folder_.file("lines.csv");
    std::ofstream(file) << "Lender line,Amount,Share lent\nPlumbing,13000,100\nPaint,4000,80\n";
    text({"bring", "lender-lines", file});
    EXPECT_EQ(document({"list", "lender lines"})["lender_lines"].size(), 2U);
}

}  // namespace
}  // namespace ledgerboard::cli
