// How can anyone check the arithmetic against a handbook, without a book? `ledgerboard work NAME`:
// JSON in, JSON out.
//
// Units: rates and percents are 0 to 100 ("rate": 8 is 8 % a year), indices are ratios, money is in
// the currency's main unit, unrounded. Every number is printed to 10 significant digits. A figure
// that does not exist (a divisor of zero) is null; nothing is ever NaN or infinite.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include <nlohmann/json.hpp>

#include "core/model/result.h"

namespace ledgerboard::work {

// Every NAME, in the order in which they are listed to people.
[[nodiscard]] std::vector<std::string_view> workNames();

// Seconds since a moment that stays the same. Empty: nobody has one, and time limits are refused.
using Stopwatch = std::function<double()>;

// Works `name` out. `stopwatch` is asked where the input sets a time limit. Errors (WrongUse): an
// unknown name; input that is not one JSON object; an unknown key; a key missing, of the wrong
// type, or out of its range: each message names the key.
[[nodiscard]] model::Result<nlohmann::json> runWork(std::string_view name,
                                                    const nlohmann::json& input,
                                                    const Stopwatch& stopwatch = {});

// What `name` takes and gives, with an example; where there is no such name, the list of all names.
[[nodiscard]] std::string workHelp(std::string_view name);

// The example of the help text. Empty where there is no such name.
[[nodiscard]] std::string_view workExample(std::string_view name);

}  // namespace ledgerboard::work
