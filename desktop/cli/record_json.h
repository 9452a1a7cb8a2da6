// How does a record look as JSON? Keys are the catalog's names; money is a string with two
// decimals, dates are ISO 8601, percents 0 to 100, references the id with its name beside it.
#pragma once

#include <nlohmann/json.hpp>

#include "core/model/value.h"
#include "core/store/book.h"

namespace ledgerboard::cli {

// Fields that hold nothing are left out.
[[nodiscard]] nlohmann::json recordJson(const store::Record& record, const model::NameRecord& name);

// One value; null where there is none.
[[nodiscard]] nlohmann::json valueJson(const model::Field& field, const model::Value& value);

}  // namespace ledgerboard::cli
