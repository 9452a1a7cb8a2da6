// Protects: punch, close and taught on the command line: what they say of an empty job, of one
// under way and of one that is finished; that `taught --keep` is one action that undo takes back.
// How: a small house with the commands a person would type; figures worked by hand.
#include <filesystem>
#include <fstream>
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

class ClosingCliTest : public testing::Test {
  protected:
    TestFolder folder_{"closing"};
    std::string book_ = folder_.file("house.book");
    CommandLine line_{book_};

    void SetUp() override { text({"start", "Test house", "--built", "2005"}); }

    std::string text(const std::vector<std::string>& arguments) {
        const Answer answer = line_(arguments);
        EXPECT_EQ(answer.status, kDone) << answer.err;
        const std::string& verb = arguments[arguments[0] == "--as-of" ? 2 : 0];
        if (verb == "punch" || verb == "close" || verb == "taught") {
            std::istringstream lines(answer.out);
            for (std::string line; std::getline(lines, line);) {
                EXPECT_LE(report::columnsOf(line), 80U) << line;
            }
        }
        return answer.out;
    }

    json document(std::vector<std::string> arguments) {
        arguments.insert(arguments.begin(), "--json");
        const Answer answer = line_(arguments);
        EXPECT_EQ(answer.status, kDone) << answer.err;
        json parsed = json::parse(answer.out, nullptr, false);
        EXPECT_FALSE(parsed.is_discarded()) << answer.out;
        return parsed;
    }

    void shelves() {
        text({"add", "space", "Space=Hall"});
        text({"add", "crew", "Crew=Shelf crew", "Trade=carpentry"});
        text({"add", "price", "Object=shelves", "Treatment=add", "Unit=lin ft", "Material=6",
              "Labour=4"});
        text({"add", "scope", "Space=Hall", "Treatment=add", "Object=shelves", "Quantity=20",
              "Unit=lin ft", "Crew=Shelf crew"});
    }
};

TEST_F(ClosingCliTest, AnEmptyJobIsToldWhatComesNext) {
    EXPECT_THAT(text({"punch"}), HasSubstr("ledgerboard bring punch"));
    EXPECT_THAT(text({"close"}), HasSubstr("ledgerboard read"));
    EXPECT_THAT(text({"taught"}), HasSubstr("Nothing is taught before something is finished"));
    const Answer keep = line_({"taught", "--keep"});
    EXPECT_EQ(keep.status, kCannotBeMet);
    EXPECT_THAT(keep.err, HasSubstr("nothing is finished yet"));
    EXPECT_EQ(document({"close"})["done"], false);
    EXPECT_EQ(document({"punch"})["open"], 0);
}

TEST_F(ClosingCliTest, PunchBySpaceAndByCrew) {
    shelves();
    text({"add", "crew", "Crew=Paint crew", "Trade=paint"});
    text({"add", "punch", "Space=Hall", "What=shelf loose", "Crew=Shelf crew", "Due=2026-05-28",
          "Cost=40", "Charge back to=Paint crew"});
    text({"add", "punch", "Space=Hall", "What=drips", "Crew=Paint crew"});
    const std::string all = text({"--as-of", "2026-05-22", "punch"});
    EXPECT_THAT(all, HasSubstr("2 items are left to put right; 40.00 to put right"));
    EXPECT_THAT(all, HasSubstr("Shelf crew, by Thursday: shelf loose; 40.00"));
    EXPECT_THAT(all, HasSubstr("By crew"));
    EXPECT_THAT(all, HasSubstr("40.00 for 1 item"));
    const std::string one = text({"--as-of", "2026-05-22", "punch", "--crew", "paint crew"});
    EXPECT_THAT(one, HasSubstr("drips"));
    EXPECT_THAT(one, Not(HasSubstr("shelf loose")));
    text({"add", "look", "Punch item=drips", "Said=accepted", "Date=2026-05-21"});
    EXPECT_EQ(document({"--as-of", "2026-05-22", "punch"})["open"], 1);
    EXPECT_EQ(document({"--as-of", "2026-05-20", "punch"})["open"], 2);
}

