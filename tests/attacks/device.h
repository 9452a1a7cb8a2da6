// How does a test meet the peer? As a device with a book of its own, over the real link, that keeps
// all it says and hears.
#pragma once

#include <chrono>
#include <functional>
#include <gtest/gtest.h>
#include <memory>
#include <string>
#include <thread>

#include <nlohmann/json.hpp>

#include "core/intake/photos/preview.h"
#include "core/model/check.h"
#include "core/store/book.h"
#include "sync/exchange/device_photos.h"
#include "sync/link/carry.h"
#include "sync/link/peer_client.h"

#include "tests/support/peer_process.h"

namespace ledgerboard::tests {

// A device with a book of its own, which joined by a typed code.
class Device {
  public:
    // Its clock is far from the peer's unless one is given: the device goes by the peer's time.
    Device(PeerProcess& peer, const sync::PairingCode& code, std::uint64_t seed,
           const std::string& called = "", std::function<model::Instant()> clock = SteppingClock())
        : path(peer.folder().file("device-" + std::to_string(seed) + ".book")),
          clock_(std::move(clock)),
          random_(fixedChance(seed)),
          identity_{model::IdMaker(random_).next(clock_()), sync::DeviceKey::fresh(random_)} {
        auto joined =
            sync::join(peer.place(), code, std::nullopt, identity_, around(), {}, {{}, called});
        model::require(joined.ok(), joined.ok() ? "" : joined.error().message.c_str());
        book = std::make_unique<store::Book>(
            store::Book::createJoined(path, model::Id<model::Kind::Device>(identity_.device),
                                      model::Id<model::Kind::Person>(joined.value().person),
                                      random_)
                .value());
        certificate_ = joined.value().certificate;
        place_ = peer.place();
        link = std::make_unique<sync::Link>(place_, certificate_, identity_, around());
    }

    // From here on it calls this peer, which has the same certificate.
    void turnTo(const sync::Place& place) {
        const std::int64_t offsetMs = link->offsetMs();
        place_ = place;
        link = std::make_unique<sync::Link>(place_, certificate_, identity_, around());
        link->setOffsetMs(offsetMs);
    }

    // As when its program ends, and starts again.
    void close() { book.reset(); }

    void open() { book = std::make_unique<store::Book>(store::Book::open(path, random_).value()); }

    // The status of the health call.
    [[nodiscard]] int health() const {
        return sync::PeerClient(place_, certificate_).get(std::string(sync::kHealthPath)).status;
    }

    [[nodiscard]] const sync::LinkIdentity& identity() const { return identity_; }

    [[nodiscard]] const sync::Digest& certificate() const { return certificate_; }

    [[nodiscard]] model::Result<sync::Meeting> meet() {
        sync::DeviceSide side(*book, carry());
        return side.meet(clock_());
    }

    [[nodiscard]] model::Result<void> meetPhotos(bool owner) {
        sync::DevicePhotos::Parts parts{book.get(), store::Photos(path), carry(),
                                        owner,      intake::previewOf,   {}};
        return sync::DevicePhotos(std::move(parts)).meet();
    }

    // A call of the test's own. What it says is the test's; what it is answered is kept.
    sync::LinkAnswer call(sync::Call call, const std::string& body) {
        sync::LinkAnswer answer = link->call(call, body);
        wire += answer.body + "\n" + answer.message + "\n";
        return answer;
    }

    [[nodiscard]] sync::PairingCode invite(const nlohmann::json& grant) {
        const auto answer = call(sync::Call::Invite, grant.dump());
        EXPECT_TRUE(answer.ok()) << answer.message;
        return sync::PairingCode::parse(
                   nlohmann::json::parse(answer.body).at("code").get<std::string>())
            .value();
    }

    [[nodiscard]] model::Instant stamp() {
        return model::Instant::fromMilliseconds(clock_().milliseconds() + link->offsetMs());
    }

    bool isPatient = true;  // waits before it tries again, as it is told
    std::string path;
    std::unique_ptr<store::Book> book;
    std::unique_ptr<sync::Link> link;
    bool keepsWire = true;
    std::string wire;  // the bodies of what meetings said and heard, as they were within TLS

  private:
    [[nodiscard]] sync::Carry carry() {
        return [this, over = sync::carryOver(*link)](
                   sync::Call call, const std::string& body) -> model::Result<sync::Reply> {
            auto reply = over(call, body);
            if (keepsWire) {
                wire +=
                    body + "\n" + (reply.ok() ? reply.value().body : reply.error().message) + "\n";
            }
            return reply;
        };
    }

    [[nodiscard]] sync::LinkSurroundings around() {
        return {[this] { return clock_(); }, random_,
                [this](int ms) {
                    std::this_thread::sleep_for(std::chrono::milliseconds(isPatient ? ms : 0));
                }};
    }

    std::function<model::Instant()> clock_;
    model::FillRandom random_;
    sync::LinkIdentity identity_;
    sync::Digest certificate_{};
    sync::Place place_;
};

inline void write(Device& device, const store::Action& action) {
    const auto done = device.book->commit(action, device.stamp());
    ASSERT_TRUE(done.ok()) << done.error().message;
}

inline void meet(Device& device) {
    const auto met = device.meet();
    ASSERT_TRUE(met.ok()) << met.error().message;
}

}  // namespace ledgerboard::tests
