#include "sync/wire/messages.h"

#include <unordered_map>

#include "sync/wire/json.h"

namespace ledgerboard::sync {

using model::RawId;
using model::Result;
using model::Value;
using model::wrongUse;
using store::Entry;
using store::EntryName;
using store::Lane;

namespace {

// Ids are written once in a message, in a list, and named by their place in it.
class IdWriter {
  public:
    std::size_t placeOf(const RawId& id) {
        const auto [found, isNew] = places_.emplace(id, places_.size());
        if (isNew) {
            list_.push_back(id.hex());
        }
        return found->second;
    }

    [[nodiscard]] Json list() { return std::move(list_); }

  private:
    std::unordered_map<RawId, std::size_t, model::RawIdHash> places_;
    Json list_ = Json::array();
};

class IdReader {
  public:
    bool read(const Json* list) {
        constexpr std::size_t kMaxIds = kMostEntries * 4 + kMostDrops;
        if (list == nullptr || !list->is_array() || list->size() > kMaxIds) {
            return false;
        }
        for (const auto& one : *list) {
            const auto id = idOf(&one);
            if (!id || id->isNil()) {
                return false;
            }
            ids_.push_back(*id);
        }
        return true;
    }

    [[nodiscard]] std::optional<RawId> at(const Json* place) const {
        const auto number = integerOf(place);
        if (!number || *number < 0 || static_cast<std::size_t>(*number) >= ids_.size()) {
            return std::nullopt;
        }
        return ids_[static_cast<std::size_t>(*number)];
    }

