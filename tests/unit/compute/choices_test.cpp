// Protects the comparison of a job's open alternates: each option's figures, the day to decide by,
// the best set under the ceiling of the street, and what is not offered and why. Figures by hand.
#include "core/compute/choices.h"

#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace ledgerboard::compute {
namespace {

using model::Kind;
using model::Money;
using tests::day;
using tests::id;
using tests::money;
using tests::percent;

// A bath that nobody has decided on, and a wall that is left for now. Nothing but them: the work
// ends on Friday 29 May, as the job says.
class ChoicesTest : public testing::Test {
  protected:
    tests::SampleJob job_;
    ChoicesAsk ask_;
    PlanJob plan_;

    void SetUp() override {
        model::Job& job = job_.rows.job;
        job.resaleLikely = money("300000");
        job.streetCeiling = money("310000");
        job.sellingCosts = percent("2");
        job.commission = percent("4");
        job.targetFinishOn = day("2026-05-29");
        model::Space& hall = job_.add(job_.rows.spaces);
        hall.name = "Hall";
        alternate("second bath").space = hall.id;
        option(1, "leave as is");
        model::Option& bath = option(1, "half bath", "6000", "4");
        bath.valueLow = money("8000");
        bath.valueLikely = money("10000");
        bath.valueHigh = money("15000");
        alternate("wall");
        job_.rows.alternates[1].carried = option(2, "leave the wall").id;
        option(2, "open the wall").valueLikely = money("4000");
        model::Item& wall = job_.item("wall", "3000");
        wall.option = id<Kind::Option>(4);
        wall.daysLikely = tests::amountOf("2");
        wall.leadDays = 10;
        wall.plannedStartOn = day("2026-05-20");
    }

    model::Alternate& alternate(const char* question) {
        model::Alternate& alternate = job_.add(job_.rows.alternates);
        alternate.question = question;
        return alternate;
    }

    model::Option& option(std::uint32_t alternate, const char* name, const char* cost = "",
                          const char* days = "") {
        model::Option& option = job_.add(job_.rows.options);
        option.alternate = id<Kind::Alternate>(alternate);
        option.name = name;
        if (*cost != '\0') {
            option.cost = money(cost);
        }
        if (*days != '\0') {
            option.days = tests::amountOf(days);
        }
        return option;
    }

    model::Result<Choices> result() {
        Deal deal;
        deal.dayCosts = money("100");
        const model::Date today = day("2026-05-08");
        return choicesOf(job_.rows, figuresOf(job_.rows, today), deal, today, ask_, plan_);
    }

    Choices choices() {
        auto out = result();
        EXPECT_TRUE(out.ok()) << out.error().message;
        return out.ok() ? out.value() : Choices{};
    }

