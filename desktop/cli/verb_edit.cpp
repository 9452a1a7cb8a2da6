// set, add, drop, undo, redo: any edit.
#include <algorithm>

#include <nlohmann/json.hpp>

#include "core/compute/links.h"
#include "core/intake/files/contradictions.h"
#include "core/intake/files/find.h"
#include "core/intake/files/nearest.h"
#include "core/intake/keep/keep_words.h"
#include "core/report/money_text.h"

#include "desktop/cli/edit_words.h"
#include "desktop/cli/verbs.h"

namespace ledgerboard::cli {

namespace {

using model::Kind;
using model::RawId;
using model::Result;

// What a person names as RECORD: "job" is the job itself.
Result<std::pair<Kind, RawId>> meant(Session& session, const std::string& text) {
    if (model::folded(text) == "job") {
        auto job = session.job();
        if (!job.ok()) {
            return job.error();
        }
        return std::pair(Kind::Job, job.value().raw());
    }
    auto finder = session.finder();
    if (!finder.ok()) {
        return finder.error();
    }
    return finder.value()->findAny(text);
}

// Percent is read from marks and is nobody's to set.
bool isProgress(Kind kind, const std::string& field) {
    const std::string name = model::folded(field);
    return kind == Kind::Item && (name == "percent" || name == "done" || name == "progress" ||
                                  name == "percentdone" || name == "%" || name == "shown");
}

Result<const model::Field*> fieldMeant(Kind kind, const std::string& name) {
    if (isProgress(kind, name)) {
        return model::wrongUse(
            "percent is never set; it is read from marks: use 'ledgerboard mark ITEM PERCENT'");
    }
    if (const model::Field* field = model::fieldNamed(kind, name)) {
        return field;
    }
    std::string known;
    std::vector<std::string> headings;
    for (const auto& field : model::infoOf(kind).fields) {
        headings.emplace_back(field.heading);
        known += (known.empty() ? "" : ", ") + headings.back();
    }
    const std::string near = intake::nearestName(name, headings);
    return model::wrongUse("a " + std::string(model::infoOf(kind).title) + " has no field \"" +
                           name + "\"" + (near.empty() ? "." : ": did you mean \"" + near + "\"?") +
                           " It has: " + known);
}

// The end of an id, by which a record that has no name any more is meant.
std::string endOf(RawId id) {
    return id.hex().substr(24);
}

// A dropped record, by part of its id: it has no name while it is dropped. Errors: none, several.
Result<store::Record> droppedMeant(Session& session, const std::string& text) {
    auto book = session.book();
    if (!book.ok()) {
        return book.error();
    }
    const bool isPart =
        text.size() >= 4 && text.find_first_not_of("0123456789abcdefABCDEF-") == std::string::npos;
    std::string hex;
    std::copy_if(text.begin(), text.end(), std::back_inserter(hex),
                 [](char c) { return c != '-'; });
    auto found = isPart ? book.value()->recordsByIdPart(hex)
                        : Result<std::vector<store::Record>>(std::vector<store::Record>());
    if (!found.ok()) {
        return found.error();
    }
    std::erase_if(found.value(), [](const store::Record& record) { return !record.gone; });
    if (found.value().empty()) {
        return model::cannotBeMet("nothing that was dropped has the id \"" + text +
                                  "\": 'ledgerboard drop' says the id when it drops something");
    }
    if (found.value().size() > 1) {
        std::string all;
        for (const auto& record : found.value()) {
            all += "\n  " + record.id.hex() + "  " + std::string(model::infoOf(record.kind).title);
        }
        return model::cannotBeMet("\"" + text + "\" may mean several; say more of the id:" + all);
    }
    return found.value().front();
}

Result<model::Value> valueMeant(const model::Field& field, const std::string& text,
                                const intake::Finder& finder) {
    auto value = model::parseValue(field, text, finder.findRecord());
    if (value.ok()) {
        if (auto good = model::checkValue(field, value.value()); !good.ok()) {
            return good.error();
        }
        return value;
    }
    return model::Error{value.error().code,
                        std::string(field.heading) + ": " + value.error().message};
}

// A space is dropped once nothing is to be done in it: its items would lose their room.
Done refuseIfWorkIn(Session& session, RawId space, const std::string& name) {
    auto book = session.book();
    if (!book.ok()) {
        return book.error();
    }
    auto items = book.value()->rows<model::Item>();
    if (!items.ok()) {
        return items.error();
    }
    const auto count =
        std::count_if(items.value().begin(), items.value().end(),
                      [&](const model::Item& item) { return item.space.raw() == space; });
    if (count == 0) {
        return {};
    }
    return model::cannotBeMet(name + " still has " +
                              report::countText(count, "scope item", "scope items") +
                              ": drop each first, or move it with 'ledgerboard set ITEM Space "
                              "OTHER'");
}

// A link that is new or changed by `values` must name two items and close no loop.
Done refuseBadLink(Session& session, RawId id,
                   const std::vector<std::pair<model::FieldCode, model::Value>>& values) {
    auto rows = session.rows();
    auto finder = session.finder();
    if (!rows.ok() || !finder.ok()) {
        return rows.ok() ? finder.error() : rows.error();
    }
    model::Link link;
    link.id = model::Id<Kind::Link>(id);
    for (const model::Link& known : rows.value().links) {
        if (known.id == link.id) {
            link = known;
        }
    }
    for (const auto& [code, value] : values) {
        const auto* item = std::get_if<RawId>(&value);
        const auto end = model::Id<Kind::Item>(item == nullptr ? RawId() : *item);
        if (code == model::field::Link::fromItem) {
            link.fromItem = end;
        } else if (code == model::field::Link::toItem) {
            link.toItem = end;
        }
    }
    return compute::checkLink(link, rows.value().links, [&](const compute::ItemId& item) {
        return finder.value()->nameOf(item.raw());
    });
}

Done commit(Session& session, const store::Action& action) {
    auto book = session.book();
    if (!book.ok()) {
        return book.error();
    }
    auto done = book.value()->commit(action, session.now());
    session.forgetRows();
    return done;
}

// The same, and what the edits teach of the owner's words: returned, to be told.
Result<std::vector<std::string>> commitAndLearn(Session& session, store::Action& action) {
    auto book = session.book();
    if (!book.ok()) {
        return book.error();
    }
    auto taught = intake::addLessonsOfEdits(action, *book.value(), session.now());
    if (!taught.ok()) {
        return taught;
    }
    if (auto done = commit(session, action); !done.ok()) {
        return done.error();
    }
    return taught;
}

// What can be said of the kind alone: links, owner's words, the time zone of a job.
Done refuseBadEdit(Session& session, Kind kind, RawId id,
                   const std::vector<std::pair<model::FieldCode, model::Value>>& values) {
    for (const auto& [field, value] : values) {
        const auto* zone = std::get_if<std::string>(&value);
        if (field == model::field::Job::timeZone) {
            auto day = session.surroundings().dayIn(session.now(), zone ? *zone : std::string());
            if (!day.ok()) {
                return day.error();
            }
        }
    }
    if (kind == Kind::Link) {
        return refuseBadLink(session, id, values);
    }
    return kind == Kind::OwnWord ? refuseBadWord(session, id, values) : Done();
}

// Whether a record of that kind has the name already that one of the values gives.
bool hasNamesake(const intake::Finder& finder, Kind kind,
                 const std::vector<std::pair<model::FieldCode, model::Value>>& values) {
    return std::any_of(values.begin(), values.end(), [&](const auto& one) {
        const auto* text = std::get_if<std::string>(&one.second);
        return text != nullptr && model::fieldOf(one.first)->name == "name" &&
               finder.hasName(kind, *text);
    });
}

std::string namesakeText(Kind kind) {
    return "There is another " + std::string(model::infoOf(kind).title) +
           " of that name; 'ledgerboard undo' takes this one out.\n";
}

// FIELD=VALUE, as many as are given.
Result<std::vector<std::pair<model::FieldCode, model::Value>>> valuesMeant(
    Kind kind, const std::vector<std::string>& pairs, const intake::Finder& finder) {
    std::vector<std::pair<model::FieldCode, model::Value>> values;
    for (const auto& pair : pairs) {
        const auto equals = pair.find('=');
        if (equals == std::string::npos) {
            return model::wrongUse("\"" + pair +
                                   "\" is not FIELD=VALUE, such as Name=\"Tile crew\"");
        }
        auto field = fieldMeant(kind, pair.substr(0, equals));
        if (!field.ok()) {
            return field.error();
        }
        auto value = valueMeant(*field.value(), pair.substr(equals + 1), finder);
        if (!value.ok()) {
            return value.error();
        }
        values.emplace_back(field.value()->code, std::move(value).value());
    }
    return values;
}

// A new record is entered whole, so what is missing or contradicts itself is refused, as a file is.
Done refuseContradictions(Session& session, Kind kind, RawId id,
                          const std::vector<intake::FieldAndValue>& values) {
    auto rows = session.rows();
    auto finder = session.finder();
    if (!rows.ok() || !finder.ok()) {
        return rows.ok() ? finder.error() : rows.error();
    }
    std::vector<std::string> wrong = intake::missingIn(kind, values);
    const auto more =
        intake::contradictionsIn({kind, id, {}, false}, values, rows.value(), *finder.value());
    wrong.insert(wrong.end(), more.begin(), more.end());
    std::string text;
    for (const std::string& one : wrong) {
        text += (text.empty() ? "" : "\n") + one;
    }
    return wrong.empty() ? Done() : Done(model::wrongUse(text));
}

// One field is set at a time, so two that go together may disagree in between: it is told, a line
// each, where they did not disagree before.
Result<std::string> disagreementText(Session& session, const store::Record& record,
                                     const intake::FieldAndValue& change) {
    auto rows = session.rows();
    auto finder = session.finder();
    if (!rows.ok() || !finder.ok()) {
        return rows.ok() ? finder.error() : rows.error();
    }
    const auto before = intake::contradictionsIn(record, {}, rows.value(), *finder.value());
    std::string text;
    for (const std::string& one :
         intake::contradictionsIn(record, {change}, rows.value(), *finder.value())) {
        if (std::find(before.begin(), before.end(), one) == before.end()) {
            text += one + "\n";
        }
    }
    return text;
}

Done bringBack(Session& session, const EditOptions& options) {
    if (model::folded(options.value) != "no") {
        return model::wrongUse(
            "Dropped can be set to no, which brings a record back; to drop one, "
            "use 'ledgerboard drop RECORD'");
    }
    auto dropped = droppedMeant(session, options.record);
    if (!dropped.ok()) {
        return dropped.error();
    }
    const auto& record = dropped.value();
    const std::string title(model::infoOf(record.kind).title);
    store::Action action("bring back " + title + " " + endOf(record.id));
    action.set(record.id, model::goneCode(record.kind), model::Value{});
    if (auto done = commit(session, action); !done.ok()) {
        return done.error();
    }
    auto finder = session.finder();
    const std::string name = finder.ok() ? finder.value()->nameOf(record.id) : endOf(record.id);
    if (session.json()) {
        session.printJson({{"brought_back", record.id.toString()}});
        return {};
    }
    session.print("Brought back " + title + " " + name + ".\n");
    return {};
}

}  // namespace

Done verbSet(Session& session, const EditOptions& options) {
    if (auto good = session.refusePast("set", false); !good.ok()) {
        return good.error();
    }
    if (model::folded(options.field) == "dropped") {
        return bringBack(session, options);
    }
    auto record = meant(session, options.record);
    if (!record.ok()) {
        return record.error();
    }
    auto field = fieldMeant(record.value().first, options.field);
    if (!field.ok()) {
        return field.error();
    }
    auto finder = session.finder();
    if (!finder.ok()) {
        return finder.error();
    }
    auto value = valueMeant(*field.value(), options.value, *finder.value());
    if (!value.ok()) {
        return value.error();
    }
    if (auto good = refuseBadEdit(session, record.value().first, record.value().second,
                                  {{field.value()->code, value.value()}});
        !good.ok()) {
        return good.error();
    }
    const std::string name = finder.value()->nameOf(record.value().second);
    const std::string heading(field.value()->heading);
    auto before = session.book().value()->record(record.value().first, record.value().second);
    if (!before.ok()) {
        return before.error();
    }
    const auto names = finder.value()->nameRecord();
    const std::string was =
        before.value()
            ? model::printValue(*field.value(), before.value()->at(field.value()->code), names)
            : "";
    const std::string is = model::printValue(*field.value(), value.value(), names);
    auto disagree = before.value() ? disagreementText(session, *before.value(),
                                                      {field.value()->code, value.value()})
                                   : Result<std::string>(std::string());
    if (!disagree.ok()) {
        return disagree.error();
    }
    store::Action action("set " + name + ", " + heading);
    action.set(record.value().second, field.value()->code, value.value());
    auto taught = commitAndLearn(session, action);
    if (!taught.ok()) {
        return taught.error();
    }
    if (session.json()) {
        session.printJson({{"record", record.value().second.toString()},
                           {"field", field.value()->name},
                           {"value", is},
                           {"was", was},
                           {"own_words", taught.value()}});
        return {};
    }
    session.print(name + ", " + heading + ": " + (is.empty() ? "nothing" : is) +
                  (was == is     ? " (as it was)"
                   : was.empty() ? ""
                                 : " (was " + was + ")") +
                  "\n" + disagree.value() + taughtText(taught.value()));
    return {};
}

Done verbAdd(Session& session, const AddOptions& options) {
    if (auto good = session.refusePast("add", false); !good.ok()) {
        return good.error();
    }
    const auto kind = model::kindNamed(options.kind);
    if (!kind) {
        return model::wrongUse("KIND: there is no kind \"" + options.kind +
                               "\": 'ledgerboard add --help' names them all");
    }
    if (*kind == Kind::Job) {
        return model::wrongUse("a job is added with 'ledgerboard start NAME'");
    }
    if (*kind == Kind::Mark) {
        return model::wrongUse(
            "a mark is made with 'ledgerboard mark ITEM PERCENT', which heeds the cautions of its "
            "item; many at once with 'ledgerboard bring marks FILE'");
    }
    auto finder = session.finder();
    auto book = session.book();
    if (!finder.ok() || !book.ok()) {
        return finder.ok() ? book.error() : finder.error();
    }
    const RawId id = book.value()->newId(session.now());
    store::Action action("add " + std::string(model::infoOf(*kind).title));
    auto values = valuesMeant(*kind, options.fields, *finder.value());
    if (!values.ok()) {
        return values.error();
    }
    bool saidSomething = false;
    for (const auto& [field, value] : values.value()) {
        saidSomething = saidSomething || !model::isEmpty(value);
        action.set(id, field, value);
    }
    if (!saidSomething) {
        return model::wrongUse("say at least one FIELD=VALUE of the new " +
                               std::string(model::infoOf(*kind).title));
    }
    if (auto good = refuseBadEdit(session, *kind, id, values.value()); !good.ok()) {
        return good.error();
    }
    if (auto good = refuseContradictions(session, *kind, id, values.value()); !good.ok()) {
        return good.error();
    }
    if (const model::Field* jobField = model::jobFieldOf(*kind)) {
        auto job = session.job();
        if (!job.ok()) {
            return job.error();
        }
        action.set(id, jobField->code, job.value().raw());
    }
    const bool isNamesake = hasNamesake(*finder.value(), *kind, values.value());
    auto taught = commitAndLearn(session, action);
    if (!taught.ok()) {
        return taught.error();
    }
    auto after = session.finder();
    const std::string name = after.ok() ? after.value()->nameOf(id) : id.toString();
    if (session.json()) {
        session.printJson({{"kind", model::infoOf(*kind).name},
                           {"id", id.toString()},
                           {"own_words", taught.value()}});
        return {};
    }
    session.print("Added " + std::string(model::infoOf(*kind).title) + " " + name + ".\n" +
                  (isNamesake ? namesakeText(*kind) : "") + taughtText(taught.value()));
    return {};
}

Done verbDrop(Session& session, const std::string& record) {
    if (auto good = session.refusePast("drop", false); !good.ok()) {
        return good.error();
    }
    auto found = meant(session, record);
    if (!found.ok()) {
        return found.error();
    }
    const std::string name = session.finder().value()->nameOf(found.value().second);
    const std::string title(model::infoOf(found.value().first).title);
    if (found.value().first == Kind::Space) {
        if (auto empty = refuseIfWorkIn(session, found.value().second, name); !empty.ok()) {
            return empty.error();
        }
    }
    store::Action action("drop " + title + " " + name);
    action.drop(found.value().first, found.value().second);
    auto taught = commitAndLearn(session, action);
    if (!taught.ok()) {
        return taught.error();
    }
    if (session.json()) {
        session.printJson(
            {{"dropped", found.value().second.toString()}, {"own_words", taught.value()}});
        return {};
    }
    session.print("Dropped " + title + " " + name +
                  ". It stays in history; 'ledgerboard undo' now, " + "or 'ledgerboard set " +
                  endOf(found.value().second) + " Dropped no' at any time, brings it back.\n" +
                  taughtText(taught.value()));
    return {};
}

namespace {

Done walkBack(Session& session, bool undo) {
    if (auto good = session.refusePast(undo ? "undo" : "redo", false); !good.ok()) {
        return good.error();
    }
    auto book = session.book();
    if (!book.ok()) {
        return book.error();
    }
    auto report = undo ? book.value()->undo(session.now()) : book.value()->redo(session.now());
    if (!report.ok()) {
        return report.error();
    }
    session.forgetRows();
    if (session.json()) {
        session.printJson(
            {{undo ? "undone" : "redone", report.value().what}, {"edits", report.value().edits}});
        return {};
    }
    session.print(std::string(undo ? "Undone: " : "Done again: ") + report.value().what + ".\n");
    return {};
}

}  // namespace

Done verbUndo(Session& session) {
    return walkBack(session, true);
}

Done verbRedo(Session& session) {
    return walkBack(session, false);
}

}  // namespace ledgerboard::cli
