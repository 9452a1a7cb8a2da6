// How does a device meet its peer once? Entries first, both ways, then photos; from a terminal, a
// window or a phone alike.
//
// A meeting may be cut anywhere: what was done is kept, and the next one goes on from there. Time,
// chance and waiting are passed in; what a person may want to see of it is told as it happens.
// Threads: one at a time for each book; may run in a thread of its own, with a Book of its own.
#pragma once

#include <functional>
#include <string>

#include "core/store/book.h"
#include "core/store/photos.h"
#include "sync/exchange/device_photos.h"
#include "sync/exchange/device_side.h"
#include "sync/link/known_peer.h"
#include "sync/link/link.h"

namespace ledgerboard::sync {

struct MeetProgress {
    enum class At { Calling, Entries, Photos };
    At at = At::Calling;
    std::size_t done = 0;  // photos, or calls about entries
    std::size_t all = 0;   // photos; 0 where it is not known
};

struct MeetAsk {
    store::Book* book = nullptr;  // outlives the call
    store::Photos photos;         // of the book, unless they stand elsewhere
    KnownPeer peer;
    LinkSurroundings around;
    RetryRules retry;  // once the peer was reached
    ClientTimeouts timeouts;
    int callsToReach = 3;  // before it counts as out of reach
    bool withPhotos = true;
    std::function<void(const MeetProgress&)> progress;  // may be empty
};

enum class MeetEnd {
    Met,      // all there was went up and came down
    Offline,  // the peer was not reached
    Cut,      // it was reached, and then no more: the next meeting goes on from there
    Refused,  // the peer says no, or another answers in its place
    Revoked,  // this device was shut out: its copy is to be wiped (wipe.h)
};

// "met", "offline", ...
[[nodiscard]] std::string nameOf(MeetEnd end);

struct MeetReport {
    MeetEnd end = MeetEnd::Met;
    std::string message;  // why not Met, for a person
    Meeting entries;
    PhotoMeeting photos;
    // What is still to go up: own entries the peer has not acknowledged, photos it has not.
    std::size_t entriesWaiting = 0;
    std::size_t photosWaiting = 0;
};

// Whatever becomes of the meeting is in the report. Errors: of the book, of its key file.
[[nodiscard]] model::Result<MeetReport> meetPeer(const MeetAsk& ask);

// One signed call outside a meeting, such as for the roster. The link signs by the peer's time.
// Errors: of the key file; (CannotBeMet) the peer is not reached, as MeetEnd::Offline.
[[nodiscard]] model::Result<Link> linkTo(const MeetAsk& ask);

}  // namespace ledgerboard::sync
