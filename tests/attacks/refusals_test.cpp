// Protects: each request that is not as it should be is refused by the running peer with a code of
// its own, which stands in the answer and in the log, and leaves the peer's book as it was. How:
// requests are signed as a device signs them, then bent: played back, held back, cut, put in
// another order.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "sync/identity/request_signature.h"
#include "sync/wire/bounded_json.h"

#include "tests/attacks/device.h"
#include "tests/attacks/raw_caller.h"

namespace ledgerboard::tests {
namespace {

using testing::HasSubstr;

class Refused : public testing::Test {
  protected:
    void SetUp() override {
        laptop_ = join(peer_.code(), 1);
        const auto time = client_->get(std::string(sync::kTimePath));
        now_ = sync::readJson(time.body)->at("time").get<std::int64_t>();
    }

    struct Caller {
        model::RawId device;
        sync::DeviceKey key;
    };

    std::unique_ptr<Caller> join(const sync::PairingCode& code, std::uint64_t seed) {
        const auto chance = fixedChance(seed);
        auto caller = std::make_unique<Caller>(
            Caller{model::IdMaker(chance).next(clock_()), sync::DeviceKey::fresh(chance)});
        auto joined = sync::join(peer_.place(), code, std::nullopt, {caller->device, caller->key},
                                 {[this] { return clock_(); }, chance, [](int) {}});
        model::require(joined.ok(), "it joins");
        certificate_ = joined.value().certificate;
        client_ = std::make_unique<sync::PeerClient>(peer_.place(), certificate_);
        return caller;
    }

    sync::PeerClient::Headers sign(const Caller& caller, sync::Call call, const std::string& body,
                                   std::int64_t earlierMs = 0) {
        sync::Nonce nonce{};
        chance_(nonce.data(), nonce.size());
        const auto signedBy = sync::signRequest(
            {"POST", sync::pathOf(call), certificate_}, body, caller.key, caller.device,
            model::Instant::fromMilliseconds(now_ - earlierMs), nonce);
        return {{sync::kDeviceHeader, signedBy.device},
                {sync::kTimeHeader, signedBy.time},
                {sync::kNonceHeader, signedBy.nonce},
                {sync::kDigestHeader, signedBy.digest},
                {sync::kSignatureHeader, signedBy.signature}};
    }

    sync::ClientAnswer send(sync::Call call, const sync::PeerClient::Headers& headers,
                            const std::string& body) {
        return client_->post(std::string(sync::pathOf(call)), headers, body);
    }

    // The code in an answer, which must stand in the log too.
    std::string codeIn(const sync::ClientAnswer& answer) {
        const auto said = sync::readJson(answer.body);
        const std::string code = said ? sync::textAt(*said, "code").value_or("") : "";
        EXPECT_THAT(peer_.logged(), HasSubstr("\"code\":\"" + code + "\""));
        return code;
    }

    // By the laptop, which is an owner's.
    sync::PairingCode invitation(const nlohmann::json& grant) {
        const std::string body = grant.dump();
        const auto answer =
            send(sync::Call::Invite, sign(*laptop_, sync::Call::Invite, body), body);
        return sync::PairingCode::parse(
                   nlohmann::json::parse(answer.body).at("code").get<std::string>())
            .value();
    }

    std::string refused(const Caller& caller, const std::string& body, std::int64_t earlierMs) {
        return codeIn(
            send(sync::Call::Hello, sign(caller, sync::Call::Hello, body, earlierMs), body));
    }

