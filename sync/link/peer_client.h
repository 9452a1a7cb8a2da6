// What does the peer at this place answer? One request at a time over TLS 1.3, to the holder of one
// certificate and to nobody else.
//
// The certificate's digest decides, and the fixed name in it; who signed it, its dates and what
// authorities this computer trusts do not. Threads: one at a time.
#pragma once

#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "core/model/result.h"
#include "sync/identity/bytes.h"
#include "sync/identity/invitation.h"
#include "sync/wire/limits.h"

namespace ledgerboard::sync {

enum class Fault {
    None,
    Unreachable,  // nobody answers there, or not in time
    NotThePeer,   // somebody answers who has not the certificate
    Cut,          // the connection ended within the request
    TooLarge,     // the answer exceeds kMostReplyBytes
};

struct ClientAnswer {
    Fault fault = Fault::None;
    int status = 0;
    std::string body;
    int retryAfterSeconds = 0;
};

struct ClientTimeouts {
    int connectMs = kConnectMs;
    int readMs = kReadMs;
};

class PeerClient {
  public:
    using Headers = std::vector<std::pair<std::string, std::string>>;

    PeerClient(Place place, const Digest& certificate, ClientTimeouts timeouts = {});
    PeerClient(PeerClient&&) noexcept;
    PeerClient& operator=(PeerClient&&) noexcept;
    ~PeerClient();

    // Keeps the connection for the next request.
    [[nodiscard]] ClientAnswer get(const std::string& path);
    [[nodiscard]] ClientAnswer post(const std::string& path, const Headers& headers,
                                    const std::string& body);

  private:
    class Parts;
    std::unique_ptr<Parts> parts_;

    friend model::Result<Digest> seenCertificate(const Place& place, ClientTimeouts timeouts);
};

// The digest of the certificate of whoever answers there, asking nothing of him. To be believed
// only once a pairing over it has succeeded. Errors (CannotBeMet): nobody answers.
[[nodiscard]] model::Result<Digest> seenCertificate(const Place& place,
                                                    ClientTimeouts timeouts = {});

// What to tell a person of a fault. Empty for None.
[[nodiscard]] std::string textOf(Fault fault, const Place& place);

}  // namespace ledgerboard::sync
