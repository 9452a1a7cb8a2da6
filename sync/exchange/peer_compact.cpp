// When may the peer's log let go of what was written over, and how far?
#include <algorithm>

#include "sync/exchange/peer_parts.h"
#include "sync/exchange/peer_side.h"

namespace ledgerboard::sync {

using model::Result;

namespace {

constexpr const char* kCompacted = "peer.compacted";  // when it was last done

std::int64_t integerIn(const model::Value& value) {
    const auto* number = std::get_if<std::int64_t>(&value);
    return number != nullptr ? *number : 0;
}

}  // namespace

// The arrival up to which every owner's device that is not silent has the log; 0 where there is no
// such device.
Result<std::int64_t> PeerSide::takenByAll(model::Instant now) {
    auto devices = parts_.book->rows<model::Device>();
    if (!devices.ok()) {
        return devices.error();
    }
    std::optional<std::int64_t> lowest;
    for (const auto& device : devices.value()) {
        auto heard = book_.recall(heardName(device.id.raw()));
        auto taken = book_.recall(takenName(device.id.raw()));
        auto person = parts_.book->record(model::Kind::Person, device.person.raw());
        if (!heard.ok() || !taken.ok() || !person.ok()) {
            return !heard.ok() ? heard.error() : taken.ok() ? person.error() : taken.error();
        }
        const bool owner =
            person.value() && person.value()->at(model::field::Person::role) ==
                                  model::Value{std::string(model::wordOf(model::Role::Owner))};
        const std::int64_t silentMs = now.milliseconds() - integerIn(heard.value());
        if (owner && !device.revokedOn && silentMs <= parts_.keeping.silentMs) {
            const std::int64_t arrival = integerIn(taken.value());
            lowest = std::min(lowest.value_or(arrival), arrival);
        }
    }
    return lowest.value_or(0);
}

Result<std::size_t> PeerSide::compact(model::Instant now) {
    Result<std::size_t> compacted = std::size_t{0};
    auto done = book_.whole([&] {
        compacted = compactNow(now);
        return compacted.ok();
    });
    return done.ok() ? compacted : Result<std::size_t>(done.error());
}

// Within a transaction.
Result<std::size_t> PeerSide::compactNow(model::Instant now) {
    auto last = book_.recall(kCompacted);
    if (!last.ok()) {
        return last.error();
    }
    if (now.milliseconds() - integerIn(last.value()) < parts_.keeping.everyMs) {
        return std::size_t{0};
    }
    auto upTo = takenByAll(now);
    if (!upTo.ok()) {
        return upTo.error();
    }
    store::Taking taking;
    taking.remember = {{kCompacted, now.milliseconds()}};
    if (auto noted = book_.take(taking); !noted.ok()) {
        return noted.error();
    }
    const auto before =
        model::Instant::fromMilliseconds(now.milliseconds() - parts_.keeping.keptMs);
    constexpr auto kAll = std::numeric_limits<std::int64_t>::max();
    return book_.compact({model::HybridClock::endOf(before), upTo.value(), {kAll, kAll}});
}

}  // namespace ledgerboard::sync
