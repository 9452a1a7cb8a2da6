// Protects what a crew acknowledges: it reaches the owner though no row of the caution was kept
// before, and a crew writes neither over what an owner opened nor about another crew's item. How: a
// peer, an owner's laptop and a crew lead's phone in one process.
#include <gtest/gtest.h>
#include <string>

#include "core/compute/cautions.h"

#include "tests/support/star.h"

namespace ledgerboard::sync {
namespace {

namespace f = model::field;
using model::Kind;
using model::RawId;
using model::Role;
using store::Action;
using tests::Phone;

class CautionExchange : public tests::StarTest {
  protected:
    CautionExchange() : StarTest("caution-exchange") {
        meet(laptop);
        Action action("build");
        job = id(laptop);
        tilers = id(laptop);
        floor = id(laptop);
        walls = id(laptop);
        action.set(job, f::Job::name, std::string("Elm Street"));
        action.set(job, f::Job::builtYear, std::int64_t{1931});
        action.set(tilers, f::Crew::name, std::string("Tilers"));
        for (const RawId& item : {floor, walls}) {
            action.set(item, f::Item::job, job);
            action.set(item, f::Item::treatment, std::string("refinish"));
            action.set(item, f::Item::object, std::string(item == floor ? "wood floor" : "walls"));
        }
        action.set(floor, f::Item::crew, tilers);
        write(laptop, action);
        meet(laptop);
        lead = star.join(Role::CrewLead, tilers);
        meet(lead);
    }

    // As the clients and the command line do it: the row of what the rules raised, then the name.
    RawId acknowledge(Phone& phone, RawId item, RawId by) {
        const RawId row = id(phone);
        Action action("acknowledge");
        action.set(row, f::Caution::job, job);
        action.set(row, f::Caution::item, item);
        action.set(row, f::Caution::about, std::string("floor finishes and strippers"));
        action.set(row, f::Caution::why, std::string("refinish wood floor"));
        action.set(row, f::Caution::acknowledgedBy, by);
        action.set(row, f::Caution::acknowledgedOn, std::int64_t{20'549});
        write(phone, action);
        return row;
    }

    // Cautions of the floor that still hold it up, in this book.
    static std::size_t open(const Phone& phone, RawId job, RawId item) {
        auto rows = phone.book->jobRows(model::Id<Kind::Job>(job)).value();
        return compute::cautionsOf(rows, model::Date::fromDays(20'549))
            .holdingUp(model::Id<Kind::Item>(item))
            .size();
    }

    static model::Value at(const Phone& phone, RawId record, model::FieldCode code) {
        auto row = phone.book->record(model::kindOf(code), record).value();
        return row && !row->gone ? row->at(code) : model::Value{};
    }

    Phone lead;
    RawId job, tilers, floor, walls;
};

TEST_F(CautionExchange, WhatACrewAcknowledgesReachesTheOwner) {
    ASSERT_EQ(open(laptop, job, floor), 1u);
    ASSERT_EQ(open(lead, job, floor), 1u);
    const RawId row = acknowledge(lead, floor, lead.book->me().raw());
    EXPECT_EQ(open(lead, job, floor), 0u);
    meet(lead);
    EXPECT_EQ(lead.last.refused, 0u);
    EXPECT_EQ(open(lead, job, floor), 0u) << "the phone keeps what it wrote";
    meet(laptop);
    EXPECT_EQ(open(laptop, job, floor), 0u);
    EXPECT_EQ(at(laptop, row, f::Caution::acknowledgedBy), model::Value{lead.book->me().raw()});
    EXPECT_TRUE(store::SyncBook(*laptop.book).asides(0, 10).value().empty());
    EXPECT_TRUE(lead.book->verify(false).value().findings.empty());
}

TEST_F(CautionExchange, ItIsTakenBackUntilAnOwnerWroteInIt) {
    for (const bool ownerWrites : {false, true}) {
        const RawId row = acknowledge(lead, floor, lead.book->me().raw());
        meet(lead);
        if (ownerWrites) {
            meet(laptop);
            Action result("result");
            result.set(row, f::Caution::testResult, std::string("aired"));
            write(laptop, result);
            meet(laptop);
        }
        star.timeMs += 1000;
        ASSERT_TRUE(lead.book->undo(star.stampOf(lead)).ok());
        meet(lead);
        meet(laptop);
        EXPECT_EQ(open(laptop, job, floor), ownerWrites ? 0u : 1u);
        EXPECT_EQ(star.peerBook->record(Kind::Caution, row).value()->gone, !ownerWrites);
    }
}

TEST_F(CautionExchange, ACrewWritesNeitherOverAnOwnersNorOfAnothersItem) {
    const RawId owners = acknowledge(laptop, floor, laptop.book->me().raw());
    meet(laptop);
    meet(lead);
    ASSERT_FALSE(model::isEmpty(at(lead, owners, f::Caution::about)));
    Action reword("say something else");
    reword.set(owners, f::Caution::about, std::string("nothing"));
    reword.set(owners, f::Caution::why, std::string("nothing"));
    write(lead, reword);
    meet(lead);
    EXPECT_EQ(lead.last.refused, 2u);
    EXPECT_EQ(at(lead, owners, f::Caution::about),
              model::Value{std::string("floor finishes and strippers")});

    Action drop("drop it");
    drop.drop(Kind::Caution, owners);
    write(lead, drop);
    meet(lead);
    EXPECT_EQ(lead.last.refused, 1u);
    EXPECT_FALSE(star.peerBook->record(Kind::Caution, owners).value()->gone);

    // Of the whole house, with no item: nobody's but the owner's.
    const RawId house = id(lead);
    Action ofHouse("of the house");
    ofHouse.set(house, f::Caution::job, job);
    ofHouse.set(house, f::Caution::about, std::string("mold"));
    write(lead, ofHouse);
    meet(lead);
    EXPECT_EQ(lead.last.refused, 1u);
    EXPECT_TRUE(model::isEmpty(at(laptop, house, f::Caution::about)));
}

}  // namespace
}  // namespace ledgerboard::sync
