// Inside sync/exchange: how PeerSide's sources say no.
#pragma once

#include "sync/wire/messages.h"
#include "sync/wire/reply.h"

namespace ledgerboard::sync {

[[nodiscard]] inline Reply refuse(Status status, const std::string& message, model::Instant now) {
    return {status, write(Refused{message, now})};
}

// Where the peer remembers when a device was last heard, and up to which arrival it has the log.
[[nodiscard]] inline std::string heardName(const model::RawId& device) {
    return "peer.heard." + device.hex();
}

[[nodiscard]] inline std::string takenName(const model::RawId& device) {
    return "peer.taken." + device.hex();
}

// What went wrong inside stays inside: a message of the book may name what the caller must not see.
[[nodiscard]] inline Reply failed(model::Instant now) {
    return refuse(Status::Failed, "the peer could not do it: try again later", now);
}

}  // namespace ledgerboard::sync
