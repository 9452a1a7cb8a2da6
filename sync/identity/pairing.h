// How does a device join without ever having met the peer? Both prove that they hold the code, each
// to the other, about one certificate and one key.
//
// The device sends its id, its public key, a nonce and a proof; the peer answers with its own. Both
// proofs are keyed BLAKE2b (RFC 7693), the key being the code's secret, over these lines, each
// ended by one line feed:
//     ledgerboard pairing 1: device to peer      (from the peer: "peer to device")
//     <SHA-256 of the peer's certificate in DER> (as the sender sees it)
//     <handle of the invitation>
//     <device id>  <nonce>  <public key>         (one a line)
//     <the device's proof>                       (in the peer's alone)
// Where the device brings a book of its own, or is called something, these lines follow the public
// key in both:
//     person <id of whose book it is>
//     called <what the device is called>
// The device also signs the lines of its own proof with its key.
//
// To the peer is proven: whoever holds this key was given the code and is talking to us over our
// own certificate, nobody in between. To the device: whoever answers over the certificate seen was
// given the code as well, now. So a typed code, which carries no certificate, lets a device find
// out safely which certificate to pin. The secret has 100 bits: guessing it from a proof is out of
// reach. Hex is lower case. Source: project decision.
#pragma once

#include <optional>
#include <string>

#include "core/model/id.h"
#include "sync/identity/bytes.h"
#include "sync/identity/device_key.h"
#include "sync/identity/pairing_code.h"
#include "sync/identity/roster.h"

namespace ledgerboard::sync {

inline constexpr std::size_t kMostNameBytes = 120;

// Whether `text` can be a name: at most kMostNameBytes, no control characters.
[[nodiscard]] bool isName(std::string_view text);

// Whose the device is, as it says itself.
struct Introduction {
    model::RawId person{};  // where it brings a book of its own; else nil
    std::string called{};   // the device; may be empty
};

// What the device sends.
struct PairingRequest {
    std::string handle;
    model::RawId device;
    Nonce nonce{};
    PublicKey key{};
    Introduction self;
    Digest proof{};
    Signature signature{};
};

[[nodiscard]] PairingRequest makePairingRequest(const PairingCode& code, const Digest& certificate,
                                                const model::RawId& device, const DeviceKey& key,
                                                const Nonce& nonce, const Introduction& self = {});

// JSON both ways. Reading gives nothing where it is not of that form.
[[nodiscard]] std::string toJson(const PairingRequest& request);
[[nodiscard]] std::optional<PairingRequest> readPairingRequest(std::string_view json);

// What the peer answers: its proof, and what the device was given.
struct PairingAnswer {
    Digest proof{};
    Grant grant;
    model::RawId person{};  // whose device it is now; nil where the peer keeps no people
};

[[nodiscard]] std::string toJson(const PairingAnswer& answer);
[[nodiscard]] std::optional<PairingAnswer> readPairingAnswer(std::string_view json);

// "owner", "crew lead", "viewer". Unset where `name` is none of them.
[[nodiscard]] std::string roleName(model::Role role);
[[nodiscard]] model::Role roleNamed(std::string_view name);

// Whether the request was made with the code, for this certificate.
[[nodiscard]] bool provesCode(const PairingRequest& request, const PairingCode& code,
                              const Digest& certificate);
// Whether the holder of the key made the request.
[[nodiscard]] bool provesKey(const PairingRequest& request, const Digest& certificate);

// The peer's proof. Requires: the request proved the code.
[[nodiscard]] Digest peerProof(const PairingRequest& request, const PairingCode& code,
                               const Digest& certificate);

}  // namespace ledgerboard::sync
