// How is the spread of a job printed as JSON?
#pragma once

#include <nlohmann/json.hpp>

#include "core/compute/job_risk.h"

namespace ledgerboard::cli {

// Money as text with two decimals, dates as ISO 8601, chances and shares 0 to 100; null where a
// figure can't be told.
[[nodiscard]] nlohmann::json riskJson(const compute::JobRisk& risk);

}  // namespace ledgerboard::cli
