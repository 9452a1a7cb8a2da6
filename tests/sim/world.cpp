#include "tests/sim/world.h"

namespace ledgerboard::sim {

namespace field = model::field;
using model::RawId;
using model::Result;
using model::Role;
using store::Action;
using sync::Call;
using sync::Reply;
using sync::Status;

World::World(std::uint64_t seed) : seed_(seed), chance_(seed), star_("sim", seed) {
    // What is days and months elsewhere is hours here, so that it comes to pass.
    constexpr std::int64_t kHourMs = 3600 * 1000;
    star_.keeping = {2 * kHourMs, 6 * kHourMs, kHourMs / 2};
    star_.openPeer();
    auto add = [&](Role role, RawId crew, RawId job) {
        auto actor = std::make_unique<Actor>();
        actor->phone = star_.join(role, crew, job);
        actor->role = role;
        actor->crew = crew;
        actors_.push_back(std::move(actor));
    };
    for (int k = 0; k < 3; ++k) {
        add(Role::Owner, {}, {});
    }
    Actor& first = *actors_.front();
    job_ = first.phone.book->newId(star_.now());
    Action action("begin");
    action.set(job_, field::Job::name, std::string("Elm Street"));
    // One planted amount from the first, so that the search for leaks has something to find in an
    // owner's file however few of the steps plant more.
    leaks_.plant(kOwnerAmount);
    action.set(job_, field::Job::budget, kOwnerAmount);
    for (int k = 0; k < 2; ++k) {
        crews_.push_back(first.phone.book->newId(star_.now()));
        action.set(crews_.back(), field::Crew::name, "Crew " + std::to_string(k));
    }
    for (int k = 0; k < 3; ++k) {
        spaces_.push_back(first.phone.book->newId(star_.now()));
        action.set(spaces_.back(), field::Space::job, job_);
        action.set(spaces_.back(), field::Space::name, "Space " + std::to_string(k));
    }
    commit(first, action);
    for (int k = 0; k < 3; ++k) {
        addItem(first);
    }
    meet(first, false);
    add(Role::CrewLead, crews_[0], {});
    add(Role::CrewLead, crews_[1], {});
    add(Role::CrewLead, crews_[0], {});
    add(Role::Viewer, {}, job_);
    for (auto& actor : actors_) {
        meet(*actor, false);
    }
}

Outcome World::run(const std::vector<int>& steps) {
    for (const int number : steps) {
        if (!outcome_.failure.empty()) {
            break;
        }
        number_ = number;
        chance_.seed(seed_ * 1'000'003 + static_cast<std::uint64_t>(number));
        step();
    }
    note("all meet until they agree");
    for (int round = 0; round < 4 && outcome_.failure.empty(); ++round) {
        for (auto& actor : actors_) {
            meet(*actor, false);
        }
    }
    if (outcome_.failure.empty()) {
        check();
    }
    outcome_.entries = star_.peerBook->entries().value().size();
    return std::move(outcome_);
}

void World::fail(const std::string& what) {
    if (outcome_.failure.empty()) {
        outcome_.failure = what;
    }
}

void World::meet(Actor& actor, bool faulty) {
    inFlight_ = 0;
    auto met =
        star_.meet(actor.phone, [&](Call call, const std::string& body, const auto& deliver) {
            if (!faulty) {
                Reply reply = deliver(call, body);
                watch(actor, call, body, reply);
                return Result<Reply>(std::move(reply));
            }
            return carry(actor, call, body, deliver);
        });
    if (!met.ok()) {
        if (!faulty) {
            fail("a meeting over a sound network failed: " + met.error().message);
        }
        return;
    }
    actor.restored = false;
    actor.names.insert(actor.phone.device());
    outcome_.renewed += met.value().renewed ? 1 : 0;
    outcome_.restamped += met.value().restamped;
    outcome_.dropped += met.value().dropped;
    outcome_.asides += met.value().refused;
    if (met.value().revoked && !actor.revoked) {
        fail("a device was told that it was shut out, and was not");
    }
}

// What a bad network makes of one call.
Result<Reply> World::carry(Actor& actor, Call call, const std::string& body,
                           const std::function<Reply(Call, const std::string&)>& deliver) {
    const auto lost = model::cannotBeMet("cut off");
    actor.past.emplace_back(call, body);
    ++outcome_.cuts;
    switch (below(14)) {
        case 0:
            return lost;  // it never arrived
        case 1:
            watch(actor, call, body, deliver(call, body));
            return lost;  // its answer never did
        case 2:
            watch(actor, call, body, deliver(call, body));  // it arrived twice
            break;
        case 3: {  // an old one arrives late
            const auto& [oldCall, oldBody] = actor.past[below(actor.past.size())];
            watch(actor, oldCall, oldBody, deliver(oldCall, oldBody));
            break;
        }
        case 4: {  // half of it arrives
            const Reply half = deliver(call, body.substr(0, below(body.size() + 1)));
            if (half.status == Status::Failed) {
                fail("half a message made the peer fail");
            }
            return lost;
        }
        case 5: {  // half of its answer arrives
            Reply reply = deliver(call, body);
            watch(actor, call, body, reply);
            reply.body.resize(below(reply.body.size() + 1));
            return reply;
        }
        default:
            --outcome_.cuts;
            break;
    }
    Reply reply = deliver(call, body);
    watch(actor, call, body, reply);
    return reply;
}

// Remembers what the peer acknowledged, and searches what it sends for what it must not.
void World::watch(Actor& actor, Call call, const std::string& body, const Reply& reply) {
    if (actor.role != Role::Owner) {
        if (auto leak = leaks_.find(reply.body, actor.role == Role::Viewer)) {
            fail("an answer to a " + std::string(model::wordOf(actor.role)) + " holds " + *leak);
        }
    }
    if (reply.status == Status::Failed) {
        fail("the peer failed");
    }
    if (call != Call::Push || reply.status != Status::Ok) {
        return;
    }
    const auto ask = sync::readPushAsk(body);
    const auto answer = sync::readPushAnswer(reply.body);
    if (!ask.ok() || !answer.ok()) {
        fail("a push was answered and can't be read");
        return;
    }
    const RawId device = sync::standingOf(*star_.peerBook, actor.phone.key).value().device;
    actor.names.insert(device);
    for (const auto& entry : ask.value().entries) {
        const auto lane = static_cast<std::size_t>(entry.name.lane);
        if (entry.name.device == device && entry.name.number <= answer.value().acknowledged[lane]) {
            acknowledged_[entry.name] = entry;
        }
    }
}

}  // namespace ledgerboard::sim
