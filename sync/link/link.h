// How does a device talk to its peer? It joins once; then it signs each call by the peer's time,
// tries again where that helps, and says plainly why where it does not.
//
// Time, chance and waiting are passed in. Threads: one at a time.
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "core/model/date.h"
#include "core/model/id.h"
#include "core/model/result.h"
#include "sync/identity/device_key.h"
#include "sync/identity/invitation.h"
#include "sync/identity/pairing.h"
#include "sync/identity/refusal.h"
#include "sync/identity/roster.h"
#include "sync/link/peer_client.h"
#include "sync/link/retry.h"
#include "sync/wire/calls.h"

namespace ledgerboard::sync {

struct LinkSurroundings {
    std::function<model::Instant()> now;  // the device's own clock, right or wrong
    model::FillRandom random;
    std::function<void(int ms)> wait;
};

// Who the device is.
struct LinkIdentity {
    model::RawId device;
    DeviceKey key;
};

// What a call came to. Where it is not ok, `message` says what to do.
struct LinkAnswer {
    Fault fault = Fault::None;
    int status = 0;
    Refusal refusal = Refusal::None;  // Revoked: this device's copy must be wiped
    std::string code;  // of a refusal before the exchange; empty where the exchange answered
    std::string body;
    std::string message;

    [[nodiscard]] bool ok() const { return fault == Fault::None && status >= 200 && status < 300; }
};

// Where a device that joined finds its peer, and what it was given.
struct Joined {
    Place place;
    Digest certificate{};
    Grant grant;
    model::RawId person{};  // whose device it is; nil where the peer did not say
};

class Link {
  public:
    Link(const Place& place, const Digest& certificate, LinkIdentity identity,
         LinkSurroundings surroundings, RetryRules retry = {}, ClientTimeouts timeouts = {});

    // Asks the peer for its time, from which on this device signs by it.
    [[nodiscard]] LinkAnswer askTime();

    // One signed call. Tries again, each time signed anew, where nobody answers, the connection is
    // cut, the peer is busy (waiting as long as it asks) or the time was wrong.
    [[nodiscard]] LinkAnswer call(Call call, const std::string& body);

    // How far the peer's clock is ahead of this device's, in milliseconds. Kept by the caller.
    [[nodiscard]] std::int64_t offsetMs() const { return offsetMs_; }

    void setOffsetMs(std::int64_t offsetMs) { offsetMs_ = offsetMs; }

  private:
    [[nodiscard]] LinkAnswer callOnce(Call call, const std::string& body, int& retryAfterSeconds);
    [[nodiscard]] model::Instant peerNow() const;

    Place place_;
    Digest certificate_;
    LinkIdentity identity_;
    LinkSurroundings surroundings_;
    RetryRules retry_;
    PeerClient client_;
    std::int64_t offsetMs_ = 0;
};

// Joins with a code. `certificate` is what a picture said; with a typed code there is none, and
// what the peer shows is believed once it has proven that it knows the code.
// Errors (CannotBeMet): nobody answers, another than the peer answers, the peer refuses, or what
// answers does not prove that it knows the code.
[[nodiscard]] model::Result<Joined> join(const Place& place, const PairingCode& code,
                                         const std::optional<Digest>& certificate,
                                         const LinkIdentity& identity,
                                         const LinkSurroundings& surroundings,
                                         ClientTimeouts timeouts = {},
                                         const Introduction& self = {});

}  // namespace ledgerboard::sync
