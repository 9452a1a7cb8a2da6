// Protects: a download comes in once however often it is brought, what waits counts nowhere, what
// the owner decides is filed, learned and taken back as one action, and a refusal changes nothing.
// How: a small house in a real book, and statements written here.
#include "core/intake/bank/settle_line.h"

#include <gmock/gmock.h>

#include "core/intake/bank/bring_bank.h"

#include "tests/unit/intake/files/bring_house.h"

namespace ledgerboard::intake {
namespace {

using model::BankLine;
using model::Kind;
using testing::HasSubstr;
using testing::SizeIs;

StatementLine lineOf(const std::string& id, int cents, const std::string& payee) {
    return {"4417", id, model::Date::fromYmd(2026, 3, 22).value(), model::Money::fromMinor(cents),
            payee,  ""};
}

class SettleLineTest : public BringHouse {
  protected:
    void SetUp() override {
        BringHouse::SetUp();
        buildHouse();
    }

    BankReport bringLines(const std::vector<StatementLine>& lines, bool tryOnly = false) {
        auto report = bringBank(*book_, job_, {"USD", lines}, "march.ofx", tryOnly, now_());
        EXPECT_TRUE(report.ok()) << report.error().message;
        return report.ok() ? std::move(report).value() : BankReport{};
    }

    std::vector<WaitingLine> waiting() { return waitingLines(book_->jobRows(job_).value()); }

    model::Result<Decided> settle(const std::string& bankId, const LineDecision& decision) {
        for (const auto& line : rows<BankLine>()) {
            if (line.bankId == bankId) {
                return settleLine(*book_, job_, line.id, decision, now_());
            }
        }
        return model::cannotBeMet("no line " + bankId);
    }

    LineDecision forItem(const std::string& object) {
        LineDecision decision;
        decision.kind = Kind::Item;
        for (const auto& item : rows<model::Item>()) {
            if (item.object == object) {
                decision.target = item.id.raw();
            }
        }
        return decision;
    }

