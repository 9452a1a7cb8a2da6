// Reading a whole book and checking that it adds up; copying it while in use.
#include <filesystem>
#include <unistd.h>

#include "core/model/saying.h"
#include "core/store/book_parts.h"
#include "core/store/sqlite_backend.h"

namespace ledgerboard::store {

using model::Result;

namespace {

using Finding = VerifyReport::Finding;

void find(VerifyReport& report, std::string what) {
    report.findings.push_back({std::move(what), false});
}

void checkFilePages(Database& database, VerifyReport& report) {
    for (const auto& damage : database.backend().damage()) {
        find(report, "file: " + damage);
    }
}

// Own numbers run 1, 2, 3 ... per lane; the clock of the book is not behind its log. Of other
// devices numbers may be missing: what was set aside, and what only a lost peer had.
void checkNumbers(Database& database, Log& log, const model::RawId& own, VerifyReport& report) {
    auto select = database.prepare(
        "SELECT w.device, e.lane, count(*), min(e.number), max(e.number), max(e.clock), "
        "EXISTS(SELECT 1 FROM forgotten f WHERE f.writer = e.writer AND f.lane = e.lane) "
        "FROM entries e JOIN writers w ON w.writer = e.writer GROUP BY w.device, e.writer, e.lane");
    const model::HybridClock clock = log.clock();
    while (select.step()) {
        const std::string place = "log of device " + select.id(0).toString() + ", lane " +
                                  std::to_string(select.integer(1));
        report.entries += select.integer(2);
        const bool numbered = select.id(0) == own && select.integer(6) == 0 &&
                              select.integer(1) != static_cast<std::int64_t>(Lane::Sealed);
        if (numbered && (select.integer(3) != 1 || select.integer(4) != select.integer(2))) {
            find(report, place + ": has " + std::to_string(select.integer(2)) +
                             " entries, but is numbered " + std::to_string(select.integer(3)) +
                             " to " + std::to_string(select.integer(4)));
        }
        if (model::HybridClock::fromRaw(select.integer(5)) > clock) {
            find(report, place + ": has an entry later than the clock of the book");
        }
    }
}

// Every entry of a known field fits it.
void checkEntries(Database& database, VerifyReport& report) {
    auto select = database.prepare("SELECT record, field, value FROM entries ORDER BY arrival");
    while (select.step()) {
        const auto* field = model::fieldOf(static_cast<model::FieldCode>(select.integer(1)));
        if (field == nullptr) {
            continue;
        }
        if (auto good = model::checkValue(*field, select.value(2)); !good.ok()) {
            find(report, std::string(model::infoOf(field->kind).title) + " " +
                             select.id(0).toString() + ": " + good.error().message);
        }
    }
}

// Row by row, what both queries give; `place` names the table in what is found.
void compare(Database& stored, Database& rebuilt, const std::string& sql, const std::string& place,
             VerifyReport& report) {
    auto a = stored.prepare(sql);
    auto b = rebuilt.prepare(sql);
    bool inA = a.step();
    bool inB = b.step();
    auto name = [&](const Statement& row) { return place + " " + row.id(0).toString(); };
    while (inA || inB) {
        if (report.findings.size() > 200) {
            return;  // enough to know that the table is wrong
        }
        if (!inB || (inA && a.id(0) < b.id(0))) {
            find(report, name(a) + ": stands in the book, but not in what its log adds up to");
            inA = a.step();
            continue;
        }
        if (!inA || b.id(0) < a.id(0)) {
            find(report, name(b) + ": is missing from the book, but its log has it");
            inB = b.step();
            continue;
        }
        for (int at = 1; at < a.columns(); ++at) {
            if (a.value(at) != b.value(at)) {
                find(report, name(a) + ": column " + std::to_string(at) +
                                 " differs from what its log adds up to");
                break;
            }
        }
        inA = a.step();
        inB = b.step();
    }
}

// References lead somewhere. `mend` can't help: the record may yet arrive from another device.
void checkReferences(Database& database, VerifyReport& report) {
    for (const auto& info : model::kinds()) {
        for (const auto& field : info.fields) {
            if (field.type != model::FieldType::Ref) {
                continue;
            }
            const std::string column = "\"" + std::string(field.column) + "\"";
            auto select = database.prepare("SELECT id FROM " + std::string(info.table) +
                                           " t WHERE gone = 0 AND " + column +
                                           " IS NOT NULL AND NOT EXISTS (SELECT 1 FROM " +
                                           std::string(model::infoOf(field.meant).table) +
                                           " m WHERE m.id = t." + column + ") LIMIT 20");
            while (select.step()) {
                find(report, std::string(info.title) + " " + select.id(0).toString() + ": " +
                                 std::string(field.heading) + " names a " +
                                 std::string(model::infoOf(field.meant).title) +
                                 " that is not in the book");
            }
        }
        auto count = database.prepare("SELECT count(*) FROM " + std::string(info.table));
        count.step();
        report.records += count.integer(0);
    }
}

// Cells are compared by the entry that won, named by device, lane and number: arrival is local.
constexpr const char* kCells =
    "SELECT c.record, c.field, c.clock, w.device, e.lane, e.number, e.value "
    "FROM cells c JOIN entries e ON e.arrival = c.arrival JOIN writers w ON w.writer = c.writer "
    "ORDER BY c.record, c.field";
constexpr const char* kSuperseded =
    "SELECT s.record, e.field, e.clock, w.device, e.lane, e.number "
    "FROM superseded s JOIN entries e ON e.arrival = s.arrival "
    "JOIN writers w ON w.writer = e.writer ORDER BY s.record, e.field, e.clock, w.device, e.number";

// Cells, history and rows against what the log alone makes of them.
void compareWithLog(Database& database, VerifyReport& report) {
    Database rebuilt(":memory:");
    Log log(rebuilt);
    Transaction transaction(rebuilt);
    createTables(rebuilt);
    copyEntries(database, log, [](const Entry&) { return true; });
    transaction.commit();
    compare(database, rebuilt, kCells, "cell of", report);
    compare(database, rebuilt, kSuperseded, "history of", report);
    for (const auto& info : model::kinds()) {
        compare(database, rebuilt, selectRows(info.kind) + " ORDER BY id", std::string(info.title),
                report);
    }
}

}  // namespace

Result<VerifyReport> Book::verify(bool mend) {
    return guardStore([&]() -> Result<VerifyReport> {
        VerifyReport report;
        Database& database = *parts_->database;
        parts_->log->forget();
        // One read transaction: what another process writes meanwhile is no finding.
        Snapshot snapshot(database);
        checkFilePages(database, report);
        checkNumbers(database, *parts_->log, parts_->device.raw(), report);
        checkEntries(database, report);
        const std::size_t beforeRows = report.findings.size();
        compareWithLog(database, report);
        const bool rowsDiffer = report.findings.size() > beforeRows;
        const std::size_t afterRows = report.findings.size();
        snapshot.end();
        if (mend && rowsDiffer) {
            Transaction transaction(database);
            parts_->log->rebuild();
            transaction.commit();
            VerifyReport after;
            compareWithLog(database, after);
            for (std::size_t k = beforeRows; k < afterRows; ++k) {
                report.findings[k].mended = after.findings.empty();
            }
        }
        // A book that holds a part of another one may well name what it was not given.
        if (model::isEmpty(meta(database, "partial"))) {
            checkReferences(database, report);
        }
        return report;
    });
}

Result<void> Book::backup(const std::string& path) const {
    std::error_code problem;
    if (std::filesystem::exists(path, problem)) {
        return model::cannotBeMet(
            model::saying("there is already something at %1: name another file", path));
    }
    const auto folder = std::filesystem::path(path).parent_path();
    if (!folder.empty() && !std::filesystem::is_directory(folder, problem)) {
        return model::cannotBeMet(model::saying(
            "there is no folder %1: make it first, or name another", folder.string()));
    }
    // Written aside and renamed, so that a half-made backup never looks like a whole one.
    const std::string aside = path + ".new-" + std::to_string(::getpid());
    auto copied = guardStore([&]() -> Result<void> {
        if (auto* file = dynamic_cast<SqliteBackend*>(&parts_->database->backend())) {
            SqliteBackend target(aside);
            file->copyInto(target);
            return {};
        }
        Database target(aside);
        const Snapshot snapshot(*parts_->database);
        Transaction transaction(target);
        createTables(target);
        copyBook(*parts_->database, target);
        transaction.commit();
        target.run("PRAGMA journal_mode = WAL");
        return {};
    });
    if (copied.ok()) {
        std::filesystem::rename(aside, path, problem);
    }
    std::error_code ignored;
    for (const auto* tail : {"", "-journal", "-wal", "-shm"}) {
        std::filesystem::remove(aside + tail, ignored);
    }
    if (copied.ok() && problem) {
        return model::damaged(
            model::saying("the backup cannot be made at %1: %2", path, problem.message()));
    }
    return copied;
}

}  // namespace ledgerboard::store