    PeerProcess peer_;
    SteppingClock clock_;
    model::FillRandom chance_ = fixedChance(99);
    sync::Digest certificate_{};
    std::unique_ptr<sync::PeerClient> client_;
    std::unique_ptr<Caller> laptop_;
    std::int64_t now_ = 0;
    const std::string hello_ = sync::write(sync::HelloAsk{});
};

TEST_F(Refused, EachWithItsOwnCode) {
    // As it should be, first.
    const auto good = sign(*laptop_, sync::Call::Hello, hello_);
    EXPECT_EQ(send(sync::Call::Hello, good, hello_).status, 200);
    EXPECT_EQ(codeIn(send(sync::Call::Hello, good, hello_)), "replayed");
    // Held back on the way and let go later, in or out of its order.
    EXPECT_EQ(refused(*laptop_, hello_, 121'000), "expired");
    EXPECT_EQ(refused(*laptop_, hello_, -121'000), "expired");

    auto forged = sign(*laptop_, sync::Call::Hello, hello_);
    forged.back().second[0] = forged.back().second[0] == '0' ? '1' : '0';
    EXPECT_EQ(codeIn(send(sync::Call::Hello, forged, hello_)), "forged");
    // Signed for another call.
    EXPECT_EQ(codeIn(send(sync::Call::Pull, sign(*laptop_, sync::Call::Hello, hello_), hello_)),
              "forged");
    Caller stranger{model::IdMaker(chance_).next(clock_()), laptop_->key};
    EXPECT_EQ(refused(stranger, hello_, 0), "unknown");
    auto bare = sign(*laptop_, sync::Call::Hello, hello_);
    bare.pop_back();
    EXPECT_EQ(codeIn(send(sync::Call::Hello, bare, hello_)), "malformed");
}

TEST_F(Refused, WhatCameCutOrInAnotherOrderOrTooLarge) {
    const std::string swapped =
        hello_.substr(hello_.size() / 2) + hello_.substr(0, hello_.size() / 2);
    for (const auto& body : {hello_.substr(0, hello_.size() - 5), swapped, hello_ + " "}) {
        EXPECT_EQ(codeIn(send(sync::Call::Hello, sign(*laptop_, sync::Call::Hello, hello_), body)),
                  "altered");
    }
    const std::string large(sync::kMostBodyBytes + 1, 'x');
    EXPECT_EQ(codeIn(send(sync::Call::Push, sign(*laptop_, sync::Call::Push, large), large)),
              "too-large");
    // Signed, and no message all the same.
    for (const std::string body : {"{", "[]", R"({"ids":[],"entries":[[1,2]]})"}) {
        EXPECT_EQ(send(sync::Call::Push, sign(*laptop_, sync::Call::Push, body), body).status, 422)
            << body;
    }
    // Ended in the middle of its body: nothing is answered to, nothing is done.
    {
        RawCaller caller(peer_.place());
        std::string head = "POST /1/push HTTP/1.1\r\nHost: x\r\nContent-Length: 500\r\n";
        for (const auto& [name, value] : sign(*laptop_, sync::Call::Push, std::string(500, ' '))) {
            head += name + ": " + value + "\r\n";
        }
        ASSERT_TRUE(caller.send(head + "\r\n{\"ids\":"));
    }
    for (int ms = 0; ms < kPatienceMs &&
                     peer_.logged().find("cut or too slow within a request") == std::string::npos;
         ms += 20) {
        std::this_thread::sleep_for(std::chrono::milliseconds(20));
    }
    EXPECT_THAT(peer_.logged(), HasSubstr("cut or too slow within a request"));
    EXPECT_EQ(send(sync::Call::Hello, sign(*laptop_, sync::Call::Hello, hello_), hello_).status,
              200);
}

TEST_F(Refused, OfAnotherRoleOrShutOut) {
    Device owner(peer_, invitation({{"role", "owner"}}), 2);
    ASSERT_TRUE(owner.meet().ok());
    store::Action action("crew");
    const model::RawId crew = owner.book->newId(owner.stamp());
    action.set(crew, model::field::Crew::name, std::string("Tilers"));
    write(owner, action);
    meet(owner);
    const auto lead = join(owner.invite({{"role", "crew lead"}, {"crew", crew.hex()}}), 3);
    const std::string invite = R"({"role":"owner"})";
    const auto answer = send(sync::Call::Invite, sign(*lead, sync::Call::Invite, invite), invite);
    EXPECT_EQ(answer.status, 403);
    EXPECT_THAT(answer.body, HasSubstr("only an owner invites"));
    const auto photo = sync::write(sync::GetPhotoAsk{"", crew, 0, false});
    EXPECT_EQ(send(sync::Call::PhotoPart, sign(*lead, sync::Call::PhotoPart, photo), photo).status,
              404);
    meet(owner);
    store::Action revoke("revoke");
    revoke.set(lead->device, model::field::Device::revokedOn, std::int64_t{20'000});
    write(owner, revoke);
    meet(owner);
    EXPECT_EQ(refused(*lead, hello_, 0), "revoked");
}

}  // namespace
}  // namespace ledgerboard::tests
