#include "sync/exchange/device_side.h"

#include <algorithm>

#include "core/model/saying.h"
#include "sync/wire/exchange_limits.h"

namespace ledgerboard::sync {

using model::RawId;
using model::Result;
using store::Entry;
using store::LaneNumbers;

namespace {

constexpr const char* kEpoch = "sync.epoch";
constexpr const char* kCursor = "sync.cursor";
constexpr const char* kOwnerOnlyDone = "sync.acknowledged.0";
constexpr const char* kSharedDone = "sync.acknowledged.1";
// Beyond the epoch too: the highest numbers any peer ever acknowledged, which others may hold.
constexpr const char* kOwnerOnlyEver = "sync.ever.0";
constexpr const char* kSharedEver = "sync.ever.1";
constexpr const char* kRelay = "sync.relay";          // up to where the log was sent again
constexpr const char* kFreshening = "sync.fresh";     // a fresh start is under way
constexpr const char* kCompacted = "sync.compacted";  // up to which horizon
constexpr const char* kOffset = "sync.clock_offset";
constexpr const char* kPartial = "partial";  // this book holds a part of another one

std::vector<store::Remembered> toRemember(const LaneNumbers& done, const LaneNumbers& ever) {
    return {{kOwnerOnlyDone, done[0]},
            {kSharedDone, done[1]},
            {kOwnerOnlyEver, ever[0]},
            {kSharedEver, ever[1]}};
}

model::Error noProgress() {
    return model::cannotBeMet("the peer acknowledged nothing of what was sent: try again later");
}

}  // namespace

Result<std::int64_t> DeviceSide::number(const std::string& name) {
    auto value = book_.recall(name);
    if (!value.ok()) {
        return value.error();
    }
    const auto* integer = std::get_if<std::int64_t>(&value.value());
    return integer != nullptr ? *integer : 0;
}

Result<void> DeviceSide::remember(std::vector<store::Remembered> what) {
    store::Taking taking;
    taking.remember = std::move(what);
    auto taken = book_.take(taking);
    return taken.ok() ? Result<void>() : Result<void>(taken.error());
}

Result<LaneNumbers> DeviceSide::acknowledged() {
    return numbers(kOwnerOnlyDone, kSharedDone);
}

Result<LaneNumbers> DeviceSide::everAcknowledged() {
    return numbers(kOwnerOnlyEver, kSharedEver);
}

Result<LaneNumbers> DeviceSide::numbers(const char* ownerOnlyName, const char* sharedName) {
    auto ownerOnly = number(ownerOnlyName);
    auto shared = number(sharedName);
    if (!ownerOnly.ok() || !shared.ok()) {
        return ownerOnly.ok() ? shared.error() : ownerOnly.error();
    }
    return LaneNumbers{ownerOnly.value(), shared.value()};
}

Result<std::int64_t> DeviceSide::clockOffsetMs() {
    return number(kOffset);
}

Result<std::size_t> DeviceSide::waiting() {
    auto done = acknowledged();
    auto last = book_.lastNumbers(book_.book().thisDevice().raw());
    if (!done.ok() || !last.ok()) {
        return done.ok() ? last.error() : done.error();
    }
    std::int64_t count = 0;
    for (std::size_t lane = 0; lane < 2; ++lane) {
        count += std::max<std::int64_t>(0, last.value()[lane] - done.value()[lane]);
    }
    return static_cast<std::size_t>(count);
}

void DeviceSide::sendLate() {
    constexpr int kMostParts = 12;  // the peer sets aside no more than that of one device
    auto beyond = acknowledged();
    for (int part = 0; beyond.ok() && part < kMostParts; ++part) {
        const auto entries = book_.ownAfter(beyond.value(), kMostEntries, kFillBytes);
        if (!entries.ok() || entries.value().empty() ||
            !carry_(Call::Push, write(PushAsk{entries.value()})).ok()) {
            return;
        }
        for (const auto& entry : entries.value()) {
            auto& number = beyond.value()[static_cast<std::size_t>(entry.name.lane)];
            number = std::max(number, entry.name.number);
        }
    }
}

// A call whose answer is a refusal is an error, save those that the device can mend by itself.
Result<Reply> DeviceSide::call(Call call, const std::string& body) {
    auto reply = carry_(call, body);
    if (!reply.ok()) {
        said_ = Status::Failed;  // nothing, so that nothing is concluded from it
        return reply.error();
    }
    said_ = reply.value().status;
    if (said_ == Status::Ok) {
        return reply;
    }
    meeting_.revoked = said_ == Status::Revoked;
    auto refused = readRefused(reply.value().body);
    return model::cannotBeMet(
        refused.ok() ? model::saying("the peer says: %1", model::Saying(refused.value().message))
                     : model::saying("the peer's answer can't be read"));
}

Result<Meeting> DeviceSide::meet(model::Instant now) {
    meeting_ = {};
    restamped_ = false;
    auto greeted = greet();
    if (!greeted.ok()) {
        return meeting_.revoked ? Result<Meeting>(meeting_) : Result<Meeting>(greeted.error());
    }
    if (auto learned = learn(greeted.value(), now); !learned.ok()) {
        return learned.error();
    }
    if (mustRenew_) {
        if (auto renewed = renew(now); !renewed.ok()) {
            return renewed.error();
        }
    }
    constexpr int kRounds = 8;  // own entries written meanwhile go up before more comes down
    for (int round = 0; round < kRounds; ++round) {
        auto done = pushOwn(now);
        done = done.ok() ? relay(now) : done;
        auto pulled = done.ok() ? pullAll() : Result<bool>(done.error());
        if (meeting_.revoked) {
            return meeting_;
        }
        if (!pulled.ok()) {
            return pulled.error();
        }
        if (pulled.value()) {
            auto compacted = compact();
            return compacted.ok() ? Result<Meeting>(meeting_) : Result<Meeting>(compacted.error());
        }
    }
    return meeting_;
}

// Lets go of what the peer lets go of, now that this device has all that the peer has.
Result<void> DeviceSide::compact() {
    auto done = number(kCompacted);
    auto ever = everAcknowledged();
    auto last = book_.lastArrival();
    if (!done.ok() || !ever.ok() || !last.ok()) {
        return !done.ok() ? done.error() : ever.ok() ? last.error() : ever.error();
    }
    if (!owner_ || horizon_.raw() <= done.value()) {
        return {};
    }
    auto compacted = book_.compact({horizon_, last.value(), ever.value()});
    return compacted.ok() ? remember({{kCompacted, horizon_.raw()}})
                          : Result<void>(compacted.error());
}

// A peer restored from a backup may know this device by a name from before: it is told the one this
// device has now. It says no where this copy is the older one.
Result<HelloAnswer> DeviceSide::greet() {
    const RawId own = book_.book().thisDevice().raw();
    auto answer = hello(RawId{});
    auto epoch = book_.recall(kEpoch);
    if (!answer.ok() || !epoch.ok()) {
        return epoch.ok() ? answer : Result<HelloAnswer>(epoch.error());
    }
    if (answer.value().device == own || model::isEmpty(epoch.value()) ||
        epoch.value() == model::Value{answer.value().epoch}) {
        return answer;
    }
    auto again = hello(own);
    return !again.ok() && said_ == Status::NotAllowed ? answer : again;
}

Result<HelloAnswer> DeviceSide::hello(const RawId& renew) {
    auto last = book_.lastNumbers(book_.book().thisDevice().raw());
    auto epoch = book_.recall(kEpoch);
    auto relaying = book_.recall(kRelay);
    if (!last.ok() || !epoch.ok() || !relaying.ok()) {
        return !last.ok() ? last.error() : !epoch.ok() ? epoch.error() : relaying.error();
    }
    HelloAsk ask;
    const auto* known = std::get_if<RawId>(&epoch.value());
    ask.epoch = known != nullptr ? *known : RawId{};
    ask.last = last.value();
    ask.wantOthers = std::holds_alternative<std::int64_t>(relaying.value());
    ask.renew = renew;
    auto reply = call(Call::Hello, write(ask));
    if (!reply.ok()) {
        return reply.error();
    }
    return readHelloAnswer(reply.value().body);
}

// Takes in what the peer says of itself and of this device.
Result<void> DeviceSide::learn(const HelloAnswer& answer, model::Instant now) {
    meeting_.clockOffsetMs = answer.time.milliseconds() - now.milliseconds();
    owner_ = answer.role == model::wordOf(model::Role::Owner);
    others_ = answer.others;
    horizon_ = answer.horizon;
    peerHas_ = answer.last;
    const RawId own = book_.book().thisDevice().raw();
    auto epoch = book_.recall(kEpoch);
    auto done = acknowledged();
    auto last = book_.lastNumbers(own);
    if (!epoch.ok() || !done.ok() || !last.ok()) {
        return !epoch.ok() ? epoch.error() : !done.ok() ? done.error() : last.error();
    }
    std::vector<store::Remembered> what = {
        {kOffset, meeting_.clockOffsetMs},
        {kPartial, owner_ ? model::Value{} : model::Value{std::int64_t{1}}}};
    const auto* known = std::get_if<RawId>(&epoch.value());
    if (known == nullptr || *known != answer.epoch) {
        // A peer met for the first time, or restored from a backup: it may lack what it had.
        what.push_back({kEpoch, answer.epoch});
        what.push_back({kRelay, std::int64_t{0}});
        for (std::size_t lane = 0; lane < 2 && answer.device == own; ++lane) {
            done.value()[lane] = std::min(done.value()[lane], answer.unbroken[lane]);
        }
        what.push_back({kOwnerOnlyDone, done.value()[0]});
        what.push_back({kSharedDone, done.value()[1]});
    }
    // It knows this device by another name, which did not arrive here or is younger than this copy.
    const bool sameEpoch = known != nullptr && *known == answer.epoch;
    mustRenew_ = answer.device != own;
    given_ = mustRenew_ && sameEpoch && answer.last == LaneNumbers{} ? answer.device : RawId{};
    for (std::size_t lane = 0; lane < 2; ++lane) {
        // It has more of this device than this device has: this copy is an old one.
        mustRenew_ = mustRenew_ || answer.last[lane] > last.value()[lane];
    }
    return remember(std::move(what));
}

// Takes a new identity: the one that was given and did not arrive, where the peer knows this device
// by one that sent nothing yet; else another.
Result<void> DeviceSide::renew(model::Instant now) {
    auto done = everAcknowledged();
    if (!done.ok()) {
        return done.error();
    }
    RawId device = given_;
    if (device.isNil()) {
        device = book_.book().newId(now);
        auto answer = hello(device);
        if (!answer.ok()) {
            return answer.error();
        }
        others_ = answer.value().others;
    }
    auto what = toRemember({0, 0}, {0, 0});
    what.push_back({kCursor, {}});  // a place is counted for each identity anew
    if (auto taken = book_.takeIdentity(device, done.value(), what); !taken.ok()) {
        return taken;
    }
    peerHas_ = {};
    restamped_ = false;
    mustRenew_ = false;
    meeting_.renewed = true;
    return {};
}

Result<void> DeviceSide::pushOwn(model::Instant now) {
    for (;;) {
        auto done = acknowledged();
        if (!done.ok()) {
            return done.error();
        }
        auto entries = book_.ownAfter(done.value(), kMostEntries, kFillBytes);
        if (!entries.ok()) {
            return entries.error();
        }
        if (entries.value().empty()) {
            return {};
        }
        if (auto pushed = pushPart(std::move(entries).value(), now); !pushed.ok()) {
            return pushed;
        }
    }
}

// Sends one part, and mends what the peer finds wrong with it: the next round sends it again.
Result<void> DeviceSide::pushPart(std::vector<Entry> entries, model::Instant now) {
    std::string body = write(PushAsk{entries});
    while (body.size() > kMostBodyBytes && entries.size() > 1) {
        entries.resize(entries.size() / 2);
        body = write(PushAsk{entries});
    }
    auto reply = call(Call::Push, body);
    if (reply.ok()) {
        auto answer = readPushAnswer(reply.value().body);
        if (!answer.ok()) {
            return answer.error();
        }
        return acknowledge(entries, answer.value());
    }
    if (said_ == Status::Ahead) {
        auto changed = restamped_ ? Result<bool>(false) : restamp(now);
        if (!changed.ok() || changed.value()) {
            return changed.ok() ? Result<void>() : Result<void>(changed.error());
        }
        // What is ahead still has numbers that the peer knows, and so for something else.
        said_ = Status::OtherContent;
    }
    if (said_ == Status::OtherContent && !meeting_.renewed) {
        return renew(now);
    }
    return reply.error();
}

// Gives entries that the peer never had clocks that are not ahead of it. False where none needed
// it.
Result<bool> DeviceSide::restamp(model::Instant now) {
    auto done = everAcknowledged();
    if (!done.ok()) {
        return done.error();
    }
    for (std::size_t lane = 0; lane < 2; ++lane) {
        // What it has already, though its answer was lost, stays as it is.
        done.value()[lane] = std::max(done.value()[lane], peerHas_[lane]);
    }
    const auto theirs =
        model::Instant::fromMilliseconds(now.milliseconds() + meeting_.clockOffsetMs);
    auto changed = book_.restamp(done.value(), theirs);
    if (!changed.ok()) {
        return changed.error();
    }
    restamped_ = true;
    meeting_.restamped += changed.value();
    return changed.value() > 0;
}

Result<void> DeviceSide::acknowledge(const std::vector<Entry>& entries, const PushAnswer& answer) {
    auto done = acknowledged();
    auto ever = everAcknowledged();
    if (!done.ok() || !ever.ok()) {
        return done.ok() ? ever.error() : done.error();
    }
    LaneNumbers numbers = done.value();
    const RawId own = book_.book().thisDevice().raw();
    store::Taking taking;
    for (const auto& entry : entries) {
        const auto lane = static_cast<std::size_t>(entry.name.lane);
        if (entry.name.device == own && entry.name.number <= answer.acknowledged[lane] &&
            entry.name.number > numbers[lane]) {
            numbers[lane] = entry.name.number;
            ++meeting_.sent;
            // What only owners read of any kind of record is let go once the peer has it.
            if (!owner_ &&
                store::laneOfGone(model::kindOf(entry.field)) == store::Lane::OwnerOnly) {
                taking.forgetEntries.push_back(entry.name);
            }
        }
    }
    if (numbers == done.value()) {
        return noProgress();
    }
    for (const auto& refusal : answer.refused) {
        taking.forgetEntries.push_back({own, refusal.lane, refusal.number});
    }
    meeting_.refused += answer.refused.size();
    LaneNumbers most = ever.value();
    for (std::size_t lane = 0; lane < 2; ++lane) {
        most[lane] = std::max(most[lane], numbers[lane]);
    }
    taking.remember = toRemember(numbers, most);
    // Lost with the power, it is as if the answer had not come: the device sends again what the
    // peer has, and is told so again.
    taking.durable = store::Durable::Later;
    auto taken = book_.take(taking);
    return taken.ok() ? Result<void>() : Result<void>(taken.error());
}

// After the peer was restored: sends what it lacks of other devices, which may be lost themselves;
// who is no owner, what it wrote under names it had before.
Result<void> DeviceSide::relay(model::Instant) {
    auto place = book_.recall(kRelay);
    if (!place.ok()) {
        return place.error();
    }
    const auto* from = std::get_if<std::int64_t>(&place.value());
    if (from == nullptr) {
        return {};
    }
    std::int64_t at = *from;
    for (;;) {
        auto part =
            book_.after({at, kMostEntries, kFillBytes, book_.book().thisDevice().raw(), RawId{}});
        if (!part.ok()) {
            return part.error();
        }
        if (part.value().empty()) {
            return remember({{kRelay, {}}});
        }
        PushAsk ask;
        for (const auto& one : part.value()) {
            at = one.arrival;
            const auto lane = static_cast<std::size_t>(one.entry.name.lane);
            if (lane < 2 &&
                (!owner_ || one.entry.name.number > others_[one.entry.name.device][lane])) {
                ask.entries.push_back(one.entry);
            }
        }
        if (!ask.entries.empty()) {
            if (auto reply = call(Call::Push, write(ask)); !reply.ok()) {
                return reply.error();
            }
            meeting_.sent += ask.entries.size();
        }
        if (auto kept = remember({{kRelay, at}}); !kept.ok()) {
            return kept;
        }
    }
}

// False where own entries were written meanwhile, which go up first.
Result<bool> DeviceSide::pullAll() {
    for (;;) {
        auto cursor = book_.recall(kCursor);
        if (!cursor.ok()) {
            return cursor.error();
        }
        const auto* text = std::get_if<std::string>(&cursor.value());
        auto reply = call(Call::Pull, write(PullAsk{text != nullptr ? *text : ""}));
        if (!reply.ok()) {
            return reply.error();
        }
        auto answer = readPullAnswer(reply.value().body);
        if (!answer.ok()) {
            return answer.error();
        }
        auto taken = takePulled(answer.value());
        if (!taken.ok()) {
            return taken.error();
        }
        if (!taken.value()) {
            return false;
        }
        if (!answer.value().more) {
            return true;
        }
    }
}

Result<bool> DeviceSide::takePulled(const PullAnswer& answer) {
    auto cursor = book_.recall(kCursor);
    auto freshening = book_.recall(kFreshening);
    auto done = acknowledged();
    if (!cursor.ok() || !freshening.ok() || !done.ok()) {
        return !cursor.ok() ? cursor.error() : !done.ok() ? done.error() : freshening.error();
    }
    const bool wasFresh = answer.fresh || !model::isEmpty(freshening.value());
    if (answer.entries.empty() && answer.drops.empty() && answer.asides.empty() && !wasFresh &&
        cursor.value() == model::Value{answer.cursor}) {
        return true;
    }
    store::Taking taking;
    taking.forget = answer.drops;
    taking.entries = answer.entries;
    taking.asides = answer.asides;
    taking.allStale = answer.fresh;
    taking.forgetStale = wasFresh && !answer.more;
    taking.remember = {
        {kCursor, answer.cursor},
        {kFreshening, wasFresh && answer.more ? model::Value{std::int64_t{1}} : model::Value{}}};
    if (!owner_) {
        // What is to be dropped may have own entries that the peer has not seen.
        taking.unlessBeyond = done.value();
        taking.forgetAsides = answer.fresh;
    }
    auto taken = book_.take(taking);
    if (!taken.ok()) {
        return taken.error();
    }
    meeting_.received += taken.value().added;
    meeting_.dropped += answer.drops.size();
    return taken.value().done;
}

}  // namespace ledgerboard::sync
