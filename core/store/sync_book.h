// What does the exchange with other books need from a book? Entries in order of arrival and by
// number, taking entries and remembering how far that went in one transaction, forgetting, giving
// own entries another clock or another device; and at the peer, what each device was sent.
//
// Source: project decision; what travels and why is told in docs/sync.md.
// Threads: as Book. Every function is one transaction.
#pragma once

#include <array>
#include <functional>
#include <map>
#include <string>
#include <utility>
#include <vector>

#include "core/store/backend.h"
#include "core/store/book.h"

namespace ledgerboard::store {

struct CellName {
    model::RawId record;
    model::FieldCode field = 0;
    friend auto operator<=>(const CellName&, const CellName&) = default;
};

// An entry and its place in the log of this file. Places rise; they mean nothing elsewhere.
struct Arrived {
    std::int64_t arrival = 0;
    Entry entry;
};

// An entry that was not applied because its writer may not write it.
struct Aside {
    std::int64_t place = 0;  // in this file, rising
    Entry entry;
    model::Instant at;  // when the peer set it aside
    std::string why;
};

// Of what an entry says, its name apart: as a compacted one is remembered.
[[nodiscard]] std::int64_t contentDigest(const Entry& entry);

// Something kept in the book under a name of its own, in the same transaction; empty forgets it.
struct Remembered {
    std::string name;
    model::Value value;
};

// The highest number of a device's two lanes, by Lane.
using LaneNumbers = std::array<std::int64_t, 2>;

// One fact of what a device was sent: the entry (by arrival here) that it has of a cell; 0 to drop.
struct SentCell {
    CellName cell;
    std::int64_t arrival = 0;
    friend auto operator<=>(const SentCell&, const SentCell&) = default;
};

// A change of the book by the exchange: happens whole or not at all.
struct Taking {
    std::vector<CellName> forget;          // cells that go, with their history; done first
    std::vector<EntryName> forgetEntries;  // single entries that go
    std::vector<Entry> entries;            // taken as by Book::apply
    std::vector<Aside> asides;             // set aside; where known already, nothing changes
    std::vector<Remembered> remember;
    bool allStale = false;      // marks every cell as stale, before `entries`
    bool forgetStale = false;   // forgets what is stale still, after `entries`
    bool forgetAsides = false;  // forgets what was set aside: it is for owners
    // Of the peer: the entries are noted as what this device has of their cells.
    std::optional<model::RawId> heldBy;
    // Later: what is taken may be lost with the power, as if it had never been, and may be asked
    // for again. Not for what anyone was told is kept.
    Durable durable = Durable::Yes;
    // Does nothing at all where own entries beyond these numbers were written meanwhile.
    std::optional<LaneNumbers> unlessBeyond;
};

struct Taken {
    bool done = true;       // false where unlessBeyond forbade it
    std::size_t added = 0;  // entries that were new
};

// Two or more values of a checked field, written without knowledge of each other.
struct Clash {
    CellName cell;
    std::vector<Entry> heads;  // latest first; what the cell holds is the first
};

class SyncBook {
  public:
    // Requires: `book` outlives it.
    explicit SyncBook(Book& book) : book_(book) {}

    [[nodiscard]] Book& book() { return book_; }

    // From here on whoever writes waits no longer than this for another program that does.
    void waitAtMost(int ms);
    // After something failed: whether it may go well a little later, since another program wrote
    // for longer than that, or the database is out of sight.
    [[nodiscard]] bool mayPass() const;

    // Entries that came after `arrival`, at most `maxEntries` and about `maxBytes` (but one at
    // least), in order of arrival; without those of device `without`, or only those of `only`.
    struct Wanted {
        std::int64_t arrival = 0;
        std::size_t maxEntries = 0;
        std::size_t maxBytes = 0;
        model::RawId without;
        model::RawId only;
    };

    [[nodiscard]] model::Result<std::vector<Arrived>> after(const Wanted& wanted);
    // Own entries with a number above `acknowledged` of their lane, in order of arrival, limited in
    // the same way.
    [[nodiscard]] model::Result<std::vector<Entry>> ownAfter(const LaneNumbers& acknowledged,
                                                             std::size_t maxEntries,
                                                             std::size_t maxBytes);
    // The arrival of the last entry; 0 where there is none.
    [[nodiscard]] model::Result<std::int64_t> lastArrival();
    [[nodiscard]] model::Result<std::vector<Arrived>> entriesAt(
        const std::vector<std::int64_t>& arrivals);
    // Everything ever written to a cell, or to any cell of a record, in order of arrival.
    [[nodiscard]] model::Result<std::vector<Arrived>> entriesOf(const CellName& cell);
    // What the cells of a record hold, in order of field.
    [[nodiscard]] model::Result<std::vector<Arrived>> cellsOf(const model::RawId& record);

