#include "sync/identity/certificate.h"

#include <memory>
#include <openssl/bio.h>
#include <openssl/evp.h>
#include <openssl/pem.h>
#include <openssl/x509v3.h>

#include "core/model/saying.h"
#include "sync/identity/private_file.h"

namespace ledgerboard::sync {

using model::Result;

namespace {

// Frees what OpenSSL made at the end of its life.
template <auto Free>
struct Freed {
    template <class T>
    void operator()(T* made) const {
        Free(made);
    }
};

using Key = std::unique_ptr<EVP_PKEY, Freed<EVP_PKEY_free>>;
using Cert = std::unique_ptr<X509, Freed<X509_free>>;
using Extension = std::unique_ptr<X509_EXTENSION, Freed<X509_EXTENSION_free>>;
using Memory = std::unique_ptr<BIO, Freed<BIO_free_all>>;

constexpr std::int64_t kDay = 86'400;
constexpr std::int64_t kYears = 30 * (365 * kDay);

std::string textOf(BIO* memory) {
    char* bytes = nullptr;
    const long size = BIO_get_mem_data(memory, &bytes);
    return {bytes, static_cast<std::size_t>(size)};
}

bool addExtension(X509* certificate, int kind, const std::string& value) {
    X509V3_CTX context;
    X509V3_set_ctx_nodb(&context);
    X509V3_set_ctx(&context, certificate, certificate, nullptr, nullptr, 0);
    const Extension extension(X509V3_EXT_conf_nid(nullptr, &context, kind, value.c_str()));
    return extension && X509_add_ext(certificate, extension.get(), -1) == 1;
}

bool setNames(X509* certificate, const std::string& name) {
    X509_NAME* subject = X509_get_subject_name(certificate);
    return X509_NAME_add_entry_by_txt(subject, "CN", MBSTRING_ASC,
                                      reinterpret_cast<const unsigned char*>(name.c_str()), -1, -1,
                                      0) == 1 &&
           X509_set_issuer_name(certificate, subject) == 1 &&
           addExtension(certificate, NID_subject_alt_name, "DNS:" + name) &&
           addExtension(certificate, NID_basic_constraints, "critical,CA:FALSE");
}

bool setDates(X509* certificate, model::Instant now) {
    const auto seconds = static_cast<time_t>(now.milliseconds() / 1000);
    return ASN1_TIME_set(X509_getm_notBefore(certificate), seconds - kDay) != nullptr &&
           ASN1_TIME_set(X509_getm_notAfter(certificate), seconds + kYears) != nullptr;
}

// A positive serial number of 64 bits, as unlike any other as chance makes it.
bool setSerial(X509* certificate, const model::FillRandom& random) {
    Bytes<8> bytes{};
    random(bytes.data(), bytes.size());
    std::uint64_t serial = 1;
    for (const std::uint8_t byte : bytes) {
        serial = (serial << 8) | byte;
    }
    return ASN1_INTEGER_set_uint64(X509_get_serialNumber(certificate), serial >> 1 | 1) == 1;
}

Digest digestOf(X509* certificate) {
    unsigned char* der = nullptr;
    const int size = i2d_X509(certificate, &der);
    const Digest digest =
        sha256({reinterpret_cast<const char*>(der), static_cast<std::size_t>(size > 0 ? size : 0)});
    OPENSSL_free(der);
    return digest;
}

model::Error cannotMake() {
    return model::damaged("the peer's certificate cannot be made: OpenSSL refuses");
}

Result<Certificate> asPem(X509* certificate, EVP_PKEY* key) {
    const Memory certificateText(BIO_new(BIO_s_mem()));
    const Memory keyText(BIO_new(BIO_s_mem()));
    if (!certificateText || !keyText ||
        PEM_write_bio_X509(certificateText.get(), certificate) != 1 ||
        PEM_write_bio_PrivateKey(keyText.get(), key, nullptr, nullptr, 0, nullptr, nullptr) != 1) {
        return cannotMake();
    }
    return Certificate{textOf(certificateText.get()), textOf(keyText.get()), digestOf(certificate)};
}

// The certificate in a file's text; the digest of an empty one where it holds none.
Result<Certificate> readCertificate(const std::string& path, const std::string& text) {
    const Memory forKey(BIO_new_mem_buf(text.data(), static_cast<int>(text.size())));
    const Memory forCertificate(BIO_new_mem_buf(text.data(), static_cast<int>(text.size())));
    const Key key(PEM_read_bio_PrivateKey(forKey.get(), nullptr, nullptr, nullptr));
    const Cert certificate(PEM_read_bio_X509(forCertificate.get(), nullptr, nullptr, nullptr));
    if (!key || !certificate || X509_check_private_key(certificate.get(), key.get()) != 1) {
        return model::damaged(
            model::saying("%1 is not a peer's certificate with its key: put it back from a backup; "
                          "a new one means that every device joins anew",
                          path));
    }
    return asPem(certificate.get(), key.get());
}

}  // namespace

Result<Certificate> makeCertificate(model::Instant now, const model::FillRandom& random,
                                    const std::string& name) {
    Bytes<32> seed{};
    random(seed.data(), seed.size());
    const Key key(
        EVP_PKEY_new_raw_private_key(EVP_PKEY_ED25519, nullptr, seed.data(), seed.size()));
    wipe(seed);
    const Cert certificate(X509_new());
    constexpr long kVersion3 = 2;
    if (!key || !certificate || X509_set_version(certificate.get(), kVersion3) != 1 ||
        !setSerial(certificate.get(), random) || !setDates(certificate.get(), now) ||
        X509_set_pubkey(certificate.get(), key.get()) != 1 || !setNames(certificate.get(), name) ||
        X509_sign(certificate.get(), key.get(), nullptr) == 0) {
        return cannotMake();
    }
    return asPem(certificate.get(), key.get());
}

Result<Certificate> certificateKeptAt(const std::string& path, model::Instant now,
                                      const model::FillRandom& random) {
    auto text = readPrivate(path);
    if (text.ok() && !text.value()) {
        auto fresh = makeCertificate(now, random);
        if (!fresh.ok()) {
            return fresh.error();
        }
        std::string both = fresh.value().keyPem + fresh.value().certificatePem;
        auto made = makePrivate(path, both);
        wipe(both);
        if (!made.ok()) {
            return made.error();
        }
        text = readPrivate(path);  // another program may have been first
    }
    if (!text.ok()) {
        return text.error();
    }
    return readCertificate(path, text.value().value_or(""));
}

}  // namespace ledgerboard::sync
