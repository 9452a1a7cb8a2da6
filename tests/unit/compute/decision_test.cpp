// Protects what deciding does: an option without items becomes one item, and after a baseline the
// difference to what was frozen is told to the cent. Figures by hand.
#include "core/compute/decision.h"

#include <gtest/gtest.h>

#include "core/compute/scope_lines.h"

#include "tests/unit/compute/sample_job.h"

namespace ledgerboard::compute {
namespace {

using model::Kind;
using model::Money;
using tests::id;
using tests::money;

class DecisionTest : public testing::Test {
  protected:
    tests::SampleJob job_;

    // One alternate: keep the tub (item 1, 900, carried), a new tub (item 2, 2,500), a shower at
    // 4,000 and 3 days without items, or nothing.
    void SetUp() override {
        model::Alternate& alternate = job_.add(job_.rows.alternates);
        alternate.question = "tub";
        alternate.space = id<Kind::Space>(1);
        job_.add(job_.rows.spaces).name = "Bath";
        for (const char* name : {"mend the tub", "new tub", "shower", "leave it"}) {
            model::Option& option = job_.add(job_.rows.options);
            option.alternate = alternate.id;
            option.name = name;
        }
        job_.rows.options[2].cost = money("4000");
        job_.rows.options[2].days = tests::amountOf("3");
        job_.rows.alternates[0].carried = id<Kind::Option>(1);
        job_.item("tub", "900").option = id<Kind::Option>(1);
        job_.item("new tub", "2500").option = id<Kind::Option>(2);
        job_.item("floor", "700");
    }

    // As choosing leaves the job.
    Difference chosen(std::uint32_t option) {
        model::JobRows rows = job_.rows;
        rows.alternates[0].chosen = id<Kind::Option>(option);
        if (auto made = itemMadeBy(rows, 0, option - 1)) {
            made->id = id<Kind::Item>(9);
            rows.items.push_back(*made);
        }
        // With the change signed, budget now is what the scope costs as decided.
        Difference out = differenceOf(rows, 0);
        if (out.baselineOn && out.amount != Money{}) {
            model::Change change;
            change.id = id<Kind::Change>(1);
            change.amount = out.amount;
            change.signedOn = tests::day("2026-05-05");
            change.items = out.items;
            rows.changes.push_back(change);
        }
        Money budget;
        Money price;
        for (const ScopeLine& line : scopeLinesOf(rows).lines) {
            budget += line.budgetNow();
            price += line.counting == Counting::Counts ? line.pricing.line : Money{};
        }
        EXPECT_EQ(budget, price) << option;
        return out;
    }
};

TEST_F(DecisionTest, AnOptionWithCostAndDaysBecomesOneItem) {
    const auto made = itemMadeBy(job_.rows, 0, 2);
    ASSERT_TRUE(made);
    EXPECT_EQ(made->object, "shower");
    EXPECT_EQ(made->space, id<Kind::Space>(1));
    EXPECT_EQ(made->lumpSum, money("4000"));
    EXPECT_EQ(made->daysLikely, tests::amountOf("3"));
    EXPECT_EQ(made->option, id<Kind::Option>(3));
    EXPECT_FALSE(itemMadeBy(job_.rows, 0, 1));  // it has one
    EXPECT_FALSE(itemMadeBy(job_.rows, 0, 3));  // there is nothing to do
}

TEST_F(DecisionTest, BeforeABaselineNothingIsToBeSigned) {
    const Difference out = chosen(2);
    EXPECT_FALSE(out.baselineOn);
    EXPECT_EQ(out.amount, Money{});
}

// Frozen: 900 for the tub as carried, 700 for the floor.
TEST_F(DecisionTest, AfterABaselineTheDifferenceIsToBeSigned) {
    job_.rows.items.pop_back();
    job_.rows.items.pop_back();
    job_.baseline("2026-04-03", {"900"});
    job_.item("new tub", "2500").option = id<Kind::Option>(2);
    EXPECT_EQ(chosen(1).amount, Money{});
    const Difference tub = chosen(2);
    EXPECT_EQ(tub.baselineOn, tests::day("2026-04-03"));
    EXPECT_EQ(tub.amount, money("1600"));  // 2,500 - 900
    EXPECT_EQ(tub.items, std::vector{id<Kind::Item>(2)});
    const Difference shower = chosen(3);
    EXPECT_EQ(shower.amount, money("3100"));  // 4,000 - 900
    EXPECT_EQ(shower.items, std::vector{id<Kind::Item>(9)});
    const Difference none = chosen(4);
    EXPECT_EQ(none.amount, money("-900"));
    EXPECT_EQ(none.items, std::vector{id<Kind::Item>(1)});
}

}  // namespace
}  // namespace ledgerboard::compute
