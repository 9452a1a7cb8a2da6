// What does the program `ledgerboard-peer` do? Reads its options, makes what a first start needs,
// invites the first owner, and serves until it is told to stop.
//
// Time, chance, streams and the signal to stop are passed in. Exit status as the command line's:
// 0 stopped as asked, 1 cannot be met, 2 used wrongly, 3 a file is damaged or cannot be written.
#pragma once

#include <functional>
#include <ostream>
#include <string>
#include <vector>

#include "core/model/date.h"
#include "core/model/id.h"
#include "sync/peer/peer_server.h"
#include "sync/peer/stores.h"

namespace ledgerboard::sync {

struct PeerSurroundings {
    std::function<model::Instant()> now;
    model::FillRandom random;
    std::ostream& out;  // the invitation, for a person
    std::ostream& log;  // JSON lines
    bool outIsTerminal = false;
    std::string ownAddress;  // of this computer in its network; may be empty
    // Called once the peer listens, with what stops it; and with nothing once it has stopped: when
    // that returns, what it was given before must not be called any more.
    std::function<void(std::function<void()> stop)> serving;
    // Where the book is in a database; may be empty.
    OpenStores openShared;
    // Where that is empty: becomes the program that has it. Returns why it could not.
    std::function<std::string()> becomeShared;
};

[[nodiscard]] int runPeer(const std::vector<std::string>& arguments, PeerSurroundings& around);

}  // namespace ledgerboard::sync
