// Protects how a mark becomes a percent: five ways of measuring, what each allows, which mark is
// shown and which is seen, and how a space's percent is weighed.
#include "core/compute/progress.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;
using testing::HasSubstr;

Item measured(Measure measure) {
    Item item;
    item.treatment = Treatment::Add;
    item.measure = measure;
    item.quantity = amountOf("14");
    item.unit = "each";
    item.steps = {{"prep", percent("20")}, {"Set", percent("60")}, {"grout", percent("20")}};
    return item;
}

Mark saysPercent(std::string_view text) {
    Mark mark;
    mark.percent = percent(text);
    return mark;
}

Mark saysCount(std::string_view text) {
    Mark mark;
    mark.count = amountOf(text);
    return mark;
}

Mark saysSteps(std::string_view text) {
    Mark mark;
    mark.stepsDone = text;
    return mark;
}

bool isTaken(const Item& item, const Mark& mark) {
    return checkMark(item, mark, "Bath/tile").ok();
}

std::string refusal(const Item& item, const Mark& mark) {
    const auto result = checkMark(item, mark, "Bath/tile");
    return result.ok() ? std::string() : result.error().message;
}

TEST(CheckMark, NoneOrDoneTakesNothingBetween) {
    const Item item = measured(Measure::NoneOrDone);
    EXPECT_TRUE(isTaken(item, saysPercent("0")));
    EXPECT_TRUE(isTaken(item, saysPercent("100")));
    EXPECT_THAT(refusal(item, saysPercent("50")), HasSubstr("percent 0 or 100"));
    EXPECT_THAT(refusal(item, saysPercent("50")), HasSubstr("Bath/tile"));
    EXPECT_FALSE(isTaken(item, saysCount("3")));
}

TEST(CheckMark, HalfAndHalfTakesThree) {
    const Item item = measured(Measure::HalfAndHalf);
    for (const auto* taken : {"0", "50", "100"}) {
        EXPECT_TRUE(isTaken(item, saysPercent(taken))) << taken;
    }
    EXPECT_THAT(refusal(item, saysPercent("49.99")), HasSubstr("0, 50 or 100"));
}

TEST(CheckMark, StepsMustBeItsOwn) {
    const Item item = measured(Measure::WeightedSteps);
    EXPECT_TRUE(isTaken(item, saysSteps("prep; set")));
    EXPECT_TRUE(isTaken(item, saysPercent("100")));
    EXPECT_THAT(refusal(item, saysSteps("prep; paint")), HasSubstr("prep; Set; grout"));
    EXPECT_FALSE(isTaken(item, saysPercent("60")));
}

TEST(CheckMark, ACountStaysWithinTheQuantity) {
    Item item = measured(Measure::CountedUnits);
    EXPECT_TRUE(isTaken(item, saysCount("0")));
    EXPECT_TRUE(isTaken(item, saysCount("14")));
    EXPECT_THAT(refusal(item, saysCount("14.001")), HasSubstr("from 0 to 14 each"));
    EXPECT_FALSE(isTaken(item, saysCount("-1")));
    item.quantity.reset();
    EXPECT_THAT(refusal(item, saysCount("1")), HasSubstr("set its quantity"));
}

TEST(CheckMark, JudgedTakesAnyPercentOfAHundred) {
    const Item item = measured(Measure::Unset);
    EXPECT_TRUE(isTaken(item, saysPercent("72.5")));
    EXPECT_THAT(refusal(item, saysPercent("100.01")), HasSubstr("from 0 to 100"));
    EXPECT_FALSE(isTaken(item, saysPercent("-1")));
}

TEST(CheckMark, SaysOneThingAboutWorkThatIsDone) {
    Item item = measured(Measure::JudgedPercent);
    EXPECT_THAT(refusal(item, Mark{}), HasSubstr("says nothing"));
    Mark both = saysPercent("10");
    both.count = amountOf("2");
    EXPECT_THAT(refusal(item, both), HasSubstr("more than one thing"));
    item.treatment = Treatment::Keep;
    EXPECT_THAT(refusal(item, saysPercent("10")), HasSubstr("is kept"));
}

TEST(PercentOf, ReadsEachWay) {
    EXPECT_EQ(percentOf(measured(Measure::NoneOrDone), saysPercent("90")), percent("0"));
    EXPECT_EQ(percentOf(measured(Measure::NoneOrDone), saysPercent("100")), percent("100"));
    EXPECT_EQ(percentOf(measured(Measure::HalfAndHalf), saysPercent("10")), percent("50"));
    EXPECT_EQ(percentOf(measured(Measure::HalfAndHalf), saysPercent("0")), percent("0"));
    EXPECT_EQ(percentOf(measured(Measure::HalfAndHalf), saysPercent("100")), percent("100"));
    EXPECT_EQ(percentOf(measured(Measure::WeightedSteps), saysSteps("PREP;set")), percent("80"));
    EXPECT_EQ(percentOf(measured(Measure::JudgedPercent), saysPercent("33.3")), percent("33.3"));
    // 3 of 14 = 21.428...: the nearest hundredth.
    EXPECT_EQ(percentOf(measured(Measure::CountedUnits), saysCount("3")), percent("21.43"));
}

