// What must an owner's word say, and what is told of one that a correction taught?
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "core/model/catalog.h"
#include "core/model/id.h"
#include "core/model/value.h"

#include "desktop/cli/verbs.h"

namespace ledgerboard::cli {

// An owner's word needs words that are said, which no other has, and one thing that they mean.
// `values` are what is given of the record `id`, which may be new. Errors: what is missing.
[[nodiscard]] Done refuseBadWord(
    Session& session, model::RawId id,
    const std::vector<std::pair<model::FieldCode, model::Value>>& values);

// Lines for the terminal; empty where nothing was taught.
[[nodiscard]] std::string taughtText(const std::vector<std::string>& taught);

}  // namespace ledgerboard::cli
