// Hello, push and roster; pulling stands in peer_pull.cpp, photos in peer_photos.cpp.
#include "sync/exchange/peer_side.h"

#include <algorithm>
#include <optional>

#include "sync/exchange/peer_parts.h"

namespace ledgerboard::sync {

using model::Kind;
using model::RawId;
using model::Result;
using store::Entry;
using store::Lane;

namespace {

std::string randomText(const model::FillRandom& random, std::size_t bytes) {
    std::string text(bytes, '\0');
    random(reinterpret_cast<std::uint8_t*>(text.data()), bytes);
    return text;
}

std::string hexOf(const std::string& bytes) {
    static constexpr std::string_view kDigits = "0123456789abcdef";
    std::string hex;
    for (const char c : bytes) {
        hex += kDigits[static_cast<unsigned char>(c) >> 4];
        hex += kDigits[static_cast<unsigned char>(c) & 15];
    }
    return hex;
}

RawId randomId(const model::FillRandom& random) {
    std::array<std::uint8_t, RawId::kBytes> bytes{};
    random(bytes.data(), bytes.size());
    bytes[0] |= 1;  // never nil
    return RawId(bytes);
}

bool sameContent(const Entry& a, const Entry& b) {
    return a.clock == b.clock && a.record == b.record && a.field == b.field && a.value == b.value;
}

// Names of entries that may have come before: not those that go on where the device left off.
std::vector<store::EntryName> mayBeKnown(const std::vector<Entry>& entries, const RawId& device,
                                         store::LaneNumbers highest) {
    std::vector<store::EntryName> names;
    for (const auto& entry : entries) {
        auto& number = highest[static_cast<std::size_t>(entry.name.lane)];
        if (entry.name.device == device && entry.name.number > number) {
            number = entry.name.number;
        } else {
            names.push_back(entry.name);
        }
    }
    return names;
}

constexpr std::int64_t kHeardEveryMs = 60'000;

using Unbroken = std::map<RawId, store::LaneNumbers>;

}  // namespace

// What became of the entries of a push.
struct PeerSide::Judged {
    std::map<store::EntryName, store::SyncBook::Known> known;  // of those that may have come before
    store::Taking taking;
    PushAnswer answer;
};

// What the book says of the peer itself. Another peer of the same book may have changed it.
struct PeerSide::Self {
    RawId epoch;  // nil before the first opening
    std::string key;
};

Result<PeerSide::Self> PeerSide::selfIn(store::SyncBook& book) {
    auto epoch = book.recall("peer.epoch");
    auto key = book.recall("peer.seal");
    if (!epoch.ok() || !key.ok()) {
        return epoch.ok() ? key.error() : epoch.error();
    }
    const auto* epochId = std::get_if<RawId>(&epoch.value());
    const auto* keyText = std::get_if<std::string>(&key.value());
    if (epochId == nullptr || keyText == nullptr || keyText->size() < Seal::kKeyBytes) {
        return Self{};
    }
    return Self{*epochId, keyText->substr(0, Seal::kKeyBytes)};
}

Result<PeerSide> PeerSide::open(Parts parts) {
    store::SyncBook book(*parts.book);
    std::optional<model::Error> problem;
    Self self;
    auto done = book.whole([&] {
        auto known = selfIn(book);
        if (known.ok() && known.value().epoch.isNil()) {
            const std::string secret = hexOf(randomText(parts.random, Seal::kKeyBytes));
            known.value() = {randomId(parts.random), secret.substr(0, Seal::kKeyBytes)};
            store::Taking taking;
            taking.remember = {{"peer.epoch", known.value().epoch}, {"peer.seal", secret}};
            if (auto taken = book.take(taking); !taken.ok()) {
                problem = taken.error();
            }
        }
        if (known.ok()) {
            self = known.value();
        } else {
            problem = known.error();
        }
        return !problem;
    });
    if (!done.ok() || problem) {
        return done.ok() ? *problem : done.error();
    }
    return PeerSide(std::move(parts), self.epoch, Seal(self.key));
}

Result<void> PeerSide::recallSelf() {
    auto self = selfIn(book_);
    if (!self.ok()) {
        return self.error();
    }
    if (self.value().epoch.isNil()) {
        return model::damaged("the book does not know its peer any more");
    }
    epoch_ = self.value().epoch;
    seal_ = Seal(self.value().key);
    return {};
}

Result<void> PeerSide::beginEpoch(model::Instant now) {
    std::optional<model::Error> problem;
    auto done = book_.whole([&] {
        // The restored book would number its own entries again from where the backup ended.
        auto last = book_.lastNumbers(parts_.book->thisDevice().raw());
        auto forgot = last.ok() ? book_.forgetSent() : Result<void>(last.error());
        const RawId made = randomId(parts_.random);
        auto begun = forgot.ok() ? book_.takeIdentity(parts_.book->newId(now), last.value(),
                                                      {{"peer.epoch", made}})
                                 : forgot;
        if (begun.ok()) {
            epoch_ = made;
        } else {
            problem = begun.error();
        }
        return begun.ok();
    });
    return problem ? Result<void>(*problem) : done;
}

Reply PeerSide::answer(Call call, const RawId& device, std::string_view body, model::Instant now) {
    if (call == Call::PhotoHave || call == Call::PhotoPart) {
        return answerWithin(call, device, body, now);
    }
    Reply reply = failed(now);
    const auto done = book_.whole([&] {
        if (recallSelf().ok()) {
            reply = answerWithin(call, device, body, now);
        }
        return reply.status != Status::Failed;
    });
    return done.ok() ? reply : failed(now);
}

Reply PeerSide::answerWithin(Call call, const RawId& device, std::string_view body,
                             model::Instant now) {
    auto standing = standingOf(*parts_.book, device);
    if (!standing.ok()) {
        return failed(now);
    }
    const Standing& who = standing.value();
    if (who.revoked) {
        return call == Call::Push ? shutOut(who, body, now)
                                  : refuse(Status::Revoked, "this device was shut out", now);
    }
    if (!who.known) {
        return refuse(Status::NotAllowed, "this device belongs to nobody here", now);
    }
    switch (call) {
        case Call::Hello:
            return hello(who, body, now);
        case Call::Push:
            return push(who, body, now);
        case Call::Pull:
        case Call::Snapshot:
            return pull(who, body, now);
        case Call::PhotoHave:
            return photoHave(who, body, now);
        case Call::PhotoPart:
            return photoPart(who, body, now);
        case Call::Roster:
            return roster(who, now);
        case Call::Invite:
            break;  // of the program around it, which keeps the invitations
    }
    return refuse(Status::Malformed, "there is no such call", now);
}

Reply PeerSide::hello(Standing standing, std::string_view body, model::Instant now) {
    auto ask = readHelloAsk(body);
    if (!ask.ok()) {
        return refuse(Status::Malformed, ask.error().message, now);
    }
    if (!ask.value().renew.isNil() && ask.value().renew != standing.device) {
        auto renewed = renew(standing, ask.value().renew, now);
        if (!renewed.ok()) {
            return failed(now);
        }
        if (!renewed.value()) {
            return refuse(Status::NotAllowed, "that identity is taken", now);
        }
        standing.device = ask.value().renew;
    }
    auto last = book_.lastNumbers(standing.device);
    // Looking for holes reads the whole log, so it is done where there may be some: when the peer
    // was restored since it met the device, and while the device sends again what is lacking.
    const bool anew = ask.value().epoch != epoch_ || ask.value().wantOthers;
    auto unbroken = anew ? book_.unbroken() : Result<Unbroken>(Unbroken{});
    auto heard = book_.recall(heardName(standing.device));
    if (!last.ok() || !unbroken.ok() || !heard.ok()) {
        return failed(now);
    }
    const auto* before = std::get_if<std::int64_t>(&heard.value());
    if (before == nullptr || now.milliseconds() - *before > kHeardEveryMs) {
        store::Taking taking;
        taking.remember = {{heardName(standing.device), now.milliseconds()}};
        if (!book_.take(taking).ok()) {
            return failed(now);
        }
    }
    auto compacted = compactNow(now);
    auto horizon = book_.horizon();
    if (!compacted.ok() || !horizon.ok()) {
        return failed(now);
    }
    HelloAnswer answer;
    answer.epoch = epoch_;
    answer.time = now;
    answer.device = standing.device;
    answer.person = standing.person;
    answer.role = std::string(model::wordOf(standing.role));
    answer.last = last.value();
    answer.unbroken = anew ? unbroken.value()[standing.device] : last.value();
    if (standing.role == model::Role::Owner) {
        answer.horizon = horizon.value();
    }
    if (standing.role == model::Role::Owner && anew) {
        answer.others = std::move(unbroken).value();
    }
    return {Status::Ok, write(answer)};
}

// Gives a device another name: one that is new, or that it says it had in what a backup of the peer
// does not know of. False where the name is another's, or one it had before.
Result<bool> PeerSide::renew(const Standing& standing, const RawId& device, model::Instant now) {
    auto taken = parts_.book->record(Kind::Device, device);
    auto row = parts_.book->record(Kind::Device, standing.device);
    auto paired = book_.recall(pairedOf(device));
    auto heard = book_.recall(heardName(device));
    auto former = formerNames(*parts_.book, standing.device);
    if (!taken.ok() || !row.ok() || !former.ok()) {
        return !taken.ok() ? taken.error() : row.ok() ? former.error() : row.error();
    }
    if (!paired.ok() || !heard.ok()) {
        return paired.ok() ? heard.error() : paired.error();
    }
    const auto& theirs = taken.value();
    if (former.value().contains(device) || !model::isEmpty(paired.value()) ||
        !model::isEmpty(heard.value()) ||
        (theirs && theirs->at(model::field::Device::person) != model::Value{standing.person})) {
        return false;
    }
    if (!theirs) {
        store::Action action("a device takes another identity");
        action.set(device, model::field::Device::person, standing.person);
        action.set(device, model::field::Device::name, row.value()->at(model::field::Device::name));
        if (auto done = parts_.book->commit(action, now); !done.ok()) {
            return done.error();
        }
    }
    store::Taking taking;
    taking.remember = {{calledOf(standing.paired), device},
                       {pairedOf(device), standing.paired},
                       {formerOf(device), standing.device}};
    auto kept = book_.take(taking);
    return kept.ok() ? Result<bool>(true) : Result<bool>(kept.error());
}

Reply PeerSide::push(const Standing& standing, std::string_view body, model::Instant now) {
    auto ask = readPushAsk(body);
    if (!ask.ok()) {
        return refuse(Status::Malformed, ask.error().message, now);
    }
    auto& entries = ask.value().entries;
    for (const auto& entry : entries) {
        if (entry.name.lane == Lane::Sealed) {
            return refuse(Status::Malformed, "an entry is named as no device names its own", now);
        }
        if (entry.clock.instant().milliseconds() > now.milliseconds() + kMostAheadMs) {
            return refuse(Status::Ahead, "this device's clock is ahead of the peer's", now);
        }
    }
    Judged judged;
    auto status = judge(standing, entries, now, judged);
    if (!status.ok()) {
        return failed(now);
    }
    if (status.value() == Status::OtherContent) {
        return refuse(Status::OtherContent,
                      "this device was restored from a backup: it needs a new identity", now);
    }
    if (status.value() == Status::TooMuch) {
        return refuse(Status::TooMuch, "too much of this device was set aside", now);
    }
    if (status.value() != Status::Ok) {
        return refuse(status.value(), "it is not for this device to send", now);
    }
    if (standing.role != model::Role::Owner) {
        judged.taking.heldBy = standing.device;
    }
    if (!judged.taking.entries.empty() || !judged.taking.asides.empty()) {
        if (!book_.take(judged.taking).ok()) {
            return failed(now);
        }
    }
    return {Status::Ok, write(judged.answer)};
}

// Sorts what was pushed into what is taken and what is set aside, in order.
Result<Status> PeerSide::judge(const Standing& standing, std::vector<Entry>& entries,
                               model::Instant now, Judged& judged) {
    const bool owner = standing.role == model::Role::Owner;
    View view;
    if (!owner) {
        auto made = viewOf(*parts_.book, standing);
        if (!made.ok()) {
            return made.error();
        }
        view = std::move(made).value();
    }
    WriteJudge writes(book_, standing, view);
    auto last = book_.lastNumbers(standing.device);
    auto asides = book_.countAsides(standing.device);
    if (!last.ok() || !asides.ok()) {
        return last.ok() ? asides.error() : last.error();
    }
    auto& numbers = last.value();
    auto known = book_.entriesNamed(mayBeKnown(entries, standing.device, numbers));
    if (!known.ok()) {
        return known.error();
    }
    judged.known = std::move(known).value();
    for (auto& entry : entries) {
        auto& highest = numbers[static_cast<std::size_t>(entry.name.lane)];
        const bool own = entry.name.device == standing.device;
        if (!own && !owner) {
            auto theirs = isOfPerson(standing, entry.name.device);
            if (!theirs.ok()) {
                return theirs.error();
            }
            if (!theirs.value()) {
                return Status::NotAllowed;
            }
            view.crewDevices.insert(entry.name.device);
        }
        // Numbers may be missing: what a device was told to drop it can't send to a restored peer.
        if (!own || entry.name.number <= highest) {
            const Met met = metBefore(entry, own, judged);
            if (met == Met::Differs && own) {
                return Status::OtherContent;
            }
            if (met != Met::New) {
                continue;
            }
        }
        auto put = takeOrSetAside(standing, entry, writes, now, judged);
        if (!put.ok()) {
            return put.error();
        }
        highest = own ? std::max(highest, entry.name.number) : highest;
    }
    judged.answer.acknowledged = numbers;
    return asides.value() + judged.taking.asides.size() > kMostAsidesPerDevice ? Status::TooMuch
                                                                               : Status::Ok;
}

// Whether a name is, or can have been, one of a device of the caller's person: a peer restored from
// a backup does not know them all.
Result<bool> PeerSide::isOfPerson(const Standing& standing, const RawId& device) {
    if (standing.names.contains(device)) {
        return true;
    }
    auto row = parts_.book->record(Kind::Device, device);
    return row.ok() ? Result<bool>(!row.value()) : Result<bool>(row.error());
}

// Whether an entry of this name came before, and what became of it.
PeerSide::Met PeerSide::metBefore(const Entry& entry, bool own, Judged& judged) {
    const auto found = judged.known.find(entry.name);
    if (found == judged.known.end()) {
        return Met::New;
    }
    const auto& known = found->second;
    if (known.compacted) {
        return known.digest == store::contentDigest(entry) ? Met::Known : Met::Differs;
    }
    if (!sameContent(known.entry, entry)) {
        return Met::Differs;
    }
    if (!known.aside) {
        return Met::Known;
    }
    if (own) {
        judged.answer.refused.push_back({entry.name.lane, entry.name.number, known.why});
        return Met::Known;
    }
    return Met::New;  // an owner has it in the log, and so vouches for it
}

Result<void> PeerSide::takeOrSetAside(const Standing& standing, Entry& entry, WriteJudge& writes,
                                      model::Instant now, Judged& judged) {
    if (standing.role != model::Role::Owner) {
        if (auto done = unseal(standing.device, entry); !done.ok()) {
            return done.error();
        }
    }
    auto refusal = writes.refusal(entry);
    if (!refusal.ok()) {
        return refusal.error();
    }
    if (!refusal.value()) {
        judged.taking.entries.push_back(entry);
        return {};
    }
    judged.taking.asides.push_back({0, entry, now, *refusal.value()});
    if (entry.name.device == standing.device) {
        judged.answer.refused.push_back({entry.name.lane, entry.name.number, *refusal.value()});
    }
    return {};
}

// A device that was shut out: what it still sends is kept for the owner to see, never applied.
Reply PeerSide::shutOut(const Standing& standing, std::string_view body, model::Instant now) {
    auto ask = readPushAsk(body);
    auto count = book_.countAsides(standing.device);
    if (ask.ok() && count.ok()) {
        store::Taking taking;
        for (const auto& entry : ask.value().entries) {
            if (entry.name.device == standing.device && entry.name.lane != Lane::Sealed &&
                ++count.value() <= kMostAsidesPerDevice) {
                taking.asides.push_back({0, entry, now, "its device was shut out"});
            }
        }
        if (!taking.asides.empty() && !book_.take(taking).ok()) {
            return failed(now);
        }
    }
    return refuse(Status::Revoked, "this device was shut out", now);
}

// The names under which a device knows what it replaced, as the log has them.
Result<void> PeerSide::unseal(const RawId& device, Entry& entry) {
    std::vector<store::EntryName> names;
    const store::CellName cell{entry.record, entry.field};
    for (const auto& name : entry.replaces) {
        if (name.lane != Lane::Sealed) {
            names.push_back(name);
            continue;
        }
        auto all = book_.entriesOf(cell);
        if (!all.ok()) {
            return all.error();
        }
        for (const auto& one : all.value()) {
            if (seal_.nameFor(device, one.entry.name, cell) == name) {
                names.push_back(one.entry.name);
            }
        }
    }
    entry.replaces = std::move(names);
    return {};
}

Reply PeerSide::roster(const Standing& standing, model::Instant now) {
    auto devices = parts_.book->rows<model::Device>();
    auto people = parts_.book->rows<model::Person>();
    if (!devices.ok() || !people.ok()) {
        return failed(now);
    }
    RosterAnswer answer;
    for (const auto& device : devices.value()) {
        if (standing.role != model::Role::Owner && device.person.raw() != standing.person) {
            continue;  // other roles see their own devices
        }
        RosterAnswer::Line line = rosterLine(device, people.value());
        auto heard = book_.recall(heardName(line.device));
        if (!heard.ok()) {
            return failed(now);
        }
        if (const auto* at = std::get_if<std::int64_t>(&heard.value())) {
            line.heard = model::Instant::fromMilliseconds(*at);
        }
        answer.lines.push_back(std::move(line));
    }
    return {Status::Ok, write(answer)};
}

}  // namespace ledgerboard::sync