    // The names of the options of a set, in order of alternates.
    std::vector<std::string> names(const Choices& choices, const SetChoice& set) {
        std::vector<std::string> out;
        for (std::size_t k = 0; k < set.options.size(); ++k) {
            const auto& at = set.options[k];
            out.push_back(at ? job_.rows.options[choices.alternates[k].options[*at].option].name
                             : "");
        }
        return out;
    }
};

using Names = std::vector<std::string>;

// Four working days after Friday 29 May end on Thursday 4 June, 6 calendar days later: 600.
// Net 10,000 x 94 % - 6,000 - 600 = 2,800; low 7,520 - 6,600 = 920; high: the ceiling leaves room
// for 10,000 of 15,000, so 2,800. Even at 6,600 / 94 % = 7,021.28.
TEST_F(ChoicesTest, AnOptionByItself) {
    const Choices all = choices();
    ASSERT_EQ(all.alternates.size(), 2U);
    EXPECT_EQ(all.alternates[0].name, "Hall: second bath");
    const OptionChoice& bath = all.alternates[0].options[1];
    EXPECT_EQ(bath.cost, money("6000"));
    EXPECT_EQ(bath.finishDays, 6);
    EXPECT_EQ(bath.daysFrom, DaysFrom::OwnDays);
    EXPECT_EQ(bath.netLow, money("920"));
    EXPECT_EQ(bath.netLikely, money("2800"));
    EXPECT_EQ(bath.netHigh, money("2800"));
    EXPECT_EQ(bath.breakEvenValue, money("7021.28"));
    EXPECT_EQ(bath.valueExpected, money("10500"));  // (8,000 + 40,000 + 15,000) / 6
    EXPECT_EQ(bath.resaleAfter, money("310000"));
    EXPECT_EQ(bath.cutByCeiling, Money{});
    const OptionChoice& leave = all.alternates[0].options[0];
    EXPECT_TRUE(leave.leavesAsIs && leave.isPriced);
    EXPECT_EQ(leave.netLikely, Money{});
}

// Its item costs 3,000 and takes two days, to Tuesday 2 June: 4,000 x 94 % - 3,000 - 400 = 360.
TEST_F(ChoicesTest, AnOptionWithItemsIsPricedAndTimedByThem) {
    const Choices all = choices();
    const OptionChoice& open = all.alternates[1].options[1];
    EXPECT_EQ(open.cost, money("3000"));
    EXPECT_EQ(open.items, 1U);
    EXPECT_EQ(open.finishDays, 4);
    EXPECT_EQ(open.daysFrom, DaysFrom::ItemDays);
    EXPECT_EQ(open.netLikely, money("360"));
    job_.rows.options[3].cost = money("9999");  // does not count beside items
    EXPECT_EQ(choices().alternates[1].options[1].cost, money("3000"));
}

TEST_F(ChoicesTest, TheCarriedOptionComesFirst) {
    job_.rows.alternates[1].carried = id<Kind::Option>(4);
    const Choices all = choices();
    EXPECT_TRUE(all.alternates[1].options[0].isCarried);
    EXPECT_EQ(all.alternates[1].options[0].option, 3U);
    EXPECT_EQ(all.alternates[1].carried, 0U);
    EXPECT_FALSE(all.alternates[0].carried);
    EXPECT_EQ(all.now.cost, money("3000"));
    EXPECT_EQ(all.now.net, money("360"));
}

// Both together: 14,500 expected, of which the ceiling leaves 10,000: 9,400 - 9,000 - 1,000 =
// -600. The bath alone 2,800, the wall alone 360. So without the bath, or with the wall, the best
// that can be had is 2,440 less.
TEST_F(ChoicesTest, TheBestSetAndWhy) {
    const Choices all = choices();
    ASSERT_TRUE(all.best);
    EXPECT_EQ(names(all, *all.best), (Names{"half bath", "leave the wall"}));
    EXPECT_EQ(all.best->net, money("2800"));
    EXPECT_EQ(all.best->added, money("10000"));
    EXPECT_EQ(all.best->finishOn, day("2026-06-04"));
    EXPECT_EQ(all.alternates[0].worth, money("2440"));
    EXPECT_EQ(all.alternates[0].otherwise, 0U);
    EXPECT_EQ(all.alternates[1].worth, money("2440"));
    EXPECT_EQ(all.now.net, Money{});
    ASSERT_EQ(all.frontier.size(), 3U);  // nothing; the wall alone; the bath alone
    EXPECT_EQ(all.frontier[0].net, Money{});
    EXPECT_EQ(all.frontier[1].net, money("360"));
    EXPECT_EQ(all.frontier[2].net, money("2800"));
}

TEST_F(ChoicesTest, CashAndFinishLimitTheSets) {
    ask_.cash = money("5999.99");
    Choices all = choices();
    EXPECT_EQ(names(all, *all.best), (Names{"leave as is", "open the wall"}));
    ask_ = {};
    ask_.finishOn = day("2026-06-03");  // five days after 29 May: the bath takes six
    all = choices();
    EXPECT_EQ(names(all, *all.best), (Names{"leave as is", "open the wall"}));
    ask_.finishOn = day("2026-05-28");
    all = choices();
    EXPECT_FALSE(all.best);
    EXPECT_EQ(all.whyNone.text(),
              "even the quickest set that goes together ends on 2026-05-29, after "
              "2026-05-28");
}

// At 84.13 % (one deviation): values of 10,500 that deviate by 7,000 / 6 = 1,166.67 and 4,000 that
// do not: the bath adds 9,333.33, so 8,773.33 - 6,600 = 2,173.33.
TEST_F(ChoicesTest, AtAChance) {
    ask_.chance = percent("84.13");
    const Choices all = choices();
    ASSERT_TRUE(all.bestAtChance && all.bestAtChance->netAtChance);
    EXPECT_NEAR(static_cast<double>(all.bestAtChance->netAtChance->minor()), 217'333, 50);
    EXPECT_EQ(all.best->net, money("2800"));
    EXPECT_NEAR(all.deviations, 1, 0.001);
}

// Standard normal table, from memory: 0.8416 at 80 %, 1.6449 at 95 %, 1.9600 at 97.5 %.
TEST(ChoicesChance, DeviationsOfTheNormalDistribution) {
    EXPECT_NEAR(deviationsFor(percent("80")), 0.8416, 0.00005);
    EXPECT_NEAR(deviationsFor(percent("95")), 1.6449, 0.00005);
    EXPECT_NEAR(deviationsFor(percent("97.5")), 1.9600, 0.00005);
    EXPECT_NEAR(deviationsFor(percent("50")), 0, 1e-9);
    EXPECT_NEAR(deviationsFor(percent("20")), -0.8416, 0.00005);
}

// The wall starts on 20 May; 10 days to come and 3 to be looked over before that is 7 May.
TEST_F(ChoicesTest, DecideByFromTheItems) {
    Choices all = choices();
    const Waiting& wall = all.alternates[1].waiting;
    EXPECT_EQ(wall.decideBy, day("2026-05-07"));
    EXPECT_FALSE(wall.isEntered);
    EXPECT_TRUE(wall.isLate);
    EXPECT_EQ(wall.item, 0U);
    EXPECT_EQ(wall.leadDays, 13);
    EXPECT_FALSE(wall.perDay);
    EXPECT_FALSE(all.alternates[0].waiting.decideBy);
    job_.rows.items[0].leadDays.reset();
    EXPECT_EQ(choices().alternates[1].waiting.decideBy, day("2026-05-20"));
    job_.rows.alternates[1].decideBy = day("2026-05-08");
    all = choices();
    EXPECT_TRUE(all.alternates[1].waiting.isEntered);
    EXPECT_EQ(all.alternates[1].waiting.decideBy, day("2026-05-08"));
    EXPECT_FALSE(all.alternates[1].waiting.isLate);
}

// A plan that ends on 10 June without options, and on 12 June with the wall, which is critical in
// it, or with both: then the bath costs no day of its own.
TEST_F(ChoicesTest, DaysComeFromThePlanWhereThereIsOne) {
    plan_ = [](const model::JobRows& rows) {
        const bool hasWall = rows.alternates[1].chosen == id<Kind::Option>(4);
        PlannedJob out;
        out.finishOn = hasWall ? day("2026-06-12") : day("2026-06-10");
        out.items.push_back({hasWall ? std::optional(day("2026-06-02")) : std::nullopt,
                             hasWall ? std::optional<std::int64_t>(0) : std::nullopt});
        return out;
    };
    const Choices all = choices();
    EXPECT_TRUE(all.hasPlan);
    EXPECT_EQ(all.finishWithout, day("2026-06-10"));
    EXPECT_EQ(all.alternates[0].options[1].finishDays, 0);
    EXPECT_EQ(all.alternates[0].options[1].netLikely, money("3400"));  // 9,400 - 6,000
    const OptionChoice& open = all.alternates[1].options[1];
    EXPECT_EQ(open.finishDays, 2);
    EXPECT_EQ(open.daysFrom, DaysFrom::Plan);
    EXPECT_EQ(open.netLikely, money("560"));  // 3,760 - 3,000 - 200
    const Waiting& wall = all.alternates[1].waiting;
    EXPECT_EQ(wall.decideBy, day("2026-05-20"));  // 2 June less 13 days
    EXPECT_EQ(wall.floatThousandths, 0);
    EXPECT_EQ(wall.perDay, money("100"));
    EXPECT_EQ(all.best->finishOn, day("2026-06-10"));
}

// Decided: 9,000 of the 10,000 left under the ceiling are taken. The bath then adds 1,000.
TEST_F(ChoicesTest, WhatIsDecidedCountsUnderTheCeiling) {
    alternate("porch").chosen = id<Kind::Option>(5);
    option(3, "rebuild the porch", "1").valueLikely = money("9000");
    const Choices all = choices();
    EXPECT_EQ(all.decided, 1U);
    ASSERT_EQ(all.alternates.size(), 2U);
    EXPECT_EQ(all.decidedValue, money("9000"));
    EXPECT_EQ(all.alternates[0].options[1].netLikely, money("-5660"));  // 940 - 6,600
    EXPECT_EQ(all.alternates[0].options[1].cutByCeiling, money("9000"));
    EXPECT_EQ(names(all, *all.best), (Names{"leave as is", "leave the wall"}));
}

TEST_F(ChoicesTest, WhatHasNoPriceIsInNoSet) {
    job_.rows.items[0].lumpSum.reset();
    job_.rows.options[1].cost.reset();
    const Choices all = choices();
    EXPECT_EQ(all.alternates[0].options[1].whyNotOffered.text(), "it has no cost yet");
    EXPECT_EQ(all.alternates[1].options[1].whyNotOffered.text(), "its item has no price yet");
    EXPECT_EQ(names(all, *all.best), (Names{"leave as is", "leave the wall"}));
    EXPECT_FALSE(all.alternates[0].worth);  // nothing else can be had
}

// As walk notes leave it: "either butcher block or quartz", and nothing entered of either.
TEST_F(ChoicesTest, OfSeveralThatSayNothingNoneLeavesThingsAsTheyAre) {
    job_.rows.options[0].cost.reset();
    job_.rows.options[1].cost.reset();
    for (std::size_t k = 0; k < 2; ++k) {
        job_.rows.options[k].days.reset();
        job_.rows.options[k].valueLow.reset();
        job_.rows.options[k].valueLikely.reset();
        job_.rows.options[k].valueHigh.reset();
    }
    const Choices all = choices();
    for (std::size_t k = 0; k < 2; ++k) {
        EXPECT_FALSE(all.alternates[0].options[k].leavesAsIs);
        EXPECT_EQ(all.alternates[0].options[k].whyNotOffered.text(), "it has no cost yet");
    }
    EXPECT_TRUE(all.alternates[1].options[0].leavesAsIs);
}

TEST_F(ChoicesTest, WhatNeedsWhatIsNotOfferedIsNotOffered) {
    job_.rows.options[1].cost.reset();
    job_.rows.options[3].needs = {id<Kind::Option>(2)};
    const Choices all = choices();
    EXPECT_EQ(all.alternates[1].options[1].whyNotOffered.text(),
              "it needs \"half bath\", which can't be chosen yet");
}

TEST_F(ChoicesTest, WhatWasDecidedRulesOut) {
    alternate("porch").chosen = id<Kind::Option>(5);
    option(3, "rebuild the porch", "1").excludes = {id<Kind::Option>(2)};
    option(3, "patch the porch", "1");
    job_.rows.options[3].needs = {id<Kind::Option>(6)};
    Choices all = choices();
    EXPECT_EQ(all.alternates[0].options[1].whyNotOffered.text(),
              "it does not go with \"rebuild the porch\", which was decided on");
    EXPECT_EQ(all.alternates[1].options[1].whyNotOffered.text(),
              "it needs \"patch the porch\", and \"rebuild the porch\" was decided on");
    job_.rows.options[4].excludes.clear();
    job_.rows.options[4].needs = {id<Kind::Option>(2)};
    all = choices();
    EXPECT_EQ(all.alternates[0].options[0].whyNotOffered.text(),
              "\"rebuild the porch\", which was decided on, needs \"half bath\"");
    EXPECT_EQ(all.alternates[0].options[1].whyNotOffered.text(), "");
}

TEST_F(ChoicesTest, NeedsThatContradictEachOther) {
    job_.rows.options[0].needs = {id<Kind::Option>(4)};
    job_.rows.options[1].needs = {id<Kind::Option>(4)};
    job_.rows.options[3].excludes = {id<Kind::Option>(1), id<Kind::Option>(2)};
    const Choices all = choices();
    EXPECT_FALSE(all.best);
    EXPECT_NE(all.whyNone.text().find("contradicts itself"), std::string::npos);
}

TEST_F(ChoicesTest, ValuesThatContradictEachOtherAreAnError) {
    job_.rows.options[1].valueLow = money("10000.01");
    const auto out = result();
    ASSERT_FALSE(out.ok());
    EXPECT_EQ(out.error().message,
              "option \"half bath\": its Value low is more than its Value: mend one with "
              "'ledgerboard set'");
}

TEST_F(ChoicesTest, AFinishNobodyKnowsCannotBeKept) {
    job_.rows.job.targetFinishOn.reset();
    EXPECT_TRUE(result().ok());
    ask_.finishOn = day("2026-06-03");
    const auto out = result();
    ASSERT_FALSE(out.ok());
    EXPECT_NE(out.error().message.find("nothing tells when the work ends"), std::string::npos);
}

TEST_F(ChoicesTest, WithoutAlternatesOrOptions) {
    job_.rows.options.clear();
    Choices all = choices();
    ASSERT_EQ(all.alternates.size(), 2U);
    EXPECT_TRUE(all.alternates[0].options.empty());
    EXPECT_EQ(names(all, *all.best), (Names{"", ""}));
    job_.rows.alternates.clear();
    all = choices();
    EXPECT_TRUE(all.alternates.empty());
}

TEST_F(ChoicesTest, WhatWasNotEnteredIsNamed) {
    job_.rows.job.streetCeiling.reset();
    job_.rows.job.resaleLikely.reset();
    job_.rows.job.commission.reset();
    const Choices all = choices();
    std::vector<std::string_view> headings;
    for (const AbsentInput& input : all.leftOut) {
        headings.push_back(input.heading);
    }
    EXPECT_EQ(headings,
              (std::vector<std::string_view>{"Resale", "Ceiling of the street", "Commission"}));
    // Without a ceiling the high value counts whole: 15,000 x 98 % - 6,600.
    EXPECT_EQ(all.alternates[0].options[1].netHigh, money("8100"));
}

// Another option that is worse in all changes nothing of the best set.
TEST_F(ChoicesTest, AnOptionNeverChosenChangesNothing) {
    const Choices before = choices();
    option(1, "gold bath", "90000", "30").valueLikely = money("1");
    const Choices after = choices();
    EXPECT_EQ(names(before, *before.best), names(after, *after.best));
    EXPECT_EQ(before.best->net, after.best->net);
    EXPECT_EQ(before.frontier.size(), after.frontier.size());
}

}  // namespace
}  // namespace ledgerboard::compute
