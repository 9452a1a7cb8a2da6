// Protects what was acknowledged from the end of a process at any moment. How: the real programs,
// `ledgerboard` while it writes and `ledgerboard-peer` while a device sends, are ended by SIGKILL
// after times drawn from a seed; then the book must open, add up and hold all that was said to be
// done. 10 rounds of each, with LEDGERBOARD_LONG=1 100.
#include <csignal>
#include <fcntl.h>
#include <gtest/gtest.h>
#include <random>
#include <set>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <unistd.h>

#include "core/store/sync_book.h"

#include "tests/attacks/device.h"

namespace ledgerboard::tests {
namespace {

namespace field = model::field;
using std::chrono::microseconds;
using std::chrono::steady_clock;

int rounds() {
    return isLong() ? 100 : 10;
}

pid_t begin(std::vector<std::string> words) {
    std::vector<char*> arguments;
    for (auto& word : words) {
        arguments.push_back(word.data());
    }
    arguments.push_back(nullptr);
    const pid_t child = ::fork();
    if (child == 0) {
        ::prctl(PR_SET_PDEATHSIG, SIGKILL);  // a test that ends early leaves nothing running
        const int nowhere = ::open("/dev/null", O_WRONLY);
        ::dup2(nowhere, STDOUT_FILENO);
        ::execv(arguments[0], arguments.data());
        ::_exit(127);
    }
    return child;
}

// Whether the process came to its end by itself, and said that it did what it was asked.
bool isDone(pid_t child) {
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

std::set<std::string> crewsIn(const std::string& path) {
    auto book = store::Book::open(path, fixedChance(1));
    model::require(book.ok(), book.ok() ? "" : book.error().message.c_str());
    EXPECT_TRUE(book.value().verify(false).value().findings.empty());
    std::set<std::string> names;
    for (const auto& crew : book.value().rows<model::Crew>().value()) {
        names.insert(crew.name);
    }
    return names;
}

TEST(Kill, TheProgramWhileItWrites) {
    preferMemory();
    const TestFolder folder("kill");
    const std::string path = folder.file("house.book");
    ASSERT_TRUE(isDone(begin({LEDGERBOARD, "--book", path, "start", "Elm Street"})));
    const auto add = [&](int number) {
        return begin(
            {LEDGERBOARD, "--book", path, "add", "crew", "Name=Crew " + std::to_string(number)});
    };
    const auto from = steady_clock::now();
    ASSERT_TRUE(isDone(add(0)));
    const auto usual = std::chrono::duration_cast<microseconds>(steady_clock::now() - from);
    std::mt19937_64 chance(20'260'406);
    std::set<std::string> acknowledged = {"Crew 0"};
    int killed = 0;
    int number = 0;
    for (int round = 0; round < rounds(); ++round) {
        for (int before = 0; before < 2; ++before) {
            ++number;
            const pid_t child = add(number);
            // The second of each round at its usual length or before, the first later mostly.
            const auto most = static_cast<std::uint64_t>(usual.count()) * (before == 0 ? 3 : 1);
            std::this_thread::sleep_for(microseconds(static_cast<std::int64_t>(chance() % most)));
            ::kill(child, SIGKILL);
            if (isDone(child)) {
                acknowledged.insert("Crew " + std::to_string(number));
            } else {
                ++killed;
            }
        }
        const auto held = crewsIn(path);
        for (const auto& name : acknowledged) {
            EXPECT_TRUE(held.contains(name)) << name << ", round " << round;
        }
        EXPECT_FALSE(held.contains("")) << "half a crew, round " << round;
    }
    EXPECT_GT(killed, 0);
    EXPECT_TRUE(isDone(add(number + 1)));
}

// Own entries that the peer acknowledged, by number.
store::LaneNumbers acknowledged(Device& device) {
    store::SyncBook sync(*device.book);
    store::LaneNumbers numbers{};
    for (std::size_t lane = 0; lane < 2; ++lane) {
        const auto value = sync.recall("sync.acknowledged." + std::to_string(lane)).value();
        const auto* number = std::get_if<std::int64_t>(&value);
        numbers[lane] = number != nullptr ? *number : 0;
    }
    return numbers;
}

TEST(Kill, ThePeerWhileADeviceSends) {
    preferMemory();
    PeerProcess peer;
    Device device(peer, peer.code(), 1);
    ASSERT_TRUE(device.meet().ok());
    device.isPatient = false;
    std::mt19937_64 chance(20'260'407);
    int cut = 0;
    for (int round = 0; round < rounds(); ++round) {
        for (int k = 0; k < 150; ++k) {
            store::Action action("crew");
            action.set(device.book->newId(device.stamp()), field::Crew::name,
                       "Crew " + std::to_string(k));
            ASSERT_TRUE(device.book->commit(action, device.stamp()).ok());
        }
        const auto delay = microseconds(static_cast<std::int64_t>(chance() % 60'000));
        std::thread killer([&] {
            std::this_thread::sleep_for(delay);
            peer.kill();
        });
        cut += device.meet().ok() ? 0 : 1;
        killer.join();
        {
            auto book = store::Book::open(peer.folder().file("house.book"), fixedChance(1));
            ASSERT_TRUE(book.ok()) << book.error().message;
            EXPECT_TRUE(book.value().verify(false).value().findings.empty()) << round;
            store::SyncBook sync(book.value());
            const auto told = acknowledged(device);
            for (const auto& entry : device.book->entries().value()) {
                const auto lane = static_cast<std::size_t>(entry.name.lane);
                if (entry.name.device == device.book->thisDevice().raw() &&
                    entry.name.number <= told[lane]) {
                    EXPECT_TRUE(sync.entryNamed(entry.name).value()) << entry.name.number;
                }
            }
        }
        peer.start();
        const auto met = device.meet();
        ASSERT_TRUE(met.ok()) << met.error().message << "\n" << peer.logged();
    }
    EXPECT_GT(cut, 0);
}

}  // namespace
}  // namespace ledgerboard::tests
