#include "sync/link/peer_client.h"

#include <csignal>
#include <netdb.h>
#include <optional>

#include <httplib.h>

#include "core/model/saying.h"
#include "sync/identity/certificate.h"
#include "sync/wire/calls.h"

namespace ledgerboard::sync {

namespace {

// What a handshake is judged by, and what it saw.
struct Judge {
    std::optional<Digest> wanted;  // none: whatever is there is taken, to be looked at
    std::optional<Digest> seen;
};

// Takes the place of OpenSSL's own judgement, in which every authority that this computer trusts
// would have a say.
int judgeCertificate(X509_STORE_CTX* store, void* judge) {
    auto& by = *static_cast<Judge*>(judge);
    Digest digest{};
    unsigned size = 0;
    X509* certificate = X509_STORE_CTX_get0_cert(store);
    const bool read = certificate != nullptr &&
                      X509_digest(certificate, EVP_sha256(), digest.data(), &size) == 1 &&
                      size == digest.size();
    if (read) {
        by.seen = digest;
    }
    const bool good = read && (!by.wanted || sameDigest(*by.wanted, digest));
    X509_STORE_CTX_set_error(store, good ? X509_V_OK : X509_V_ERR_CERT_UNTRUSTED);
    return good ? 1 : 0;
}

// The library wants a number for the name it is to dial. Empty where the name is not known.
std::string numberOf(const std::string& host) {
    addrinfo wanted{};
    wanted.ai_socktype = SOCK_STREAM;
    addrinfo* list = nullptr;
    if (::getaddrinfo(host.c_str(), nullptr, &wanted, &list) != 0) {
        return "";
    }
    std::array<char, NI_MAXHOST> text{};
    ::getnameinfo(list->ai_addr, list->ai_addrlen, text.data(), text.size(), nullptr, 0,
                  NI_NUMERICHOST);
    ::freeaddrinfo(list);
    return text.data();
}

Fault faultOf(httplib::Error error) {
    switch (error) {
        case httplib::Error::Success:
            return Fault::None;
        case httplib::Error::SSLServerVerification:
            return Fault::NotThePeer;
        case httplib::Error::Connection:
        case httplib::Error::ConnectionTimeout:
        case httplib::Error::SSLConnection:
            return Fault::Unreachable;
        case httplib::Error::Canceled:
            return Fault::TooLarge;
        default:
            return Fault::Cut;
    }
}

}  // namespace

class PeerClient::Parts {
  public:
    Parts(Place place, std::optional<Digest> wanted, ClientTimeouts timeouts)
        : place_(std::move(place)), timeouts_(timeouts) {
        judge_.wanted = wanted;
    }

    ClientAnswer send(httplib::Request request) {
        if (!client_ && !dial()) {
            return {Fault::Unreachable, 0, "", 0};
        }
        ClientAnswer answer;
        std::string body;
        request.content_receiver = [&](const char* bytes, size_t size, std::uint64_t,
                                       std::uint64_t) {
            body.append(bytes, size);
            return body.size() <= kMostReplyBytes;
        };
        const httplib::Result result = client_->send(request);
        answer.fault = result ? Fault::None : faultOf(result.error());
        if (!result) {
            client_.reset();  // begin anew: what is left of that connection is of no use
            return answer;
        }
        answer.status = result->status;
        answer.body = std::move(body);
        answer.retryAfterSeconds = static_cast<int>(std::min<std::uint64_t>(
            result->get_header_value<std::uint64_t>("Retry-After"), 86'400));
        return answer;
    }

    [[nodiscard]] const std::optional<Digest>& seen() const { return judge_.seen; }

  private:
    bool dial() {
        const std::string number = numberOf(place_.host);
        if (number.empty()) {
            return false;
        }
        client_ = std::make_unique<httplib::SSLClient>(kPeerName, place_.port);
        client_->set_hostname_addr_map({{kPeerName, number}});
        client_->set_connection_timeout(std::chrono::milliseconds(timeouts_.connectMs));
        client_->set_read_timeout(std::chrono::milliseconds(timeouts_.readMs));
        client_->set_write_timeout(std::chrono::milliseconds(timeouts_.readMs));
        client_->set_keep_alive(true);
        client_->set_tcp_nodelay(true);
        client_->set_decompress(false);
        client_->set_follow_location(false);
        SSL_CTX* context = client_->ssl_context();
        SSL_CTX_set_min_proto_version(context, TLS1_3_VERSION);
        SSL_CTX_set_cert_verify_callback(context, judgeCertificate, &judge_);
        return true;
    }

    const Place place_;
    const ClientTimeouts timeouts_;
    Judge judge_;
    std::unique_ptr<httplib::SSLClient> client_;
};

PeerClient::PeerClient(Place place, const Digest& certificate, ClientTimeouts timeouts)
    : parts_(std::make_unique<Parts>(std::move(place), certificate, timeouts)) {
    // A peer that goes away while it is written to ends the call, not the program. Where the
    // program has a way of its own with the signal, that stays.
    struct sigaction usual {};

    if (::sigaction(SIGPIPE, nullptr, &usual) == 0 && usual.sa_handler == SIG_DFL) {
        std::signal(SIGPIPE, SIG_IGN);
    }
}

PeerClient::PeerClient(PeerClient&&) noexcept = default;
PeerClient& PeerClient::operator=(PeerClient&&) noexcept = default;
PeerClient::~PeerClient() = default;

ClientAnswer PeerClient::get(const std::string& path) {
    httplib::Request request;
    request.method = "GET";
    request.path = path;
    return parts_->send(std::move(request));
}

ClientAnswer PeerClient::post(const std::string& path, const Headers& headers,
                              const std::string& body) {
    httplib::Request request;
    request.method = "POST";
    request.path = path;
    request.body = body;
    request.set_header("Content-Type", "application/octet-stream");
    for (const auto& [name, value] : headers) {
        request.set_header(name, value);
    }
    return parts_->send(std::move(request));
}

model::Result<Digest> seenCertificate(const Place& place, ClientTimeouts timeouts) {
    PeerClient::Parts parts(place, std::nullopt, timeouts);
    httplib::Request request;
    request.method = "GET";
    request.path = kTimePath;
    const ClientAnswer answer = parts.send(std::move(request));
    if (answer.fault != Fault::None || !parts.seen()) {
        return model::cannotBeMet(
            textOf(answer.fault == Fault::None ? Fault::NotThePeer : answer.fault, place));
    }
    return *parts.seen();
}

std::string textOf(Fault fault, const Place& place) {
    const std::string where = toText(place);
    switch (fault) {
        case Fault::None:
            return {};
        case Fault::Unreachable:
            return model::saying(
                       "%1 does not answer: is the peer running, and are both in one network?",
                       where)
                .text();
        case Fault::NotThePeer:
            return model::saying(
                       "%1 is answered by another than the peer this device joined: check the "
                       "address; "
                       "where the peer was set up anew, join again",
                       where)
                .text();
        case Fault::Cut:
            return model::saying("the connection to %1 was cut: nothing is lost, try again", where)
                .text();
        case Fault::TooLarge:
            return model::saying(
                       "%1 answers with more than a peer may: use programs of one version", where)
                .text();
    }
    return {};
}

}  // namespace ledgerboard::sync
