// How fast do devices and the peer agree? Measured through the real program on loopback: TLS, a
// signature on each call, synchronous=FULL at both ends.
//
//   sync_bench records N     N records of five fields pushed, pulled, one edited, all sent again
//   sync_bench many N        N devices at once, ten entries each
//   sync_bench growth N      a meeting of a device ten entries behind, at 10,000 entries and at N
// With LEDGERBOARD_STORE=postgresql://... the peer keeps its book there; it must be empty.
// Each prints JSON, times in ms, memory in KiB (VmHWM of proc(5)). tests/bench/sync/run puts the
// first beside a general document database.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <fstream>
#include <thread>
#include <vector>

#include "core/store/sync_book.h"

#include "tests/attacks/device.h"

namespace {

using namespace ledgerboard;
using tests::Device;
using tests::PeerProcess;
namespace field = model::field;

constexpr std::size_t kFields = 5;

double msSince(std::chrono::steady_clock::time_point begun) {
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begun)
        .count();
}

std::chrono::steady_clock::time_point now() {
    return std::chrono::steady_clock::now();
}

// A device's clock, which runs: one that steps at each reading, as in tests, would soon be ahead of
// the peer's, and every entry be stamped anew.
model::Instant runningClock() {
    static const auto begun = now();
    return model::Instant::fromMilliseconds(1'775'476'800'000 +
                                            static_cast<std::int64_t>(msSince(begun)));
}

double median(std::vector<double> list) {
    std::sort(list.begin(), list.end());
    return list[list.size() / 2];
}

sync::Meeting mustMeet(Device& device) {
    device.keepsWire = false;
    auto met = device.meet();
    model::require(met.ok(), met.ok() ? "" : met.error().message.c_str());
    return met.value();
}

// One device at a time has its book open, as in a program of its own.
void turn(Device& from, Device& to) {
    from.close();
    to.open();
}

