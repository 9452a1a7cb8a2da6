// Reading and taking for the exchange. Entries by name stand in sync_named.cpp; forgetting, clocks
// and identities in sync_own.cpp; what the peer sent in sync_sent.cpp.
#include "core/store/sync_book.h"

#include <algorithm>

#include "core/store/book_parts.h"
#include "core/store/sync_parts.h"

namespace ledgerboard::store {

using model::RawId;
using model::Result;

Aside asideFrom(const Statement& select) {
    return {select.integer(0), entryFrom(select, 3),
            model::Instant::fromMilliseconds(select.integer(1)), select.text(2)};
}

std::size_t roughBytes(const Entry& entry) {
    std::size_t bytes = 90 + entry.replaces.size() * 60;
    if (const auto* text = std::get_if<std::string>(&entry.value)) {
        bytes += text->size() * 2;  // quotes and escapes at worst
    }
    return bytes;
}

namespace {

// Adds entries while there is room; false once there is none.
class Room {
  public:
    Room(std::size_t maxEntries, std::size_t maxBytes)
        : maxEntries_(maxEntries), maxBytes_(maxBytes) {}

    bool holds(const Entry& entry) {
        bytes_ += roughBytes(entry);
        ++count_;
        return count_ <= maxEntries_ && (count_ == 1 || bytes_ <= maxBytes_);
    }

