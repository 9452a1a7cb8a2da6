// How does a book come to a peer, or from one? By an invitation: the device's key is made, the peer
// is remembered, and where there was no book an empty one is there for what the peer will send.
//
// Threads: one at a time for each book.
#pragma once

#include <string>

#include "core/model/result.h"
#include "sync/link/known_peer.h"
#include "sync/link/link.h"

namespace ledgerboard::sync {

struct JoinAsk {
    std::string bookPath;
    Place place;
    PairingCode code;
    std::optional<Digest> certificate;  // as a picture said; none with a typed code
    std::string called;                 // what the device is called; may be empty
    bool again = false;                 // another peer instead of the one it knows
    LinkSurroundings around;
    ClientTimeouts timeouts;
};

struct JoinedBook {
    Grant grant;
    model::RawId person;
    bool madeBook = false;  // there was none
};

// Joins. A book that is there comes along, which only an owner's invitation allows; asked again
// after the answer was lost, the same device asks. Nothing is exchanged yet: meet.h does that.
// Errors (CannotBeMet): it has a peer already, the peer was not reached or says no, in words for a
// person; (WrongUse) what it is called; (Damaged) the disk. The book is then as it was.
[[nodiscard]] model::Result<JoinedBook> joinBook(const JoinAsk& ask);

}  // namespace ledgerboard::sync
