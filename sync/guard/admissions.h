// How many connections may who hold? A stranger's count for his address, a verified device's for
// the device, all of them for the machine.
//
// So a crew behind one router is not shut out by its number, and one address cannot take all the
// room. Source: project decision. Threads: any number.
#pragma once

#include <map>
#include <mutex>
#include <string>
#include <unordered_map>

#include "core/model/id.h"
#include "sync/wire/limits.h"

namespace ledgerboard::sync {

struct ConnectionLimits {
    int all = kMostConnections;
    int perAddress = kMostPerAddress;
    int perDevice = kMostPerDevice;
    int turnedAway = kMostTurnedAway;
};

enum class Admission {
    Served,
    TurnedAway,  // told to come back later
    Dropped,     // not even that: too many are being told
};

// The place one connection holds, from entering to leaving.
struct Ticket {
    Admission admission = Admission::Dropped;
    std::string address;
    model::RawId device;  // nil until it is verified
};

class Admissions {
  public:
    explicit Admissions(const ConnectionLimits& limits) : limits_(limits) {}

    // `address` as addressGroup() gives it.
    [[nodiscard]] Ticket enter(const std::string& address);
    void leave(const Ticket& ticket);

    // The connection's caller is verified: from now on it counts for the device. False, and all as
    // it was: the device holds as many as it may.
    [[nodiscard]] bool claim(Ticket& ticket, const model::RawId& device);

  private:
    void release(const Ticket& ticket);

    const ConnectionLimits limits_;
    std::mutex mutex_;
    int served_ = 0;
    int turnedAway_ = 0;
    std::map<std::string, int> perAddress_;
    std::unordered_map<model::RawId, int, model::RawIdHash> perDevice_;
};

// What addresses count together: an IPv4 address alone, of IPv6 the first 64 bits, which are what
// one subscriber is given (RFC 6177).
[[nodiscard]] std::string addressGroup(const std::string& address);

}  // namespace ledgerboard::sync
