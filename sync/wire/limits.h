// How much and how long? Every limit of what devices and a peer say to each other, in one place.
//
// Units: bytes and milliseconds, as the names say. Source: project decision; a limit that is not
// commented keeps one stranger from using up the memory or the threads of a small machine.
#pragma once

#include <cstddef>
#include <cstdint>

namespace ledgerboard::sync {

inline constexpr std::size_t kKiB = 1024;
inline constexpr std::size_t kMiB = 1024 * kKiB;

// What is sent.
inline constexpr std::size_t kMostHeadBytes = 16 * kKiB;  // request line and headers together
inline constexpr std::size_t kMostHeadLines = 64;         // headers in one request
inline constexpr std::size_t kMostBodyBytes = kMiB;       // of any request
inline constexpr std::size_t kMostReplyBytes = 4 * kMiB;  // of any answer
inline constexpr std::size_t kMostEntriesUp = 1000;       // entries in one push
inline constexpr std::size_t kPhotoPartBytes = 512 * kKiB;
inline constexpr int kMostJsonDepth = 16;
inline constexpr std::size_t kMostPairingBytes = 4 * kKiB;

// How long a peer waits, in all and not for each byte.
inline constexpr int kHandshakeMs = 4'000;
inline constexpr int kHeadMs = 5'000;
inline constexpr int kBodyMs = 30'000;
inline constexpr int kAnswerMs = 30'000;  // for taking the answer
inline constexpr int kIdleMs = 5'000;     // between two requests of one connection
// For another program that writes to the book: shorter than a device waits for an answer, since the
// calls of others stand behind it.
inline constexpr int kStoreWaitMs = 10'000;
inline constexpr int kMostRequestsPerConnection = 1'000;

// How many connections a peer holds; all three can be set when it is started.
inline constexpr int kMostConnections = 256;
inline constexpr int kMostPerAddress = 64;  // whose caller has not been verified yet
inline constexpr int kMostPerDevice = 4;    // whose caller has
// Connections beyond those that are still told to come back, rather than dropped.
inline constexpr int kMostTurnedAway = 32;
inline constexpr int kTurnedAwayMs = 2'000;  // each step of telling them
inline constexpr int kRetryAfterSeconds = 1;

// How long a device waits.
inline constexpr int kConnectMs = 4'000;
inline constexpr int kReadMs = 35'000;  // longer than the peer may take over a body

// Signatures and pairing.
inline constexpr std::int64_t kSignatureWindowMs = 120'000;  // before and after the peer's clock
inline constexpr std::size_t kMostNonces = 65'536;           // remembered in all
inline constexpr std::size_t kMostNoncesPerDevice = 8'192;   // remembered of one device
inline constexpr std::int64_t kInvitationMs = 600'000;
inline constexpr int kMostPairingTries = 5;
inline constexpr std::size_t kMostOpenInvitations = 64;

}  // namespace ledgerboard::sync
