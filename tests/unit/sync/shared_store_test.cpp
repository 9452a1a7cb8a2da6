// Protects: what several peers of one book share: devices, invitations and nonces mean the same at
// each of them, and nothing of it is lost or used twice. How: two connections to one PostgreSQL
// database, as two peers have them.
#include "sync/peer/shared_store.h"

#include <gtest/gtest.h>
#include <thread>

#include "core/store/postgres/postgres_backend.h"
#include "sync/identity/pairing.h"
#include "sync/wire/limits.h"

#include "tests/support/books.h"
#include "tests/support/postgres_books.h"
#include "tests/support/postgres_server.h"

namespace ledgerboard::sync {
namespace {

using model::Instant;
using model::RawId;
using tests::fixedChance;

Instant at(std::int64_t ms) {
    return Instant::fromMilliseconds(1'775'476'800'000 + ms);
}

RawId idOf(std::uint8_t first) {
    std::array<std::uint8_t, RawId::kBytes> bytes{};
    bytes[0] = first;
    return RawId(bytes);
}

Nonce nonceOf(std::uint64_t number) {
    Nonce nonce{};
    for (std::size_t k = 0; k < 8; ++k) {
        nonce[k] = static_cast<std::uint8_t>(number >> (8 * k));
    }
    return nonce;
}

class SharedStoreTest : public testing::Test {
  protected:
    SharedStoreTest() { certificate_.fill(0x11); }

    static std::unique_ptr<SharedStore> open() {
        const std::string place = testing::UnitTest::GetInstance()->current_test_info()->name();
        if (!made_) {
            EXPECT_TRUE(tests::createBook(place, "Owner", at(0), fixedChance(1)).ok());
        }
        made_ = true;
        return SharedStore::open(tests::postgresBackend(place).value()).value();
    }

    static void SetUpTestSuite() { made_ = false; }

    void SetUp() override { made_ = false; }

