// clashes, settle, aside: what devices wrote without knowing of each other, and what one of them
// may not write.
#include <algorithm>

#include <nlohmann/json.hpp>

#include "core/report/money_text.h"
#include "core/store/sync_book.h"

#include "desktop/cli/record_json.h"
#include "desktop/cli/verbs.h"

namespace ledgerboard::cli {

namespace {

using nlohmann::json;

std::string minuteOf(model::Instant instant) {
    const std::string text = instant.toString();
    return text.substr(0, 10) + " " + text.substr(11, 5);
}

// A name of a record in double quotes, so that it can be typed as it stands.
std::string quoted(const std::string& text) {
    return text.find(' ') == std::string::npos ? text : "\"" + text + "\"";
}

// What was written, by whom and when: a line of either list.
struct Said {
    std::string record, field, value, when, device;
};

Said saidBy(const store::Entry& entry, const model::NameRecord& name) {
    const model::Field* field = model::fieldOf(entry.field);
    Said said;
    said.record = name(entry.record);
    said.field = field != nullptr                                             ? field->heading
                 : entry.field == model::goneCode(model::kindOf(entry.field)) ? "Dropped"
                                                                              : "(a newer field)";
    said.value = field != nullptr ? model::printValue(*field, entry.value, name) : "";
    said.when = minuteOf(entry.clock.instant());
    said.device = name(entry.name.device);
    if (said.device == entry.name.device.toString()) {
        said.device = entry.name.device.hex().substr(24);  // of a device that is not in the book
    }
    return said;
}

json jsonOf(const store::Entry& entry) {
    const model::Field* field = model::fieldOf(entry.field);
    return {{"record", entry.record.toString()},
            {"field", field != nullptr ? std::string(field->name) : ""},
            {"value", field != nullptr ? valueJson(*field, entry.value) : json()},
            {"at", entry.clock.instant().toString()},
            {"device", entry.name.device.toString()}};
}

}  // namespace

Done verbClashes(Session& session) {
    if (auto now = session.refusePast("clashes", false); !now.ok()) {
        return now;
    }
    auto book = session.book();
    auto finder = session.finder();
    if (!book.ok() || !finder.ok()) {
        return book.ok() ? finder.error() : book.error();
    }
    auto clashes = store::SyncBook(*book.value()).clashes();
    if (!clashes.ok()) {
        return clashes.error();
    }
    const auto name = finder.value()->nameRecord();
    report::Table table{{{"Record"}, {"Field"}, {"Value"}, {"When (UTC)"}, {"Device"}}, {}};
    json all = json::array();
    for (const auto& clash : clashes.value()) {
        json values = json::array();
        for (const auto& head : clash.heads) {
            const Said said = saidBy(head, name);
            const bool first = &head == &clash.heads.front();
            table.rows.push_back({first ? said.record : "", first ? said.field : "", said.value,
                                  said.when, said.device});
            values.push_back(jsonOf(head));
        }
        all.push_back({{"record", clash.cell.record.toString()},
                       {"field", jsonOf(clash.heads.front())["field"]},
                       {"values", std::move(values)}});
    }
    if (session.json()) {
        session.printJson({{"clashes", std::move(all)}});
        return {};
    }
    if (clashes.value().empty()) {
        session.print("No clashes: no two devices changed one thing apart from each other.\n");
        return {};
    }
    session.printTable(table);
    const Said first = saidBy(clashes.value().front().heads.front(), name);
    session.print(
        "\nThe first value of each stands meanwhile. Say which is right, as in\n"
        "  ledgerboard settle " +
        quoted(first.record) + " " + quoted(first.field) + " " + quoted(first.value) + "\n");
    return {};
}

Done verbSettle(Session& session, const EditOptions& options) {
    if (auto now = session.refusePast("settle", false); !now.ok()) {
        return now;
    }
    auto book = session.book();
    auto finder = session.finder();
    if (!book.ok() || !finder.ok()) {
        return book.ok() ? finder.error() : book.error();
    }
    model::Result<std::pair<model::Kind, model::RawId>> record =
        std::pair(model::Kind::Job, model::RawId{});
    if (model::folded(options.record) == "job") {
        auto job = session.job();
        if (!job.ok()) {
            return job.error();
        }
        record = std::pair(model::Kind::Job, job.value().raw());
    } else {
        record = finder.value()->findAny(options.record);
    }
    if (!record.ok()) {
        return record.error();
    }
    const auto [kind, id] = record.value();
    const model::Field* field = model::fieldNamed(kind, options.field);
    if (field == nullptr) {
        return model::wrongUse("a " + std::string(model::infoOf(kind).title) + " has no field \"" +
                               options.field + "\": 'ledgerboard clashes' names those that clash");
    }
    store::SyncBook sync(*book.value());
    auto clashes = sync.clashes();
    if (!clashes.ok()) {
        return clashes.error();
    }
    const store::CellName cell{id, field->code};
    const bool clashing =
        std::any_of(clashes.value().begin(), clashes.value().end(),
                    [&](const store::Clash& clash) { return clash.cell == cell; });
    if (!clashing) {
        return model::cannotBeMet("there is no clash about " + std::string(field->heading) +
                                  " of " + options.record +
                                  ": 'ledgerboard clashes' lists them, 'ledgerboard set' changes "
                                  "anything");
    }
    auto value = model::parseValue(*field, options.value, finder.value()->findRecord());
    if (!value.ok()) {
        return model::Error{value.error().code,
                            std::string(field->heading) + ": " + value.error().message};
    }
    if (auto done = sync.settle(cell, value.value(), session.now()); !done.ok()) {
        return done;
    }
    const auto name = finder.value()->nameRecord();
    const std::string printed = model::printValue(*field, value.value(), name);
    if (session.json()) {
        session.printJson({{"record", id.toString()},
                           {"field", std::string(field->name)},
                           {"value", valueJson(*field, value.value())}});
    } else {
        session.print(name(id) + ": " + std::string(field->heading) + " is " + printed + "\n");
    }
    session.forgetRows();
    return {};
}

Done verbAside(Session& session) {
    if (auto now = session.refusePast("aside", false); !now.ok()) {
        return now;
    }
    auto book = session.book();
    auto finder = session.finder();
    if (!book.ok() || !finder.ok()) {
        return book.ok() ? finder.error() : book.error();
    }
    constexpr std::size_t kMost = 1'000;
    auto asides = store::SyncBook(*book.value()).asides(0, kMost);
    if (!asides.ok()) {
        return asides.error();
    }
    const auto name = finder.value()->nameRecord();
    report::Table table{
        {{"Record"}, {"Field"}, {"Value"}, {"Set aside (UTC)"}, {"Device"}, {"Why"}}, {}};
    json all = json::array();
    for (const auto& aside : asides.value()) {
        const Said said = saidBy(aside.entry, name);
        table.rows.push_back(
            {said.record, said.field, said.value, minuteOf(aside.at), said.device, aside.why});
        json one = jsonOf(aside.entry);
        one["set_aside_at"] = aside.at.toString();
        one["why"] = aside.why;
        all.push_back(std::move(one));
    }
    if (session.json()) {
        session.printJson({{"aside", std::move(all)}});
        return {};
    }
    if (asides.value().empty()) {
        session.print("Nothing was set aside: no device sent what it may not write.\n");
        return {};
    }
    session.printTable(table);
    session.print("\nNone of this was applied. What is right all the same, enter yourself.\n");
    return {};
}

}  // namespace ledgerboard::cli
