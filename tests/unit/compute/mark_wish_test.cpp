// Protects what a thumb on the rule says: stops by the way an item is measured, snapping to 5 %,
// counts in whole units, and 100 only for finished. Expected figures are worked by hand.
#include "core/compute/mark_wish.h"

#include <gtest/gtest.h>

namespace ledgerboard::compute {
namespace {

using model::Measure;
using model::Percent;
using model::Quantity;

const model::Date kDay = model::Date::fromYmd(2026, 5, 15).value();

model::Item measured(Measure measure) {
    model::Item item;
    item.object = "tile";
    item.treatment = model::Treatment::Replace;
    item.measure = measure;
    return item;
}

TEST(MarkWish, JudgedPercentStopsAtEveryFive) {
    const auto item = measured(Measure::JudgedPercent);
    EXPECT_EQ(stopsOf(item), 20);
    EXPECT_EQ(percentAt(item, 11), Percent::of(55));
    EXPECT_EQ(wishAt(item, 11).percent, Percent::of(55));
    EXPECT_EQ(stopAt(item, Percent::of(56)), 11);
    EXPECT_EQ(stopAt(item, Percent::of(58)), 12);
}

TEST(MarkWish, TheLastStopIsForFinishedAlone) {
    const auto item = measured(Measure::JudgedPercent);
    EXPECT_EQ(stopAt(item, Percent::of(99)), 19);
    EXPECT_EQ(stopAt(item, Percent::whole()), 20);
}

TEST(MarkWish, CountedUnitsStopAtEachUnit) {
    auto item = measured(Measure::CountedUnits);
    item.quantity = Quantity::of(14);
    EXPECT_EQ(stopsOf(item), 14);
    EXPECT_EQ(wishAt(item, 3).count, Quantity::of(3));
    EXPECT_FALSE(wishAt(item, 3).percent.has_value());
    EXPECT_EQ(wishAt(item, 14).percent, Percent::whole());
    // 3 of 14 is kept as 21.43 %, nearest to the third stop.
    EXPECT_EQ(stopAt(item, Percent::fromBasisPoints(2143)), 3);
}

TEST(MarkWish, ManyOrBrokenUnitsStopAtHundredths) {
    auto item = measured(Measure::CountedUnits);
    item.quantity = Quantity::fromThousandths(12'500);
    EXPECT_EQ(stopsOf(item), 100);
    EXPECT_EQ(wishAt(item, 20).count, Quantity::fromThousandths(2'500));
    item.quantity = Quantity::of(860);
    EXPECT_EQ(stopsOf(item), 100);
    EXPECT_EQ(wishAt(item, 50).count, Quantity::of(430));
}

TEST(MarkWish, WithoutAQuantityOnlyNoneOrFinishedCanBeSaid) {
    const auto item = measured(Measure::CountedUnits);
    EXPECT_EQ(stopsOf(item), 1);
    EXPECT_TRUE(wishAt(item, 1).percent.has_value());
}

TEST(MarkWish, HalfAndHalfHasOneStopBetween) {
    const auto item = measured(Measure::HalfAndHalf);
    EXPECT_EQ(stopsOf(item), 2);
    EXPECT_EQ(wishAt(item, 1).percent, Percent::of(50));
    EXPECT_EQ(stopsOf(measured(Measure::NoneOrDone)), 1);
}

TEST(MarkWish, TheMarkIsOneTheCoreTakes) {
    auto item = measured(Measure::CountedUnits);
    item.quantity = Quantity::of(14);
    for (int stop = 0; stop <= stopsOf(item); ++stop) {
        EXPECT_TRUE(markOf(item, wishAt(item, stop), kDay).ok()) << stop;
    }
    auto kept = measured(Measure::JudgedPercent);
    kept.treatment = model::Treatment::Keep;
    EXPECT_FALSE(markOf(kept, finishedWish(), kDay).ok());
}

TEST(MarkWish, StepsAndWordsComeAlong) {
    auto item = measured(Measure::WeightedSteps);
    item.steps = {{"prep", Percent::of(20)}, {"set", Percent::of(60)}, {"grout", Percent::of(20)}};
    MarkWish wish;
    wish.steps = {"prep", "set"};
    wish.note = "grout is short by a bag";
    const auto mark = markOf(item, wish, kDay);
    ASSERT_TRUE(mark.ok());
    EXPECT_EQ(mark.value().stepsDone, "prep; set");
    EXPECT_EQ(mark.value().note, "grout is short by a bag");
    EXPECT_EQ(mark.value().markedOn, kDay);
}

}  // namespace
}  // namespace ledgerboard::compute