    Digest certificate_{};
    static inline bool made_ = false;
};

TEST_F(SharedStoreTest, ADeviceThatJoinsAtOneIsKnownAtTheOther) {
    const auto one = open();
    const auto other = open();
    StoredDevices here(*one);
    StoredDevices there(*other);
    const auto key = DeviceKey::fresh(fixedChance(5)).publicKey();
    const Grant grant{model::Role::CrewLead, idOf(7), {}};
    EXPECT_EQ(here.count().value(), 0u);
    EXPECT_EQ(here.admit(idOf(1), key, grant, at(0)).value(), Refusal::None);
    EXPECT_EQ(there.count().value(), 1u);
    const auto known = there.find(idOf(1)).value();
    ASSERT_TRUE(known);
    EXPECT_EQ(known->key, key);
    EXPECT_EQ(known->grant, grant);
    EXPECT_FALSE(known->revoked);
    EXPECT_FALSE(there.find(idOf(2)).value());
    EXPECT_EQ(there.admit(idOf(1), key, {}, at(1)).value(), Refusal::None);
    EXPECT_EQ(here.find(idOf(1)).value()->grant, grant);  // the first grant stays
    EXPECT_EQ(there.admit(idOf(1), PublicKey{}, grant, at(1)).value(), Refusal::DeviceTaken);
    EXPECT_TRUE(there.revoke(idOf(1), at(2)).value());
    EXPECT_FALSE(here.revoke(idOf(1), at(3)).value());
    EXPECT_TRUE(here.find(idOf(1)).value()->revoked);
    EXPECT_EQ(here.admit(idOf(1), key, grant, at(4)).value(), Refusal::Revoked);
}

TEST_F(SharedStoreTest, AnInvitationHasItsTriesAndItsTakerInCommon) {
    const auto one = open();
    const auto other = open();
    StoredInvitations here(*one, certificate_, fixedChance(11));
    StoredInvitations there(*other, certificate_, fixedChance(12));
    const auto key = DeviceKey::fresh(fixedChance(5));
    const Grant grant{model::Role::Viewer, {}, idOf(9), idOf(8), "Ann"};
    const auto code = here.invite(grant, at(0)).value();
    const auto ask = [&](const PairingCode& with, std::uint8_t device) {
        return makePairingRequest(with, certificate_, idOf(device), key, Nonce{});
    };
    const auto taken = there.redeem(ask(code, 1), at(10));
    EXPECT_EQ(taken.refusal, Refusal::None);
    EXPECT_EQ(taken.grant, grant);
    EXPECT_EQ(taken.proof, peerProof(ask(code, 1), code, certificate_));
    EXPECT_EQ(here.redeem(ask(code, 2), at(20)).refusal, Refusal::InvitationTaken);
    EXPECT_EQ(here.redeem(ask(code, 1), at(20)).refusal, Refusal::None);  // the answer was lost
    EXPECT_EQ(here.redeem(ask(code, 1), at(kInvitationMs + 1)).refusal, Refusal::InvitationOver);
    EXPECT_EQ(here.redeem(ask(code, 1), at(2 * kInvitationMs + 1)).refusal, Refusal::NoInvitation);

    const auto second = there.invite({model::Role::Owner, {}, {}}, at(0)).value();
    for (int k = 0; k < kMostPairingTries; ++k) {
        auto wrong = ask(second, 3);
        wrong.proof[0] ^= 1;
        EXPECT_EQ((k % 2 == 0 ? here : there).redeem(wrong, at(1)).refusal, Refusal::WrongCode);
    }
    EXPECT_EQ(here.redeem(ask(second, 3), at(2)).refusal, Refusal::TriesUsedUp);
    EXPECT_EQ(there.redeem(ask(second, 3), at(2)).refusal, Refusal::TriesUsedUp);
}

TEST_F(SharedStoreTest, SoManyInvitationsAreOpenInAll) {
    const auto one = open();
    const auto other = open();
    StoredInvitations here(*one, certificate_, fixedChance(11));
    StoredInvitations there(*other, certificate_, fixedChance(12));
    for (std::size_t k = 0; k < kMostOpenInvitations; ++k) {
        ASSERT_TRUE((k % 2 == 0 ? here : there).invite({}, at(0)).ok());
    }
    EXPECT_FALSE(here.invite({}, at(1)).ok());
    EXPECT_FALSE(there.invite({}, at(1)).ok());
    EXPECT_TRUE(there.invite({}, at(kInvitationMs + 1)).ok());
}

TEST_F(SharedStoreTest, ANonceIsUsedOnceAtWhicheverPeer) {
    const auto one = open();
    const auto other = open();
    StoredNonces here(*one, at(0));
    StoredNonces there(*other, at(0));
    EXPECT_EQ(here.take(idOf(1), nonceOf(1), at(10), at(10)), Refusal::None);
    EXPECT_EQ(here.take(idOf(1), nonceOf(1), at(10), at(11)), Refusal::Replayed);
    EXPECT_EQ(there.take(idOf(1), nonceOf(1), at(10), at(11)), Refusal::Replayed);
    EXPECT_EQ(there.take(idOf(2), nonceOf(1), at(10), at(11)), Refusal::None);
    EXPECT_EQ(here.take(idOf(1), nonceOf(2), at(0), at(11)), Refusal::Expired);  // before it began
    // As long as the request could be sent again, and no longer.
    const auto late = at(10 + kSignatureWindowMs);
    EXPECT_EQ(there.take(idOf(1), nonceOf(1), at(10), late), Refusal::Replayed);
    const auto later = at(11 + kSignatureWindowMs + 1'000);
    EXPECT_EQ(there.take(idOf(3), nonceOf(9), later, later), Refusal::None);
    EXPECT_EQ(there.take(idOf(1), nonceOf(1), later, later), Refusal::None);
    // Asked at both at the same time, one says yes.
    int yes = 0;
    for (std::uint64_t k = 100; k < 120; ++k) {
        Refusal first{};
        std::thread thread([&] { first = here.take(idOf(4), nonceOf(k), later, later); });
        const Refusal second = there.take(idOf(4), nonceOf(k), later, later);
        thread.join();
        yes += (first == Refusal::None ? 1 : 0) + (second == Refusal::None ? 1 : 0);
    }
    EXPECT_EQ(yes, 20);
}

TEST_F(SharedStoreTest, ADeviceHasRoomForSoManyNonces) {
    const auto one = open();
    StoredNonces nonces(*one, at(0));
    ASSERT_TRUE(one->change([](store::Database& database) {
                       database.run(
                           "INSERT INTO peer_nonces(device, nonce, until_ms) SELECT "
                           "'01000000-0000-0000-0000-000000000000', gen_random_uuid(), "
                           "1775476999999 FROM generate_series(1, " +
                           std::to_string(kMostNoncesPerDevice) + ")");
                       return true;
                   })
                    .ok());
    EXPECT_EQ(nonces.take(idOf(1), nonceOf(1), at(10), at(10)), Refusal::Crowded);
    EXPECT_EQ(nonces.take(idOf(2), nonceOf(1), at(10), at(10)), Refusal::None);
}

TEST(SharedStoreOutOfReach, SaysSoAndAfterwardsRefusesWhatWasSignedBefore) {
    tests::PostgresServer server;
    const auto address = store::PostgresAddress::parse(server.address()).value();
    ASSERT_TRUE(store::Book::openIn(store::PostgresBackend::open(address).value(), "book",
                                    model::Id<model::Kind::Device>(idOf(1)), fixedChance(1))
                    .ok());
    const auto shared = SharedStore::open(store::PostgresBackend::open(address).value()).value();
    StoredDevices devices(*shared);
    StoredInvitations invitations(*shared, {}, fixedChance(3));
    StoredNonces nonces(*shared, at(0));
    EXPECT_EQ(nonces.take(idOf(1), nonceOf(1), at(10), at(10)), Refusal::None);
    server.kill();
    EXPECT_EQ(nonces.take(idOf(1), nonceOf(2), at(20), at(20)), Refusal::Unready);
    EXPECT_FALSE(devices.find(idOf(1)).ok());
    EXPECT_FALSE(devices.count().ok());
    EXPECT_FALSE(invitations.invite({}, at(20)).ok());
    PairingRequest request;
    request.handle = "AAAA";
    EXPECT_EQ(invitations.redeem(request, at(20)).refusal, Refusal::Unready);
    server.start();
    // Its server may have lost the nonces it was told last.
    EXPECT_EQ(nonces.take(idOf(1), nonceOf(1), at(10), at(30)), Refusal::Expired);
    EXPECT_EQ(nonces.take(idOf(1), nonceOf(3), at(31), at(31)), Refusal::None);
}

}  // namespace
}  // namespace ledgerboard::sync