// Writes `count` records of five fields each, a hundred an action; the id of the last one.
model::RawId addRecords(Device& device, std::size_t count) {
    model::RawId id;
    for (std::size_t from = 0; from < count; from += 100) {
        store::Action action("records");
        for (std::size_t k = from; k < std::min(count, from + 100); ++k) {
            id = device.book->newId(device.stamp());
            action.set(id, field::Price::object, "object " + std::to_string(k));
            action.set(id, field::Price::treatment, std::string("replace"));
            action.set(id, field::Price::material, static_cast<std::int64_t>(1'000 + k));
            action.set(id, field::Price::labour, static_cast<std::int64_t>(2'000 + k));
            action.set(id, field::Price::source, std::string("made up"));
        }
        model::require(device.book->commit(action, device.stamp()).ok(), "it is written");
    }
    return id;
}

void editOne(Device& device, const model::RawId& id, std::int64_t cents) {
    store::Action action("edit");
    action.set(id, field::Price::material, cents);
    model::require(device.book->commit(action, device.stamp()).ok(), "it is written");
}

// Where the peer keeps its book, as it is told.
std::vector<std::string> storeWords() {
    const char* store = std::getenv("LEDGERBOARD_STORE");
    return store == nullptr ? std::vector<std::string>{}
                            : std::vector<std::string>{"--store", store};
}

long ownMemoryKib() {
    std::ifstream status("/proc/self/status");
    std::string line;
    while (std::getline(status, line)) {
        if (line.rfind("VmHWM:", 0) == 0) {
            return std::strtol(line.c_str() + 6, nullptr, 10);
        }
    }
    return -1;
}

void records(std::size_t count) {
    PeerProcess peer(storeWords());
    Device laptop(peer, peer.code(), 1, "", runningClock);
    mustMeet(laptop);
    const model::RawId last = addRecords(laptop, count);
    auto begun = now();
    const auto sent = mustMeet(laptop);
    const double pushMs = msSince(begun);
    model::require(sent.sent == count * kFields, "all of it went up");
    laptop.close();
    Device phone(peer, laptop.invite({{"role", "owner"}}), 2, "", runningClock);
    begun = now();
    const auto received = mustMeet(phone);
    const double pullMs = msSince(begun);
    model::require(received.received >= count * kFields, "all of it came down");
    turn(phone, laptop);
    std::vector<double> edits;
    for (int k = 0; k < 9; ++k) {
        begun = now();
        editOne(laptop, last, 5'000 + k);
        mustMeet(laptop);
        edits.push_back(msSince(begun));
    }
    turn(laptop, phone);
    mustMeet(phone);
    turn(phone, laptop);
    // Everything once more, as after an answer that was lost.
    store::SyncBook sync(*laptop.book);
    store::Taking forget;
    forget.remember = {{"sync.acknowledged.0", std::int64_t{0}},
                       {"sync.acknowledged.1", std::int64_t{0}}};
    model::require(sync.take(forget).ok(), "it is forgotten");
    begun = now();
    mustMeet(laptop);
    const double replayMs = msSince(begun);
    turn(laptop, phone);
    const auto applied = mustMeet(phone).received;
    const auto rate = [&](double ms) { return static_cast<double>(count) * 1'000 / ms; };
    std::printf(
        "{\"push_per_s\":%.0f,\"pull_per_s\":%.0f,\"edit_ms\":%.2f,\"replay_ms\":%.0f,"
        "\"replay_applied\":%zu,\"device_kib\":%ld,\"peer_kib\":%ld}\n",
        rate(pushMs), rate(pullMs), median(edits), replayMs, applied, ownMemoryKib(),
        peer.mostMemoryKib());
}

void many(std::size_t count) {
    PeerProcess peer(storeWords());
    Device laptop(peer, peer.code(), 1, "", runningClock);
    mustMeet(laptop);
    std::vector<std::unique_ptr<Device>> devices;
    for (std::size_t k = 0; k < count; ++k) {
        if (k % 50 == 49) {  // so many invitations may be open at once; they live in memory
            peer.stop();
            peer.start();
        }
        devices.push_back(std::make_unique<Device>(peer, laptop.invite({{"role", "owner"}}),
                                                   100 + k, "", runningClock));
        addRecords(*devices.back(), 2);
    }
    std::vector<double> times(count);
    std::vector<int> failed(count);
    std::vector<std::thread> threads;
    const auto begun = now();
    for (std::size_t k = 0; k < count; ++k) {
        threads.emplace_back([&, k] {
            const auto from = now();
            failed[k] = devices[k]->meet().ok() ? 0 : 1;
            times[k] = msSince(from);
        });
    }
    for (auto& thread : threads) {
        thread.join();
    }
    const double all = msSince(begun);
    std::sort(times.begin(), times.end());
    std::printf(
        "{\"devices\":%zu,\"failed\":%d,\"all_ms\":%.0f,\"median_ms\":%.0f,"
        "\"p99_ms\":%.0f,\"peer_kib\":%ld}\n",
        count, static_cast<int>(std::count(failed.begin(), failed.end(), 1)), all, times[count / 2],
        times[(count - 1) * 99 / 100], peer.mostMemoryKib());
}

// The median meeting of `phone` when `laptop` has written ten entries since the last one.
double tenBehindMs(Device& laptop, Device& phone) {
    std::vector<double> times;
    for (int k = 0; k < 15; ++k) {
        addRecords(laptop, 2);
        mustMeet(laptop);
        const auto begun = now();
        const auto met = mustMeet(phone);
        times.push_back(msSince(begun));
        model::require(met.received == 2 * kFields, "ten entries came");
    }
    return median(times);
}

void growth(std::size_t entries) {
    PeerProcess peer(storeWords());
    Device laptop(peer, peer.code(), 1, "", runningClock);
    mustMeet(laptop);
    Device phone(peer, laptop.invite({{"role", "owner"}}), 2, "", runningClock);
    mustMeet(phone);
    mustMeet(laptop);
    std::vector<double> ms;
    std::size_t there = 0;
    for (const std::size_t goal : {std::size_t{10'000}, entries}) {
        while (there < goal) {
            const auto step = std::min<std::size_t>(goal - there, 50'000);
            addRecords(laptop, step / kFields);
            there += step;
            mustMeet(laptop);
        }
        mustMeet(phone);
        ms.push_back(tenBehindMs(laptop, phone));
    }
    std::printf(
        "{\"entries\":[10000,%zu],\"meeting_ms\":[%.2f,%.2f],\"ratio\":%.2f,"
        "\"peer_kib\":%ld}\n",
        entries, ms[0], ms[1], ms[1] / ms[0], peer.mostMemoryKib());
}

}  // namespace

int main(int argc, char** argv) {
    const std::string what = argc > 1 ? argv[1] : "";
    const std::size_t count = argc > 2 ? std::strtoul(argv[2], nullptr, 10) : 0;
    if (count == 0 || (what != "records" && what != "many" && what != "growth")) {
        std::fprintf(stderr, "usage: sync_bench records|many|growth N\n");
        return 2;
    }
    what == "records" ? records(count) : what == "many" ? many(count) : growth(count);
    return 0;
}
