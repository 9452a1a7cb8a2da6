// What happened, for whoever looks after the peer? One JSON object a line, of a few plain fields.
//
// No bodies, codes, keys or amounts ever come here: an event has only the fields below.
// Threads: any number; lines never mix.
#pragma once

#include <mutex>
#include <ostream>
#include <string>

#include "core/model/date.h"
#include "core/model/id.h"

namespace ledgerboard::sync {

// Empty texts, nil ids and negative counts are left out of the line.
struct Event {
    std::string what;     // "started", "answered", "refused", "joined", "stopped"
    std::string call;     // "push", "pair", ...
    std::string code;     // why it was refused
    std::string address;  // where the caller is
    model::RawId device;  // verified, or joining
    int status = -1;
    std::int64_t bytesIn = -1;
    std::int64_t bytesOut = -1;
    std::int64_t ms = -1;
};

class EventLog {
  public:
    explicit EventLog(std::ostream& out) : out_(out) {}

    void write(const Event& event, model::Instant at);

  private:
    std::mutex mutex_;
    std::ostream& out_;
};

}  // namespace ledgerboard::sync
