// How does a stranger's request reach us without harm? Through a guard in front of the HTTP library
// that takes in no more, and waits no longer, than its limits say.
//
// Each connection has a thread of its own and passes, in this order: the limits on connections, the
// TLS handshake, the head (request_head.h), the gatekeeper, the body, then the answerer. Debian's
// cpp-httplib 0.11.4 is trusted with none of it: it sees only heads of our writing and streams that
// end. Threads: run() in one; stop() from any; the answerer is called from many at a time.
#pragma once

#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>

#include "core/model/id.h"
#include "core/model/result.h"
#include "sync/guard/admissions.h"
#include "sync/guard/request_head.h"
#include "sync/wire/limits.h"

namespace ledgerboard::sync {

struct GuardLimits {
    ConnectionLimits connections;
    int handshakeMs = kHandshakeMs;
    int headMs = kHeadMs;
    int bodyMs = kBodyMs;
    int answerMs = kAnswerMs;
    int idleMs = kIdleMs;
    int turnedAwayMs = kTurnedAwayMs;
    int requestsPerConnection = kMostRequestsPerConnection;
    int retryAfterSeconds = kRetryAfterSeconds;
};

struct GuardedRequest {
    std::string method;
    std::string path;
    std::string address;
    std::map<std::string, std::string> headers;  // those the rules keep
    model::RawId caller;                         // as the gatekeeper said; nil for a stranger
    std::string body;                            // empty for the gatekeeper
};

struct GuardedAnswer {
    int status = 200;
    std::string body;
    std::string contentType = "application/json";
    int retryAfterSeconds = 0;  // 0: not said
};

// What the gatekeeper decides: an answer that ends it, or who is calling.
struct Gate {
    std::optional<GuardedAnswer> refusal;
    model::RawId caller;  // nil: a stranger, whose connection counts for his address
};

// Judges a request by its head alone, before a byte of its body is taken in.
using Gatekeeper = std::function<Gate(const GuardedRequest&)>;
// Neither may throw; what they throw all the same is answered with 500 and no word of it.
using Answerer = std::function<GuardedAnswer(const GuardedRequest&)>;

// What the guard turned away before any answerer saw it. For the log.
struct GuardedRefusal {
    std::string address;
    int status = 0;  // 0: nothing was answered
    std::string why;
};

struct GuardSettings {
    HeadRules rules;
    GuardLimits limits;
    std::string certificatePem;
    std::string keyPem;
    Gatekeeper gate;
    Answerer answer;
    std::function<void(const GuardedRefusal&)> refused;
};

// "busy", "too-large", ...: the "code" of an answer that the guard gives. Part of the wire.
[[nodiscard]] std::string_view codeOf(int status);

class GuardedServer {
  public:
    // Errors (Damaged): the certificate and its key cannot be used.
    [[nodiscard]] static model::Result<std::unique_ptr<GuardedServer>> make(GuardSettings settings);

    GuardedServer(const GuardedServer&) = delete;
    GuardedServer& operator=(const GuardedServer&) = delete;
    ~GuardedServer();

    // Port 0 takes a free one. Returns the port. Errors (CannotBeMet): it cannot be listened on.
    [[nodiscard]] model::Result<std::uint16_t> open(const std::string& address, std::uint16_t port);

    // Serves until stop(), and returns when every connection has ended: requests whose body has
    // come are answered, others are cut. Requires: open() succeeded.
    void run();
    void stop();

  private:
    class Parts;
    explicit GuardedServer(std::unique_ptr<Parts> parts);
    std::unique_ptr<Parts> parts_;
};

}  // namespace ledgerboard::sync
