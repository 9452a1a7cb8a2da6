// Protects that choices read the job's plan rightly: by how far an option moves the finish, its
// float, and the day its work starts. Dates by hand, on a calendar of working weeks.
#include "core/compute/choices_plan.h"

#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace ledgerboard::compute {
namespace {

using model::Kind;
using tests::day;
using tests::id;
using tests::money;

// On Friday 8 May: the floor takes five days, from Monday 11 to Friday 15 May. Open is whether a
// heated floor follows it (three days, to Wednesday 20 May), and whether the door, two days, is
// made new beside it; a lock of one day has no item.
class ChoicesPlanTest : public testing::Test {
  protected:
    tests::SampleJob job_;
    model::Date today_ = day("2026-05-08");

    void SetUp() override {
        job_.item("floor", "900").daysLikely = tests::amountOf("5");
        addAlternate("heated floor", 1);
        addAlternate("new door", 2);
        addAlternate("lock", 3);
        job_.rows.options[2].cost = money("100");
        job_.rows.options[2].days = tests::amountOf("1");
        addItem("heat", "3", 1);
        addItem("door", "2", 2);
        model::Link& link = job_.add(job_.rows.links);
        link.fromItem = id<Kind::Item>(1);
        link.toItem = id<Kind::Item>(2);
        link.type = model::LinkKind::FinishToStart;
    }

    void addAlternate(const char* name, std::uint32_t number) {
        job_.add(job_.rows.alternates).question = name;
        model::Option& option = job_.add(job_.rows.options);
        option.name = name;
        option.alternate = id<Kind::Alternate>(number);
    }

    void addItem(const char* object, const char* days, std::uint32_t option) {
        model::Item& item = job_.item(object, "500");
        item.daysLikely = tests::amountOf(days);
        item.option = id<Kind::Option>(option);
    }

    Choices choices(const PlanJob& plan) {
        Deal deal;
        deal.dayCosts = money("100");
        auto out =
            choicesOf(job_.rows, figuresOf(job_.rows, today_), deal, today_, ChoicesAsk{}, plan);
        EXPECT_TRUE(out.ok()) << out.error().message;
        return out.ok() ? out.value() : Choices{};
    }
};

TEST_F(ChoicesPlanTest, FinishFloatAndStartAreThePlans) {
    const Choices all = choices(planJobAsOf(today_));
    EXPECT_TRUE(all.hasPlan);
    EXPECT_EQ(all.finishWithout, day("2026-05-15"));
    const AlternateChoice& heat = all.alternates[0];
    EXPECT_EQ(heat.options[0].finishDays, 5);  // Friday 15 to Wednesday 20 May
    EXPECT_EQ(heat.options[0].daysFrom, DaysFrom::Plan);
    EXPECT_EQ(heat.waiting.decideBy, day("2026-05-18"));
    EXPECT_EQ(heat.waiting.item, 1U);
    EXPECT_EQ(heat.waiting.floatThousandths, 0);
    EXPECT_EQ(heat.waiting.perDay, money("100"));
    const AlternateChoice& door = all.alternates[1];
    EXPECT_EQ(door.options[0].finishDays, 0);
    EXPECT_EQ(door.waiting.decideBy, day("2026-05-11"));
    EXPECT_EQ(door.waiting.floatThousandths, 3000);  // five days less two
    EXPECT_FALSE(door.waiting.perDay);
    const AlternateChoice& lock = all.alternates[2];
    EXPECT_EQ(lock.options[0].finishDays, 0);
    EXPECT_EQ(lock.waiting.option, 2U);
    EXPECT_FALSE(lock.waiting.item);
    EXPECT_EQ(lock.waiting.floatThousandths, 4000);
}

TEST_F(ChoicesPlanTest, APlanWithALoopTellsNothing) {
    model::Link& back = job_.add(job_.rows.links);
    back.fromItem = id<Kind::Item>(2);
    back.toItem = id<Kind::Item>(1);
    back.type = model::LinkKind::FinishToStart;
    job_.rows.job.targetFinishOn = day("2026-05-15");
    const Choices all = choices(planJobAsOf(today_));
    // Without the heated floor there is no loop; with it its own three days stand in.
    EXPECT_TRUE(all.hasPlan);
    EXPECT_EQ(all.alternates[0].options[0].daysFrom, DaysFrom::ItemDays);
    EXPECT_EQ(all.alternates[0].options[0].finishDays, 5);
    EXPECT_FALSE(all.alternates[0].waiting.floatThousandths);
}

// Nothing is left to do, since the 1st: an option is counted from today on, not from then.
TEST_F(ChoicesPlanTest, WhenAllIsFinishedDaysCountFromToday) {
    job_.mark(1, "2026-05-01", "100");
    const Choices all = choices(planJobAsOf(today_));
    EXPECT_EQ(all.finishWithout, day("2026-05-08"));
    EXPECT_EQ(all.alternates[1].options[0].finishDays, 4);  // Monday and Tuesday
}

}  // namespace
}  // namespace ledgerboard::compute
