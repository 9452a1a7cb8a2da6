// Protects: which punch items are open, how they read, what they cost and who is charged. How:
// small lists with looks of known days, sums worked by hand.
#include "core/compute/punch_list.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace ledgerboard::compute {
namespace {

using model::Kind;
using model::Verdict;
using testing::ElementsAre;
using testing::HasSubstr;
using tests::day;
using tests::id;
using tests::money;
using tests::SampleJob;

// A Friday.
const model::Date kToday = day("2026-05-22");

class PunchListTest : public testing::Test {
  protected:
    SampleJob job_;

    void SetUp() override {
        for (const char* name : {"Tile crew", "Paint crew"}) {
            job_.add(job_.rows.crews).name = name;
        }
        job_.add(job_.rows.spaces).name = "Kitchen";
        job_.add(job_.rows.spaces).name = "Bathroom";
        job_.rows.spaces[0].walkOrder = 2;
        job_.rows.spaces[1].walkOrder = 1;
    }

    model::Punch& punch(const char* what, std::uint32_t crew, const char* due,
                        std::uint32_t space = 1) {
        model::Punch& punch = job_.add(job_.rows.punches);
        punch.what = what;
        punch.space = id<Kind::Space>(space);
        if (crew != 0) {
            punch.crew = id<Kind::Crew>(crew);
        }
        if (*due != '\0') {
            punch.dueOn = day(due);
        }
        return punch;
    }

    void look(std::uint32_t punch, const char* on, Verdict said) {
        model::Look& look = job_.add(job_.rows.looks);
        look.punch = id<Kind::Punch>(punch);
        look.said = said;
        if (*on != '\0') {
            look.lookedOn = day(on);
        }
    }

    [[nodiscard]] PunchList read() const { return punchListOf(job_.rows, kToday); }

    [[nodiscard]] std::string sentence(std::size_t at) const { return read().all.at(at).sentence; }
};

TEST_F(PunchListTest, ReadsAsASentence) {
    punch("grout open at tub", 1, "2026-05-28");
    EXPECT_EQ(sentence(0), "Tile crew, by Thursday: grout open at tub");
    job_.rows.punches[0].dueOn = kToday;
    EXPECT_EQ(sentence(0), "Tile crew, today: grout open at tub");
    job_.rows.punches[0].dueOn = day("2026-05-29");  // a week ahead: which Friday must be told
    EXPECT_EQ(sentence(0), "Tile crew, by Fri 29 May: grout open at tub");
    job_.rows.punches[0].dueOn = day("2026-05-21");
    EXPECT_EQ(sentence(0), "Tile crew, due since Thu 21 May: grout open at tub");
    job_.rows.punches[0].dueOn.reset();
    job_.rows.punches[0].crew = {};
    EXPECT_EQ(sentence(0), "Nobody yet: grout open at tub");
}

TEST_F(PunchListTest, TheLastLookDecides) {
    punch("grout open", 1, "");
    EXPECT_TRUE(read().all[0].isOpen);
    look(1, "2026-05-20", Verdict::SaidFixed);
    EXPECT_TRUE(read().all[0].isOpen);
    EXPECT_THAT(sentence(0), HasSubstr("said fixed Wed 20 May, not looked at yet"));
    look(1, "2026-05-21", Verdict::Accepted);
    EXPECT_FALSE(read().all[0].isOpen);
    EXPECT_EQ(read().open, 0U);
    look(1, "2026-05-21", Verdict::NotRight);  // the same day, made later
    EXPECT_TRUE(read().all[0].isOpen);
    EXPECT_THAT(sentence(0), HasSubstr("not right"));
    look(1, "2026-05-22", Verdict::Accepted);
    look(1, "2026-05-19", Verdict::NotRight);  // came in late, dated earlier
    look(1, "", Verdict::NotRight);            // undated, so before all of them
    EXPECT_FALSE(read().all[0].isOpen);
}

TEST_F(PunchListTest, ByWalkingOrderThenByDueDay) {
    punch("third", 1, "2026-05-29", 1);
    punch("second", 1, "2026-05-26", 1);
    punch("first", 2, "", 2);
    std::vector<std::string> order;
    for (const PunchRead& one : read().all) {
        order.push_back(job_.rows.punches[one.punch].what);
    }
    EXPECT_THAT(order, ElementsAre("first", "second", "third"));
}

// Open: 140 + 60 = 200 for the tile crew, one of its three without a cost; the accepted one's 500
// are no longer to be spent, but still charged back: 40 + 500 = 540 to the paint crew.
TEST_F(PunchListTest, CostsAndChargeBacksAddUp) {
    punch("a", 1, "2026-05-21").cost = money("140");
    punch("b", 1, "").cost = money("60");
    punch("c", 1, "");
    punch("d", 2, "").cost = money("500");
    look(4, "2026-05-20", Verdict::Accepted);
    job_.rows.punches[1].chargeBackTo = id<Kind::Crew>(2);
    job_.rows.punches[1].chargeBack = money("40");
    job_.rows.punches[2].chargeBackTo = id<Kind::Crew>(2);
    job_.rows.punches[3].chargeBackTo = id<Kind::Crew>(2);  // its cost, where no amount is entered
    const PunchList list = read();
    EXPECT_EQ(list.open, 3U);
    EXPECT_EQ(list.late, 1U);
    EXPECT_EQ(list.cost, money("200"));
    EXPECT_EQ(list.withoutCost, 1U);
    ASSERT_EQ(list.crews.size(), 1U);
    EXPECT_EQ(list.crews[0].name, "Tile crew");
    EXPECT_EQ(list.crews[0].open, 3U);
    EXPECT_EQ(list.crews[0].cost, money("200"));
    ASSERT_EQ(list.chargeBacks.size(), 1U);
    EXPECT_EQ(list.chargeBacks[0].name, "Paint crew");
    EXPECT_EQ(list.chargeBacks[0].items, 3U);
    EXPECT_EQ(list.chargeBacks[0].amount, money("540"));
    EXPECT_EQ(list.chargeBacks[0].withoutAmount, 1U);
}

// Common practice, no source: more than about 30 is not ready to be walked.
TEST_F(PunchListTest, ThirtyAreReadyAndThirtyOneAreNot) {
    EXPECT_TRUE(read().isReadyToWalk());
    for (int k = 0; k < 30; ++k) {
        punch("one", 1, "");
    }
    EXPECT_TRUE(read().isReadyToWalk());
    punch("one more", 1, "");
    EXPECT_FALSE(read().isReadyToWalk());
    look(31, "2026-05-20", Verdict::Accepted);
    EXPECT_TRUE(read().isReadyToWalk());
}

TEST_F(PunchListTest, NobodysItemsStandInAGroupOfTheirOwn) {
    punch("door rubs", 0, "");
    ASSERT_EQ(read().crews.size(), 1U);
    EXPECT_EQ(read().crews[0].name, "");
    EXPECT_TRUE(read().crews[0].crew.isNil());
}

}  // namespace
}  // namespace ledgerboard::compute