    model::Spend spendOf(const std::string& bankId) {
        for (const auto& spend : rows<model::Spend>()) {
            if (spend.bankId == bankId) {
                return spend;
            }
        }
        return {};
    }
};

TEST_F(SettleLineTest, ADownloadComesInOnce) {
    const auto first =
        bringLines({lineOf("A1", -84'10, "CORNER GROCERY"), lineOf("A2", -5'00, "")});
    EXPECT_TRUE(first.written);
    const auto before = dump();
    const auto again =
        bringLines({lineOf("A1", -84'10, "CORNER GROCERY"), lineOf("A2", -5'00, "")});
    EXPECT_FALSE(again.written);
    EXPECT_EQ(dump(), before);
    // Another download that overlaps: the new line alone comes in.
    bringLines({lineOf("A2", -5'00, ""), lineOf("A3", -6'00, "")});
    EXPECT_THAT(rows<BankLine>(), SizeIs(3));
    // One id twice in a file is one line.
    bringLines({lineOf("A4", -5'00, ""), lineOf("A4", -5'00, "")});
    EXPECT_THAT(rows<BankLine>(), SizeIs(4));
}

TEST_F(SettleLineTest, ALineWhoseIdARowOfSpendBearsIsKnown) {
    const auto report = bringLines({lineOf("rec-1", -45'50, "HARDWARE SHOP")});
    EXPECT_EQ(report.lines.front().outcome, LineOutcome::Known);
    EXPECT_THAT(rows<BankLine>(), SizeIs(0));
}

TEST_F(SettleLineTest, TryingWritesNothing) {
    const auto before = dump();
    const auto report = bringLines({lineOf("A1", -1200'00, "TILE CREW")}, true);
    EXPECT_EQ(report.lines.front().outcome, LineOutcome::Filed);
    EXPECT_FALSE(report.written);
    EXPECT_EQ(dump(), before);
}

TEST_F(SettleLineTest, StoppedHalfwayNothingIsWritten) {
    const auto before = dump();
    const std::vector<StatementLine> lines{lineOf("A1", -1200'00, "TILE CREW"),
                                           lineOf("A2", -84'10, "CORNER GROCERY")};
    std::vector<std::size_t> told;
    const auto report = bringBank(*book_, job_, {"USD", lines}, "march.ofx", false, now_(),
                                  [&](std::size_t done, std::size_t all) {
                                      EXPECT_EQ(all, 2u);
                                      told.push_back(done);
                                      return done == 0;
                                  });
    ASSERT_FALSE(report.ok());
    EXPECT_THAT(report.error().message, HasSubstr("nothing of it came in"));
    EXPECT_THAT(told, testing::ElementsAre(0u, 1u));
    EXPECT_EQ(dump(), before);
}

TEST_F(SettleLineTest, WhatIsSureIsFiledAndUndoneAsOne) {
    const auto before = rows<model::Spend>().size();
    bringLines({lineOf("A1", -1200'00, "TILE CREW"), lineOf("A2", -84'10, "CORNER GROCERY")});
    const model::Spend paid = spendOf("A1");
    EXPECT_EQ(paid.type, model::SpendKind::Payment);
    EXPECT_EQ(paid.pays, spendOf("inv-1").id);
    EXPECT_EQ(rows<model::Spend>().size(), before + 1) << "what waits is no row of spend";
    ASSERT_THAT(waiting(), SizeIs(1));
    ASSERT_TRUE(book_->undo(now_()).ok());
    EXPECT_EQ(rows<model::Spend>().size(), before);
    EXPECT_THAT(waiting(), SizeIs(0));
}

TEST_F(SettleLineTest, AnotherCurrencyIsRefused) {
    store::Action action("currency");
    action.set(job_.raw(), model::field::Job::currency, model::Value{std::string("USD")});
    commit(action);
    const auto before = dump();
    const auto report =
        bringBank(*book_, job_, {"CAD", {lineOf("A1", -1'00, "")}}, "march.ofx", false, now_());
    ASSERT_FALSE(report.ok());
    EXPECT_THAT(report.error().message, HasSubstr("march.ofx: its amounts are in CAD"));
    EXPECT_EQ(dump(), before);
}

TEST_F(SettleLineTest, ADecisionIsLearnedAndFilesTheOthersOfThatPayee) {
    bringLines({lineOf("A1", -84'10, "CORNER GROCERY 9"), lineOf("A2", -31'00, "CORNER GROCERY"),
                lineOf("A3", -7'00, "STRANGER")});
    LineDecision notOurs;
    notOurs.notOurs = true;
    const auto decided = settle("A1", notOurs);
    ASSERT_TRUE(decided.ok()) << decided.error().message;
    EXPECT_EQ(decided.value().rule, "corner grocery");
    EXPECT_THAT(decided.value().also, SizeIs(1));
    ASSERT_THAT(waiting(), SizeIs(1));
    EXPECT_EQ(waiting().front().line.bankId, "A3");
    // And on the next download.
    const auto next = bringLines({lineOf("A4", -12'00, "CORNER GROCERY 12")});
    EXPECT_EQ(next.lines.front().outcome, LineOutcome::Filed);
    // One undo takes the download back, the next the decision with its rule and the other line.
    ASSERT_TRUE(book_->undo(now_()).ok());
    ASSERT_TRUE(book_->undo(now_()).ok());
    EXPECT_THAT(waiting(), SizeIs(3));
    EXPECT_THAT(rows<model::PayeeRule>(), SizeIs(0));
}

TEST_F(SettleLineTest, ACorrectionChangesTheRule) {
    bringLines({lineOf("A1", -84'10, "QUINCE TIMBER")});
    ASSERT_TRUE(settle("A1", forItem("tub")).ok());
    EXPECT_EQ(spendOf("A1").item.raw(), forItem("tub").target);
    EXPECT_EQ(spendOf("A1").amount, model::Money::fromMinor(84'10));
    // Its row dropped, it waits again and is decided anew.
    store::Action drop("drop");
    drop.drop(Kind::Spend, spendOf("A1").id.raw());
    commit(drop);
    ASSERT_THAT(waiting(), SizeIs(1));
    ASSERT_TRUE(settle("A1", forItem("fan")).ok());
    ASSERT_THAT(rows<model::PayeeRule>(), SizeIs(1));
    EXPECT_EQ(rows<model::PayeeRule>().front().item.raw(), forItem("fan").target);
}

TEST_F(SettleLineTest, NoRuleWhereToldSoOrWhereThePayeeIsPaidForManyThings) {
    bringLines({lineOf("A1", -84'10, "QUINCE TIMBER"), lineOf("A2", -9'00, "HARDWARE SHOP 7")});
    LineDecision once = forItem("tub");
    once.learn = false;
    ASSERT_TRUE(settle("A1", once).ok());
    // rec-1 of the same payee is for the whole job.
    const auto decided = settle("A2", forItem("tub"));
    ASSERT_TRUE(decided.ok());
    EXPECT_EQ(decided.value().rule, "");
    EXPECT_THAT(rows<model::PayeeRule>(), SizeIs(0));
}

TEST_F(SettleLineTest, ALineIsThePaymentOfARowOfItsSumAlone) {
    bringGood("spend", "Kind,Date,Amount,Payee\nreceipt,2026-01-05,84.10,Paint shop\n");
    bringLines({lineOf("A1", -84'10, "CHECK 7"), lineOf("A2", -84'11, "CHECK 8")});
    LineDecision decision;
    decision.kind = Kind::Spend;
    for (const auto& spend : rows<model::Spend>()) {
        decision.target = spend.payee == "Paint shop" ? spend.id.raw() : decision.target;
    }
    const auto before = dump();
    const auto refused = settle("A2", decision);
    ASSERT_FALSE(refused.ok());
    EXPECT_THAT(refused.error().message, HasSubstr("the bank says 84.11 and the row of spend says "
                                                   "84.10"));
    EXPECT_EQ(dump(), before);
    ASSERT_TRUE(settle("A1", decision).ok());
    EXPECT_EQ(spendOf("A1").payee, "Paint shop");
}

TEST_F(SettleLineTest, WhatIsSettledOrCannotBeIsRefused) {
    bringLines({lineOf("A1", -84'10, "STRANGER"), lineOf("A2", -1200'00, "TILE CREW")});
    LineDecision guess;
    guess.takeGuess = true;
    EXPECT_THAT(settle("A1", guess).error().message, HasSubstr("nothing in the book says"));
    EXPECT_THAT(settle("A2", guess).error().message, HasSubstr("settled already"));
    LineDecision space;
    space.kind = Kind::Space;
    space.target = rows<model::Space>().front().id.raw();
    EXPECT_THAT(settle("A1", space).error().message, HasSubstr("not for a space"));
    LineDecision draw;
    draw.kind = Kind::Draw;
    EXPECT_THAT(settle("A1", draw).error().message, HasSubstr("it is no draw"));
}

}  // namespace
}  // namespace ledgerboard::intake
