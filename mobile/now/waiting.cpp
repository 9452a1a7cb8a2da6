#include "mobile/now/waiting.h"

#include <set>

#include "core/store/sync_book.h"

namespace ledgerboard::phone {

namespace {

using model::Result;

// The names under which the exchange remembers how far it came (docs/sync.md).
constexpr const char* kEpoch = "sync.epoch";
constexpr const char* kDone[] = {"sync.acknowledged.0", "sync.acknowledged.1"};
constexpr std::size_t kMostEntries = 100'000;
constexpr std::size_t kMostBytes = std::size_t{64} << 20;

}  // namespace

Result<Waiting> waitingIn(store::Book& book) {
    store::SyncBook log(book);
    Waiting waiting;
    auto epoch = log.recall(kEpoch);
    if (!epoch.ok()) {
        return epoch.error();
    }
    waiting.hasPeer = !model::isEmpty(epoch.value());
    if (!waiting.hasPeer) {
        return waiting;
    }
    store::LaneNumbers done{};
    for (std::size_t lane = 0; lane < done.size(); ++lane) {
        auto number = log.recall(kDone[lane]);
        if (!number.ok()) {
            return number.error();
        }
        const auto* held = std::get_if<std::int64_t>(&number.value());
        done[lane] = held == nullptr ? 0 : *held;
    }
    auto entries = log.ownAfter(done, kMostEntries, kMostBytes);
    if (!entries.ok()) {
        return entries.error();
    }
    std::set<model::RawId> seen;
    for (const auto& entry : entries.value()) {
        if (!seen.insert(entry.record).second) {
            continue;
        }
        switch (model::kindOf(entry.field)) {
            case model::Kind::Mark:
                ++waiting.marks;
                break;
            case model::Kind::Photo:
                ++waiting.photos;
                break;
            default:
                ++waiting.others;
        }
    }
    return waiting;
}

}  // namespace ledgerboard::phone
