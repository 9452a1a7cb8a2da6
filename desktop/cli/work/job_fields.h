// How is a job read from JSON whose keys are the catalog's names, as `list job --json` prints it?
#pragma once

#include <nlohmann/json.hpp>

#include "core/model/result.h"
#include "core/model/rows.h"

namespace ledgerboard::work {

// Reads every key of `object` into the job; the id and null are passed over. Errors (WrongUse): a
// key that is no field of a job, a value that cannot stand in its field; both name it.
[[nodiscard]] model::Result<model::Job> jobFrom(const nlohmann::json& object);

}  // namespace ledgerboard::work
