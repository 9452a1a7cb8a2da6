// Who is at the door? One listening socket, and a way to stop waiting at it.
//
// Threads: accept() in one, stop() from any.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/model/result.h"

namespace ledgerboard::sync {

struct Arrival {
    int socket = -1;  // does not block; whoever takes it closes it
    std::string address;
};

class Listener {
  public:
    Listener() = default;
    Listener(const Listener&) = delete;
    Listener& operator=(const Listener&) = delete;
    ~Listener();

    // Port 0 takes a free one. Returns the port. Errors (CannotBeMet): no such address here, or
    // the port is taken.
    [[nodiscard]] model::Result<std::uint16_t> open(const std::string& address, std::uint16_t port);

    // The next arrival; nothing where none came within `waitMs` or stop() was called. Passing
    // faults (no descriptor free, a caller gone again) are waited out, never an end.
    [[nodiscard]] std::optional<Arrival> accept(int waitMs);

    void stop();

    [[nodiscard]] bool isStopped() const;

    // Nobody waits at the door any more: callers are refused at once. By accept()'s thread.
    void close();

  private:
    int socket_ = -1;
    int wake_ = -1;
};

}  // namespace ledgerboard::sync
