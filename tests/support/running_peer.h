// How do tests meet a peer? A real one in this process, on loopback, with a handler and a clock of
// the test's own, in a folder of its own.
#pragma once

#include <atomic>
#include <chrono>
#include <memory>
#include <mutex>
#include <sstream>
#include <string>
#include <thread>

#include "core/model/check.h"
#include "sync/identity/certificate.h"
#include "sync/identity/invitations.h"
#include "sync/link/link.h"
#include "sync/peer/paired_devices.h"
#include "sync/peer/peer_server.h"

#include "tests/support/fixed_chance.h"

namespace ledgerboard::tests {

// Answers each call with its name and the caller's device, after the body it was sent.
class EchoHandler : public sync::Handler {
  public:
    [[nodiscard]] sync::HandlerReply answer(sync::Call call, const sync::Caller& caller,
                                            std::string_view body, model::Instant) override {
        ++calls;
        if (holdMs > 0) {
            std::this_thread::sleep_for(std::chrono::milliseconds(holdMs));
        }
        if (throws) {
            throw std::runtime_error("the budget is 105000");
        }
        return {status, std::string(sync::nameOf(call)) + " " + caller.device.hex() + " " +
                            std::string(body) + std::string(padding, '.')};
    }

    [[nodiscard]] model::Result<model::RawId> welcome(const sync::Newcomer&,
                                                      model::Instant) override {
        return model::RawId{};
    }

    std::atomic<int> calls{0};
    std::atomic<int> holdMs{0};
    std::atomic<bool> throws{false};
    std::atomic<int> status{200};
    std::atomic<std::size_t> padding{0};
};

// A clock that stands where it is put.
class HandClock {
  public:
    [[nodiscard]] model::Instant now() const { return model::Instant::fromMilliseconds(ms); }

    void step(std::int64_t by) { ms += by; }

    std::atomic<std::int64_t> ms{1'775'476'800'000};  // 2026-04-06T12:00:00Z
};

// Chance that several threads may ask.
inline model::FillRandom sharedChance(std::uint64_t seed) {
    auto mutex = std::make_shared<std::mutex>();
    return [mutex, fill = fixedChance(seed)](std::uint8_t* bytes, std::size_t count) {
        const std::lock_guard<std::mutex> lock(*mutex);
        fill(bytes, count);
    };
}

template <class T>
T mustBe(model::Result<T> result) {
    model::require(result.ok(), result.ok() ? "" : result.error().message.c_str());
    return std::move(result).value();
}

class RunningPeer {
  public:
    explicit RunningPeer(const sync::GuardLimits& limits = {},
                         const std::string& name = sync::kPeerName, std::uint64_t seed = 7)
        : folder_("peer"),
          certificate(mustBe(sync::makeCertificate(clock.now(), sharedChance(seed), name))),
          devices(mustBe(sync::PairedDevices::open(folder_.file("house.book.devices")))),
          invitations(certificate.digest, sharedChance(seed + 1)),
          nonces(clock.now()),
          log_(words_) {
        clock.step(1'000);  // past what the nonces refuse
        server_ =
            mustBe(sync::PeerServer::make({certificate, *devices, invitations, nonces, handler,
                                           log_, [this] { return clock.now(); }, limits}));
        place = {"127.0.0.1", mustBe(server_->open("127.0.0.1", 0))};
        thread_ = std::thread([this] { server_->run(); });
    }

    RunningPeer(const RunningPeer&) = delete;
    RunningPeer& operator=(const RunningPeer&) = delete;

    ~RunningPeer() { stop(); }

    void stop() {
        if (thread_.joinable()) {
            server_->stop();
            thread_.join();
        }
    }

    // A device that has joined.
    [[nodiscard]] sync::LinkIdentity admit(std::uint64_t seed) {
        sync::LinkIdentity identity{deviceId(seed), sync::DeviceKey::fresh(sharedChance(seed))};
        mustBe(devices->admit(identity.device, identity.key.publicKey(),
                              {model::Role::Owner, {}, {}}, clock.now()));
        return identity;
    }

    [[nodiscard]] static model::RawId deviceId(std::uint64_t seed) {
        return model::IdMaker(sharedChance(seed))
            .next(model::Instant::fromMilliseconds(1'775'476'800'000));
    }

    [[nodiscard]] sync::LinkSurroundings surroundings(std::uint64_t seed) {
        return {[this] { return clock.now(); }, sharedChance(seed + 100),
                [this](int ms) {
                    waitedMs += ms;
                    std::this_thread::sleep_for(std::chrono::milliseconds(std::min(ms, 20)));
                }};
    }

    [[nodiscard]] sync::Link link(const sync::LinkIdentity& identity, std::uint64_t seed = 1) {
        return sync::Link(place, certificate.digest, identity, surroundings(seed));
    }

    // What was logged. Requires: stopped.
    [[nodiscard]] std::string logged() const { return words_.str(); }

  private:
    TestFolder folder_;

  public:
    HandClock clock;
    sync::Certificate certificate;
    std::unique_ptr<sync::PairedDevices> devices;
    sync::Invitations invitations;
    sync::RecentNonces nonces;
    EchoHandler handler;
    sync::Place place;
    std::atomic<int> waitedMs{0};

  private:
    std::ostringstream words_;
    sync::EventLog log_;
    std::unique_ptr<sync::PeerServer> server_;
    std::thread thread_;
};

}  // namespace ledgerboard::tests
