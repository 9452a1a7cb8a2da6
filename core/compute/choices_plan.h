// How do choices ask the job's plan?
#pragma once

#include "core/compute/choices.h"

namespace ledgerboard::compute {

// Plans a job as of `today` by plan.h, and tells what choices lean on. A plan with a loop tells
// nothing. Rows given to it: as of today. Errors of it: OverflowError.
[[nodiscard]] PlanJob planJobAsOf(model::Date today);

}  // namespace ledgerboard::compute