  private:
    std::vector<RawId> ids_;
};

Json writeValue(const Value& value, IdWriter& ids) {
    if (const auto* integer = std::get_if<std::int64_t>(&value)) {
        return *integer;
    }
    if (const auto* text = std::get_if<std::string>(&value)) {
        return *text;
    }
    if (const auto* id = std::get_if<RawId>(&value)) {
        return Json::array({id->isNil() ? Json(-1) : Json(ids.placeOf(*id))});
    }
    return nullptr;
}

bool readValue(const Json& json, const IdReader& ids, Value& value) {
    if (json.is_null()) {
        value = {};
    } else if (const auto integer = integerOf(&json)) {
        value = *integer;
    } else if (json.is_string()) {
        value = json.get<std::string>();
    } else if (json.is_array() && json.size() == 1) {
        if (integerOf(&json[0]) == -1) {
            value = RawId{};
            return true;
        }
        const auto id = ids.at(&json[0]);
        if (!id) {
            return false;
        }
        value = *id;
    } else {
        return false;
    }
    return true;
}

Json writeName(const EntryName& name, IdWriter& ids) {
    return Json::array({ids.placeOf(name.device), static_cast<int>(name.lane), name.number});
}

bool readName(const Json& json, const IdReader& ids, EntryName& name) {
    const auto device = ids.at(&json[0]);
    const auto lane = integerOf(&json[1]);
    const auto number = integerOf(&json[2]);
    if (!device || !lane || *lane < 0 || *lane > static_cast<int>(Lane::Sealed) || !number ||
        *number < 1) {
        return false;
    }
    name = {*device, static_cast<Lane>(*lane), *number};
    return true;
}

// [device, lane, number, clock, record, field, value, replaced ...], ids by their place.
Json writeEntry(const Entry& entry, IdWriter& ids) {
    Json json = writeName(entry.name, ids);
    json.push_back(entry.clock.raw());
    json.push_back(ids.placeOf(entry.record));
    json.push_back(entry.field);
    json.push_back(writeValue(entry.value, ids));
    for (const auto& name : entry.replaces) {
        json.push_back(writeName(name, ids));
    }
    return json;
}

bool readEntry(const Json& json, const IdReader& ids, Entry& entry) {
    constexpr std::size_t kParts = 7;
    constexpr std::int64_t kMaxField = 999'999;
    if (!json.is_array() || json.size() < kParts || json.size() > kParts + kMostReplaces ||
        !readName(json, ids, entry.name)) {
        return false;
    }
    const auto clock = integerOf(&json[3]);
    const auto record = ids.at(&json[4]);
    const auto field = integerOf(&json[5]);
    if (!clock || *clock < 0 || !record || !field || *field < 1000 || *field > kMaxField ||
        !readValue(json[6], ids, entry.value)) {
        return false;
    }
    entry.clock = model::HybridClock::fromRaw(*clock);
    entry.record = *record;
    entry.field = static_cast<model::FieldCode>(*field);
    for (std::size_t k = kParts; k < json.size(); ++k) {
        EntryName name;
        if (!json[k].is_array() || json[k].size() != 3 || !readName(json[k], ids, name)) {
            return false;
        }
        entry.replaces.push_back(name);
    }
    return true;
}

bool readEntries(const Json* list, const IdReader& ids, std::vector<Entry>& entries) {
    if (list == nullptr || !list->is_array() || list->size() > kMostEntries) {
        return false;
    }
    for (const auto& one : *list) {
        Entry entry;
        if (!readEntry(one, ids, entry)) {
            return false;
        }
        entries.push_back(std::move(entry));
    }
    return true;
}

Json numbers(const store::LaneNumbers& both) {
    return Json::array({both[0], both[1]});
}

model::Error notRead(const char* what) {
    return wrongUse(std::string("the message can't be read: ") + what);
}

}  // namespace

std::string write(const HelloAsk& message) {
    return compact({{"version", message.version},
                    {"epoch", message.epoch.hex()},
                    {"last", numbers(message.last)},
                    {"want_others", message.wantOthers},
                    {"renew", message.renew.hex()}});
}

Result<HelloAsk> readHelloAsk(std::string_view body) {
    auto json = readObject(body);
    if (!json.ok()) {
        return json.error();
    }
    const auto version = integerOf(member(json.value(), "version"));
    const auto epoch = idOf(member(json.value(), "epoch"));
    const auto last = numbersOf(member(json.value(), "last"));
    if (!version || *version < 1 || *version > 1'000'000 || !epoch || !last) {
        return notRead("hello");
    }
    return HelloAsk{static_cast<int>(*version), *epoch, *last,
                    flagOf(member(json.value(), "want_others")),
                    idOf(member(json.value(), "renew")).value_or(RawId{})};
}

std::string write(const HelloAnswer& message) {
    Json others = Json::array();
    for (const auto& [device, both] : message.others) {
        others.push_back({device.hex(), both[0], both[1]});
    }
    return compact({{"epoch", message.epoch.hex()},
                    {"time", message.time.milliseconds()},
                    {"device", message.device.hex()},
                    {"person", message.person.hex()},
                    {"role", message.role},
                    {"last", numbers(message.last)},
                    {"unbroken", numbers(message.unbroken)},
                    {"others", std::move(others)},
                    {"horizon", message.horizon.raw()}});
}

Result<HelloAnswer> readHelloAnswer(std::string_view body) {
    auto json = readObject(body);
    if (!json.ok()) {
        return json.error();
    }
    const Json& all = json.value();
    const auto epoch = idOf(member(all, "epoch"));
    const auto time = integerOf(member(all, "time"));
    const auto device = idOf(member(all, "device"));
    const auto person = idOf(member(all, "person"));
    const auto role = stringOf(member(all, "role"));
    const auto last = numbersOf(member(all, "last"));
    const auto unbroken = numbersOf(member(all, "unbroken"));
    const Json* others = member(all, "others");
    const auto horizon = integerOf(member(all, "horizon"));
    if (!horizon || !epoch || !time || !device || !person || !role || !last || !unbroken ||
        others == nullptr || !others->is_array()) {
        return notRead("answer to hello");
    }
    HelloAnswer answer{*epoch,    model::Instant::fromMilliseconds(*time),
                       *device,   *person,
                       *role,     *last,
                       *unbroken, {},
                       {}};
    for (const auto& one : *others) {
        if (!one.is_array() || one.size() != 3) {
            return notRead("answer to hello");
        }
        const auto other = idOf(&one[0]);
        const auto ownerOnly = integerOf(&one[1]);
        const auto shared = integerOf(&one[2]);
        if (!other || !ownerOnly || !shared) {
            return notRead("answer to hello");
        }
        answer.others[*other] = {*ownerOnly, *shared};
    }
    answer.horizon = model::HybridClock::fromRaw(*horizon);
    return answer;
}

std::string write(const PushAsk& message) {
    IdWriter ids;
    Json entries = Json::array();
    for (const auto& entry : message.entries) {
        entries.push_back(writeEntry(entry, ids));
    }
    return compact({{"ids", ids.list()}, {"entries", std::move(entries)}});
}

Result<PushAsk> readPushAsk(std::string_view body) {
    auto json = readObject(body);
    if (!json.ok()) {
        return json.error();
    }
    IdReader ids;
    PushAsk ask;
    if (!ids.read(member(json.value(), "ids")) ||
        !readEntries(member(json.value(), "entries"), ids, ask.entries)) {
        return notRead("push");
    }
    return ask;
}

std::string write(const PushAnswer& message) {
    Json refused = Json::array();
    for (const auto& one : message.refused) {
        refused.push_back({static_cast<int>(one.lane), one.number, one.why});
    }
    return compact({{"acknowledged", numbers(message.acknowledged)}, {"refused", refused}});
}

Result<PushAnswer> readPushAnswer(std::string_view body) {
    auto json = readObject(body);
    if (!json.ok()) {
        return json.error();
    }
    const auto acknowledged = numbersOf(member(json.value(), "acknowledged"));
    const Json* refused = member(json.value(), "refused");
    if (!acknowledged || refused == nullptr || !refused->is_array() ||
        refused->size() > kMostEntries) {
        return notRead("answer to push");
    }
    PushAnswer answer{*acknowledged, {}};
    for (const auto& one : *refused) {
        if (!one.is_array() || one.size() != 3) {
            return notRead("answer to push");
        }
        const auto lane = integerOf(&one[0]);
        const auto number = integerOf(&one[1]);
        const auto why = stringOf(&one[2]);
        if (!lane || *lane < 0 || *lane > 1 || !number || *number < 1 || !why) {
            return notRead("answer to push");
        }
        answer.refused.push_back({static_cast<Lane>(*lane), *number, *why});
    }
    return answer;
}

std::string write(const PullAsk& message) {
    return compact({{"cursor", message.cursor}});
}

Result<PullAsk> readPullAsk(std::string_view body) {
    auto json = readObject(body);
    if (!json.ok()) {
        return json.error();
    }
    auto cursor = stringOf(member(json.value(), "cursor"));
    if (!cursor || cursor->size() > kMostCursorBytes) {
        return notRead("pull");
    }
    return PullAsk{std::move(*cursor)};
}

std::string write(const PullAnswer& message) {
    IdWriter ids;
    Json entries = Json::array();
    Json drops = Json::array();
    Json asides = Json::array();
    for (const auto& entry : message.entries) {
        entries.push_back(writeEntry(entry, ids));
    }
    for (const auto& drop : message.drops) {
        drops.push_back(Json::array({ids.placeOf(drop.record), drop.field}));
    }
    for (const auto& aside : message.asides) {
        asides.push_back(
            Json::array({aside.at.milliseconds(), aside.why, writeEntry(aside.entry, ids)}));
    }
    return compact({{"cursor", message.cursor},
                    {"more", message.more},
                    {"fresh", message.fresh},
                    {"ids", ids.list()},
                    {"entries", std::move(entries)},
                    {"drops", std::move(drops)},
                    {"asides", std::move(asides)}});
}

namespace {

bool readDrops(const Json* list, const IdReader& ids, std::vector<store::CellName>& drops) {
    if (list == nullptr || !list->is_array() || list->size() > kMostDrops) {
        return false;
    }
    for (const auto& one : *list) {
        if (!one.is_array() || one.size() != 2) {
            return false;
        }
        const auto record = ids.at(&one[0]);
        const auto field = integerOf(&one[1]);
        if (!record || !field || *field < 1000 || *field > 999'999) {
            return false;
        }
        drops.push_back({*record, static_cast<model::FieldCode>(*field)});
    }
    return true;
}

bool readAsides(const Json* list, const IdReader& ids, std::vector<store::Aside>& asides) {
    if (list == nullptr || !list->is_array() || list->size() > kMostEntries) {
        return false;
    }
    for (const auto& one : *list) {
        if (!one.is_array() || one.size() != 3) {
            return false;
        }
        const auto at = integerOf(&one[0]);
        const auto why = stringOf(&one[1]);
        store::Aside aside;
        if (!at || !why || !readEntry(one[2], ids, aside.entry)) {
            return false;
        }
        aside.at = model::Instant::fromMilliseconds(*at);
        aside.why = *why;
        asides.push_back(std::move(aside));
    }
    return true;
}

}  // namespace

Result<PullAnswer> readPullAnswer(std::string_view body) {
    auto json = readObject(body);
    if (!json.ok()) {
        return json.error();
    }
    const Json& all = json.value();
    IdReader ids;
    PullAnswer answer;
    auto cursor = stringOf(member(all, "cursor"));
    if (!cursor || cursor->size() > kMostCursorBytes || !ids.read(member(all, "ids")) ||
        !readEntries(member(all, "entries"), ids, answer.entries) ||
        !readDrops(member(all, "drops"), ids, answer.drops) ||
        !readAsides(member(all, "asides"), ids, answer.asides)) {
        return notRead("answer to pull");
    }
    answer.cursor = std::move(*cursor);
    answer.more = flagOf(member(all, "more"));
    answer.fresh = flagOf(member(all, "fresh"));
    return answer;
}

std::string write(const RosterAnswer& message) {
    Json lines = Json::array();
    for (const auto& line : message.lines) {
        lines.push_back({{"device", line.device.hex()},
                         {"name", line.name},
                         {"person", line.person},
                         {"role", line.role},
                         {"revoked", line.revoked},
                         {"heard", line.heard.milliseconds()}});
    }
    return compact({{"devices", std::move(lines)}});
}

Result<RosterAnswer> readRosterAnswer(std::string_view body) {
    auto json = readObject(body);
    if (!json.ok()) {
        return json.error();
    }
    const Json* lines = member(json.value(), "devices");
    if (lines == nullptr || !lines->is_array()) {
        return notRead("roster");
    }
    RosterAnswer answer;
    for (const auto& one : *lines) {
        if (!one.is_object()) {
            return notRead("roster");
        }
        const auto device = idOf(member(one, "device"));
        const auto heard = integerOf(member(one, "heard"));
        if (!device || !heard) {
            return notRead("roster");
        }
        answer.lines.push_back({*device, stringOf(member(one, "name")).value_or(""),
                                stringOf(member(one, "person")).value_or(""),
                                stringOf(member(one, "role")).value_or(""),
                                flagOf(member(one, "revoked")),
                                model::Instant::fromMilliseconds(*heard)});
    }
    return answer;
}

std::string write(const Refused& message) {
    return compact({{"message", message.message}, {"time", message.time.milliseconds()}});
}

Result<Refused> readRefused(std::string_view body) {
    auto json = readObject(body);
    if (!json.ok()) {
        return json.error();
    }
    auto message = stringOf(member(json.value(), "message"));
    const auto time = integerOf(member(json.value(), "time"));
    if (!message || !time) {
        return notRead("refusal");
    }
    return Refused{std::move(*message), model::Instant::fromMilliseconds(*time)};
}

RosterAnswer::Line rosterLine(const model::Device& device,
                              const std::vector<model::Person>& people) {
    RosterAnswer::Line line;
    line.device = device.id.raw();
    line.name = device.name;
    line.revoked = device.revokedOn.has_value();
    for (const auto& person : people) {
        if (person.id == device.person) {
            line.person = person.name;
            line.role = std::string(model::wordOf(person.role));
        }
    }
    return line;
}

}  // namespace ledgerboard::sync
