// Which entries of given names are known here, and what became of them? Up to which are they whole?
#include <algorithm>
#include <map>
#include <set>
#include <utility>

#include "core/store/book_parts.h"
#include "core/store/sync_parts.h"

namespace ledgerboard::store {

using model::Result;

namespace {

// Names of one lane of one device, from the lowest to the highest number.
struct Run {
    EntryName first;
    std::int64_t last = 0;
};

// Names that stand close are asked for together, since a question each is what takes long where
// the database is on another machine; what lies between them and was not asked for is left out.
std::vector<Run> runsOf(std::vector<EntryName> names) {
    constexpr std::int64_t kClose = 16;
    std::sort(names.begin(), names.end());
    std::vector<Run> runs;
    for (const auto& name : names) {
        const bool goes = !runs.empty() && runs.back().first.device == name.device &&
                          runs.back().first.lane == name.lane &&
                          name.number - runs.back().last <= kClose;
        if (goes) {
            runs.back().last = name.number;
        } else {
            runs.push_back({name, name.number});
        }
    }
    return runs;
}

Statement askedFor(Database& database, const std::string& sql, const Run& run) {
    auto select = database.prepare(sql);
    select.bind(1, run.first.device)
        .bind(2, static_cast<std::int64_t>(run.first.lane))
        .bind(3, run.first.number)
        .bind(4, run.last);
    return select;
}

using Found = std::map<EntryName, SyncBook::Known>;

void findInLog(Database& database, const Run& run, Found& found) {
    auto select = askedFor(database,
                           std::string("SELECT ") + kEntryColumns +
                               "WHERE w.device = ?1 AND e.lane = ?2 AND e.number BETWEEN ?3 AND ?4",
                           run);
    while (select.step()) {
        Entry entry = entryFrom(select, 0);
        const EntryName name = entry.name;
        found.try_emplace(name, SyncBook::Known{std::move(entry), false, false, 0, ""});
    }
}

void findCompacted(Database& database, const Run& run, Found& found) {
    auto select = askedFor(database,
                           "SELECT c.number, c.digest FROM compacted c JOIN writers w ON "
                           "w.writer = c.writer WHERE w.device = ?1 AND c.lane = ?2 AND "
                           "c.number BETWEEN ?3 AND ?4",
                           run);
    while (select.step()) {
        found.try_emplace({run.first.device, run.first.lane, select.integer(0)},
                          SyncBook::Known{{}, false, true, select.integer(1), ""});
    }
}

void findSetAside(Database& database, const Run& run, Found& found) {
    auto select = askedFor(
        database,
        std::string(kAsideColumns) + "WHERE device = ?1 AND lane = ?2 AND number BETWEEN ?3 AND ?4",
        run);
    while (select.step()) {
        const Aside aside = asideFrom(select);
        found.try_emplace(aside.entry.name,
                          SyncBook::Known{aside.entry, true, false, 0, aside.why});
    }
}

// One lane of one writer.
struct WriterLane {
    std::int64_t writer = 0;
    std::int64_t lane = 0;
    friend auto operator<=>(const WriterLane&, const WriterLane&) = default;
};

struct Numbered {
    std::int64_t count = 0;
    std::int64_t highest = 0;
};

// How many numbers each lane has, and the highest: an entry is in one of the two tables.
std::map<WriterLane, Numbered> numberedLanes(Database& database) {
    std::map<WriterLane, Numbered> lanes;
    for (const std::string table : {"entries", "compacted"}) {
        auto select = database.prepare("SELECT writer, lane, count(*), max(number) FROM " + table +
                                       " WHERE lane < 2 GROUP BY writer, lane");
        while (select.step()) {
            auto& lane = lanes[{select.integer(0), select.integer(1)}];
            lane.count += select.integer(2);
            lane.highest = std::max(lane.highest, select.integer(3));
        }
    }
    return lanes;
}

// The number before the first hole. Numbers stand at their own place until one is missing.
std::int64_t beforeHole(Database& database, const WriterLane& lane) {
    auto select = database.prepare(
        "WITH known(number) AS (SELECT number FROM entries WHERE writer = ?1 AND lane = ?2 "
        "UNION ALL SELECT number FROM compacted WHERE writer = ?1 AND lane = ?2), "
        "placed(number, place) AS (SELECT number, row_number() OVER (ORDER BY number) FROM known) "
        "SELECT max(CASE WHEN number = place THEN number ELSE 0 END) FROM placed");
    select.bind(1, lane.writer).bind(2, lane.lane).step();
    return select.integer(0);
}

}  // namespace

Result<std::map<model::RawId, LaneNumbers>> SyncBook::unbroken() {
    return guardStore([&]() -> Result<std::map<model::RawId, LaneNumbers>> {
        auto& parts = *book_.parts_;
        parts.log->forget();
        std::map<model::RawId, LaneNumbers> unbroken;
        for (const auto& [lane, numbered] : numberedLanes(*parts.database)) {
            // As many as the highest says: none is missing, and they need not be put in order,
            // which for a long log takes long.
            const bool whole = numbered.count == numbered.highest;
            unbroken[parts.log->deviceOf(lane.writer)][static_cast<std::size_t>(lane.lane)] =
                whole ? numbered.highest : beforeHole(*parts.database, lane);
        }
        return unbroken;
    });
}

Result<std::map<EntryName, SyncBook::Known>> SyncBook::entriesNamed(
    const std::vector<EntryName>& names) {
    return guardStore([&]() -> Result<Found> {
        auto& database = *book_.parts_->database;
        Found found;
        for (const Run& run : runsOf(names)) {
            findInLog(database, run, found);
            findCompacted(database, run, found);
            findSetAside(database, run, found);
        }
        const std::set<EntryName> wanted(names.begin(), names.end());
        std::erase_if(found, [&](const auto& one) { return !wanted.contains(one.first); });
        return found;
    });
}

Result<std::optional<SyncBook::Known>> SyncBook::entryNamed(const EntryName& name) {
    auto found = entriesNamed({name});
    if (!found.ok()) {
        return found.error();
    }
    const auto at = found.value().find(name);
    return at == found.value().end() ? std::optional<Known>() : std::optional(at->second);
}

}  // namespace ledgerboard::store
