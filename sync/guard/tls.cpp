#include "sync/guard/tls.h"

#include <openssl/pem.h>

namespace ledgerboard::sync {

namespace {

// Reads one thing from PEM and frees the reader.
template <class Read>
auto fromPem(const std::string& pem, Read read) {
    BIO* memory = BIO_new_mem_buf(pem.data(), static_cast<int>(pem.size()));
    auto* made = read(memory, nullptr, nullptr, nullptr);
    BIO_free(memory);
    return made;
}

}  // namespace

model::Result<TlsContext> serverTls(const std::string& certificatePem, const std::string& keyPem) {
    TlsContext context(SSL_CTX_new(TLS_server_method()));
    X509* certificate = fromPem(certificatePem, PEM_read_bio_X509);
    EVP_PKEY* key = fromPem(keyPem, PEM_read_bio_PrivateKey);
    const bool good = context && certificate != nullptr && key != nullptr &&
                      SSL_CTX_set_min_proto_version(context.get(), TLS1_3_VERSION) == 1 &&
                      SSL_CTX_use_certificate(context.get(), certificate) == 1 &&
                      SSL_CTX_use_PrivateKey(context.get(), key) == 1 &&
                      SSL_CTX_check_private_key(context.get()) == 1;
    X509_free(certificate);
    EVP_PKEY_free(key);
    if (!good) {
        return model::damaged("the peer's certificate and its key cannot be used for TLS");
    }
    SSL_CTX_set_session_cache_mode(context.get(), SSL_SESS_CACHE_OFF);
    SSL_CTX_set_num_tickets(context.get(), 0);
    // Come back after every record, data or not: a stream of key updates would otherwise be read
    // past any deadline.
    SSL_CTX_clear_mode(context.get(), SSL_MODE_AUTO_RETRY);
    SSL_CTX_set_mode(context.get(), SSL_MODE_RELEASE_BUFFERS | SSL_MODE_ENABLE_PARTIAL_WRITE);
    return context;
}

}  // namespace ledgerboard::sync
