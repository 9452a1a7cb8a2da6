// Protects: the real program, over TLS on loopback, against what was seen to bring the HTTP library
// down: each attack is refused with its own status, little of it is taken in, honest callers are
// answered meanwhile, and memory, measured after each, stays small. The long ones run where
// LEDGERBOARD_LONG=1.
//
// Nothing here is timed: a test waits for what the peer does (an answer, an end, a line of its
// log), and what must not depend on the peer's patience is told by what was still open at that
// moment. So a busy computer makes it slower and nothing else.
#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <memory>
#include <thread>

#include "tests/attacks/raw_caller.h"
#include "tests/support/peer_process.h"

namespace ledgerboard::tests {
namespace {

using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

#ifndef __has_feature  // clang's way to say what g++ says by macros
#define __has_feature(x) 0
#endif
#if defined(__SANITIZE_THREAD__) || defined(__SANITIZE_ADDRESS__) || \
    __has_feature(thread_sanitizer) || __has_feature(address_sanitizer)
constexpr bool kMemoryTells = false;  // the sanitizer's own memory would be measured
#else
constexpr bool kMemoryTells = true;
#endif

#if defined(__SANITIZE_THREAD__) || __has_feature(thread_sanitizer)
constexpr long kSanitizerThreads = 1;  // the sanitizer's own, in the peer
#else
constexpr long kSanitizerThreads = 0;
#endif

constexpr std::size_t kMiB = std::size_t{1} << 20;
// More than the kernel holds for a connection under way (tcp_wmem and tcp_rmem of tcp(7), 4 and 6
// MiB at most) and what the peer throws away at closing: whoever sent more was read from on and on.
constexpr std::size_t kMostUnread = 16 * kMiB;
constexpr const char* kHealth = "GET /1/health HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n";

// The head of a request to `path` with more `headers`.
std::string post(const std::string& path, const std::string& headers) {
    return "POST " + path + " HTTP/1.1\r\nHost: x\r\nConnection: close\r\n" + headers + "\r\n";
}

class Attacks : public testing::Test {
  protected:
    explicit Attacks(const std::vector<std::string>& options = {}) : peer_(options) {
        EXPECT_TRUE(isWell());
        before_ = peer_.mostMemoryKib();
    }

    // Whatever happened: it runs, answers, and holds little. Memory is that of proc(5), in KiB.
    void TearDown() override {
        ASSERT_TRUE(peer_.isRunning());
        EXPECT_TRUE(isWell());
        const long after = peer_.mostMemoryKib();
        std::printf("    memory: %ld KiB before, at most %ld KiB since\n", before_, after);
        if (kMemoryTells) {
            EXPECT_LT(after - before_, 13 * 1024);
            EXPECT_LT(after, 40 * 1024);
        }
        EXPECT_EQ(peer_.stop(), 0);
    }

    [[nodiscard]] bool isWell() const {
        RawCaller honest(peer_.place());
        return honest.ask(kHealth).find(R"({"well":true})") != std::string::npos;
    }

    [[nodiscard]] std::string answerTo(const std::string& bytes) const {
        RawCaller caller(peer_.place());
        return caller.ask(bytes);
    }

    // How many of `callers` the peer has not ended yet.
    static std::size_t openOf(const std::vector<std::unique_ptr<RawCaller>>& callers) {
        return static_cast<std::size_t>(
            std::count_if(callers.begin(), callers.end(),
                          [](const auto& caller) { return !caller->isEndedWithin(0); }));
    }

    // Sends a byte to each every `everyMs`; whether the peer ends them all in spite of it.
    static bool areEndedWhile(const std::vector<std::unique_ptr<RawCaller>>& dripping,
                              int everyMs) {
        for (int ms = 0; ms < kPatienceMs; ms += everyMs) {
            bool anyOpen = false;
            for (const auto& caller : dripping) {
                anyOpen = caller->send("G", 0) || anyOpen;
            }
            if (!anyOpen) {
                return true;
            }
            std::this_thread::sleep_for(std::chrono::milliseconds(everyMs));
        }
        return false;
    }

    void awaitThreads(long most) const {
        for (int ms = 0; ms < kPatienceMs && peer_.threads() > most; ms += 20) {
            std::this_thread::sleep_for(std::chrono::milliseconds(20));
        }
    }

