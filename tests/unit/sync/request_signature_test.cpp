// Protects: a request is answered only for the device that signed this very request, to this very
// peer, just now, once. Each way to be refused has its own code. The worked example was made with
// other programs (SHA-256 by Python's hashlib, the signature by OpenSSL's command line).
#include "sync/identity/request_signature.h"

#include <array>
#include <gtest/gtest.h>
#include <map>

#include "tests/support/fixed_chance.h"

namespace ledgerboard::sync {
namespace {

using model::Instant;
using model::RawId;
using tests::fixedChance;

constexpr std::string_view kBody = R"({"cursor":7})";
constexpr std::int64_t kNow = 1'775'476'800'000;  // 2026-04-06T12:00:00Z

Instant at(std::int64_t afterMs) {
    return Instant::fromMilliseconds(kNow + afterMs);
}

class Known : public Roster {
  public:
    std::map<RawId, KnownDevice> devices;

    bool isThere = true;

    [[nodiscard]] model::Result<std::optional<KnownDevice>> find(
        const RawId& device) const override {
        if (!isThere) {
            return model::cannotBeMet("it is out of reach");
        }
        const auto found = devices.find(device);
        return found == devices.end() ? std::optional<KnownDevice>() : std::optional(found->second);
    }
};

class RequestSignature : public testing::Test {
  protected:
    RequestSignature() {
        known_.devices[device_] = {key_.publicKey(), {}, false};
        request_.certificate.fill(0x11);
    }

    SignatureHeaders sign(std::int64_t afterMs = 0, std::uint8_t nonce = 7) const {
        Nonce once{};
        once.fill(nonce);
        return signRequest(request_, kBody, key_, device_, at(afterMs), once);
    }

    Refusal verify(const RequestLine& request, const SignatureHeaders& headers,
                   std::int64_t afterMs = 0) {
        return verifyRequest(request, headers, known_, nonces_, at(afterMs)).refusal;
    }

