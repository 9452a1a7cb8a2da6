// What does the desktop ask of the peer: who has a device, a way in for another, one shut out, a
// meeting?
//
// The calls are those of the verbs devices, invite, revoke and sync. Each opens a book of its own
// and may take a while. Threads: one at a time for each book, never the UI's.
#pragma once

#include <string>
#include <vector>

#include "core/model/rows.h"
#include "sync/link/meet.h"
#include "sync/wire/messages.h"

namespace ledgerboard::desk {

struct PeerAsk {
    std::string bookPath;
    sync::LinkSurroundings around;
};

struct DeviceLines {
    std::vector<sync::RosterAnswer::Line> lines;
    std::string whyNotAsked;  // the peer was not asked, and this is what the book knows
    model::RawId own;
};

// Errors: of the book.
[[nodiscard]] model::Result<DeviceLines> devicesOf(const PeerAsk& ask);

// Who is to be let in.
struct Guest {
    model::Role role = model::Role::Owner;
    model::RawId crew;  // of a crew lead
    model::RawId job;   // of a viewer
    std::string name;   // of a new person; an owner's device is one's own
};

struct WayIn {
    std::string address;
    std::string code;
    std::string picture;  // what a phone reads
    model::Instant until;
};

// Errors (CannotBeMet): the book has no peer, the peer is not in reach, or it says no.
[[nodiscard]] model::Result<WayIn> inviteGuest(const PeerAsk& ask, const Guest& guest);

// Shuts a device out and tells the peer; false: kept, and the next meeting tells it. Errors: as
// inviteGuest, but for a peer out of reach.
[[nodiscard]] model::Result<bool> shutOut(const PeerAsk& ask, const model::RawId& device,
                                          model::Date today);

// Errors: the book has no peer; of the book. Any other end is in the report.
[[nodiscard]] model::Result<sync::MeetReport> meetNow(const PeerAsk& ask);

// The book comes to a peer that was started for it. Errors: as sync::joinBook.
[[nodiscard]] model::Result<void> joinPeer(const PeerAsk& ask, const std::string& address,
                                           const std::string& code);

}  // namespace ledgerboard::desk
