// Protects: a device is told to come again (503, Retry-After) where another program writes to the
// peer's book for longer than the peer waits, and not that the peer cannot do it; afterwards the
// same call goes well. How: the real server and the real handler, a book in a file, and a second
// connection to it that holds the lock.
#include "sync/peer/book_handler.h"

#include <gtest/gtest.h>

#include "core/store/database.h"
#include "sync/identity/request_signature.h"
#include "sync/link/peer_client.h"
#include "sync/wire/messages.h"

#include "tests/support/books.h"
#include "tests/support/running_peer.h"

namespace ledgerboard::sync {
namespace {

constexpr int kShortMs = 20;

// A peer over a book of its own, and one device of the book's owner.
class BookHandlerTest : public testing::Test {
  protected:
    BookHandlerTest() {
        clock_.step(1'000);  // past what the nonces refuse
        mustBe(handler_->welcome({device_, kOwner, {}}, clock_.now()));
        mustBe(devices_->admit(device_, key_.publicKey(), kOwner, clock_.now()));
        place_ = {"127.0.0.1", mustBe(server_->open("127.0.0.1", 0))};
        thread_ = std::thread([this] { server_->run(); });
    }

    ~BookHandlerTest() override {
        server_->stop();
        thread_.join();
    }

    ClientAnswer call(Call call, const std::string& body) {
        Nonce nonce{};
        random_(nonce.data(), nonce.size());
        const auto headers = signRequest({"POST", pathOf(call), certificate_.digest}, body, key_,
                                         device_, clock_.now(), nonce);
        return PeerClient(place_, certificate_.digest)
            .post(std::string(pathOf(call)),
                  {{kDeviceHeader, headers.device},
                   {kTimeHeader, headers.time},
                   {kNonceHeader, headers.nonce},
                   {kDigestHeader, headers.digest},
                   {kSignatureHeader, headers.signature}},
                  body);
    }

    // What `call` is answered while another program writes to the book.
    ClientAnswer callMeanwhile(Call what, const std::string& body) {
        auto other = mustBe(tests::openBook(path_, random_));
        ClientAnswer answer;
        const auto done = store::SyncBook(other).whole([&] {
            answer = call(what, body);
            return false;
        });
        EXPECT_TRUE(done.ok());
        return answer;
    }

    template <class T>
    static T mustBe(model::Result<T> result) {
        return tests::mustBe(std::move(result));
    }

    static inline const Grant kOwner{model::Role::Owner, {}, {}};

    tests::TestFolder folder_{"book-handler"};
    tests::HandClock clock_;
    model::FillRandom random_ = tests::sharedChance(3);
    const std::string path_ = folder_.file("house.book");
    store::Book book_ = mustBe(tests::createBook(path_, "Owner", clock_.now(), random_));
    Certificate certificate_ = mustBe(makeCertificate(clock_.now(), random_, kPeerName));
    std::unique_ptr<PairedDevices> devices_ = mustBe(PairedDevices::open(path_ + ".devices"));
    Invitations invitations_{certificate_.digest, random_};
    RecentNonces nonces_{clock_.now()};
    std::ostringstream words_;
    EventLog log_{words_};
    std::unique_ptr<BookHandler> handler_ =
        mustBe(BookHandler::make({book_, *devices_, invitations_, random_, kShortMs}));
    std::unique_ptr<PeerServer> server_ = mustBe(PeerServer::make({certificate_,
                                                                   *devices_,
                                                                   invitations_,
                                                                   nonces_,
                                                                   *handler_,
                                                                   log_,
                                                                   [this] { return clock_.now(); },
                                                                   {}}));
    model::RawId device_ = tests::RunningPeer::deviceId(5);
    DeviceKey key_ = DeviceKey::fresh(random_);
    Place place_;
    std::thread thread_;
};

TEST_F(BookHandlerTest, WhoMeetsAnotherWriterIsToldToComeAgain) {
    const std::string hello = write(HelloAsk{});
    const ClientAnswer answer = callMeanwhile(Call::Hello, hello);
    EXPECT_EQ(answer.status, 503);
    EXPECT_EQ(answer.retryAfterSeconds, kRetryAfterSeconds);
    EXPECT_NE(answer.body.find("unready"), std::string::npos) << answer.body;
    const ClientAnswer after = call(Call::Hello, hello);
    EXPECT_EQ(after.status, 200) << after.body;
}

TEST_F(BookHandlerTest, SoIsWhoPushesOrPulls) {
    store::Entry entry;
    entry.name = {device_, store::Lane::OwnerOnly, 1};
    entry.clock = model::HybridClock::endOf(clock_.now());
    entry.record = tests::RunningPeer::deviceId(6);
    entry.field = model::field::Price::object;
    entry.value = std::string("door");
    const std::string push = write(PushAsk{{entry}});
    EXPECT_EQ(callMeanwhile(Call::Push, push).status, 503);
    EXPECT_EQ(call(Call::Push, push).status, 200);
    EXPECT_EQ(callMeanwhile(Call::Pull, write(PullAsk{})).status, 503);
    EXPECT_EQ(call(Call::Pull, write(PullAsk{})).status, 200);
}

// The rest stays what it was: what would fail again is no reason to come again.
TEST_F(BookHandlerTest, ABookOfAnotherVersionIsNoReasonToComeAgain) {
    EXPECT_EQ(callMeanwhile(Call::Hello, write(HelloAsk{})).status, 503);
    store::Taking taking;
    taking.remember = {{"catalog", std::string("of a newer version")}};
    ASSERT_TRUE(store::SyncBook(book_).take(taking).ok());
    EXPECT_EQ(call(Call::Hello, write(HelloAsk{})).status, 500);
}

}  // namespace
}  // namespace ledgerboard::sync
