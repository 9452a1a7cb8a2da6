// Can a row be true as a whole: do its cells agree with each other, and with what it names?
//
// Checked on the record as it would stand after bringing, so that a low entered today is held
// against a high entered last week.
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <unordered_map>

#include "core/intake/files/bring_kinds.h"
#include "core/intake/files/find.h"
#include "core/intake/files/problems.h"
#include "core/intake/files/row_reader.h"
#include "core/model/rows.h"

namespace ledgerboard::intake {

// What rows may name, by id. Must outlive the checker.
struct RowSurroundings {
    const Finder& finder;
    std::unordered_map<model::RawId, const model::Item*, model::RawIdHash> items;
    // The kind of each spend, also of those in the file itself.
    std::unordered_map<model::RawId, std::string, model::RawIdHash> spendKinds;
};

// What a field's column is called in the file.
using HeadingOf = std::function<std::string(model::FieldCode)>;

// Adds to `problems`, at the line of `row`, whatever of `row` contradicts itself. `row` holds the
// record as it will stand; what it could not read is not held against it. Requires: every value
// passed checkValue.
void checkRecord(model::Kind kind, const BroughtRow& row, const RowSurroundings& around,
                 const HeadingOf& headingOf, Problems& problems);

}  // namespace ledgerboard::intake
