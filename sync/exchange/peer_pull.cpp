// Entries down: the log to owners, a view of it to everyone else.
#include <charconv>

#include "sync/exchange/peer_parts.h"
#include "sync/exchange/peer_side.h"

namespace ledgerboard::sync {

using model::RawId;
using model::Result;
using store::CellName;
using store::SentCell;

namespace {

// Where a device stands: "l.EPOCH.ARRIVAL.ASIDE" of an owner's, "v.EPOCH.ROUND" of another's.
struct Cursor {
    char form = 0;
    RawId epoch;
    std::int64_t first = 0;
    std::int64_t second = 0;
};

std::string textOf(const Cursor& cursor) {
    std::string text =
        std::string(1, cursor.form) + "." + cursor.epoch.hex() + "." + std::to_string(cursor.first);
    return cursor.form == 'l' ? text + "." + std::to_string(cursor.second) : text;
}

// Everything from the beginning where the text is none of ours.
Cursor cursorFrom(std::string_view text) {
    constexpr std::size_t kHead = 2 + 2 * RawId::kBytes + 1;
    Cursor cursor;
    if (text.size() <= kHead || text[1] != '.' || text[kHead - 1] != '.') {
        return {};
    }
    auto epoch = RawId::parse(text.substr(2, 2 * RawId::kBytes));
    if (!epoch.ok()) {
        return {};
    }
    cursor.form = text[0];
    cursor.epoch = epoch.value();
    const char* end = text.data() + text.size();
    auto read = std::from_chars(text.data() + kHead, end, cursor.first);
    if (read.ec == std::errc{} && cursor.form == 'l' && read.ptr != end && *read.ptr == '.') {
        read = std::from_chars(read.ptr + 1, end, cursor.second);
    }
    const bool good =
        read.ec == std::errc{} && read.ptr == end && cursor.first >= 0 && cursor.second >= 0;
    return good ? cursor : Cursor{};
}

// What differs between what a device was sent and what it may see: drops first, then what is new.
std::vector<SentCell> difference(const ViewCells& view,
                                 const std::map<CellName, std::int64_t>& sent) {
    std::vector<SentCell> changes;
    for (const auto& [cell, arrival] : sent) {
        if (!view.contains(cell)) {
            changes.push_back({cell, 0});
        }
    }
    for (const auto& [cell, shown] : view) {
        const auto found = sent.find(cell);
        if (found == sent.end() || found->second != shown.arrival) {
            changes.push_back({cell, shown.arrival});
        }
    }
    return changes;
}

// Whether what was sent before would still be sent.
bool stillRight(const std::vector<SentCell>& sending, const ViewCells& view) {
    for (const auto& one : sending) {
        const auto found = view.find(one.cell);
        if (one.arrival == 0 ? found != view.end()
                             : found == view.end() || found->second.arrival != one.arrival) {
            return false;
        }
    }
    return true;
}

// Where a device stands at the peer: which round it has confirmed, which was sent it, how many
// there ever were, and up to where in the log it has everything (0: not yet).
struct Rounds {
    std::int64_t confirmed = 0;
    std::int64_t sending = 0;
    std::int64_t ever = 0;
    std::int64_t complete = 0;
};

constexpr std::array<const char*, 4> kRoundNames = {"confirmed", "sending", "ever", "complete"};

std::string roundName(const RawId& device, std::size_t which) {
    return "peer.view." + device.hex() + "." + kRoundNames[which];
}

Result<Rounds> roundsOf(store::SyncBook& book, const RawId& device) {
    std::array<std::int64_t, 4> numbers{};
    for (std::size_t k = 0; k < numbers.size(); ++k) {
        auto value = book.recall(roundName(device, k));
        if (!value.ok()) {
            return value.error();
        }
        const auto* number = std::get_if<std::int64_t>(&value.value());
        numbers[k] = number != nullptr ? *number : 0;
    }
    return Rounds{numbers[0], numbers[1], numbers[2], numbers[3]};
}

std::vector<store::Remembered> toRemember(const RawId& device, const Rounds& rounds) {
    return {{roundName(device, 0), rounds.confirmed},
            {roundName(device, 1), rounds.sending},
            {roundName(device, 2), rounds.ever},
            {roundName(device, 3), rounds.complete}};
}

using Has = std::map<CellName, std::int64_t>;

// What a cursor means: the device took what was sent it last, or it did not, or it begins anew.
struct Asked {
    bool confirms = false;
    bool repeats = false;
    bool fresh = false;
};

Asked askedFor(const Cursor& cursor, const RawId& epoch, const Rounds& at) {
    const bool ours = cursor.form == 'v' && cursor.epoch == epoch && cursor.first != 0;
    Asked asked;
    asked.confirms = ours && cursor.first == at.sending;
    asked.repeats = ours && !asked.confirms && cursor.first == at.confirmed;
    asked.fresh = !asked.confirms && !asked.repeats;
    return asked;
}

// What the device has for certain.
Has hasNow(const Asked& asked, Has sent, const std::vector<SentCell>& sending) {
    if (asked.fresh) {
        return {};
    }
    for (const auto& one : sending) {
        if (!asked.confirms) {
            break;
        }
        if (one.arrival == 0) {
            sent.erase(one.cell);
        } else {
            sent[one.cell] = one.arrival;
        }
    }
    return sent;
}

// Puts changes into the answer while there is room, and returns those that went in. `entries` are
// those of the changes that are no drops, in order.
std::vector<SentCell> fill(PullAnswer& answer, const std::vector<SentCell>& changes,
                           std::vector<store::Entry> entries, const Has& has) {
    std::vector<SentCell> chosen;
    std::size_t bytes = 0;
    std::size_t next = 0;
    for (const auto& change : changes) {
        if (change.arrival == 0) {
            answer.drops.push_back(change.cell);
            chosen.push_back(change);
            continue;
        }
        auto& entry = entries[next++];
        const auto* said = std::get_if<std::string>(&entry.value);
        bytes += 100 + (said != nullptr ? 2 * said->size() : 0);
        if (bytes > kFillBytes && !answer.entries.empty()) {
            break;
        }
        // The peer's own word on when a neighbour finished gives way to any other.
        if (change.cell.field == model::field::Item::actualFinishOn && has.contains(change.cell)) {
            answer.drops.push_back(change.cell);
        }
        answer.entries.push_back(std::move(entry));
        chosen.push_back(change);
    }
    return chosen;
}

}  // namespace

Reply PeerSide::pull(const Standing& standing, std::string_view body, model::Instant now) {
    auto ask = readPullAsk(body);
    if (!ask.ok()) {
        return refuse(Status::Malformed, ask.error().message, now);
    }
    return standing.role == model::Role::Owner ? pullLog(standing, ask.value().cursor, now)
                                               : pullView(standing, ask.value().cursor, now);
}

Reply PeerSide::pullLog(const Standing& standing, const std::string& text, model::Instant now) {
    Cursor cursor = cursorFrom(text);
    if (cursor.form != 'l' || cursor.epoch != epoch_) {
        cursor = {'l', epoch_, 0, 0};
    }
    auto taken = book_.recall(takenName(standing.device));
    if (!taken.ok()) {
        return failed(now);
    }
    if (taken.value() != model::Value{cursor.first}) {
        store::Taking taking;
        taking.remember = {{takenName(standing.device), cursor.first}};
        if (!book_.take(taking).ok()) {
            return failed(now);
        }
    }
    PullAnswer answer;
    // What was set aside goes first, so that nobody sees holes in a log without their reason.
    auto asides = book_.asides(cursor.second, kMostEntries / 10);
    if (!asides.ok()) {
        return failed(now);
    }
    answer.asides = std::move(asides).value();
    if (!answer.asides.empty()) {
        cursor.second = answer.asides.back().place;
        answer.more = true;
    } else {
        auto entries =
            book_.after({cursor.first, kMostEntries, kFillBytes, standing.device, model::RawId{}});
        auto last = book_.lastArrival();
        if (!entries.ok() || !last.ok()) {
            return failed(now);
        }
        for (auto& one : entries.value()) {
            answer.entries.push_back(std::move(one.entry));
            cursor.first = one.arrival;
        }
        answer.more = !entries.value().empty() && cursor.first < last.value();
        if (entries.value().empty()) {
            cursor.first = last.value();  // all that is left is the device's own
        }
    }
    answer.cursor = textOf(cursor);
    return {Status::Ok, write(answer)};
}

Reply PeerSide::pullView(const Standing& standing, const std::string& text, model::Instant now) {
    auto rounds = roundsOf(book_, standing.device);
    auto last = book_.lastArrival();
    if (!rounds.ok() || !last.ok()) {
        return failed(now);
    }
    Rounds& at = rounds.value();
    const Asked asked = askedFor(cursorFrom(text), epoch_, at);
    PullAnswer answer;
    answer.cursor = text;
    if (asked.repeats && at.sending == 0 && at.complete == last.value()) {
        return {Status::Ok, write(answer)};  // nothing was written since it had everything
    }
    auto view = viewOf(*parts_.book, standing);
    auto sent = book_.sent(standing.device);
    auto before = book_.sending(standing.device);
    if (!view.ok() || !sent.ok() || !before.ok()) {
        return failed(now);
    }
    auto cells = cellsOf(book_, standing, view.value());
    if (!cells.ok()) {
        return failed(now);
    }
    const Has has = hasNow(asked, std::move(sent).value(), before.value());
    auto changes = difference(cells.value(), has);
    const std::size_t all = changes.size();
    const bool again =
        asked.repeats && at.sending != 0 && stillRight(before.value(), cells.value());
    if (again) {
        changes = std::move(before).value();
    } else if (changes.size() > kMostEntries) {
        changes.resize(kMostEntries);
    }
    auto entries = sealed(standing, cells.value(), changes);
    if (!entries.ok()) {
        return failed(now);
    }
    answer.fresh = asked.fresh;
    auto chosen = fill(answer, changes, std::move(entries).value(), has);
    answer.more = chosen.size() < all;
    if (!again) {
        at.confirmed = asked.confirms ? at.sending : asked.fresh ? 0 : at.confirmed;
        at.sending = chosen.empty() && !asked.fresh ? 0 : ++at.ever;
        at.complete = chosen.empty() ? last.value() : 0;
        if (!book_
                 .send({standing.device, asked.confirms, asked.fresh, std::move(chosen),
                        toRemember(standing.device, at)})
                 .ok()) {
            return failed(now);
        }
    }
    if (at.sending != 0) {
        answer.cursor = textOf({'v', epoch_, at.sending, 0});
    }
    return {Status::Ok, write(answer)};
}

Result<std::vector<store::Entry>> PeerSide::sealed(const Standing& standing, const ViewCells& cells,
                                                   const std::vector<SentCell>& chosen) {
    std::vector<store::Entry> entries;
    for (const auto& one : chosen) {
        if (one.arrival == 0) {
            continue;
        }
        auto found = book_.entriesAt({one.arrival});
        if (!found.ok()) {
            return found.error();
        }
        if (found.value().empty()) {
            return model::damaged("an entry of the log is missing");
        }
        store::Entry entry = std::move(found.value().front().entry);
        entry.name = seal_.nameFor(standing.device, entry.name, one.cell);
        entry.replaces.clear();
        entry.record = one.cell.record;
        entry.field = one.cell.field;
        if (const auto& shown = cells.at(one.cell).shownAs) {
            entry.value = *shown;
        }
        entries.push_back(std::move(entry));
    }
    return entries;
}

}  // namespace ledgerboard::sync
