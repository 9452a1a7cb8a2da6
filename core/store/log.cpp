#include "core/store/log.h"

#include <algorithm>
#include <tuple>

namespace ledgerboard::store {

using model::FieldCode;
using model::HybridClock;
using model::RawId;
using model::Value;

bool beats(model::Merge merge, HybridClock aClock, const EntryName& a, HybridClock bClock,
           const EntryName& b) {
    const bool later = std::tie(aClock, a) > std::tie(bClock, b);
    return merge == model::Merge::Kept ? !later : later;
}

namespace {

// Sets the fields whose codes stand in `fields`, one after the other, in the row of a record.
std::string upsertRow(model::Kind kind, const std::string& fields) {
    std::string columns = "id";
    std::string places = "?1";
    std::string updates;
    for (std::size_t at = 0; at < fields.size(); at += sizeof(FieldCode)) {
        FieldCode code = 0;
        std::copy_n(fields.data() + at, sizeof(FieldCode), reinterpret_cast<char*>(&code));
        const model::Field* field = model::fieldOf(code);
        const std::string column =
            field == nullptr ? "gone" : "\"" + std::string(field->column) + "\"";
        columns += ", " + column;
        places += ", ?" + std::to_string(at / sizeof(FieldCode) + 2);
        updates += (updates.empty() ? "" : ", ") + column + " = excluded." + column;
    }
    return "INSERT INTO " + std::string(model::infoOf(kind).table) + "(" + columns + ") VALUES(" +
           places + ") ON CONFLICT(id) DO UPDATE SET " + updates;
}

}  // namespace

Lane laneOf(const model::Field& field) {
    return field.reads == model::Reads::Owner ? Lane::OwnerOnly : Lane::Shared;
}

Lane laneOfGone(model::Kind kind) {
    const auto fields = model::infoOf(kind).fields;
    const bool shared = std::any_of(fields.begin(), fields.end(), [](const model::Field& field) {
        return laneOf(field) == Lane::Shared;
    });
    return shared ? Lane::Shared : Lane::OwnerOnly;
}

std::string packReplaces(const std::vector<EntryName>& names) {
    std::string bytes;
    for (const auto& name : names) {
        bytes.append(reinterpret_cast<const char*>(name.device.bytes().data()), RawId::kBytes);
        bytes += static_cast<char>(name.lane);
        for (int shift = 56; shift >= 0; shift -= 8) {
            bytes += static_cast<char>(static_cast<std::uint64_t>(name.number) >> shift & 0xff);
        }
    }
    return bytes;
}

std::vector<EntryName> unpackReplaces(const std::string& bytes) {
    constexpr std::size_t kNameBytes = RawId::kBytes + 1 + 8;
    std::vector<EntryName> names;
    for (std::size_t at = 0; at + kNameBytes <= bytes.size(); at += kNameBytes) {
        std::array<std::uint8_t, RawId::kBytes> device{};
        std::copy_n(bytes.begin() + static_cast<std::ptrdiff_t>(at), RawId::kBytes, device.begin());
        std::uint64_t number = 0;
        for (std::size_t k = 0; k < 8; ++k) {
            number = number << 8 | static_cast<std::uint8_t>(bytes[at + RawId::kBytes + 1 + k]);
        }
        names.push_back({RawId{device}, static_cast<Lane>(bytes[at + RawId::kBytes]),
                         static_cast<std::int64_t>(number)});
    }
    return names;
}

Entry entryFrom(const Statement& statement, int at) {
    Entry entry;
    entry.name.device = statement.id(at);
    entry.name.lane = static_cast<Lane>(statement.integer(at + 1));
    entry.name.number = statement.integer(at + 2);
    entry.clock = HybridClock::fromRaw(statement.integer(at + 3));
    entry.record = statement.id(at + 4);
    entry.field = static_cast<FieldCode>(statement.integer(at + 5));
    entry.value = statement.value(at + 6);
    entry.replaces = unpackReplaces(statement.blob(at + 7));
    return entry;
}

std::int64_t Log::knownWriterOf(const RawId& device) {
    if (const auto found = writers_.find(device); found != writers_.end()) {
        return found->second;
    }
    auto select = database_.prepare("SELECT writer FROM writers WHERE device = ?1");
    if (!select.bind(1, device).step()) {
        return 0;
    }
    const std::int64_t writer = select.integer(0);
    writers_[device] = writer;
    devices_[writer] = device;
    return writer;
}

std::int64_t Log::writerOf(const RawId& device) {
    if (const std::int64_t known = knownWriterOf(device); known != 0) {
        return known;
    }
    {
        auto insert = database_.prepare(
            "INSERT INTO writers(writer, device) "
            "SELECT coalesce(max(writer), 0) + 1, ?1 FROM writers");
        insert.bind(1, device).run();
    }
    return knownWriterOf(device);
}

RawId Log::deviceOf(std::int64_t writer) {
    if (const auto found = devices_.find(writer); found != devices_.end()) {
        return found->second;
    }
    auto select = database_.prepare("SELECT device FROM writers WHERE writer = ?1");
    const RawId device = select.bind(1, writer).step() ? select.id(0) : RawId{};
    devices_[writer] = device;
    return device;
}

void Log::take(const Entry& entry) {
    if (next_ == 0) {
        auto select = database_.prepare("SELECT coalesce(max(arrival), 0) + 1 FROM entries");
        select.step();
        next_ = select.integer(0);
    }
    if (!anyCompacted_) {
        auto select = database_.prepare("SELECT 1 FROM compacted LIMIT 1");
        anyCompacted_ = select.step();
    }
    const std::int64_t writer = writerOf(entry.name.device);
    const std::string replaces = packReplaces(entry.replaces);
    // Whether it went in is asked for all of them at once: an answer each is what takes long where
    // the database is on another machine.
    auto insert =
        *anyCompacted_
            ? database_.prepare(
                  "INSERT INTO entries(arrival, writer, lane, number, clock, record, field, value, "
                  "replaces) SELECT ?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9 WHERE NOT EXISTS(SELECT 1 "
                  "FROM compacted WHERE writer = ?2 AND lane = ?3 AND number = ?4) "
                  "ON CONFLICT(writer, lane, number) DO NOTHING")
            : database_.prepare(
                  "INSERT INTO entries(arrival, writer, lane, number, clock, record, field, value, "
                  "replaces) VALUES(?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9) "
                  "ON CONFLICT(writer, lane, number) DO NOTHING");
    insert.bind(1, next_)
        .bind(2, writer)
        .bind(3, static_cast<std::int64_t>(entry.name.lane))
        .bind(4, entry.name.number)
        .bind(5, entry.clock.raw())
        .bind(6, entry.record)
        .bind(7, std::int64_t{entry.field})
        .bind(8, entry.value)
        .bindBlob(9, replaces)
        .run();
    taken_.push_back({next_++, writer, entry});
}

// Keeps of what was taken what went in.
Log::Settled Log::leaveOutKnown() {
    Settled settled;
    if (taken_.empty()) {
        return settled;
    }
    auto select =
        database_.prepare("SELECT arrival FROM entries WHERE arrival >= ?1 ORDER BY arrival");
    select.bind(1, taken_.front().arrival);
    auto at = taken_.begin();
    while (select.step()) {
        const std::int64_t arrival = select.integer(0);
        while (at->arrival < arrival) {
            ++at;
        }
        ++settled.added;
        settled.latest = std::max(settled.latest, at->entry.clock);
        fresh_.push_back(std::move(*at));
        ++at;
    }
    taken_.clear();
    return settled;
}

void Log::settle() {
    if (fresh_.empty()) {
        return;
    }
    const std::int64_t first = fresh_.front().arrival;
    const std::int64_t last = fresh_.back().arrival;
    // All cells that nothing holds yet at once: several times as fast as one by one. What stands
    // between the first and the last in the log is all fresh.
    auto insert = database_.prepare(
        "INSERT INTO cells(record, field, arrival, clock, writer) "
        "SELECT record, field, arrival, clock, writer FROM entries "
        "WHERE arrival BETWEEN ?1 AND ?2 ORDER BY arrival ON CONFLICT(record, field) DO NOTHING");
    insert.bind(1, first).bind(2, last).run();
    if (database_.changes() == static_cast<std::int64_t>(fresh_.size())) {
        for (const Fresh& fresh : fresh_) {
            change(fresh.entry);
        }
        fresh_.clear();
        return;
    }
    auto holders = holdersOf(first, last);
    resolve(holders);
}

// What holds the cells of the entries from one arrival to another.
std::map<Log::Cell, Log::Holder> Log::holdersOf(std::int64_t first, std::int64_t last) {
    auto select = database_.prepare(
        "SELECT c.record, c.field, c.arrival, c.clock, c.writer, h.lane, h.number "
        "FROM entries e JOIN cells c ON c.record = e.record AND c.field = e.field "
        "JOIN entries h ON h.arrival = c.arrival WHERE e.arrival BETWEEN ?1 AND ?2");
    select.bind(1, first).bind(2, last);
    std::map<Cell, Holder> holders;
    while (select.step()) {
        Holder holder;
        holder.arrival = select.integer(2);
        holder.clock = HybridClock::fromRaw(select.integer(3));
        holder.writer = select.integer(4);
        holder.name = {deviceOf(holder.writer), static_cast<Lane>(select.integer(5)),
                       select.integer(6)};
        holder.isNew = false;
        holders[{select.id(0), static_cast<FieldCode>(select.integer(1))}] = holder;
    }
    return holders;
}

// Lets each fresh entry win or lose against what holds its cell, in order of arrival.
void Log::resolve(std::map<Cell, Holder>& holders) {
    for (const Fresh& fresh : fresh_) {
        const Entry& entry = fresh.entry;
        const Holder here{fresh.arrival, fresh.writer, entry.clock, entry.name, true};
        const auto [at, isFirst] = holders.try_emplace({entry.record, entry.field}, here);
        Holder& holder = at->second;
        if (isFirst || holder.arrival == fresh.arrival) {
            change(entry);  // its cell is new, or was made with those of its batch
            continue;
        }
        const model::Field* field = model::fieldOf(entry.field);
        const model::Merge merge = field != nullptr ? field->merge : model::Merge::Last;
        const bool wins = beats(merge, entry.clock, entry.name, holder.clock, holder.name);
        auto lose = database_.prepare("INSERT INTO superseded(record, arrival) VALUES(?1, ?2)");
        lose.bind(1, entry.record).bind(2, wins ? holder.arrival : fresh.arrival).run();
        if (wins) {
            holder = here;
            change(entry);
        }
    }
    for (const auto& [cell, holder] : holders) {
        if (!holder.isNew) {
            continue;
        }
        auto upsert = database_.prepare(
            "INSERT INTO cells(record, field, arrival, clock, writer) VALUES(?1, ?2, ?3, ?4, ?5) "
            "ON CONFLICT(record, field) DO UPDATE SET arrival = excluded.arrival, "
            "clock = excluded.clock, writer = excluded.writer");
        upsert.bind(1, cell.first)
            .bind(2, std::int64_t{cell.second})
            .bind(3, holder.arrival)
            .bind(4, holder.clock.raw())
            .bind(5, holder.writer)
            .run();
    }
    fresh_.clear();
}

void Log::change(const Entry& entry) {
    auto& changes = pending_[entry.record];
    if (changes.empty()) {
        pendingOrder_.push_back(entry.record);
    }
    changes.push_back({entry.field, entry.value});
}

Log::Settled Log::flush() {
    const Settled settled = leaveOutKnown();
    settle();
    for (const auto& record : pendingOrder_) {
        auto& changes = pending_[record];
        // A record has one kind; a malformed log might say two, and each then gets its own row.
        while (!changes.empty()) {
            const model::Kind kind = model::kindOf(changes.front().field);
            std::vector<Change> ofKind;
            std::vector<Change> rest;
            for (auto& change : changes) {
                (model::kindOf(change.field) == kind ? ofKind : rest).push_back(std::move(change));
            }
            writeRow(kind, record, ofKind);
            changes = std::move(rest);
        }
    }
    pending_.clear();
    pendingOrder_.clear();
    return settled;
}

void Log::writeRow(model::Kind kind, const RawId& record, std::vector<Change>& changes) {
    const auto number = static_cast<std::size_t>(kind);
    if (number == 0 || number > model::kinds().size()) {
        return;  // a kind of a newer version: kept in the log, shown nowhere
    }
    // The last change of a field counts; the order of fields makes equal sets share a statement.
    std::stable_sort(changes.begin(), changes.end(),
                     [](const Change& a, const Change& b) { return a.field < b.field; });
    std::string fields;  // which fields, as bytes: the key of the statement
    std::vector<const Value*> values;
    static const Value kNo{std::int64_t{0}};
    static const Value kNothing{};
    for (std::size_t k = 0; k < changes.size(); ++k) {
        if (k + 1 < changes.size() && changes[k + 1].field == changes[k].field) {
            continue;
        }
        const model::Field* field = model::fieldOf(changes[k].field);
        const bool gone = changes[k].field == model::goneCode(kind);
        if (field == nullptr && !gone) {
            continue;  // a field of a newer version
        }
        const Value* value = &changes[k].value;
        if (gone) {
            value = std::holds_alternative<std::int64_t>(*value) ? value : &kNo;
        } else if (!model::checkValue(*field, *value).ok()) {
            value = &kNothing;
        }
        values.push_back(value);
        fields.append(reinterpret_cast<const char*>(&changes[k].field), sizeof(FieldCode));
    }
    if (values.empty()) {
        return;
    }
    auto& sql = rowSql_[fields];
    if (sql.empty()) {
        sql = upsertRow(kind, fields);
    }
    auto upsert = database_.prepare(sql);
    upsert.bind(1, record);
    for (std::size_t k = 0; k < values.size(); ++k) {
        upsert.bind(static_cast<int>(k) + 2, *values[k]);
    }
    upsert.run();
}

Value Log::current(const RawId& record, FieldCode field) {
    auto select = database_.prepare(
        "SELECT e.value FROM cells c JOIN entries e ON e.arrival = c.arrival "
        "WHERE c.record = ?1 AND c.field = ?2");
    select.bind(1, record).bind(2, std::int64_t{field});
    return select.step() ? select.value(0) : Value{};
}

bool Log::currentEntry(const RawId& record, FieldCode field, Entry& entry) {
    auto select = database_.prepare(std::string("SELECT ") + kEntryColumns +
                                    "JOIN cells c ON c.arrival = e.arrival "
                                    "WHERE c.record = ?1 AND c.field = ?2");
    select.bind(1, record).bind(2, std::int64_t{field});
    if (!select.step()) {
        return false;
    }
    entry = entryFrom(select, 0);
    return true;
}

HybridClock Log::clock() {
    auto select = database_.prepare("SELECT value FROM meta WHERE name = 'clock'");
    return HybridClock::fromRaw(select.step() ? select.integer(0) : 0);
}

void Log::setClock(HybridClock clock) {
    auto upsert = database_.prepare(
        "INSERT INTO meta(name, value) VALUES('clock', ?1) "
        "ON CONFLICT(name) DO UPDATE SET value = excluded.value");
    upsert.bind(1, clock.raw()).run();
}

std::int64_t Log::lastNumber(const RawId& device, Lane lane) {
    auto select = database_.prepare(
        "SELECT coalesce(max(number), 0) FROM ("
        "SELECT max(number) AS number FROM entries WHERE writer = ?1 AND lane = ?2 UNION ALL "
        "SELECT number FROM forgotten WHERE writer = ?1 AND lane = ?2) AS known");
    select.bind(1, knownWriterOf(device)).bind(2, static_cast<std::int64_t>(lane));
    return select.step() ? select.integer(0) : 0;
}

std::vector<std::int64_t> Log::arrivalsOf(const RawId& record) {
    auto select = database_.prepare(
        "SELECT arrival FROM cells WHERE record = ?1 "
        "UNION SELECT arrival FROM superseded WHERE record = ?1 ORDER BY arrival");
    select.bind(1, record);
    std::vector<std::int64_t> arrivals;
    while (select.step()) {
        arrivals.push_back(select.integer(0));
    }
    return arrivals;
}

void Log::remake(const RawId& record) {
    const auto arrivals = arrivalsOf(record);
    for (const auto* table : {"cells", "superseded"}) {
        auto clear = database_.prepare("DELETE FROM " + std::string(table) + " WHERE record = ?1");
        clear.bind(1, record).run();
    }
    for (const auto& info : model::kinds()) {
        auto clear = database_.prepare("DELETE FROM " + std::string(info.table) + " WHERE id = ?1");
        clear.bind(1, record).run();
    }
    for (const auto arrival : arrivals) {
        auto select = database_.prepare(std::string("SELECT e.writer, ") + kEntryColumns +
                                        "WHERE e.arrival = ?1");
        if (select.bind(1, arrival).step()) {
            fresh_.push_back({arrival, select.integer(0), entryFrom(select, 1)});
        }
    }
    std::map<Cell, Holder> none;
    resolve(none);
    flush();
}

void Log::forgetEntries(const RawId& record, const std::vector<std::int64_t>& arrivals) {
    for (const auto arrival : arrivals) {
        // What is numbered from 1 keeps its place, so that no number is ever used twice.
        auto keep = database_.prepare(
            "INSERT INTO forgotten(writer, lane, number) "
            "SELECT writer, lane, number FROM entries WHERE arrival = ?1 AND lane <> 2 "
            "ON CONFLICT(writer, lane) DO UPDATE SET number = excluded.number "
            "WHERE excluded.number > forgotten.number");
        keep.bind(1, arrival).run();
    }
    for (const auto arrival : arrivals) {
        auto remove = database_.prepare("DELETE FROM entries WHERE arrival = ?1");
        remove.bind(1, arrival).run();
    }
    remake(record);
}

void Log::rebuild() {
    database_.run("DELETE FROM cells; DELETE FROM superseded");
    dropRowTables(database_);
    createRowTables(database_);
    auto select = database_.prepare(std::string("SELECT e.arrival, e.writer, ") + kEntryColumns +
                                    "ORDER BY e.arrival");
    std::size_t sinceFlush = 0;
    while (select.step()) {
        fresh_.push_back({select.integer(0), select.integer(1), entryFrom(select, 2)});
        if (++sinceFlush == 10'000) {  // bounds the memory of a long log
            flush();
            sinceFlush = 0;
        }
    }
    flush();
}

void Log::rebuildRows() {
    dropRowTables(database_);
    createRowTables(database_);
    auto select = database_.prepare(
        "SELECT c.record, c.field, e.value FROM cells c JOIN entries e ON e.arrival = c.arrival "
        "ORDER BY c.record, c.field");
    std::vector<Change> changes;
    RawId record;
    auto write = [&] {
        if (!changes.empty()) {
            pending_[record] = std::move(changes);
            pendingOrder_.push_back(record);
            changes.clear();
            flush();
        }
    };
    while (select.step()) {
        if (select.id(0) != record) {
            write();
            record = select.id(0);
        }
        changes.push_back({static_cast<FieldCode>(select.integer(1)), select.value(2)});
    }
    write();
}

void Log::forget() {
    writers_.clear();
    devices_.clear();
    taken_.clear();
    fresh_.clear();
    next_ = 0;
    anyCompacted_.reset();
    pending_.clear();
    pendingOrder_.clear();
}

}  // namespace ledgerboard::store