  private:
    std::size_t maxEntries_;
    std::size_t maxBytes_;
    std::size_t count_ = 0;
    std::size_t bytes_ = 0;
};

std::vector<Arrived> arrivedFrom(Statement& select) {
    std::vector<Arrived> found;
    while (select.step()) {
        found.push_back({select.integer(0), entryFrom(select, 1)});
    }
    return found;
}

void keepAside(Database& database, const Aside& aside) {
    const std::string replaces = packReplaces(aside.entry.replaces);
    auto insert = database.prepare(
        "INSERT INTO asides(device, lane, number, clock, record, field, value, replaces, "
        "at_ms, why) SELECT ?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10 WHERE NOT EXISTS(SELECT 1 FROM "
        "entries e JOIN writers w ON w.writer = e.writer WHERE w.device = ?1 AND e.lane = ?2 AND "
        "e.number = ?3) ON CONFLICT(device, lane, number) DO NOTHING");
    insert.bind(1, aside.entry.name.device)
        .bind(2, static_cast<std::int64_t>(aside.entry.name.lane))
        .bind(3, aside.entry.name.number)
        .bind(4, aside.entry.clock.raw())
        .bind(5, aside.entry.record)
        .bind(6, std::int64_t{aside.entry.field})
        .bind(7, aside.entry.value)
        .bindBlob(8, replaces)
        .bind(9, aside.at.milliseconds())
        .bind(10, std::string_view(aside.why))
        .run();
}

// An entry that an owner vouches for after all is no longer set aside.
void dropAside(Database& database, const EntryName& name) {
    auto remove =
        database.prepare("DELETE FROM asides WHERE device = ?1 AND lane = ?2 AND number = ?3");
    remove.bind(1, name.device)
        .bind(2, static_cast<std::int64_t>(name.lane))
        .bind(3, name.number)
        .run();
}

// Whether or not the entry holds its cell: where it does not, the device is sent what does, or told
// to drop the cell.
void noteHeld(Database& database, const RawId& device, const Entry& entry) {
    auto note = database.prepare(
        "INSERT INTO sent(device, record, field, arrival) "
        "SELECT ?1, e.record, e.field, e.arrival FROM entries e JOIN writers w ON w.writer = "
        "e.writer WHERE w.device = ?1 AND e.lane = ?2 AND e.number = ?3 "
        "ON CONFLICT(device, record, field) DO UPDATE SET arrival = excluded.arrival");
    note.bind(1, device)
        .bind(2, static_cast<std::int64_t>(entry.name.lane))
        .bind(3, entry.name.number)
        .run();
}

bool wroteBeyond(Database& database, Log& log, const RawId& device, const LaneNumbers& numbers) {
    auto select = database.prepare(
        "SELECT 1 FROM entries WHERE writer = ?1 AND "
        "((lane = 0 AND number > ?2) OR (lane = 1 AND number > ?3)) LIMIT 1");
    select.bind(1, log.knownWriterOf(device)).bind(2, numbers[0]).bind(3, numbers[1]);
    return select.step();
}

void takeEntries(Database& database, Log& log, const Taking& taking, Taken& taken) {
    const bool anyAside = [&] {
        auto select = database.prepare("SELECT 1 FROM asides LIMIT 1");
        return select.step();
    }();
    for (const auto& entry : taking.entries) {
        log.take(entry);
        if (anyAside) {
            dropAside(database, entry.name);
        }
        if (taking.heldBy) {
            noteHeld(database, *taking.heldBy, entry);
        }
    }
    const auto settled = log.flush();
    taken.added = settled.added;
    if (settled.added > 0) {
        log.setClock(std::max(log.clock(), settled.latest));
    }
}

// What a fresh start brings of a cell takes the place of whatever the peer sent of it before, which
// a restored peer may not have any more.
void freshen(Database& database, Log& log, const std::vector<Entry>& entries) {
    {
        auto select = database.prepare("SELECT 1 FROM stale LIMIT 1");
        if (!select.step()) {
            return;
        }
    }
    for (const auto& entry : entries) {
        {
            auto remove = database.prepare("DELETE FROM stale WHERE record = ?1 AND field = ?2");
            remove.bind(1, entry.record).bind(2, std::int64_t{entry.field}).run();
        }
        if (database.changes() == 0) {
            continue;
        }
        std::vector<std::int64_t> before;
        {
            auto select = database.prepare(
                "SELECT arrival FROM entries WHERE record = ?1 AND field = ?2 AND lane = 2 AND "
                "NOT (writer = ?3 AND number = ?4) AND arrival IN (SELECT arrival FROM cells "
                "WHERE record = ?1 UNION SELECT arrival FROM superseded WHERE record = ?1)");
            select.bind(1, entry.record)
                .bind(2, std::int64_t{entry.field})
                .bind(3, log.writerOf(entry.name.device))
                .bind(4, entry.name.number);
            while (select.step()) {
                before.push_back(select.integer(0));
            }
        }
        if (!before.empty()) {
            log.forgetEntries(entry.record, before);
        }
    }
}

}  // namespace

Result<std::vector<Arrived>> SyncBook::after(const Wanted& wanted) {
    return guardStore([&]() -> Result<std::vector<Arrived>> {
        auto& parts = *book_.parts_;
        parts.log->forget();
        const std::int64_t without = parts.log->knownWriterOf(wanted.without);
        const std::int64_t only = parts.log->knownWriterOf(wanted.only);
        if (only == 0 && !wanted.only.isNil()) {
            return std::vector<Arrived>();
        }
        auto select = parts.database->prepare(
            std::string("SELECT e.arrival, ") + kEntryColumns +
            "WHERE e.arrival > ?1 AND e.writer <> ?2 AND (CAST(?3 AS BIGINT) = 0 OR e.writer = ?3) "
            "ORDER BY e.arrival LIMIT ?4");
        select.bind(1, wanted.arrival)
            .bind(2, without)
            .bind(3, only)
            .bind(4, static_cast<std::int64_t>(wanted.maxEntries));
        std::vector<Arrived> found;
        Room room(wanted.maxEntries, wanted.maxBytes);
        while (select.step()) {
            Arrived one{select.integer(0), entryFrom(select, 1)};
            if (!room.holds(one.entry)) {
                break;
            }
            found.push_back(std::move(one));
        }
        return found;
    });
}

Result<std::vector<Entry>> SyncBook::ownAfter(const LaneNumbers& acknowledged,
                                              std::size_t maxEntries, std::size_t maxBytes) {
    return guardStore([&]() -> Result<std::vector<Entry>> {
        auto& parts = *book_.parts_;
        parts.log->forget();
        // By number, which the log finds at once however long it is; then in order of arrival. The
        // lowest of each lane are there, so no lane gets a hole by the limit.
        std::vector<Arrived> found;
        for (std::int64_t lane = 0; lane < 2; ++lane) {
            auto select = parts.database->prepare(
                std::string("SELECT e.arrival, ") + kEntryColumns +
                "WHERE e.writer = ?1 AND e.lane = ?2 AND e.number > ?3 ORDER BY e.number LIMIT ?4");
            select.bind(1, parts.log->knownWriterOf(parts.device.raw()))
                .bind(2, lane)
                .bind(3, acknowledged[static_cast<std::size_t>(lane)])
                .bind(4, static_cast<std::int64_t>(maxEntries));
            for (auto& one : arrivedFrom(select)) {
                found.push_back(std::move(one));
            }
        }
        std::sort(found.begin(), found.end(),
                  [](const Arrived& a, const Arrived& b) { return a.arrival < b.arrival; });
        std::vector<Entry> entries;
        Room room(maxEntries, maxBytes);
        for (auto& one : found) {
            if (!room.holds(one.entry)) {
                break;
            }
            entries.push_back(std::move(one.entry));
        }
        return entries;
    });
}

Result<std::int64_t> SyncBook::lastArrival() {
    return guardStore([&]() -> Result<std::int64_t> {
        auto select =
            book_.parts_->database->prepare("SELECT coalesce(max(arrival), 0) FROM entries");
        select.step();
        return select.integer(0);
    });
}

Result<std::vector<Arrived>> SyncBook::entriesAt(const std::vector<std::int64_t>& arrivals) {
    return guardStore([&]() -> Result<std::vector<Arrived>> {
        std::vector<Arrived> found;
        for (const auto arrival : arrivals) {
            auto select = book_.parts_->database->prepare(std::string("SELECT e.arrival, ") +
                                                          kEntryColumns + "WHERE e.arrival = ?1");
            if (select.bind(1, arrival).step()) {
                found.push_back({arrival, entryFrom(select, 1)});
            }
        }
        return found;
    });
}

Result<std::vector<Arrived>> SyncBook::entriesOf(const CellName& cell) {
    return guardStore([&]() -> Result<std::vector<Arrived>> {
        auto select = book_.parts_->database->prepare(
            std::string("SELECT e.arrival, ") + kEntryColumns +
            "WHERE e.field = ?2 AND e.arrival IN (SELECT arrival FROM cells WHERE record = ?1 "
            "UNION SELECT arrival FROM superseded WHERE record = ?1) ORDER BY e.arrival");
        select.bind(1, cell.record).bind(2, std::int64_t{cell.field});
        return arrivedFrom(select);
    });
}

Result<std::vector<Arrived>> SyncBook::cellsOf(const RawId& record) {
    return guardStore([&]() -> Result<std::vector<Arrived>> {
        auto select = book_.parts_->database->prepare(
            std::string("SELECT e.arrival, ") + kEntryColumns +
            "JOIN cells c ON c.arrival = e.arrival WHERE c.record = ?1 ORDER BY c.field");
        select.bind(1, record);
        return arrivedFrom(select);
    });
}

Result<LaneNumbers> SyncBook::lastNumbers(const RawId& device) {
    return guardStore([&]() -> Result<LaneNumbers> {
        auto& parts = *book_.parts_;
        parts.log->forget();
        LaneNumbers numbers{};
        for (std::int64_t lane = 0; lane < 2; ++lane) {
            auto select = parts.database->prepare(
                "SELECT coalesce(max(number), 0) FROM asides WHERE device = ?1 AND lane = ?2");
            select.bind(1, device).bind(2, lane).step();
            numbers[static_cast<std::size_t>(lane)] =
                std::max(select.integer(0), parts.log->lastNumber(device, static_cast<Lane>(lane)));
        }
        return numbers;
    });
}

Result<void> SyncBook::whole(const std::function<bool()>& work) {
    return guardStore([&]() -> Result<void> {
        auto& parts = *book_.parts_;
        parts.log->forget();
        Transaction transaction(*parts.database);
        // Another program may have given the book another identity, or made its rows anew.
        readSelf(parts);
        if (meta(*parts.database, "catalog") != model::Value{catalogFingerprint()}) {
            return model::cannotBeMet(
                "the book was opened by another version of the program: use one version");
        }
        if (work()) {
            transaction.commit();
        }
        return {};
    });
}

Result<model::Value> SyncBook::recall(const std::string& name) {
    return guardStore(
        [&]() -> Result<model::Value> { return meta(*book_.parts_->database, name); });
}

Result<Taken> SyncBook::take(const Taking& taking) {
    return guardStore([&]() -> Result<Taken> {
        auto& parts = *book_.parts_;
        auto& database = *parts.database;
        auto& log = *parts.log;
        log.forget();
        Taken taken;
        if (!taking.forget.empty() || !taking.forgetEntries.empty() || taking.forgetStale) {
            database.backend().overwriteDeleted();
        }
        Transaction transaction(database, taking.durable);
        if (taking.unlessBeyond &&
            wroteBeyond(database, log, parts.device.raw(), *taking.unlessBeyond)) {
            taken.done = false;
            return taken;
        }
        forgetCells(database, log, taking.forget);
        forgetNamed(database, log, taking.forgetEntries);
        if (taking.allStale) {
            database.run(
                "DELETE FROM stale; INSERT INTO stale(record, field) "
                "SELECT record, field FROM cells");
        }
        takeEntries(database, log, taking, taken);
        freshen(database, log, taking.entries);
        if (taking.forgetStale) {
            forgetCells(database, log, staleCells(database));
            database.run("DELETE FROM stale");
        }
        if (taking.forgetAsides) {
            database.run("DELETE FROM asides");
        }
        for (const auto& aside : taking.asides) {
            keepAside(database, aside);
        }
        for (const auto& one : taking.remember) {
            setMeta(database, one.name, one.value);
        }
        transaction.commit();
        return taken;
    });
}

void SyncBook::waitAtMost(int ms) {
    book_.parts_->database->backend().waitAtMost(ms);
}

bool SyncBook::mayPass() const {
    const auto& backend = book_.parts_->database->backend();
    return !backend.isThere() || backend.wasInTheWay();
}

Result<std::vector<Aside>> SyncBook::asides(std::int64_t place, std::size_t limit) {
    return guardStore([&]() -> Result<std::vector<Aside>> {
        auto select = book_.parts_->database->prepare(std::string(kAsideColumns) +
                                                      "WHERE place > ?1 ORDER BY place LIMIT ?2");
        select.bind(1, place).bind(2, static_cast<std::int64_t>(limit));
        std::vector<Aside> found;
        while (select.step()) {
            found.push_back(asideFrom(select));
        }
        return found;
    });
}

Result<std::size_t> SyncBook::countAsides(const RawId& device) {
    return guardStore([&]() -> Result<std::size_t> {
        auto select =
            book_.parts_->database->prepare("SELECT count(*) FROM asides WHERE device = ?1");
        select.bind(1, device).step();
        return static_cast<std::size_t>(select.integer(0));
    });
}

}  // namespace ledgerboard::store
