// How do these tests start, question and stop the real program? As a process of its own, on
// loopback, in a folder of the test's own.
#pragma once

#include <cstdint>
#include <string>
#include <sys/types.h>
#include <vector>

#include "sync/identity/invitation.h"

#include "tests/support/fixed_chance.h"

namespace ledgerboard::tests {

class PeerProcess {
  public:
    // Starts it and waits until it listens. Requires: it starts.
    explicit PeerProcess(const std::vector<std::string>& more = {});
    PeerProcess(const PeerProcess&) = delete;
    PeerProcess& operator=(const PeerProcess&) = delete;
    ~PeerProcess();

    // Starts it again in the same folder; it must have been stopped.
    void start();
    // Sends SIGTERM and waits; the exit status comes back, -1 where it did not exit by itself.
    int stop();
    // Ends it at once, as SIGKILL does.
    void kill();

    [[nodiscard]] bool isRunning() const;

    // The most memory it ever held, and what it holds now, in KiB (VmHWM and VmRSS of proc(5)).
    [[nodiscard]] long mostMemoryKib() const;
    [[nodiscard]] long threads() const;

    [[nodiscard]] std::string printed() const;  // to standard output
    [[nodiscard]] std::string logged() const;   // to standard error

    [[nodiscard]] const TestFolder& folder() const { return folder_; }

    [[nodiscard]] sync::Place place() const { return {"127.0.0.1", port_}; }

    // The code it printed.
    [[nodiscard]] sync::PairingCode code() const;

  private:
    [[nodiscard]] long statusLine(const std::string& name) const;

    TestFolder folder_{"peer-process"};
    std::vector<std::string> more_;
    pid_t process_ = -1;
    std::uint16_t port_ = 0;
};

}  // namespace ledgerboard::tests
