// By which certificate does a device recognise its peer? A self-signed one that the peer makes at
// its first start and keeps; devices hold its digest and trust nothing else.
//
// Source: project decision. Ed25519 (RFC 8410), one name, "ledgerboard-peer", since a peer has no
// name of its own; its dates are wide and nobody judges by them: a device's clock may be wrong.
#pragma once

#include <string>

#include "core/model/date.h"
#include "core/model/id.h"
#include "core/model/result.h"
#include "sync/identity/bytes.h"

namespace ledgerboard::sync {

// The name every peer's certificate has and every device asks for.
inline constexpr const char* kPeerName = "ledgerboard-peer";

// The certificate and its key as PEM, and the SHA-256 of the certificate in DER.
struct Certificate {
    std::string certificatePem;
    std::string keyPem;
    Digest digest{};
};

// A new one. `name` differs in tests alone. Errors (Damaged): OpenSSL cannot.
[[nodiscard]] model::Result<Certificate> makeCertificate(model::Instant now,
                                                         const model::FillRandom& random,
                                                         const std::string& name = kPeerName);

// The one in the file at `path` (mode 0600, key and certificate together), made there once.
// Errors: as for a device's key.
[[nodiscard]] model::Result<Certificate> certificateKeptAt(const std::string& path,
                                                           model::Instant now,
                                                           const model::FillRandom& random);

}  // namespace ledgerboard::sync
