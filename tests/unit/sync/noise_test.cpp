// Protects: whatever bytes come from outside, the readers before the exchange end, say yes or no,
// and a head that was let through means the same when it is read again. Good inputs are bent at
// random from a fixed seed; LEDGERBOARD_LONG=1 does a hundred times as many.
#include <array>
#include <cstdlib>
#include <gtest/gtest.h>
#include <random>
#include <set>

#include "sync/guard/request_head.h"
#include "sync/identity/invitation.h"
#include "sync/identity/pairing.h"

#include "tests/support/fixed_chance.h"

namespace ledgerboard::sync {
namespace {

constexpr std::uint32_t kSeed = 20'260'406;

int rounds() {
    return std::getenv("LEDGERBOARD_LONG") == nullptr ? 20'000 : 2'000'000;
}

// `text` with a few bytes changed, put in, taken out, doubled, or replaced by telling ones.
std::string bent(std::string text, std::mt19937& random) {
    static const std::array<std::string, 12> kTelling = {"\r\n",
                                                         "\r\n\r\n",
                                                         ":",
                                                         " ",
                                                         std::string(1, '\0'),
                                                         "Content-Length: 3\r\n",
                                                         "-1",
                                                         "\xff",
                                                         "Transfer-Encoding: chunked\r\n",
                                                         "{",
                                                         "\"",
                                                         "99999999999999999999"};
    const auto below = [&](std::size_t most) {
        return std::uniform_int_distribution<std::size_t>(0, most)(random);
    };
    for (std::size_t k = 0; k <= below(3); ++k) {
        const std::size_t at = below(text.size());
        switch (below(4)) {
            case 0:
                text.insert(at, kTelling[below(kTelling.size() - 1)]);
                break;
            case 1:
                text.erase(at, below(8));
                break;
            case 2:
                text.insert(at, text.substr(at, below(40)));
                break;
            default:
                if (at < text.size()) {
                    text[at] = static_cast<char>(below(255));
                }
        }
    }
    return text;
}

TEST(Noise, NeverGetsAHeadThroughThatMeansSomethingElse) {
    constexpr std::array<Route, 2> kRoutes = {{{"GET", "/1/time", 0}, {"POST", "/1/push", 1000}}};
    constexpr std::array<std::string_view, 1> kKept = {"Ledgerboard-Nonce"};
    const HeadRules rules{kRoutes, kKept};
    const std::string good =
        "POST /1/push HTTP/1.1\r\nHost: x\r\nContent-Length: 17\r\nLedgerboard-Nonce: 0aF9\r\n"
        "Connection: keep-alive\r\n\r\n";
    std::mt19937 random(kSeed);
    const std::set<int> known = {0, 400, 404, 405, 411, 413, 415, 417, 431, 505};
    int passed = 0;
    for (int k = 0; k < rounds(); ++k) {
        const std::string text = bent(good, random);
        const HeadVerdict verdict = readHead(text, rules);
        ASSERT_TRUE(known.contains(verdict.status)) << verdict.status << "\n" << text;
        if (verdict.status != 0) {
            continue;
        }
        ++passed;
        ASSERT_LE(verdict.head.bodyBytes, 1000u) << text;
        const HeadVerdict again = readHead(writeHead(verdict.head), rules);
        ASSERT_EQ(again.status, 0) << text;
        ASSERT_EQ(again.head.path, verdict.head.path) << text;
        ASSERT_EQ(again.head.bodyBytes, verdict.head.bodyBytes) << text;
        ASSERT_EQ(again.head.kept, verdict.head.kept) << text;
        ASSERT_EQ(again.head.close, verdict.head.close) << text;
    }
    EXPECT_GT(passed, rounds() / 100);  // else the noise would be too loud to tell anything
    EXPECT_LT(passed, rounds() * 9 / 10);
}

TEST(Noise, IsNoPairingAndNoInvitation) {
    const auto chance = tests::fixedChance(5);
    const auto code = PairingCode::fresh(chance);
    const DeviceKey key = DeviceKey::fresh(chance);
    const model::RawId device = model::RawId::parse("0196a0b1c2d37e4f8a5b6c7d8e9f0a1b").value();
    const auto request = makePairingRequest(code, {}, device, key, {});
    const std::string json = toJson(request);
    const std::string answer = toJson(PairingAnswer{{}, {}, device});
    const std::string picture = pictureText({code, {}, {"peer.example", 7440}});
    std::mt19937 random(kSeed);
    int readable = 0;
    for (int k = 0; k < rounds() / 4; ++k) {
        if (const auto read = readPairingRequest(bent(json, random))) {
            ++readable;
            // What proves is the request itself, bent where that means nothing.
            const bool proves = provesCode(*read, code, {}) && provesKey(*read, {});
            ASSERT_EQ(proves, toJson(*read) == json);
        }
        if (const auto read = readPairingAnswer(bent(answer, random))) {
            ASSERT_NE(read->grant.role, model::Role::Unset);
        }
        if (const auto read = parseInvitation(bent(picture, random)); read.ok()) {
            ASSERT_TRUE(parseInvitation(pictureText(read.value())).ok());
        }
        (void)parsePlace(bent("192.0.2.7:7440", random)).ok();
    }
    EXPECT_GT(readable, 100);
}

}  // namespace
}  // namespace ledgerboard::sync
