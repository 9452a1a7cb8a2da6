#include "sync/guard/guarded_stream.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <poll.h>
#include <sys/socket.h>

#include "sync/wire/limits.h"

namespace ledgerboard::sync {

namespace {

constexpr std::size_t kChunk = 16 * kKiB;  // what one TLS record holds
constexpr std::string_view kHeadEnd = "\r\n\r\n";

}  // namespace

void GuardedStream::setDeadline(int timeoutMs) {
    deadline_ = Clock::now() + std::chrono::milliseconds(timeoutMs);
}

int GuardedStream::leftMs() const {
    const auto left =
        std::chrono::duration_cast<std::chrono::milliseconds>(deadline_ - Clock::now()).count();
    return static_cast<int>(std::clamp<std::int64_t>(left, 0, kBodyMs + kAnswerMs));
}

bool GuardedStream::await(short events, int timeoutMs) const {
    const auto until = Clock::now() + std::chrono::milliseconds(timeoutMs);
    pollfd waiting{socket_, events, 0};
    int left = timeoutMs;
    for (;;) {
        const int ready = ::poll(&waiting, 1, left);
        if (ready >= 0 || errno != EINTR) {
            return ready > 0;
        }
        left = std::max<int>(
            0, static_cast<int>(
                   std::chrono::duration_cast<std::chrono::milliseconds>(until - Clock::now())
                       .count()));
    }
}

bool GuardedStream::awaitTls(int result) {
    const int wants = SSL_get_error(tls_, result);
    if (wants != SSL_ERROR_WANT_READ && wants != SSL_ERROR_WANT_WRITE) {
        return false;
    }
    timedOut_ = !await(wants == SSL_ERROR_WANT_READ ? POLLIN : POLLOUT, leftMs());
    return !timedOut_;
}

bool GuardedStream::shakeHands(int timeoutMs) {
    setDeadline(timeoutMs);
    for (;;) {
        ERR_clear_error();
        const int result = SSL_accept(tls_);
        if (result == 1) {
            return true;
        }
        if (leftMs() == 0 || !awaitTls(result)) {
            broken_ = true;
            return false;
        }
    }
}

ssize_t GuardedStream::receive(char* to, std::size_t size) {
    while (!broken_) {
        if (leftMs() == 0) {
            timedOut_ = true;
            break;
        }
        ERR_clear_error();
        const int got = SSL_read(tls_, to, static_cast<int>(std::min(size, kChunk)));
        if (got > 0) {
            return got;
        }
        if (SSL_get_error(tls_, got) == SSL_ERROR_ZERO_RETURN) {
            return 0;
        }
        if (!awaitTls(got)) {
            break;
        }
    }
    broken_ = true;
    return -1;
}

HeadEnd GuardedStream::takeHead(std::string& head, int idleMs, int headMs) {
    std::array<char, kChunk> chunk{};
    head.clear();
    head.swap(early_);
    bool begun = !head.empty();
    setDeadline(begun ? headMs : idleMs);
    std::size_t searched = 0;
    for (;;) {
        const auto end = head.find(kHeadEnd, searched);
        if (end != std::string::npos && end + kHeadEnd.size() <= kMostHeadBytes) {
            early_ = head.substr(end + kHeadEnd.size());
            head.resize(end + kHeadEnd.size());
            return HeadEnd::Whole;
        }
        if (head.size() > kMostHeadBytes) {
            return HeadEnd::TooLarge;
        }
        searched = head.size() - std::min(head.size(), kHeadEnd.size() - 1);
        const ssize_t got = receive(chunk.data(), chunk.size());
        if (got <= 0) {
            const HeadEnd after = timedOut_ ? HeadEnd::TooSlow : HeadEnd::Broken;
            return begun ? after : HeadEnd::Closed;
        }
        head.append(chunk.data(), static_cast<std::size_t>(got));
        if (!begun) {
            begun = true;
            setDeadline(headMs);
        }
    }
}

void GuardedStream::begin(std::string head, std::size_t bodyBytes, int bodyMs) {
    head_ = std::move(head);
    headAt_ = 0;
    bodyLeft_ = bodyBytes;
    setDeadline(bodyMs);
}

void GuardedStream::beginAnswer(int answerMs) {
    setDeadline(answerMs);
}

ssize_t GuardedStream::read(char* to, size_t size) {
    if (headAt_ < head_.size()) {
        const std::size_t count = std::min(size, head_.size() - headAt_);
        std::copy_n(head_.data() + headAt_, count, to);
        headAt_ += count;
        return static_cast<ssize_t>(count);
    }
    const std::size_t wanted = std::min(size, bodyLeft_);
    if (broken_ || wanted == 0) {
        return broken_ ? -1 : 0;
    }
    ssize_t got = 0;
    if (!early_.empty()) {
        got = static_cast<ssize_t>(std::min(wanted, early_.size()));
        std::copy_n(early_.data(), got, to);
        early_.erase(0, static_cast<std::size_t>(got));
    } else {
        got = receive(to, wanted);
        broken_ = broken_ || got == 0;  // it left before the end of its body
    }
    bodyLeft_ -= got > 0 ? static_cast<std::size_t>(got) : 0;
    return got;
}

// Writes all of it or fails: the library takes a part for the whole.
ssize_t GuardedStream::write(const char* from, size_t size) {
    std::size_t done = 0;
    while (!broken_ && done < size) {
        ERR_clear_error();
        const int wrote =
            SSL_write(tls_, from + done, static_cast<int>(std::min(size - done, kChunk)));
        if (wrote > 0) {
            done += static_cast<std::size_t>(wrote);
        } else if (leftMs() == 0 || !awaitTls(wrote)) {
            broken_ = true;
        }
    }
    return broken_ ? -1 : static_cast<ssize_t>(size);
}

void GuardedStream::close(int lingerMs, std::size_t mostBytes) {
    if (!broken_) {
        ERR_clear_error();
        SSL_shutdown(tls_);
    }
    ::shutdown(socket_, SHUT_WR);
    setDeadline(lingerMs);
    std::array<char, kChunk> chunk{};
    for (std::size_t thrown = 0; thrown < mostBytes && leftMs() > 0;) {
        const ssize_t got = ::recv(socket_, chunk.data(), chunk.size(), 0);
        if (got > 0) {
            thrown += static_cast<std::size_t>(got);
        } else if (got == 0 || (errno != EAGAIN && errno != EWOULDBLOCK && errno != EINTR) ||
                   !await(POLLIN, leftMs())) {
            break;
        }
    }
    broken_ = true;
}

// The guard knows the address from accepting; the library needs none.
void GuardedStream::get_remote_ip_and_port(std::string& ip, int& port) const {
    ip.clear();
    port = 0;
}

void GuardedStream::get_local_ip_and_port(std::string& ip, int& port) const {
    ip.clear();
    port = 0;
}

}  // namespace ledgerboard::sync
