// list and history: the rows, and who changed what.
#include <algorithm>
#include <map>
#include <memory>

#include <nlohmann/json.hpp>

#include "core/compute/as_of.h"
#include "core/compute/budget.h"
#include "core/report/money_text.h"

#include "desktop/cli/list_columns.h"
#include "desktop/cli/listing.h"
#include "desktop/cli/record_json.h"
#include "desktop/cli/verbs.h"

namespace ledgerboard::cli {

namespace {

using model::Kind;
using model::RawId;
using model::Result;
using nlohmann::json;

// Where a figure isn't known.
std::string_view noFigure(report::Script script) {
    return script == report::Script::Unicode ? "–" : "-";
}

// Nothing prices it: 0 would read as free.
bool isShownUnpriced(const Listing& listing, const RawId& item, model::Money amount) {
    return listing.unpriced.contains(item) && amount == model::Money{};
}

bool isFigure(model::FieldType type) {
    using model::FieldType;
    return type == FieldType::Money || type == FieldType::Quantity || type == FieldType::Percent ||
           type == FieldType::Count;
}

// Figures that marks and spend add to a scope item.
json figuresJson(const compute::LineFigures& line) {
    return {{"budget_now", line.budgetNow.toString()},
            {"committed", line.committed.toString()},
            {"billed", line.billed.toString()},
            {"paid", line.paid.toString()},
            {"held", line.held.toString()},
            {"shown", json::parse(line.shown.toString())},
            {"seen", json::parse(line.seen.toString())},
            {"earned", line.earned.toString()},
            {"planned", line.planned.toString()},
            {"to_go", line.toGo.toString()},
            {"to_go_by", std::string(compute::wordsFor(line.rule))},
            {"forecast", line.forecast.toString()}};
}

// The ending of an id that no other record listed shares, four digits at least.
std::map<RawId, std::string> shortIds(const std::vector<store::Record>& records) {
    std::map<RawId, std::string> ids;
    for (std::size_t digits = 4; digits <= 32; digits += 2) {
        std::map<std::string, int> seen;
        for (const auto& record : records) {
            ++seen[record.id.hex().substr(32 - digits)];
        }
        for (const auto& record : records) {
            const std::string tail = record.id.hex().substr(32 - digits);
            if (seen[tail] == 1 && !ids.contains(record.id)) {
                ids[record.id] = tail;
            }
        }
    }
    return ids;
}

std::string cellOf(const model::Field& field, const model::Value& value,
                   const model::NameRecord& name, report::Script script) {
    if (field.type == model::FieldType::Money && std::holds_alternative<std::int64_t>(value)) {
        return report::centsText(model::Money::fromMinor(std::get<std::int64_t>(value)), script);
    }
    return model::printValue(field, value, name);
}

// "42 sq ft": one column on a terminal that has few.
std::string quantityText(const store::Record& item) {
    std::optional<model::Quantity> quantity;
    std::string unit;
    model::readMember(item.at(model::field::Item::quantity), quantity);
    model::readMember(item.at(model::field::Item::unit), unit);
    return quantity ? quantity->toString() + (unit.empty() ? "" : " " + unit) : "";
}

report::Table shownTable(const Listing& listing, bool all, report::Script script) {
    std::vector<model::FieldCode> codes = shownFields(listing.kind);
    if (all) {
        codes.clear();
        for (const auto& field : model::infoOf(listing.kind).fields) {
            codes.push_back(field.code);
        }
    }
    report::Table table;
    for (const auto code : codes) {
        const model::Field& field = *model::fieldOf(code);
        table.columns.push_back({std::string(field.heading), isFigure(field.type)});
    }
    const bool isScope = listing.kind == Kind::Item;
    if (isScope && !all) {
        table.columns.push_back({"Quantity", true});
    }
    if (isScope) {
        table.columns.push_back({"Budget now", true});
        table.columns.push_back({"Done %", true});
        table.columns.push_back({"Forecast", true});
    }
    table.columns.push_back({"Id", false});
    const auto ids = shortIds(listing.records);
    for (const auto& record : listing.records) {
        std::vector<std::string> cells;
        cells.reserve(table.columns.size());
        for (const auto code : codes) {
            cells.push_back(cellOf(*model::fieldOf(code), record.at(code), listing.name, script));
        }
        if (isScope && !all) {
            cells.push_back(quantityText(record));
        }
        if (isScope) {
            const auto found = listing.lines.find(record.id);
            const auto* line = found == listing.lines.end() ? nullptr : &found->second;
            const auto money = [&](model::Money amount) {
                return isShownUnpriced(listing, record.id, amount)
                           ? std::string(noFigure(script))
                           : report::wholeText(amount, script);
            };
            cells.push_back(line == nullptr ? "" : money(line->budgetNow));
            cells.push_back(line == nullptr ? "" : line->shown.toString());
            cells.push_back(line == nullptr ? "" : money(line->forecast));
        }
        cells.push_back(ids.at(record.id));
        table.rows.push_back(std::move(cells));
    }
    return table;
}

Result<Listing> listingOfBook(Session& session, Kind kind) {
    auto book = session.bookToRead();
    if (!book.ok()) {
        return book.error();
    }
    auto opened = intake::Finder::open(*book.value(), model::Id<Kind::Job>());
    if (!opened.ok()) {
        return opened.error();
    }
    auto records = book.value()->records(kind, model::Id<Kind::Job>());
    if (!records.ok()) {
        return records.error();
    }
    Listing listing;
    listing.kind = kind;
    listing.records = std::move(records).value();
    listing.name = [finder = std::make_shared<intake::Finder>(std::move(opened).value())](
                       const RawId& id) { return finder->nameOf(id); };
    return listing;
}

// Dropped records have a history too, and no name: they are known by their id.
Result<RawId> recordWithHistory(Session& session, const store::Book& book,
                                const intake::Finder& finder, const std::string& text) {
    if (model::folded(text) == "job") {
        auto job = session.job();
        return job.ok() ? Result<RawId>(job.value().raw()) : Result<RawId>(job.error());
    }
    auto found = finder.findAny(text);
    if (found.ok()) {
        return found.value().second;
    }
    std::string hex = text;
    std::erase(hex, '-');
    const bool isHex = hex.find_first_not_of("0123456789abcdefABCDEF") == std::string::npos;
    if (isHex && hex.size() >= 4) {
        auto records = book.recordsByIdPart(hex);
        if (!records.ok()) {
            return records.error();
        }
        if (records.value().size() == 1) {
            return records.value().front().id;
        }
    }
    return found.error();
}

}  // namespace

json listingJson(const Listing& listing) {
    json rows = json::array();
    for (const auto& record : listing.records) {
        json row = recordJson(record, listing.name);
        if (const auto line = listing.lines.find(record.id); line != listing.lines.end()) {
            row["figures"] = figuresJson(line->second);
        }
        rows.push_back(std::move(row));
    }
    return {{std::string(model::infoOf(listing.kind).table), rows}};
}

report::Table listingTable(const Listing& listing) {
    report::Table table;
    for (const auto& field : model::infoOf(listing.kind).fields) {
        if (field.name != "job") {
            table.columns.push_back({std::string(field.heading), isFigure(field.type)});
        }
    }
    for (const auto& record : listing.records) {
        std::vector<std::string> cells;
        for (const auto& field : model::infoOf(listing.kind).fields) {
            if (field.name != "job") {
                cells.push_back(model::printValue(field, record.at(field.code), listing.name));
            }
        }
        table.rows.push_back(std::move(cells));
    }
    return table;
}

Result<Listing> listingOf(Session& session, const std::string& kindName) {
    const auto kind = model::kindNamed(kindName);
    if (!kind) {
        return model::wrongUse("KIND: there is no kind \"" + kindName +
                               "\": 'ledgerboard list --help' names them all");
    }
    Listing listing;
    listing.kind = *kind;
    // Jobs, crews and prices are the whole book's: listed whether it holds no job or several.
    if (*kind == Kind::Job || (model::jobFieldOf(*kind) == nullptr && !session.job().ok())) {
        return listingOfBook(session, *kind);
    }
    auto finder = session.finder();
    if (!finder.ok()) {
        return finder.error();
    }
    listing.name = finder.value()->nameRecord();
    auto rows = session.rows();
    if (!rows.ok()) {
        return rows.error();
    }
    listing.job = rows.value().job.name;
    model::visitLists(rows.value(), [&](const auto& list) {
        using Row = typename std::remove_cvref_t<decltype(list)>::value_type;
        if (Row::kKind == *kind) {
            for (const auto& row : list) {
                listing.records.push_back(store::recordOf(row));
            }
        }
    });
    if (*kind == Kind::Item) {
        auto today = session.today();
        if (!today.ok()) {
            return today.error();
        }
        // Figures are of a day, though the list itself shows rows dated later.
        const auto figures =
            compute::figuresOf(compute::asOf(rows.value(), today.value()), today.value());
        for (std::size_t k = 0; k < figures.lines.size(); ++k) {
            if (figures.scope.lines[k].kind == compute::LineKind::Item) {
                const auto& scope = figures.scope.lines[k];
                listing.lines[scope.item.raw()] = figures.lines[k];
                if (scope.counting == compute::Counting::Counts &&
                    scope.pricing.by == compute::PricedBy::Nothing) {
                    listing.unpriced.insert(scope.item.raw());
                }
            }
        }
    }
    return listing;
}

Done verbList(Session& session, const ListOptions& options) {
    return model::guarded([&]() -> Done {
        auto listing = listingOf(session, options.kind);
        if (!listing.ok()) {
            return listing.error();
        }
        if (session.json()) {
            session.printJson(listingJson(listing.value()));
        } else if (options.csv) {
            session.print(report::printCsv(listingTable(listing.value())));
        } else if (listing.value().records.empty()) {
            session.print("No " + std::string(model::infoOf(listing.value().kind).title) +
                          " yet.\n");
        } else {
            session.printTable(shownTable(listing.value(), options.all, session.script()));
            const bool showsNone =
                std::ranges::any_of(listing.value().lines, [&](const auto& line) {
                    return isShownUnpriced(listing.value(), line.first, line.second.forecast);
                });
            if (showsNone) {
                session.print("\n" + std::string(noFigure(session.script())) +
                              " nothing prices it yet: bring prices, or set a lump sum.\n");
            }
        }
        return {};
    });
}

Done verbHistory(Session& session, const std::string& text) {
    auto finder = session.finder();
    if (!finder.ok()) {
        return finder.error();
    }
    auto book = session.bookToRead();
    if (!book.ok()) {
        return book.error();
    }
    auto record = recordWithHistory(session, *book.value(), *finder.value(), text);
    if (!record.ok()) {
        return record.error();
    }
    auto lines = book.value()->history(record.value());
    if (!lines.ok()) {
        return lines.error();
    }
    const auto name = finder.value()->nameRecord();
    report::Table table{{{"When (UTC)"}, {"Field"}, {"Value"}, {"Now"}, {"Device"}, {"By"}}, {}};
    json rows = json::array();
    for (const auto& line : lines.value()) {
        const model::Field* field = model::fieldOf(line.field);
        const bool gone = line.field % 1000 == 0;
        const std::string heading = gone               ? "Dropped"
                                    : field != nullptr ? std::string(field->heading)
                                                       : "(a newer field)";
        const std::string value = gone               ? (model::isEmpty(line.value) ? "no" : "yes")
                                  : field != nullptr ? model::printValue(*field, line.value, name)
                                                     : "";
        const std::string when = line.clock.instant().toString();
        table.rows.push_back({when.substr(0, 10) + " " + when.substr(11, 8), heading, value,
                              line.current ? "now" : "", name(line.device), line.what});
        rows.push_back({{"at", when},
                        {"field", field != nullptr ? std::string(field->name)
                                  : gone           ? "gone"
                                                   : ""},
                        {"value", field != nullptr ? valueJson(*field, line.value) : json(value)},
                        {"current", line.current},
                        {"device", line.device.toString()},
                        {"what", line.what}});
    }
    if (session.json()) {
        session.printJson({{"record", record.value().toString()}, {"history", rows}});
    } else {
        session.print(name(record.value()) + "\n");
        session.printTable(table);
    }
    return {};
}

}  // namespace ledgerboard::cli
