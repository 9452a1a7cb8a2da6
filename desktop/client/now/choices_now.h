// What do the open alternates come to, and what does deciding one write?
//
// The figures are compute::choicesOf with the plan and the deal of the day, as `choose` asks for
// them; deciding writes what `choose ALTERNATE OPTION --why` writes. Threads: any.
#pragma once

#include <optional>
#include <string>

#include "core/compute/choices.h"
#include "core/compute/decision.h"

#include "desktop/client/now/job_now.h"

namespace ledgerboard::desk {

// Errors: as compute::deal and choicesOf. OverflowError.
[[nodiscard]] model::Result<compute::Choices> choicesNowOf(const JobNow& now,
                                                           const compute::ChoicesAsk& ask);

// What choosing an option writes beside the choice: the item it makes. Empty where it makes none.
// Requires: positions in now.rows.
[[nodiscard]] std::optional<model::Item> itemOfChoice(const JobNow& now, std::size_t alternate,
                                                      std::size_t option);

// The change order that a decision after the baseline still wants: none where nothing differs, or
// where one over the same items waits for its signature. Without id. Requires: decided.
[[nodiscard]] std::optional<model::Change> changeWanted(const JobNow& now, std::size_t alternate);

// Whether a change order over what was decided is asked for and neither signed nor refused.
[[nodiscard]] bool isChangeAsked(const JobNow& now, std::size_t alternate);

}  // namespace ledgerboard::desk
