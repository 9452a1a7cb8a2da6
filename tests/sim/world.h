// One seed, one world: a peer, devices of all roles, and everything that can go wrong between them.
//
// Steps are drawn from the seed: edits, meetings over a network that cuts, doubles, replays and
// truncates, crashes, clocks a day off, crews reassigned, a phone shut out, phones and the peer
// restored from old backups. Then the network heals, all meet, and what must hold is checked.
#pragma once

#include <map>
#include <random>
#include <set>
#include <string>
#include <vector>

#include "tests/sim/leak_search.h"
#include "tests/support/star.h"

namespace ledgerboard::sim {

struct Outcome {
    std::string failure;               // empty where all holds
    std::vector<std::string> history;  // what was done, a line each
    // What the run was worth: so that a world where nothing happens doesn't pass for one.
    std::size_t entries = 0;
    std::size_t asides = 0;
    std::size_t renewed = 0;
    std::size_t restamped = 0;
    std::size_t dropped = 0;
    std::size_t clashes = 0;
    std::size_t restores = 0;
    std::size_t cuts = 0;
    std::size_t compacted = 0;
};

class World {
  public:
    explicit World(std::uint64_t seed);
    // Does the steps of these numbers, in order. What a step draws hangs on the seed and its number
    // alone, so that one left out changes nothing about the others but what they find.
    // Requires: called once.
    [[nodiscard]] Outcome run(const std::vector<int>& steps);

  private:
    struct Actor {
        tests::Phone phone;
        model::Role role = model::Role::Unset;
        model::RawId crew;
        std::set<model::RawId> names;  // every identity it ever had
        bool revoked = false;
        bool restored = false;  // from a backup, and has not met the peer since
        std::vector<std::string> backups;
        std::vector<std::pair<sync::Call, std::string>> past;  // requests, to be replayed
    };

    // Drawing.
    std::size_t below(std::size_t count) { return chance_() % count; }

    bool oneIn(std::size_t count) { return below(count) == 0; }

    std::int64_t amount(std::int64_t from);
    model::Value plantedFor(const model::Field& field);

    // Steps (world_steps.cpp).
    void step();
    void ownerWrites(Actor& actor);
    void leadWrites(Actor& actor);
    void cheat(Actor& actor);
    void plant(Actor& actor);
    void editItem(Actor& actor);
    void addItem(Actor& actor);
    void addFact(Actor& actor);
    void newerField(Actor& actor);
    void settleOne(Actor& actor);
    void crash(Actor& actor);
    void backUp(Actor& actor);
    void restore(Actor& actor);
    void restorePeer();
    void crashPeer();
    void shutOut();
    void commit(Actor& actor, const store::Action& action);
    template <class Row>
    model::RawId any(Actor& actor);

    // The network (world.cpp).
    void meet(Actor& actor, bool faulty);
    model::Result<sync::Reply> carry(
        Actor& actor, sync::Call call, const std::string& body,
        const std::function<sync::Reply(sync::Call, const std::string&)>& deliver);
    void watch(Actor& actor, sync::Call call, const std::string& body, const sync::Reply& reply);

    // Checks (world_checks.cpp).
    void check();
    void checkOwners();
    [[nodiscard]] bool mayBeGone(const store::Entry& entry);
    void sameLog(const std::vector<store::Entry>& own, const std::vector<store::Entry>& peers);
    void checkOthers();
    void checkLead(const Actor& actor);
    model::RawId authorOf(const model::RawId& record, model::FieldCode code);
    void checkAcknowledged();
    void checkFiles();
    std::string fromNothing(const Actor& actor);
    void fail(const std::string& what);

    void note(const std::string& what) {
        outcome_.history.push_back(std::to_string(number_) + " " + what);
    }

    std::uint64_t seed_;
    std::mt19937_64 chance_;
    tests::Star star_;
    LeakSearch leaks_;
    std::vector<std::unique_ptr<Actor>> actors_;
    model::RawId job_;
    std::vector<model::RawId> crews_;
    std::vector<model::RawId> spaces_;
    std::map<store::EntryName, store::Entry> acknowledged_;
    std::vector<std::string> peerBackups_;
    std::size_t inFlight_ = 0;
    int number_ = 0;  // of the step that is done
    int files_ = 0;
    int words_ = 0;
    Outcome outcome_;
};

}  // namespace ledgerboard::sim
