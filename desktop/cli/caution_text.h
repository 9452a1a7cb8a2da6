// How are a job's cautions shown: as text for a terminal, or as JSON?
#pragma once

#include <string>

#include <nlohmann/json_fwd.hpp>

#include "core/compute/cautions.h"

#include "desktop/cli/session.h"

namespace ledgerboard::cli {

// Open ones first, by item; then the house's; then what was acknowledged; then what each of them
// means, once. `rows` names the house.
[[nodiscard]] std::string cautionText(Session& session, const model::JobRows& rows,
                                      const compute::Cautions& cautions);

[[nodiscard]] nlohmann::json cautionJson(const compute::Cautions& cautions);

// "ledgerboard acknowledge "Kitchen/range" gas --result "what was found"": the command that closes
// this caution, under the name that tells its item from others.
[[nodiscard]] std::string acknowledgeCommand(Session& session, const compute::CautionRead& caution);

}  // namespace ledgerboard::cli
