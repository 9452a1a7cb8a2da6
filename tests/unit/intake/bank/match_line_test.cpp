// Protects: what a line of the bank is taken for, in the order and with the sureness that the
// header states; only what is sure enough is filed by itself. How: one small job by hand, one rule
// at a time.
#include "core/intake/bank/match_line.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace ledgerboard::intake {
namespace {

using model::Id;
using model::Kind;
using model::Money;
using model::SpendKind;
using testing::HasSubstr;

template <Kind K>
Id<K> idOf(std::uint8_t number) {
    std::array<std::uint8_t, 16> bytes{};
    bytes[15] = number;
    return Id<K>(model::RawId(bytes));
}

model::Date day(int number) {
    return model::Date::fromYmd(2026, 4, number).value();
}

class MatchLineTest : public testing::Test {
  protected:
    model::Spend& spend(SpendKind type, int cents, int on, const std::string& payee) {
        model::Spend row;
        row.id = idOf<Kind::Spend>(next_++);
        row.type = type;
        row.amount = Money::fromMinor(cents);
        row.spentOn = day(on);
        row.payee = payee;
        rows_.spends.push_back(row);
        return rows_.spends.back();
    }

    void crewWithContracts(const std::string& name, int contracts) {
        model::Crew crew;
        crew.id = idOf<Kind::Crew>(next_++);
        crew.name = name;
        rows_.crews.push_back(crew);
        for (int k = 0; k < contracts; ++k) {
            model::Contract contract;
            contract.id = idOf<Kind::Contract>(next_++);
            contract.crew = crew.id;
            contract.name = name + " work";
            contract.signedOn = day(1);
            rows_.contracts.push_back(contract);
        }
    }

    LineMatch match(int cents, int on, const std::string& payee) const {
        model::BankLine line;
        line.id = idOf<Kind::BankLine>(99);
        line.bankId = "A1";
        line.amount = Money::fromMinor(cents);
        line.postedOn = day(on);
        line.payee = payee;
        return BankMatcher(rows_).match(line);
    }

