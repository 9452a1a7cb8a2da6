// Making, opening and reading a book. Writing stands in book_write.cpp, checking in
// book_verify.cpp.
#include "core/store/book.h"

#include <cstdio>
#include <fcntl.h>
#include <filesystem>
#include <unistd.h>

#include "core/model/check.h"
#include "core/model/saying.h"
#include "core/store/book_parts.h"

namespace ledgerboard::store {

using model::Error;
using model::Id;
using model::Kind;
using model::RawId;
using model::Result;

void setMeta(Database& database, std::string_view name, const model::Value& value) {
    auto upsert = database.prepare(
        "INSERT INTO meta(name, value) VALUES(?1, ?2) "
        "ON CONFLICT(name) DO UPDATE SET value = excluded.value");
    upsert.bind(1, name).bind(2, value).run();
}

model::Value meta(Database& database, std::string_view name) {
    auto select = database.prepare("SELECT value FROM meta WHERE name = ?1");
    return select.bind(1, name).step() ? select.value(0) : model::Value{};
}

namespace {

RawId metaId(Database& database, std::string_view name) {
    const model::Value value = meta(database, name);
    const auto* id = std::get_if<RawId>(&value);
    return id != nullptr ? *id : RawId{};
}

// Reads the columns of a row, which stand in catalog order behind id and gone.
template <class Row>
Row rowFrom(const Statement& statement) {
    Row row;
    row.id = Id<Row::kKind>(statement.id(0));
    int at = 2;
    model::visitFields(row, [&](auto& member) {
        if (!statement.isNull(at)) {
            model::readMember(statement.value(at), member);
        }
        ++at;
    });
    return row;
}

Record recordFrom(Kind kind, const Statement& statement) {
    Record record{kind, statement.id(0), {}, statement.integer(1) != 0};
    for (int at = 2; at < statement.columns(); ++at) {
        record.values.push_back(statement.value(at));
    }
    return record;
}

// Makes a rename in the folder of `path` last through a power cut. Where the file system can't, the
// file itself is whole all the same.
void syncFolderOf(const std::string& path) {
    const auto folder = std::filesystem::path(path).parent_path();
    const int file =
        ::open(folder.empty() ? "." : folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (file >= 0) {
        ::fsync(file);
        ::close(file);
    }
}

// Upgrades the rows where this program's catalog differs from the one that wrote them.
void fitCatalog(Database& database, Log& log) {
    const model::Value written = meta(database, "catalog");
    if (written == model::Value{catalogFingerprint()}) {
        return;
    }
    Transaction transaction(database);
    log.rebuildRows();
    transaction.commit();
}

}  // namespace

void readSelf(Book::Parts& parts) {
    parts.device = Id<Kind::Device>(metaId(*parts.database, "device"));
    parts.person = Id<Kind::Person>(metaId(*parts.database, "person"));
}

const model::Value& Record::at(model::FieldCode field) const {
    const model::Field* found = model::fieldOf(field);
    model::require(found != nullptr && found->kind == kind, "Record::at: a field of its kind");
    return values[static_cast<std::size_t>(found - model::infoOf(kind).fields.data())];
}

Book::Book(std::unique_ptr<Parts> parts) : parts_(std::move(parts)) {}

Book::Book(Book&&) noexcept = default;
Book& Book::operator=(Book&&) noexcept = default;
Book::~Book() = default;

namespace {

// Makes a book aside, lets `fill` write into it in one transaction, and renames it, so that a book
// is there whole or not at all.
template <class Fill>
Result<void> makeFile(const std::string& path, Fill&& fill) {
    std::error_code problem;
    if (std::filesystem::exists(path, problem)) {
        return model::cannotBeMet(
            model::saying("there is already something at %1: name another file with --book", path));
    }
    const std::string aside = path + ".new-" + std::to_string(::getpid());
    auto made = guardStore([&]() -> Result<void> {
        Database database(aside);
        Transaction transaction(database);
        createTables(database);
        fill(database);
        transaction.commit();
        // Kept in the file: readers and one writer at the same time from now on.
        database.run("PRAGMA journal_mode = WAL");
        return {};
    });
    if (made.ok()) {
        // By a link, which unlike a rename never replaces a book that another process made
        // meanwhile; by a rename where the file system knows no links.
        std::filesystem::create_hard_link(aside, path, problem);
        if (problem && problem != std::errc::file_exists) {
            std::filesystem::rename(aside, path, problem);
        }
        syncFolderOf(path);
    }
    std::error_code ignored;
    std::filesystem::remove(aside, ignored);
    std::filesystem::remove(aside + "-journal", ignored);
    if (!made.ok()) {
        return made.error();
    }
    if (problem) {
        return model::damaged(
            model::saying("the book cannot be made at %1: %2", path, problem.message()));
    }
    return {};
}

}  // namespace

namespace {

// The tables with an owner and this device in them. Requires: in a transaction.
void fillNew(Database& database, const std::string& ownerName, model::Instant now,
             const model::FillRandom& random) {
    Log log(database);
    model::IdMaker ids(random);
    model::Person owner;
    owner.id = Id<Kind::Person>(ids.next(now));
    owner.name = ownerName;
    owner.role = model::Role::Owner;
    model::Device device;
    device.id = Id<Kind::Device>(ids.next(now));
    device.person = owner.id;
    device.name = "this computer";
    setMeta(database, "device", device.id.raw());
    setMeta(database, "person", owner.id.raw());
    Action action("begin the book");
    action.add(owner);
    action.add(device);
    std::vector<PlannedEdit> edits;
    for (const auto& edit : action.edits()) {
        edits.push_back({model::fieldOf(edit.field), edit, {}});
    }
    writeAction(database, log, device.id.raw(), edits, action.what(), ActionRole::Done, 0, now);
    // The beginning can't be undone: a book without an owner is no book.
    database.run("DELETE FROM actions");
}

void fillJoined(Database& database, Id<Kind::Device> device, Id<Kind::Person> person) {
    setMeta(database, "device", device.raw());
    setMeta(database, "person", person.raw());
}

// A book in the database of `backend`, made there by `fill` in one transaction.
template <class Fill>
Result<std::unique_ptr<Database>> makeIn(std::unique_ptr<Backend> backend, Fill&& fill) {
    return guardStore([&]() -> Result<std::unique_ptr<Database>> {
        auto database = std::make_unique<Database>(std::move(backend));
        Transaction transaction(*database);
        if (database->backend().hasBook()) {
            return model::cannotBeMet("there is a book in that database already");
        }
        createTables(*database);
        fill(*database);
        transaction.commit();
        return database;
    });
}

}  // namespace

Result<Book> Book::create(const std::string& path, const std::string& ownerName, model::Instant now,
                          model::FillRandom random) {
    auto made =
        makeFile(path, [&](Database& database) { fillNew(database, ownerName, now, random); });
    if (!made.ok()) {
        return made.error();
    }
    return open(path, std::move(random));
}

Result<Book> Book::createJoined(const std::string& path, Id<Kind::Device> device,
                                Id<Kind::Person> person, model::FillRandom random) {
    auto made = makeFile(path, [&](Database& database) { fillJoined(database, device, person); });
    if (!made.ok()) {
        return made.error();
    }
    return open(path, std::move(random));
}

// The book whose tables are in `database`.
Result<Book> Book::over(std::unique_ptr<Database> database, const std::string& path,
                        model::FillRandom random) {
    auto parts = std::make_unique<Parts>();
    parts->path = path;
    parts->database = std::move(database);
    parts->log = std::make_unique<Log>(*parts->database);
    parts->ids = std::make_unique<model::IdMaker>(std::move(random));
    readSelf(*parts);
    if (parts->device.isNil()) {
        return model::damaged(
            model::saying("%1 has no device in it: it is damaged, restore a backup", path));
    }
    fitCatalog(*parts->database, *parts->log);
    return Book(std::move(parts));
}

Result<Book> Book::open(const std::string& path, model::FillRandom random) {
    if (auto good = checkFile(path); !good.ok()) {
        return good.error();
    }
    return guardStore([&]() -> Result<Book> {
        auto database = std::make_unique<Database>(path);
        if (!hasSyncTables(*database)) {
            Transaction transaction(*database);
            createSyncTables(*database);
            transaction.commit();
        }
        return over(std::move(database), path, std::move(random));
    });
}

Result<Book> Book::createIn(std::unique_ptr<Backend> backend, const std::string& path,
                            const std::string& ownerName, model::Instant now,
                            model::FillRandom random) {
    auto made = makeIn(std::move(backend),
                       [&](Database& database) { fillNew(database, ownerName, now, random); });
    return guardStore([&]() -> Result<Book> {
        return made.ok() ? over(std::move(made).value(), path, std::move(random))
                         : Result<Book>(made.error());
    });
}

Result<Book> Book::createCopyIn(std::unique_ptr<Backend> backend, const std::string& path,
                                const Book& from, model::FillRandom random) {
    auto made = makeIn(std::move(backend),
                       [&](Database& database) { copyBook(*from.parts_->database, database); });
    return guardStore([&]() -> Result<Book> {
        return made.ok() ? over(std::move(made).value(), path, std::move(random))
                         : Result<Book>(made.error());
    });
}

Result<Book> Book::openIn(std::unique_ptr<Backend> backend, const std::string& path,
                          Id<Kind::Device> device, model::FillRandom random) {
    return guardStore([&]() -> Result<Book> {
        auto database = std::make_unique<Database>(std::move(backend));
        {
            // Two programs that start at once make one book.
            Transaction transaction(*database);
            if (!database->backend().hasBook()) {
                if (device.isNil()) {
                    return model::cannotBeMet("there is no book in that database");
                }
                createTables(*database);
                fillJoined(*database, device, {});
            }
            transaction.commit();
        }
        return over(std::move(database), path, std::move(random));
    });
}

RawId Book::newId(model::Instant now) {
    return parts_->ids->next(now);
}

Id<Kind::Person> Book::me() const {
    return parts_->person;
}

Id<Kind::Device> Book::thisDevice() const {
    return parts_->device;
}

Id<Kind::Person> Book::meAsKept() const {
    const auto row = record(Kind::Person, me().raw());
    return row.ok() && row.value() ? me() : Id<Kind::Person>();
}

Id<Kind::Device> Book::thisDeviceAsKept() const {
    const auto row = record(Kind::Device, thisDevice().raw());
    return row.ok() && row.value() ? thisDevice() : Id<Kind::Device>();
}

const std::string& Book::path() const {
    return parts_->path;
}

bool Book::isThere() const {
    return parts_->database->backend().isThere();
}

template <class Row>
Result<std::vector<Row>> Book::rows(Id<Kind::Job> job) const {
    return guardStore([&]() -> Result<std::vector<Row>> {
        const bool ofJob = model::jobFieldOf(Row::kKind) != nullptr && !job.isNil();
        static const std::string kAll = selectRows(Row::kKind) + " WHERE gone = 0 ORDER BY id";
        static const std::string kOfJob =
            selectRows(Row::kKind) + " WHERE job_id = ?1 AND gone = 0 ORDER BY id";
        const RawId jobId = job.raw();
        auto select = parts_->database->prepare(ofJob ? kOfJob : kAll);
        if (ofJob) {
            select.bind(1, jobId);
        }
        std::vector<Row> rows;
        while (select.step()) {
            rows.push_back(rowFrom<Row>(select));
        }
        return rows;
    });
}

#define KIND(kind, number, plural, title, aliases) \
    template Result<std::vector<model::kind>> Book::rows<model::kind>(Id<Kind::Job>) const;
#include "core/model/catalog.def"

Result<model::JobRows> Book::jobRows(Id<Kind::Job> job) const {
    return guardStore([&]() -> Result<model::JobRows> {
        // Of one moment, so that what another process writes meanwhile is seen whole or not at all.
        const Snapshot snapshot(*parts_->database);
        model::JobRows all;
        std::optional<Error> problem;
        model::visitLists(all, [&](auto& list) {
            using Row = typename std::remove_reference_t<decltype(list)>::value_type;
            if (problem) {
                return;
            }
            auto rows = this->rows<Row>(job);
            if (rows.ok()) {
                list = std::move(rows).value();
            } else {
                problem = rows.error();
            }
        });
        if (problem) {
            return *problem;
        }
        for (const auto& one : all.jobs) {
            if (one.id == job) {
                all.job = one;
            }
        }
        if (all.job.id.isNil()) {
            return model::cannotBeMet("there is no such job in the book");
        }
        all.jobs.clear();
        return all;
    });
}

Result<std::optional<Record>> Book::record(Kind kind, RawId id) const {
    return guardStore([&]() -> Result<std::optional<Record>> {
        auto select = parts_->database->prepare(selectRows(kind) + " WHERE id = ?1");
        select.bind(1, id);
        return select.step() ? std::optional(recordFrom(kind, select)) : std::nullopt;
    });
}

Result<std::vector<Record>> Book::records(Kind kind, Id<Kind::Job> job, bool withGone) const {
    return guardStore([&]() -> Result<std::vector<Record>> {
        const bool ofJob = model::jobFieldOf(kind) != nullptr && !job.isNil();
        const RawId jobId = job.raw();
        auto select = parts_->database->prepare(selectRows(kind) + " WHERE " +
                                                (withGone ? "1 = 1" : "gone = 0") +
                                                (ofJob ? " AND job_id = ?1" : "") + " ORDER BY id");
        if (ofJob) {
            select.bind(1, jobId);
        }
        std::vector<Record> records;
        while (select.step()) {
            records.push_back(recordFrom(kind, select));
        }
        return records;
    });
}

Result<std::vector<Record>> Book::recordsByIdPart(const std::string& hex) const {
    return guardStore([&]() -> Result<std::vector<Record>> {
        std::vector<Record> records;
        const std::string starts = hex + "%";
        const std::string ends = "%" + hex;
        for (const auto& info : model::kinds()) {
            auto select = parts_->database->prepare(selectRows(info.kind) +
                                                    " WHERE lower(hex(id)) LIKE lower(?1) OR "
                                                    "lower(hex(id)) LIKE lower(?2)");
            select.bind(1, std::string_view(starts)).bind(2, std::string_view(ends));
            while (select.step()) {
                records.push_back(recordFrom(info.kind, select));
            }
        }
        return records;
    });
}

Result<std::vector<HistoryLine>> Book::history(RawId record) const {
    return guardStore([&]() -> Result<std::vector<HistoryLine>> {
        auto select = parts_->database->prepare(
            "WITH known(arrival, current) AS ("
            "  SELECT arrival, 1 FROM cells WHERE record = ?1"
            "  UNION ALL SELECT arrival, 0 FROM superseded WHERE record = ?1) "
            "SELECT e.clock, w.device, e.field, e.value, coalesce(a.what, ''), k.current "
            "FROM known k JOIN entries e ON e.arrival = k.arrival "
            "JOIN writers w ON w.writer = e.writer "
            "LEFT JOIN actions a ON a.clock = e.clock AND w.device = ?2 "
            "ORDER BY e.clock, w.device, e.lane, e.number");
        const RawId device = parts_->device.raw();
        select.bind(1, record).bind(2, device);
        std::vector<HistoryLine> lines;
        while (select.step()) {
            lines.push_back({model::HybridClock::fromRaw(select.integer(0)), select.id(1),
                             static_cast<model::FieldCode>(select.integer(2)), select.value(3),
                             select.text(4), select.integer(5) != 0});
        }
        return lines;
    });
}

Result<Book> Book::knownAt(model::Instant instant) const {
    return guardStore([&]() -> Result<Book> {
        const auto horizon = horizonOf(*parts_->database);
        if (model::HybridClock::endOf(instant) < horizon) {
            return model::cannotBeMet(model::saying(
                "what the book knew before %1 is not kept any more: ask for a later day",
                horizon.instant().utcDate().toString()));
        }
        auto parts = std::make_unique<Parts>();
        parts->path = parts_->path;
        parts->database = std::make_unique<Database>(":memory:");
        parts->log = std::make_unique<Log>(*parts->database);
        parts->ids = std::make_unique<model::IdMaker>(*parts_->ids);
        parts->device = parts_->device;
        parts->person = parts_->person;
        Transaction transaction(*parts->database);
        createTables(*parts->database);
        const auto end = model::HybridClock::endOf(instant);
        copyEntries(*parts_->database, *parts->log,
                    [&](const Entry& entry) { return entry.clock <= end; });
        transaction.commit();
        return Book(std::move(parts));
    });
}

Result<std::vector<Entry>> Book::entries() const {
    return guardStore([&]() -> Result<std::vector<Entry>> {
        auto select = parts_->database->prepare(std::string("SELECT ") + kEntryColumns +
                                                "ORDER BY e.arrival");
        std::vector<Entry> entries;
        while (select.step()) {
            entries.push_back(entryFrom(select, 0));
        }
        return entries;
    });
}

Result<std::string> Book::dump() const {
    return guardStore([&]() -> Result<std::string> {
        std::string text;
        for (const auto& info : model::kinds()) {
            auto select = parts_->database->prepare(selectRows(info.kind) + " ORDER BY id");
            while (select.step()) {
                const Record record = recordFrom(info.kind, select);
                text += std::string(info.name) + " " + record.id.toString() +
                        (record.gone ? " gone" : "") + "\n";
                for (std::size_t k = 0; k < record.values.size(); ++k) {
                    const auto& value = record.values[k];
                    if (model::isEmpty(value)) {
                        continue;
                    }
                    text += "  " + std::string(info.fields[k].name) + " ";
                    if (const auto* integer = std::get_if<std::int64_t>(&value)) {
                        text += std::to_string(*integer);
                    } else if (const auto* word = std::get_if<std::string>(&value)) {
                        text += *word;
                    } else {
                        text += std::get<RawId>(value).toString();
                    }
                    text += "\n";
                }
            }
        }
        return text;
    });
}

}  // namespace ledgerboard::store
