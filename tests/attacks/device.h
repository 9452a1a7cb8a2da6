// What meets the real program in these tests? A device with a book and a key of its own.
#pragma once

#include <chrono>
#include <memory>
#include <string>
#include <thread>

#include "core/model/check.h"
#include "core/store/book.h"
#include "sync/link/carry.h"

#include "tests/attacks/peer_process.h"

namespace ledgerboard::tests {

// A device with a book of its own, which joined by a typed code.
class Device {
  public:
    Device(PeerProcess& peer, const sync::PairingCode& code, std::uint64_t seed)
        : path(peer.folder().file("device-" + std::to_string(seed) + ".book")),
          random_(fixedChance(seed)),
          identity_{model::IdMaker(random_).next(clock_()), sync::DeviceKey::fresh(random_)} {
        auto joined = sync::join(peer.place(), code, std::nullopt, identity_, around());
        model::require(joined.ok(), "the device joins");
        book = std::make_unique<store::Book>(
            store::Book::createJoined(path, model::Id<model::Kind::Device>(identity_.device),
                                      model::Id<model::Kind::Person>(joined.value().person),
                                      random_)
                .value());
        link = std::make_unique<sync::Link>(peer.place(), joined.value().certificate, identity_,
                                            around());
    }

    [[nodiscard]] model::Result<sync::Meeting> meet() {
        sync::DeviceSide side(*book, sync::carryOver(*link));
        return side.meet(clock_());
    }

    [[nodiscard]] model::Instant stamp() {
        return model::Instant::fromMilliseconds(clock_().milliseconds() + link->offsetMs());
    }

    bool isPatient = true;  // waits before it tries again, as it is told
    std::string path;
    std::unique_ptr<store::Book> book;
    std::unique_ptr<sync::Link> link;

  private:
    [[nodiscard]] sync::LinkSurroundings around() {
        return {[this] { return clock_(); }, random_,
                [this](int ms) {
                    std::this_thread::sleep_for(std::chrono::milliseconds(isPatient ? ms : 0));
                }};
    }

    SteppingClock clock_;  // far from the peer's: the device goes by the peer's time
    model::FillRandom random_;
    sync::LinkIdentity identity_;
};

}  // namespace ledgerboard::tests
