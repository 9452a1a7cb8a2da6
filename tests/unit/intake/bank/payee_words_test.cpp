// Protects: a payee is known again in what a bank writes, and two payees that share a common word
// are not taken for one.
#include "core/intake/bank/payee_words.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace ledgerboard::intake {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

TEST(PayeeWordsTest, AreTheWordsThatNameSomebody) {
    EXPECT_THAT(payeeWords("POS PURCHASE 0442 QUINCE TIMBER 14RD"),
                ElementsAre("quince", "timber"));
    EXPECT_THAT(payeeWords("Rowan's Tile & Stone, LLC"), ElementsAre("rowans", "tile", "stone"));
    EXPECT_THAT(payeeWords("Peña Peña"), ElementsAre("peña"));
    EXPECT_THAT(payeeWords("CHECK 1042"), IsEmpty());
    EXPECT_THAT(payeeWords(""), IsEmpty());
}

TEST(PayeeWordsTest, TellWhetherTwoTextsNameTheSame) {
    EXPECT_EQ(samePayee("Hardware store", "POS HARDWARE STORE 0442"), SamePayee::Yes);
    EXPECT_EQ(samePayee("Quince Timber", "DEBIT CARD QUINCE TIMB"), SamePayee::Yes) << "cut off";
    EXPECT_EQ(samePayee("Quince Timber", "QUI TIMBER"), SamePayee::No) << "cut in the middle";
    EXPECT_EQ(samePayee("Yard crew", "LUMBER YARD 2"), SamePayee::No);
    EXPECT_EQ(samePayee("Lumber yard", "YARD WORKS"), SamePayee::No);
    EXPECT_EQ(samePayee("", "LUMBER YARD"), SamePayee::Unknown);
    EXPECT_EQ(samePayee("Lumber yard", "CHECK 1042"), SamePayee::Unknown);
}

}  // namespace
}  // namespace ledgerboard::intake
