// How does the peer answer a call of the exchange?
#pragma once

#include <cstdint>
#include <string>

namespace ledgerboard::sync {

enum class Status : std::uint8_t {
    Ok,
    Malformed,     // the request can't be read or names what can't be
    NotAllowed,    // not for this role
    NotThere,      // nothing by that name that this device may have
    Revoked,       // this device was shut out: its copy is to be wiped
    Ahead,         // entries later than the peer's time: restamp them
    OtherContent,  // a number already used for something else: take another identity
    TooMuch,       // more set aside than a device may have
    Failed,        // the peer could not do it; try again later
};

// Where `status` is not Ok, `body` is a Refused message.
struct Reply {
    Status status = Status::Ok;
    std::string body;
};

}  // namespace ledgerboard::sync
