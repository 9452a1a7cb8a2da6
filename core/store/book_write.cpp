// Writing to a book: actions, entries from elsewhere, undo and redo.
#include <algorithm>
#include <map>
#include <unordered_set>

#include "core/model/saying.h"
#include "core/store/book_parts.h"

namespace ledgerboard::store {

using model::cannotBeMet;
using model::FieldCode;
using model::HybridClock;
using model::inPlace;
using model::RawId;
using model::Result;
using model::Saying;
using model::saying;
using model::Value;
using model::wrongUse;

namespace {

// The edits of an action, the last one of each field, in the order they were first named.
std::vector<Edit> distinct(const std::vector<Edit>& edits) {
    std::map<std::pair<RawId, FieldCode>, std::size_t> places;
    std::vector<Edit> kept;
    for (const auto& edit : edits) {
        const auto [place, isNew] = places.emplace(std::pair(edit.record, edit.field), kept.size());
        if (isNew) {
            kept.push_back(edit);
        } else {
            kept[place->second].value = edit.value;
        }
    }
    return kept;
}

bool isGone(const Edit& edit) {
    return edit.field % 1000 == 0;
}

// Everything that decides whether an action may be written, against what the book holds.
class Checker {
  public:
    Checker(Database& database, Log& log, const std::vector<Edit>& edits)
        : database_(database), log_(log) {
        for (const auto& edit : edits) {
            made_.insert(edit.record);
        }
    }

    // The edit as it is to be written; empty where it changes nothing.
    Result<std::optional<PlannedEdit>> plan(const Edit& edit) {
        const model::Field* field = model::fieldOf(edit.field);
        const auto kind = static_cast<std::size_t>(model::kindOf(edit.field));
        if (edit.record.isNil() || kind == 0 || kind > model::kinds().size() ||
            (field == nullptr && !isGone(edit))) {
            return wrongUse("an edit names a record or a field that the catalog does not know");
        }
        Entry before;
        const bool held = log_.currentEntry(edit.record, edit.field, before);
        if ((held && before.value == edit.value) || (!held && model::isEmpty(edit.value))) {
            return std::optional<PlannedEdit>();
        }
        if (field != nullptr) {
            if (auto good = checkField(*field, edit, held && !model::isEmpty(before.value));
                !good.ok()) {
                return good.error();
            }
        }
        PlannedEdit planned{field, edit, {}};
        if (field != nullptr && field->merge == model::Merge::Checked && held) {
            planned.replaces.push_back(before.name);
        }
        return std::optional(planned);
    }

  private:
    // "Spend, Amount"
    static Saying placeOf(const model::Field& field) {
        return saying("%1, %2", Saying(std::string(model::infoOf(field.kind).title)),
                      Saying(std::string(field.heading)));
    }

    Result<void> checkField(const model::Field& field, const Edit& edit, bool wasSaid) {
        if (field.merge == model::Merge::Kept && wasSaid) {
            return inPlace(
                placeOf(field),
                cannotBeMet("it is a kept fact and is not edited; drop the row and add it anew"));
        }
        if (auto good = model::checkValue(field, edit.value); !good.ok()) {
            return good.error();
        }
        if (const auto* id = std::get_if<RawId>(&edit.value)) {
            return checkTarget(field, *id);
        }
        if (field.type == model::FieldType::Refs) {
            std::vector<RawId> ids;
            model::readRefs(edit.value, ids);
            for (const auto& id : ids) {
                if (auto good = checkTarget(field, id); !good.ok()) {
                    return good.error();
                }
            }
        }
        return {};
    }

    Result<void> checkTarget(const model::Field& field, const RawId& id) {
        if (made_.contains(id) || !known_.insert(id).second) {
            return {};
        }
        auto select = database_.prepare(
            "SELECT 1 FROM " + std::string(model::infoOf(field.meant).table) + " WHERE id = ?1");
        if (select.bind(1, id).step()) {
            return {};
        }
        return inPlace(placeOf(field),
                       cannotBeMet(saying("there is no such %1",
                                          Saying(std::string(model::infoOf(field.meant).title)))));
    }

