// Protects: a bank's download comes in through the real ledgerboard-ofx, once, to the cent and the
// day; what is wrong with a file is said with its name, and the book is left as it was; the owner
// settles what waits by the words of the verb.
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/unit/cli/command_line.h"

namespace ledgerboard::cli {
namespace {

using nlohmann::json;
using testing::HasSubstr;
using tests::TestFolder;

constexpr const char* kHead =
    "OFXHEADER:100\nDATA:OFXSGML\nVERSION:102\nSECURITY:NONE\nENCODING:USASCII\nCHARSET:1252\n"
    "COMPRESSION:NONE\nOLDFILEUID:NONE\nNEWFILEUID:NONE\n\n<OFX><SIGNONMSGSRSV1><SONRS><STATUS>"
    "<CODE>0<SEVERITY>INFO</STATUS><DTSERVER>20260601<LANGUAGE>ENG</SONRS></SIGNONMSGSRSV1>"
    "<BANKMSGSRSV1><STMTTRNRS><TRNUID>1<STATUS><CODE>0<SEVERITY>INFO</STATUS><STMTRS><CURDEF>USD"
    "<BANKACCTFROM><BANKID>000000000<ACCTID>0000004417<ACCTTYPE>CHECKING</BANKACCTFROM>"
    "<BANKTRANLIST><DTSTART>20260501<DTEND>20260531";
constexpr const char* kTail =
    "</BANKTRANLIST><LEDGERBAL><BALAMT>1.00<DTASOF>20260531</LEDGERBAL></STMTRS></STMTTRNRS>"
    "</BANKMSGSRSV1></OFX>";

std::string lineText(const std::string& amount, const std::string& id, const std::string& name,
                     const std::string& day = "20260405") {
    return "<STMTTRN><TRNTYPE>DEBIT<DTPOSTED>" + day + "<TRNAMT>" + amount + "<FITID>" + id +
           "<NAME>" + name + "</STMTTRN>";
}

class BankTest : public testing::Test {
  protected:
    void SetUp() override {
        line_.readsDownloadsBy(LEDGERBOARD_OFX);
        run({"start", "Test house"});
        run({"add", "crew", "Crew=Tile crew"});
        run({"add", "spend", "Kind=invoice", "Date=2026-04-01", "Amount=750", "Held=75",
             "Payee=Tile crew", "Bank id=tile-1"});
    }

    std::string run(const std::vector<std::string>& arguments, int status = kDone) {
        const Answer answer = line_(arguments);
        EXPECT_EQ(answer.status, status) << answer.err << answer.out;
        return status == kDone ? answer.out : answer.err;
    }

    std::string file(const std::string& name, const std::string& text) {
        const std::string path = folder_.file(name);
        std::ofstream(path, std::ios::binary) << text;
        return path;
    }

    std::string download(const std::string& lines) {
        return file("may.ofx", kHead + lines + kTail);
    }

