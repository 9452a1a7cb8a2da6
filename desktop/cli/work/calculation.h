// What does one NAME of `work` consist of? For the files of this folder alone.
//
// To add a calculation: write its run function in a file of its own, declare its Calculation below,
// and add one line to the table in work.cpp.
#pragma once

#include <string>
#include <string_view>

#include <nlohmann/json.hpp>

#include "core/model/result.h"

#include "desktop/cli/work/work.h"

namespace ledgerboard::work {

struct Calculation {
    std::string_view name;
    std::string_view says;     // one line
    std::string_view takes;    // the keys in, for the help text
    std::string_view gives;    // the keys out
    std::string_view example;  // JSON
    model::Result<nlohmann::json> (*run)(const nlohmann::json& input);
    std::string (*more)() = nullptr;  // further help text, where there is some
    // Asked instead of `run` where it is there: for what can be told to stop after some time.
    model::Result<nlohmann::json> (*timed)(const nlohmann::json& input,
                                           const Stopwatch& stopwatch) = nullptr;
};

[[nodiscard]] Calculation cashCalculation();
[[nodiscard]] Calculation chooseCalculation();
[[nodiscard]] Calculation criticalPathCalculation();
[[nodiscard]] Calculation crewPlanCalculation();
[[nodiscard]] Calculation dealCalculation();
[[nodiscard]] Calculation drawsCalculation();
[[nodiscard]] Calculation earnedScheduleCalculation();
[[nodiscard]] Calculation earnedValueCalculation();
[[nodiscard]] Calculation interestCalculation();
[[nodiscard]] Calculation levelPaymentCalculation();
[[nodiscard]] Calculation loanInterestCalculation();
[[nodiscard]] Calculation returnCalculation();
[[nodiscard]] Calculation riskCalculation();
[[nodiscard]] Calculation takeOffCalculation();
[[nodiscard]] Calculation threePointCalculation();

}  // namespace ledgerboard::work
