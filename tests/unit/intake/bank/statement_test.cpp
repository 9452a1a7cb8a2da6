// Protects: what ledgerboard-ofx prints is read to the cent and the day, and anything else is
// refused with file, line and field.
#include "core/intake/bank/statement.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace ledgerboard::intake {
namespace {

using testing::HasSubstr;

constexpr const char* kLine =
    R"({"account":"4417","bank_id":"A1","date":"2026-04-03","amount":"-431.20",)"
    R"("payee":"POS QUINCE TIMBER","memo":"check 1042"})";

std::string printed(const std::string& lines) {
    return R"({"form":1,"currency":"USD","lines":[)" + lines + "]}";
}

std::string refusal(const std::string& text) {
    const auto read = parseStatement(text, "april.ofx");
    return read.ok() ? "taken" : read.error().message;
}

TEST(StatementTest, IsReadToTheCentAndTheDay) {
    const auto read = parseStatement(printed(kLine), "april.ofx");
    ASSERT_TRUE(read.ok());
    EXPECT_EQ(read.value().currency, "USD");
    ASSERT_EQ(read.value().lines.size(), 1U);
    const auto& line = read.value().lines.front();
    EXPECT_EQ(line.account, "4417");
    EXPECT_EQ(line.bankId, "A1");
    EXPECT_EQ(line.postedOn.toString(), "2026-04-03");
    EXPECT_EQ(line.amount, model::Money::fromMinor(-43120));
    EXPECT_EQ(line.payee, "POS QUINCE TIMBER");
    EXPECT_EQ(line.memo, "check 1042");
}

TEST(StatementTest, NamesTheLineAndTheFieldOfWhatItRefuses) {
    const std::string good = std::string(kLine) + ",";
    EXPECT_THAT(refusal(printed(good + R"({"date":"2026-04-03","amount":"1.00"})")),
                HasSubstr("april.ofx, bank line 2: has no id of the bank (FITID)"));
    EXPECT_THAT(refusal(printed(R"({"bank_id":"A","date":"2026-02-30","amount":"1.00"})")),
                HasSubstr("april.ofx, bank line 1: date (DTPOSTED)"));
    EXPECT_THAT(refusal(printed(R"({"bank_id":"A","date":"2026-02-20","amount":"ten"})")),
                HasSubstr("april.ofx, bank line 1: amount (TRNAMT)"));
    EXPECT_THAT(refusal(printed("7")), HasSubstr("april.ofx, bank line 1: can't be read"));
    for (const auto* text : {"", "[]", "{", R"({"lines":7})"}) {
        EXPECT_THAT(refusal(text), HasSubstr("printed nothing that can be read")) << text;
    }
}

TEST(StatementTest, KnowsADownloadByItsBeginning) {
    EXPECT_TRUE(isBankDownload("OFXHEADER:100\nDATA:OFXSGML"));
    EXPECT_TRUE(isBankDownload("<?xml version=\"1.0\"?>\n<?OFX OFXHEADER=\"200\"?>\n<OFX>"));
    EXPECT_TRUE(isBankDownload("<ofx>"));
    EXPECT_FALSE(isBankDownload("Date,Amount,Payee\n2026-04-03,10,OFX shop\n"));
    EXPECT_FALSE(isBankDownload(""));
}

}  // namespace
}  // namespace ledgerboard::intake
