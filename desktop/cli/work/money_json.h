// How are the deal, the cash line and draws shown as JSON? The same for their verbs and for `work`:
// money is a string with two decimals, dates ISO 8601, what cannot be told null.
#pragma once

#include <nlohmann/json.hpp>

#include "core/compute/cash.h"
#include "core/compute/deal_return.h"
#include "core/compute/lender_draws.h"
#include "core/compute/profit_table.h"

namespace ledgerboard::work {

[[nodiscard]] nlohmann::json moneyJson(const std::optional<model::Money>& money);
[[nodiscard]] nlohmann::json dateJson(const std::optional<model::Date>& date);
// The headings of inputs that were not entered.
[[nodiscard]] nlohmann::json absentJson(const std::vector<compute::AbsentInput>& inputs);

// `job` for the resale and price, `work` the forecast of the work.
[[nodiscard]] nlohmann::json dealJson(const model::Job& job,
                                      const std::optional<model::Money>& work,
                                      const compute::Deal& deal, const compute::DealReturn& earned,
                                      const compute::ProfitTable& table);

// Day by day: {"start","end","days":[{"on","in","out","balance","moves":[...]}],"lowest":...}.
[[nodiscard]] nlohmann::json cashJson(const compute::CashLine& line);

}  // namespace ledgerboard::work
