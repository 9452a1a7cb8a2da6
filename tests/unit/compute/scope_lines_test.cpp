// Protects budget now = baseline + signed changes, and that no choice, dropping or second baseline
// loses or doubles money. Splits are worked out by hand beside each check.
#include "core/compute/scope_lines.h"

#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;

Money total(const ScopeLines& scope) {
    Money sum;
    for (const ScopeLine& line : scope.lines) {
        sum += line.budgetNow();
    }
    return sum;
}

TEST(ScopeLines, ThereIsAlwaysOneForTheWholeJob) {
    const ScopeLines scope = scopeLinesOf(JobRows{});
    ASSERT_EQ(scope.lines.size(), 1U);
    EXPECT_EQ(scope.lines[0].kind, LineKind::WholeJob);
    EXPECT_FALSE(scope.baseline);
}

TEST(ScopeLines, BeforeABaselineTodaysPriceStands) {
    SampleJob job;
    job.item("tub", "1780");
    job.item("mantel", "300").treatment = Treatment::Keep;
    const ScopeLines scope = scopeLinesOf(job.rows);
    EXPECT_EQ(scope.lines[0].baseline, money("1780"));
    EXPECT_EQ(scope.lines[1].baseline, Money{});
    EXPECT_EQ(scope.baselineTotal, money("1780"));
}

TEST(ScopeLines, ABaselineFreezesThePriceAndDates) {
    SampleJob job;
    Item& item = job.item("tub", "1780");
    item.plannedStartOn = day("2026-05-04");
    item.plannedFinishOn = day("2026-05-06");
    job.baseline("2026-05-01", {"1780"});
    item.lumpSum = money("2000");
    item.plannedFinishOn = day("2026-05-20");
    job.item("found later", "500");
    const ScopeLines scope = scopeLinesOf(job.rows);
    EXPECT_EQ(scope.lines[0].baseline, money("1780"));
    EXPECT_EQ(scope.lines[0].finishOn, day("2026-05-06"));
    EXPECT_TRUE(scope.lines[0].inBaseline);
    EXPECT_EQ(scope.lines[1].baseline, Money{});
    EXPECT_FALSE(scope.lines[1].inBaseline);
}

TEST(ScopeLines, TheLatestBaselineCounts) {
    SampleJob job;
    job.item("tub", "1780");
    job.baseline("2026-05-10", {"1900"});
    job.baseline("2026-05-01", {"1780"});
    EXPECT_EQ(scopeLinesOf(job.rows).lines[0].baseline, money("1900"));
}

TEST(ScopeLines, OnlySignedChangesCount) {
    SampleJob job;
    job.item("tub", "1000");
    job.change("joists", "240", "2026-05-05").items = {id<Kind::Item>(1)};
    job.change("asked", "999", "").items = {id<Kind::Item>(1)};
    const ScopeLines scope = scopeLinesOf(job.rows);
    EXPECT_EQ(scope.lines[0].signedChanges(), money("240"));
    EXPECT_EQ(scope.lines[0].budgetNow(), money("1240"));
    EXPECT_EQ(scope.lines[0].budgetOn(day("2026-05-04")), money("1000"));
    EXPECT_EQ(scope.lines[0].budgetOn(day("2026-05-05")), money("1240"));
}

TEST(ScopeLines, AnUndividedChangeGoesByBudgetNowToTheCent) {
    SampleJob job;
    for (const auto* sum : {"100", "100", "100"}) {
        job.item("door", sum);
    }
    job.change("hinges", "100", "2026-05-05").items = {id<Kind::Item>(1), id<Kind::Item>(2),
                                                       id<Kind::Item>(3)};
    const ScopeLines scope = scopeLinesOf(job.rows);
    // 33.33 each and one cent left: equal remainders, so to the first.
    EXPECT_EQ(scope.lines[0].signedChanges(), money("33.34"));
    EXPECT_EQ(scope.lines[1].signedChanges(), money("33.33"));
    EXPECT_EQ(scope.lines[2].signedChanges(), money("33.33"));
}

TEST(ScopeLines, ALaterChangeGoesByTheBudgetThatIncludesTheEarlier) {
    SampleJob job;
    job.item("a", "100");
    job.item("b", "100");
    job.change("second", "40", "2026-05-06").items = {id<Kind::Item>(1), id<Kind::Item>(2)};
    job.change("first", "200", "2026-05-05").items = {id<Kind::Item>(1)};
    const ScopeLines scope = scopeLinesOf(job.rows);
    // After the first: 300 and 100; 40 by 3 to 1.
    EXPECT_EQ(scope.lines[0].budgetNow(), money("330"));
    EXPECT_EQ(scope.lines[1].budgetNow(), money("110"));
}

TEST(ScopeLines, WhatASplitLeavesGoesOverTheItems) {
    SampleJob job;
    job.item("a", "300");
    job.item("b", "100");
    Change& change = job.change("part split", "100", "2026-05-05");
    change.items = {id<Kind::Item>(1), id<Kind::Item>(2)};
    change.split = {{id<Kind::Item>(2), money("60")}};
    const ScopeLines scope = scopeLinesOf(job.rows);
    // 60 to b, so budgets 300 and 160; 40 left: 40 x 300/460 = 26.087, 13.913.
    EXPECT_EQ(scope.lines[0].signedChanges(), money("26.09"));
    EXPECT_EQ(scope.lines[1].signedChanges(), money("73.91"));
}