TEST_F(ClosingCliTest, CloseNamesWhatIsLeftUntilNothingIs) {
    shelves();
    const std::string before = text({"close"});
    EXPECT_THAT(before, HasSubstr("0 of 1 item finished"));
    EXPECT_THAT(before, HasSubstr("Hall/shelves"));
    EXPECT_THAT(before, HasSubstr("keys, openers and codes"));
    text({"mark", "hall/shelves", "100", "--at", "2026-05-20"});
    EXPECT_THAT(text({"--as-of", "2026-05-20", "close"}),
                HasSubstr("nothing that the book knows of stands between"));
    EXPECT_EQ(document({"--as-of", "2026-05-20", "close"})["done"], true);
    EXPECT_EQ(document({"--as-of", "2026-05-19", "close"})["done"], false);
}

// 20 lin ft for 250: 12.50, where the book makes 10. Both parts times 1.25: 7.50 and 5.00.
TEST_F(ClosingCliTest, TaughtIsKeptOnceAndUndoneWhole) {
    shelves();
    text({"mark", "hall/shelves", "100", "--at", "2026-04-05"});
    const std::string spend = folder_.file("spend.csv");
    std::ofstream(spend) << "Kind,Date,Amount,Item,Payee\n"
                            "receipt,2026-04-05,250,hall/shelves,Lumber yard\n";
    text({"bring", "spend", spend});
    const std::string prices = folder_.file("prices.csv");
    std::ofstream(prices) << "Object,Treatment,Unit,Material,Labour\nshelves,add,lin ft,6,4\n";
    const json told = document({"taught"});
    ASSERT_EQ(told["prices"].size(), 1U);
    EXPECT_EQ(told["prices"][0]["billed_per_unit"], "12.50");
    EXPECT_EQ(told["prices"][0]["book_per_unit"], "10.00");
    EXPECT_EQ(told["prices"][0]["material"], "7.50");
    EXPECT_EQ(told["prices"][0]["labour"], "5.00");
    EXPECT_EQ(told["kept"], 0);
    EXPECT_EQ(document({"list", "prices"})["prices"].size(), 1U);
    EXPECT_THAT(text({"taught"}), HasSubstr("'ledgerboard taught --keep' writes them"));

    EXPECT_EQ(document({"taught", "--keep"})["kept"], 1);
    const json rows = document({"list", "prices"})["prices"];
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[1]["source"], "what 1 house taught");
    EXPECT_EQ(rows[1]["material"], "7.50");
    EXPECT_EQ(rows[1]["as_of"], "2026-04-06");  // the day of the test's clock
    EXPECT_THAT(text({"taught", "--keep"}), HasSubstr("nothing to correct"));
    EXPECT_EQ(document({"list", "prices"})["prices"].size(), 2U);
    // The file of prices still comes in without adding to them.
    EXPECT_THAT(text({"bring", "prices", prices}), HasSubstr("0 added, 0 changed"));
    EXPECT_THAT(text({"undo"}), HasSubstr("what the houses taught"));
    EXPECT_EQ(document({"list", "prices"})["prices"].size(), 1U);
}

TEST_F(ClosingCliTest, WrongUse) {
    const auto refused = [this](const std::vector<std::string>& arguments, int status) {
        const Answer answer = line_(arguments);
        EXPECT_EQ(answer.status, status) << answer.out;
        EXPECT_EQ(answer.out, "");
        return answer.err;
    };
    EXPECT_THAT(refused({"punch", "--crew", "nobody"}, kCannotBeMet), HasSubstr("--crew: "));
    EXPECT_THAT(refused({"taught", "--keep", "--as-of", "2026-05-01"}, kWrongUse),
                HasSubstr("--as-of looks back"));
    EXPECT_THAT(refused({"close", "--as-of", "soon"}, kWrongUse), HasSubstr("--as-of"));
    EXPECT_THAT(refused({"taught", "--job", "Other house"}, kCannotBeMet), HasSubstr("--job"));
    EXPECT_THAT(refused({"punch", "extra"}, kWrongUse), HasSubstr("--help"));
}

}  // namespace
}  // namespace ledgerboard::cli
