// Protects the baseline: prices and days as they stand are frozen as one action, an earlier one
// stays, and what cannot be frozen is refused and changes nothing. Figures are worked by hand.
#include "core/intake/keep/keep_baseline.h"

#include <gmock/gmock.h>

#include "core/compute/as_of.h"
#include "core/model/value.h"

#include "tests/unit/intake/files/bring_house.h"

namespace ledgerboard::intake {
namespace {

using model::Baseline;
using model::BaselineItem;
using model::Date;
using model::Money;
using testing::HasSubstr;
using testing::SizeIs;

class KeepBaselineTest : public BringHouse {
  protected:
    model::Result<KeptBaseline> worked(Date on) {
        return keepBaseline(*book_, compute::withoutVoided(book_->jobRows(job_).value()), on,
                            book_->position(), now_());
    }
};

const Date kMonday = Date::fromYmd(2026, 3, 2).value();

// 4,200 + 900 + 180 are lump sums; old tile and tile have no price; the floor is kept. 10 % of
// 5,280 is 528.
TEST_F(KeepBaselineTest, WhatStandsIsFrozenAndTakenBackAsOne) {
    buildHouse();
    store::Action action("contingency");
    action.set(job_.raw(), model::field::Job::contingency, model::valueOf(model::Percent::of(10)));
    commit(action);
    const auto before = dump();
    auto kept = worked(kMonday);
    ASSERT_TRUE(kept.ok()) << kept.error().message;
    EXPECT_EQ(kept.value().total, Money::fromMinor(528'000));
    EXPECT_EQ(kept.value().frozen.contingency, Money::fromMinor(52'800));
    EXPECT_EQ(kept.value().frozen.unpriced, 2u);
    EXPECT_EQ(dump(), before) << "only worked out as yet";
    commit(kept.value().action);
    ASSERT_THAT(rows<Baseline>(), SizeIs(1));
    EXPECT_EQ(rows<Baseline>()[0].id, kept.value().id);
    EXPECT_EQ(rows<Baseline>()[0].frozenOn, kMonday);
    Money total;
    for (const auto& item : rows<BaselineItem>()) {
        EXPECT_EQ(item.baseline, kept.value().id);
        total += item.budget.value_or(Money{});
    }
    EXPECT_EQ(total, Money::fromMinor(528'000));
    ASSERT_TRUE(book_->undo(now_()).ok());
    EXPECT_THAT(rows<Baseline>(), SizeIs(0));
    EXPECT_THAT(rows<BaselineItem>(), SizeIs(0));
}

TEST_F(KeepBaselineTest, AnEarlierOneStaysAndTheSameDayIsRefused) {
    buildHouse();
    commit(worked(kMonday).value().action);
    const auto again = worked(kMonday);
    ASSERT_FALSE(again.ok());
    EXPECT_THAT(again.error().message, HasSubstr("there is a baseline of 2026-03-02 already"));
    commit(worked(kMonday + 7).value().action);
    EXPECT_THAT(rows<Baseline>(), SizeIs(2));
}

TEST_F(KeepBaselineTest, WithoutScopeThereIsNothingToFreeze) {
    const auto kept = worked(kMonday);
    ASSERT_FALSE(kept.ok());
    EXPECT_THAT(kept.error().message, HasSubstr("there is no scope to freeze"));
}

// Worked out from what the book held: something was written since.
TEST_F(KeepBaselineTest, WhatWasWrittenMeanwhileIsNotPassedOver) {
    buildHouse();
    const auto kept = worked(kMonday);
    ASSERT_TRUE(kept.ok());
    bringGood("crews", "Crew,Trade\nPaint crew,paint\n");
    EXPECT_FALSE(book_->commit(kept.value().action, now_()).ok());
    EXPECT_THAT(rows<Baseline>(), SizeIs(0));
}

}  // namespace
}  // namespace ledgerboard::intake