TEST(ScopeLines, AChangeWithoutItemsGoesOverItsContractElseTheWholeJob) {
    SampleJob job;
    job.contract("Tile", "500", "2026-05-01");
    job.item("a", "100").contract = id<Kind::Contract>(1);
    job.item("b", "300");
    job.change("of the contract", "50", "2026-05-05").contract = id<Kind::Contract>(1);
    job.change("of nothing", "7", "2026-05-05");
    job.change("of an item that is gone", "9", "2026-05-05").items = {id<Kind::Item>(99)};
    const ScopeLines scope = scopeLinesOf(job.rows);
    EXPECT_EQ(scope.lines[0].signedChanges(), money("50"));
    EXPECT_EQ(scope.lines[1].signedChanges(), Money{});
    EXPECT_EQ(scope.lines[2].signedChanges(), money("16"));
}

struct Alternates : SampleJob {
    Alternates() {
        Alternate& alternate = add(rows.alternates);
        alternate.carried = id<Kind::Option>(1);
        for (const auto* name : {"oak", "tile", "leave"}) {
            Option& option = add(rows.options);
            option.alternate = id<Kind::Alternate>(1);
            option.name = name;
        }
        item("oak", "5000").option = id<Kind::Option>(1);
        item("tile", "7000").option = id<Kind::Option>(2);
    }
};

TEST(Alternates, ChoosingAfterABaselineLeavesTheDifferenceToASignedChange) {
    Alternates job;
    job.baseline("2026-05-01", {"5000"});
    job.rows.alternates[0].chosen = id<Kind::Option>(2);
    ScopeLines scope = scopeLinesOf(job.rows);
    // What was frozen for oak is now tile's; nothing was signed yet.
    EXPECT_EQ(scope.lines[0].budgetNow(), Money{});
    EXPECT_EQ(scope.lines[1].budgetNow(), money("5000"));
    job.change("tile instead", "2000", "2026-05-05").items = {id<Kind::Item>(2)};
    EXPECT_EQ(total(scopeLinesOf(job.rows)), money("7000"));
    // The same, written as one taken away and one added.
    job.rows.changes[0].split = {{id<Kind::Item>(1), money("-5000")},
                                 {id<Kind::Item>(2), money("7000")}};
    scope = scopeLinesOf(job.rows);
    EXPECT_EQ(scope.lines[1].budgetNow(), money("7000"));
    EXPECT_EQ(total(scope), money("7000"));
}

TEST(Alternates, LeavingItAsItIsKeepsTheMoneyUntilItIsSignedAway) {
    Alternates job;
    job.baseline("2026-05-01", {"5000"});
    job.rows.alternates[0].chosen = id<Kind::Option>(3);
    EXPECT_EQ(total(scopeLinesOf(job.rows)), money("5000"));
    job.change("leave the floor", "-5000", "2026-05-05").items = {id<Kind::Item>(1)};
    EXPECT_EQ(total(scopeLinesOf(job.rows)), Money{});
}

TEST(Alternates, AnOptionWithoutItemsCountsByItsCost) {
    Alternates job;
    job.rows.options[2].cost = money("120");
    job.rows.alternates[0].carried = id<Kind::Option>(3);
    const ScopeLines scope = scopeLinesOf(job.rows);
    ASSERT_EQ(scope.lines.size(), 4U);
    EXPECT_EQ(scope.lines[2].kind, LineKind::Option);
    EXPECT_EQ(scope.lines[2].budgetNow(), money("120"));
    EXPECT_EQ(total(scope), money("120"));
}

TEST(ScopeLines, FrozenMoneyOfAnItemThatIsGoneStaysWithTheJob) {
    SampleJob job;
    job.item("tub", "1780");
    job.item("sink", "200");
    job.baseline("2026-05-01", {"1780", "200"});
    job.rows.items.pop_back();
    const ScopeLines scope = scopeLinesOf(job.rows);
    EXPECT_EQ(scope.baselineTotal, money("1980"));
    EXPECT_EQ(scope.lines.back().baseline, money("200"));
}

TEST(Freeze, TakesPricesAndDatesOfWhatCounts) {
    SampleJob job;
    job.rows.job.contingency = percent("11");
    Item& tub = job.item("tub", "1000");
    tub.plannedStartOn = day("2026-05-04");
    tub.plannedFinishOn = day("2026-05-06");
    job.item("mantel", "300").treatment = Treatment::Keep;
    job.item("flue", "0").lumpSum.reset();
    job.change("signed before", "50", "2026-04-20").items = {id<Kind::Item>(1)};
    const Frozen frozen = freeze(job.rows);
    ASSERT_EQ(frozen.items.size(), 2U);
    EXPECT_EQ(frozen.items[0].budget, money("1000"));
    EXPECT_EQ(frozen.contingency, money("110"));
    EXPECT_EQ(frozen.finishOn, day("2026-05-06"));
    EXPECT_EQ(frozen.unpriced, 1U);
    EXPECT_EQ(frozen.undated, 1U);
}

}  // namespace
