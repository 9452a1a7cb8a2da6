// The steps that figuresOf (budget.h) is made of. Inside core/compute only.
#pragma once

#include <cstddef>
#include <vector>

#include "core/compute/budget.h"

namespace ledgerboard::compute {

// The counting items of each contract, by position in rows.items; one list for each contract.
[[nodiscard]] std::vector<std::vector<std::size_t>> itemsOfContracts(const model::JobRows& rows,
                                                                     const ScopeLines& scope);

// One for each of rows.contracts.
[[nodiscard]] std::vector<ContractFigures> contractFiguresOf(
    const model::JobRows& rows, const ScopeLines& scope, const Marks& marks,
    const std::vector<SpendRead>& spending,
    const std::vector<std::vector<std::size_t>>& itemsOfContract, model::Date today);

// What remains to be billed on a line before it is kept within its range.
struct ToGoInput {
    const model::Item* item = nullptr;  // null for an option and for the whole job
    bool counts = true;
    bool isCommitted = false;  // under a signed contract with a sum
    model::Money contractNow;  // its share
    model::Money billedOnCommitment;
    model::Money budgetNow;
    model::Money billed;
    model::Money earned;
    model::Percent shown;
    model::Money tradeEarned;  // of all lines of its trade
    model::Money tradeBilled;
    model::Money signedChanges;
};

struct ToGo {
    ToGoRule rule = ToGoRule::BudgetLeft;
    Kept kept = Kept::AsComputed;
    model::Money asComputed;
    model::Money amount;
};

[[nodiscard]] ToGo toGoOf(const ToGoInput& input);

}  // namespace ledgerboard::compute