TEST(PercentOf, IsAHundredOnlyWhenNothingIsMissing) {
    Item item = measured(Measure::CountedUnits);
    item.quantity = amountOf("100000");
    EXPECT_EQ(percentOf(item, saysCount("99999.999")), percent("99.99"));
    EXPECT_EQ(percentOf(item, saysCount("100000")), percent("100"));
    EXPECT_EQ(percentOf(item, saysCount("200000")), percent("100"));
}

TEST(PercentOf, StepsWeighWhateverTheyAddUpTo) {
    Item item = measured(Measure::WeightedSteps);
    item.steps = {{"rough", percent("10")}, {"finish", percent("30")}};
    EXPECT_EQ(percentOf(item, saysSteps("rough")), percent("25"));
    EXPECT_EQ(percentOf(item, saysSteps("rough; rough")), percent("25"));
    item.steps.clear();
    EXPECT_EQ(percentOf(item, saysSteps("rough")), percent("0"));
}

TEST(PercentOf, SaysNothingWhereTheMarkDoes) {
    EXPECT_FALSE(percentOf(measured(Measure::JudgedPercent), Mark{}));
    Item item = measured(Measure::CountedUnits);
    item.quantity = Quantity{};
    EXPECT_FALSE(percentOf(item, saysCount("3")));
}

TEST(Marks, TheLatestDateIsShownThenTheLaterClock) {
    SampleJob job;
    job.item("tile", "100");
    job.mark(1, "2026-05-12", "60").id = id<Kind::Mark>(1, 500);
    job.mark(1, "2026-05-12", "45").id = id<Kind::Mark>(2, 900);
    job.mark(1, "2026-05-11", "80").id = id<Kind::Mark>(3, 999);
    const Marks marks(job.rows);
    EXPECT_EQ(marks.shown(0), percent("45"));
    EXPECT_EQ(marks.of(0).size(), 3U);
    EXPECT_EQ(marks.shownOn(0, day("2026-05-11")), percent("80"));
    EXPECT_EQ(marks.shownOn(0, day("2026-05-10")), percent("0"));
}

TEST(Marks, AtOneClockTheDeviceDecides) {
    SampleJob job;
    job.item("tile", "100");
    job.mark(1, "2026-05-12", "60").onDevice = id<Kind::Device>(2);
    job.mark(1, "2026-05-12", "45").onDevice = id<Kind::Device>(1);
    EXPECT_EQ(Marks(job.rows).shown(0), percent("60"));
}

TEST(Marks, OnlyOwnersSee) {
    SampleJob job;
    job.item("tile", "100");
    job.item("paint", "100");
    job.mark(1, "2026-05-11", "40", 1);
    job.mark(1, "2026-05-12", "70", 2);
    job.mark(2, "2026-05-12", "30", 2);
    job.mark(2, "2026-05-13", "35", 9);  // by nobody known
    const Marks marks(job.rows);
    EXPECT_EQ(marks.shown(0), percent("70"));
    EXPECT_EQ(marks.seen(0), percent("40"));
    EXPECT_EQ(marks.shown(1), percent("35"));
    EXPECT_EQ(marks.seen(1), percent("0"));
    EXPECT_EQ(marks.seenOn(0, day("2026-05-10")), percent("0"));
}

TEST(Marks, AnUndatedMarkStandsBeforeTheDatedOnes) {
    SampleJob job;
    job.item("tile", "100");
    job.mark(1, "2026-05-11", "40");
    job.mark(1, "2026-05-11", "90").markedOn.reset();
    const Marks marks(job.rows);
    EXPECT_EQ(marks.shown(0), percent("40"));
    EXPECT_EQ(marks.shownOn(0, day("2026-05-10")), percent("90"));
}

TEST(WeightedPercent, WeighsByBudget) {
    WeightedPercent percentDone;
    EXPECT_EQ(percentDone.value(), percent("0"));
    percentDone.add(money("1000"), percent("100"));
    percentDone.add(money("3000"), percent("20"));
    // (1000 x 100 + 3000 x 20) / 4000 = 40.
    EXPECT_EQ(percentDone.value(), percent("40"));
    EXPECT_EQ(percentDone.of(money("500")), money("200"));
    EXPECT_EQ(percentDone.of(money("500"), percent("90")), money("180"));
}

TEST(WeightedPercent, IsThePlainMeanWithoutBudget) {
    WeightedPercent percentDone;
    percentDone.add(Money{}, percent("50"));
    percentDone.add(Money{}, percent("100"));
    percentDone.add(Money{}, percent("0"));
    EXPECT_EQ(percentDone.value(), percent("50"));
}

TEST(WeightedPercent, ABudgetBelowZeroWeighsNothing) {
    WeightedPercent percentDone;
    percentDone.add(money("100"), percent("100"));
    percentDone.add(money("-300"), percent("0"));
    EXPECT_EQ(percentDone.value(), percent("100"));
}

}  // namespace
