#include "desktop/cli/record_json.h"

namespace ledgerboard::cli {

using model::FieldType;
using nlohmann::json;

namespace {

// A decimal with no more places than needed, as a JSON number.
json decimalJson(const std::string& text) {
    return json::parse(text, nullptr, false);
}

json listJson(const model::Field& field, const model::Value& value) {
    json list = json::array();
    if (field.type == FieldType::Refs) {
        std::vector<model::RawId> ids;
        model::readRefs(value, ids);
        for (const auto& id : ids) {
            list.push_back(id.toString());
        }
    } else if (field.type == FieldType::Amounts) {
        std::vector<model::NamedAmount> amounts;
        model::readMember(value, amounts);
        for (const auto& one : amounts) {
            list.push_back({{"name", one.name}, {"amount", one.amount.toString()}});
        }
    } else if (field.type == FieldType::Steps) {
        std::vector<model::NamedShare> steps;
        model::readMember(value, steps);
        for (const auto& one : steps) {
            list.push_back({{"name", one.name}, {"percent", decimalJson(one.percent.toString())}});
        }
    } else if (field.type == FieldType::ItemAmounts) {
        std::vector<model::ItemAmount> amounts;
        model::readMember(value, amounts);
        for (const auto& one : amounts) {
            list.push_back(
                {{"item", one.item.raw().toString()}, {"amount", one.amount.toString()}});
        }
    } else {
        std::vector<model::Date> dates;
        model::readMember(value, dates);
        for (const auto& one : dates) {
            list.push_back(one.toString());
        }
    }
    return list;
}

}  // namespace

json valueJson(const model::Field& field, const model::Value& value) {
    if (model::isEmpty(value)) {
        return nullptr;
    }
    switch (field.type) {
        case FieldType::Refs:
        case FieldType::Amounts:
        case FieldType::Steps:
        case FieldType::ItemAmounts:
        case FieldType::Dates:
            return listJson(field, value);
        case FieldType::Flag:
            return value == model::Value{std::int64_t{1}};
        case FieldType::Count:
        case FieldType::Quantity:
        case FieldType::Percent:
            return decimalJson(model::printValue(field, value, nullptr));
        default:
            return model::printValue(field, value, [](model::RawId id) { return id.toString(); });
    }
}

json recordJson(const store::Record& record, const model::NameRecord& name) {
    json out = {{"id", record.id.toString()}};
    const auto fields = model::infoOf(record.kind).fields;
    for (std::size_t k = 0; k < fields.size(); ++k) {
        const auto& value = record.values[k];
        if (model::isEmpty(value)) {
            continue;
        }
        const std::string key(fields[k].name);
        out[key] = valueJson(fields[k], value);
        if (fields[k].type == FieldType::Ref) {
            out[key + "_name"] = name(std::get<model::RawId>(value));
        }
    }
    if (record.gone) {
        out["dropped"] = true;
    }
    return out;
}

}  // namespace ledgerboard::cli