    // RFC 8032, section 7.1, TEST 1.
    DeviceKey key_{*fromHex<DeviceKey::Seed>(
        "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60")};
    RawId device_ = RawId::parse("0196a0b1c2d37e4f8a5b6c7d8e9f0a1b").value();
    Known known_;
    RecentNonces nonces_{at(-3'600'000)};
    RequestLine request_{"POST", "/1/pull", {}};
};

TEST_F(RequestSignature, IsWhatOtherProgramsMakeOfTheDocument) {
    const auto headers = signRequest(request_, kBody, key_, device_, at(0),
                                     *fromHex<Nonce>("000102030405060708090a0b0c0d0e0f"));
    EXPECT_EQ(headers.device, "0196a0b1c2d37e4f8a5b6c7d8e9f0a1b");
    EXPECT_EQ(headers.time, "1775476800000");
    EXPECT_EQ(headers.nonce, "000102030405060708090a0b0c0d0e0f");
    EXPECT_EQ(
        headers.signature,
        "661a6cfa55bfef3820023b30b9781af2acfc76e0761c16e0676363cb8d39066fa27903956da47a268ba06e45"
        "c8d4b9e84cdcc9b696c9936f444fd8bb029cc206");
}

TEST_F(RequestSignature, HoldsOnce) {
    const auto headers = sign();
    const auto verdict = verifyRequest(request_, headers, known_, nonces_, at(0));
    EXPECT_EQ(verdict.refusal, Refusal::None);
    EXPECT_EQ(verdict.device, device_);
    EXPECT_EQ(verify(request_, headers), Refusal::Replayed);
    EXPECT_EQ(verify(request_, sign(0, 8)), Refusal::None);
}

TEST_F(RequestSignature, IsNotCalledUnknownWhereTheListIsOutOfReach) {
    known_.isThere = false;
    EXPECT_EQ(verify(request_, sign()), Refusal::Unready);
    known_.isThere = true;
    EXPECT_EQ(verify(request_, sign()), Refusal::None);
}

TEST_F(RequestSignature, CoversAllOfTheRequest) {
    const auto headers = sign();
    std::array<RequestLine, 3> others{request_, request_, request_};
    others[0].method = "GET";
    others[1].path = "/1/push";
    others[2].certificate[31] ^= 1;
    for (const RequestLine& other : others) {
        EXPECT_EQ(verify(other, headers), Refusal::Forged);
    }
    for (auto member : {&SignatureHeaders::time, &SignatureHeaders::nonce,
                        &SignatureHeaders::digest, &SignatureHeaders::signature}) {
        SignatureHeaders other = headers;
        char& last = (other.*member).back();
        last = last == '0' ? '1' : '0';
        EXPECT_EQ(verify(request_, other), Refusal::Forged);
    }
    EXPECT_TRUE(isSignedBody(headers, kBody));
    EXPECT_FALSE(isSignedBody(headers, R"({"cursor":8})"));
    EXPECT_FALSE(isSignedBody(headers, ""));
    EXPECT_EQ(verify(request_, headers), Refusal::None);  // and nothing of it was remembered
}

TEST_F(RequestSignature, OfAnotherKnownDeviceIsForged) {
    const RawId other = RawId::parse("0196a0b1c2d37e4f8a5b6c7d8e9f0a1c").value();
    known_.devices[other] = {DeviceKey::fresh(fixedChance(5)).publicKey(), {}, false};
    auto headers = sign();
    headers.device = other.hex();
    EXPECT_EQ(verify(request_, headers), Refusal::Forged);
}

TEST_F(RequestSignature, HasAWindowOfTwoMinutes) {
    EXPECT_EQ(verify(request_, sign(0, 1), 120'000), Refusal::None);
    EXPECT_EQ(verify(request_, sign(0, 2), 120'001), Refusal::Expired);
    EXPECT_EQ(verify(request_, sign(0, 3), -120'000), Refusal::None);
    EXPECT_EQ(verify(request_, sign(0, 4), -120'001), Refusal::Expired);
}

TEST_F(RequestSignature, OfAStrangerOrOfOneShutOut) {
    known_.devices[device_].revoked = true;
    const auto verdict = verifyRequest(request_, sign(), known_, nonces_, at(0));
    EXPECT_EQ(verdict.refusal, Refusal::Revoked);
    EXPECT_EQ(verdict.device, device_);  // so that the peer can tell it to wipe its copy
    auto forged = sign();
    forged.signature[0] = forged.signature[0] == '0' ? '1' : '0';
    EXPECT_EQ(verify(request_, forged), Refusal::Forged);  // who cannot sign learns nothing more
    known_.devices.clear();
    EXPECT_EQ(verify(request_, sign()), Refusal::Unknown);
    EXPECT_EQ(nonces_.size(), 0u);
}

TEST_F(RequestSignature, MustReadAsWritten) {
    const SignatureHeaders good = sign();
    for (const auto* time : {"", "0", "-1", "+1775476800000", "01775476800000", "1775476800000 ",
                             "1e12", "99999999999999999999"}) {
        SignatureHeaders headers = good;
        headers.time = time;
        EXPECT_EQ(verify(request_, headers), Refusal::Malformed) << time;
    }
    for (auto member :
         {&SignatureHeaders::device, &SignatureHeaders::nonce, &SignatureHeaders::signature}) {
        SignatureHeaders headers = good;
        (headers.*member).pop_back();
        EXPECT_EQ(verify(request_, headers), Refusal::Malformed);
        headers.*member = "";
        EXPECT_EQ(verify(request_, headers), Refusal::Malformed);
    }
}

TEST_F(RequestSignature, FromBeforeThePeerWasStartedIsSignedAgain) {
    // A peer that was stopped has forgotten its nonces: what it may have answered is not answered
    // again.
    RecentNonces restarted(at(500));
    EXPECT_EQ(verifyRequest(request_, sign(500, 1), known_, restarted, at(600)).refusal,
              Refusal::Expired);
    EXPECT_EQ(verifyRequest(request_, sign(501, 2), known_, restarted, at(600)).refusal,
              Refusal::None);
}

TEST(RecentNonces, ForgetsWhatCanNotComeAgainAndNothingSooner) {
    RecentNonces nonces(at(-1));
    const RawId device = RawId::parse("0196a0b1c2d37e4f8a5b6c7d8e9f0a1b").value();
    Nonce nonce{};
    EXPECT_EQ(nonces.take(device, nonce, at(0), at(0)), Refusal::None);
    // Valid until 120 s after it was signed; to the last of them it is known.
    EXPECT_EQ(nonces.take(device, nonce, at(0), at(120'000)), Refusal::Replayed);
    nonce[0] = 1;
    EXPECT_EQ(nonces.take(device, nonce, at(120'001), at(120'001)), Refusal::None);
    EXPECT_EQ(nonces.size(), 1u);  // the first one is gone
}

TEST(RecentNonces, RefusesRatherThanForgets) {
    RecentNonces nonces(at(-1), 5, 3);
    const RawId one = RawId::parse("0196a0b1c2d37e4f8a5b6c7d8e9f0a1b").value();
    const RawId two = RawId::parse("0196a0b1c2d37e4f8a5b6c7d8e9f0a1c").value();
    const auto take = [&](const RawId& device, std::uint8_t number, std::int64_t ms) {
        Nonce nonce{};
        nonce[0] = number;
        return nonces.take(device, nonce, at(ms), at(ms));
    };
    for (std::uint8_t k = 0; k < 3; ++k) {
        EXPECT_EQ(take(one, k, 0), Refusal::None);
    }
    EXPECT_EQ(take(one, 3, 0), Refusal::Crowded);   // one device has its share
    EXPECT_EQ(take(one, 2, 0), Refusal::Replayed);  // and is still told the truth
    EXPECT_EQ(take(two, 0, 0), Refusal::None);
    EXPECT_EQ(take(two, 1, 0), Refusal::None);
    EXPECT_EQ(take(two, 2, 0), Refusal::Crowded);  // all is full
    EXPECT_EQ(take(two, 2, 120'001), Refusal::None);
    EXPECT_EQ(nonces.size(), 1u);
}

}  // namespace
}  // namespace ledgerboard::sync
