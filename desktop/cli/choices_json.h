// How are the open alternates and their best set told as JSON?
#pragma once

#include <nlohmann/json_fwd.hpp>

#include "core/compute/choices.h"

namespace ledgerboard::cli {

// Requires: choices of these rows.
[[nodiscard]] nlohmann::json choicesJson(const model::JobRows& rows,
                                         const compute::Choices& choices, model::Date today);

}  // namespace ledgerboard::cli
