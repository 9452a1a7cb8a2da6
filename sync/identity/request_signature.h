// Who sent this request? Signed by the device over all of it, verified by the peer before anything
// else is done.
//
// Signed are these lines, each ended by one line feed, in this order:
//     ledgerboard request 1
//     <method, upper case>
//     <path>
//     <time, milliseconds since 1970-01-01T00:00Z, decimal>
//     <nonce, 32 hex digits>
//     <device id, 32 hex digits>
//     <SHA-256 of the body, 64 hex digits>
//     <SHA-256 of the peer's certificate in DER, 64 hex digits>
// The last line ties the request to one peer: another cannot pass it on. Hex is lower case. The
// body's digest is sent as well, so that a peer knows the caller before it takes in the body.
// Source: project decision; Ed25519 as in RFC 8032. docs/peer.md says it for other programs.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/model/date.h"
#include "core/model/id.h"
#include "sync/identity/bytes.h"
#include "sync/identity/device_key.h"
#include "sync/identity/nonces.h"
#include "sync/identity/refusal.h"
#include "sync/identity/roster.h"

namespace ledgerboard::sync {

// The five headers that carry it.
inline constexpr const char* kDeviceHeader = "Ledgerboard-Device";
inline constexpr const char* kTimeHeader = "Ledgerboard-Time";
inline constexpr const char* kNonceHeader = "Ledgerboard-Nonce";
inline constexpr const char* kDigestHeader = "Ledgerboard-Digest";
inline constexpr const char* kSignatureHeader = "Ledgerboard-Signature";

// Their values as text.
struct SignatureHeaders {
    std::string device;
    std::string time;
    std::string nonce;
    std::string digest;  // of the body
    std::string signature;
};

// What is asked of whom.
struct RequestLine {
    std::string_view method;
    std::string_view path;
    Digest certificate{};  // of the peer that is asked
};

[[nodiscard]] SignatureHeaders signRequest(const RequestLine& request, std::string_view body,
                                           const DeviceKey& key, const model::RawId& device,
                                           model::Instant now, const Nonce& nonce);

// Who it is where `refusal` is None. Where a signature held and yet was refused (Revoked, Expired,
// Replayed, Crowded) the device is named all the same; otherwise it is nil.
struct Verdict {
    Refusal refusal = Refusal::None;
    model::RawId device;
};

// Judges in this order: form, device known, signature, device not revoked, time, nonce. So only
// what a device signed can fill the memory of nonces, and only its holder learns that it is
// revoked. The body is judged when it has come: isSignedBody().
[[nodiscard]] Verdict verifyRequest(const RequestLine& request, const SignatureHeaders& headers,
                                    const Roster& roster, NonceMemory& nonces, model::Instant now);

// Whether this is the body that was signed. Where not, the request is Altered.
[[nodiscard]] bool isSignedBody(const SignatureHeaders& headers, std::string_view body);

}  // namespace ledgerboard::sync
