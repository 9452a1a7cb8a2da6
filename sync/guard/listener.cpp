#include "sync/guard/listener.h"

#include <array>
#include <cerrno>
#include <cstring>
#include <memory>
#include <netdb.h>
#include <netinet/in.h>
#include <netinet/tcp.h>
#include <poll.h>
#include <sys/eventfd.h>
#include <sys/socket.h>
#include <unistd.h>
#include <utility>

namespace ledgerboard::sync {

using model::Result;

namespace {

constexpr int kWaiting = 256;     // connections the system holds until they are accepted
constexpr int kFaultWaitMs = 50;  // where the system has no room for one more

using Found = std::unique_ptr<addrinfo, decltype(&::freeaddrinfo)>;

int openSocket(const addrinfo& at) {
    const int socket =
        ::socket(at.ai_family, at.ai_socktype | SOCK_CLOEXEC | SOCK_NONBLOCK, at.ai_protocol);
    // Not SO_REUSEPORT, with which a second peer could quietly share the port.
    const int yes = 1;
    if (socket >= 0 &&
        (::setsockopt(socket, SOL_SOCKET, SO_REUSEADDR, &yes, sizeof yes) != 0 ||
         ::bind(socket, at.ai_addr, at.ai_addrlen) != 0 || ::listen(socket, kWaiting) != 0)) {
        const int problem = errno;
        ::close(socket);
        errno = problem;
        return -1;
    }
    return socket;
}

std::string textOf(const sockaddr_storage& address, socklen_t length) {
    std::array<char, NI_MAXHOST> host{};
    ::getnameinfo(reinterpret_cast<const sockaddr*>(&address), length, host.data(), host.size(),
                  nullptr, 0, NI_NUMERICHOST);
    return host.data();
}

std::uint16_t portOf(int socket) {
    sockaddr_storage address{};
    socklen_t length = sizeof address;
    ::getsockname(socket, reinterpret_cast<sockaddr*>(&address), &length);
    const auto port = address.ss_family == AF_INET6
                          ? reinterpret_cast<const sockaddr_in6*>(&address)->sin6_port
                          : reinterpret_cast<const sockaddr_in*>(&address)->sin_port;
    return ntohs(port);
}

}  // namespace

Listener::~Listener() {
    close();
    if (wake_ >= 0) {
        ::close(wake_);
    }
}

void Listener::close() {
    if (socket_ >= 0) {
        ::close(std::exchange(socket_, -1));
    }
}

Result<std::uint16_t> Listener::open(const std::string& address, std::uint16_t port) {
    addrinfo wanted{};
    wanted.ai_socktype = SOCK_STREAM;
    wanted.ai_flags = AI_PASSIVE | AI_NUMERICSERV;
    addrinfo* list = nullptr;
    const int problem =
        ::getaddrinfo(address.c_str(), std::to_string(port).c_str(), &wanted, &list);
    const Found found(list, &::freeaddrinfo);
    if (problem != 0) {
        return model::cannotBeMet("--address " + address + ": " + ::gai_strerror(problem) +
                                  "; give an address of this computer, or 0.0.0.0 for all");
    }
    socket_ = openSocket(*found);
    wake_ = ::eventfd(0, EFD_CLOEXEC | EFD_NONBLOCK);
    if (socket_ < 0 || wake_ < 0) {
        return model::cannotBeMet(address + " port " + std::to_string(port) +
                                  " cannot be listened on: " + std::strerror(errno) +
                                  "; is another peer running, or is the address not of this "
                                  "computer?");
    }
    return portOf(socket_);
}

std::optional<Arrival> Listener::accept(int waitMs) {
    std::array<pollfd, 2> waiting{{{socket_, POLLIN, 0}, {wake_, POLLIN, 0}}};
    if (::poll(waiting.data(), waiting.size(), waitMs) <= 0 || waiting[1].revents != 0) {
        return std::nullopt;
    }
    sockaddr_storage from{};
    socklen_t length = sizeof from;
    const int socket = ::accept4(socket_, reinterpret_cast<sockaddr*>(&from), &length,
                                 SOCK_CLOEXEC | SOCK_NONBLOCK);
    if (socket < 0) {
        if (errno == EMFILE || errno == ENFILE || errno == ENOBUFS || errno == ENOMEM) {
            ::poll(&waiting[1], 1, kFaultWaitMs);
        }
        return std::nullopt;
    }
    const int yes = 1;
    ::setsockopt(socket, IPPROTO_TCP, TCP_NODELAY, &yes, sizeof yes);
    return Arrival{socket, textOf(from, length)};
}

void Listener::stop() {
    const std::uint64_t one = 1;
    if (wake_ >= 0 && ::write(wake_, &one, sizeof one) < 0) {
        return;  // it is full, so it has been written to
    }
}

bool Listener::isStopped() const {
    pollfd waiting{wake_, POLLIN, 0};
    return ::poll(&waiting, 1, 0) > 0;
}

}  // namespace ledgerboard::sync
