#include "sync/guard/guarded_server.h"

#include <algorithm>
#include <atomic>
#include <list>
#include <mutex>
#include <sys/socket.h>
#include <thread>
#include <unistd.h>
#include <utility>

#include <httplib.h>

#include "sync/guard/guarded_stream.h"
#include "sync/guard/listener.h"
#include "sync/guard/tls.h"

namespace ledgerboard::sync {

using model::Result;

namespace {

constexpr int kAcceptMs = 1'000;  // how often ended connections are cleared away at the latest
constexpr int kLingerMs = 1'000;
constexpr std::size_t kMostThrownAway = 2 * kMiB;  // more than any body that was announced

// What the library is used for: reading a request of our writing, calling, writing the answer. Its
// own accepting is not: it ends for good at the first unusual error, holds five callers in wait,
// and lets a second server share the port.
class Library final : public httplib::Server {
  public:
    using Server::process_request;
};

// One caller, from accepting to closing.
struct Connection {
    int socket = -1;  // -1 once closed; guarded by the server's mutex
    std::string address;
    Ticket ticket;
    model::RawId caller;              // of the request under way
    GuardedStream* stream = nullptr;  // while it is served
    std::thread thread;
    std::atomic<bool> ended{false};
};

std::string bodyOf(int status) {
    return R"({"code":")" + std::string(codeOf(status)) + R"("})";
}

// Answers without the library and for the last time on this connection. What was not read of the
// request is thrown away at closing.
void refuse(GuardedStream& stream, const GuardedAnswer& answer, int withinMs) {
    std::string text = "HTTP/1.1 " + std::to_string(answer.status) + " " +
                       std::string(reasonOf(answer.status)) +
                       "\r\nContent-Type: application/json\r\nConnection: close\r\n";
    if (answer.retryAfterSeconds > 0) {
        text += "Retry-After: " + std::to_string(answer.retryAfterSeconds) + "\r\n";
    }
    text += "Content-Length: " + std::to_string(answer.body.size()) + "\r\n\r\n" + answer.body;
    stream.beginAnswer(withinMs);
    stream.write(text.data(), text.size());
}

int statusOf(HeadEnd end) {
    return end == HeadEnd::TooLarge ? 431 : end == HeadEnd::TooSlow ? 408 : 0;
}

}  // namespace

std::string_view codeOf(int status) {
    switch (status) {
        case 404:
        case 405:
            return "no-such-call";
        case 408:
            return "too-slow";
        case 411:
            return "length-needed";
        case 413:
            return "too-large";
        case 415:
            return "encoded";
        case 431:
            return "head-too-large";
        case 500:
            return "failed";
        case 503:
            return "busy";
        default:
            return "bad-request";
    }
}

class GuardedServer::Parts {
  public:
    Parts(GuardSettings settings, TlsContext tls)
        : settings_(std::move(settings)),
          tls_(std::move(tls)),
          admissions_(settings_.limits.connections) {
        addRoutes();
    }

    Listener& listener() { return listener_; }

    void run();

  private:
    void addRoutes();
    void callAnswerer(const httplib::Request& request, httplib::Response& response);
    void start(Arrival arrival);
    void serve(Connection& connection);
    void serveRequests(Connection& connection, GuardedStream& stream, SSL* tls);
    GuardedAnswer ownAnswer(int status) const;
    std::optional<GuardedAnswer> passGate(Connection& connection, const RequestHead& head);
    bool serveRequest(const RequestHead& head, bool last, GuardedStream& stream, SSL* tls);
    void clearEnded();
    void endAll();
    void tell(const Connection& connection, int status, std::string why) const;

