#include "desktop/cli/work/job_fields.h"

#include <array>

#include "core/compute/in_quotes.h"
#include "core/model/value.h"

namespace ledgerboard::work {

namespace {

using nlohmann::json;

// What a person would have written for it: "taxes 210.00; insurance 95.00". Empty where it is no
// such thing.
std::string textOf(const json& value) {
    if (value.is_string()) {
        return value.get<std::string>();
    }
    if (value.is_boolean()) {
        return value.get<bool>() ? "yes" : "no";
    }
    if (value.is_number()) {
        return value.dump();
    }
    std::string text;
    if (value.is_array()) {
        for (const json& entry : value) {
            std::string one = textOf(entry);
            if (entry.is_object() && entry.contains("name")) {
                const char* figure = entry.contains("amount") ? "amount" : "percent";
                one = textOf(entry.at("name")) + " " + textOf(entry.value(figure, json("")));
            }
            text += (text.empty() ? "" : "; ") + one;
        }
    }
    return text;
}

}  // namespace

model::Result<model::Job> jobFrom(const json& object) {
    if (!object.is_object()) {
        return model::wrongUse("job must be an object, in { }, with the fields of a job");
    }
    model::Job job;
    for (const auto& [key, value] : object.items()) {
        if (key == "id" || value.is_null()) {
            continue;
        }
        const model::Field* field = model::fieldNamed(model::Kind::Job, key);
        if (field == nullptr || field->name != key) {
            return model::wrongUse("job: unknown key " + compute::inQuotes(key) +
                                   ": the keys are those 'ledgerboard list job --json' prints");
        }
        const std::string text = textOf(value);
        auto read = model::parseValue(*field, text, nullptr);
        if (!read.ok()) {
            return model::wrongUse("job: " + key + ": " + read.error().message);
        }
        if (model::isEmpty(read.value())) {
            return model::wrongUse("job: " + key +
                                   " holds nothing that can be read: leave it out "
                                   "where it is not known");
        }
        if (auto fine = model::checkValue(*field, read.value()); !fine.ok()) {
            return model::wrongUse("job: " + key + ": " + fine.error().message);
        }
        const auto fields = model::infoOf(model::Kind::Job).fields;
        std::size_t at = 0;
        model::visitFields(job, [&](auto& member) {
            if (&fields[at++] == field) {
                model::readMember(read.value(), member);
            }
        });
    }
    return job;
}

}  // namespace ledgerboard::work
