// The open PSPLIB library of project scheduling problems (R. Kolisch, A. Sprecher, European Journal
// of Operational Research 96 (1996), 205 to 216): its single-mode .sm files, and the table of
// proven optima beside them ("problem,optimum"). The files are not part of this project; tests that
// use them are told where they are.
#pragma once

#include <fstream>
#include <map>
#include <optional>
#include <sstream>
#include <string>
#include <vector>

#include "core/compute/crew_plan.h"

namespace ledgerboard::tests {

// A file as a crew plan: each resource a crew. Empty where it can't be read. Requires: durations
// stand after the links, as in every file of the library.
inline std::optional<compute::CrewPlanInput> readPsplib(const std::string& path) {
    enum class Part { Head, Links, Durations, Capacities };
    std::ifstream file(path);
    Part part = Part::Head;
    compute::CrewPlanInput input;
    for (std::string line; std::getline(file, line);) {
        if (line.rfind("PRECEDENCE", 0) == 0) {
            part = Part::Links;
        } else if (line.rfind("REQUESTS", 0) == 0) {
            part = Part::Durations;
        } else if (line.rfind("RESOURCEAVAIL", 0) == 0) {
            part = Part::Capacities;
        }
        std::istringstream words(line);
        std::vector<std::int64_t> numbers;
        for (std::int64_t number = 0; words >> number;) {
            numbers.push_back(number);
        }
        if (part == Part::Links && numbers.size() >= 3) {  // job, modes, successors, which
            input.items.push_back({"job " + std::to_string(numbers[0]), {}, {}, {}});
            for (std::size_t k = 3; k < numbers.size(); ++k) {
                input.precedences.push_back({static_cast<std::size_t>(numbers[0] - 1),
                                             static_cast<std::size_t>(numbers[k] - 1)});
            }
        } else if (part == Part::Durations && numbers.size() >= 3) {  // job, mode, days, each crew
            compute::CrewedItem& item = input.items.at(static_cast<std::size_t>(numbers[0] - 1));
            item.activity.duration = numbers[2];
            for (std::size_t k = 3; k < numbers.size(); ++k) {
                if (numbers[k] > 0) {
                    item.needs.push_back({k - 3, numbers[k]});
                }
            }
        } else if (part == Part::Capacities && !numbers.empty()) {
            for (const std::int64_t capacity : numbers) {
                input.crews.push_back({"R" + std::to_string(input.crews.size() + 1), capacity});
            }
        }
    }
    return input.items.empty() || input.crews.empty() ? std::nullopt : std::optional(input);
}

// The proven optimum of each file in `folder`. Empty where there is no table.
inline std::map<std::string, std::int64_t> psplibOptima(const std::string& folder) {
    std::ifstream file(folder + "/optimum.csv");
    std::map<std::string, std::int64_t> optima;
    std::string line;
    std::getline(file, line);  // the headings
    while (std::getline(file, line)) {
        const auto comma = line.find(',');
        if (comma != std::string::npos) {
            optima[line.substr(0, comma)] = std::stoll(line.substr(comma + 1));
        }
    }
    return optima;
}

}  // namespace ledgerboard::tests