    const GuardSettings settings_;
    const TlsContext tls_;
    Library library_;
    Listener listener_;
    Admissions admissions_;
    std::mutex mutex_;  // guards the sockets in connections_
    std::list<Connection> connections_;
};

void GuardedServer::Parts::tell(const Connection& connection, int status, std::string why) const {
    if (settings_.refused) {
        settings_.refused({connection.address, status, std::move(why)});
    }
}

void GuardedServer::Parts::addRoutes() {
    const auto call = [this](const httplib::Request& request, httplib::Response& response) {
        callAnswerer(request, response);
    };
    for (const Route& route : settings_.rules.routes) {
        const std::string path(route.path);
        if (route.method == "GET") {
            library_.Get(path, call);
        } else {
            library_.Post(path, call);
        }
    }
    // A last net: the library would put the words of an exception into a header.
    library_.set_exception_handler(
        [](const httplib::Request&, httplib::Response& response, const std::exception_ptr&) {
            response.status = 500;
            response.set_content(bodyOf(500), "application/json");
        });
}

void GuardedServer::Parts::callAnswerer(const httplib::Request& request,
                                        httplib::Response& response) {
    auto& connection = *static_cast<Connection*>(SSL_get_app_data(request.ssl));
    GuardedRequest asked;
    asked.method = request.method;
    asked.path = request.path;
    asked.address = connection.address;
    asked.body = request.body;
    for (const auto& name : settings_.rules.keptHeaders) {
        asked.headers.emplace(name, request.get_header_value(std::string(name)));
    }
    asked.caller = connection.caller;
    GuardedAnswer answer;
    try {
        answer = settings_.answer(asked);
    } catch (...) {
        answer = ownAnswer(500);
        tell(connection, 500, "an exception in an answer");
    }
    connection.stream->beginAnswer(settings_.limits.answerMs);
    response.status = answer.status;
    response.set_content(answer.body, answer.contentType);
    response.set_header("Cache-Control", "no-store");
    if (answer.retryAfterSeconds > 0) {
        response.set_header("Retry-After", std::to_string(answer.retryAfterSeconds));
    }
}

GuardedAnswer GuardedServer::Parts::ownAnswer(int status) const {
    return {status, bodyOf(status), "application/json",
            status == 503 ? settings_.limits.retryAfterSeconds : 0};
}

// Nothing where the request may go on to its body.
std::optional<GuardedAnswer> GuardedServer::Parts::passGate(Connection& connection,
                                                            const RequestHead& head) {
    connection.caller = {};
    if (!settings_.gate) {
        return std::nullopt;
    }
    Gate gate;
    try {
        gate = settings_.gate({head.method, head.path, connection.address, head.kept, {}, {}});
    } catch (...) {
        gate.refusal = ownAnswer(500);
        tell(connection, 500, "an exception at the gate");
    }
    if (!gate.refusal && !gate.caller.isNil() &&
        !admissions_.claim(connection.ticket, gate.caller)) {
        tell(connection, 503, "too many connections of one device");
        gate.refusal = ownAnswer(503);
    }
    connection.caller = gate.caller;
    return gate.refusal;
}

bool GuardedServer::Parts::serveRequest(const RequestHead& head, bool last, GuardedStream& stream,
                                        SSL* tls) {
    bool closed = false;
    stream.begin(writeHead(head), head.bodyBytes, settings_.limits.bodyMs);
    const bool done = library_.process_request(
        stream, last, closed, [&](httplib::Request& request) { request.ssl = tls; });
    return done && !closed && !stream.isBroken() && stream.unreadBytes() == 0;
}

void GuardedServer::Parts::serveRequests(Connection& connection, GuardedStream& stream, SSL* tls) {
    const GuardLimits& limits = settings_.limits;
    const bool away = connection.ticket.admission == Admission::TurnedAway;
    std::string text;
    for (int k = 1; k <= limits.requestsPerConnection; ++k) {
        const HeadEnd end = stream.takeHead(text, away ? limits.turnedAwayMs : limits.idleMs,
                                            away ? limits.turnedAwayMs : limits.headMs);
        if (end == HeadEnd::Closed) {
            return;
        }
        int status = statusOf(end);
        RequestHead head;
        if (end == HeadEnd::Whole) {
            auto verdict = readHead(text, settings_.rules);
            status = away ? 503 : verdict.status;
            head = std::move(verdict.head);
        }
        if (stream.isBroken() || status != 0) {
            tell(connection, stream.isBroken() ? 0 : status,
                 std::string(status == 0 ? "broken" : codeOf(status)));
            refuse(stream, ownAnswer(status), limits.turnedAwayMs);
            return;
        }
        if (const auto refusal = passGate(connection, head)) {
            refuse(stream, *refusal, limits.turnedAwayMs);
            return;
        }
        if (!serveRequest(head, k == limits.requestsPerConnection, stream, tls)) {
            if (stream.isBroken()) {
                tell(connection, 0, "cut or too slow within a request");
            }
            return;
        }
    }
}

void GuardedServer::Parts::serve(Connection& connection) {
    const Tls tls(SSL_new(tls_.get()));
    if (!tls || SSL_set_fd(tls.get(), connection.socket) != 1) {
        tell(connection, 0, "no memory for TLS");
        return;
    }
    GuardedStream stream(connection.socket, tls.get());
    connection.stream = &stream;
    SSL_set_app_data(tls.get(), &connection);
    const bool away = connection.ticket.admission == Admission::TurnedAway;
    if (!stream.shakeHands(away ? settings_.limits.turnedAwayMs : settings_.limits.handshakeMs)) {
        tell(connection, 0, "no TLS handshake");
        return;
    }
    serveRequests(connection, stream, tls.get());
    stream.close(kLingerMs, kMostThrownAway);
}

void GuardedServer::Parts::start(Arrival arrival) {
    Ticket ticket = admissions_.enter(addressGroup(arrival.address));
    Connection& connection = connections_.emplace_back();
    connection.socket = arrival.socket;
    connection.address = std::move(arrival.address);
    connection.ticket = std::move(ticket);
    const auto end = [this, &connection] {
        admissions_.leave(connection.ticket);
        const std::lock_guard<std::mutex> lock(mutex_);
        ::close(std::exchange(connection.socket, -1));
        connection.ended = true;
    };
    if (connection.ticket.admission == Admission::Dropped) {
        tell(connection, 0, "too many connections");
        end();
        return;
    }
    try {
        connection.thread = std::thread([this, &connection, end] {
            try {
                serve(connection);
            } catch (...) {
                tell(connection, 0, "no memory for a connection");
            }
            end();
        });
    } catch (const std::system_error&) {
        tell(connection, 0, "no thread for a connection");
        end();
    }
}

void GuardedServer::Parts::clearEnded() {
    for (auto at = connections_.begin(); at != connections_.end();) {
        if (!at->ended) {
            ++at;
            continue;
        }
        if (at->thread.joinable()) {
            at->thread.join();
        }
        at = connections_.erase(at);
    }
}

void GuardedServer::Parts::endAll() {
    {
        const std::lock_guard<std::mutex> lock(mutex_);
        for (const Connection& connection : connections_) {
            if (connection.socket >= 0) {
                ::shutdown(connection.socket, SHUT_RD);  // answers may still be written
            }
        }
    }
    for (Connection& connection : connections_) {
        if (connection.thread.joinable()) {
            connection.thread.join();
        }
    }
    connections_.clear();
}

void GuardedServer::Parts::run() {
    while (!listener_.isStopped()) {
        auto arrival = listener_.accept(kAcceptMs);
        clearEnded();
        if (arrival) {
            start(std::move(*arrival));
        }
    }
    listener_.close();
    endAll();
}

Result<std::unique_ptr<GuardedServer>> GuardedServer::make(GuardSettings settings) {
    auto tls = serverTls(settings.certificatePem, settings.keyPem);
    if (!tls.ok()) {
        return tls.error();
    }
    auto parts = std::make_unique<Parts>(std::move(settings), std::move(tls.value()));
    return std::unique_ptr<GuardedServer>(new GuardedServer(std::move(parts)));
}

GuardedServer::GuardedServer(std::unique_ptr<Parts> parts) : parts_(std::move(parts)) {}

GuardedServer::~GuardedServer() = default;

Result<std::uint16_t> GuardedServer::open(const std::string& address, std::uint16_t port) {
    return parts_->listener().open(address, port);
}

void GuardedServer::run() {
    parts_->run();
}

void GuardedServer::stop() {
    parts_->listener().stop();
}

}  // namespace ledgerboard::sync
