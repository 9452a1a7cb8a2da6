// The steps that jobRiskOf (job_risk.h) is made of. Inside core/compute only.
#pragma once

#include <string>
#include <vector>

#include "core/compute/job_risk.h"

namespace ledgerboard::compute {

struct JobRiskInput {
    RiskInput risk;  // items as network.activities; no profit yet
    RiskBasis basis;
    std::vector<std::string> unknowns;  // names, as risk.unknowns
};

// Requires: no loop in the network. Errors: OverflowError.
[[nodiscard]] JobRiskInput jobRiskInputOf(const model::JobRows& rows, const JobFigures& figures,
                                          const JobNetwork& network);

// Links for the turns that crews and one-crew spaces take in the plan: none moves an item of the
// plan, and none closes a ring. Requires: no loop in the network.
[[nodiscard]] std::vector<Precedence> turnsOf(const model::JobRows& rows,
                                              const JobNetwork& network);

}  // namespace ledgerboard::compute
