// Why was a caller turned away? One code each, the same in answers, logs and tests.
#pragma once

#include <string>
#include <string_view>

namespace ledgerboard::sync {

enum class Refusal {
    None,
    // Of a signed request.
    Malformed,  // its signature headers are missing or do not read
    Unknown,    // no such device
    Forged,     // the device's key did not sign this request
    Revoked,    // the device was shut out
    Expired,    // signed too long ago, too far ahead, or before the peer was started
    Replayed,   // this very request came before
    Crowded,    // more requests in a short time than are remembered
    // Of pairing.
    NoInvitation,     // none of this handle is open
    InvitationOver,   // older than ten minutes
    InvitationTaken,  // another device used it
    WrongCode,        // the proof is not made with the code, or not for this peer's certificate
    TriesUsedUp,      // too many wrong proofs: it is closed
    DeviceTaken,      // a device of this id with another key is known already
    OwnBook,          // a crew lead or a viewer brings a book of its own
    // Of a signed request again.
    Unready,  // the peer cannot use its store now: the same may be sent again
    Altered,  // its body is another than was signed: cut short, put in another order, changed
};

// "expired", "wrong-code", ...: what the answer's "code" says. Part of the wire: do not change one.
[[nodiscard]] std::string_view nameOf(Refusal refusal);

// Refusal::None where `name` is none of them.
[[nodiscard]] Refusal refusalNamed(std::string_view name);

// A sentence for the person at the device: what it means and what to do.
[[nodiscard]] std::string textOf(Refusal refusal);

// The HTTP status it is answered with.
[[nodiscard]] int statusOf(Refusal refusal);

}  // namespace ledgerboard::sync
