// What is wrong with one record by itself, as it would stand after an edit? The same as bring
// refuses of a row of a file, for records that are entered one at a time.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "core/intake/files/find.h"
#include "core/model/rows.h"
#include "core/store/book.h"

namespace ledgerboard::intake {

using FieldAndValue = std::pair<model::FieldCode, model::Value>;

// "Planned finish: 2026-05-01 is before ...", one a field, of `record` with `changes` on it; empty
// where all goes together. `rows`: of the job, for what the record may name.
[[nodiscard]] std::vector<std::string> contradictionsIn(const store::Record& record,
                                                        const std::vector<FieldAndValue>& changes,
                                                        const model::JobRows& rows,
                                                        const Finder& finder);

// The fields without which a new fact counts nowhere (spend: its kind and day) and that `values` do
// not fill: "Date is missing: day on the paper". Empty for other kinds.
[[nodiscard]] std::vector<std::string> missingIn(model::Kind kind,
                                                 const std::vector<FieldAndValue>& values);

}  // namespace ledgerboard::intake
