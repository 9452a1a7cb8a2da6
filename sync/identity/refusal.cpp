#include "sync/identity/refusal.h"

#include <array>

namespace ledgerboard::sync {

namespace {

struct Line {
    Refusal refusal;
    std::string_view name;
    int status;
    std::string_view text;
};

constexpr std::array<Line, 16> kLines = {{
    {Refusal::Malformed, "malformed", 400,
     "The request is not signed as it must be: use a program of the same version."},
    {Refusal::Unknown, "unknown", 401,
     "The peer does not know this device: ask an owner for an invitation and join."},
    {Refusal::Forged, "forged", 401,
     "The signature is not this device's: if its key file was replaced, join anew."},
    {Refusal::Revoked, "revoked", 403,
     "This device was shut out by an owner: it may read and send nothing more."},
    {Refusal::Expired, "expired", 401,
     "The request was signed at another time than the peer's: ask for the time and sign again."},
    {Refusal::Replayed, "replayed", 401,
     "This very request came before: sign each request with a number of its own."},
    {Refusal::Crowded, "crowded", 503, "Too many requests in a short time: wait and try again."},
    {Refusal::Unready, "unready", 503,
     "The peer cannot use its store just now: wait and try again."},
    {Refusal::NoInvitation, "no-invitation", 404,
     "No invitation of this code is open: check its first group, or ask for a new one."},
    {Refusal::InvitationOver, "invitation-over", 410,
     "The invitation is older than ten minutes: ask for a new one."},
    {Refusal::InvitationTaken, "invitation-taken", 409,
     "Another device used this invitation: ask for a new one."},
    {Refusal::WrongCode, "wrong-code", 403,
     "The code is not right, or this is not the peer that gave it: check both."},
    {Refusal::TriesUsedUp, "tries-used-up", 403,
     "The code was wrong too often, so the invitation is closed: ask for a new one."},
    {Refusal::DeviceTaken, "device-taken", 409,
     "A device of this id with another key is known already: remove the key file and join anew."},
    {Refusal::Altered, "altered", 401,
     "What came is not what this device signed: it was changed or cut short on the way. Try "
     "again."},
    {Refusal::OwnBook, "own-book", 409,
     "The invitation is for a crew lead or a viewer, whose book comes from the peer: join into a "
     "new "
     "file, with --book and a name that is not taken."},
}};

const Line* lineOf(Refusal refusal) {
    for (const auto& line : kLines) {
        if (line.refusal == refusal) {
            return &line;
        }
    }
    return nullptr;
}

}  // namespace

std::string_view nameOf(Refusal refusal) {
    const Line* line = lineOf(refusal);
    return line == nullptr ? "" : line->name;
}

Refusal refusalNamed(std::string_view name) {
    for (const auto& line : kLines) {
        if (line.name == name) {
            return line.refusal;
        }
    }
    return Refusal::None;
}

std::string textOf(Refusal refusal) {
    const Line* line = lineOf(refusal);
    return line == nullptr ? "" : std::string(line->text);
}

int statusOf(Refusal refusal) {
    const Line* line = lineOf(refusal);
    return line == nullptr ? 200 : line->status;
}

}  // namespace ledgerboard::sync
