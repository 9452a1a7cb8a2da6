#include "core/give/job_document.h"

#include <optional>
#include <set>

#include <nlohmann/json.hpp>

#include "core/model/value.h"

namespace ledgerboard::give {

namespace {

using model::FieldType;
using model::Kind;
using model::RawId;
using model::Result;
using model::Value;
using nlohmann::json;

constexpr int kDeepest = 8;

// Devices are this book's and no other's.
bool isOfBookAlone(Kind kind) {
    return kind == Kind::Device;
}

bool isList(FieldType type) {
    return type == FieldType::Refs || type == FieldType::Dates || type == FieldType::Amounts ||
           type == FieldType::Steps || type == FieldType::ItemAmounts;
}

json jsonOf(const model::Field& field, const Value& value) {
    if (field.type == FieldType::Flag) {
        return std::get<std::int64_t>(value) != 0;  // "no" was said, which is not silence
    }
    if (field.type == FieldType::Count) {
        return std::get<std::int64_t>(value);
    }
    if (isList(field.type)) {
        return json::parse(std::get<std::string>(value), nullptr, false);
    }
    return model::printValue(field, value, [](RawId id) { return id.toString(); });
}

Result<Value> valueFrom(const model::Field& field, const json& read) {
    const auto wrong = [](const char* form) {
        return model::cannotBeMet(std::string("is not ") + form);
    };
    Value value;
    if (field.type == FieldType::Flag) {
        if (!read.is_boolean()) {
            return wrong("true or false");
        }
        value = std::int64_t{read.get<bool>() ? 1 : 0};
    } else if (field.type == FieldType::Count) {
        if (!read.is_number_integer()) {
            return wrong("a whole number");
        }
        value = read.get<std::int64_t>();
    } else if (isList(field.type)) {
        if (!read.is_array()) {
            return wrong("a list");
        }
        value = read.dump(-1, ' ', false, json::error_handler_t::replace);
    } else if (!read.is_string()) {
        return wrong("text");
    } else if (field.type == FieldType::Ref) {
        auto id = RawId::parse(read.get<std::string>());
        if (!id.ok()) {
            return id.error();
        }
        value = id.value();
    } else {
        const model::FindRecord nobody = [](Kind, std::string_view) -> Result<RawId> {
            return model::cannotBeMet("is no id");
        };
        auto parsed = model::parseValue(field, read.get<std::string>(), nobody);
        if (!parsed.ok()) {
            return parsed.error();
        }
        value = std::move(parsed).value();
    }
    if (auto good = model::checkValue(field, value); !good.ok()) {
        return good.error();
    }
    return value;
}

json recordJson(const store::Record& record) {
    json row = {{"id", record.id.toString()}};
    const auto fields = model::infoOf(record.kind).fields;
    for (std::size_t k = 0; k < fields.size(); ++k) {
        if (!model::isEmpty(record.values[k]) && !meansDevice(fields[k])) {
            row[std::string(fields[k].name)] = jsonOf(fields[k], record.values[k]);
        }
    }
    return row;
}

Result<store::Record> recordFrom(const model::KindInfo& info, const json& row,
                                 const std::string& place, std::set<std::string>& unknown) {
    store::Record record{info.kind, {}, std::vector<Value>(info.fields.size()), false};
    const std::string kind(info.table);
    if (!row.is_object() || !row.contains("id") || !row["id"].is_string()) {
        return model::cannotBeMet(place + ": a record of " + kind + " has no id");
    }
    const std::string idText = row["id"].get<std::string>();
    auto id = RawId::parse(idText);
    if (!id.ok() || id.value().isNil()) {
        return model::cannotBeMet(place + ": " + kind + ", id \"" + idText.substr(0, 60) +
                                  "\" is no id");
    }
    record.id = id.value();
    for (const auto& [name, read] : row.items()) {
        if (name == "id") {
            continue;
        }
        std::optional<std::size_t> at;
        for (std::size_t k = 0; k < info.fields.size(); ++k) {
            at = info.fields[k].name == name ? std::optional(k) : at;
        }
        if (!at) {
            unknown.insert(kind + "." + name.substr(0, 60));
            continue;
        }
        auto value = valueFrom(info.fields[*at], read);
        if (!value.ok()) {
            return model::cannotBeMet(place + ": " + kind + " " + idText + ", " + name + ": " +
                                      value.error().message);
        }
        record.values[*at] = std::move(value).value();
    }
    return record;
}

// The document, refused where it is none of ours.
Result<json> parsed(std::string_view text, const std::string& place) {
    bool tooDeep = false;
    const json::parser_callback_t shallow = [&](int depth, json::parse_event_t, json&) {
        tooDeep = tooDeep || depth > kDeepest;
        return !tooDeep;
    };
    json document = json::parse(text, shallow, false);
    if (tooDeep || !document.is_object() || !document.contains("form") ||
        !document["form"].is_number_integer() || !document.contains("records") ||
        !document["records"].is_object()) {
        return model::cannotBeMet(place + ": not a job that Ledgerboard gave");
    }
    if (const auto form = document["form"].get<std::int64_t>(); form != kJobForm) {
        return model::cannotBeMet(place + ": of form " + std::to_string(form) +
                                  ", and this program knows form " + std::to_string(kJobForm) +
                                  ": use a newer one");
    }
    return document;
}

}  // namespace

bool meansDevice(const model::Field& field) {
    return field.type == FieldType::Ref && field.meant == Kind::Device;
}

Result<std::string> jobDocument(const store::Book& book, model::Id<Kind::Job> job,
                                model::Instant now) {
    json records = json::object();
    for (const auto& info : model::kinds()) {
        if (isOfBookAlone(info.kind)) {
            continue;
        }
        const bool ofJob = model::jobFieldOf(info.kind) != nullptr;
        auto read = book.records(info.kind, ofJob ? job : model::Id<Kind::Job>());
        if (!read.ok()) {
            return read.error();
        }
        json rows = json::array();
        for (const auto& record : read.value()) {
            if (info.kind != Kind::Job || record.id == job.raw()) {
                rows.push_back(recordJson(record));
            }
        }
        if (!rows.empty()) {
            records[std::string(info.table)] = std::move(rows);
        }
    }
    const json document = {{"form", kJobForm},
                           {"given_at", now.toString()},
                           {"job", job.raw().toString()},
                           {"records", std::move(records)}};
    return document.dump(1, ' ', false, json::error_handler_t::replace) + "\n";
}

Result<ReadJob> readJobDocument(std::string_view text, const std::string& place) {
    auto document = parsed(text, place);
    if (!document.ok()) {
        return document.error();
    }
    const json& records = document.value()["records"];
    ReadJob read;
    std::set<std::string> unknown;
    std::set<RawId> ids;
    std::set<std::string> known;
    for (const auto& info : model::kinds()) {
        const std::string table(info.table);
        known.insert(table);
        if (!records.contains(table) || isOfBookAlone(info.kind)) {
            continue;
        }
        if (!records[table].is_array()) {
            return model::cannotBeMet(place + ": " + table + " is no list");
        }
        for (const auto& row : records[table]) {
            auto record = recordFrom(info, row, place, unknown);
            if (!record.ok()) {
                return record.error();
            }
            if (!ids.insert(record.value().id).second) {
                return model::cannotBeMet(place + ": the id " + record.value().id.toString() +
                                          " is there twice");
            }
            read.records.push_back(std::move(record).value());
        }
    }
    for (const auto& [table, rows] : records.items()) {
        if (!known.contains(table)) {
            unknown.insert(table.substr(0, 60));
        }
    }
    if (read.records.empty() || read.records.front().kind != Kind::Job ||
        records["jobs"].size() != 1) {
        return model::cannotBeMet(place + ": it does not hold one job");
    }
    read.job = model::Id<Kind::Job>(read.records.front().id);
    model::readMember(read.records.front().at(model::field::Job::name), read.name);
    read.unknown.assign(unknown.begin(), unknown.end());
    return read;
}

}  // namespace ledgerboard::give
