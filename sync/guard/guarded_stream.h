// What does the HTTP library read from and write to? One TLS connection, with an end to its
// patience: absolute deadlines and byte budgets, whatever the other side sends and however slowly.
//
// The head of a request is taken off the connection by us (takeHead); the library then reads a head
// of our writing and exactly the body that was announced (begin), and nothing beyond.
// Units: milliseconds of the steady clock. Threads: one, except that another may shut the socket.
#pragma once

#include <chrono>
#include <string>

#include <httplib.h>

#include "sync/guard/tls.h"

namespace ledgerboard::sync {

// How taking a head ended.
enum class HeadEnd {
    Whole,     // it is in the string
    Closed,    // the other side left, or was silent, before a byte of it
    TooLarge,  // no end within the budget
    TooSlow,   // no end within the time
    Broken,    // the connection failed in the middle of it
};

class GuardedStream final : public httplib::Stream {
  public:
    using Clock = std::chrono::steady_clock;

    // Requires: `socket` does not block. Owns neither socket nor TLS.
    GuardedStream(int socket, SSL* tls) : socket_(socket), tls_(tls) {}

    // The TLS handshake. False: it failed or took longer.
    [[nodiscard]] bool shakeHands(int timeoutMs);

    // The next request's head, with its empty line, into `head`. Waits `idleMs` for its first byte
    // and from there `headMs` for all of it.
    [[nodiscard]] HeadEnd takeHead(std::string& head, int idleMs, int headMs);

    // From now on: `head`, then `bodyBytes` off the connection within `bodyMs`, then the end.
    void begin(std::string head, std::size_t bodyBytes, int bodyMs);
    // From now on an answer is written, within `answerMs`.
    void beginAnswer(int answerMs);

    // Whether anything failed or took too long: the connection must then be closed.
    [[nodiscard]] bool isBroken() const { return broken_; }

    // Bytes of the announced body that nobody has read.
    [[nodiscard]] std::size_t unreadBytes() const { return bodyLeft_; }

    // Ends the connection so that the last answer arrives: says goodbye, then throws away what
    // still comes, for at most `lingerMs` and `mostBytes`.
    void close(int lingerMs, std::size_t mostBytes);

    [[nodiscard]] bool is_readable() const override { return !broken_; }

    [[nodiscard]] bool is_writable() const override { return !broken_; }

    ssize_t read(char* to, size_t size) override;
    ssize_t write(const char* from, size_t size) override;
    void get_remote_ip_and_port(std::string& ip, int& port) const override;
    void get_local_ip_and_port(std::string& ip, int& port) const override;

    [[nodiscard]] socket_t socket() const override { return socket_; }

  private:
    void setDeadline(int timeoutMs);
    [[nodiscard]] int leftMs() const;
    [[nodiscard]] bool await(short events, int timeoutMs) const;
    // Waits for what TLS wants after it returned `result`. False: it failed, or time is up.
    [[nodiscard]] bool awaitTls(int result);
    // Bytes off the connection; 0 at its orderly end, -1 where it failed or time is up.
    ssize_t receive(char* to, std::size_t size);

    int socket_;
    SSL* tls_;
    bool broken_ = false;
    bool timedOut_ = false;
    Clock::time_point deadline_{};
    std::string early_;  // read with a head and not part of it
    std::string head_;   // of our writing
    std::size_t headAt_ = 0;
    std::size_t bodyLeft_ = 0;
};

}  // namespace ledgerboard::sync
