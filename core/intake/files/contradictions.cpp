#include "core/intake/files/contradictions.h"

#include <algorithm>
#include <cctype>

#include "core/intake/files/bring_kinds.h"
#include "core/intake/files/problems.h"
#include "core/intake/files/row_check.h"

namespace ledgerboard::intake {

std::vector<std::string> contradictionsIn(const store::Record& record,
                                          const std::vector<FieldAndValue>& changes,
                                          const model::JobRows& rows, const Finder& finder) {
    BroughtRow row;
    const auto fields = model::infoOf(record.kind).fields;
    for (std::size_t k = 0; k < fields.size() && k < record.values.size(); ++k) {
        row.values[fields[k].code] = record.values[k];
    }
    for (const auto& [code, value] : changes) {
        row.values[code] = value;
    }
    std::erase_if(row.values, [](const auto& cell) { return model::isEmpty(cell.second); });
    RowSurroundings around{finder, {}, {}};
    for (const model::Item& item : rows.items) {
        around.items.emplace(item.id.raw(), &item);
    }
    for (const model::Spend& spend : rows.spends) {
        around.spendKinds.emplace(spend.id.raw(), std::string(model::wordOf(spend.type)));
    }
    Problems problems("");
    checkRecord(
        record.kind, row, around,
        [](model::FieldCode code) { return std::string(model::fieldOf(code)->heading); }, problems);
    std::vector<std::string> found;
    for (const Problem& problem : problems.list()) {
        found.push_back(problem.column + ": " + problem.message);
    }
    return found;
}

std::vector<std::string> missingIn(model::Kind kind, const std::vector<FieldAndValue>& values) {
    std::vector<std::string> missing;
    for (const BringKind& one : bringKinds()) {
        if (one.kind != kind || !one.key.empty()) {
            continue;  // what has a key can be completed later
        }
        for (const model::FieldCode code : one.needed) {
            const bool isThere = std::any_of(values.begin(), values.end(), [&](const auto& value) {
                return value.first == code && !model::isEmpty(value.second);
            });
            if (!isThere) {
                const model::Field& field = *model::fieldOf(code);
                std::string says(field.says);
                says[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(says[0])));
                missing.push_back(std::string(field.heading) + " is missing: " + says);
            }
        }
    }
    return missing;
}

}  // namespace ledgerboard::intake
