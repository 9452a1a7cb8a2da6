// Protects the exchange: who gets what, who may write what, nothing lost and nothing taken twice
// when a meeting is cut off, and each way in which a device can come back wrong (clock ahead, old
// backup, shut out). How: a peer and devices in one process, with the network in the test's hands.
#include <gtest/gtest.h>
#include <string>

#include "tests/support/star.h"

namespace ledgerboard::sync {
namespace {

namespace field = model::field;
using model::Id;
using model::Kind;
using model::RawId;
using model::Role;
using store::Action;
using tests::Phone;

// A house with two crews, an item each in spaces of their own, and money in every corner.
struct House {
    RawId job, kitchen, bath, tilers, painters, tiling, painting, contract;
};

class ExchangeTest : public tests::StarTest {
  protected:
    ExchangeTest() : StarTest("exchange") {
        meet(laptop);
        build();
        meet(laptop);
    }

    void set(Phone& phone, RawId record, model::FieldCode code, model::Value value) {
        Action action("set");
        action.set(record, code, std::move(value));
        write(phone, action);
    }

    void build() {
        Action action("build");
        auto& book = laptop;
        house = {id(book), id(book), id(book), id(book), id(book), id(book), id(book), id(book)};
        action.set(house.job, field::Job::name, std::string("Elm Street"));
        action.set(house.job, field::Job::purchasePrice, std::int64_t{31'234'500});
        for (const auto& [space, name] :
             {std::pair(house.kitchen, "Kitchen"), std::pair(house.bath, "Bath")}) {
            action.set(space, field::Space::job, house.job);
            action.set(space, field::Space::name, std::string(name));
        }
        action.set(house.tilers, field::Crew::name, std::string("Tilers"));
        action.set(house.painters, field::Crew::name, std::string("Painters"));
        item(action, house.tiling, house.bath, "floor", house.tilers);
        item(action, house.painting, house.kitchen, "walls", house.painters);
        action.set(house.contract, field::Contract::job, house.job);
        action.set(house.contract, field::Contract::sum, std::int64_t{987'654'321});
        write(laptop, action);
    }

