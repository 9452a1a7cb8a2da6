// What the peer remembers of each device that gets a part of the book: what it has, and what was
// sent to it and is not confirmed yet.
#include "core/store/book_parts.h"
#include "core/store/sync_parts.h"

namespace ledgerboard::store {

using model::RawId;
using model::Result;

Result<std::map<CellName, std::int64_t>> SyncBook::sent(const RawId& device) {
    return guardStore([&]() -> Result<std::map<CellName, std::int64_t>> {
        auto select = book_.parts_->database->prepare(
            "SELECT record, field, arrival FROM sent WHERE device = ?1");
        select.bind(1, device);
        std::map<CellName, std::int64_t> cells;
        while (select.step()) {
            cells[{select.id(0), static_cast<model::FieldCode>(select.integer(1))}] =
                select.integer(2);
        }
        return cells;
    });
}

Result<std::vector<SentCell>> SyncBook::sending(const RawId& device) {
    return guardStore([&]() -> Result<std::vector<SentCell>> {
        auto select = book_.parts_->database->prepare(
            "SELECT record, field, arrival FROM sending WHERE device = ?1 ORDER BY record, field");
        select.bind(1, device);
        std::vector<SentCell> cells;
        while (select.step()) {
            cells.push_back({{select.id(0), static_cast<model::FieldCode>(select.integer(1))},
                             select.integer(2)});
        }
        return cells;
    });
}

Result<void> SyncBook::send(const Sending& sending) {
    return guardStore([&]() -> Result<void> {
        auto& database = *book_.parts_->database;
        Transaction transaction(database);
        auto run = [&](const char* sql) {
            auto statement = database.prepare(std::string(sql));
            statement.bind(1, sending.device).run();
        };
        if (sending.confirm) {
            run("DELETE FROM sent WHERE device = ?1 AND EXISTS(SELECT 1 FROM sending s WHERE "
                "s.device = ?1 AND s.arrival = 0 AND s.record = sent.record AND s.field = "
                "sent.field)");
            run("INSERT INTO sent(device, record, field, arrival) SELECT device, record, field, "
                "arrival FROM sending WHERE device = ?1 AND arrival <> 0 "
                "ON CONFLICT(device, record, field) DO UPDATE SET arrival = excluded.arrival");
        }
        if (sending.fresh) {
            run("DELETE FROM sent WHERE device = ?1");
        }
        run("DELETE FROM sending WHERE device = ?1");
        for (const auto& one : sending.cells) {
            auto insert = database.prepare(
                "INSERT INTO sending(device, record, field, arrival) VALUES(?1, ?2, ?3, ?4)");
            insert.bind(1, sending.device)
                .bind(2, one.cell.record)
                .bind(3, std::int64_t{one.cell.field})
                .bind(4, one.arrival)
                .run();
        }
        for (const auto& one : sending.remember) {
            setMeta(database, one.name, one.value);
        }
        transaction.commit();
        return {};
    });
}

Result<void> SyncBook::forgetSent() {
    return guardStore([&]() -> Result<void> {
        book_.parts_->database->run("DELETE FROM sent; DELETE FROM sending");
        return {};
    });
}

}  // namespace ledgerboard::store