    // The entry of this name, in the log or set aside; empty where there is none.
    struct Known {
        Entry entry;
        bool aside = false;
        bool compacted = false;  // gone, but for its name and its digest: `entry` holds no more
        std::int64_t digest = 0;
        std::string why;  // of one set aside
    };

    [[nodiscard]] model::Result<std::optional<Known>> entryNamed(const EntryName& name);
    // The same of many at once: those that are known.
    [[nodiscard]] model::Result<std::map<EntryName, Known>> entriesNamed(
        const std::vector<EntryName>& names);

    // The highest numbers of a device, here or set aside here.
    [[nodiscard]] model::Result<LaneNumbers> lastNumbers(const model::RawId& device);
    // For each device, up to which number its lanes are here without a hole. What was set aside is
    // one: whoever has it in the log vouches for it.
    [[nodiscard]] model::Result<std::map<model::RawId, LaneNumbers>> unbroken();

    // Runs `work` as one transaction: what it reads is of one moment, what it writes is kept whole
    // where it returns true and else not at all. Who else writes, on this machine or another,
    // waits. Errors: of the book; it was opened by a program with another catalog.
    [[nodiscard]] model::Result<void> whole(const std::function<bool()>& work);

    [[nodiscard]] model::Result<model::Value> recall(const std::string& name);
    [[nodiscard]] model::Result<Taken> take(const Taking& taking);

    // Asides beyond `place`, in order, at most `limit`.
    [[nodiscard]] model::Result<std::vector<Aside>> asides(std::int64_t place, std::size_t limit);
    [[nodiscard]] model::Result<std::size_t> countAsides(const model::RawId& device);

    // Gives own entries beyond `acknowledged` clocks that are not ahead of `now`, keeping their
    // order and their actions. Returns how many changed.
    [[nodiscard]] model::Result<std::size_t> restamp(const LaneNumbers& acknowledged,
                                                     model::Instant now);
    // This book writes for `device` from now on; own entries beyond `acknowledged` become that
    // device's, numbered from 1.
    [[nodiscard]] model::Result<void> takeIdentity(const model::RawId& device,
                                                   const LaneNumbers& acknowledged,
                                                   const std::vector<Remembered>& remember);

    // Drops values that were written over before `before`, of *last* fields that are no money; what
    // a field held at that moment stays, so that everything known since is known still. Names are
    // kept. Returns how many went. Source: docs/book-format.md, "What may be forgotten".
    struct Compaction {
        model::HybridClock before;
        std::int64_t upTo = 0;  // arrival: what came later stays
        LaneNumbers ownUpTo{};  // own entries beyond these stay
    };

    [[nodiscard]] model::Result<std::size_t> compact(const Compaction& compaction);
    // From where on the log is whole; 0 where all of it is.
    [[nodiscard]] model::Result<model::HybridClock> horizon();

    // Checked fields with more than one head, in order of record and field. Source: sync.md.
    [[nodiscard]] model::Result<std::vector<Clash>> clashes();
    // Writes `value` as an entry that replaces every head of the cell, which ends the clash.
    // Errors: the value does not fit the field.
    [[nodiscard]] model::Result<void> settle(const CellName& cell, const model::Value& value,
                                             model::Instant now);

    // At the peer: what a device of another role has, what was sent it and is not confirmed.
    [[nodiscard]] model::Result<std::map<CellName, std::int64_t>> sent(const model::RawId& device);
    [[nodiscard]] model::Result<std::vector<SentCell>> sending(const model::RawId& device);

    // Replaces what is being sent, and remembers. With `confirm`, what was being sent counts as
    // sent first; with `fresh`, nothing was ever sent.
    struct Sending {
        model::RawId device;
        bool confirm = false;
        bool fresh = false;
        std::vector<SentCell> cells;
        std::vector<Remembered> remember;
    };

    [[nodiscard]] model::Result<void> send(const Sending& sending);
    // Forgets what every device was sent: after a backup was restored.
    [[nodiscard]] model::Result<void> forgetSent();

  private:
    Book& book_;
};

}  // namespace ledgerboard::store