    void item(Action& action, RawId item, RawId space, const std::string& object, RawId crew) {
        action.set(item, field::Item::job, house.job);
        action.set(item, field::Item::space, space);
        action.set(item, field::Item::treatment, std::string("replace"));
        action.set(item, field::Item::object, object);
        action.set(item, field::Item::quantity, std::int64_t{40'000});
        action.set(item, field::Item::lumpSum, std::int64_t{123'456'789});
        action.set(item, field::Item::note, std::string("pay no more than agreed"));
        action.set(item, field::Item::crew, crew);
    }

    // What the program itself would not write.
    void writeAsAChangedProgram(Phone& phone, RawId record, model::FieldCode code,
                                const model::Value& value) {
        store::Entry entry;
        const auto last = store::SyncBook(*phone.book).lastNumbers(phone.device()).value();
        entry.name = {phone.device(), store::Lane::OwnerOnly, last[0] + 1};
        entry.clock = model::HybridClock{}.next(star.stampOf(phone));
        entry.record = record;
        entry.field = code;
        entry.value = value;
        ASSERT_TRUE(phone.book->apply(std::vector{entry}).ok());
    }

    RawId mark(Phone& phone, RawId item, std::int64_t basisPoints) {
        Action action("mark");
        const RawId mark = id(phone);
        action.set(mark, field::Mark::job, house.job);
        action.set(mark, field::Mark::item, item);
        action.set(mark, field::Mark::percent, basisPoints);
        action.set(mark, field::Mark::markedOn, std::int64_t{20'500});
        action.set(mark, field::Mark::by, phone.book->me().raw());
        write(phone, action);
        return mark;
    }

    static bool has(const Phone& phone, Kind kind, RawId record) {
        return phone.book->record(kind, record).value().has_value();
    }

    static model::Value valueOf(const store::Book& book, RawId record, model::FieldCode code) {
        auto row = book.record(model::kindOf(code), record).value();
        return row ? row->at(code) : model::Value{};
    }

    // What a device of the same standing gets that begins with nothing.
    std::string fromNothing(const Phone& phone) {
        Phone other;
        other.path = star.file("nothing-" + std::to_string(++nothings));
        other.key = phone.key;
        other.book = std::make_unique<store::Book>(
            store::Book::createJoined(other.path, phone.book->thisDevice(), phone.book->me(),
                                      star.random())
                .value());
        PullAnswer answer;
        store::SyncBook sync(*other.book);
        do {
            auto reply = star.peer->answer(Call::Pull, phone.device(),
                                           write(PullAsk{answer.cursor}), star.now());
            EXPECT_EQ(reply.status, Status::Ok) << reply.body;
            answer = readPullAnswer(reply.body).value();
            store::Taking taking;
            taking.entries = answer.entries;
            EXPECT_TRUE(sync.take(taking).ok());
        } while (answer.more);
        return other.book->dump().value();
    }

    using StarTest::write;

    static std::string write(const PullAsk& ask) { return sync::write(ask); }

    House house;
    int nothings = 0;
};

TEST_F(ExchangeTest, OwnersAgreeAfterTwoMeetingsAndRepeatingAppliesNothing) {
    Phone second = star.join(Role::Owner);
    meet(second);
    set(second, house.tiling, field::Item::quantity, std::int64_t{55'000});
    set(laptop, house.painting, field::Item::note, std::string("two coats"));
    meet(second);
    meet(laptop);
    meet(second);
    const std::string dump = star.peerBook->dump().value();
    EXPECT_EQ(laptop.book->dump().value(), dump);
    EXPECT_EQ(second.book->dump().value(), dump);
    EXPECT_NE(dump.find("two coats"), std::string::npos);
    EXPECT_NE(dump.find("55000"), std::string::npos);
    meet(laptop);
    EXPECT_EQ(laptop.last.received + laptop.last.sent, 0u);
    EXPECT_EQ(laptop.book->apply(star.peerBook->entries().value()).value(), 0u);
    for (auto* book : {laptop.book.get(), second.book.get(), star.peerBook.get()}) {
        EXPECT_TRUE(book->verify(false).value().findings.empty());
    }
}

TEST_F(ExchangeTest, ABookThatWasThereBeforeThePeerJoinsWithAllItHas) {
    auto old = store::Book::create(star.file("old.book"), "Ann", star.now(), star.random());
    ASSERT_TRUE(old.ok());
    Action action("pair");  // what pairing writes for a device that an owner invites
    action.set(old.value().thisDevice().raw(), field::Device::person, star.owner);
    ASSERT_TRUE(star.peerBook->commit(action, star.now()).ok());
    Phone phone;
    phone.key = old.value().thisDevice().raw();
    phone.book = std::make_unique<store::Book>(std::move(old).value());
    meet(phone);
    meet(phone);
    EXPECT_EQ(phone.book->dump().value(), star.peerBook->dump().value());
    EXPECT_NE(star.peerBook->dump().value().find("Ann"), std::string::npos);
}

TEST_F(ExchangeTest, ACrewLeadGetsOwnItemsWithoutMoneyAndNoOthers) {
    Phone lead = star.join(Role::CrewLead, house.tilers);
    meet(lead);
    EXPECT_EQ(valueOf(*lead.book, house.tiling, field::Item::quantity),
              model::Value{std::int64_t{40'000}});
    EXPECT_TRUE(model::isEmpty(valueOf(*lead.book, house.tiling, field::Item::lumpSum)));
    EXPECT_TRUE(model::isEmpty(valueOf(*lead.book, house.tiling, field::Item::note)));
    EXPECT_EQ(valueOf(*lead.book, house.job, field::Job::name),
              model::Value{std::string("Elm Street")});
    EXPECT_TRUE(model::isEmpty(valueOf(*lead.book, house.job, field::Job::purchasePrice)));
    EXPECT_TRUE(has(lead, Kind::Space, house.bath));
    EXPECT_FALSE(has(lead, Kind::Space, house.kitchen));
    EXPECT_FALSE(has(lead, Kind::Item, house.painting));
    EXPECT_FALSE(has(lead, Kind::Crew, house.painters));
    EXPECT_FALSE(has(lead, Kind::Contract, house.contract));
    for (const auto& entry : lead.book->entries().value()) {
        EXPECT_EQ(entry.name.lane, store::Lane::Sealed);
        EXPECT_TRUE(entry.replaces.empty());
    }
    EXPECT_TRUE(lead.book->verify(false).value().findings.empty());
}

TEST_F(ExchangeTest, AnItemThatMovesToAnotherCrewGoesFromOnePhoneToTheOther) {
    Phone tiler = star.join(Role::CrewLead, house.tilers);
    Phone painter = star.join(Role::CrewLead, house.painters);
    meet(tiler);
    meet(painter);
    const RawId marked = mark(tiler, house.tiling, 5000);
    meet(tiler);
    set(laptop, house.tiling, field::Item::crew, house.painters);
    meet(laptop);
    meet(tiler);
    meet(painter);
    EXPECT_FALSE(has(tiler, Kind::Item, house.tiling));
    EXPECT_FALSE(has(tiler, Kind::Mark, marked));
    EXPECT_GT(tiler.last.dropped, 0u);
    EXPECT_TRUE(has(painter, Kind::Item, house.tiling));
    EXPECT_TRUE(has(painter, Kind::Mark, marked));
    EXPECT_TRUE(tiler.book->verify(false).value().findings.empty());
    // And back, with what it wrote itself; its next numbers are not those it used before.
    set(laptop, house.tiling, field::Item::crew, house.tilers);
    meet(laptop);
    meet(tiler);
    EXPECT_TRUE(has(tiler, Kind::Mark, marked));
    mark(tiler, house.tiling, 6000);
    meet(tiler);
    EXPECT_EQ(tiler.last.refused, 0u);
    EXPECT_FALSE(tiler.last.renewed);
    EXPECT_EQ(tiler.book->dump().value(), fromNothing(tiler));
}

TEST_F(ExchangeTest, NeighboursShowWhereAndWhenAndWhetherTheyAreDone) {
    set(laptop, house.painting, field::Item::space, house.bath);
    for (const auto item : {house.tiling, house.painting}) {
        // 2026-04-06 is a Monday, day 20,549 since 1970; painting follows on the Wednesday after.
        const std::int64_t start = item == house.tiling ? 20'549 : 20'551;
        set(laptop, item, field::Item::plannedStartOn, start);
        set(laptop, item, field::Item::plannedFinishOn, start + 1);
    }
    Phone lead = star.join(Role::CrewLead, house.tilers);
    meet(laptop);
    meet(lead);
    ASSERT_TRUE(has(lead, Kind::Item, house.painting));
    EXPECT_EQ(valueOf(*lead.book, house.painting, field::Item::object),
              model::Value{std::string("walls")});
    for (const auto hidden : {field::Item::quantity, field::Item::crew, field::Item::lumpSum,
                              field::Item::actualFinishOn}) {
        EXPECT_TRUE(model::isEmpty(valueOf(*lead.book, house.painting, hidden))) << hidden;
    }
    const RawId done = mark(laptop, house.painting, 10'000);
    meet(laptop);
    meet(lead);
    EXPECT_EQ(valueOf(*lead.book, house.painting, field::Item::actualFinishOn),
              model::Value{std::int64_t{20'500}});
    EXPECT_FALSE(has(lead, Kind::Mark, done));
    // Nine working days apart it is no neighbour: 2026-04-20 is a Monday.
    set(laptop, house.painting, field::Item::plannedStartOn, std::int64_t{20'563});
    set(laptop, house.painting, field::Item::plannedFinishOn, std::int64_t{20'564});
    meet(laptop);
    meet(lead);
    EXPECT_FALSE(has(lead, Kind::Item, house.painting));
    EXPECT_EQ(lead.book->dump().value(), fromNothing(lead));
}

TEST_F(ExchangeTest, WhatACrewLeadMayNotWriteIsSetAsideAndForgottenThere) {
    Phone lead = star.join(Role::CrewLead, house.tilers);
    meet(lead);
    const RawId foreign = id(lead);
    store::Entry entry;  // as a changed program would write it
    entry.name = {lead.device(), store::Lane::OwnerOnly, 1};
    entry.clock = model::HybridClock{}.next(star.now());
    entry.record = house.tiling;
    entry.field = field::Item::lumpSum;
    entry.value = std::int64_t{1};
    ASSERT_TRUE(lead.book->apply(std::vector{entry}).ok());
    Action action("mark another's item");
    action.set(foreign, field::Mark::job, house.job);
    write(lead, action);
    mark(lead, house.tiling, 2500);
    meet(lead);
    EXPECT_EQ(lead.last.refused, 1u);
    meet(laptop);
    store::SyncBook owner(*laptop.book);
    const auto aside = owner.asides(0, 10).value();
    ASSERT_EQ(aside.size(), 1u);
    EXPECT_EQ(aside[0].entry.record, house.tiling);
    EXPECT_EQ(aside[0].entry.value, model::Value{std::int64_t{1}});
    EXPECT_EQ(aside[0].entry.name.device, lead.device());
    EXPECT_EQ(valueOf(*laptop.book, house.tiling, field::Item::lumpSum),
              model::Value{std::int64_t{123'456'789}});
    EXPECT_TRUE(model::isEmpty(valueOf(*lead.book, house.tiling, field::Item::lumpSum)));
    EXPECT_TRUE(laptop.book->verify(false).value().findings.empty());
    EXPECT_TRUE(lead.book->verify(false).value().findings.empty());
}

// Of something found: it reaches the owner as an asked change, and the phone lets go of it.
TEST_F(ExchangeTest, ACrewLeadAsksForAChangeOnceAndOnlyAnOwnerSignsIt) {
    Phone lead = star.join(Role::CrewLead, house.tilers);
    meet(lead);
    const RawId photo = id(lead);
    const RawId change = id(lead);
    const std::int64_t asked = 45'000;
    Action found("found something");
    found.set(photo, field::Photo::job, house.job);
    found.set(photo, field::Photo::digest, std::string(64, 'a'));
    found.set(photo, field::Photo::purpose, std::string("site"));
    found.set(change, field::Change::job, house.job);
    found.set(change, field::Change::items, "[\"" + house.tiling.hex() + "\"]");
    found.set(change, field::Change::name, std::string("joists are rotten"));
    found.set(change, field::Change::amount, asked);
    found.set(change, field::Change::photo, photo);
    found.set(change, field::Change::askedBy, lead.book->me().raw());
    write(lead, found);
    meet(lead);
    meet(laptop);
    EXPECT_EQ(valueOf(*laptop.book, change, field::Change::amount), model::Value{asked});
    EXPECT_EQ(valueOf(*laptop.book, change, field::Change::askedBy),
              model::Value{lead.book->me().raw()});
    EXPECT_FALSE(has(lead, Kind::Change, change));  // nor anything the owner writes in it
    set(laptop, change, field::Change::signedOn, std::int64_t{20'501});
    meet(laptop);
    meet(lead);
    EXPECT_TRUE(has(lead, Kind::Photo, photo));
    EXPECT_EQ(lead.book->dump().value(), fromNothing(lead));
    set(lead, change, field::Change::amount, std::int64_t{99'000});
    meet(lead);
    EXPECT_EQ(lead.last.refused, 1u);
    EXPECT_EQ(valueOf(*star.peerBook, change, field::Change::amount), model::Value{asked});
    for (const auto& [code, value] :
         {std::pair(field::Change::signedOn, model::Value{std::int64_t{20'502}}),
          std::pair(field::Change::paidFrom, model::Value{std::string("new money")}),
          std::pair(field::Change::contract, model::Value{house.contract}),
          std::pair(field::Change::items, model::Value{"[\"" + house.painting.hex() + "\"]"}),
          std::pair(field::Change::askedBy, model::Value{laptop.book->me().raw()})}) {
        const RawId another = id(lead);
        set(lead, another, field::Change::job, house.job);
        writeAsAChangedProgram(lead, another, code, value);
        meet(lead);
        EXPECT_EQ(lead.last.refused, 1u) << code;
        EXPECT_TRUE(model::isEmpty(valueOf(*star.peerBook, another, code))) << code;
    }
    EXPECT_TRUE(lead.book->verify(false).value().findings.empty());
}

TEST_F(ExchangeTest, WhatACrewAskedForIsTakenBackUntilAnOwnerWroteInIt) {
    Phone lead = star.join(Role::CrewLead, house.tilers);
    meet(lead);
    std::vector<RawId> asked;
    for (int k = 0; k < 2; ++k) {
        asked.push_back(id(lead));
        set(lead, asked.back(), field::Change::job, house.job);
        if (k == 0) {
            meet(lead);
            meet(laptop);
            set(laptop, asked[0], field::Change::refusedOn, std::int64_t{20'501});
            meet(laptop);
        }
        Action back("take it back");
        back.drop(Kind::Change, asked.back());
        write(lead, back);
        meet(lead);
    }
    EXPECT_FALSE(star.peerBook->record(Kind::Change, asked[0]).value()->gone);
    EXPECT_TRUE(star.peerBook->record(Kind::Change, asked[1]).value()->gone);
}

TEST_F(ExchangeTest, ACrewLeadNeitherVoidsNorEditsWhatAnOwnerSaid) {
    const RawId owners = mark(laptop, house.tiling, 3000);
    meet(laptop);
    Phone lead = star.join(Role::CrewLead, house.tilers);
    meet(lead);
    ASSERT_TRUE(has(lead, Kind::Mark, owners));
    const RawId own = mark(lead, house.tiling, 9000);
    set(lead, own, field::Mark::voids, owners);
    set(lead, owners, field::Mark::note, std::string("no"));
    Action drop("drop");
    drop.drop(Kind::Mark, owners);
    write(lead, drop);
    meet(lead);
    EXPECT_EQ(lead.last.refused, 3u);
    EXPECT_TRUE(model::isEmpty(valueOf(*star.peerBook, own, field::Mark::voids)));
    EXPECT_FALSE(star.peerBook->record(Kind::Mark, owners).value()->gone);
    EXPECT_EQ(lead.book->dump().value(), fromNothing(lead));
    EXPECT_TRUE(has(lead, Kind::Mark, owners));
}

TEST_F(ExchangeTest, OnlyOwnersSendWhatOthersWrote) {
    Phone lead = star.join(Role::CrewLead, house.tilers);
    meet(lead);
    store::Entry entry;
    entry.name = {laptop.device(), store::Lane::Shared, 9999};
    entry.clock = model::HybridClock{}.next(star.now());
    entry.record = house.tiling;
    entry.field = field::Item::readyToLook;
    entry.value = std::int64_t{1};
    const auto reply =
        star.peer->answer(Call::Push, lead.device(), sync::write(PushAsk{{entry}}), star.now());
    EXPECT_EQ(reply.status, Status::NotAllowed);
    entry.name.lane = store::Lane::Sealed;
    EXPECT_EQ(
        star.peer->answer(Call::Push, laptop.device(), sync::write(PushAsk{{entry}}), star.now())
            .status,
        Status::Malformed);
    EXPECT_EQ(star.peer->answer(Call::Pull, id(laptop), sync::write(PullAsk{}), star.now()).status,
              Status::NotAllowed);
}

TEST_F(ExchangeTest, AClockADayAheadIsMendedAndOnlyOnWhatNobodyHas) {
    Phone phone = star.join(Role::Owner);
    meet(phone);
    set(phone, house.tiling, field::Item::object, std::string("tiles"));
    meet(phone);
    const auto kept = phone.book->entries().value().size();
    phone.skewMs = 24 * 3600 * 1000;
    phone.offsetMs = 0;  // the clock jumped since the last meeting
    set(phone, house.tiling, field::Item::object, std::string("big tiles"));
    set(phone, house.tiling, field::Item::object, std::string("small tiles"));
    meet(phone);
    EXPECT_EQ(phone.last.restamped, 2u);
    const auto limit = model::HybridClock::endOf(star.now());
    const auto entries = star.peerBook->entries().value();
    for (const auto& entry : entries) {
        EXPECT_LE(entry.clock, limit);
    }
    EXPECT_EQ(phone.book->entries().value().size(), kept + 2);
    EXPECT_EQ(valueOf(*star.peerBook, house.tiling, field::Item::object),
              model::Value{std::string("small tiles")});
    // The laptop's later edit wins over it, as it should.
    set(laptop, house.tiling, field::Item::object, std::string("slate"));
    meet(laptop);
    meet(phone);
    EXPECT_EQ(valueOf(*phone.book, house.tiling, field::Item::object),
              model::Value{std::string("slate")});
    // Undo still knows the action by its clock.
    set(phone, house.tiling, field::Item::object, std::string("cork"));
    EXPECT_TRUE(phone.book->undo(star.stampOf(phone)).ok());
    EXPECT_TRUE(phone.book->verify(false).value().findings.empty());
}

TEST_F(ExchangeTest, ADeviceRestoredFromABackupTakesANewIdentity) {
    Phone phone = star.join(Role::Owner);
    meet(phone);
    const std::string backup = star.file("backup");
    ASSERT_TRUE(phone.book->backup(backup).ok());
    set(phone, house.tiling, field::Item::trade, std::string("lost from the phone, not from us"));
    meet(phone);
    const RawId before = phone.device();
    for (const bool wroteMore : {true, false}) {
        const std::string copy = backup + (wroteMore ? "1" : "2");
        phone.book.reset();
        std::filesystem::copy_file(backup, copy);
        phone.book = std::make_unique<store::Book>(store::Book::open(copy, star.random()).value());
        if (wroteMore) {
            set(phone, house.painting, field::Item::trade, std::string("paint"));
            set(phone, house.painting, field::Item::object, std::string("ceiling"));
        }
        meet(phone);
        EXPECT_TRUE(phone.last.renewed);
        EXPECT_NE(phone.device(), before);
        EXPECT_EQ(standingOf(*star.peerBook, phone.key).value().device, phone.device());
        EXPECT_EQ(phone.book->dump().value(), star.peerBook->dump().value());
        EXPECT_EQ(valueOf(*phone.book, house.tiling, field::Item::trade),
                  model::Value{std::string("lost from the phone, not from us")});
        EXPECT_EQ(valueOf(*star.peerBook, house.painting, field::Item::object),
                  model::Value{std::string("ceiling")});
        EXPECT_TRUE(phone.book->verify(false).value().findings.empty());
    }
    EXPECT_TRUE(star.peerBook->verify(false).value().findings.empty());
}

TEST_F(ExchangeTest, AnAnswerThatWasLostComesAgainTheSame) {
    Phone lead = star.join(Role::CrewLead, house.tilers);
    std::vector<std::string> answers;
    int lose = 2;
    auto met = star.meet(
        lead, [&](Call call, const std::string& body, const auto& deliver) -> model::Result<Reply> {
            Reply reply = deliver(call, body);
            if (call == Call::Pull && lose-- > 0) {
                answers.push_back(reply.body);
                return model::cannotBeMet("cut off");
            }
            return reply;
        });
    EXPECT_FALSE(met.ok());
    meet(lead);
    set(laptop, house.tiling, field::Item::instructions, std::string("start at the door"));
    meet(laptop);
    answers.clear();
    for (int round = 0; round < 2; ++round) {
        lose = 1;
        auto cut = star.meet(
            lead,
            [&](Call call, const std::string& body, const auto& deliver) -> model::Result<Reply> {
                Reply reply = deliver(call, body);
                if (call == Call::Pull && lose-- > 0) {
                    answers.push_back(reply.body);
                    return model::cannotBeMet("cut off");
                }
                return reply;
            });
        EXPECT_FALSE(cut.ok());
    }
    ASSERT_EQ(answers.size(), 2u);
    EXPECT_EQ(answers[0], answers[1]);
    EXPECT_NE(answers[0].find("start at the door"), std::string::npos);
    // What moved away meanwhile is not sent again, though it was sent before.
    set(laptop, house.tiling, field::Item::crew, house.painters);
    meet(laptop);
    meet(lead);
    EXPECT_FALSE(has(lead, Kind::Item, house.tiling));
    EXPECT_EQ(lead.book->dump().value(), fromNothing(lead));
}

TEST_F(ExchangeTest, APeerRestoredFromABackupGetsBackWhatItLacks) {
    Phone lead = star.join(Role::CrewLead, house.tilers);
    Phone second = star.join(Role::Owner);
    meet(lead);
    meet(second);
    const std::string backup = star.file("peer.backup");
    ASSERT_TRUE(star.peerBook->backup(backup).ok());
    const RawId marked = mark(lead, house.tiling, 4000);
    meet(lead);
    set(laptop, house.painting, field::Item::quantity, std::int64_t{77'000});
    meet(laptop);
    meet(second);
    const std::string before = second.book->dump().value();
    star.peer.reset();
    star.peerBook.reset();
    star.peerPath = backup;
    star.peerBook = std::make_unique<store::Book>(tests::openBook(backup, star.random()).value());
    star.openPeer();
    ASSERT_TRUE(star.peer->beginEpoch(star.now()).ok());
    EXPECT_NE(star.peerBook->dump().value(), before);
    // The laptop and the lead's phone are at the bottom of the lake: the second owner has it all.
    meet(second);
    EXPECT_EQ(star.peerBook->dump().value(), before);
    meet(lead);
    meet(laptop);
    EXPECT_EQ(star.peerBook->dump().value(), before);
    EXPECT_EQ(laptop.book->dump().value(), before);
    EXPECT_TRUE(has(lead, Kind::Mark, marked));
    EXPECT_EQ(lead.book->dump().value(), fromNothing(lead));
    EXPECT_TRUE(star.peerBook->verify(false).value().findings.empty());
    // The peer's own entries go on under another name, so that no number is used twice.
    star.join(Role::Owner);
    meet(laptop);
    EXPECT_EQ(laptop.book->dump().value(), star.peerBook->dump().value());
}

TEST_F(ExchangeTest, TwoValuesWrittenApartAreAClashUntilOneReplacesBoth) {
    Phone second = star.join(Role::Owner);
    meet(second);
    set(laptop, house.tiling, field::Item::quantity, std::int64_t{41'000});
    set(second, house.tiling, field::Item::quantity, std::int64_t{42'000});
    set(laptop, house.painting, field::Item::quantity, std::int64_t{50'000});
    set(second, house.painting, field::Item::quantity, std::int64_t{50'000});
    meet(laptop);
    meet(second);
    meet(laptop);
    for (auto* phone : {&laptop, &second}) {
        store::SyncBook sync(*phone->book);
        const auto clashes = sync.clashes().value();
        ASSERT_EQ(clashes.size(), 1u);  // the same value twice is none
        EXPECT_EQ(clashes[0].cell, (store::CellName{house.tiling, field::Item::quantity}));
        ASSERT_EQ(clashes[0].heads.size(), 2u);
        EXPECT_EQ(clashes[0].heads[0].value, model::Value{std::int64_t{42'000}});
        EXPECT_EQ(clashes[0].heads[1].value, model::Value{std::int64_t{41'000}});
    }
    // An edit that knows one of them does not end it.
    set(second, house.tiling, field::Item::quantity, std::int64_t{43'000});
    EXPECT_EQ(store::SyncBook(*second.book).clashes().value().size(), 1u);
    ASSERT_TRUE(store::SyncBook(*second.book)
                    .settle({house.tiling, field::Item::quantity}, std::int64_t{41'000},
                            star.stampOf(second))
                    .ok());
    meet(second);
    meet(laptop);
    for (auto* phone : {&laptop, &second}) {
        EXPECT_TRUE(store::SyncBook(*phone->book).clashes().value().empty());
        EXPECT_EQ(valueOf(*phone->book, house.tiling, field::Item::quantity),
                  model::Value{std::int64_t{41'000}});
    }
}

TEST_F(ExchangeTest, ACrewLeadsReplyToWhatItSawIsNoClash) {
    Phone lead = star.join(Role::CrewLead, house.tilers);
    const RawId delivery = id(laptop);
    Action action("deliver");
    action.set(delivery, field::Delivery::job, house.job);
    action.set(delivery, field::Delivery::item, house.tiling);
    action.set(delivery, field::Delivery::arrivedOn, std::int64_t{20'540});
    write(laptop, action);
    meet(laptop);
    meet(lead);
    set(lead, delivery, field::Delivery::arrivedOn, std::int64_t{20'541});
    meet(lead);
    EXPECT_EQ(lead.last.refused, 0u);
    EXPECT_EQ(valueOf(*star.peerBook, delivery, field::Delivery::arrivedOn),
              model::Value{std::int64_t{20'541}});
    EXPECT_TRUE(store::SyncBook(*star.peerBook).clashes().value().empty());
}

TEST_F(ExchangeTest, FieldsOfANewerCatalogPassThroughToOwnersAlone) {
    Phone second = star.join(Role::Owner);
    Phone lead = star.join(Role::CrewLead, house.tilers);
    store::Entry entry;
    entry.name = {laptop.device(), store::Lane::Shared,
                  store::SyncBook(*laptop.book).lastNumbers(laptop.device()).value()[1] + 1};
    entry.clock = laptop.book->entries().value().back().clock.next(star.now());
    entry.record = house.tiling;
    entry.field = 3998;
    entry.value = std::string("said by a newer program");
    ASSERT_TRUE(laptop.book->apply(std::vector{entry}).ok());
    meet(laptop);
    meet(second);
    meet(lead);
    const auto holds = [&](const Phone& phone) {
        for (const auto& one : phone.book->entries().value()) {
            if (one.field == 3998) {
                return true;
            }
        }
        return false;
    };
    EXPECT_TRUE(holds(second));
    EXPECT_FALSE(holds(lead));
}

TEST_F(ExchangeTest, ADeviceThatWasShutOutIsToldAndWhatItSendsIsSetAside) {
    Phone lead = star.join(Role::CrewLead, house.tilers);
    meet(lead);
    meet(laptop);
    set(laptop, lead.device(), field::Device::revokedOn, std::int64_t{20'550});
    meet(laptop);
    mark(lead, house.tiling, 7000);
    const auto entries = store::SyncBook(*lead.book).ownAfter({0, 0}, 1000, kFillBytes).value();
    EXPECT_EQ(
        star.peer->answer(Call::Push, lead.device(), sync::write(PushAsk{entries}), star.now())
            .status,
        Status::Revoked);
    EXPECT_EQ(store::SyncBook(*star.peerBook).asides(0, 100).value().size(), entries.size());
    auto met = star.meet(lead);
    ASSERT_TRUE(met.ok());
    EXPECT_TRUE(met.value().revoked);
    for (const auto call : {Call::Hello, Call::Pull, Call::Snapshot, Call::PhotoHave,
                            Call::PhotoPart, Call::Roster}) {
        EXPECT_EQ(star.peer->answer(call, lead.device(), "{}", star.now()).status, Status::Revoked);
    }
}

TEST_F(ExchangeTest, AnOwnerWhoBecomesACrewLeadKeepsNothingOfTheOwners) {
    Phone second = star.join(Role::Owner);
    meet(second);
    ASSERT_TRUE(has(second, Kind::Contract, house.contract));
    meet(laptop);
    set(laptop, second.book->me().raw(), field::Person::crew, house.tilers);
    set(laptop, second.book->me().raw(), field::Person::role, std::string("crew lead"));
    meet(laptop);
    meet(second);
    EXPECT_FALSE(has(second, Kind::Contract, house.contract));
    EXPECT_TRUE(model::isEmpty(valueOf(*second.book, house.tiling, field::Item::lumpSum)));
    EXPECT_EQ(second.book->dump().value(), fromNothing(second));
}

TEST_F(ExchangeTest, AViewerSeesDrawsAndShownPercentOfOneJob) {
    const RawId line = id(laptop);
    const RawId draw = id(laptop);
    Action action("lender");
    action.set(line, field::LenderLine::job, house.job);
    action.set(line, field::LenderLine::amount, std::int64_t{500'000});
    action.set(draw, field::Draw::job, house.job);
    action.set(draw, field::Draw::amount, std::int64_t{200'000});
    action.set(draw, field::Draw::note, std::string("owner's words"));
    write(laptop, action);
    const RawId marked = mark(laptop, house.tiling, 4000);
    meet(laptop);
    Phone viewer = star.join(Role::Viewer, {}, house.job);
    meet(viewer);
    EXPECT_EQ(valueOf(*viewer.book, line, field::LenderLine::amount),
              model::Value{std::int64_t{500'000}});
    EXPECT_EQ(valueOf(*viewer.book, draw, field::Draw::amount),
              model::Value{std::int64_t{200'000}});
    EXPECT_TRUE(model::isEmpty(valueOf(*viewer.book, draw, field::Draw::note)));
    EXPECT_EQ(valueOf(*viewer.book, marked, field::Mark::percent),
              model::Value{std::int64_t{4000}});
    EXPECT_TRUE(model::isEmpty(valueOf(*viewer.book, house.tiling, field::Item::quantity)));
    EXPECT_FALSE(has(viewer, Kind::Contract, house.contract));
    mark(viewer, house.tiling, 10'000);
    meet(viewer);
    EXPECT_GT(viewer.last.refused, 0u);
    EXPECT_EQ(viewer.book->dump().value(), fromNothing(viewer));
}

}  // namespace
}  // namespace ledgerboard::sync
