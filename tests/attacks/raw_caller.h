// How does somebody call who keeps to no rules? Bytes over TLS, whatever they are.
#pragma once

#include <openssl/ssl.h>
#include <string>

#include "sync/identity/invitation.h"

namespace ledgerboard::tests {

// How long a test waits for what must happen: far longer than the peer's own deadlines, and spent
// only where it does not.
inline constexpr int kPatienceMs = 60'000;

class RawCaller {
  public:
    // Connects, and shakes hands in no newer version than `newestTls`; 0 leaves TLS out.
    explicit RawCaller(const sync::Place& place, int newestTls = TLS1_3_VERSION);
    RawCaller(const RawCaller&) = delete;
    RawCaller& operator=(const RawCaller&) = delete;
    ~RawCaller();

    [[nodiscard]] bool isConnected() const { return good_; }

    // False once the peer has ended the connection. Waits at most `waitMs` for room.
    bool send(const std::string& bytes, int waitMs = kPatienceMs);
    // Tells the peer to change its keys, which carries no data. False once it ended the connection.
    bool updateKeys();
    // `block` again and again until the peer ends it or `mostBytes` are sent; what was sent.
    std::size_t flood(const std::string& block, std::size_t mostBytes);
    // All that comes until the peer ends the connection or `waitMs` pass in silence.
    std::string receive(int waitMs = kPatienceMs);
    // One request and its answer.
    std::string ask(const std::string& bytes, int waitMs = kPatienceMs);

    // Whether the peer ended the connection within `waitMs` (0: already), by TLS or by TCP.
    bool isEndedWithin(int waitMs);

  private:
    int socket_ = -1;
    SSL_CTX* context_ = nullptr;
    SSL* tls_ = nullptr;
    bool good_ = false;
};

}  // namespace ledgerboard::tests
