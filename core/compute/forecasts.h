// By which rules was the forecast made, and what would the other methods say?
//
// The forecast of the job is the sum of its lines, each by its own rule (budget.h). The methods of
// earned value look at the whole job alone; they stand beside it and are never mixed in.
// Source: earned_value.h, earned_schedule.h. For SPI(t) the plan is read at the end of each week
// from its first day.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/compute/budget.h"
#include "core/compute/earned_value.h"

namespace ledgerboard::compute {

// The lines whose to go was worked out by one rule.
struct RuleShare {
    ToGoRule rule = ToGoRule::BudgetLeft;
    std::size_t lines = 0;
    model::Money toGo;
};

enum class Method {
    RemainingAtBudget,    // the rest at its budget
    RemainingAtCpi,       // the rest at what work has cost so far
    RemainingAtCpiSpi,    // the same, and late work costs more
    RemainingAtWeighted,  // 0.8 CPI + 0.2 SPI
    RemainingAtSpiT,      // by the schedule index told in time
};
// "the rest at budget", "at CPI", "at CPI x SPI", "at 0.8 CPI + 0.2 SPI", "at SPI(t)".
[[nodiscard]] std::string_view wordsFor(Method method);

struct MethodFigure {
    Method method = Method::RemainingAtBudget;
    model::Money estimate;  // at completion
};

struct Forecasts {
    std::vector<RuleShare> rules;       // with something to go, largest first
    EarnedValue earned;                 // of the whole job
    std::vector<MethodFigure> methods;  // those that can be told, lowest first
};

// Requires: rows as of today. Errors: OverflowError.
[[nodiscard]] Forecasts forecastsOf(const model::JobRows& rows, const JobFigures& figures,
                                    model::Date today);

}  // namespace ledgerboard::compute
