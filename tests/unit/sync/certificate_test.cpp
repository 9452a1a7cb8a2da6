// Protects: the peer's certificate is made once, is for one name, is kept where nobody else reads
// its key, and is read back the same. What is in it is asked of OpenSSL's own reader.
#include "sync/identity/certificate.h"

#include <filesystem>
#include <gtest/gtest.h>
#include <openssl/pem.h>
#include <openssl/x509v3.h>

#include "sync/identity/private_file.h"

#include "tests/support/fixed_chance.h"

namespace ledgerboard::sync {
namespace {

using tests::fixedChance;
using tests::TestFolder;

const auto kNow = model::Instant::fromMilliseconds(1'775'476'800'000);  // 2026-04-06T12:00:00Z

struct Read {
    explicit Read(const std::string& pem) {
        BIO* memory = BIO_new_mem_buf(pem.data(), static_cast<int>(pem.size()));
        certificate = PEM_read_bio_X509(memory, nullptr, nullptr, nullptr);
        BIO_free(memory);
    }

    Read(const Read&) = delete;
    Read& operator=(const Read&) = delete;

    ~Read() { X509_free(certificate); }

    X509* certificate = nullptr;
};

TEST(Certificate, IsForThePeersNameAlone) {
    const auto made = makeCertificate(kNow, fixedChance(1));
    ASSERT_TRUE(made.ok());
    const Read read(made.value().certificatePem);
    ASSERT_NE(read.certificate, nullptr);
    EXPECT_EQ(X509_check_host(read.certificate, kPeerName, 0, 0, nullptr), 1);
    EXPECT_EQ(X509_check_host(read.certificate, "localhost", 0, 0, nullptr), 0);
    EXPECT_EQ(X509_check_ip_asc(read.certificate, "127.0.0.1", 0), 0);
    EXPECT_EQ(X509_check_ca(read.certificate), 0);  // it can vouch for nobody else
    EXPECT_EQ(X509_verify(read.certificate, X509_get0_pubkey(read.certificate)), 1);
    EXPECT_EQ(EVP_PKEY_id(X509_get0_pubkey(read.certificate)), EVP_PKEY_ED25519);
    // Begins a day before it was made: the peer's clock may be put right.
    const time_t begin = kNow.milliseconds() / 1000 - 86'400;
    EXPECT_EQ(ASN1_TIME_cmp_time_t(X509_get0_notBefore(read.certificate), begin), 0);
    unsigned char digest[EVP_MAX_MD_SIZE];
    unsigned size = 0;
    ASSERT_EQ(X509_digest(read.certificate, EVP_sha256(), digest, &size), 1);
    EXPECT_EQ(hexOf(made.value().digest), hexOf({digest, size}));
}

TEST(Certificate, IsMadeOnce) {
    const TestFolder folder("certificate");
    const std::string path = folder.file("house.book.peer");
    const auto first = certificateKeptAt(path, kNow, fixedChance(1));
    const auto second = certificateKeptAt(path, kNow, fixedChance(2));
    ASSERT_TRUE(first.ok() && second.ok());
    EXPECT_EQ(first.value().digest, second.value().digest);
    EXPECT_EQ(first.value().keyPem, second.value().keyPem);
    EXPECT_NE(first.value().digest, makeCertificate(kNow, fixedChance(2)).value().digest);
    EXPECT_EQ(std::filesystem::status(path).permissions(),
              std::filesystem::perms::owner_read | std::filesystem::perms::owner_write);
}

TEST(Certificate, RefusesWhatIsNone) {
    const TestFolder folder("certificate");
    const std::string path = folder.file("tls");
    const auto one = makeCertificate(kNow, fixedChance(1)).value();
    const auto two = makeCertificate(kNow, fixedChance(2)).value();
    for (const std::string& text : {std::string(), std::string("x"), one.keyPem, one.certificatePem,
                                    one.keyPem + two.certificatePem}) {
        ASSERT_TRUE(replacePrivate(path, text).ok());
        EXPECT_FALSE(certificateKeptAt(path, kNow, fixedChance(3)).ok());
    }
    ASSERT_TRUE(replacePrivate(path, one.keyPem + one.certificatePem).ok());
    EXPECT_EQ(certificateKeptAt(path, kNow, fixedChance(3)).value().digest, one.digest);
}

}  // namespace
}  // namespace ledgerboard::sync
