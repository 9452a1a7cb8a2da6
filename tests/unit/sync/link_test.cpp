// Protects: a device and a peer, both real and on loopback: joining and every way it is refused,
// signed calls and every way they are refused, the pin of the certificate, retries that obey the
// peer. Waits are counted, hardly waited.
#include "sync/link/link.h"

#include <cstdlib>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <httplib.h>

#include "sync/identity/request_signature.h"
#include "sync/link/retry.h"

#include "tests/support/running_peer.h"

namespace ledgerboard::sync {
namespace {

using testing::HasSubstr;
using testing::Not;
using tests::RunningPeer;
using tests::sharedChance;

const Grant kOwner{model::Role::Owner, {}, {}};

LinkIdentity newDevice(std::uint64_t seed) {
    return {RunningPeer::deviceId(seed), DeviceKey::fresh(sharedChance(seed))};
}

TEST(Joining, WorksByPictureAndByTypedCode) {
    RunningPeer peer;
    const Grant lead{model::Role::CrewLead, RunningPeer::deviceId(50), {}};
    const auto first = peer.invitations.invite(lead, peer.clock.now()).value();
    const auto one = newDevice(1);
    const auto joined = join(peer.place, first, peer.certificate.digest, one, peer.surroundings(1));
    ASSERT_TRUE(joined.ok()) << joined.error().message;
    EXPECT_EQ(joined.value().grant, lead);
    EXPECT_EQ(peer.devices->find(one.device).value()->grant, lead);

    const auto second = peer.invitations.invite(kOwner, peer.clock.now()).value();
    const auto two = newDevice(2);
    const auto typed = join(peer.place, second, std::nullopt, two, peer.surroundings(2));
    ASSERT_TRUE(typed.ok()) << typed.error().message;
    EXPECT_EQ(typed.value().certificate, peer.certificate.digest);  // found out, then proven
    Link link(peer.place, typed.value().certificate, two, peer.surroundings(2));
    EXPECT_EQ(link.call(Call::Hello, "hi").body, "hello " + two.device.hex() + " hi");
}

TEST(Joining, IsRefusedWithItsOwnWords) {
    RunningPeer peer;
    const auto code = peer.invitations.invite(kOwner, peer.clock.now()).value();
    const auto other = PairingCode::fresh(sharedChance(77));
    const auto ask = [&](const PairingCode& with, std::uint64_t seed) {
        const auto joined = join(peer.place, with, peer.certificate.digest, newDevice(seed),
                                 peer.surroundings(seed));
        return joined.ok() ? "joined" : joined.error().message;
    };
    EXPECT_EQ(ask(other, 1), textOf(Refusal::NoInvitation));
    EXPECT_EQ(ask(code, 1), "joined");
    EXPECT_EQ(ask(code, 2), textOf(Refusal::InvitationTaken));
    const auto late = peer.invitations.invite(kOwner, peer.clock.now()).value();
    peer.clock.step(kInvitationMs + 1);
    EXPECT_EQ(ask(late, 3), textOf(Refusal::InvitationOver));
    // The same id with another key, as after a restored backup or by somebody else.
    const auto fresh = peer.invitations.invite(kOwner, peer.clock.now()).value();
    const auto joined = join(peer.place, fresh, peer.certificate.digest,
                             {newDevice(1).device, newDevice(9).key}, peer.surroundings(9));
    EXPECT_EQ(joined.error().message, textOf(Refusal::DeviceTaken));
    EXPECT_EQ(peer.devices->size(), 1u);
}

TEST(Joining, EndsAfterFiveGuesses) {
    RunningPeer peer;
    const auto code = peer.invitations.invite(kOwner, peer.clock.now()).value();
    // The right handle and another secret: the first four characters are no secret.
    PairingCode guess = code;
    std::uint64_t seed = 1;
    while (guess == code) {
        std::string text = PairingCode::fresh(sharedChance(seed++)).plain();
        text.replace(0, PairingCode::kHandle, code.handle());
        for (const char c : std::string_view("0123456789ABCDEFGHJKMNPQRSTVWXYZ")) {
            text.back() = c;
            if (const auto parsed = PairingCode::parse(text); parsed.ok()) {
                guess = parsed.value();
            }
        }
    }
    const auto device = newDevice(1);
    for (int k = 0; k < kMostPairingTries; ++k) {
        const auto joined =
            join(peer.place, guess, peer.certificate.digest, device, peer.surroundings(1));
        EXPECT_EQ(joined.error().message, textOf(Refusal::WrongCode));
    }
    const auto joined =
        join(peer.place, code, peer.certificate.digest, device, peer.surroundings(1));
    EXPECT_EQ(joined.error().message, textOf(Refusal::TriesUsedUp));
    EXPECT_EQ(peer.devices->size(), 0u);
}

// Passes every word on between a device and the real peer, with a certificate of its own.
TEST(Joining, FailsThroughSomebodyInBetween) {
    RunningPeer real;
    RunningPeer between({}, kPeerName, 17);
    const auto code = real.invitations.invite(kOwner, real.clock.now()).value();
    const auto device = newDevice(1);
    const auto seen = seenCertificate(between.place);
    ASSERT_TRUE(seen.ok());
    EXPECT_EQ(seen.value(), between.certificate.digest);
    Nonce nonce{};
    const auto request = makePairingRequest(code, seen.value(), device.device, device.key, nonce);
    PeerClient onward(real.place, real.certificate.digest);
    EXPECT_THAT(onward.post("/1/pair", {}, toJson(request)).body, HasSubstr("wrong-code"));
    // And one who answers by himself does not know the code.
    const auto joined = join(between.place, code, std::nullopt, device, between.surroundings(1));
    EXPECT_FALSE(joined.ok());
    EXPECT_EQ(real.devices->size(), 0u);
}

TEST(Pin, LetsNobodyElseIn) {
    RunningPeer peer;
    RunningPeer wrongName({}, "somebody-else", 17);
    const auto get = [](const Place& place, const Digest& pin) {
        return PeerClient(place, pin).get("/1/time").fault;
    };
    EXPECT_EQ(get(peer.place, peer.certificate.digest), Fault::None);
    // Another key under the right name.
    EXPECT_EQ(get(peer.place, wrongName.certificate.digest), Fault::NotThePeer);
    EXPECT_EQ(get(peer.place, Digest{}), Fault::NotThePeer);
    // The pinned certificate itself, made out to another name.
    EXPECT_EQ(get(wrongName.place, wrongName.certificate.digest), Fault::NotThePeer);
    EXPECT_EQ(get({"127.0.0.1", 1}, peer.certificate.digest), Fault::Unreachable);
    EXPECT_EQ(get({"no.such.host.invalid", 1}, peer.certificate.digest), Fault::Unreachable);
}

// The library alone, as somebody might use it who leaves the pin out.
TEST(Pin, IsNeededByTheLibraryToo) {
    RunningPeer peer;
    httplib::SSLClient named("ledgerboard-peer", peer.place.port);
    named.set_hostname_addr_map({{"ledgerboard-peer", "127.0.0.1"}});
    EXPECT_EQ(named.Get("/1/time").error(), httplib::Error::SSLServerVerification);
    httplib::SSLClient bare("127.0.0.1", peer.place.port);
    EXPECT_EQ(bare.Get("/1/time").error(), httplib::Error::SSLServerVerification);
}

// An authority that this computer trusts has no say. The library by itself would listen to it, even
// where it was given a store of its own: that is what the pin is judged by us for.
TEST(Pin, IsStrongerThanWhatThisComputerTrusts) {
    RunningPeer peer;
    const tests::TestFolder folder("trusted");
    std::ofstream(folder.file("trusted.pem")) << peer.certificate.certificatePem;
    ASSERT_EQ(::setenv("SSL_CERT_FILE", folder.file("trusted.pem").c_str(), 1), 0);
    httplib::SSLClient library("ledgerboard-peer", peer.place.port);
    library.set_hostname_addr_map({{"ledgerboard-peer", "127.0.0.1"}});
    library.set_ca_cert_store(X509_STORE_new());  // an empty one: trusts nobody
    EXPECT_TRUE(library.Get("/1/time"));
    EXPECT_EQ(PeerClient(peer.place, Digest{}).get("/1/time").fault, Fault::NotThePeer);
    ::unsetenv("SSL_CERT_FILE");
}

TEST(Calls, AreAnsweredForWhoSignedThem) {
    RunningPeer peer;
    const auto device = peer.admit(1);
    Link link = peer.link(device);
    for (const Call call : {Call::Hello, Call::Push, Call::Pull, Call::Snapshot, Call::PhotoHave,
                            Call::PhotoPart, Call::Roster}) {
        const auto answer = link.call(call, "{}");
        EXPECT_TRUE(answer.ok()) << answer.message;
        EXPECT_EQ(answer.body, std::string(nameOf(call)) + " " + device.device.hex() + " {}");
    }
    const std::string large(kMostBodyBytes, 'x');
    EXPECT_TRUE(link.call(Call::Push, large).ok());
    EXPECT_EQ(link.call(Call::Push, large + "x").status, 413);
    peer.handler.padding = kMostReplyBytes;
    EXPECT_EQ(link.call(Call::Pull, "").status, 500);  // the peer keeps to its own limit
}

TEST(Calls, AreRefusedWithTheirOwnCode) {
    RunningPeer peer;
    const auto known = peer.admit(1);
    const auto refusalOf = [&](const LinkIdentity& identity) {
        Link link(peer.place, peer.certificate.digest, identity, peer.surroundings(3), {1});
        return link.call(Call::Pull, "{}").refusal;
    };
    EXPECT_EQ(refusalOf(newDevice(2)), Refusal::Unknown);
    EXPECT_EQ(refusalOf({known.device, newDevice(2).key}), Refusal::Forged);
    ASSERT_TRUE(peer.devices->revoke(known.device, peer.clock.now()).value());
    EXPECT_EQ(refusalOf(known), Refusal::Revoked);
    EXPECT_EQ(peer.handler.calls, 0);
    PeerClient client(peer.place, peer.certificate.digest);
    EXPECT_THAT(client.post("/1/pull", {}, "{}").body, HasSubstr("malformed"));
}

// Plays back what a device sent, byte for byte or with another body.
TEST(Calls, CanNotBePlayedBack) {
    RunningPeer peer;
    const auto device = peer.admit(1);
    Nonce nonce{};
    nonce[0] = 1;
    const auto headers = signRequest({"POST", "/1/push", peer.certificate.digest}, "{}", device.key,
                                     device.device, peer.clock.now(), nonce);
    const PeerClient::Headers sent = {{kDeviceHeader, headers.device},
                                      {kTimeHeader, headers.time},
                                      {kNonceHeader, headers.nonce},
                                      {kDigestHeader, headers.digest},
                                      {kSignatureHeader, headers.signature}};
    PeerClient client(peer.place, peer.certificate.digest);
    EXPECT_THAT(client.post("/1/push", sent, "[]").body, HasSubstr("altered"));
    EXPECT_EQ(peer.handler.calls, 0);
    nonce[0] = 2;
    const auto again = signRequest({"POST", "/1/push", peer.certificate.digest}, "{}", device.key,
                                   device.device, peer.clock.now(), nonce);
    const PeerClient::Headers resent = {{kDeviceHeader, again.device},
                                        {kTimeHeader, again.time},
                                        {kNonceHeader, again.nonce},
                                        {kDigestHeader, again.digest},
                                        {kSignatureHeader, again.signature}};
    EXPECT_EQ(client.post("/1/push", resent, "{}").status, 200);
    const auto replayed = client.post("/1/push", resent, "{}");
    EXPECT_EQ(replayed.status, 401);
    EXPECT_THAT(replayed.body, HasSubstr("replayed"));
    EXPECT_THAT(client.post("/1/pull", resent, "{}").body, HasSubstr("forged"));
    EXPECT_EQ(peer.handler.calls, 1);
}

TEST(Calls, GoByThePeersClock) {
    RunningPeer peer;
    const auto device = peer.admit(1);
    auto around = peer.surroundings(1);
    around.now = [&] {  // a phone that is a day behind
        return model::Instant::fromMilliseconds(peer.clock.now().milliseconds() - 86'400'000);
    };
    Link link(peer.place, peer.certificate.digest, device, around);
    EXPECT_TRUE(link.call(Call::Pull, "{}").ok());  // refused once as expired, then by the offset
    EXPECT_EQ(link.offsetMs(), 86'400'000);
    const int calls = peer.handler.calls;
    EXPECT_TRUE(link.call(Call::Pull, "{}").ok());
    EXPECT_EQ(peer.handler.calls, calls + 1);
}

TEST(Calls, AreTriedAgainWhereThatHelps) {
    RunningPeer peer;
    const auto device = peer.admit(1);
    Link link = peer.link(device);
    peer.handler.status = 503;
    EXPECT_EQ(link.call(Call::Pull, "{}").status, 503);
    EXPECT_EQ(peer.handler.calls, RetryRules{}.tries);
    EXPECT_GE(peer.waitedMs, (RetryRules{}.tries - 1) * 1'000);  // Retry-After: 1, each time
    peer.handler.status = 409;
    peer.handler.calls = 0;
    EXPECT_EQ(link.call(Call::Pull, "{}").status, 409);
    EXPECT_EQ(peer.handler.calls, 1);
    peer.handler.status = 200;
    peer.stop();
    EXPECT_EQ(link.call(Call::Pull, "{}").fault, Fault::Unreachable);
}

TEST(Calls, TellNothingOfAnException) {
    RunningPeer peer;
    Link link = peer.link(peer.admit(1));
    peer.handler.throws = true;
    const auto answer = link.call(Call::Pull, "{}");
    EXPECT_EQ(answer.status, 500);
    EXPECT_THAT(answer.message, Not(HasSubstr("105000")));
    peer.stop();
    EXPECT_THAT(peer.logged(), Not(HasSubstr("105000")));
}

TEST(Busy, PeersTellToComeBackAndAreObeyed) {
    GuardLimits limits;
    limits.connections = {4, 2, 1, 8};
    RunningPeer peer(limits);
    peer.handler.holdMs = 30;
    std::vector<std::thread> threads;
    std::atomic<int> done{0};
    std::vector<LinkIdentity> identities;
    for (std::uint64_t k = 1; k <= 8; ++k) {
        identities.push_back(peer.admit(k));
    }
    for (std::uint64_t k = 1; k <= 8; ++k) {
        threads.emplace_back([&, k] {
            Link link(peer.place, peer.certificate.digest, identities[k - 1], peer.surroundings(k),
                      {100});
            done += link.call(Call::Push, "{}").ok() ? 1 : 0;
        });
    }
    for (auto& thread : threads) {
        thread.join();
    }
    EXPECT_EQ(done, 8);
    peer.stop();
    EXPECT_THAT(peer.logged(), HasSubstr(R"("code":"busy")"));
}

// More devices behind one address than strangers may be: each is done within its tries.
TEST(Busy, AHundredDevicesAtOnceAreAllAnswered) {
    if (std::getenv("LEDGERBOARD_LONG") == nullptr) {
        GTEST_SKIP() << "LEDGERBOARD_LONG=1 runs it";
    }
    RunningPeer peer;
    std::vector<LinkIdentity> identities;
    for (std::uint64_t k = 1; k <= 100; ++k) {
        identities.push_back(peer.admit(k));
    }
    std::atomic<int> done{0};
    std::vector<std::thread> threads;
    for (std::uint64_t k = 1; k <= 100; ++k) {
        threads.emplace_back([&, k] {
            auto around = peer.surroundings(k);
            around.wait = [](int ms) {
                std::this_thread::sleep_for(std::chrono::milliseconds(ms));
            };
            Link link(peer.place, peer.certificate.digest, identities[k - 1], around);
            bool good = true;
            for (int call = 0; call < 3; ++call) {
                good = link.call(Call::Push, "{}").ok() && good;
            }
            done += good ? 1 : 0;
        });
    }
    for (auto& thread : threads) {
        thread.join();
    }
    EXPECT_EQ(done, 100);
    EXPECT_GE(peer.handler.calls, 300);
}

TEST(Busy, OneDeviceHoldsSoManyConnections) {
    GuardLimits limits;
    limits.connections.perDevice = 1;
    RunningPeer peer(limits);
    const auto device = peer.admit(1);
    Link first = peer.link(device);
    EXPECT_TRUE(first.call(Call::Hello, "").ok());  // and its connection is kept
    Link second(peer.place, peer.certificate.digest, device, peer.surroundings(2), {1});
    EXPECT_EQ(second.call(Call::Hello, "").status, 503);
    EXPECT_TRUE(first.call(Call::Hello, "").ok());
}

TEST(Stopping, AnswersWhatIsUnderWayAndEndsSoon) {
    RunningPeer peer;
    const auto device = peer.admit(1);
    Link idle = peer.link(peer.admit(2), 2);
    EXPECT_TRUE(idle.call(Call::Hello, "").ok());
    peer.handler.holdMs = 300;
    LinkAnswer answer;
    std::thread asking([&] {
        Link link(peer.place, peer.certificate.digest, device, peer.surroundings(1), {1});
        answer = link.call(Call::Push, "{}");
    });
    while (peer.handler.calls < 2) {
        std::this_thread::sleep_for(std::chrono::milliseconds(5));
    }
    const auto begun = std::chrono::steady_clock::now();
    peer.stop();
    asking.join();
    EXPECT_TRUE(answer.ok()) << answer.message;
    EXPECT_LT(std::chrono::steady_clock::now() - begun, std::chrono::seconds(4));
}

TEST(Retry, WaitsLongerEachTimeAndAsAsked) {
    const RetryRules rules{8, 250, 15'000};
    // By hand: the whole is 250 doubled each time, capped at 15,000; the wait half of it or more.
    EXPECT_EQ(waitBeforeRetryMs(rules, 1, 0, 0), 125);
    EXPECT_EQ(waitBeforeRetryMs(rules, 1, 0, 125), 250);
    EXPECT_EQ(waitBeforeRetryMs(rules, 1, 0, 126), 125);
    EXPECT_EQ(waitBeforeRetryMs(rules, 4, 0, 0), 1'000);
    EXPECT_EQ(waitBeforeRetryMs(rules, 7, 0, 0), 7'500);
    EXPECT_EQ(waitBeforeRetryMs(rules, 1'000'000, 0, 7'500), 15'000);
    EXPECT_EQ(waitBeforeRetryMs(rules, 1, 3, 0), 3'125);
    EXPECT_EQ(waitBeforeRetryMs(rules, 1, 1'000'000, 0), 300'125);
}

}  // namespace
}  // namespace ledgerboard::sync
