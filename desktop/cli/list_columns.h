// Which fields of a kind does a table on the terminal show? The few that a person looks for; CSV
// and JSON have them all.
#pragma once

#include <vector>

#include "core/model/catalog.h"

namespace ledgerboard::cli {

// In the order of columns. Kinds without a list of their own show their first few fields.
[[nodiscard]] std::vector<model::FieldCode> shownFields(model::Kind kind);

}  // namespace ledgerboard::cli
