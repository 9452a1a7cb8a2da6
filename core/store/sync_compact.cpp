// What a book may forget of its log: values that were written over long ago.
#include <algorithm>
#include <array>
#include <sodium.h>

#include "core/store/book_parts.h"
#include "core/store/sync_parts.h"

namespace ledgerboard::store {

using model::FieldType;
using model::HybridClock;
using model::Result;

namespace {

// Money is kept for ever, so is whatever is needed to know facts and clashes.
bool mayGo(model::FieldCode code) {
    const model::Field* field = model::fieldOf(code);
    if (field == nullptr || field->merge != model::Merge::Last) {
        return false;
    }
    switch (field->type) {
        case FieldType::Money:
        case FieldType::Amounts:
        case FieldType::ItemAmounts:
            return false;
        default:
            return true;
    }
}

// Tells values of different types apart as well.
std::string textOf(const model::Value& value) {
    if (const auto* integer = std::get_if<std::int64_t>(&value)) {
        return "i" + std::to_string(*integer);
    }
    if (const auto* text = std::get_if<std::string>(&value)) {
        return "t" + *text;
    }
    const auto* id = std::get_if<model::RawId>(&value);
    return id != nullptr ? "r" + id->hex() : "n";
}

struct Beaten {
    std::int64_t arrival = 0;
    Entry entry;
};

// Every entry that does not hold and is older than `before`, cell by cell, latest first in each.
std::vector<Beaten> beatenBefore(Database& database, HybridClock before) {
    auto select = database.prepare(
        std::string("SELECT e.arrival, ") + kEntryColumns +
        "JOIN superseded s ON s.arrival = e.arrival WHERE e.clock < ?1 AND e.lane < 2 "
        "ORDER BY e.record, e.field, e.clock DESC, w.device DESC, e.lane DESC, e.number DESC");
    select.bind(1, before.raw());
    std::vector<Beaten> all;
    while (select.step()) {
        Beaten one{select.integer(0), entryFrom(select, 1)};
        if (mayGo(one.entry.field)) {
            all.push_back(std::move(one));
        }
    }
    return all;
}

bool holdsSince(Database& database, const CellName& cell, HybridClock before) {
    auto select = database.prepare("SELECT clock FROM cells WHERE record = ?1 AND field = ?2");
    select.bind(1, cell.record).bind(2, std::int64_t{cell.field});
    return select.step() && HybridClock::fromRaw(select.integer(0)) < before;
}

std::int64_t lastPlace(Database& database) {
    auto select = database.prepare("SELECT coalesce(max(arrival), 0) FROM entries");
    select.step();
    return select.integer(0);
}

void drop(Database& database, const Beaten& one) {
    {
        auto keep = database.prepare(
            "INSERT INTO compacted(writer, lane, number, digest) "
            "SELECT writer, lane, number, ?2 FROM entries WHERE arrival = ?1 "
            "ON CONFLICT(writer, lane, number) DO NOTHING");
        keep.bind(1, one.arrival).bind(2, contentDigest(one.entry)).run();
    }
    for (const auto* sql : {"INSERT INTO forgotten(writer, lane, number) "
                            "SELECT writer, lane, number FROM entries WHERE arrival = ?1 "
                            "ON CONFLICT(writer, lane) DO UPDATE SET number = excluded.number "
                            "WHERE excluded.number > forgotten.number",
                            "DELETE FROM entries WHERE arrival = ?1"}) {
        auto statement = database.prepare(std::string(sql));
        statement.bind(1, one.arrival).run();
    }
    auto remove = database.prepare("DELETE FROM superseded WHERE record = ?1 AND arrival = ?2");
    remove.bind(1, one.entry.record).bind(2, one.arrival).run();
}

}  // namespace

std::int64_t contentDigest(const Entry& entry) {
    const std::string said = std::to_string(entry.clock.raw()) + entry.record.hex() +
                             std::to_string(entry.field) + textOf(entry.value);
    std::array<unsigned char, crypto_generichash_BYTES_MIN> digest{};
    crypto_generichash(digest.data(), digest.size(),
                       reinterpret_cast<const unsigned char*>(said.data()), said.size(), nullptr,
                       0);
    std::uint64_t number = 0;
    for (std::size_t k = 0; k < 8; ++k) {
        number = number << 8 | digest[k];
    }
    return static_cast<std::int64_t>(number);
}

HybridClock horizonOf(Database& database) {
    const auto value = meta(database, "horizon");
    const auto* raw = std::get_if<std::int64_t>(&value);
    return HybridClock::fromRaw(raw != nullptr ? *raw : 0);
}

Result<std::size_t> SyncBook::compact(const Compaction& compaction) {
    return guardStore([&]() -> Result<std::size_t> {
        auto& parts = *book_.parts_;
        auto& database = *parts.database;
        parts.log->forget();
        Transaction transaction(database);
        // The last place of the log is never given up: the next entry would get it, and
        // who has read up to there would not see that.
        const std::int64_t upTo = std::min(compaction.upTo, lastPlace(database) - 1);
        std::size_t dropped = 0;
        CellName cell;
        bool known = false;  // whether what held at `before` in this cell was come by
        for (const auto& one : beatenBefore(database, compaction.before)) {
            const CellName its{one.entry.record, one.entry.field};
            if (its != cell) {
                cell = its;
                known = holdsSince(database, cell, compaction.before);
            }
            if (!known) {
                known = true;  // what the field held at the horizon stays
                continue;
            }
            const auto lane = static_cast<std::size_t>(one.entry.name.lane);
            const bool unsent = one.entry.name.device == parts.device.raw() &&
                                one.entry.name.number > compaction.ownUpTo[lane];
            if (one.arrival <= upTo && !unsent) {
                drop(database, one);
                ++dropped;
            }
        }
        if (dropped > 0) {
            setMeta(database, "horizon", std::max(compaction.before, horizonOf(database)).raw());
        }
        transaction.commit();
        return dropped;
    });
}

Result<HybridClock> SyncBook::horizon() {
    return guardStore([&]() -> Result<HybridClock> { return horizonOf(*book_.parts_->database); });
}

}  // namespace ledgerboard::store
