// What do tests of the exchange meet in? A peer and devices of all roles in one folder, with a
// network that the test can cut, and a clock that it can set.
#pragma once

#include <filesystem>
#include <functional>
#include <gtest/gtest.h>
#include <map>
#include <memory>
#include <string>

#include "core/store/sync_book.h"
#include "sync/exchange/device_side.h"
#include "sync/exchange/peer_side.h"

#include "tests/support/books.h"
#include "tests/support/fixed_chance.h"

namespace ledgerboard::tests {

struct Phone {
    std::string path;
    std::unique_ptr<store::Book> book;
    model::RawId key;           // the device it was paired as
    std::int64_t skewMs = 0;    // of its own clock
    std::int64_t offsetMs = 0;  // what it learned to add to it
    sync::Meeting last;

    [[nodiscard]] model::RawId device() const { return book->thisDevice().raw(); }
};

class Star {
  public:
    explicit Star(const std::string& name, std::uint64_t chance = 1)
        : folder_((preferMemory(), name)), random_(fixedChance(chance)) {
        peerPath = folder_.file("peer.book");
        peerBook = std::make_unique<store::Book>(
            createBook(peerPath, "Peer's owner", now(), random_).value());
        owner = peerBook->me().raw();
        openPeer();
    }

    [[nodiscard]] model::Instant now() const { return model::Instant::fromMilliseconds(timeMs); }

    void openPeer() {
        sync::PeerSide::Parts parts;
        parts.book = peerBook.get();
        parts.random = random_;
        parts.keeping = keeping;
        parts.copyOf = [](std::string_view bytes) {
            return model::Result<std::string>("copy of " + std::string(bytes.substr(0, 4)));
        };
        peer = std::make_unique<sync::PeerSide>(sync::PeerSide::open(std::move(parts)).value());
    }

    // A person of a role with one device, known to the peer; its book is empty still.
    Phone join(model::Role role, model::RawId crew = {}, model::RawId job = {}) {
        store::Action action("invite");
        model::Person person;
        person.id = model::Id<model::Kind::Person>(peerBook->newId(now()));
        person.name = "Person " + std::to_string(++people_);
        person.role = role;
        person.crew = model::Id<model::Kind::Crew>(crew);
        person.job = model::Id<model::Kind::Job>(job);
        model::Device device;
        device.id = model::Id<model::Kind::Device>(peerBook->newId(now()));
        device.person = person.id;
        device.name = "phone";
        action.add(person);
        action.add(device);
        EXPECT_TRUE(peerBook->commit(action, now()).ok());
        Phone phone;
        phone.path = folder_.file("phone-" + std::to_string(people_) + ".book");
        phone.key = device.id.raw();
        phone.book = std::make_unique<store::Book>(
            store::Book::createJoined(phone.path, device.id, person.id, random_).value());
        return phone;
    }

    // What travels between a phone and the peer, unless `network` says otherwise.
    using Network = std::function<model::Result<sync::Reply>(
        sync::Call, const std::string&,
        const std::function<sync::Reply(sync::Call, const std::string&)>&)>;

    model::Result<sync::Meeting> meet(Phone& phone, const Network& network = {}) {
        auto deliver = [&](sync::Call call, const std::string& body) {
            return peer->answer(call, phone.key, body, now());
        };
        sync::DeviceSide side(
            *phone.book,
            [&](sync::Call call, const std::string& body) -> model::Result<sync::Reply> {
                return network ? network(call, body, deliver)
                               : model::Result<sync::Reply>(deliver(call, body));
            });
        auto met = side.meet(clockOf(phone));
        phone.offsetMs = side.clockOffsetMs().value();
        if (met.ok()) {
            phone.last = met.value();
        }
        return met;
    }

    // The phone's own clock, and what it stamps with.
    [[nodiscard]] model::Instant clockOf(const Phone& phone) const {
        return model::Instant::fromMilliseconds(timeMs + phone.skewMs);
    }

    [[nodiscard]] model::Instant stampOf(const Phone& phone) const {
        return model::Instant::fromMilliseconds(timeMs + phone.skewMs + phone.offsetMs);
    }

    [[nodiscard]] std::string file(const std::string& name) const { return folder_.file(name); }

    [[nodiscard]] const model::FillRandom& random() const { return random_; }

    sync::PeerSide::Keeping keeping;          // takes hold when the peer opens
    std::int64_t timeMs = 1'775'476'800'000;  // 2026-04-06T12:00Z
    std::string peerPath;
    std::unique_ptr<store::Book> peerBook;
    std::unique_ptr<sync::PeerSide> peer;
    model::RawId owner;

  private:
    TestFolder folder_;
    model::FillRandom random_;
    int people_ = 0;
};

// What tests of a meeting begin from: a star with an owner's laptop in it.
class StarTest : public testing::Test {
  protected:
    explicit StarTest(const std::string& name)
        : star(name), laptop(star.join(model::Role::Owner)) {}

    void meet(Phone& phone) {
        auto met = star.meet(phone);
        ASSERT_TRUE(met.ok()) << met.error().message;
    }

    model::RawId id(Phone& phone) { return phone.book->newId(star.stampOf(phone)); }

    void write(Phone& phone, const store::Action& action) {
        star.timeMs += 1000;
        auto done = phone.book->commit(action, star.stampOf(phone));
        ASSERT_TRUE(done.ok()) << done.error().message;
    }

    Star star;
    Phone laptop;
};

}  // namespace ledgerboard::tests
