// Protects the list of what needs somebody today: what belongs on it, what does not, in which
// order, and that a crew lead's list holds nothing of the owner's.
#include "mobile/now/needs_today.h"

#include <gtest/gtest.h>

#include "tests/unit/phone/made_job.h"

namespace ledgerboard::phone {
namespace {

using tests::day;
using tests::MadeJob;

const model::Date kToday = day(5, 15);

std::vector<NeedKind> kindsIn(const MadeJob& made, bool isOwner) {
    std::vector<NeedKind> kinds;
    for (const auto& need : needsToday(*jobNowOf(made.rows, kToday, isOwner))) {
        kinds.push_back(need.kind);
    }
    return kinds;
}

// A job in which everything is pressing once.
MadeJob pressing() {
    MadeJob made;
    const auto bath = made.space("Hall bath", 1).id;
    auto& crew = made.rows.crews.emplace_back();
    crew.id = tests::idOf<model::Kind::Crew>(1);
    crew.name = "Tile crew";
    crew.insuredUntil = day(5, 15);
    auto& tile = made.item("tile", bath, 100);
    tile.crew = crew.id;
    tile.readyToLook = true;
    tile.doNotCover = true;
    auto& delivery = made.rows.deliveries.emplace_back();
    delivery.id = tests::idOf<model::Kind::Delivery>(1);
    delivery.item = tile.id;
    delivery.promisedOn = day(5, 15);
    auto& alternate = made.rows.alternates.emplace_back();
    alternate.id = tests::idOf<model::Kind::Alternate>(1);
    alternate.question = "tub or shower?";
    alternate.decideBy = day(5, 22);
    auto& change = made.rows.changes.emplace_back();
    change.id = tests::idOf<model::Kind::Change>(1);
    change.name = "joists under the tub";
    change.amount = model::Money::of(1350);
    change.askedOn = day(5, 6);
    auto& punch = made.rows.punches.emplace_back();
    punch.id = tests::idOf<model::Kind::Punch>(1);
    punch.space = bath;
    punch.what = "grout open at tub";
    auto& look = made.rows.looks.emplace_back();
    look.id = tests::idOf<model::Kind::Look>(1);
    look.punch = punch.id;
    look.said = model::Verdict::SaidFixed;
    look.lookedOn = day(5, 14);
    return made;
}

TEST(NeedsToday, AnOwnerSeesWhatWaitsForAnAnswer) {
    EXPECT_EQ(kindsIn(pressing(), true),
              (std::vector<NeedKind>{NeedKind::LookAtPunch, NeedKind::Delivery, NeedKind::Decide,
                                     NeedKind::AnswerChange, NeedKind::AcceptWork,
                                     NeedKind::InsuranceEnds}));
}

TEST(NeedsToday, ACrewLeadSeesOwnWorkAlone) {
    EXPECT_EQ(kindsIn(pressing(), false),
              (std::vector<NeedKind>{NeedKind::Delivery, NeedKind::LeaveOpen}));
}

TEST(NeedsToday, WhatIsAnsweredOrFarAheadIsNotOnIt) {
    MadeJob made = pressing();
    made.rows.items[0].acceptedOn = day(5, 15);
    made.rows.crews[0].insuredUntil = day(5, 16);
    made.rows.deliveries[0].arrivedOn = day(5, 15);
    made.rows.alternates[0].decideBy = day(5, 23);
    made.rows.changes[0].refusedOn = day(5, 15);
    made.rows.looks[0].said = model::Verdict::NotRight;
    EXPECT_TRUE(kindsIn(made, true).empty());
}

// Paint of a house built before 1978 raises a caution (cautions.def); it needs somebody once the
// work is near.
TEST(NeedsToday, ACautionOfWorkThatIsNear) {
    MadeJob made;
    made.rows.job.builtYear = 1936;
    const auto bath = made.space("Hall bath", 1).id;
    auto& windows = made.item("windows", bath, 100);
    windows.plannedStartOn = day(5, 22);
    EXPECT_EQ(kindsIn(made, true), (std::vector<NeedKind>{NeedKind::Caution}));
    made.rows.items[0].plannedStartOn = day(5, 23);
    EXPECT_TRUE(kindsIn(made, true).empty());
}

}  // namespace
}  // namespace ledgerboard::phone
