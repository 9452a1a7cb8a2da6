#include "tests/attacks/raw_caller.h"

#include <arpa/inet.h>
#include <array>
#include <cerrno>
#include <chrono>
#include <csignal>
#include <fcntl.h>
#include <poll.h>
#include <sys/socket.h>
#include <unistd.h>

namespace ledgerboard::tests {

namespace {

bool await(int socket, short events, int waitMs) {
    pollfd waiting{socket, events, 0};
    return ::poll(&waiting, 1, waitMs) > 0;
}

}  // namespace

RawCaller::RawCaller(const sync::Place& place, int newestTls) {
    ::signal(SIGPIPE, SIG_IGN);
    socket_ = ::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0);
    sockaddr_in at{};
    at.sin_family = AF_INET;
    at.sin_port = htons(place.port);
    ::inet_pton(AF_INET, place.host.c_str(), &at.sin_addr);
    good_ = ::connect(socket_, reinterpret_cast<sockaddr*>(&at), sizeof at) == 0;
    if (good_ && newestTls != 0) {
        context_ = SSL_CTX_new(TLS_client_method());
        SSL_CTX_set_max_proto_version(context_, newestTls);
        tls_ = SSL_new(context_);
        SSL_set_fd(tls_, socket_);
        good_ = SSL_connect(tls_) == 1;
    }
    ::fcntl(socket_, F_SETFL, ::fcntl(socket_, F_GETFL, 0) | O_NONBLOCK);
}

RawCaller::~RawCaller() {
    SSL_free(tls_);
    SSL_CTX_free(context_);
    ::close(socket_);
}

bool RawCaller::send(const std::string& bytes, int waitMs) {
    std::size_t sent = 0;
    while (good_ && sent < bytes.size()) {
        const int wrote =
            tls_ != nullptr
                ? SSL_write(tls_, bytes.data() + sent, static_cast<int>(bytes.size() - sent))
                : static_cast<int>(::send(socket_, bytes.data() + sent, bytes.size() - sent, 0));
        if (wrote > 0) {
            sent += static_cast<std::size_t>(wrote);
            continue;
        }
        const bool full =
            tls_ != nullptr ? SSL_get_error(tls_, wrote) == SSL_ERROR_WANT_WRITE : errno == EAGAIN;
        good_ = full && await(socket_, POLLOUT, waitMs);
    }
    return good_;
}

bool RawCaller::updateKeys() {
    while (good_) {
        const bool asked = SSL_key_update(tls_, SSL_KEY_UPDATE_NOT_REQUESTED) == 1;
        const int done = asked ? SSL_do_handshake(tls_) : -1;
        if (done == 1) {
            return true;
        }
        good_ = SSL_get_error(tls_, done) == SSL_ERROR_WANT_WRITE &&
                await(socket_, POLLOUT, kPatienceMs);
    }
    return false;
}

std::size_t RawCaller::flood(const std::string& block, std::size_t mostBytes) {
    std::size_t sent = 0;
    while (sent < mostBytes && send(block)) {
        sent += block.size();
    }
    return sent;
}

std::string RawCaller::receive(int waitMs) {
    std::string out;
    std::array<char, 16'384> chunk{};
    for (;;) {
        const int got = tls_ != nullptr
                            ? SSL_read(tls_, chunk.data(), static_cast<int>(chunk.size()))
                            : static_cast<int>(::recv(socket_, chunk.data(), chunk.size(), 0));
        if (got > 0) {
            out.append(chunk.data(), static_cast<std::size_t>(got));
            continue;
        }
        const bool nothingYet = tls_ != nullptr ? SSL_get_error(tls_, got) == SSL_ERROR_WANT_READ
                                                : got < 0 && errno == EAGAIN;
        if (!nothingYet || !await(socket_, POLLIN, waitMs)) {
            return out;
        }
    }
}

std::string RawCaller::ask(const std::string& bytes, int waitMs) {
    send(bytes);
    return receive(waitMs);
}

bool RawCaller::isEndedWithin(int waitMs) {
    const auto until = std::chrono::steady_clock::now() + std::chrono::milliseconds(waitMs);
    std::array<char, 4'096> chunk{};
    for (;;) {
        while (await(socket_, POLLIN, 0)) {
            const auto got = ::recv(socket_, chunk.data(), chunk.size(), 0);
            if (got == 0 || (got < 0 && errno != EAGAIN)) {
                return true;
            }
        }
        if (!good_ || std::chrono::steady_clock::now() >= until) {
            return !good_;
        }
        await(socket_, POLLIN, 50);
    }
}

}  // namespace ledgerboard::tests
