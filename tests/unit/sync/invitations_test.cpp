// Protects: a device joins only with the code, within ten minutes, in five tries, once, over the
// peer's own certificate; and knows from the answer that the peer holds the code too. The worked
// proofs were made by another program (keyed BLAKE2b of Python's hashlib).
#include "sync/identity/invitations.h"

#include <gtest/gtest.h>
#include <set>

#include <nlohmann/json.hpp>

#include "sync/wire/limits.h"

#include "tests/support/fixed_chance.h"

namespace ledgerboard::sync {
namespace {

using model::Instant;
using model::RawId;
using tests::fixedChance;

Instant at(std::int64_t ms) {
    return Instant::fromMilliseconds(1'775'476'800'000 + ms);
}

class Pairing : public testing::Test {
  protected:
    Pairing() { certificate_.fill(0x11); }

    PairingRequest ask(const PairingCode& code) const {
        return makePairingRequest(code, certificate_, device_, key_, nonce_);
    }

    PairingCode inviteOwner(std::int64_t ms = 0) {
        return invitations_.invite({model::Role::Owner, {}, {}}, at(ms)).value();
    }

    Refusal redeem(const PairingRequest& request, std::int64_t ms = 0) {
        return invitations_.redeem(request, at(ms)).refusal;
    }

    Digest certificate_{};
    // RFC 8032, section 7.1, TEST 1.
    DeviceKey key_{*fromHex<DeviceKey::Seed>(
        "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60")};
    RawId device_ = RawId::parse("0196a0b1c2d37e4f8a5b6c7d8e9f0a1b").value();
    Nonce nonce_ = *fromHex<Nonce>("000102030405060708090a0b0c0d0e0f");
    Invitations invitations_{[] {
                                 Digest digest{};
                                 digest.fill(0x11);
                                 return digest;
                             }(),
                             fixedChance(9)};
};

TEST_F(Pairing, IsWhatOtherProgramsMakeOfTheDocument) {
    const auto code = PairingCode::parse("7K3Q0123456789ABCDEFGHJKS").value();
    const auto request = ask(code);
    EXPECT_EQ(hexOf(request.proof),
              "cb14629ad849820a5d605ec30b8ae8636921a0bd763a2cb8bbbc93a486344276");
    EXPECT_EQ(hexOf(peerProof(request, code, certificate_)),
              "249a28d67a6aa25c73afa890c1417fc17e0650b6606c36c3f1514b77e571e59f");
}

TEST_F(Pairing, ProvesEachToTheOther) {
    const Grant grant{model::Role::CrewLead, device_, {}};
    const auto code = invitations_.invite(grant, at(0)).value();
    const auto sent = readPairingRequest(toJson(ask(code)));
    ASSERT_TRUE(sent);
    const auto redeemed = invitations_.redeem(*sent, at(kInvitationMs));
    EXPECT_EQ(redeemed.refusal, Refusal::None);
    EXPECT_EQ(redeemed.grant, grant);
    EXPECT_EQ(redeemed.proof, peerProof(ask(code), code, certificate_));
    EXPECT_NE(redeemed.proof, ask(code).proof);  // echoing the device's own proof proves nothing
}

TEST_F(Pairing, LastsTenMinutes) {
    const auto code = inviteOwner();
    EXPECT_EQ(redeem(ask(code), kInvitationMs + 1), Refusal::InvitationOver);
    EXPECT_EQ(redeem(ask(code), 2 * kInvitationMs + 1), Refusal::NoInvitation);
}

TEST_F(Pairing, EndsAfterFiveWrongTries) {
    const auto code = inviteOwner();
    auto wrong = ask(code);
    wrong.proof[0] ^= 1;
    for (int k = 0; k < kMostPairingTries; ++k) {
        EXPECT_EQ(redeem(wrong), Refusal::WrongCode) << k;
    }
    EXPECT_EQ(redeem(wrong), Refusal::TriesUsedUp);
    EXPECT_EQ(redeem(ask(code)), Refusal::TriesUsedUp);    // the right one comes too late
    EXPECT_EQ(redeem(ask(inviteOwner())), Refusal::None);  // other invitations are not touched
}

TEST_F(Pairing, FourWrongTriesHurtNobody) {
    const auto code = inviteOwner();
    auto wrong = ask(code);
    wrong.proof[31] ^= 128;
    for (int k = 0; k < kMostPairingTries - 1; ++k) {
        EXPECT_EQ(redeem(wrong), Refusal::WrongCode);
    }
    EXPECT_EQ(redeem(ask(code)), Refusal::None);
}

TEST_F(Pairing, FailsForWhoeverStandsBetween) {
    const auto code = inviteOwner();
    // The device saw another certificate than ours: somebody passes its words on.
    Digest theirs = certificate_;
    theirs[5] ^= 1;
    EXPECT_EQ(redeem(makePairingRequest(code, theirs, device_, key_, nonce_)), Refusal::WrongCode);
    // Somebody puts a key of his own into the request.
    auto swapped = ask(code);
    swapped.key = DeviceKey::fresh(fixedChance(4)).publicKey();
    EXPECT_EQ(redeem(swapped), Refusal::WrongCode);
    auto renamed = ask(code);
    renamed.device = RawId::parse("0196a0b1c2d37e4f8a5b6c7d8e9f0a1c").value();
    EXPECT_EQ(redeem(renamed), Refusal::WrongCode);
}

TEST_F(Pairing, NeedsTheKeyAndNotItsPublicHalfAlone) {
    const auto code = inviteOwner();
    auto unsignedOne = ask(code);
    unsignedOne.signature[0] ^= 1;
    EXPECT_EQ(redeem(unsignedOne), Refusal::Forged);
    EXPECT_EQ(redeem(ask(code)), Refusal::None);
}

TEST_F(Pairing, ServesOneDeviceWhichMayAskAgain) {
    const auto code = inviteOwner();
    EXPECT_EQ(redeem(ask(code)), Refusal::None);
    nonce_[0] ^= 1;
    EXPECT_EQ(redeem(ask(code), 1000), Refusal::None);  // the answer was lost on the way
    device_ = RawId::parse("0196a0b1c2d37e4f8a5b6c7d8e9f0a1c").value();
    EXPECT_EQ(redeem(ask(code)), Refusal::InvitationTaken);
}

TEST_F(Pairing, KnowsNoOtherInvitation) {
    const auto code = PairingCode::parse("7K3Q0123456789ABCDEFGHJKS").value();
    EXPECT_EQ(redeem(ask(code)), Refusal::NoInvitation);
}

TEST_F(Pairing, HasRoomForSoMany) {
    std::set<std::string> codes;
    for (std::size_t k = 0; k < kMostOpenInvitations; ++k) {
        codes.insert(inviteOwner().plain());
    }
    EXPECT_EQ(codes.size(), kMostOpenInvitations);
    EXPECT_FALSE(invitations_.invite({}, at(1)).ok());
    // One that was taken is open no more.
    ASSERT_EQ(redeem(ask(PairingCode::parse(*codes.begin()).value())), Refusal::None);
    EXPECT_TRUE(invitations_.invite({}, at(1)).ok());
    EXPECT_TRUE(invitations_.invite({}, at(kInvitationMs + 1)).ok());
}

TEST_F(Pairing, ReadsNothingElse) {
    const std::string good = toJson(ask(inviteOwner()));
    for (const auto* name : {"invitation", "device", "nonce", "key", "proof", "signature"}) {
        auto object = nlohmann::json::parse(good);
        object[name] = 3;
        EXPECT_FALSE(readPairingRequest(object.dump())) << name;
        object[name] = "zz";
        EXPECT_FALSE(readPairingRequest(object.dump())) << name;
        object.erase(name);
        EXPECT_FALSE(readPairingRequest(object.dump())) << name;
    }
    EXPECT_FALSE(readPairingRequest("[]"));
    EXPECT_FALSE(readPairingRequest(good + std::string(kMostPairingBytes, ' ')));
    EXPECT_FALSE(readPairingRequest(R"({"a":)" + good + "}"));
}

TEST_F(Pairing, AnOwnersDeviceMayBringABookAndOthersMayNot) {
    const Introduction self{RawId::parse("0196a0b1c2d37e4f8a5b6c7d8e9f0a1c").value(),
                            "Wren's laptop"};
    const auto introduced = [&](const PairingCode& code) {
        return makePairingRequest(code, certificate_, device_, key_, nonce_, self);
    };
    const auto request = introduced(inviteOwner());
    const auto read = readPairingRequest(toJson(request));
    ASSERT_TRUE(read);
    EXPECT_EQ(read->self.person, self.person);
    EXPECT_EQ(read->self.called, self.called);
    auto changed = request;
    changed.self.called = "Robin's laptop";
    EXPECT_EQ(redeem(changed), Refusal::WrongCode);  // the proof covers it
    EXPECT_EQ(redeem(request), Refusal::None);
    const auto lead = invitations_
                          .invite({model::Role::CrewLead,
                                   RawId::parse("0196a0b1c2d37e4f8a5b6c7d8e9f0a1d").value(),
                                   {}},
                                  at(0))
                          .value();
    EXPECT_EQ(redeem(introduced(lead)), Refusal::OwnBook);
    EXPECT_EQ(redeem(ask(lead)), Refusal::None);  // the invitation was not used up
    auto odd = nlohmann::json::parse(toJson(request));
    odd["called"] = "two\nlines";
    EXPECT_FALSE(readPairingRequest(odd.dump()));
}

TEST(Refusals, HaveANameAStatusAndASentenceEach) {
    std::set<std::string_view> names;
    for (int k = 1; k <= static_cast<int>(Refusal::Altered); ++k) {
        const auto refusal = static_cast<Refusal>(k);
        EXPECT_EQ(refusalNamed(nameOf(refusal)), refusal) << k;
        EXPECT_GE(statusOf(refusal), 400) << k;
        EXPECT_GT(textOf(refusal).size(), 20u) << k;
        names.insert(nameOf(refusal));
    }
    EXPECT_EQ(names.size(), static_cast<std::size_t>(Refusal::Altered));
    EXPECT_EQ(refusalNamed("none"), Refusal::None);
}

}  // namespace
}  // namespace ledgerboard::sync
