// Protects what the week's questions are answered from: what left the house's purse and to whom,
// what the plan wanted and did not get, which crew stayed away, and what each is to be told.
#include "core/compute/this_week.h"

#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;

const Date kToday = day("2026-05-22");  // a Friday
const Date kSince = day("2026-05-15");

ThisWeek weekOf(const SampleJob& job) {
    return thisWeekOf(job.rows, figuresOf(job.rows, kToday), kSince, kToday);
}

Crew& addCrew(SampleJob& job, const char* name) {
    Crew& crew = job.add(job.rows.crews);
    crew.name = name;
    return crew;
}

Spend& addSpend(SampleJob& job, SpendKind kind, const char* on, const char* amount) {
    Spend& spend = job.add(job.rows.spends);
    spend.type = kind;
    spend.spentOn = day(on);
    spend.amount = money(amount);
    return spend;
}

TEST(ThisWeek, PaymentsOfTheWeekByWhoGotThem) {
    SampleJob job;
    addCrew(job, "Tile crew");
    addSpend(job, SpendKind::Payment, "2026-05-15", "100").crew = id<Kind::Crew>(1);  // last week
    addSpend(job, SpendKind::Payment, "2026-05-16", "200").crew = id<Kind::Crew>(1);
    addSpend(job, SpendKind::Payment, "2026-05-22", "300").crew = id<Kind::Crew>(1);
    addSpend(job, SpendKind::Receipt, "2026-05-20", "40").payee = "Hardware store";
    addSpend(job, SpendKind::Invoice, "2026-05-20", "900").crew = id<Kind::Crew>(1);  // not paid
    const ThisWeek week = weekOf(job);
    ASSERT_EQ(week.paid.size(), 2U);
    EXPECT_EQ(week.paid[0].name, "Tile crew");
    EXPECT_EQ(week.paid[0].amount, money("500"));
    EXPECT_EQ(week.paid[1].name, "Hardware store");
    EXPECT_EQ(week.paidInAll, money("540"));
}

TEST(ThisWeek, TellsOfACrewPaidAheadOfItsWork) {
    SampleJob job;
    addCrew(job, "Tile crew");
    job.item("tile", "1000").contract = id<Kind::Contract>(1);
    job.contract("Tile", "1000", "2026-05-01").crew = id<Kind::Crew>(1);
    job.mark(1, "2026-05-20", "30");
    addSpend(job, SpendKind::Payment, "2026-05-21", "500").contract = id<Kind::Contract>(1);
    const ThisWeek week = weekOf(job);
    ASSERT_EQ(week.paid.size(), 1U);
    EXPECT_EQ(week.paid[0].name, "Tile crew");
    EXPECT_EQ(week.paid[0].ahead, money("200"));  // 500 - 1,000 x 30 %
}

TEST(ThisWeek, WhatThePlanWantedAndDidNotGet) {
    SampleJob job;
    const auto planned = [&](const char* object, const char* start, const char* finish) {
        Item& item = job.item(object, "100");
        item.plannedStartOn = day(start);
        item.plannedFinishOn = day(finish);
    };
    planned("begun late", "2026-05-18", "2026-05-29");
    planned("not finished", "2026-05-11", "2026-05-20");
    planned("finished", "2026-05-11", "2026-05-20");
    planned("last week's", "2026-05-11", "2026-05-15");
    planned("next week's", "2026-05-25", "2026-05-29");
    planned("under way", "2026-05-18", "2026-05-29");
    job.mark(2, "2026-05-19", "60");
    job.mark(3, "2026-05-20", "100");
    job.mark(6, "2026-05-19", "10");
    const ThisWeek week = weekOf(job);
    ASSERT_EQ(week.notDone.size(), 2U);
    EXPECT_EQ(week.notDone[0].item, 0U);
    EXPECT_TRUE(week.notDone[0].isStart);
    EXPECT_EQ(week.notDone[0].wantedOn, day("2026-05-18"));
    EXPECT_EQ(week.notDone[1].item, 1U);
    EXPECT_FALSE(week.notDone[1].isStart);
    EXPECT_EQ(week.notDone[1].shown, percent("60"));
}

TEST(ThisWeek, ACrewThatStayedAwayWhereOthersWereEntered) {
    SampleJob job;
    addCrew(job, "Tile crew");
    addCrew(job, "Paint crew");
    Item& item = job.item("tile", "100");
    item.crew = id<Kind::Crew>(1);
    item.plannedStartOn = day("2026-05-14");
    item.plannedFinishOn = day("2026-05-26");
    EXPECT_FALSE(weekOf(job).knowsPresence);
    EXPECT_TRUE(weekOf(job).notThere.empty());
    const auto here = [&](std::uint32_t crew, const char* on) {
        Presence& presence = job.add(job.rows.presences);
        presence.crew = id<Kind::Crew>(crew);
        presence.presentOn = day(on);
    };
    here(1, "2026-05-18");
    here(2, "2026-05-19");
    here(2, "2026-05-20");
    here(2, "2026-05-22");  // 21 May: nobody was entered, which tells nothing
    const ThisWeek week = weekOf(job);
    EXPECT_TRUE(week.knowsPresence);
    ASSERT_EQ(week.notThere.size(), 1U);
    EXPECT_EQ(week.notThere[0].crew, 0U);
    EXPECT_EQ(week.notThere[0].days,
              (std::vector<Date>{day("2026-05-19"), day("2026-05-20"), day("2026-05-22")}));
    EXPECT_EQ(week.notThere[0].inARow, 2);
}

TEST(ThisWeek, WhatEachCrewIsToBeTold) {
    SampleJob job;
    addCrew(job, "Tile crew");
    addCrew(job, "Paint crew");
    Item& going = job.item("going on", "100");
    going.crew = id<Kind::Crew>(1);
    going.doNotCover = true;
    Item& next = job.item("next", "100");
    next.crew = id<Kind::Crew>(1);
    next.plannedStartOn = day("2026-05-29");
    Item& later = job.item("later", "100");
    later.crew = id<Kind::Crew>(1);
    later.plannedStartOn = day("2026-05-30");
    job.mark(1, "2026-05-20", "50");
    for (int k = 0; k < 2; ++k) {
        job.add(job.rows.punches).crew = id<Kind::Crew>(1);
    }
    const auto look = [&](const char* on, Verdict said) {
        Look& one = job.add(job.rows.looks);
        one.punch = id<Kind::Punch>(2);
        one.lookedOn = day(on);
        one.said = said;
    };
    look("2026-05-20", Verdict::Accepted);
    look("2026-05-19", Verdict::SaidFixed);
    const ThisWeek week = weekOf(job);
    ASSERT_EQ(week.crews.size(), 1U);  // the painters have nothing to be told
    EXPECT_EQ(week.crews[0].going, (std::vector<std::size_t>{0}));
    EXPECT_EQ(week.crews[0].beginning, (std::vector<std::size_t>{1}));
    EXPECT_EQ(week.crews[0].leaveOpen, (std::vector<std::size_t>{0}));
    EXPECT_EQ(week.crews[0].punch, (std::vector<std::size_t>{0}));
}

}  // namespace
