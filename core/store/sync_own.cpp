// What a book does to its own log for the exchange: forgets, restamps, takes another identity; and
// clashes, which are read from the log.
#include <algorithm>
#include <map>
#include <set>

#include "core/store/book_parts.h"
#include "core/store/sync_parts.h"

namespace ledgerboard::store {

using model::HybridClock;
using model::RawId;
using model::Result;

namespace {

// Own entries of each action that nobody has acknowledged, by clock.
struct OwnAction {
    HybridClock clock;
    std::vector<std::int64_t> arrivals;
    std::vector<RawId> records;
};

std::vector<OwnAction> unacknowledged(Database& database, std::int64_t writer,
                                      const LaneNumbers& acknowledged) {
    std::map<HybridClock, OwnAction> byClock;
    for (std::int64_t lane = 0; lane < 2; ++lane) {
        auto select = database.prepare(
            "SELECT arrival, clock, record FROM entries WHERE writer = ?1 AND lane = ?2 AND number "
            "> ?3");
        select.bind(1, writer).bind(2, lane).bind(3, acknowledged[static_cast<std::size_t>(lane)]);
        while (select.step()) {
            const auto clock = HybridClock::fromRaw(select.integer(1));
            auto& action = byClock[clock];
            action.clock = clock;
            action.arrivals.push_back(select.integer(0));
            action.records.push_back(select.id(2));
        }
    }
    std::vector<OwnAction> actions;
    actions.reserve(byClock.size());
    for (auto& [clock, action] : byClock) {
        actions.push_back(std::move(action));
    }
    return actions;
}

void setActionClock(Database& database, HybridClock from, HybridClock to) {
    auto own = database.prepare("UPDATE actions SET clock = ?2 WHERE clock = ?1");
    own.bind(1, from.raw()).bind(2, to.raw()).run();
    auto target = database.prepare("UPDATE actions SET target = ?2 WHERE target = ?1");
    target.bind(1, from.raw()).bind(2, to.raw()).run();
}

HybridClock latestBut(Database& database, const std::vector<OwnAction>& actions) {
    std::set<std::int64_t> own;
    for (const auto& action : actions) {
        own.insert(action.arrivals.begin(), action.arrivals.end());
    }
    HybridClock latest;
    auto select = database.prepare("SELECT arrival, clock FROM entries");
    while (select.step()) {
        if (!own.contains(select.integer(0))) {
            latest = std::max(latest, HybridClock::fromRaw(select.integer(1)));
        }
    }
    return latest;
}

// The names in `replaces` of own entries, as `rename` says.
template <class Rename>
void renameReplaced(Database& database, std::int64_t writer, Rename&& rename) {
    std::vector<std::pair<std::int64_t, std::string>> changed;
    {
        auto select = database.prepare(
            "SELECT arrival, replaces FROM entries WHERE writer = ?1 AND replaces IS NOT NULL");
        select.bind(1, writer);
        while (select.step()) {
            auto names = unpackReplaces(select.blob(1));
            for (auto& name : names) {
                rename(name);
            }
            changed.emplace_back(select.integer(0), packReplaces(names));
        }
    }
    for (const auto& [arrival, replaces] : changed) {
        auto update = database.prepare("UPDATE entries SET replaces = ?2 WHERE arrival = ?1");
        update.bind(1, arrival).bindBlob(2, replaces).run();
    }
}

std::set<RawId> recordsOf(const std::vector<OwnAction>& actions) {
    std::set<RawId> records;
    for (const auto& action : actions) {
        records.insert(action.records.begin(), action.records.end());
    }
    return records;
}

// The entries of a cell that no other entry of it replaces, latest first.
std::vector<Entry> headsOf(const std::vector<Arrived>& all) {
    std::set<EntryName> replaced;
    for (const auto& one : all) {
        replaced.insert(one.entry.replaces.begin(), one.entry.replaces.end());
    }
    std::vector<Entry> heads;
    for (const auto& one : all) {
        if (!replaced.contains(one.entry.name)) {
            heads.push_back(one.entry);
        }
    }
    std::sort(heads.begin(), heads.end(), [](const Entry& a, const Entry& b) {
        return beats(model::Merge::Checked, a.clock, a.name, b.clock, b.name);
    });
    return heads;
}

bool sameValues(const std::vector<Entry>& heads) {
    return std::all_of(heads.begin(), heads.end(),
                       [&](const Entry& head) { return head.value == heads.front().value; });
}

std::vector<CellName> cellsWithHistory(Database& database) {
    auto select = database.prepare(
        "SELECT DISTINCT s.record, e.field FROM superseded s JOIN entries e ON e.arrival = "
        "s.arrival ORDER BY s.record, e.field");
    std::vector<CellName> cells;
    while (select.step()) {
        const auto code = static_cast<model::FieldCode>(select.integer(1));
        const model::Field* field = model::fieldOf(code);
        if (field != nullptr && field->merge == model::Merge::Checked) {
            cells.push_back({select.id(0), code});
        }
    }
    return cells;
}

}  // namespace

void forgetCells(Database& database, Log& log, const std::vector<CellName>& cells) {
    std::map<RawId, std::set<model::FieldCode>> byRecord;
    for (const auto& cell : cells) {
        byRecord[cell.record].insert(cell.field);
    }
    for (const auto& [record, fields] : byRecord) {
        std::vector<std::int64_t> gone;
        for (const auto arrival : log.arrivalsOf(record)) {
            auto select = database.prepare("SELECT field FROM entries WHERE arrival = ?1");
            if (select.bind(1, arrival).step() &&
                fields.contains(static_cast<model::FieldCode>(select.integer(0)))) {
                gone.push_back(arrival);
            }
        }
        log.forgetEntries(record, gone);
    }
}

void forgetNamed(Database& database, Log& log, const std::vector<EntryName>& names) {
    for (const auto& name : names) {
        std::int64_t arrival = 0;
        RawId record;
        {
            auto select = database.prepare(
                "SELECT arrival, record FROM entries WHERE writer = ?1 AND lane = ?2 AND number = "
                "?3");
            select.bind(1, log.writerOf(name.device))
                .bind(2, static_cast<std::int64_t>(name.lane))
                .bind(3, name.number);
            if (!select.step()) {
                continue;
            }
            arrival = select.integer(0);
            record = select.id(1);
        }
        log.forgetEntries(record, {arrival});
    }
}

std::vector<CellName> staleCells(Database& database) {
    auto select = database.prepare("SELECT record, field FROM stale");
    std::vector<CellName> cells;
    while (select.step()) {
        cells.push_back({select.id(0), static_cast<model::FieldCode>(select.integer(1))});
    }
    return cells;
}

Result<std::size_t> SyncBook::restamp(const LaneNumbers& acknowledged, model::Instant now) {
    return guardStore([&]() -> Result<std::size_t> {
        auto& parts = *book_.parts_;
        auto& database = *parts.database;
        parts.log->forget();
        Transaction transaction(database);
        const auto actions =
            unacknowledged(database, parts.log->writerOf(parts.device.raw()), acknowledged);
        const HybridClock limit = HybridClock::endOf(now);
        HybridClock latest = std::min(latestBut(database, actions), limit);
        std::size_t changed = 0;
        for (const auto& action : actions) {
            const bool good = action.clock > latest && action.clock <= limit;
            const HybridClock clock = good ? action.clock : latest.next(now);
            latest = clock;
            if (good) {
                continue;
            }
            for (const auto arrival : action.arrivals) {
                auto update = database.prepare("UPDATE entries SET clock = ?2 WHERE arrival = ?1");
                update.bind(1, arrival).bind(2, clock.raw()).run();
            }
            changed += action.arrivals.size();
            setActionClock(database, action.clock, clock);
        }
        for (const auto& record : recordsOf(actions)) {
            parts.log->remake(record);
        }
        parts.log->setClock(std::max(latest, latestBut(database, {})));
        transaction.commit();
        return changed;
    });
}

Result<void> SyncBook::takeIdentity(const RawId& device, const LaneNumbers& acknowledged,
                                    const std::vector<Remembered>& remember) {
    return guardStore([&]() -> Result<void> {
        auto& parts = *book_.parts_;
        auto& database = *parts.database;
        parts.log->forget();
        Transaction transaction(database);
        const RawId before = parts.device.raw();
        const std::int64_t oldWriter = parts.log->writerOf(before);
        const std::int64_t newWriter = parts.log->writerOf(device);
        const auto records = recordsOf(unacknowledged(database, oldWriter, acknowledged));
        for (std::int64_t lane = 0; lane < 2; ++lane) {
            const std::int64_t last = acknowledged[static_cast<std::size_t>(lane)];
            auto update = database.prepare(
                "UPDATE entries SET writer = ?1, number = number - ?4 "
                "WHERE writer = ?2 AND lane = ?3 AND number > ?4");
            update.bind(1, newWriter).bind(2, oldWriter).bind(3, lane).bind(4, last).run();
            // What was forgotten of the old numbers must not be used again under the new name.
            auto forgotten = database.prepare(
                "INSERT INTO forgotten(writer, lane, number) "
                "SELECT ?1, lane, number - ?4 FROM forgotten "
                "WHERE writer = ?2 AND lane = ?3 AND number > ?4");
            forgotten.bind(1, newWriter).bind(2, oldWriter).bind(3, lane).bind(4, last).run();
        }
        renameReplaced(database, newWriter, [&](EntryName& name) {
            const auto lane = static_cast<std::size_t>(name.lane);
            if (name.device == before && lane < 2 && name.number > acknowledged[lane]) {
                name.number -= acknowledged[lane];
                name.device = device;
            }
        });
        for (const auto& record : records) {
            parts.log->remake(record);
        }
        setMeta(database, "device", device);
        for (const auto& one : remember) {
            setMeta(database, one.name, one.value);
        }
        transaction.commit();
        parts.device = model::Id<model::Kind::Device>(device);
        return {};
    });
}

Result<std::vector<Clash>> SyncBook::clashes() {
    std::vector<CellName> cells;
    auto read = guardStore([&]() -> Result<void> {
        cells = cellsWithHistory(*book_.parts_->database);
        return {};
    });
    if (!read.ok()) {
        return read.error();
    }
    std::vector<Clash> clashes;
    for (const auto& cell : cells) {
        auto all = entriesOf(cell);
        if (!all.ok()) {
            return all.error();
        }
        auto heads = headsOf(all.value());
        if (heads.size() > 1 && !sameValues(heads)) {
            clashes.push_back({cell, std::move(heads)});
        }
    }
    return clashes;
}

Result<void> SyncBook::settle(const CellName& cell, const model::Value& value, model::Instant now) {
    const model::Field* field = model::fieldOf(cell.field);
    if (field == nullptr) {
        return model::wrongUse("a clash is settled in a field that the catalog knows");
    }
    if (auto good = model::checkValue(*field, value); !good.ok()) {
        return good.error();
    }
    auto all = entriesOf(cell);
    if (!all.ok()) {
        return all.error();
    }
    return guardStore([&]() -> Result<void> {
        auto& parts = *book_.parts_;
        parts.log->forget();
        Transaction transaction(*parts.database);
        PlannedEdit edit{field, {cell.record, cell.field, value}, {}};
        for (const auto& head : headsOf(all.value())) {
            edit.replaces.push_back(head.name);
        }
        writeAction(*parts.database, *parts.log, parts.device.raw(), {edit},
                    "settle " + std::string(field->heading), ActionRole::Done, 0, now);
        transaction.commit();
        return {};
    });
}

}  // namespace ledgerboard::store
