// What does a verb need that meets the peer? The peer this book knows, and how to reach it.
#pragma once

#include "sync/link/meet.h"

#include "desktop/cli/session.h"

namespace ledgerboard::cli {

[[nodiscard]] sync::LinkSurroundings linkSurroundings(Session& session);

// Errors (CannotBeMet): the book has joined none, and how to.
[[nodiscard]] model::Result<sync::KnownPeer> peerOf(Session& session);

// Errors: as peerOf; of the book. It leans on the session's book: not to be used once that is
// closed.
[[nodiscard]] model::Result<sync::MeetAsk> meetAskOf(Session& session);

}  // namespace ledgerboard::cli
