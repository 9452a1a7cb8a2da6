// What does the picture say that a phone reads to join? Where the peer is, what its certificate's
// digest is, and the code.
//
// LEDGERBOARD:1:<code, 25>:<certificate's SHA-256, 64 hex digits>:<port>:<host>, all upper case, so
// that a QR code of its alphanumeric mode holds it. Source: project decision.
#pragma once

#include <cstdint>
#include <string>

#include "sync/identity/bytes.h"
#include "sync/identity/pairing_code.h"

namespace ledgerboard::sync {

// Where a peer answers: a name or an address without brackets, and a port.
struct Place {
    std::string host;
    std::uint16_t port = 0;
    friend bool operator==(const Place&, const Place&) = default;
};

// "host:port", "[::1]:port". Errors (WrongUse): no port, no host, odd characters.
[[nodiscard]] model::Result<Place> parsePlace(std::string_view text);
[[nodiscard]] std::string toText(const Place& place);

struct Invitation {
    PairingCode code;
    Digest certificate{};
    Place place;
};

[[nodiscard]] std::string pictureText(const Invitation& invitation);
// Errors (WrongUse): anything that pictureText() did not write.
[[nodiscard]] model::Result<Invitation> parseInvitation(std::string_view text);

}  // namespace ledgerboard::sync