    PeerProcess peer_;
    long before_ = 0;
};

TEST_F(Attacks, ChunkedBodyOf200MiB) {
    RawCaller caller(peer_.place());
    ASSERT_TRUE(caller.send(post("/1/pair", "Transfer-Encoding: chunked\r\n")));
    const std::string chunk = "10000\r\n" + std::string(0x10000, 'x') + "\r\n";
    EXPECT_LT(caller.flood(chunk, 200 * kMiB), kMostUnread);
    EXPECT_THAT(answerTo(post("/1/pair", "Transfer-Encoding: chunked\r\n") + chunk),
                StartsWith("HTTP/1.1 411"));
}

TEST_F(Attacks, ChunkOfSizeMinusTwo) {
    EXPECT_THAT(answerTo(post("/1/pair", "Transfer-Encoding: chunked\r\n") + "-2\r\nxx\r\n"),
                StartsWith("HTTP/1.1 411"));
    EXPECT_THAT(answerTo(post("/1/pair", "Content-Length: -2\r\n")), StartsWith("HTTP/1.1 400"));
}

TEST_F(Attacks, EndlessRequestLine) {
    RawCaller caller(peer_.place());
    ASSERT_TRUE(caller.send("GET /"));
    EXPECT_LT(caller.flood(std::string(0x10000, 'a'), 200 * kMiB), kMostUnread);
    EXPECT_THAT(answerTo("GET /" + std::string(20'000, 'a')), StartsWith("HTTP/1.1 431"));
}

TEST_F(Attacks, EndlessHeaderLine) {
    RawCaller caller(peer_.place());
    ASSERT_TRUE(caller.send("GET /1/health HTTP/1.1\r\nHost: x\r\nX: "));
    EXPECT_LT(caller.flood(std::string(0x10000, 'a'), 200 * kMiB), kMostUnread);
    EXPECT_THAT(answerTo("GET /1/health HTTP/1.1\r\nX: " + std::string(20'000, 'a')),
                StartsWith("HTTP/1.1 431"));
}

TEST_F(Attacks, MillionHeaders) {
    std::string thousand;
    for (int k = 0; k < 1'000; ++k) {
        thousand += "X: y\r\n";
    }
    RawCaller caller(peer_.place());
    ASSERT_TRUE(caller.send("GET /1/health HTTP/1.1\r\n"));
    EXPECT_LT(caller.flood(thousand, 200 * kMiB), kMostUnread);
    EXPECT_THAT(answerTo("GET /1/health HTTP/1.1\r\n" + thousand + thousand + thousand),
                StartsWith("HTTP/1.1 431"));
}

TEST_F(Attacks, CompressedBody) {
    // What would unfold to 200 MiB is never unfolded: it is refused by its head.
    for (const auto* coding : {"gzip", "br", "deflate", "gzip, identity"}) {
        const std::string head = post(
            "/1/pair", "Content-Encoding: " + std::string(coding) + "\r\nContent-Length: 20\r\n");
        EXPECT_THAT(answerTo(head + std::string("\x1f\x8b\x08\0\0\0\0\0\0\x03", 10) +
                             std::string(10, '\0')),
                    StartsWith("HTTP/1.1 415"));
    }
}

TEST_F(Attacks, RangesThatARegularExpressionWouldChokeOn) {
    std::string ranges = "bytes=0-0";
    while (ranges.size() < 16'000) {
        ranges += ",0-0";
    }
    EXPECT_THAT(answerTo("GET /1/health HTTP/1.1\r\nHost: x\r\nConnection: close\r\nRange: " +
                         ranges + "\r\n\r\n"),
                StartsWith("HTTP/1.1 200"));
}

TEST_F(Attacks, AddressSentByTheCaller) {
    EXPECT_THAT(answerTo(post("/1/pair",
                              "REMOTE_ADDR: 10.9.8.7\r\nX-Forwarded-For: 10.9.8.7\r\n"
                              "Content-Length: 2\r\n") +
                         "{}"),
                HasSubstr("malformed"));
    EXPECT_THAT(peer_.logged(),
                HasSubstr(R"("call":"pair","code":"malformed","address":"127.0.0.1")"));
    EXPECT_THAT(peer_.logged(), Not(HasSubstr("10.9.8.7")));
}

TEST_F(Attacks, BodiesOfStrangersAreNotTakenIn) {
    // Fifty announce a whole body each and send it: refused by their heads, unread. With those
    // below they are fewer than one address may hold, however late the peer notices that some have
    // gone.
    std::vector<std::unique_ptr<RawCaller>> callers;
    const std::string body(kMiB, 'x');
    for (int k = 0; k < 50; ++k) {
        callers.push_back(std::make_unique<RawCaller>(peer_.place()));
        callers.back()->send(post("/1/push", "Content-Length: 1048576\r\n") + body, 200);
    }
    EXPECT_THAT(callers.back()->receive(), HasSubstr("malformed"));
    EXPECT_THAT(answerTo(post("/1/push", "Content-Length: 1048577\r\n")),
                StartsWith("HTTP/1.1 413"));
    EXPECT_THAT(answerTo(post("/1/pair", "Content-Length: 4097\r\n")), StartsWith("HTTP/1.1 413"));
    EXPECT_THAT(answerTo(post("/1/pair", "Content-Length: 20000\r\n") + "{}"),
                StartsWith("HTTP/1.1 413"));
}

TEST_F(Attacks, DeepJson) {
    const std::string deep(4'096, '[');
    EXPECT_THAT(answerTo(post("/1/pair", "Content-Length: 4096\r\n") + deep),
                HasSubstr("malformed"));
}

TEST_F(Attacks, NoTlsOrAnOldOne) {
    RawCaller plain(peer_.place(), 0);
    EXPECT_THAT(plain.ask(kHealth), Not(HasSubstr("well")));
    EXPECT_FALSE(RawCaller(peer_.place(), TLS1_2_VERSION).isConnected());
    EXPECT_THAT(peer_.logged(), HasSubstr("no TLS handshake"));
}

TEST_F(Attacks, SlowCallersHoldUpNobody) {
    // Silent before the handshake, silent after it, and a byte now and then: 60 of one address.
    std::vector<std::unique_ptr<RawCaller>> silent;
    std::vector<std::unique_ptr<RawCaller>> dripping;
    for (int k = 0; k < 20; ++k) {
        silent.push_back(std::make_unique<RawCaller>(peer_.place(), 0));
        silent.push_back(std::make_unique<RawCaller>(peer_.place()));
        dripping.push_back(std::make_unique<RawCaller>(peer_.place()));
    }
    EXPECT_TRUE(isWell());
    // It was answered while more of them waited than a server with a few threads could hold.
    EXPECT_GT(openOf(silent) + openOf(dripping), 20U);
    // Each byte would start the library's own clock anew; ours runs on.
    EXPECT_TRUE(areEndedWhile(dripping, 200));
    for (auto& caller : silent) {
        EXPECT_TRUE(caller->isEndedWithin(kPatienceMs));
    }
}

// The limit is handed to the peer, so that the few it takes to reach it are still there then.
class AttacksByNumber : public Attacks {
  protected:
    static constexpr int kMost = 8;
    // One accepts, one waits for the signal to stop.
    static constexpr long kIdleThreads = 2 + kSanitizerThreads;

    AttacksByNumber() : Attacks({"--connections-per-address", std::to_string(kMost)}) {}
};

TEST_F(AttacksByNumber, MoreCallersThanThereIsRoomFor) {
    awaitThreads(kIdleThreads);  // the caller before has left
    std::vector<std::unique_ptr<RawCaller>> callers;
    for (int k = 0; k < kMost; ++k) {
        callers.push_back(std::make_unique<RawCaller>(peer_.place()));
        ASSERT_TRUE(callers.back()->isConnected()) << k;
    }
    const std::string busy = answerTo(kHealth);
    EXPECT_THAT(busy, StartsWith("HTTP/1.1 503"));
    EXPECT_THAT(busy, HasSubstr("Retry-After: 1"));
    EXPECT_THAT(peer_.logged(), Not(HasSubstr("too many connections")));
    // Beyond the 32 that are told so, connections end at once.
    std::vector<std::unique_ptr<RawCaller>> more;
    for (int k = 0; k < 40; ++k) {
        more.push_back(std::make_unique<RawCaller>(peer_.place(), 0));
    }
    EXPECT_TRUE(more.back()->isEndedWithin(kPatienceMs));
    EXPECT_THAT(peer_.logged(), HasSubstr("too many connections"));
    EXPECT_LE(peer_.threads(), kIdleThreads + kMost + 32);
    callers.clear();
    more.clear();
    awaitThreads(kIdleThreads);
}

TEST_F(Attacks, SlowBodiesAndEndlessKeyUpdates) {
    if (std::getenv("LEDGERBOARD_LONG") == nullptr) {
        GTEST_SKIP() << "LEDGERBOARD_LONG=1 runs it";
    }
    const auto begun = std::chrono::steady_clock::now();
    const auto seconds = [&] {
        return std::chrono::duration<double>(std::chrono::steady_clock::now() - begun).count();
    };
    RawCaller updating(peer_.place());
    ASSERT_TRUE(updating.send("G"));
    long updates = 0;
    while (updating.updateKeys() && seconds() < kPatienceMs / 1'000) {
        ++updates;
    }
    EXPECT_TRUE(updating.isEndedWithin(0));
    EXPECT_GT(updates, 0);
    // A body that announces much and comes slowly is ended as a whole, not byte by byte: its bytes
    // would last for half an hour. It has had the time it may take.
    const double half = seconds();
    RawCaller slow(peer_.place());
    ASSERT_TRUE(slow.send(post("/1/pair", "Content-Length: 4000\r\n")));
    while (slow.send("x", 0) && seconds() - half < 2 * kPatienceMs / 1'000) {
        std::this_thread::sleep_for(std::chrono::milliseconds(500));
    }
    EXPECT_TRUE(slow.isEndedWithin(0));
    EXPECT_GT(seconds() - half, 28);
}

}  // namespace
}  // namespace ledgerboard::tests
