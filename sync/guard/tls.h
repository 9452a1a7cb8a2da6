// How is the server's side of TLS set up? 1.3 and nothing older, one certificate, no resumption.
#pragma once

#include <memory>
#include <openssl/err.h>
#include <openssl/ssl.h>
#include <string>

#include "core/model/result.h"

namespace ledgerboard::sync {

struct TlsFree {
    void operator()(SSL_CTX* context) const { SSL_CTX_free(context); }

    void operator()(SSL* tls) const { SSL_free(tls); }
};

using TlsContext = std::unique_ptr<SSL_CTX, TlsFree>;
using Tls = std::unique_ptr<SSL, TlsFree>;

// Errors (Damaged): the texts are no certificate with its key.
[[nodiscard]] model::Result<TlsContext> serverTls(const std::string& certificatePem,
                                                  const std::string& keyPem);

}  // namespace ledgerboard::sync