    Database& database_;
    Log& log_;
    std::unordered_set<RawId, model::RawIdHash> made_;
    std::unordered_set<RawId, model::RawIdHash> known_;
};

// The value a field had before `clock`, by what the log says; empty where it had none.
Value valueBefore(Database& database, const RawId& record, FieldCode field, HybridClock clock) {
    auto select = database.prepare(
        "WITH known(arrival) AS (SELECT arrival FROM cells WHERE record = ?1"
        "  UNION ALL SELECT arrival FROM superseded WHERE record = ?1) "
        "SELECT e.value FROM known k JOIN entries e ON e.arrival = k.arrival "
        "JOIN writers w ON w.writer = e.writer "
        "WHERE e.field = ?2 AND e.clock < ?3 ORDER BY e.clock DESC, w.device DESC LIMIT 1");
    select.bind(1, record).bind(2, std::int64_t{field}).bind(3, clock.raw());
    return select.step() ? select.value(0) : Value{};
}

// Whether any entry of `record` is older than `clock`: if not, the action there made the record.
bool existedBefore(Database& database, const RawId& record, HybridClock clock) {
    auto select = database.prepare(
        "WITH known(arrival) AS (SELECT arrival FROM cells WHERE record = ?1"
        "  UNION ALL SELECT arrival FROM superseded WHERE record = ?1) "
        "SELECT 1 FROM known k JOIN entries e ON e.arrival = k.arrival WHERE e.clock < ?2 LIMIT 1");
    return select.bind(1, record).bind(2, clock.raw()).step();
}

std::vector<Entry> entriesOf(Database& database, Log& log, const RawId& device, HybridClock clock) {
    auto select = database.prepare(std::string("SELECT ") + kEntryColumns +
                                   "WHERE +e.writer = ?1 AND e.clock = ?2 AND e.arrival >= "
                                   "(SELECT first FROM actions WHERE clock = ?2) "
                                   "ORDER BY e.arrival");
    select.bind(1, log.writerOf(device)).bind(2, clock.raw());
    std::vector<Entry> entries;
    while (select.step()) {
        entries.push_back(entryFrom(select, 0));
    }
    return entries;
}

LogPosition positionOf(Database& database) {
    auto select = database.prepare("SELECT coalesce(max(arrival), 0) FROM entries");
    select.step();
    return {select.integer(0)};
}

// The action whose undoing or redoing is asked for.
struct Target {
    HybridClock clock;
    std::string what;
    std::int64_t undoClock = 0;  // of a redo: the undo that it takes back
};

Result<Target> latestDone(Database& database) {
    auto select = database.prepare(
        "SELECT clock, what FROM actions WHERE role = 0 AND undone = 0 ORDER BY clock DESC LIMIT "
        "1");
    if (!select.step()) {
        return cannotBeMet("there is nothing to undo");
    }
    return Target{HybridClock::fromRaw(select.integer(0)), select.text(1), 0};
}

Result<Target> latestUndone(Database& database) {
    // An undo can be taken back until something new is done.
    auto select = database.prepare(
        "SELECT d.clock, d.what, u.clock FROM actions u JOIN actions d ON d.clock = u.target "
        "WHERE u.role = 1 AND u.undone = 0 "
        "AND u.clock > (SELECT coalesce(max(clock), 0) FROM actions WHERE role = 0) "
        "ORDER BY u.clock DESC LIMIT 1");
    if (!select.step()) {
        return cannotBeMet("there is nothing to redo");
    }
    return Target{HybridClock::fromRaw(select.integer(0)), select.text(1), select.integer(2)};
}

void setUndone(Database& database, std::int64_t clock, bool undone) {
    auto update = database.prepare("UPDATE actions SET undone = ?2 WHERE clock = ?1");
    update.bind(1, clock).bind(2, std::int64_t{undone ? 1 : 0}).run();
}

Result<void> refuseIfChanged(Log& log, const Entry& entry, const Value& expected) {
    if (log.current(entry.record, entry.field) == expected) {
        return {};
    }
    const model::Field* field = model::fieldOf(entry.field);
    const Saying heading =
        field != nullptr ? Saying(std::string(field->heading)) : saying("Dropped");
    const Saying kind(std::string(model::infoOf(model::kindOf(entry.field)).title));
    return cannotBeMet(
        saying("\"%1\" of a %2 was changed since: set it by hand instead", heading, kind));
}

}  // namespace

HybridClock writeAction(Database& database, Log& log, const RawId& device,
                        const std::vector<PlannedEdit>& edits, const std::string& what,
                        ActionRole role, std::int64_t target, model::Instant now) {
    const HybridClock clock = log.clock().next(now);
    std::map<Lane, std::int64_t> numbers;
    for (const Lane lane : {Lane::OwnerOnly, Lane::Shared}) {
        numbers[lane] = log.lastNumber(device, lane);
    }
    std::int64_t first = 0;
    {
        auto select = database.prepare("SELECT coalesce(max(arrival), 0) + 1 FROM entries");
        select.step();
        first = select.integer(0);
    }
    for (const auto& planned : edits) {
        Entry entry;
        const Lane lane = planned.field != nullptr ? laneOf(*planned.field)
                                                   : laneOfGone(model::kindOf(planned.edit.field));
        entry.name = {device, lane, ++numbers[lane]};
        entry.clock = clock;
        entry.record = planned.edit.record;
        entry.field = planned.edit.field;
        entry.value = planned.edit.value;
        entry.replaces = planned.replaces;
        log.take(entry);
    }
    log.flush();
    log.setClock(clock);
    auto insert = database.prepare(
        "INSERT INTO actions(clock, what, role, target, first) VALUES(?1, ?2, ?3, ?4, ?5)");
    insert.bind(1, clock.raw())
        .bind(2, std::string_view(what))
        .bind(3, static_cast<std::int64_t>(role))
        .bind(4, target)
        .bind(5, first)
        .run();
    return clock;
}

LogPosition Book::position() const {
    auto read = guardStore([&]() -> Result<LogPosition> { return positionOf(*parts_->database); });
    return read.ok() ? read.value() : LogPosition{};
}

Result<void> Book::commit(const Action& action, model::Instant now) {
    return guardStore([&]() -> Result<void> {
        parts_->log->forget();
        Transaction transaction(*parts_->database);
        if (action.plannedOn() && *action.plannedOn() != positionOf(*parts_->database)) {
            return cannotBeMet(
                "another program wrote to the book meanwhile, so nothing was written: do it again");
        }
        const std::vector<Edit> edits = distinct(action.edits());
        Checker checker(*parts_->database, *parts_->log, edits);
        std::vector<PlannedEdit> planned;
        for (const auto& edit : edits) {
            auto one = checker.plan(edit);
            if (!one.ok()) {
                return one.error();
            }
            if (one.value()) {
                planned.push_back(*one.value());
            }
        }
        if (planned.empty()) {
            return {};
        }
        writeAction(*parts_->database, *parts_->log, parts_->device.raw(), planned, action.what(),
                    ActionRole::Done, 0, now);
        transaction.commit();
        return {};
    });
}

Result<std::size_t> Book::apply(std::span<const Entry> entries) {
    return guardStore([&]() -> Result<std::size_t> {
        parts_->log->forget();
        Transaction transaction(*parts_->database);
        for (const auto& entry : entries) {
            parts_->log->take(entry);
        }
        const auto settled = parts_->log->flush();
        if (settled.added > 0) {
            parts_->log->setClock(std::max(parts_->log->clock(), settled.latest));
        }
        transaction.commit();
        return settled.added;
    });
}

Result<UndoReport> Book::undo(model::Instant now) {
    return guardStore([&]() -> Result<UndoReport> {
        Database& database = *parts_->database;
        parts_->log->forget();
        Transaction transaction(database);
        auto target = latestDone(database);
        if (!target.ok()) {
            return target.error();
        }
        const HybridClock clock = target.value().clock;
        if (clock < horizonOf(database)) {
            return cannotBeMet(saying("\"%1\" was too long ago to be undone", target.value().what));
        }
        std::vector<PlannedEdit> planned;
        std::unordered_set<RawId, model::RawIdHash> dropped;
        for (const auto& entry : entriesOf(database, *parts_->log, parts_->device.raw(), clock)) {
            if (auto same = refuseIfChanged(*parts_->log, entry, entry.value); !same.ok()) {
                return same.error();
            }
            if (!existedBefore(database, entry.record, clock)) {
                // The action made this record, facts and all: it goes as a whole.
                if (dropped.insert(entry.record).second) {
                    const FieldCode gone = model::goneCode(model::kindOf(entry.field));
                    planned.push_back({nullptr, {entry.record, gone, std::int64_t{1}}, {}});
                }
                continue;
            }
            PlannedEdit edit{model::fieldOf(entry.field),
                             {entry.record, entry.field,
                              valueBefore(database, entry.record, entry.field, clock)},
                             {entry.name}};
            planned.push_back(std::move(edit));
        }
        writeAction(database, *parts_->log, parts_->device.raw(), planned,
                    "undo: " + target.value().what, ActionRole::Undo, clock.raw(), now);
        setUndone(database, clock.raw(), true);
        transaction.commit();
        return UndoReport{target.value().what, planned.size()};
    });
}

Result<UndoReport> Book::redo(model::Instant now) {
    return guardStore([&]() -> Result<UndoReport> {
        Database& database = *parts_->database;
        parts_->log->forget();
        Transaction transaction(database);
        auto target = latestUndone(database);
        if (!target.ok()) {
            return target.error();
        }
        const HybridClock clock = target.value().clock;
        if (clock < horizonOf(database)) {
            return cannotBeMet(
                saying("\"%1\" was too long ago to be done again", target.value().what));
        }
        const auto undoClock = HybridClock::fromRaw(target.value().undoClock);
        std::map<std::pair<RawId, FieldCode>, Value> wanted;
        for (const auto& entry : entriesOf(database, *parts_->log, parts_->device.raw(), clock)) {
            wanted[{entry.record, entry.field}] = entry.value;
        }
        std::vector<PlannedEdit> planned;
        for (const auto& entry :
             entriesOf(database, *parts_->log, parts_->device.raw(), undoClock)) {
            if (auto same = refuseIfChanged(*parts_->log, entry, entry.value); !same.ok()) {
                return same.error();
            }
            // What the action itself wrote there; nothing for the gone cell of a record it made.
            const auto found = wanted.find({entry.record, entry.field});
            planned.push_back(
                {model::fieldOf(entry.field),
                 {entry.record, entry.field, found != wanted.end() ? found->second : Value{}},
                 {entry.name}});
        }
        writeAction(database, *parts_->log, parts_->device.raw(), planned,
                    "redo: " + target.value().what, ActionRole::Redo, clock.raw(), now);
        setUndone(database, clock.raw(), false);
        setUndone(database, target.value().undoClock, true);
        transaction.commit();
        return UndoReport{target.value().what, planned.size()};
    });
}

}  // namespace ledgerboard::store
