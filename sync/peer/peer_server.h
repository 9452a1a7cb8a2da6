// How is a call answered? The guard takes it in, its signature says who is calling, the handler
// says what to answer; pairing, the time and health are answered here.
//
// Threads: run() in one, stop() from any.
#pragma once

#include <functional>
#include <memory>

#include "core/model/date.h"
#include "sync/guard/guarded_server.h"
#include "sync/identity/certificate.h"
#include "sync/identity/invitations.h"
#include "sync/identity/nonces.h"
#include "sync/peer/device_list.h"
#include "sync/peer/event_log.h"
#include "sync/peer/handler.h"

namespace ledgerboard::sync {

// What it is made of. All of it must outlive the server.
struct PeerParts {
    const Certificate& certificate;
    DeviceList& devices;
    InvitationList& invitations;
    NonceMemory& nonces;
    Handler& handler;
    EventLog& log;
    std::function<model::Instant()> now;
    GuardLimits limits;
};

class PeerServer {
  public:
    // Errors (Damaged): the certificate cannot be used.
    [[nodiscard]] static model::Result<std::unique_ptr<PeerServer>> make(const PeerParts& parts);

    // As GuardedServer's.
    [[nodiscard]] model::Result<std::uint16_t> open(const std::string& address,
                                                    std::uint16_t port) {
        return guard_->open(address, port);
    }

    void run() { guard_->run(); }

    void stop() { guard_->stop(); }

  private:
    explicit PeerServer(const PeerParts& parts) : parts_(parts) {}

    [[nodiscard]] Gate gate(const GuardedRequest& request);
    [[nodiscard]] GuardedAnswer answer(const GuardedRequest& request);
    [[nodiscard]] GuardedAnswer answerCall(Call call, const GuardedRequest& request);
    [[nodiscard]] GuardedAnswer pair(const GuardedRequest& request);
    [[nodiscard]] GuardedAnswer notKept(const model::Error& error, const GuardedRequest& request);
    [[nodiscard]] GuardedAnswer refuse(Refusal refusal, const GuardedRequest& request,
                                       const model::RawId& device);

    PeerParts parts_;
    std::unique_ptr<GuardedServer> guard_;
};

}  // namespace ledgerboard::sync
