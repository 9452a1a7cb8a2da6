#include "core/intake/files/pairing.h"

#include "core/intake/files/pairing_ways.h"

namespace ledgerboard::intake {

std::string keyOf(const model::Value& value) {
    if (const auto* text = std::get_if<std::string>(&value)) {
        return model::folded(*text);
    }
    if (const auto* units = std::get_if<std::int64_t>(&value)) {
        return std::to_string(*units);
    }
    if (const auto* id = std::get_if<model::RawId>(&value)) {
        return id->hex();
    }
    return "";
}

model::Value valueIn(const FieldValues& values, model::FieldCode code) {
    const auto found = values.find(code);
    return found == values.end() ? model::Value{} : found->second;
}

model::Result<std::vector<Pairing>> pairRows(const PairingInput& in, Problems& problems) {
    return in.kind.key.empty() ? pairByContent(in, problems) : pairByKey(in, problems);
}

}  // namespace ledgerboard::intake
