// Protects the page Devices: the peer is started and stopped as a process of its own, a way in is
// shown as picture and text, a device joins by it, is listed and shut out; where the peer listens
// is set and checked; a clash is settled.
#include <arpa/inet.h>
#include <netinet/in.h>
#include <sys/socket.h>
#include <unistd.h>

#include "core/store/sync_book.h"

#include "tests/desk/desk_test.h"
#include "tests/unit/cli/command_line.h"

namespace ledgerboard::ui {
namespace {

// A port that nobody listens on now.
int freePort() {
    const int one = ::socket(AF_INET, SOCK_STREAM, 0);
    sockaddr_in at{};
    at.sin_family = AF_INET;
    at.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    socklen_t size = sizeof at;
    EXPECT_EQ(::bind(one, reinterpret_cast<sockaddr*>(&at), sizeof at), 0);
    EXPECT_EQ(::getsockname(one, reinterpret_cast<sockaddr*>(&at), &size), 0);
    ::close(one);
    return ntohs(at.sin_port);
}

// Somebody else who listens on a port.
class Listener {
  public:
    Listener() : socket_(::socket(AF_INET, SOCK_STREAM, 0)) {
        sockaddr_in at{};
        at.sin_family = AF_INET;
        at.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
        socklen_t size = sizeof at;
        EXPECT_EQ(::bind(socket_, reinterpret_cast<sockaddr*>(&at), sizeof at), 0);
        EXPECT_EQ(::listen(socket_, 1), 0);
        EXPECT_EQ(::getsockname(socket_, reinterpret_cast<sockaddr*>(&at), &size), 0);
        port_ = ntohs(at.sin_port);
    }

    ~Listener() { ::close(socket_); }

    Listener(const Listener&) = delete;
    Listener& operator=(const Listener&) = delete;

    [[nodiscard]] int port() const { return port_; }

  private:
    int socket_;
    int port_ = 0;
};

class DevicesTest : public DeskTest {
  protected:
    std::string book_;

    Hand& openDevices(Laid laid = {}) {
        if (book_.empty()) {
            book_ = demo();
        }
        open(book_, laid).key(Qt::Key_4, Qt::AltModifier);
        return *hand_;
    }

