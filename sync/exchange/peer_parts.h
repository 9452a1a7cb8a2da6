// Inside sync/exchange: how PeerSide's sources say no.
#pragma once

#include "sync/wire/messages.h"
#include "sync/wire/reply.h"

namespace ledgerboard::sync {

[[nodiscard]] inline Reply refuse(Status status, const std::string& message, model::Instant now) {
    return {status, write(Refused{message, now})};
}

// What went wrong inside stays inside: a message of the book may name what the caller must not see.
[[nodiscard]] inline Reply failed(model::Instant now) {
    return refuse(Status::Failed, "the peer could not do it: try again later", now);
}

}  // namespace ledgerboard::sync