    TestFolder folder_{"bank"};
    CommandLine line_{folder_.file("house.book")};
};

TEST_F(BankTest, ADownloadComesInToTheCentAndTheDayOfTheHouse) {
    // 8 in the evening at the house is the next day in UTC; America/Chicago is the job's zone.
    const std::string path =
        download(lineText("-675.00", "A1", "TILE CREW", "20260405200000[-5:CDT]") +
                 lineText("-0.1", "A2", "BOLTS &amp; CO") + lineText("9000", "A3", "LENDER"));
    const json brought = json::parse(run({"--json", "bring", "spend", path}));
    EXPECT_EQ(brought["filed"], 1);
    EXPECT_EQ(brought["waiting"], 2);
    const json& paid = brought["lines"][0];
    EXPECT_EQ(paid["date"], "2026-04-05");
    EXPECT_EQ(paid["amount"], "-675.00");
    EXPECT_EQ(paid["account"], "4417") << "the whole number of the account stays outside";
    EXPECT_EQ(paid["sure"], 95);
    EXPECT_EQ(brought["lines"][1]["amount"], "-0.10");
    EXPECT_EQ(brought["lines"][1]["payee"], "BOLTS & CO");
    EXPECT_EQ(brought["lines"][2]["amount"], "9000.00");
    const json again = json::parse(run({"--json", "bring", "spend", path}));
    EXPECT_EQ(again["known"], 3);
    EXPECT_EQ(again["written"], false);
    EXPECT_EQ(json::parse(run({"--json", "list", "spend"}))["spends"].size(), 2U);
}

TEST_F(BankTest, TheOwnerSettlesWhatWaits) {
    run({"bring", "spend",
         download(lineText("-84.10", "A1", "CORNER GROCERY 9") +
                  lineText("-31.00", "A2", "CORNER GROCERY 9") +
                  lineText("-12.00", "A3", "BOLTS"))});
    EXPECT_THAT(run({"bank"}), HasSubstr("3 lines wait for a decision and count nowhere"));
    EXPECT_THAT(run({"bank", "A1", "--not-ours"}), HasSubstr("So 1 line waits no longer."));
    EXPECT_THAT(run({"bank", "A3", "--for", "tile crew"}), HasSubstr("receipt for Tile crew"));
    EXPECT_THAT(run({"bank"}), HasSubstr("No line of the bank waits"));
    EXPECT_THAT(run({"list", "rules"}), HasSubstr("corner grocery"));
    run({"undo"});
    EXPECT_THAT(run({"bank"}), HasSubstr("1 line waits for a decision and counts nowhere"));
}

TEST_F(BankTest, AWrongUseOfTheVerbIsSaid) {
    run({"bring", "spend", download(lineText("-84.10", "A1", "STRANGER"))});
    EXPECT_THAT(run({"bank", "A1"}, kWrongUse), HasSubstr("--yes, --for RECORD and --not-ours"));
    EXPECT_THAT(run({"bank", "A1", "--yes", "--not-ours"}, kWrongUse), HasSubstr("say one of"));
    EXPECT_THAT(run({"bank", "--yes"}, kWrongUse), HasSubstr("LINE: say which line"));
    EXPECT_THAT(run({"bank", "A9", "--yes"}, kCannotBeMet), HasSubstr("LINE: "));
    EXPECT_THAT(run({"bank", "A1", "--yes"}, kCannotBeMet), HasSubstr("nothing in the book says"));
    EXPECT_THAT(run({"bank", "A1", "--for", "nobody"}, kCannotBeMet), HasSubstr("--for: "));
    EXPECT_THAT(run({"bank"}), HasSubstr("1 line waits"));
}

TEST_F(BankTest, BadFilesAreRefusedWithTheirNameAndChangeNothing) {
    const std::string good = lineText("-1.00", "A1", "BOLTS");
    const std::string whole = kHead + good + kTail;
    const std::string lacks = "a line in it lacks its id, date or amount";
    const std::string bad = "<STMTTRN><TRNTYPE>DEBIT";
    const std::vector<std::pair<std::string, std::string>> cases = {
        {whole.substr(0, whole.size() - 40), "not a whole OFX download"},
        {whole.substr(0, whole.size() / 2), "not a whole OFX download"},
        {"OFXHEADER:100\n", "bad"},
        {"OFXHEADER:100\n\n<OFX>\n", "bad"},
        {"<OFX>junk", "bad"},
        {kHead + good + bad + "<DTPOSTED>20260501<FITID>A2<NAME>X</STMTTRN>" + kTail, lacks},
        {kHead + good + bad + "<DTPOSTED>20260501<TRNAMT>-1<NAME>X</STMTTRN>" + kTail, lacks},
        {kHead + good + bad + "<TRNAMT>-1<FITID>A2<NAME>X</STMTTRN>" + kTail, lacks},
        {kHead + lineText("-1.005", "A1", "X") + kTail, "amount (TRNAMT)"},
        {kHead + lineText("-1e300", "A1", "X") + kTail, "amount (TRNAMT)"},
        {std::string(kHead).replace(std::string(kHead).find("USD"), 3, "CAD") + good + kTail,
         "in CAD, the job's in USD"},
    };
    run({"set", "job", "Currency", "USD"});
    for (const auto& [text, says] : cases) {
        const std::string path = file("bad.ofx", text);
        const std::string said = run({"bring", "spend", path}, kCannotBeMet);
        EXPECT_THAT(said, HasSubstr(path)) << text.substr(0, 60);
        if (says != "bad") {
            EXPECT_THAT(said, HasSubstr(says));
        }
        EXPECT_THAT(run({"bank"}), HasSubstr("No lines of the bank yet"));
    }
    EXPECT_THAT(run({"bring", "spend", download(good), "--match", "a=b"}, kWrongUse),
                HasSubstr("--match is for CSV"));
}

TEST_F(BankTest, WithoutTheProgramItSaysWhatToDo) {
    line_.readsDownloadsBy(folder_.file("not-there"));
    EXPECT_THAT(run({"bring", "spend", download(lineText("-1.00", "A1", "X"))}, kCannotBeMet),
                HasSubstr("ledgerboard-ofx, which is not installed here"));
}

}  // namespace
}  // namespace ledgerboard::cli
