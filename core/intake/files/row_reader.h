// What does each row of a file say, field by field?
//
// Cells become values as the catalog says; what can't be is a problem at its line and column. An
// empty cell says nothing and changes nothing.
#pragma once

#include <cstdint>
#include <map>
#include <vector>

#include "core/intake/files/csv.h"
#include "core/intake/files/find.h"
#include "core/intake/files/headings.h"
#include "core/intake/files/problems.h"
#include "core/model/value.h"

namespace ledgerboard::intake {

using FieldValues = std::map<model::FieldCode, model::Value>;  // filled ones only

struct BroughtRow {
    std::int64_t line = 0;
    FieldValues values;
    // Fields whose cells are filled and could not be read: problems already, and not empty.
    std::vector<model::FieldCode> unreadable;
};

// Days that a date of the job may fall on: from 1900, and within five years of its beginning.
struct DateRange {
    model::Date from;
    model::Date to;
    std::string about;  // "five years from the beginning of the job (2026-03-02)"
};

[[nodiscard]] DateRange datesAround(const std::optional<model::Date>& begin, model::Date today);

// One BroughtRow a row of `table`, in its order. Adds to `problems`: cells that can't be read,
// needed ones that are empty, figures below 0 where nothing can be, percents above 100, dates out
// of range, names nobody has.
[[nodiscard]] std::vector<BroughtRow> readRows(const BringKind& kind, const CsvTable& table,
                                               const std::vector<Column>& columns,
                                               const Finder& finder, const DateRange& range,
                                               Problems& problems);

// A cell as text is kept: line breaks as LF, and as spaces where the field is a name.
[[nodiscard]] std::string cleanText(const model::Field& field, std::string_view text);

}  // namespace ledgerboard::intake