    model::JobRows rows_;
    std::uint8_t next_ = 1;
};

TEST_F(MatchLineTest, KnowsTheRowOfTheSameSum) {
    const auto id = spend(SpendKind::Receipt, 26'85, 10, "Hardware store").id;
    const LineMatch named = match(-26'85, 12, "POS HARDWARE STORE 0442");
    EXPECT_EQ(named.is, LineIs::Filed);
    EXPECT_EQ(named.spend, id);
    EXPECT_EQ(named.sure, 97);
    EXPECT_THAT(named.reason, HasSubstr("same sum as the receipt of 2026-04-10"));
    EXPECT_EQ(match(-26'85, 12, "CHECK 1042").sure, 82) << "no name, the only one";
    EXPECT_EQ(match(-26'85, 12, "CORNER GROCERY").sure, 55) << "another name";
    EXPECT_EQ(match(-26'84, 12, "CHECK 1042").is, LineIs::Unknown) << "a cent less";
}

TEST_F(MatchLineTest, LooksTenDaysBackAndThreeAhead) {
    spend(SpendKind::Receipt, 50'00, 10, "");
    EXPECT_EQ(match(-50'00, 20, "").is, LineIs::Filed);
    EXPECT_EQ(match(-50'00, 21, "").is, LineIs::Unknown);
    EXPECT_EQ(match(-50'00, 7, "").is, LineIs::Filed);
    EXPECT_EQ(match(-50'00, 6, "").is, LineIs::Unknown);
}

TEST_F(MatchLineTest, AmongSeveralOfOneSumTheNameDecidesThenTheDay) {
    spend(SpendKind::Receipt, 50'00, 11, "Paint shop");
    const auto lumber = spend(SpendKind::Receipt, 50'00, 4, "Lumber yard").id;
    EXPECT_EQ(match(-50'00, 12, "LUMBER YARD").spend, lumber);
    EXPECT_EQ(match(-50'00, 12, "LUMBER YARD").sure, 97);
    EXPECT_EQ(match(-50'00, 12, "CHECK").sure, 60);
    const auto later = spend(SpendKind::Receipt, 50'00, 9, "Lumber yard").id;
    EXPECT_EQ(match(-50'00, 12, "LUMBER YARD").spend, later);
    EXPECT_EQ(match(-50'00, 12, "LUMBER YARD").sure, 90);
}

TEST_F(MatchLineTest, WhatIsTakenOrHasABankIdIsNoCandidate) {
    spend(SpendKind::Receipt, 50'00, 10, "Lumber yard").bankId = "A0";
    EXPECT_NE(match(-50'00, 10, "LUMBER YARD").is, LineIs::Filed);
    spend(SpendKind::Receipt, 50'00, 10, "Lumber yard");
    BankMatcher matcher(rows_);
    model::BankLine line;
    line.amount = Money::fromMinor(-50'00);
    line.postedOn = day(10);
    const LineMatch first = matcher.match(line);
    ASSERT_EQ(first.is, LineIs::Filed);
    matcher.take(first);
    EXPECT_NE(matcher.match(line).is, LineIs::Filed);
}

TEST_F(MatchLineTest, PaysWhatIsOpenOfAnInvoice) {
    model::Spend& invoice = spend(SpendKind::Invoice, 1000'00, 3, "Tile crew");
    invoice.held = Money::fromMinor(100'00);
    const auto id = invoice.id;
    LineMatch paid = match(-900'00, 25, "TILE CREW");
    EXPECT_EQ(paid.is, LineIs::NewSpend);
    EXPECT_EQ(paid.sure, 95);
    EXPECT_EQ(paid.fresh.type, SpendKind::Payment);
    EXPECT_EQ(paid.fresh.pays, id);
    EXPECT_EQ(paid.fresh.amount, Money::fromMinor(900'00));
    EXPECT_EQ(match(-900'00, 25, "CHECK 7").sure, 65) << "waits: nothing names the crew";
    spend(SpendKind::Payment, 400'00, 8, "Tile crew").pays = id;
    EXPECT_NE(match(-900'00, 25, "TILE CREW").fresh.pays, id);
    EXPECT_EQ(match(-500'00, 25, "TILE CREW").fresh.pays, id);
}

TEST_F(MatchLineTest, FollowsTheRuleWithMostWords) {
    model::PayeeRule any;
    any.id = idOf<Kind::PayeeRule>(1);
    any.words = "quince";
    any.notOurs = true;
    model::PayeeRule exact;
    exact.id = idOf<Kind::PayeeRule>(2);
    exact.words = "quince timber";
    exact.payee = "Lumber yard";
    rows_.payee_rules = {any, exact};
    EXPECT_EQ(match(-5'00, 3, "QUINCE BAKERY").is, LineIs::NotOurs);
    EXPECT_EQ(match(-5'00, 3, "QUINCE BAKERY").sure, 92);
    const LineMatch exactly = match(-5'00, 3, "POS QUINCE TIMBER");
    EXPECT_EQ(exactly.is, LineIs::NewSpend);
    EXPECT_EQ(exactly.fresh.payee, "Lumber yard");
    EXPECT_EQ(exactly.fresh.type, SpendKind::Receipt);
}

TEST_F(MatchLineTest, ARuleForAnotherHouseIsNone) {
    model::PayeeRule rule;
    rule.id = idOf<Kind::PayeeRule>(1);
    rule.words = "quince timber";
    rule.item = idOf<Kind::Item>(50);  // no item of this job
    rows_.payee_rules = {rule};
    EXPECT_EQ(match(-5'00, 3, "QUINCE TIMBER").is, LineIs::Unknown);
}

TEST_F(MatchLineTest, MoneyInIsADrawWhereOneIsAwaited) {
    model::Draw draw;
    draw.id = idOf<Kind::Draw>(1);
    draw.number = 3;
    draw.askedOn = day(5);
    rows_.draws = {draw};
    EXPECT_EQ(match(9000'00, 9, "LENDER").is, LineIs::Draw);
    EXPECT_EQ(match(9000'00, 9, "LENDER").sure, 55) << "waits: the sum is not known";
    EXPECT_EQ(match(9000'00, 4, "LENDER").is, LineIs::Unknown) << "before it was asked for";
    EXPECT_EQ(match(-9000'00, 9, "LENDER").is, LineIs::Unknown) << "money out";
    rows_.draws.front().amount = Money::fromMinor(9000'00);
    EXPECT_EQ(match(9000'00, 9, "LENDER").sure, 95);
    rows_.draws.front().fundedOn = day(6);
    EXPECT_EQ(match(9000'00, 9, "LENDER").is, LineIs::Unknown);
}

TEST_F(MatchLineTest, ACrewNamedIsPaidUnderItsOnlyContract) {
    crewWithContracts("Tile crew", 1);
    const LineMatch one = match(-300'00, 9, "TILE CREW DEPOSIT");
    EXPECT_EQ(one.sure, 85);
    EXPECT_EQ(one.fresh.contract, rows_.contracts.front().id);
    EXPECT_EQ(one.fresh.type, SpendKind::Payment);
    crewWithContracts("Roof crew", 0);
    EXPECT_EQ(match(-300'00, 9, "ROOF CREW").sure, 75);
    crewWithContracts("Paint crew", 2);
    EXPECT_EQ(match(-300'00, 9, "PAINT CREW").sure, 60);
}

TEST_F(MatchLineTest, APayeeIsFiledAsBefore) {
    for (int k = 0; k < 2; ++k) {
        spend(SpendKind::Receipt, 10'00 + k, 1, "Container yard").item = idOf<Kind::Item>(7);
    }
    EXPECT_EQ(match(-66'00, 9, "CONTAINER YARD").sure, 70);
    spend(SpendKind::Receipt, 12'00, 1, "Container yard").item = idOf<Kind::Item>(7);
    const LineMatch often = match(-66'00, 9, "CONTAINER YARD");
    EXPECT_EQ(often.sure, 85);
    EXPECT_EQ(often.fresh.item, idOf<Kind::Item>(7));
    spend(SpendKind::Receipt, 13'00, 1, "Container yard").item = idOf<Kind::Item>(8);
    EXPECT_EQ(match(-66'00, 9, "CONTAINER YARD").sure, 50);
    const LineMatch back = match(66'00, 9, "CONTAINER YARD");
    EXPECT_EQ(back.sure, 65);
    EXPECT_EQ(back.fresh.type, SpendKind::Refund);
}

TEST_F(MatchLineTest, NothingSaysWhatAStrangerIsFor) {
    EXPECT_EQ(match(-84'10, 9, "CORNER GROCERY").is, LineIs::Unknown);
    EXPECT_FALSE(match(-84'10, 9, "CORNER GROCERY").isSureEnough());
    EXPECT_EQ(match(0, 9, "CORNER GROCERY").is, LineIs::Unknown);
}

}  // namespace
}  // namespace ledgerboard::intake