    Hand& openWithPeer() {
        Laid laid;
        laid.peerProgram = QStringLiteral(LEDGERBOARD_PEER);
        laid.peerPort = freePort();
        return openDevices(laid);
    }
};

TEST_F(DevicesTest, ThePeerIsStartedADeviceJoinsAndIsShutOut) {
    Hand& hand = openWithPeer();
    EXPECT_TRUE(hand.says("This book has met no peer yet."));
    hand.key(Qt::Key_S, Qt::ControlModifier);
    ASSERT_TRUE(hand.wait([&] { return hand.says("The peer runs and has this book."); }))
        << hand.said("devicesRun").value(0).toStdString() << " "
        << hand.desk().notKeptText().toStdString();
    hand.settle();
    EXPECT_TRUE(hand.says("This book meets the peer at 127.0.0.1:"));
    EXPECT_EQ(hand.said("deviceName").size(), 1);
    EXPECT_TRUE(hand.said("deviceName").value(0).endsWith(" (this one)"));
    // A way in for the lead of the first crew.
    hand.click("guest", 1);
    hand.click("inviteLink");
    ASSERT_TRUE(hand.wait([&] { return !hand.all("inviteTyped", true).empty(); }));
    EXPECT_TRUE(hand.said("inviteText").value(0).startsWith("For the lead of "));
    EXPECT_FALSE(hand.all("inviteQr", true).empty());
    const QString typed = hand.said("inviteTyped").value(0);
    const std::string address = typed.section("address ", 1).section(',', 0, 0).toStdString();
    const std::string code = typed.section("code ", 1).toStdString();
    const std::string phone = folder_.file("phone.book");
    const cli::Answer joined = cli::CommandLine(phone, 77)({"join", address, code});
    ASSERT_EQ(joined.status, 0) << joined.err;
    hand.click("putAway");
    EXPECT_TRUE(hand.all("inviteQr", true).empty());
    hand.key(Qt::Key_M, Qt::ControlModifier);
    ASSERT_TRUE(hand.wait([&] { return hand.said("deviceName").size() == 2; }));
    hand.settle();
    EXPECT_TRUE(hand.says("crew lead"));
    // Shut out, asked twice.
    const bool isFirst = hand.said("deviceName").value(0).endsWith(" (this one)");
    hand.click("deviceName", isFirst ? 1 : 0);
    hand.key(Qt::Key_Delete);
    EXPECT_FALSE(hand.says("shut out")) << "not at the first key";
    hand.key(Qt::Key_Delete);
    ASSERT_TRUE(hand.wait([&] { return hand.says("Its copy is wiped when it next calls."); }))
        << hand.desk().notKeptText().toStdString();
    hand.settle();
    EXPECT_TRUE(hand.wait([&] { return hand.says("shut out"); }));
    EXPECT_NE(cli::CommandLine(phone, 78)({"sync"}).status, 0) << "the peer lets it in no more";
    // Stopped, the book's own list stands, with the reason.
    hand.key(Qt::Key_S, Qt::ControlModifier);
    ASSERT_TRUE(hand.wait([&] { return !hand.said("devicesWhy").value(0).isEmpty(); }));
    EXPECT_TRUE(hand.says("It does not run on this computer now."));
}

TEST_F(DevicesTest, WhereItListensIsSetAndATakenPortIsTold) {
    const Listener other;
    Hand& hand = openWithPeer();
    const auto port = [&](const QString& text) {
        hand.click("peerPort");
        hand.key(Qt::Key_A, Qt::ControlModifier);
        hand.key(Qt::Key_Backspace);
        hand.type(text);
        hand.key(Qt::Key_Return);
    };
    for (const char* wrong : {"", "door", "80", "70000", "-1"}) {
        port(QLatin1String(wrong));
        EXPECT_TRUE(hand.desk().notKeptText().startsWith("Port: ")) << wrong;
    }
    hand.click("peerAddress");
    hand.key(Qt::Key_A, Qt::ControlModifier);
    hand.type("the house");
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.desk().notKeptText().startsWith("Address: "));
    hand.click("peerAddress");
    hand.key(Qt::Key_A, Qt::ControlModifier);
    hand.type("127.0.0.1");
    port(QString::number(other.port()));
    ASSERT_TRUE(hand.wait([&] {
        return hand.said("devicesRun")
            .value(0)
            .startsWith(QStringLiteral("Port %1 is taken").arg(other.port()));
    })) << hand.said("devicesRun").value(0).toStdString();
    EXPECT_TRUE(hand.says("Start the peer here"));
    // Another is free; the place is kept for the next time, and the book follows its peer there.
    const int first = freePort();
    port(QString::number(first));
    ASSERT_TRUE(hand.wait([&] { return hand.says("The peer runs and has this book."); }))
        << hand.said("devicesRun").value(0).toStdString();
    hand.settle();
    EXPECT_TRUE(hand.says(QStringLiteral("at 127.0.0.1:%1.").arg(first)));
    EXPECT_TRUE(hand.all("peerPort").empty()) << "not while it runs";
    EXPECT_EQ(hand.preferences().peerPort(), first);
    hand.key(Qt::Key_S, Qt::ControlModifier);
    ASSERT_TRUE(hand.find("peerPort") != nullptr);
    const int second = freePort();
    port(QString::number(second));
    ASSERT_TRUE(
        hand.wait([&] { return hand.says(QStringLiteral("at 127.0.0.1:%1.").arg(second)); }));
    ASSERT_TRUE(hand.wait([&] { return hand.said("deviceHeard").value(0) != ""; }))
        << "it answers there";
    hand.key(Qt::Key_S, Qt::ControlModifier);
}

TEST_F(DevicesTest, AProgramThatIsNotThereIsNamed) {
    Hand& hand = openDevices();
    hand.key(Qt::Key_S, Qt::ControlModifier);
    ASSERT_TRUE(hand.wait([&] { return hand.says("no-such-program could not be started"); }));
    EXPECT_TRUE(hand.says("Start the peer here"));
}

TEST_F(DevicesTest, NothingClashesAndNothingIsSetAside) {
    Hand& hand = openDevices();
    EXPECT_EQ(hand.said("noClash").size(), 1);
    EXPECT_EQ(hand.said("noAside").size(), 1);
    EXPECT_TRUE(hand.all("inviteLink").empty()) << "without a peer there is no way in";
    hand.key(Qt::Key_M, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("has met no peer yet: start one here"));
}

// Two devices priced the gutters without knowing of each other; the other's value is right.
TEST_F(DevicesTest, AClashIsSettledByOneOfItsValues) {
    book_ = demo();
    const std::string other = folder_.file("other.book");
    std::filesystem::copy_file(book_, other);
    model::RawId gutters;
    const auto put = [&](const std::string& path, const char* money, unsigned seed) {
        auto book = store::Book::open(path, ledgerboard::tests::fixedChance(seed));
        EXPECT_TRUE(book.ok());
        if (path == other) {
            // What it wrote until now stays the first device's.
            const store::LaneNumbers all{1'000'000, 1'000'000};
            EXPECT_TRUE(store::SyncBook(book.value())
                            .takeIdentity(
                                model::RawId::parse("0199a000-0000-7000-8000-000000000002").value(),
                                all, {})
                            .ok());
        }
        for (const auto& item : book.value().rows<model::Item>().value()) {
            if (item.object == "gutters") {
                gutters = item.id.raw();
            }
        }
        store::Action action("price the gutters");
        action.set(gutters, model::field::Item::lumpSum,
                   model::valueOf(model::Money::parse(money).value()));
        EXPECT_TRUE(book.value().commit(action, noonOnThatFriday()).ok());
    };
    put(book_, "1500", 21);
    put(other, "1700", 22);
    {
        auto mine = store::Book::open(book_, ledgerboard::tests::fixedChance(23));
        auto theirs = store::Book::open(other, ledgerboard::tests::fixedChance(24));
        ASSERT_TRUE(mine.ok() && theirs.ok());
        const auto entries = theirs.value().entries().value();
        ASSERT_TRUE(mine.value().apply(entries).ok());
    }
    Hand& hand = openDevices();
    ASSERT_EQ(hand.said("clashWhat").size(), 1);
    EXPECT_TRUE(hand.said("clashWhat").value(0).contains("gutters"));
    QStringList values = hand.said("clashValue");
    values.sort();
    EXPECT_EQ(values, (QStringList{"1500.00", "1700.00"}));
    hand.click("settleLink", static_cast<int>(hand.said("clashValue").indexOf("1700.00")));
    EXPECT_EQ(hand.said("noClash").size(), 1);
    auto book = store::Book::open(book_, ledgerboard::tests::fixedChance(25));
    for (const auto& item : book.value().rows<model::Item>().value()) {
        if (item.object == "gutters") {
            EXPECT_EQ(item.lumpSum, model::Money::parse("1700").value());
        }
    }
}

}  // namespace
}  // namespace ledgerboard::ui
